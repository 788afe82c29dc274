package domefold.device;

import domefold.basics.Order;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** Lines of a device list held against each other: doubles, ladders, profile classes. */
final class LadderCheck {
    private LadderCheck() {}

    /** A device and the line it stands on. */
    record Placed(int line, Device device) {}

    static List<CatalogueFinding> of(List<Placed> rows) {
        List<CatalogueFinding> findings = new ArrayList<>(doubles(rows));
        for (List<Placed> ladder : groups(rows, device -> List.of(device.line(), device.fill(), device.surface(),
                device.profile())).values()) {
            findings.addAll(rising(ladder));
        }
        for (List<Placed> equals : groups(rows, device -> List.of(device.line(), device.fill(), device.surface(),
                device.nominalMl())).values()) {
            findings.addAll(classesInOrder(equals));
        }
        return findings;
    }

    private static List<CatalogueFinding> doubles(List<Placed> rows) {
        List<CatalogueFinding> findings = new ArrayList<>();
        Map<String, Integer> references = new HashMap<>();
        Map<List<Object>, Integer> devices = new HashMap<>();
        for (Placed row : rows) {
            Device device = row.device();
            Integer first = references.putIfAbsent(device.id(), row.line());
            if (first != null) {
                findings.add(CatalogueFinding.fault(row.line(), "double-reference", "line " + row.line() + ": reference "
                        + device.id() + " stands already on line " + first + "; every device needs its own"));
                continue;
            }
            Integer same = devices.putIfAbsent(List.of(device.line(), device.fill(), device.surface(), device.profile(),
                    device.nominalMl(), device.widthCm(), device.heightCm(), device.projectionCm()), row.line());
            if (same != null) {
                findings.add(CatalogueFinding.fault(row.line(), "double-device", "line " + row.line() + " ("
                        + device.id() + "): the same device stands already on line " + same + " under another reference"));
            }
        }
        return findings;
    }

    /** GEO-06: at one profile, width rises with volume. */
    private static List<CatalogueFinding> rising(List<Placed> ladder) {
        List<CatalogueFinding> findings = new ArrayList<>();
        List<Placed> byVolume = new ArrayList<>(ladder);
        byVolume.sort(Order.byNumber(row -> row.device().nominalMl()));
        for (int i = 1; i < byVolume.size(); i++) {
            Device smaller = byVolume.get(i - 1).device();
            Device larger = byVolume.get(i).device();
            if (larger.nominalMl() == smaller.nominalMl()) {
                continue;
            }
            boolean falls = larger.widthCm() < smaller.widthCm();
            boolean stands = larger.widthCm() <= smaller.widthCm() && larger.projectionCm() <= smaller.projectionCm();
            if (falls || stands) {
                findings.add(CatalogueFinding.query(byVolume.get(i).line(), "ladder-not-rising", "line "
                        + byVolume.get(i).line() + " (" + larger.id() + "): " + DeviceText.ml(larger.nominalMl()) + " is "
                        + DeviceText.number(larger.widthCm()) + " cm wide, " + (falls ? "narrower than" : "no larger than")
                        + " line " + byVolume.get(i - 1).line() + " with " + DeviceText.ml(smaller.nominalMl()) + " and "
                        + DeviceText.number(smaller.widthCm()) + " cm in the same profile"));
            }
        }
        return findings;
    }

    /** GEO-05: at one volume, a taller class is narrower and projects further. */
    private static List<CatalogueFinding> classesInOrder(List<Placed> equals) {
        List<CatalogueFinding> findings = new ArrayList<>();
        List<Placed> byClass = new ArrayList<>(equals);
        byClass.sort(Order.by(row -> row.device().profile()));
        for (int i = 1; i < byClass.size(); i++) {
            Device flatter = byClass.get(i - 1).device();
            Device taller = byClass.get(i).device();
            if (taller.profile() != flatter.profile()
                    && (taller.projectionCm() <= flatter.projectionCm() || taller.widthCm() >= flatter.widthCm())) {
                findings.add(CatalogueFinding.query(byClass.get(i).line(), "profile-out-of-order", "line "
                        + byClass.get(i).line() + " (" + taller.id() + "): " + taller.profile().key() + " at "
                        + DeviceText.ml(taller.nominalMl()) + " should be narrower and project further than "
                        + flatter.profile().key() + " on line " + byClass.get(i - 1).line()));
            }
        }
        return findings;
    }

    private static Map<List<Object>, List<Placed>> groups(List<Placed> rows, Function<Device, List<Object>> key) {
        Map<List<Object>, List<Placed>> groups = new LinkedHashMap<>();
        for (Placed row : rows) {
            groups.computeIfAbsent(key.apply(row.device()), unused -> new ArrayList<>()).add(row);
        }
        return groups;
    }
}

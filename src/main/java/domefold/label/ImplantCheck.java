package domefold.label;

import domefold.device.Device;
import domefold.device.Fill;
import domefold.outcome.Band;
import domefold.outcome.Note;
import domefold.patient.Side;
import domefold.record.Settlement;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What was put in, held against what was settled. Nothing here forbids: a surgeon decides in theatre; every difference is
 * said.
 */
public final class ImplantCheck {
    private ImplantCheck() {}

    /**
     * The differences of one side, in words that name the side; empty where all agrees.
     *
     * @param settled what was settled for that side, empty where nothing was
     * @param device the device put in as the list shows it, empty where the list does not have it
     */
    public static List<Note> differences(ImplantedDevice in, Optional<Settlement> settled, Optional<Device> device) {
        List<Note> notes = new ArrayList<>();
        if (settled.isEmpty()) {
            notes.add(note("nothing-settled", in.side(), "nothing was settled for this side"));
        } else {
            compare(in, settled.get(), notes);
        }
        if (device.isEmpty()) {
            notes.add(note("not-in-list", in.side(), "the device list has no " + in.reference()));
        } else {
            fillAgainstLabelRange(in, device.get(), notes);
        }
        in.label().ifPresentOrElse(label -> label(in, label, notes),
                () -> notes.add(note("label-not-read", in.side(), "the label was neither scanned nor typed")));
        return List.copyOf(notes);
    }

    /** What is odd about the two sides together, for example one label scanned for both. */
    public static List<Note> between(ImplantedDevice left, ImplantedDevice right) {
        List<Note> notes = new ArrayList<>();
        Optional<String> leftSerial = left.label().flatMap(DeviceLabel::serial);
        if (leftSerial.isPresent() && leftSerial.equals(right.label().flatMap(DeviceLabel::serial))) {
            notes.add(new Note("one-label-for-both", "LEFT and RIGHT carry the same serial " + leftSerial.get()
                    + "; one label was read twice"));
        }
        if (!left.on().equals(right.on())) {
            notes.add(new Note("two-days", "LEFT is entered for " + left.on() + " and RIGHT for " + right.on()));
        }
        return List.copyOf(notes);
    }

    private static void compare(ImplantedDevice in, Settlement settled, List<Note> notes) {
        boolean same = in.reference().equals(settled.device().id());
        boolean neighbour = settled.neighbours().stream().anyMatch(near -> near.id().equals(in.reference()));
        if (!same) {
            notes.add(note(neighbour ? "neighbouring-size" : "other-device", in.side(), in.reference() + " was put in where "
                    + settled.device().id() + " was settled"
                    + (neighbour ? "; it is one of the sizes that were kept in the room" : "")));
        }
        if (in.fillMl() != settled.fillMl()) {
            double moreMl = in.fillMl() - settled.fillMl();
            notes.add(note("other-fill", in.side(), ml(in.fillMl()) + " where " + ml(settled.fillMl()) + " was settled, "
                    + ml(Math.abs(moreMl)) + (moreMl > 0 ? " more" : " less")));
        }
    }

    private static void fillAgainstLabelRange(ImplantedDevice in, Device device, List<Note> notes) {
        if (device.fill() == Fill.GEL && in.fillMl() != device.nominalMl()) {
            notes.add(note("gel-fill", in.side(), "a gel device holds its nominal " + ml(device.nominalMl()) + ", entered was "
                    + ml(in.fillMl())));
        }
        Optional<Band> range = device.labelFillMl();
        if (range.isPresent() && !range.get().includes(in.fillMl())) {
            notes.add(note("fill-outside-label", in.side(), ml(in.fillMl()) + " is outside the label's fill of "
                    + ml(range.get().low()) + " to " + ml(range.get().high())));
        }
    }

    private static void label(ImplantedDevice in, DeviceLabel label, List<Note> notes) {
        if (label.scheme() == DeviceLabel.Scheme.TYPED) {
            notes.add(note("label-unchecked", in.side(), "the identifier was typed and carries no check digit"));
        }
        if (label.productCode().isEmpty() && !label.deviceIdentifier().equals(in.reference())) {
            notes.add(note("label-not-comparable", in.side(), "the label names " + label.deviceIdentifier()
                    + ", which the device list does not carry; compare it with " + in.reference() + " by eye"));
        }
        label.productCode().filter(code -> !code.equals(in.reference())).ifPresent(code -> notes.add(note("label-names-another",
                in.side(), "the label names " + code + " where " + in.reference() + " is entered")));
        label.expires().filter(end -> end.date().isBefore(in.on())).ifPresent(end -> notes.add(note("expired", in.side(),
                "the label's last day of use was " + end.date() + ", put in on " + in.on())));
        label.made().filter(made -> made.date().isAfter(in.on())).ifPresent(made -> notes.add(note("made-later", in.side(),
                "the label's day of manufacture, " + made.date() + ", lies after " + in.on())));
    }

    private static Note note(String code, Side side, String text) {
        return new Note(code, side.name() + ": " + text);
    }

    /** As entered: a difference of less than a millilitre must not read as none. */
    private static String ml(double volumeMl) {
        return volumeMl == Math.rint(volumeMl)
                ? String.format(Locale.ROOT, "%.0f mL", volumeMl)
                : java.math.BigDecimal.valueOf(volumeMl).stripTrailingZeros().toPlainString() + " mL";
    }
}

package domefold.device;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The sizes to have in the room: the next smaller and the next larger of the same line, surface and profile. */
public final class Neighbours {
    private Neighbours() {}

    /** None, one or two devices, smaller first. */
    public static List<Device> of(Catalogue catalogue, Device device) {
        List<Device> ladder = catalogue.devices().stream()
                .filter(d -> d.line().equals(device.line()) && d.fill() == device.fill()
                        && d.surface() == device.surface() && d.profile() == device.profile())
                .sorted(Comparator.comparingDouble(Device::nominalMl)).toList();
        int at = ladder.indexOf(device);
        List<Device> neighbours = new ArrayList<>();
        if (at > 0) {
            neighbours.add(ladder.get(at - 1));
        }
        if (at >= 0 && at + 1 < ladder.size()) {
            neighbours.add(ladder.get(at + 1));
        }
        return neighbours;
    }
}

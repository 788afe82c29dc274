package domefold.device;

import domefold.basics.Lists;
import java.util.List;
import java.util.Optional;

/**
 * A device list.
 *
 * @param name from its {@code # name:} line, or its file name
 * @param date from its {@code # date:} line, as text, empty if it has none
 * @param note from its {@code # note:} line, empty if it has none
 * @param sha256 digest of the exact bytes it was read from
 * @param invented true for the list that ships with the program
 * @param devices its rows, in order
 */
public record Catalogue(
        String name, String date, String note, String sha256, boolean invented, List<Device> devices) {
    public Catalogue {
        devices = List.copyOf(devices);
    }

    public Optional<Device> find(String id) {
        return Lists.first(devices, device -> device.id().equals(id));
    }
}

package domefold.record;

import domefold.device.Device;
import java.util.List;

/**
 * A device that lay beside the settled one.
 *
 * @param device the device as the list showed it
 * @param whyNot why it was not chosen, in words, with the side named
 */
public record Considered(Device device, List<String> whyNot) {

    public Considered {
        whyNot = List.copyOf(whyNot);
    }
}

package domefold.screen;

import domefold.device.Catalogue;

/**
 * The sentence about the device list that stands on every screen.
 *
 * @param invented whether it is the list that ships
 * @param name its name
 * @param date its date, possibly empty
 */
public record ListLine(boolean invented, String name, String date) {
    /** For the list that ships, whose devices nobody makes. */
    public static final ListLine SHIPPED = new ListLine(true, "", "");

    public static ListLine of(Catalogue list) {
        return new ListLine(list.invented(), list.name(), list.date());
    }

    /** In full. */
    public String sentence() {
        return invented ? "This device list is invented; replace it with your own before clinical use."
                : "Device list" + (date.isEmpty() ? "" : " of " + date) + ": " + name;
    }

    /** For that many cells; a long name is cut there, the warning never. */
    String sentence(int width) {
        return invented && sentence().length() > width ? "This device list is invented: not for clinical use." : sentence();
    }
}

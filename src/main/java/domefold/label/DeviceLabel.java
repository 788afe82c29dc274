package domefold.label;

import java.util.Optional;
import java.util.OptionalInt;

/**
 * What a label says about one device.
 *
 * @param scheme how it was written
 * @param deviceIdentifier the part that names the model: a GTIN, or labeller and product in HIBC, or the text as typed
 * @param productCode the maker's own product code where the label carries one apart from the identifier
 * @param lot lot or batch
 * @param serial serial number
 * @param made day of manufacture
 * @param expires last day of use
 * @param quantity pieces in the pack, where stated
 * @param asRead the text as scanned or typed
 */
public record DeviceLabel(
        Scheme scheme,
        String deviceIdentifier,
        Optional<String> productCode,
        Optional<String> lot,
        Optional<String> serial,
        Optional<LabelDate> made,
        Optional<LabelDate> expires,
        OptionalInt quantity,
        String asRead) {

    /** How the label was written. */
    public enum Scheme {
        GS1("GS1"),
        HIBC("HIBC"),
        TYPED("typed, not checked");

        private final String words;

        Scheme(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /** An identifier typed by hand from a label that is neither GS1 nor HIBC; nothing in it could be checked. */
    public static DeviceLabel typed(String text) {
        return new DeviceLabel(Scheme.TYPED, text.strip(), Optional.empty(), Optional.empty(), Optional.empty(),
                Optional.empty(), Optional.empty(), OptionalInt.empty(), text);
    }
}

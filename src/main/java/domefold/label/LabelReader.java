package domefold.label;

import domefold.outcome.Refusal;

/** Reads whatever a scanner or a person brings from a label. */
public final class LabelReader {
    private LabelReader() {}

    /**
     * The label in that text: HIBC where it starts with {@code +}, GS1 where it starts with a parenthesis, a scanner's
     * prefix or {@code 01} with at least a GTIN behind it; anything else is kept as typed and says so.
     *
     * @param nowYear the present year, for the century of two-digit years
     * @throws Refusal if it is empty, or GS1 or HIBC and not right
     */
    public static DeviceLabel read(String text, int nowYear) {
        String bare = text.strip();
        if (bare.isEmpty()) {
            throw new Refusal("label-empty", "label", "scan the label or type what is printed on it");
        }
        if (bare.startsWith("+") || bare.startsWith("*+")) {
            return HibcString.read(text, nowYear);
        }
        if (bare.startsWith("(") || bare.startsWith("]") || bare.charAt(0) == Gs1Elements.SEPARATOR
                || bare.matches("(?s)01[0-9]{14}.*")) {
            return Gs1Elements.read(text, nowYear);
        }
        return DeviceLabel.typed(text);
    }
}

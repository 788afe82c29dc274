package domefold.export;

import domefold.export.fhir.FhirBundle;
import domefold.export.pdf.Paper;
import domefold.export.pdf.PdfSheet;
import domefold.outcome.Refusal;
import domefold.record.ConsultRecord;
import domefold.sheet.Allowed;
import domefold.sheet.ClinicalSheet;
import domefold.sheet.Order;
import domefold.sheet.OrderSheet;
import domefold.sheet.PatientSheet;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;

/** One record in any of the formats it may leave in. */
public final class Exports {
    private Exports() {}

    /** What a record can leave as. */
    public enum Format {
        PDF("pdf", "pdf", "clinical summary, PDF/A-1b"),
        PATIENT("patient", "pdf", "patient's sheet, PDF/A-1b"),
        ORDER("order", "pdf", "order sheet, PDF/A-1b"),
        ICS("ics", "ics", "follow-up reminders, iCalendar"),
        FHIR("fhir", "json", "FHIR R4 document bundle");

        private final String key;
        private final String ending;
        private final String words;

        Format(String key, String ending, String words) {
            this.key = key;
            this.ending = ending;
            this.words = words;
        }

        public String key() {
            return key;
        }

        /** What a file of it ends in, without the dot. */
        public String ending() {
            return ending;
        }

        public String words() {
            return words;
        }

        /**
         * The format of that key.
         *
         * @throws Refusal for an unknown one, with the known ones named
         */
        public static Format of(String key) {
            for (Format format : values()) {
                if (format.key.equals(key.strip().toLowerCase(Locale.ROOT))) {
                    return format;
                }
            }
            throw new Refusal("export-format", "--as", "'" + key + "' is no format; there are "
                    + String.join(", ", List.of(values()).stream().map(Format::key).toList()));
        }
    }

    /**
     * The record as bytes of that format.
     *
     * @param sha256 digest of the record file's exact bytes
     * @throws Refusal if the record must not leave, see {@link Allowed}
     */
    public static byte[] of(ConsultRecord record, String sha256, Format format, Paper paper) {
        Allowed.toLeave(record);
        switch (format) {
            case PDF:
                return PdfSheet.of(ClinicalSheet.of(record, sha256, PlanLimits.of(record.planJson())),
                        record.authorship().savedAt(), paper);
            case PATIENT:
                return PdfSheet.of(PatientSheet.of(record, sha256), record.authorship().savedAt(), paper);
            case ORDER:
                Allowed.toOrder(record);
                return PdfSheet.of(OrderSheet.of(Order.of(record, sha256)), record.authorship().savedAt(), paper);
            case ICS:
                return FollowUpCalendar.of(record, FollowUpCalendar.Reading.EARLIEST).getBytes(StandardCharsets.UTF_8);
            default:
                return FhirBundle.of(record, sha256).getBytes(StandardCharsets.UTF_8);
        }
    }
}

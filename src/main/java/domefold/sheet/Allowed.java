package domefold.sheet;

import domefold.outcome.Refusal;
import domefold.patient.Side;
import domefold.record.ConsultRecord;
import domefold.record.RecordStatus;

/** Which records may leave as what. Every refusal is one sentence. */
public final class Allowed {
    private Allowed() {}

    /**
     * A clinical summary, a patient's sheet, a calendar, a bundle for another system.
     *
     * @throws Refusal for an invented patient
     */
    public static void toLeave(ConsultRecord record) {
        if (record.practice()) {
            throw new Refusal("practice-record", record.id(),
                    "case " + record.id() + " is an invented patient; practice records are not ordered or exported");
        }
    }

    /**
     * An order.
     *
     * @throws Refusal for an invented patient, for what is not signed, entered in error or not settled
     */
    public static void toOrder(ConsultRecord record) {
        toLeave(record);
        if (record.status() == RecordStatus.DRAFT) {
            throw new Refusal("order-of-draft", record.id(), "case " + record.id() + " is a draft; sign it off, then order");
        }
        if (record.status() == RecordStatus.ENTERED_IN_ERROR) {
            throw new Refusal("order-of-error", record.id(),
                    "case " + record.id() + " was entered in error; nothing is ordered from it");
        }
        if (record.side(Side.LEFT).isEmpty() && record.side(Side.RIGHT).isEmpty()) {
            throw new Refusal("nothing-settled", record.id(), "case " + record.id() + " has no device settled on either side");
        }
    }
}

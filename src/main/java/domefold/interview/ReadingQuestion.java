package domefold.interview;

import domefold.outcome.Note;
import domefold.outcome.Refusal;
import domefold.patient.Case;
import domefold.patient.Measure;
import domefold.patient.Reading;
import domefold.patient.Readings;
import domefold.patient.Side;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Asks for one number of the whole patient or her chest, for example height or the gap between the breasts. */
final class ReadingQuestion implements Question {
    private final Measure measure;
    private final Room room;
    private final boolean required;

    ReadingQuestion(Measure measure, Room room, boolean required) {
        if (measure.of() == Measure.Of.SIDE) {
            throw new IllegalArgumentException(measure + " is read on each side");
        }
        this.measure = measure;
        this.room = room;
        this.required = required;
    }

    @Override
    public String id() {
        return measure.field();
    }

    @Override
    public Room room() {
        return room;
    }

    @Override
    public String prompt() {
        return Words.capital(measure.words());
    }

    @Override
    public String expects() {
        return "in " + measure.unit();
    }

    @Override
    public boolean required() {
        return required;
    }

    private Readings readings(Dossier dossier) {
        return dossier.patientCase().readings(measure, Side.LEFT);
    }

    @Override
    public boolean answered(Dossier dossier) {
        return readings(dossier).has(measure);
    }

    @Override
    public Taken answer(String typed, Dossier dossier, Guide guide) {
        List<Typed.Piece> pieces = Typed.pieces(typed, measure.words(), id(), measure.unit());
        if (pieces.size() != 1 || !pieces.get(0).word().isEmpty()) {
            throw new Refusal("one-value", id(), "one value in " + measure.unit() + " is expected, for example "
                    + example() + (required ? "" : "; `skip` leaves it open"));
        }
        Typed.Piece piece = pieces.get(0);
        List<Note> remarks = new ArrayList<>(Accept.checked(guide, measure, piece, Optional.empty()));
        Reading reading = new Reading(piece.value(), typed.strip(), dossier.patientCase().readBy(), 1);
        Dossier next = with(dossier, readings(dossier).with(measure, reading));
        remarks.addAll(Remarks.newFindings(id(), dossier.patientCase(), next.patientCase(), guide));
        return new Taken(next, remarks);
    }

    @Override
    public Dossier open(Dossier dossier) {
        return with(dossier, readings(dossier).without(measure));
    }

    private Dossier with(Dossier dossier, Readings changed) {
        Case patientCase = dossier.patientCase();
        return dossier.withCase(measure.of() == Measure.Of.PATIENT
                ? patientCase.withPatient(changed) : patientCase.withChest(changed));
    }

    private String example() {
        return switch (measure) {
            case AGE -> "31";
            case HEIGHT -> "166";
            case WEIGHT -> "58";
            case THORACIC_PERIMETER -> "74";
            case BUST -> "82";
            case INTER_NIPPLE -> "20.5";
            default -> "2.4";
        };
    }

    @Override
    public Optional<String> shown(Dossier dossier) {
        return readings(dossier).get(measure).map(reading -> Words.value(measure, reading.value()));
    }

    @Override
    public List<String> help(Guide guide) {
        return guide.howTaken(measure);
    }
}

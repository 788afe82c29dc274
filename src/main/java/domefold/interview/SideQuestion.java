package domefold.interview;

import domefold.outcome.Note;
import domefold.outcome.Refusal;
import domefold.patient.Breast;
import domefold.patient.Measure;
import domefold.patient.Reading;
import domefold.patient.ReadBy;
import domefold.patient.Readings;
import domefold.patient.Side;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BiPredicate;

/**
 * Asks for one reading on each side in one line: {@code 12.5 12.8}. {@code same} repeats the left; {@code left 12.5}
 * changes one side; {@code again 12.6 12.9} adds a second reading, which is averaged with the first.
 */
final class SideQuestion implements Question {
    private final Measure measure;
    private final Room room;
    private final boolean required;
    private final BiPredicate<Dossier, Guide> pointless;

    SideQuestion(Measure measure, Room room, boolean required, BiPredicate<Dossier, Guide> pointless) {
        this.measure = measure;
        this.room = room;
        this.required = required;
        this.pointless = pointless;
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
        return "LEFT RIGHT in " + measure.unit();
    }

    @Override
    public boolean required() {
        return required;
    }

    @Override
    public boolean answered(Dossier dossier) {
        return reading(dossier, Side.LEFT).isPresent() || reading(dossier, Side.RIGHT).isPresent();
    }

    @Override
    public boolean pointless(Dossier dossier, Guide guide) {
        return pointless.test(dossier, guide);
    }

    @Override
    public Dossier open(Dossier dossier) {
        Dossier next = dossier;
        for (Side side : Side.values()) {
            next = with(next, side, next.patientCase().side(side).readings().without(measure));
        }
        return next;
    }

    private Optional<Reading> reading(Dossier dossier, Side side) {
        return dossier.patientCase().side(side).readings().get(measure);
    }

    @Override
    public Taken answer(String typed, Dossier dossier, Guide guide) {
        String line = typed.strip().toLowerCase(Locale.ROOT);
        boolean again = line.startsWith("again ");
        String rest = again ? line.substring("again ".length()) : line;
        for (Side side : Side.values()) {
            if (rest.startsWith(side.key() + " ")) {
                List<Typed.Piece> pieces = pieces(rest.substring(side.key().length()));
                if (pieces.size() != 1 || pieces.get(0).isSame()) {
                    throw new Refusal("one-value", id(), "after `" + side.key() + "` one value is expected");
                }
                return put(dossier, guide, side == Side.LEFT ? pieces.get(0) : null,
                        side == Side.RIGHT ? pieces.get(0) : null, again);
            }
        }
        List<Typed.Piece> pieces = pieces(rest);
        if (pieces.size() == 1 && pieces.get(0).isSame()) {
            return put(dossier, guide, null, copyOfLeft(dossier), again);
        }
        if (pieces.size() != 2 || pieces.get(0).isSame()) {
            throw new Refusal("two-values", id(), "two values are expected, LEFT then RIGHT, for example "
                    + "`12.5 12.8`; `12.5 same` where they are equal, `left 12.5` for one side");
        }
        Typed.Piece right = pieces.get(1).isSame() ? pieces.get(0) : pieces.get(1);
        return put(dossier, guide, pieces.get(0), right, again);
    }

    private List<Typed.Piece> pieces(String text) {
        return Typed.pieces(text, measure.words(), id(), measure.unit());
    }

    private Typed.Piece copyOfLeft(Dossier dossier) {
        Reading left = reading(dossier, Side.LEFT).orElseThrow(() -> new Refusal("same-as-nothing", id(),
                "`same` repeats the LEFT, which has no value yet; for example `12.5 same`"));
        return new Typed.Piece("", left.value(), left.typed());
    }

    private Taken put(Dossier dossier, Guide guide, Typed.Piece left, Typed.Piece right, boolean again) {
        List<Note> remarks = new ArrayList<>();
        Dossier next = dossier;
        for (Side side : Side.values()) {
            Typed.Piece piece = side == Side.LEFT ? left : right;
            if (piece == null) {
                continue;
            }
            if (piece.isSkip()) {
                if (required) {
                    throw new Refusal("required", id(), measure.words() + " is needed on the " + side + " side too");
                }
                next = with(next, side, next.patientCase().side(side).readings().without(measure));
                continue;
            }
            remarks.addAll(Accept.checked(guide, measure, piece, Optional.of(side)));
            next = with(next, side, next.patientCase().side(side).readings().with(measure, take(next, side, piece, again)));
        }
        remarks.addAll(Remarks.newFindings(id(), dossier.patientCase(), next.patientCase(), guide));
        remarks.addAll(Remarks.secondReadings(measure, next.patientCase(), guide));
        return new Taken(next, remarks);
    }

    private Reading take(Dossier dossier, Side side, Typed.Piece piece, boolean again) {
        ReadBy readBy = dossier.patientCase().readBy();
        Optional<Reading> before = reading(dossier, side);
        if (!again || before.isEmpty()) {
            return new Reading(piece.value(), piece.text(), readBy, 1);
        }
        Reading first = before.get();
        double mean = (first.value() * first.takes() + piece.value()) / (first.takes() + 1);
        return new Reading(mean, first.typed() + " again " + piece.text(), first.readBy(), first.takes() + 1);
    }

    private static Dossier with(Dossier dossier, Side side, Readings changed) {
        Breast breast = dossier.patientCase().side(side);
        return dossier.withCase(dossier.patientCase().withSide(side, new Breast(changed, breast.ptosis())));
    }

    @Override
    public Optional<String> shown(Dossier dossier) {
        if (!answered(dossier)) {
            return Optional.empty();
        }
        return Optional.of("LEFT " + shown(dossier, Side.LEFT) + "   RIGHT " + shown(dossier, Side.RIGHT));
    }

    private String shown(Dossier dossier, Side side) {
        Optional<Reading> reading = reading(dossier, side);
        String value = Words.value(measure, dossier.patientCase().side(side).readings().value(measure));
        return reading.filter(r -> r.takes() > 1).map(r -> value + " (mean of " + r.takes() + ")").orElse(value);
    }

    @Override
    public List<String> help(Guide guide) {
        return guide.howTaken(measure);
    }
}

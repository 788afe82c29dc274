package domefold.interview;

import domefold.engine.ReadingCheck;
import domefold.outcome.Note;
import domefold.outcome.Refusal;
import domefold.patient.Measure;
import domefold.patient.Side;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** One typed value against its gate. */
final class Accept {
    private Accept() {}

    /**
     * What to say about an accepted value.
     *
     * @throws Refusal where the gate refuses it
     */
    static List<Note> checked(Guide guide, Measure measure, Typed.Piece piece, Optional<Side> side) {
        String before = side.map(s -> s + ": ").orElse("");
        ReadingCheck check = guide.check(measure, piece.value());
        if (check.refused()) {
            Note note = check.note().orElseThrow();
            throw new Refusal(note.code(), measure.field(), before + note.text());
        }
        List<Note> remarks = new ArrayList<>();
        if (piece.converted(measure.unit())) {
            remarks.add(new Note("unit-converted", before + "'" + piece.text() + "' was taken as "
                    + Words.value(measure, piece.value())));
        }
        check.note().ifPresent(note -> remarks.add(new Note(note.code(), before + note.text())));
        return remarks;
    }
}

package domefold.interview;

import domefold.outcome.Note;
import domefold.outcome.Refusal;
import domefold.patient.Breast;
import domefold.patient.Ptosis;
import domefold.patient.Side;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Ptosis grade on each side, as words: {@code none same}, {@code I II}, {@code glandular none}. */
final class PtosisEntry implements Question {
    @Override
    public String id() {
        return "ptosis";
    }

    @Override
    public Room room() {
        return Room.FOLD;
    }

    @Override
    public String prompt() {
        return "Ptosis";
    }

    @Override
    public String expects() {
        return "LEFT RIGHT: none, glandular, I, II or III";
    }

    @Override
    public boolean answered(Dossier dossier) {
        return dossier.patientCase().left().ptosis().isPresent() || dossier.patientCase().right().ptosis().isPresent();
    }

    @Override
    public Taken answer(String typed, Dossier dossier, Guide guide) {
        String[] words = typed.strip().toLowerCase(Locale.ROOT).split("[\\s,;/]+");
        if (words.length != 2) {
            throw new Refusal("two-values", id(),
                    "two words are expected, LEFT then RIGHT, for example `none same` or `I II`");
        }
        Ptosis left = grade(words[0]);
        Ptosis right = List.of("same", "=", "s").contains(words[1]) ? left : grade(words[1]);
        Dossier next = with(with(dossier, Side.LEFT, left), Side.RIGHT, right);
        List<Note> remarks = Remarks.onPtosis(next.patientCase());
        return new Taken(next, remarks);
    }

    private Ptosis grade(String word) {
        String plain = switch (word) {
            case "1" -> "i";
            case "2" -> "ii";
            case "3" -> "iii";
            case "0" -> "none";
            default -> word;
        };
        return Option.pick(id(), plain, List.of(Ptosis.values()), Ptosis::key);
    }

    private static Dossier with(Dossier dossier, Side side, Ptosis grade) {
        Breast breast = dossier.patientCase().side(side);
        return dossier.withCase(dossier.patientCase().withSide(side, new Breast(breast.readings(), Optional.of(grade))));
    }

    @Override
    public Optional<String> shown(Dossier dossier) {
        if (!answered(dossier)) {
            return Optional.empty();
        }
        return Optional.of("LEFT " + dossier.patientCase().left().ptosis().map(Ptosis::key).orElse("not graded")
                + "   RIGHT " + dossier.patientCase().right().ptosis().map(Ptosis::key).orElse("not graded"));
    }

    @Override
    public List<String> help(Guide guide) {
        return List.of(
                "none: nipple above the fold, gland above it too",
                "glandular: nipple above the fold, gland below it",
                "I: nipple at the level of the fold",
                "II: nipple below the fold, above the lowest contour",
                "III: nipple below the fold, at the lowest contour",
                "Looked at from eye level. The scheme names no centimetres (read-secondary).");
    }

    @Override
    public List<String> words(Dossier dossier, Guide guide) {
        return List.of("none", "glandular", "I", "II", "III", "same");
    }
}

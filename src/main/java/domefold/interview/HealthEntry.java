package domefold.interview;

import domefold.outcome.Note;
import domefold.outcome.Refusal;
import domefold.patient.HealthQuestion;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** The health questions that gate, answered in one line: {@code none}, or those that are so: {@code nicotine, surgery}. */
final class HealthEntry implements Question {
    private static final Map<String, HealthQuestion> KEYWORDS = Map.ofEntries(
            Map.entry("nicotine", HealthQuestion.NICOTINE),
            Map.entry("smoke", HealthQuestion.NICOTINE),
            Map.entry("pregnant", HealthQuestion.PREGNANT_OR_NURSING),
            Map.entry("nursing", HealthQuestion.PREGNANT_OR_NURSING),
            Map.entry("infection", HealthQuestion.ACTIVE_INFECTION),
            Map.entry("disease", HealthQuestion.UNTREATED_BREAST_DISEASE),
            Map.entry("cancer", HealthQuestion.UNTREATED_BREAST_DISEASE),
            Map.entry("irradiation", HealthQuestion.CHEST_IRRADIATION),
            Map.entry("radiation", HealthQuestion.CHEST_IRRADIATION),
            Map.entry("surgery", HealthQuestion.EARLIER_BREAST_SURGERY));
    private static final List<String> IGNORED =
            List.of("active", "untreated", "breast", "chest", "earlier", "or", "and", "yes", "smoker");

    @Override
    public String id() {
        return "health";
    }

    @Override
    public Room room() {
        return Room.WHO;
    }

    @Override
    public String prompt() {
        return "Nicotine, pregnant or nursing, infection, breast disease, irradiation, breast surgery";
    }

    @Override
    public String label() {
        return "Health";
    }

    @Override
    public String expects() {
        return "`none`, or the words that apply";
    }

    @Override
    public boolean answered(Dossier dossier) {
        return !dossier.patientCase().history().isEmpty();
    }

    @Override
    public Taken answer(String typed, Dossier dossier, Guide guide) {
        Map<HealthQuestion, Boolean> history = new EnumMap<>(HealthQuestion.class);
        for (HealthQuestion question : HealthQuestion.values()) {
            history.put(question, false);
        }
        String line = typed.strip().toLowerCase(Locale.ROOT);
        List<Note> remarks = new ArrayList<>();
        if (!List.of("none", "no", "nothing", "n").contains(line)) {
            for (String word : line.split("[\\s,;/]+")) {
                if (!IGNORED.contains(word)) {
                    history.put(find(word), true);
                }
            }
            remarks.addAll(Remarks.onHistory(history));
        }
        return new Taken(dossier.withCase(dossier.patientCase().withHistory(history)), remarks);
    }

    private HealthQuestion find(String word) {
        List<HealthQuestion> found = KEYWORDS.entrySet().stream()
                .filter(entry -> word.length() >= 3 && (entry.getKey().startsWith(word) || word.startsWith(entry.getKey())))
                .map(Map.Entry::getValue).distinct().toList();
        if (found.size() != 1) {
            throw new Refusal("unknown-word", id(), "'" + word + "' is none of: nicotine, pregnant, nursing, "
                    + "infection, disease, irradiation, surgery; `none` if none applies");
        }
        return found.get(0);
    }

    @Override
    public Optional<String> shown(Dossier dossier) {
        if (!answered(dossier)) {
            return Optional.empty();
        }
        String yes = dossier.patientCase().history().entrySet().stream().filter(Map.Entry::getValue)
                .map(entry -> entry.getKey().words()).collect(Collectors.joining(", "));
        return Optional.of(yes.isEmpty() ? "none of these" : yes);
    }

    @Override
    public List<String> help(Guide guide) {
        return List.of(
                "Answered together: `none` says no to all six; otherwise type the words that apply.",
                "Pregnant or nursing, an active infection and untreated breast disease block (patient decision"
                        + " checklist, 2021; read-secondary).",
                "Nicotine, irradiation of the chest and earlier surgery are cautions.",
                "`skip` leaves all six unasked, which is not the same as no.");
    }

    @Override
    public List<String> words(Dossier dossier, Guide guide) {
        return List.of("none", "nicotine", "pregnant", "nursing", "infection", "disease", "irradiation", "surgery");
    }
}

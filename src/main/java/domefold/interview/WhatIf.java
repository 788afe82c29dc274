package domefold.interview;

import domefold.outcome.Refusal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Another answer tried out beside the consult, not in it: {@code if base width 12.8 13}, {@code if route periareolar}. It
 * is taken as a whole or dropped as a whole; each change can be taken back.
 *
 * @param before the consult as it stands
 * @param trial the consult with the changes
 * @param changes the changes, in order
 */
public record WhatIf(Interview before, Interview trial, List<Change> changes) {
    /** Shorter names than the questions' own. */
    private static final Map<String, String> SHORT_NAMES = Map.of("schedule", "surveillance", "size", "sizeWishMl",
            "weights", "weights", "horizon", "horizonYears", "surface", "surfaces", "fold", "lowering",
            "stretched", "nippleToFoldStretchedCm", "pinch", "upperPinchCm", "gap", "intermammaryCm");

    /**
     * One changed answer.
     *
     * @param questionId the question
     * @param label its name for a person
     * @param typed the answer tried
     * @param was the answer that stands, in words
     * @param now the answer tried, in words
     */
    public record Change(String questionId, String label, String typed, String was, String now) {}

    public WhatIf {
        changes = List.copyOf(changes);
    }

    /** Nothing changed yet. */
    public static WhatIf on(Interview interview) {
        return new WhatIf(interview, interview, List.of());
    }

    /**
     * One more change, in words: the name of a question, then an answer to it.
     *
     * @throws Refusal where the words name no question, or the answer is not accepted
     */
    public WhatIf with(String words) {
        String line = words.strip().replaceFirst("(?i)^the ", "");
        Named named = name(line).orElseThrow(() -> new Refusal("no-question", "if", "'" + line
                + "' begins with no reading, wish or choice; for example `if base width 12.8 13`, `if pocket dual-plane`, "
                + "`if schedule FR-2018`, `if weights 5 0 0 0 0 3 0`"));
        if (named.rest().isBlank()) {
            throw new Refusal("no-answer", "if", "what should " + named.question().label() + " be? "
                    + named.question().expects());
        }
        Interview next = trial.answer(named.question().id(), named.rest());
        List<Change> all = new ArrayList<>(changes);
        all.add(new Change(named.question().id(), named.question().label(), named.rest(),
                named.question().shown(before.dossier()).orElse("open"), named.question().shown(next.dossier()).orElse("open")));
        return new WhatIf(before, next, all);
    }

    /** Without the last change. */
    public WhatIf undone() {
        if (changes.isEmpty()) {
            return this;
        }
        List<Change> fewer = changes.subList(0, changes.size() - 1);
        Interview again = before;
        for (Change change : fewer) {
            again = again.answer(change.questionId(), change.typed());
        }
        return new WhatIf(before, again, fewer);
    }

    private record Named(Question question, String rest) {}

    /** The question with the longest name that the words begin with. */
    private Optional<Named> name(String line) {
        String lower = line.toLowerCase(Locale.ROOT);
        Named best = null;
        int longest = 0;
        for (Question question : before.questions()) {
            for (String name : names(question)) {
                boolean whole = lower.equals(name) || lower.startsWith(name + " ");
                if (whole && name.length() > longest) {
                    longest = name.length();
                    best = new Named(question, line.substring(name.length()).strip());
                }
            }
        }
        return Optional.ofNullable(best);
    }

    private static List<String> names(Question question) {
        List<String> names = new ArrayList<>();
        names.add(question.id().toLowerCase(Locale.ROOT));
        names.add(question.label().toLowerCase(Locale.ROOT));
        names.add(question.label().toLowerCase(Locale.ROOT).replace(",", ""));
        SHORT_NAMES.forEach((name, id) -> {
            if (id.equals(question.id())) {
                names.add(name);
            }
        });
        return names;
    }

    /** Every name that can follow {@code if}, for completion. */
    public static List<String> names(Interview interview) {
        return interview.questions().stream().map(question -> question.label().toLowerCase(Locale.ROOT)).toList();
    }
}

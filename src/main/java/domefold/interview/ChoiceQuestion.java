package domefold.interview;

import domefold.outcome.Note;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.BiPredicate;
import java.util.function.Function;

/**
 * Asks for one word of a few. Built from functions, so that each such question is one entry of {@link Questions}.
 *
 * @param <T> what the words stand for
 */
final class ChoiceQuestion<T> implements Question {
    private final String id;
    private final Room room;
    private final String prompt;
    private final Function<Guide, List<T>> options;
    private final Function<T, String> word;
    private final Function<T, String> meaning;
    private final Function<Dossier, Optional<T>> get;
    private final BiFunction<Dossier, T, Dossier> put;
    private final BiPredicate<Dossier, Guide> pointless;

    ChoiceQuestion(
            String id,
            Room room,
            String prompt,
            Function<Guide, List<T>> options,
            Function<T, String> word,
            Function<T, String> meaning,
            Function<Dossier, Optional<T>> get,
            BiFunction<Dossier, T, Dossier> put,
            BiPredicate<Dossier, Guide> pointless) {
        this.id = id;
        this.room = room;
        this.prompt = prompt;
        this.options = options;
        this.word = word;
        this.meaning = meaning;
        this.get = get;
        this.put = put;
        this.pointless = pointless;
    }

    @Override
    public String id() {
        return id;
    }

    @Override
    public Room room() {
        return room;
    }

    @Override
    public String prompt() {
        return prompt;
    }

    @Override
    public String expects() {
        return "one word";
    }

    @Override
    public boolean answered(Dossier dossier) {
        return get.apply(dossier).isPresent();
    }

    @Override
    public boolean pointless(Dossier dossier, Guide guide) {
        return pointless.test(dossier, guide);
    }

    @Override
    public Taken answer(String typed, Dossier dossier, Guide guide) {
        T picked = Option.pick(id, typed, options.apply(guide), word);
        return new Taken(put.apply(dossier, picked), List.<Note>of());
    }

    @Override
    public Optional<String> shown(Dossier dossier) {
        return get.apply(dossier).map(word);
    }

    @Override
    public List<String> help(Guide guide) {
        List<String> lines = new ArrayList<>();
        for (T option : options.apply(guide)) {
            lines.add(word.apply(option) + ": " + meaning.apply(option));
        }
        return lines;
    }

    @Override
    public List<String> words(Dossier dossier, Guide guide) {
        return options.apply(guide).stream().map(word).toList();
    }
}

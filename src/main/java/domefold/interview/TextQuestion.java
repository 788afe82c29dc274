package domefold.interview;

import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;

/** Asks for something whose reading is a function of its own: a code, a number of years, free words. */
final class TextQuestion implements Question {
    /** Reads an answer; throws {@link domefold.outcome.Refusal} where it can't. */
    interface Reader {
        Taken read(String typed, Dossier dossier, Guide guide);
    }

    private final String id;
    private final Room room;
    private final String prompt;
    private final String expects;
    private final boolean required;
    private final Function<Guide, List<String>> help;
    private final Function<Dossier, Optional<String>> shown;
    private final BiFunction<Dossier, Guide, Optional<String>> offered;
    private final Reader reader;

    TextQuestion(
            String id,
            Room room,
            String prompt,
            String expects,
            boolean required,
            List<String> help,
            Function<Dossier, Optional<String>> shown,
            BiFunction<Dossier, Guide, Optional<String>> offered,
            Reader reader) {
        this(id, room, prompt, expects, required, guide -> help, shown, offered, reader);
    }

    TextQuestion(
            String id,
            Room room,
            String prompt,
            String expects,
            boolean required,
            Function<Guide, List<String>> help,
            Function<Dossier, Optional<String>> shown,
            BiFunction<Dossier, Guide, Optional<String>> offered,
            Reader reader) {
        this.id = id;
        this.room = room;
        this.prompt = prompt;
        this.expects = expects;
        this.required = required;
        this.help = help;
        this.shown = shown;
        this.offered = offered;
        this.reader = reader;
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
        return expects;
    }

    @Override
    public boolean required() {
        return required;
    }

    @Override
    public boolean answered(Dossier dossier) {
        return shown.apply(dossier).isPresent();
    }

    @Override
    public Taken answer(String typed, Dossier dossier, Guide guide) {
        return reader.read(typed, dossier, guide);
    }

    @Override
    public Optional<String> shown(Dossier dossier) {
        return shown.apply(dossier);
    }

    @Override
    public Optional<String> offered(Dossier dossier, Guide guide) {
        return offered.apply(dossier, guide);
    }

    @Override
    public List<String> help(Guide guide) {
        return help.apply(guide);
    }
}

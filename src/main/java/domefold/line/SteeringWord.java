package domefold.line;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Words that steer, beside answers. Help, completion and understanding come from this one table. */
public enum SteeringWord {
    HELP("help", "help, or ?", "how this question is answered, and these words", true),
    SKIP("skip", "skip", "leaves an optional question open", true),
    BACK("back", "back", "returns to the question before", true),
    GO("go", "go WORDS", "goes to a room or a question: go frame, go base width", true),
    AGAIN("again", "again LEFT RIGHT", "a second reading of the last one, averaged with it", true),
    UNDO("undo", "undo, redo", "takes the last answer back, gives it again", true),
    REDO("redo", "", "", true),
    SUMMARY("summary", "summary", "the answers so far", true),
    LIMITS("limits", "limits", "what the tissues allow, LEFT and RIGHT, with every caution", false),
    WHY("why", "why, why WORD", "the working with its sources, all of it or what names the word", false),
    IF("if", "if WORDS", "what another answer would allow; nothing changes: if base width 12.8 13", false),
    TAKE("take", "take, drop", "makes what was tried last so, or lets it be", false),
    DOUBT("doubt", "doubt", "how sure verdicts and order are, what a second reading would buy", false),
    PAIRS("pairs", "pairs", "pairs of devices for two sides that differ", false),
    OWNING("owning", "owning", "what owning the pinned devices asks: exams, published outcomes", false),
    DEVICES("devices", "devices", "the devices that fit or nearly fit; devices all, devices more", false),
    SORT("sort", "sort WORD", "orders the devices: sort width", false),
    PIN("pin", "pin NUMBER or CODE", "puts a device beside the others, up to four", false),
    DROP("drop", "drop NUMBER or CODE", "lets a pinned device go", false),
    COMPARE("compare", "compare", "the pinned devices side by side", false),
    RECORD("record", "record", "the summary as it will be saved", false),
    SIGN("sign", "sign AUTHOR", "signs the consult and saves it: sign kb", false),
    DRAFT("draft", "draft, draft AUTHOR", "saves it as it is", false),
    CONTINUE("continue", "continue NUMBER", "before the first answer: goes on with an unfinished consult", false),
    QUIT("quit", "quit", "leaves; the consult is offered again at the next start", false);

    private final String word;
    private final String form;
    private final String meaning;
    private final boolean interviews;

    SteeringWord(String word, String form, String meaning, boolean interviews) {
        this.word = word;
        this.form = form;
        this.meaning = meaning;
        this.interviews = interviews;
    }

    public String word() {
        return word;
    }

    /** How it is typed; empty where another word's form shows it. */
    public String form() {
        return form;
    }

    public String meaning() {
        return meaning;
    }

    /** True where the interview itself understands it. */
    boolean isInterviews() {
        return interviews;
    }

    /** The word of this face that the line begins with. */
    static Optional<SteeringWord> leading(String line) {
        String first = line.strip().split("\\s+", 2)[0].toLowerCase(Locale.ROOT);
        return List.of(values()).stream().filter(w -> !w.interviews && w.word.equals(first)).findFirst();
    }
}

package domefold.interview;

import domefold.choose.ByWishes;
import domefold.outcome.Refusal;
import domefold.plan.Plan;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * A consult as far as it has come. Immutable: an answer gives a new one that remembers this one, so undo loses nothing.
 *
 * <p>Start at {@link #say}, which takes a line as typed and understands answers and the words that steer.
 */
public final class Interview {
    /** Stands for a skipped question in journals and records. */
    public static final String SKIP = "skip";

    private final Guide guide;
    private final List<Question> questions;
    private final Dossier dossier;
    private final List<Exchange> exchanges;
    private final String current;
    private final Interview before;
    private final Interview undone;
    private Plan planOnce;
    private ByWishes byWishesOnce;

    private Interview(Guide guide, List<Question> questions, Dossier dossier, List<Exchange> exchanges, String current,
            Interview before, Interview undone) {
        this.guide = guide;
        this.questions = questions;
        this.dossier = dossier;
        this.exchanges = List.copyOf(exchanges);
        this.current = current;
        this.before = before;
        this.undone = undone;
    }

    /** A consult that begins with what a case file, or nothing, already says. */
    public static Interview begin(Guide guide, Dossier start) {
        List<Question> questions = Questions.all();
        Interview fresh = new Interview(guide, questions, start, List.of(), questions.get(0).id(), null, null);
        return fresh.at(fresh.nextOpen(-1));
    }

    public Guide guide() {
        return guide;
    }

    public Dossier dossier() {
        return dossier;
    }

    public List<Question> questions() {
        return questions;
    }

    /** Questions and answers in the order given, revisions included. */
    public List<Exchange> exchanges() {
        return exchanges;
    }

    /** The question that has the floor; empty once every one has been answered or skipped. */
    public Optional<Question> current() {
        return current == null ? Optional.empty() : Optional.of(question(current));
    }

    /** The room of the question that has the floor. */
    public Room room() {
        return current().map(Question::room).orElse(Room.RECORD);
    }

    /** What the engine says so far; empty until both base widths are known. */
    public Optional<Plan> plan() {
        if (planOnce == null && Ready.forPlan(dossier.patientCase())) {
            planOnce = guide.planner().apply(dossier.patientCase());
        }
        return Optional.ofNullable(planOnce);
    }

    /**
     * The plan's devices by what matters to her, computed once.
     *
     * @throws java.util.NoSuchElementException while there is no plan
     */
    public ByWishes byWishes() {
        if (byWishesOnce == null) {
            byWishesOnce = ByWishes.of(plan().orElseThrow(), guide.evidence().constants());
        }
        return byWishesOnce;
    }

    /** The answer to a question that was skipped or answered, in words; empty while it is open. */
    public Optional<String> shown(Question question) {
        Optional<String> shown = question.shown(dossier);
        return shown.isPresent() || !skipped(question) ? shown : Optional.of("skipped");
    }

    /** Understands a typed line. Never throws for what a person types. */
    public Reply say(String line) {
        String text = line.strip();
        String lower = text.toLowerCase(Locale.ROOT);
        if (lower.equals("undo") || lower.equals("redo")) {
            return lower.equals("undo") ? undo() : redo();
        }
        if (lower.equals("back")) {
            return back();
        }
        if (lower.equals("why")) {
            return new Reply(this, Reply.Kind.WHY, List.of());
        }
        if (lower.equals("summary")) {
            return new Reply(this, Reply.Kind.SUMMARY, summary());
        }
        if (lower.equals("?") || lower.equals("help")) {
            return new Reply(this, Reply.Kind.HELP, current().map(q -> q.help(guide)).orElse(List.of()));
        }
        if (lower.startsWith("go ") || lower.startsWith("/")) {
            return go(text.substring(lower.startsWith("/") ? 1 : 3));
        }
        if (lower.startsWith("again ") && !exchanges.isEmpty() && (current == null || !question(current).answered(dossier))) {
            return taken(exchanges.get(exchanges.size() - 1).questionId(), text);
        }
        if (current == null) {
            return new Reply(this, Reply.Kind.REFUSED, List.of("Every question has its answer; `back` or `go` revises one."));
        }
        return answerCurrent(text);
    }

    private Reply answerCurrent(String text) {
        Question question = question(current);
        String answer = text;
        if (text.isEmpty()) {
            Optional<String> offered = question.offered(dossier, guide);
            if (offered.isPresent()) {
                answer = offered.get();
            } else if (question.answered(dossier) || skipped(question)) {
                return new Reply(at(nextOpen(index(current))), Reply.Kind.MOVED, List.of());
            } else {
                return new Reply(this, Reply.Kind.REFUSED, List.of(question.required()
                        ? "An answer is needed here: " + question.expects() + "."
                        : "An answer, or `skip`: " + question.expects() + "."));
            }
        }
        return taken(question.id(), answer);
    }

    private Reply taken(String questionId, String answer) {
        Interview next;
        try {
            next = answer(questionId, answer);
        } catch (Refusal refusal) {
            return new Reply(this, Reply.Kind.REFUSED, List.of(Words.sentence(refusal.getMessage())));
        }
        List<String> remarks = next.exchanges.get(next.exchanges.size() - 1).remarks().stream()
                .map(note -> Words.sentence(note.text())).toList();
        return new Reply(next, Reply.Kind.TAKEN, remarks);
    }

    /**
     * The interview with that question answered, the next open one having the floor. This is also how a journal is
     * replayed.
     *
     * @throws Refusal where the answer is not accepted, or there is no such question
     */
    public Interview answer(String questionId, String typed) {
        Question question = find(questionId).orElseThrow(
                () -> new Refusal("no-question", questionId, "there is no question '" + questionId + "'"));
        Exchange exchange;
        Dossier next;
        if (typed.strip().equalsIgnoreCase(SKIP)) {
            if (question.required()) {
                throw new Refusal("required", questionId, question.prompt() + " cannot be skipped: " + question.expects());
            }
            next = question.open(dossier);
            exchange = new Exchange(questionId, SKIP, "skipped", List.of());
        } else {
            Question.Taken taken = question.answer(typed, dossier, guide);
            next = taken.dossier();
            exchange = new Exchange(questionId, typed.strip(), question.shown(next).orElse(typed.strip()), taken.remarks());
        }
        List<Exchange> all = new ArrayList<>(exchanges);
        all.add(exchange);
        Interview answered = new Interview(guide, questions, next, all, current, this, null);
        if (next.patientCase() == dossier.patientCase()) {
            answered.planOnce = planOnce;
            answered.byWishesOnce = byWishesOnce;
        }
        boolean revised = !questionId.equals(current);
        return revised ? answered : answered.at(answered.nextOpen(index(questionId)));
    }

    /** The interview before the last answer. */
    public Reply undo() {
        if (before == null) {
            return new Reply(this, Reply.Kind.REFUSED, List.of("Nothing to take back."));
        }
        Exchange last = exchanges.get(exchanges.size() - 1);
        Interview earlier = new Interview(guide, questions, before.dossier, before.exchanges, last.questionId(),
                before.before, this);
        earlier.planOnce = before.planOnce;
        return new Reply(earlier, Reply.Kind.UNDONE,
                List.of("Taken back: " + question(last.questionId()).label().toLowerCase(Locale.ROOT) + ", " + last.shown() + "."));
    }

    /** The answer that was last taken back, given again. */
    public Reply redo() {
        if (undone == null) {
            return new Reply(this, Reply.Kind.REFUSED, List.of("Nothing was taken back."));
        }
        Exchange again = undone.exchanges.get(undone.exchanges.size() - 1);
        return new Reply(undone, Reply.Kind.UNDONE,
                List.of("Given again: " + question(again.questionId()).label().toLowerCase(Locale.ROOT) + ", " + again.shown() + "."));
    }

    private Reply back() {
        int at = current == null ? questions.size() : index(current);
        for (int i = at - 1; i >= 0; i--) {
            Question question = questions.get(i);
            if (question.answered(dossier) || skipped(question)) {
                return new Reply(at(question.id()), Reply.Kind.MOVED, List.of());
            }
        }
        return new Reply(this, Reply.Kind.REFUSED, List.of("This is the first question."));
    }

    /** Gives the floor to the question, or the first open question of the room, that those words name. */
    public Reply go(String words) {
        String wanted = words.strip().toLowerCase(Locale.ROOT);
        for (Room room : Room.values()) {
            if (room.title().equalsIgnoreCase(wanted)) {
                return new Reply(goTo(room), Reply.Kind.MOVED, List.of(room.title()));
            }
        }
        Optional<Question> found = wanted.isEmpty() ? Optional.empty() : named(wanted);
        if (found.isEmpty()) {
            return new Reply(this, Reply.Kind.REFUSED,
                    List.of("'" + words.strip() + "' names no room and no question; for example `go base width`."));
        }
        return new Reply(at(found.get().id()), Reply.Kind.MOVED, List.of());
    }

    /** The question of exactly that name, else the first whose prompt has those words in it. */
    private Optional<Question> named(String wanted) {
        return questions.stream().filter(question -> question.id().equalsIgnoreCase(wanted)
                        || question.label().equalsIgnoreCase(wanted)).findFirst()
                .or(() -> questions.stream().filter(question -> question.prompt().toLowerCase(Locale.ROOT).contains(wanted))
                        .findFirst());
    }

    /** The interview with the first open question of that room having the floor, else its first question. */
    public Interview goTo(Room room) {
        List<Question> inRoom = questions.stream().filter(question -> question.room() == room).toList();
        return inRoom.stream().filter(this::open).findFirst().or(() -> inRoom.stream().findFirst())
                .map(question -> at(question.id())).orElse(this);
    }

    /** What has been answered so far, a line each. */
    public List<String> summary() {
        List<String> lines = new ArrayList<>();
        for (Question question : questions) {
            shown(question).ifPresent(answer -> lines.add(question.label() + ": " + answer));
        }
        return lines;
    }

    /** True where nothing that is required is missing. */
    public boolean complete() {
        return questions.stream().filter(Question::required).filter(q -> !q.pointless(dossier, guide))
                .allMatch(question -> question.answered(dossier));
    }

    /** The questions of that room that are still to be asked. */
    public List<Question> openIn(Room room) {
        return questions.stream().filter(question -> question.room() == room).filter(this::open).toList();
    }

    private boolean open(Question question) {
        boolean askedAlready = !question.required() && exchanges.stream().anyMatch(e -> e.questionId().equals(question.id()));
        return !question.answered(dossier) && !skipped(question) && !askedAlready && !question.pointless(dossier, guide);
    }

    private boolean skipped(Question question) {
        for (int i = exchanges.size() - 1; i >= 0; i--) {
            if (exchanges.get(i).questionId().equals(question.id())) {
                return exchanges.get(i).typed().equals(SKIP);
            }
        }
        return false;
    }

    private String nextOpen(int after) {
        for (int i = after + 1; i < questions.size(); i++) {
            if (open(questions.get(i))) {
                return questions.get(i).id();
            }
        }
        for (int i = 0; i <= after && i < questions.size(); i++) {
            if (questions.get(i).required() && open(questions.get(i))) {
                return questions.get(i).id();
            }
        }
        return null;
    }

    private Interview at(String questionId) {
        Interview moved = new Interview(guide, questions, dossier, exchanges, questionId, before, undone);
        moved.planOnce = planOnce;
        moved.byWishesOnce = byWishesOnce;
        return moved;
    }

    private int index(String questionId) {
        for (int i = 0; i < questions.size(); i++) {
            if (questions.get(i).id().equals(questionId)) {
                return i;
            }
        }
        return -1;
    }

    private Optional<Question> find(String questionId) {
        return questions.stream().filter(question -> question.id().equals(questionId)).findFirst();
    }

    /**
     * The question of that id.
     *
     * @throws IllegalArgumentException if there is none
     */
    public Question question(String questionId) {
        return find(questionId).orElseThrow(() -> new IllegalArgumentException("no question " + questionId));
    }

    /** The answers that stand, question id to text, latest wins; what a record keeps as typed. */
    public Map<String, String> standing() {
        Map<String, String> latest = new java.util.LinkedHashMap<>();
        exchanges.forEach(exchange -> latest.put(exchange.questionId(), exchange.typed()));
        return latest;
    }
}

package domefold.practice.exercise;

import domefold.interview.Guide;
import domefold.outcome.Refusal;
import domefold.patient.Measure;
import domefold.plan.Plan;
import domefold.practice.FellowPlan;
import domefold.practice.Marking;
import domefold.practice.PracticeCase;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A practice case as far as the fellow has come. Immutable: a line gives a new one that remembers this one.
 *
 * <p>Start at {@link #say}. Before {@code commit} nothing of the engine can be seen; after it nothing can be changed.
 */
public final class Exercise {
    /** Stands for a statement left open. */
    public static final String SKIPPED = "skipped";

    private final Guide guide;
    private final PracticeCase of;
    private final Page page;
    private final Page reached;
    private final Set<String> taken;
    private final FellowPlan stated;
    private final Map<String, String> answers;
    private final String current;
    private final Exercise before;
    private final Outcome outcome;

    /** What the commitment led to. */
    private record Outcome(Plan plan, Marking marking) {}

    private Exercise(Guide guide, PracticeCase of, Page page, Page reached, Set<String> taken, FellowPlan stated, Map<String, String> answers,
            String current, Exercise before, Outcome outcome) {
        this.guide = guide;
        this.of = of;
        this.page = page;
        this.reached = reached.compareTo(page) > 0 ? reached : page;
        this.taken = taken;
        this.stated = stated;
        this.answers = answers;
        this.current = current;
        this.before = before;
        this.outcome = outcome;
    }

    public static Exercise begin(Guide guide, PracticeCase of) {
        return new Exercise(guide, of, Page.HISTORY, Page.HISTORY, Set.of(), Edit.BLANK, Map.of(), Statements.all().get(0).id(), null, null);
    }

    public Guide guide() {
        return guide;
    }

    public PracticeCase practice() {
        return of;
    }

    public Page page() {
        return page;
    }

    /** The readings she took, in the order of the pages. */
    public List<Taken> readings() {
        return Taken.of(of.of(), taken);
    }

    /** The readings she took on that page. */
    public List<Taken> readings(Page on) {
        Set<String> ids = new LinkedHashSet<>(ids(on));
        ids.retainAll(taken);
        return Taken.of(of.of(), ids);
    }

    /** How many readings there are to take. */
    public int there() {
        return Page.reading().stream().mapToInt(on -> ids(on).size()).sum();
    }

    public FellowPlan stated() {
        return stated;
    }

    /** Statements made so far, label to words, in order. */
    public Map<String, String> answers() {
        Map<String, String> shown = new LinkedHashMap<>();
        for (Statement one : Statements.all()) {
            if (answers.containsKey(one.id()) && !one.pointless().test(stated)) {
                shown.put(one.label(), answers.get(one.id()));
            }
        }
        return shown;
    }

    /** The statement that has the floor; empty once all is stated, and on the other pages. */
    public Optional<Statement> current() {
        return page == Page.PLAN ? find(current) : Optional.empty();
    }

    /** Empty before the commitment. */
    public Optional<Marking> marking() {
        return Optional.ofNullable(outcome).map(Outcome::marking);
    }

    /** The engine's plan she was marked against; empty before the commitment. */
    public Optional<Plan> plan() {
        return Optional.ofNullable(outcome).map(Outcome::plan);
    }

    /** Help for what is asked now. */
    public List<String> help() {
        List<String> lines = new ArrayList<>();
        current().ifPresent(one -> lines.addAll(one.help().apply(guide)));
        if (page.ordinal() < Page.PLAN.ordinal()) {
            lines.add("Enter takes the next page's readings. `ask upper pinch` takes one reading, `ask cover` a page; `state` goes to your"
                    + " plan with what you have.");
            lines.add("Readings that can be asked for: " + String.join(", ", names()) + ".");
        }
        if (page == Page.PLAN) {
            lines.add("`back` returns, `undo` takes the last line back, `skip` leaves a statement open, `ask base width` takes"
                    + " another reading, `commit` hands the plan in.");
        }
        return lines;
    }

    /** Understands a typed line. Never throws for what a person types. */
    public Said say(String line) {
        String text = line.strip();
        String lower = text.toLowerCase(Locale.ROOT);
        if (lower.equals("?") || lower.equals("help")) {
            return new Said(this, Said.Kind.HELP, List.of());
        }
        if (outcome != null) {
            return refused("The plan is handed in and marked; `next` draws another case.");
        }
        try {
            return switch (steering(lower)) {
                case "undo" -> undo();
                case "back" -> back();
                case "commit" -> commit();
                case "state" -> done(at(Page.PLAN, firstOpen()));
                case "ask" -> ask(lower.substring(3).strip());
                case "go" -> go(lower.substring(2).strip());
                default -> page == Page.PLAN ? answer(text) : onReadings(text);
            };
        } catch (Refusal refusal) {
            return refused(sentence(refusal.getMessage()));
        }
    }

    /** The word that steers, empty where the line is an answer; a reason in free words may begin with any word. */
    private String steering(String lower) {
        boolean free = current().map(one -> one.id().equals("reason")).orElse(false);
        boolean alone = !lower.contains(" ");
        return alone || !free && (lower.startsWith("ask ") || lower.startsWith("go ")) ? lower.split("\\s+")[0] : "";
    }

    private Said onReadings(String text) {
        if (!text.isEmpty()) {
            return ask(text.toLowerCase(Locale.ROOT));
        }
        Page next = neighbour(1);
        if (next.compareTo(reached) <= 0) {
            return done(at(next, firstOpen()));
        }
        Set<String> more = new LinkedHashSet<>(taken);
        more.addAll(ids(next));
        return done(new Exercise(guide, of, next, reached, more, stated, answers, firstOpen(), this, null));
    }

    private Said ask(String words) {
        String wanted = words.replaceAll("^(for )?(the )?", "").strip();
        Optional<Page> whole = Page.reading().stream().filter(on -> on.title().equalsIgnoreCase(wanted)).findFirst();
        if (whole.isPresent()) {
            Set<String> more = new LinkedHashSet<>(taken);
            more.addAll(ids(whole.get()));
            return new Said(new Exercise(guide, of, page, reached, more, stated, answers, current, this, null),
                    Said.Kind.DONE, List.of("Taken: the readings of " + whole.get().title() + "."));
        }
        List<String> found = new ArrayList<>();
        for (Page on : Page.reading()) {
            for (String id : ids(on)) {
                if (!wanted.isEmpty() && (name(id).equals(wanted) || id.equalsIgnoreCase(wanted))) {
                    found = new ArrayList<>(List.of(id));
                    return took(found.get(0));
                }
                if (!wanted.isEmpty() && List.of(wanted.split("\\s+")).stream().allMatch(name(id)::contains)) {
                    found.add(id);
                }
            }
        }
        if (found.size() == 1) {
            return took(found.get(0));
        }
        return refused(found.isEmpty() ? "'" + words + "' names no reading of this case; ? lists them."
                : "'" + words + "' could be: " + String.join("; ", found.stream().map(this::name).toList()) + ".");
    }

    private Said took(String id) {
        Set<String> more = new LinkedHashSet<>(taken);
        more.add(id);
        Exercise next = new Exercise(guide, of, page, reached, more, stated, answers, current, this, null);
        return new Said(next, Said.Kind.DONE, List.of(sentence(Taken.of(of.of(), Set.of(id)).get(0).sentence())));
    }

    private Said answer(String text) {
        Optional<Statement> asked = current();
        if (asked.isEmpty()) {
            return refused("Everything is stated. `commit` hands the plan in; `go fold` or `back` changes something.");
        }
        Statement one = asked.get();
        boolean skips = text.equalsIgnoreCase("skip");
        if (text.isEmpty() && answers.containsKey(one.id())) {
            return done(at(Page.PLAN, nextOpen(one.id(), answers, stated)));
        }
        if (text.isEmpty() || skips && one.required()) {
            return refused((one.required() ? "An answer is needed here: " : "An answer, or `skip`: ") + one.expects() + ".");
        }
        FellowPlan next = skips ? one.open().apply(stated) : one.reader().read(text, stated, guide);
        Map<String, String> more = new LinkedHashMap<>(answers);
        more.put(one.id(), skips ? SKIPPED : one.shown().apply(next, guide));
        return done(new Exercise(guide, of, page, reached, taken, next, more, nextOpen(one.id(), more, next), this, null));
    }

    private Said undo() {
        return before == null ? refused("Nothing to take back.") : done(before);
    }

    private Said back() {
        if (page == Page.HISTORY) {
            return refused("This is the first page.");
        }
        List<Statement> asked = Statements.all().stream().filter(one -> !one.pointless().test(stated)).toList();
        int at = current().map(asked::indexOf).orElse(asked.size());
        if (page == Page.PLAN && at > 0) {
            return done(at(Page.PLAN, asked.get(at - 1).id()));
        }
        return done(at(neighbour(-1), current));
    }

    /** The page before or after, among those she has been to; nothing is taken by turning. */
    public Exercise turned(int by) {
        Page to = neighbour(by);
        return to.compareTo(reached) > 0 ? this : at(to, to == Page.PLAN && current == null ? firstOpen() : current);
    }

    /** The next page that way which has something to show; this one at either end. */
    private Page neighbour(int by) {
        int at = page.ordinal() + by;
        while (at > 0 && at < Page.values().length && Page.values()[at].reads() && ids(Page.values()[at]).isEmpty()) {
            at += by;
        }
        return at < 0 || at >= Page.values().length ? page : Page.values()[at];
    }

    private Said go(String words) {
        for (Page one : Page.values()) {
            if (one.title().equalsIgnoreCase(words) && one != Page.MARKING && !words.equals("fold")) {
                return done(at(one, one == Page.PLAN ? firstOpen() : current));
            }
        }
        List<Statement> found = Statements.all().stream().filter(one -> !one.pointless().test(stated))
                .filter(one -> !words.isEmpty() && (one.id().equals(words) || one.prompt().toLowerCase(Locale.ROOT).contains(words))).toList();
        if (found.isEmpty()) {
            return refused("'" + words + "' names no page and no statement; for example `go fold`.");
        }
        return done(at(Page.PLAN, found.stream().filter(one -> one.id().equals(words)).findFirst().orElse(found.get(0)).id()));
    }

    private Said commit() {
        List<String> open = Statements.all().stream().filter(one -> !one.pointless().test(stated))
                .filter(one -> !answers.containsKey(one.id())).map(one -> one.id()).toList();
        if (!open.isEmpty()) {
            return refused("Still open: " + String.join(", ", open) + ". State each, or `skip` what may stay open, then `commit`.");
        }
        Plan plan = guide.planner().apply(stated.settingOn(of.of()));
        Marking marking = Marking.mark(of, stated, plan, guide.catalogue(), guide.evidence());
        Exercise next = new Exercise(guide, of, Page.MARKING, reached, taken, stated, answers, current, this, new Outcome(plan, marking));
        return new Said(next, Said.Kind.COMMITTED, List.of());
    }

    private String firstOpen() {
        return nextOpen(null, answers, stated);
    }

    /** The first open statement after that one, else the first open one, else null. */
    private static String nextOpen(String after, Map<String, String> answers, FellowPlan stated) {
        List<Statement> all = Statements.all();
        int from = after == null ? 0 : all.indexOf(find(after).orElseThrow()) + 1;
        for (int i = 0; i < all.size(); i++) {
            Statement one = all.get((from + i) % all.size());
            if (!answers.containsKey(one.id()) && !one.pointless().test(stated)) {
                return one.id();
            }
        }
        return null;
    }

    private Exercise at(Page to, String statement) {
        return new Exercise(guide, of, to, reached, taken, stated, answers, statement, before, outcome);
    }

    private static Optional<Statement> find(String id) {
        return Statements.all().stream().filter(one -> one.id().equals(id)).findFirst();
    }

    private List<String> ids(Page on) {
        List<String> ids = new ArrayList<>();
        for (Measure measure : on.measures()) {
            if (Taken.there(of.of(), measure)) {
                ids.add(measure.field());
            }
        }
        if (on == Page.FOLD) {
            ids.add(Taken.PTOSIS);
        }
        return ids;
    }

    private String name(String id) {
        return Taken.of(of.of(), Set.of(id)).get(0).name();
    }

    private List<String> names() {
        return Page.reading().stream().flatMap(on -> ids(on).stream()).map(this::name).toList();
    }

    private static String sentence(String text) {
        String capital = text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
        return capital.endsWith(".") || capital.endsWith("?") || capital.endsWith("...") ? capital : capital + ".";
    }

    private static Said done(Exercise next) {
        return new Said(next, Said.Kind.DONE, List.of());
    }

    private Said refused(String text) {
        return new Said(this, Said.Kind.REFUSED, List.of(text));
    }
}

package domefold.line;

import domefold.interview.Exchange;
import domefold.interview.Interview;
import domefold.interview.Reply;
import domefold.interview.Room;
import domefold.interview.WhatIf;
import domefold.outcome.Numbers;
import domefold.outcome.Refusal;
import domefold.report.Page;
import domefold.screen.ConsultScreen;
import domefold.screen.Desk;
import domefold.screen.Effect;
import domefold.screen.StartScreen;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * A consult line by line, as a value: a typed line gives the next one, the text to print and what the shell should do.
 *
 * @param desk what does not change
 * @param interview how far the consult has come
 * @param left consults that were not finished, offered until the first answer
 * @param listing the device list as last printed
 * @param cautioned cautions said already, each of which is said once
 * @param allowed what the tissues allow, as said last
 * @param read the answers whose summary was printed last; only that can be signed
 * @param tried the other answer tried last, beside the consult
 */
public record LineConsult(Desk desk, Interview interview, List<StartScreen.Left> left, Listing listing,
        Set<String> cautioned, List<String> allowed, Optional<List<Exchange>> read, Optional<WhatIf> tried) implements Completing {
    private static final int LONGEST_COMMAND_IN_FREE_WORDS = 2;

    public LineConsult {
        left = List.copyOf(left);
        allowed = List.copyOf(allowed);
        cautioned = java.util.Collections.unmodifiableSet(new LinkedHashSet<>(cautioned));
    }

    /** A consult before its first line. */
    public static LineConsult of(Desk desk, Interview interview, List<StartScreen.Left> left) {
        return new LineConsult(desk, interview, left, Listing.NONE, Set.of(), List.of(), Optional.empty(), Optional.empty());
    }

    /** What is printed first: the sentences about program and list, what was left unfinished, the first question. */
    public Turn open() {
        Page page = new Page();
        page.line("Domefold, consult line by line.");
        RecordInWords.banners(page, desk);
        page.paragraph(0, "LEFT and RIGHT are the patient's own. `help` explains a question and lists the words.");
        if (!left.isEmpty()) {
            page.blank().line("Not finished; `continue 1` goes on with the first, an answer begins a new one:");
            for (int i = 0; i < left.size(); i++) {
                StartScreen.Left one = left.get(i);
                page.hanging((i + 1) + ". ", (one.code().isBlank() ? "no code yet" : one.code()) + ", "
                        + Numbers.count(one.answers(), "answer", "answers") + ", last " + one.when());
            }
        }
        return begun(page);
    }

    /** What the answers that are there allow, and the first question. */
    private Turn begun(Page page) {
        LineConsult next = interview.current().isEmpty() ? this : allowed(page, interview);
        return next.asked(page, Effect.NOTHING, interview, null);
    }

    /** Understands a line. Never throws for what a person types or a script holds. */
    public Turn say(String line) {
        Optional<String> unread = LineCheck.against(line);
        if (unread.isPresent()) {
            return stays(unread.get());
        }
        String text = line.replace('\t', ' ').strip();
        Optional<SteeringWord> word = SteeringWord.leading(text);
        boolean freeWords = interview.current().filter(q -> q.id().equals("reason")).isPresent();
        if (word.isPresent() && !(freeWords && text.split("\\s+").length > LONGEST_COMMAND_IN_FREE_WORDS)) {
            return steered(word.get(), text.substring(word.get().word().length()).strip());
        }
        if (interview.current().filter(q -> q.id().equals("pins")).isPresent() && text.matches("\\d{1,4}([\\s,;]+\\d{1,4})*")) {
            return pinned(SteeringWord.PIN, text, false);
        }
        return heard(interview.say(text), text);
    }

    private Turn steered(SteeringWord word, String rest) {
        return switch (word) {
            case LIMITS -> stays(LimitsInWords.whole(interview));
            case WHY -> stays(WhyInWords.of(interview, rest));
            case IF -> tried(rest);
            case DEVICES -> devices(rest.toLowerCase(Locale.ROOT));
            case SORT -> Listing.sortNamed(rest).map(sort -> listed(listing.first(interview, sort, listing.all())))
                    .orElseGet(() -> stays("The devices can be ordered by: " + String.join(", ", Listing.sortWords()) + "."));
            case TAKE -> taken();
            case DOUBT -> stays(DoubtInWords.of(interview, listing.sort()));
            case PAIRS -> stays(PairsInWords.of(interview));
            case OWNING -> stays(OwningInWords.of(interview));
            case PIN, DROP -> word == SteeringWord.DROP && rest.isEmpty() && tried.isPresent()
                    ? with(interview).stays("Dropped; all is as it was.") : pinned(word, rest, true);
            case COMPARE -> stays(SideBySide.of(interview));
            case RECORD -> recordRead("");
            case SIGN -> signed(rest);
            case DRAFT -> new Turn(this, "Saving.\n", new Effect.Save(interview, false, rest));
            case CONTINUE -> continued(rest);
            default -> new Turn(this, "", Effect.QUIT);
        };
    }

    private Turn tried(String words) {
        try {
            WhatIf other = WhatIf.on(interview).with(words);
            WhatIf.Change change = other.changes().get(0);
            Page page = new Page().paragraph(0, "If " + change.label().toLowerCase(Locale.ROOT) + " were " + QuestionInWords.flat(change.now())
                    + " (now " + QuestionInWords.flat(change.was()) + "):");
            LimitsInWords.brief(other.trial()).forEach(line -> page.hanging("  ", line));
            return new LineConsult(desk, interview, left, listing, cautioned, allowed, read, Optional.of(other))
                    .stays(page.paragraph(0, "Nothing has been changed; `take` makes it so. Now it is:").text()
                    + String.join("\n", LimitsInWords.brief(interview)));
        } catch (Refusal refusal) {
            return stays(sentence(refusal.getMessage()));
        }
    }

    private Turn taken() {
        if (tried.isEmpty()) {
            return stays("Nothing is being tried; for example `if base width 12.8 13`, then `take`.");
        }
        WhatIf.Change change = tried.get().changes().get(0);
        Interview answered = interview.answer(change.questionId(), change.typed());
        Page page = new Page().paragraph(0, "Taken: " + change.label().toLowerCase(Locale.ROOT) + ", " + QuestionInWords.flat(change.now()) + ".");
        return with(answered).allowed(page, answered).asked(page, journal(answered), answered, interview.room());
    }

    private Turn devices(String rest) {
        return switch (rest) {
            case "" -> listed(listing.first(interview, listing.sort(), false));
            case "all" -> listed(listing.first(interview, listing.sort(), true));
            case "more" -> listed(listing.more(interview));
            default -> stays("`devices`, `devices more` or `devices all`; `sort width` orders them.");
        };
    }

    private Turn listed(Listing.Printed printed) {
        LineConsult next = new LineConsult(desk, interview, left, printed.listing(), cautioned, allowed, read, tried);
        return next.stays(printed.text());
    }

    /** The pins changed; the floor stays where it was, so that the next can be pinned at once. */
    private Turn pinned(SteeringWord word, String rest, boolean stay) {
        List<String> pins;
        Interview answered;
        try {
            Pins now = new Pins(interview, listing);
            pins = word == SteeringWord.PIN ? now.adding(rest) : now.dropping(rest);
            answered = interview.answer("pins", pins.isEmpty() ? "-" : String.join(" ", pins));
        } catch (Refusal refusal) {
            return stays(sentence(refusal.getMessage()));
        }
        boolean hadFloor = interview.current().filter(q -> q.id().equals("pins")).isPresent();
        Interview next = stay && hadFloor ? answered.go("pins").interview() : answered;
        Page page = new Page().paragraph(0, pins.isEmpty() ? "No device is pinned now." : "Pinned: " + QuestionInWords.pins(pins) + ".");
        return with(next).asked(page, journal(answered), next, interview.room());
    }

    private Turn continued(String rest) {
        if (!interview.exchanges().isEmpty() || left.isEmpty()) {
            return stays(left.isEmpty() ? "No consult was left unfinished."
                    : "This consult has begun; `quit`, and continue the other at the next start.");
        }
        String number = rest.isEmpty() ? "1" : rest;
        if (!number.matches("\\d{1,4}") || Integer.parseInt(number) < 1 || Integer.parseInt(number) > left.size()) {
            return stays("Unfinished consults are numbered 1 to " + left.size() + ".");
        }
        return new Turn(this, "", new Effect.Open(Optional.of(left.get(Integer.parseInt(number) - 1).journalId())));
    }

    private Turn signed(String author) {
        if (!interview.complete()) {
            return stays("Signing needs every required answer, among them a device on each side; `draft` saves what there is.");
        }
        if (!interview.plan().map(plan -> plan.blocked().isEmpty()).orElse(false)) {
            return stays("A blocked case is not signed off; `draft` keeps it with its working.");
        }
        if (author.isEmpty()) {
            return stays("Who signs? For example `sign kb`.");
        }
        if (!read.equals(Optional.of(interview.exchanges()))) {
            return recordRead("This is what would be signed; `sign " + author + "` again signs it.");
        }
        return new Turn(this, "Saving.\n", new Effect.Save(interview, true, author));
    }

    private Turn recordRead(String after) {
        Page page = new Page().paragraph(0, RecordInWords.of(desk, interview).stripTrailing());
        if (!after.isEmpty()) {
            page.blank().paragraph(0, after);
        }
        return readNow().asked(page, Effect.NOTHING, interview, interview.room());
    }

    private LineConsult readNow() {
        return new LineConsult(desk, interview, left, listing, cautioned, allowed, Optional.of(interview.exchanges()), tried);
    }

    private Turn heard(Reply reply, String text) {
        Page page = new Page();
        switch (reply.kind()) {
            case HELP:
                return stays(QuestionInWords.help(reply.lines()));
            case SUMMARY:
                page.line(reply.lines().isEmpty() ? "Nothing is answered yet." : "Answers so far");
                reply.lines().forEach(line -> page.hanging("  ", QuestionInWords.flat(line)));
                return stays(page.text());
            case REFUSED, WHY:
                return stays(String.join("\n", reply.lines()));
            case MOVED:
                return moved(reply);
            case UNDONE:
                reply.lines().forEach(line -> page.paragraph(0, QuestionInWords.flat(line)));
                return with(reply.interview()).asked(page, new Effect.Journal(code(reply.interview()),
                        text.equalsIgnoreCase("redo") ? Effect.Journal.REDO : Effect.Journal.UNDO, "", ""),
                        reply.interview(), interview.room());
            default:
                Exchange taken = last(reply.interview());
                page.paragraph(0, reply.interview().question(taken.questionId()).label() + ": " + QuestionInWords.flat(taken.shown()) + ".");
                reply.lines().forEach(line -> page.hanging("  ", "Note: " + line));
                return with(reply.interview()).asked(page, journal(reply.interview()), reply.interview(), interview.room());
        }
    }

    private Turn moved(Reply reply) {
        Optional<Room> named = List.of(Room.values()).stream()
                .filter(room -> !reply.lines().isEmpty() && room.title().equals(reply.lines().get(0))).findFirst();
        LineConsult next = with(reply.interview());
        if (named.isPresent() && named.get() == Room.LIMITS) {
            return next.stays(LimitsInWords.whole(interview));
        }
        if (named.isPresent() && named.get() == Room.RECORD) {
            return next.recordRead("");
        }
        return next.asked(new Page(), Effect.NOTHING, reply.interview(), null);
    }

    /** What came of an effect. */
    public Turn told(Effect.Outcome outcome) {
        if (outcome instanceof Effect.Opened opened && opened.screen() instanceof ConsultScreen screen) {
            LineConsult next = LineConsult.of(desk, screen.interview(), List.of());
            Page page = new Page().paragraph(0, "Continued: " + code(screen.interview()) + ", "
                    + Numbers.count(screen.interview().exchanges().size(), "answer", "answers") + ". `summary` reads them.");
            return next.begun(page);
        }
        if (outcome instanceof Effect.Failed failed) {
            return stays("Not done: " + sentence(failed.text()));
        }
        if (outcome instanceof Effect.Done done && done.of() instanceof Effect.Save save) {
            String text = new Page().paragraph(0, done.text()).text();
            return save.sign() ? new Turn(this, text, Effect.QUIT) : stays(text);
        }
        return Turn.saying(this, "");
    }

    @Override
    public Completion completion(String typed) {
        return ConsultWords.completion(typed, interview);
    }

    private Turn stays(String text) {
        return asked(new Page().paragraph(0, text.stripTrailing()), Effect.NOTHING, interview, interview.room());
    }

    private LineConsult with(Interview next) {
        return new LineConsult(desk, next, left, listing, cautioned, allowed, read, Optional.empty());
    }

    /**
     * The page, what changed with the room, and the question.
     *
     * @param before the room before the line; null where the room is to be named in any case
     */
    private Turn asked(Page page, Effect effect, Interview now, Room before) {
        Room room = now.room();
        LineConsult next = this;
        if (room != before) {
            if (before != null && before.ordinal() < Room.LIMITS.ordinal() && room.ordinal() > Room.LIMITS.ordinal()) {
                page.blank().line(QuestionInWords.room(Room.LIMITS));
                page.paragraph(0, LimitsInWords.whole(now).stripTrailing());
                next = next.saidOf(LimitsInWords.cautions(now), LimitsInWords.brief(now));
            } else if (before != null && room != Room.RECORD) {
                next = next.allowed(page, now);
            }
            page.blank().line(QuestionInWords.room(room));
            next = next.entered(page, now, room);
        } else {
            page.blank();
        }
        QuestionInWords.write(page, now);
        return new Turn(next, page.text(), effect);
    }

    private LineConsult allowed(Page page, Interview now) {
        List<String> brief = LimitsInWords.brief(now);
        if (brief.equals(allowed)) {
            return this;
        }
        page.blank().line("What this allows so far");
        brief.forEach(line -> page.paragraph(0, line));
        List<String> fresh = LimitsInWords.cautions(now).stream().filter(line -> !cautioned.contains(line)).toList();
        if (!fresh.isEmpty()) {
            page.hanging("  ", sentence(fresh.get(0)));
        }
        if (fresh.size() > 1) {
            page.hanging("  ", Numbers.count(fresh.size() - 1, "more new caution", "more new cautions") + ": `limits`.");
        }
        return saidOf(fresh, brief);
    }

    private LineConsult saidOf(List<String> cautions, List<String> brief) {
        Set<String> all = new LinkedHashSet<>(cautioned);
        all.addAll(cautions);
        return new LineConsult(desk, interview, left, listing, all, brief, read, tried);
    }

    /** What a room shows before it asks. */
    private LineConsult entered(Page page, Interview now, Room room) {
        if (room == Room.DEVICES) {
            Listing.Printed printed = listing.first(now, listing.sort(), listing.all());
            page.paragraph(0, printed.text().stripTrailing()).blank();
            return new LineConsult(desk, interview, left, printed.listing(), cautioned, allowed, read, tried);
        }
        if (room == Room.RECORD && now.current().isEmpty()) {
            page.paragraph(0, RecordInWords.of(desk, now).stripTrailing());
            page.blank();
            return readNow();
        }
        return this;
    }

    private static Effect journal(Interview answered) {
        Exchange taken = last(answered);
        return new Effect.Journal(code(answered), Effect.Journal.ANSWER, taken.questionId(), taken.typed());
    }

    private static Exchange last(Interview interview) {
        return interview.exchanges().get(interview.exchanges().size() - 1);
    }

    private static String code(Interview interview) {
        return interview.dossier().patientCase().code();
    }

    static String sentence(String text) {
        String capital = text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
        return capital.endsWith(".") || capital.endsWith("?") ? capital : capital + ".";
    }
}

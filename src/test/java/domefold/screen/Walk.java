package domefold.screen;

import domefold.advise.Advisor;
import domefold.canvas.Glyphs;
import domefold.followup.shown.Topics;
import domefold.interview.Choices;
import domefold.interview.Dossier;
import domefold.interview.Guide;
import domefold.interview.Interview;
import domefold.patient.Case;
import domefold.plan.PlanOptions;
import domefold.store.CatalogueFile;
import domefold.store.EvidenceFiles;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Walks a consult by keys, without a terminal: what was typed in, what the glass shows, what was asked of the shell. */
public final class Walk {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 4);
    /** An invented patient, answered in the order the program asks. */
    public static final List<String> ORDINARY = List.of("", "31", "166", "58", "none", "sloped", "300", "3 2 5 2 1 4 1",
            "inframammary", "smooth", "yes", "US-2020", "20", "74", "82", "2.4", "20.5", "19.8 19.9", "9.8 9.9",
            "12.4 12.5", "11.8 same", "3.8 same", "2.4 2.4", "0.9 same", "1.0 same", "1.8 same", "2.6 2.4", "50 same",
            "6.4 6.5", "7.6 7.7", "none same", "skip");

    private Screen screen;
    private final List<Effect> effects = new ArrayList<>();
    private int keys;
    private int entries;

    private Walk(Screen screen) {
        this.screen = screen;
    }

    /** The desk of a fixed day with the shipped tables and the invented list. */
    public static Desk desk() {
        var evidence = EvidenceFiles.shipped();
        var catalogue = CatalogueFile.invented();
        Map<String, String> topics = new LinkedHashMap<>();
        Topics.of(evidence).forEach(topic -> topics.put(topic.id(), topic.text()));
        return new Desk(new Guide(evidence, catalogue, topics, new Advisor(catalogue, evidence, PlanOptions.DEFAULT),
                "20260042-9"), DAY, false);
    }

    /** A consult from its first question. */
    public static Walk consult() {
        Desk desk = desk();
        return new Walk(ConsultScreen.of(desk, Interview.begin(desk.guide(), new Dossier(Case.empty("", DAY), Choices.NONE))));
    }

    public static Walk on(Screen screen) {
        return new Walk(screen);
    }

    public Walk key(Key key) {
        keys++;
        Screen.Step step = screen.onKey(key);
        screen = step.next();
        if (step.effect() != Effect.NOTHING) {
            effects.add(step.effect());
        }
        return this;
    }

    public Walk key(Key.Kind kind) {
        return key(Key.of(kind));
    }

    /** Types the line and Enter. */
    public Walk line(String text) {
        text.codePoints().forEach(c -> key(Key.character(c)));
        entries++;
        return key(Key.Kind.ENTER);
    }

    /** Types the line and Enter; a refused line is not left standing. */
    public Walk lineCleared(String text) {
        line(text);
        return screen instanceof ConsultScreen consult && !consult.entry().isEmpty() ? key(Key.Kind.ESCAPE) : this;
    }

    public Walk lines(List<String> lines) {
        lines.forEach(this::line);
        return this;
    }

    public Screen screen() {
        return screen;
    }

    public List<Effect> effects() {
        return effects;
    }

    public int keys() {
        return keys;
    }

    public int entries() {
        return entries;
    }

    public String picture(int columns, int rows) {
        return Frame.of(screen, columns, rows, Glyphs.UNICODE).picture();
    }

    /** For looking: {@code Walk COLSxROWS ROOM}. */
    public static void main(String[] args) {
        int columns = Integer.parseInt(args[0].split("x")[0]);
        int rows = Integer.parseInt(args[0].split("x")[1]);
        Walk walk = consult();
        int lines = args.length > 1 && args[1].matches("\\d+") ? Integer.parseInt(args[1]) : ORDINARY.size();
        walk.lines(ORDINARY.subList(0, lines));
        for (int i = 1; i < args.length; i++) {
            if (args[i].startsWith("F")) {
                walk.key(Key.Kind.valueOf(args[i]));
            } else if (args[i].equals("SPACE")) {
                walk.key(Key.character(' '));
            } else if (args[i].equals("DOWN") || args[i].equals("ENTER") || args[i].equals("PAGE_DOWN")) {
                walk.key(Key.Kind.valueOf(args[i]));
            } else if (!args[i].matches("\\d+")) {
                walk.line(args[i]);
            }
        }
        long t = System.nanoTime();
        System.out.print(walk.picture(columns, rows));
        System.out.println("-- frame " + (System.nanoTime() - t) / 1000 + " us, keys " + walk.keys() + " entries " + walk.entries());
    }
}

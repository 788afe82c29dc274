package domefold.app;

import domefold.engine.CaseGate;
import domefold.outcome.Numbers;
import domefold.practice.PatientDraw;
import domefold.practice.PracticeCase;
import domefold.practice.Progress;
import domefold.practice.TrainingLog;
import domefold.practice.TutorSheet;
import domefold.store.AtomicFile;
import domefold.store.CaseRules;
import domefold.store.PracticeJson;
import domefold.store.ProgressFile;
import domefold.store.TutorCases;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalInt;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

@Command(name = "practise", description = {"A practice case on the screen; with --as json the invented case and its reference"
        + " marking. The same number always gives the same patient.", ""},
        footer = {"", "Example: domefold practise --level 2 --draw 7"})
final class PractiseCommand implements Runner {
    private final Domefold root;

    @Option(names = "--level", paramLabel = "N", converter = LevelConverter.class,
            description = "1 ordinary, 2 asymmetric, thin or tight, 3 with a trap.")
    private Integer level;

    @Option(names = "--draw", paramLabel = "NUMBER", converter = DrawConverter.class, description = "Which patient, from 1.")
    private Integer draw;

    @Option(names = "--cases", paramLabel = "FOLDER", description = "A tutor's own case files instead; --draw then counts in them.")
    private String cases;

    @Option(names = "--log", paramLabel = "FILE", description = "Writes the training log as CSV into that file, and nothing else.")
    private String log;

    @Option(names = "--line", description = "Line by line instead of full screen.")
    private boolean line;

    @Mixin
    private As as;

    PractiseCommand(Domefold root) {
        this.root = root;
    }

    @Override
    public int run() throws Exception {
        if (log != null) {
            return writeLog();
        }
        if (cases != null && level != null) {
            throw new WrongUsage("--level is for drawn cases; leave it out with --cases");
        }
        Workbench bench = root.bench(null);
        List<PracticeCase> own = cases == null ? List.of() : TutorCases.read(root.console().path(cases),
                CaseRules.of(bench.evidence(), any -> CaseGate.check(any, bench.evidence())));
        if (cases != null && draw != null && draw > own.size()) {
            throw new WrongUsage("--draw is " + draw + "; there are " + own.size() + " cases in " + cases);
        }
        if (!as.json()) {
            return root.faces().practise(bench, number(level), number(draw), own, line);
        }
        if (draw == null) {
            throw new WrongUsage("--as json needs --draw, the number of the patient");
        }
        PracticeCase practice = cases == null ? PatientDraw.of(draw, level == null ? PatientDraw.levelOf(draw) : level,
                bench.evidence()) : own.get(draw - 1);
        root.console().json(PracticeJson.write(
                TutorSheet.of(practice, bench.catalogue(), bench.evidence(), bench.options())));
        return Exit.DONE;
    }

    private int writeLog() throws IOException {
        if (draw != null || level != null || cases != null || as.json()) {
            throw new WrongUsage("--log stands alone");
        }
        Progress progress = new ProgressFile(root.homes().practice()).read().progress();
        Path file = root.console().path(log);
        AtomicFile.replace(file, TrainingLog.csv(progress));
        root.console().text("Written: " + file + ", " + Numbers.count(progress.entries().size(), "case", "cases") + ".\n");
        return Exit.DONE;
    }

    private static OptionalInt number(Integer given) {
        return given == null ? OptionalInt.empty() : OptionalInt.of(given);
    }

    static final class LevelConverter extends WholeConverter {
        LevelConverter() {
            super(PracticeCase.LOWEST_LEVEL, PracticeCase.HIGHEST_LEVEL);
        }
    }

    static final class DrawConverter extends WholeConverter {
        DrawConverter() {
            super(1, Integer.MAX_VALUE);
        }
    }
}

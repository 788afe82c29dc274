package domefold.app;

import domefold.practice.PatientDraw;
import domefold.practice.PracticeCase;
import domefold.practice.TutorSheet;
import domefold.store.PracticeJson;
import java.util.OptionalInt;
import java.util.OptionalLong;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

@Command(name = "practise", description = {"A practice case on the screen; with --as json the invented case and its reference"
        + " marking. The same number always gives the same patient.", ""},
        footer = {"", "Example: domefold practise --level 2 --draw 7"})
final class PractiseCommand implements Runner {
    private final Domefold root;

    @Option(names = "--level", paramLabel = "N", description = "1 ordinary, 2 asymmetric, thin or tight, 3 with a trap.")
    private Integer level;

    @Option(names = "--draw", paramLabel = "NUMBER", description = "Which patient, from 1.")
    private Integer draw;

    @Mixin
    private As as;

    PractiseCommand(Domefold root) {
        this.root = root;
    }

    @Override
    public int run() throws Exception {
        if (level != null && (level < PracticeCase.LOWEST_LEVEL || level > PracticeCase.HIGHEST_LEVEL)) {
            throw new WrongUsage("--level is " + level + "; write " + PracticeCase.LOWEST_LEVEL + " to "
                    + PracticeCase.HIGHEST_LEVEL);
        }
        if (draw != null && draw < 1) {
            throw new WrongUsage("--draw is " + draw + "; write a number from 1");
        }
        if (!as.json()) {
            return root.faces().practise(root.bench(null), level == null ? OptionalInt.empty() : OptionalInt.of(level),
                    draw == null ? OptionalLong.empty() : OptionalLong.of(draw));
        }
        if (draw == null) {
            throw new WrongUsage("--as json needs --draw, the number of the patient");
        }
        int of = level == null ? PatientDraw.levelOf(draw) : level;
        Workbench bench = root.bench(null);
        root.console().json(PracticeJson.write(
                TutorSheet.of(draw, of, bench.catalogue(), bench.evidence(), bench.options())));
        return Exit.DONE;
    }
}

package domefold.app;

import domefold.followup.survival.CurveValue;
import domefold.followup.survival.SurvivalAnswer;
import domefold.followup.survival.SurvivalTable;
import domefold.outcome.Band;
import domefold.report.SurvivalText;
import domefold.store.AnswerJson;
import domefold.store.CsvFile;
import java.util.LinkedHashMap;
import java.util.Map;
import java.nio.file.Path;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

@Command(name = "survival", description = {"A Weibull fit to a practice's own or published follow-up.", "",
    "Columns lower,upper: individual times (empty upper: still intact; lower 0: before the first look; equal: exact).",
    "Columns year,percent[,lo,hi]: published shares that had failed by a year.", ""},
        footer = {"", "Example: domefold survival our-follow-up.csv --as json"})
final class SurvivalCommand implements Runner {
    private final Domefold root;

    @Parameters(paramLabel = "FILE.csv", description = "The table.")
    private Path file;

    @Mixin
    private As as;

    SurvivalCommand(Domefold root) {
        this.root = root;
    }

    @Override
    public int run() throws Exception {
        SurvivalAnswer answer = SurvivalTable.answer(CsvFile.read(root.console().path(file), "a follow-up table"));
        if (as.json()) {
            root.console().json(AnswerJson.text(json(answer)));
        } else {
            root.console().text(SurvivalText.of(answer));
        }
        return Exit.DONE;
    }

    private static Map<String, Object> json(SurvivalAnswer answer) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("format", "domefold-survival/1");
        json.put("kind", answer.kind());
        json.put("n", answer.n());
        json.put("shape", answer.shape());
        json.put("scale", answer.scale());
        json.put("logLik", answer.logLik());
        json.put("seLogScale", answer.seLogScale());
        json.put("seLogShape", answer.seLogShape());
        json.put("method", answer.method());
        json.put("at", answer.at().stream().map(SurvivalCommand::value).toList());
        return json;
    }

    private static Map<String, Object> value(CurveValue value) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("time", value.time());
        json.put("cumulative", value.cumulative());
        json.put("low", value.interval().map(Band::low));
        json.put("high", value.interval().map(Band::high));
        json.put("beyondData", value.beyondData());
        return json;
    }
}

package domefold.app;

import domefold.evidence.Constant;
import domefold.evidence.Constants;
import domefold.report.EvidenceText;
import domefold.store.AnswerJson;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

@Command(name = "evidence", description = {"Every constant in use with its source, status and date.", ""},
        footer = {"", "Example: domefold evidence pinch"})
final class EvidenceCommand implements Runner {
    private final Domefold root;

    @Parameters(paramLabel = "WORDS", arity = "0..*", description = "Only constants that hold every word somewhere.")
    private List<String> words = List.of();

    @Mixin
    private As as;

    EvidenceCommand(Domefold root) {
        this.root = root;
    }

    @Override
    public int run() throws Exception {
        List<Constant> found = EvidenceText.matching(root.evidence().constants(), words);
        if (as.json()) {
            Map<String, Object> answer = new LinkedHashMap<>();
            answer.put("format", "domefold-evidence/1");
            answer.put("words", words);
            answer.put("constants", found.stream().map(EvidenceCommand::row).toList());
            root.console().json(AnswerJson.text(answer));
        } else {
            root.console().text(EvidenceText.of(found, words));
        }
        return Exit.DONE;
    }

    private static Map<String, Object> row(Constant constant) {
        Map<String, Object> row = new LinkedHashMap<>();
        row.put("id", constant.id());
        row.put("quantity", constant.quantity());
        row.put("value", constant.value());
        row.put("unit", constant.unit());
        row.put("source", constant.source());
        row.put("status", constant.status().code());
        row.put("date", constant.date());
        row.put("note", constant.note());
        row.put("used", Constants.usable(constant));
        row.put("shipped", constant.original().map(EvidenceCommand::row));
        return row;
    }
}

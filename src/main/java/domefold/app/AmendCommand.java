package domefold.app;

import domefold.outcome.Refusal;
import domefold.record.RecordStatus;
import domefold.store.AnswerJson;
import domefold.store.Stored;
import java.util.LinkedHashMap;
import java.util.Map;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(name = "amend", description = {"Opens a signed record's consult again; signing saves the next version with the reason."
        + " The version before stays as it is.", ""},
        footer = {"", "Example: domefold records amend K-2041 --reason \"right base width read again\""})
final class AmendCommand implements Runner {
    private final Domefold root;

    @Parameters(paramLabel = "ID", description = "The case code.")
    private String id;

    @Option(names = "--reason", paramLabel = "TEXT", required = true, description = "Why, in a sentence; it is saved.")
    private String reason;

    @Option(names = "--entered-in-error", description = "No consult is opened: the next version says that the record was"
            + " entered in error.")
    private boolean enteredInError;

    @Option(names = "--line", description = "Line by line instead of full screen.")
    private boolean lineByLine;

    @Mixin
    private By by;

    @Mixin
    private As as;

    AmendCommand(Domefold root) {
        this.root = root;
    }

    @Override
    public int run() throws Exception {
        RecordRoom room = new RecordRoom(root.homes());
        Stored stored = room.newest(id);
        if (stored.record().practice()) {
            throw new Refusal("practice-record", id, "case " + stored.record().id()
                    + " is an invented patient; practice records are not amended");
        }
        if (!stored.record().status().isFrozen()) {
            throw new Refusal("not-signed", id, "case " + stored.record().id()
                    + " is a draft; a draft is changed and saved, not amended");
        }
        if (reason.isBlank()) {
            throw new WrongUsage("an amendment says why: --reason \"…\"");
        }
        stored.loaded().forChange();
        if (!as.json()) {
            root.console().say(RecordFacts.of(room.header(stored)));
        }
        if (!enteredInError) {
            return root.faces().amend(root.bench(null), stored, reason, lineByLine);
        }
        Stored next = room.store(root.console().environment()).amend(stored, stored.record(), RecordStatus.ENTERED_IN_ERROR,
                reason, by.name(root.console()), root.console().clock().instant(), ConsultSaving::summary);
        root.console().answer(as.json(), () -> next.record().id() + ": version " + next.version()
                + " says that it was entered in error; version " + stored.version() + " stays as it is.\n",
                () -> AnswerJson.text(json(stored, next)));
        return Exit.DONE;
    }

    private Map<String, Object> json(Stored before, Stored next) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("format", "domefold-amendment/1");
        json.put("id", next.record().id());
        json.put("version", next.version());
        json.put("status", next.record().status().key());
        json.put("supersedes", before.version());
        json.put("supersedesSha256", before.loaded().sha256());
        json.put("reason", reason.strip());
        return json;
    }
}

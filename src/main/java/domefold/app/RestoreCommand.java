package domefold.app;

import domefold.store.AnswerJson;
import domefold.store.Restore;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

@Command(name = "restore", description = {"Puts a backup back into an empty records folder, every digest checked.", ""},
        footer = {"", "Example: domefold records restore records-2026-03-04.zip --home new-home"})
final class RestoreCommand implements Runner {
    private final Domefold root;

    @Parameters(paramLabel = "FILE", description = "What 'records backup' wrote.")
    private Path file;

    @Mixin
    private As as;

    RestoreCommand(Domefold root) {
        this.root = root;
    }

    @Override
    public int run() throws Exception {
        Path records = root.homes().records();
        Restore.Restored restored = Restore.of(root.console().path(file), records);
        root.console().answer(as.json(), () -> restored.files() + " files restored into " + records + ", each as it was backed"
                + " up.\n" + RecordsJson.verifyText(restored.check()), () -> {
            Map<String, Object> json = new LinkedHashMap<>();
            json.put("format", "domefold-restored/1");
            json.put("folder", records.toString());
            json.put("files", restored.files());
            json.put("verification", RecordsJson.verify(restored.check()));
            return AnswerJson.text(json);
        });
        return Exit.DONE;
    }
}

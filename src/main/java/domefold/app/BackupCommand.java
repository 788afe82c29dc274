package domefold.app;

import domefold.store.AnswerJson;
import domefold.store.Backup;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

@Command(name = "backup", description = {"Every record in one file, with the digest of each.", ""},
        footer = {"", "Example: domefold records backup records-2026-03-04.zip"})
final class BackupCommand implements Runner {
    private final Domefold root;

    @Parameters(paramLabel = "FILE", description = "A zip file; one of that name is never replaced.")
    private Path file;

    @Mixin
    private As as;

    BackupCommand(Domefold root) {
        this.root = root;
    }

    @Override
    public int run() throws Exception {
        Path target = root.console().path(file).toAbsolutePath();
        Backup.Made made = Backup.write(root.homes().records(), target, root.console().clock().instant());
        root.console().answer(as.json(), () -> made.files() + " files kept in " + target + "\nsha256 " + made.sha256()
                + "\nTry it: domefold records restore FILE --home EMPTY-FOLDER\n", () -> {
            Map<String, Object> json = new LinkedHashMap<>();
            json.put("format", "domefold-backup-made/1");
            json.put("file", target.toString());
            json.put("files", made.files());
            json.put("sha256", made.sha256());
            return AnswerJson.text(json);
        });
        return Exit.DONE;
    }
}

package domefold.app;

import domefold.device.Catalogue;
import domefold.device.CatalogueCheck;
import domefold.device.CatalogueFinding;
import domefold.device.Device;
import domefold.outcome.Refusal;
import domefold.report.CatalogueText;
import domefold.store.AnswerJson;
import domefold.store.CatalogueFile;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.nio.file.Path;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(name = "catalogue", description = {"What devices are known; what is wrong with a device list, line by line.", ""},
        footer = {"", "Example: domefold catalogue check our-devices.csv"})
final class CatalogueCommand implements Runner {
    static final List<String> LEAVES = List.of("list", "check");

    private final Domefold root;

    @Mixin
    private As as;

    CatalogueCommand(Domefold root) {
        this.root = root;
    }

    /** One of the commands below this one. */
    static Object leaf(String name, Domefold root) {
        return name.equals("check") ? new CheckCommand(root) : new ListCommand(root);
    }

    @Override
    public int run() throws Exception {
        return list(root, null, as);
    }

    @Command(name = "list", description = {"Every device of the list that ships, or of a file.", ""},
            footer = {"", "Example: domefold catalogue list --catalogue our-devices.csv"})
    static final class ListCommand implements Runner {
        private final Domefold root;

        @Option(names = "--catalogue", paramLabel = "FILE", description = "Another list than the one that ships.")
        private Path file;

        @Mixin
        private As as;

        ListCommand(Domefold root) {
            this.root = root;
        }

        @Override
        public int run() throws Exception {
            return list(root, file == null ? null : file.toString(), as);
        }
    }

    @Command(name = "check", description = {"Faults and queries of a device list, line by line; a list with a fault is"
            + " refused (exit code 3).", ""}, footer = {"", "Example: domefold catalogue check our-devices.csv --as json"})
    static final class CheckCommand implements Runner {
        private final Domefold root;

        @Parameters(paramLabel = "FILE", description = "The list, domefold-catalogue/1.")
        private Path file;

        @Mixin
        private As as;

        CheckCommand(Domefold root) {
            this.root = root;
        }

        @Override
        public int run() throws Exception {
            CatalogueCheck check = CatalogueCheck.of(CatalogueFile.sheet(root.console().path(file)),
                    root.evidence().constants());
            if (as.json()) {
                root.console().json(AnswerJson.text(findings(file.toString(), check)));
            } else {
                root.console().text(CatalogueText.findings(file.toString(), check.devices().size(), check.findings()));
            }
            if (check.hasFaults()) {
                CatalogueFinding first = check.findings().stream().filter(CatalogueFinding::isFault).findFirst().orElseThrow();
                throw new Refusal(first.code(), first.line() == 0 ? file.toString() : file + " line " + first.line(),
                        file + ", " + first.text());
            }
            return Exit.DONE;
        }
    }

    private static int list(Domefold root, String file, As as) throws Exception {
        Catalogue catalogue = root.catalogue(file, root.evidence());
        if (as.json()) {
            root.console().json(AnswerJson.text(devices(catalogue)));
        } else {
            root.console().text(CatalogueText.list(catalogue));
        }
        return Exit.DONE;
    }

    private static Map<String, Object> devices(Catalogue catalogue) {
        Map<String, Object> answer = new LinkedHashMap<>();
        answer.put("format", "domefold-devices/1");
        answer.put("name", catalogue.name());
        answer.put("date", catalogue.date());
        answer.put("note", catalogue.note());
        answer.put("sha256", catalogue.sha256());
        answer.put("invented", catalogue.invented());
        answer.put("devices", catalogue.devices().stream().map(CatalogueCommand::device).toList());
        return answer;
    }

    private static Map<String, Object> device(Device device) {
        Map<String, Object> row = new LinkedHashMap<>();
        row.put("id", device.id());
        row.put("line", device.line());
        row.put("fill", device.fill().key());
        row.put("surface", device.surface().key());
        row.put("profile", device.profile().key());
        row.put("volumeMl", device.nominalMl());
        row.put("labelFillMl", device.labelFillMl().map(band -> {
            Map<String, Object> range = new LinkedHashMap<>();
            range.put("low", band.low());
            range.put("high", band.high());
            return range;
        }));
        row.put("widthCm", device.widthCm());
        row.put("heightCm", device.heightCm());
        row.put("projectionCm", device.projectionCm());
        return row;
    }

    private static Map<String, Object> findings(String file, CatalogueCheck check) {
        Map<String, Object> answer = new LinkedHashMap<>();
        answer.put("format", "domefold-catalogue-check/1");
        answer.put("file", file);
        answer.put("soundDevices", check.devices().size());
        answer.put("usable", !check.hasFaults());
        answer.put("findings", check.findings().stream().map(finding -> {
            Map<String, Object> row = new LinkedHashMap<>();
            row.put("line", finding.line());
            row.put("code", finding.code());
            row.put("severity", finding.severity().key());
            row.put("text", finding.text());
            return row;
        }).toList());
        return answer;
    }
}

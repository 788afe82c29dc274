package domefold.app;

import domefold.device.Catalogue;
import domefold.evidence.Evidence;
import domefold.plan.PlanOptions;
import domefold.store.CatalogueFile;
import domefold.store.EvidenceFiles;
import domefold.store.Homes;
import domefold.store.Settings;
import domefold.store.SettingsFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Supplier;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ScopeType;

/** The program before any command: where it lives and how it helps. Described by calls, as the plan is. */
final class Domefold implements Runner {
    private final Console console;
    private final Faces faces;
    private final Optional<Homes> settled;

    /** None until the command line is taken apart. */
    private OptionSpec home;

    Domefold(Console console, Faces faces) {
        this(console, faces, Optional.empty());
    }

    /** Inside a shell: its homes were settled when it was opened. */
    Domefold(Console console, Faces faces, Optional<Homes> settled) {
        this.console = console;
        this.faces = faces;
        this.settled = settled;
    }

    /** The options of every command. */
    CommandSpec described() {
        home = OptionSpec.builder("--home").type(String.class).paramLabel("DIR").scopeType(ScopeType.INHERIT)
                .description("Where records and settings live; otherwise DOMEFOLD_HOME, otherwise the XDG folders.").build();
        CommandSpec spec = CommandSpec.wrapWithoutInspection(this).name("domefold").subcommandsRepeatable(false).addOption(home)
                .addOption(OptionSpec.builder("-h", "--help").type(boolean.class).usageHelp(true).scopeType(ScopeType.INHERIT)
                        .description("This help.").build())
                .addOption(OptionSpec.builder("--version").type(boolean.class).versionHelp(true).description("The version.").build());
        spec.usageMessage().sortOptions(false).description("Leads the consult for a breast augmentation: what the tissues allow,"
                + " which devices remain and why, and what owning one will ask.", "")
                .footer("", "Example: domefold plan demo-data/ordinary.json", "", "Exit codes: 0 done, 1 a defect of ours, 2 wrong"
                        + " usage, 3 the input was refused, 4 disk or permission.");
        return spec;
    }

    @Override
    public int run() throws Exception {
        if (!console.terminal()) {
            console.text(Commands.whole(this).getUsageMessage(picocli.CommandLine.Help.Ansi.OFF));
            throw new WrongUsage("the start screen needs a terminal; name a command");
        }
        return faces.start(console, homes(), () -> bench(null));
    }

    Console console() {
        return console;
    }

    Faces faces() {
        return faces;
    }

    Homes homes() {
        String said = home == null ? null : home.getValue();
        return settled.isPresent() && said == null ? settled.get() : Homes.of(Optional.ofNullable(said),
                console.environment(), console.userHome(), console.folder());
    }

    /** The surgeon's settings; none where there is no file. */
    private Settings settings(Evidence shipped) throws IOException {
        Path file = homes().settings();
        return Files.exists(file) ? SettingsFile.read(file, shipped) : Settings.NONE;
    }

    /** Read afresh by each command: the tables that ship, with the surgeon's own constants in their place. */
    Evidence evidence() throws IOException {
        Evidence shipped = EvidenceFiles.shipped();
        return settings(shipped).applied(shipped);
    }

    /** The list in that file, else the one the settings name, else the one that ships. */
    Catalogue catalogue(String file, Evidence evidence) throws IOException {
        return catalogue(file, evidence, settings(EvidenceFiles.shipped()));
    }

    private Catalogue catalogue(String file, Evidence evidence, Settings settings) throws IOException {
        if (file != null) {
            return CatalogueFile.read(console.path(file), evidence.constants());
        }
        return settings.catalogue().isPresent() ? CatalogueFile.read(settings.catalogue().get(), evidence.constants())
                : CatalogueFile.shipped(evidence);
    }

    /** A list from a file is read now, so that what is wrong with it is said first; the one that ships when it is needed. */
    private Supplier<Catalogue> list(String file, Evidence evidence, Settings settings) throws IOException {
        if (file == null && settings.catalogue().isEmpty() && evidence == EvidenceFiles.shipped()) {
            return CatalogueFile::invented;
        }
        Catalogue read = catalogue(file, evidence, settings);
        return () -> read;
    }

    /** Everything a plan needs, with that device list, the one of the settings or the one that ships. */
    Workbench bench(String list) throws IOException {
        Evidence shipped = EvidenceFiles.shipped();
        Settings settings = settings(shipped);
        Evidence evidence = settings.applied(shipped);
        PlanOptions options = settings.widthSchool().map(PlanOptions.DEFAULT::with).orElse(PlanOptions.DEFAULT);
        return new Workbench(console, evidence, list(list, evidence, settings), homes(), options, settings);
    }
}

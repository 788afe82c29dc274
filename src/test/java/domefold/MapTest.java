package domefold;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** The map of docs/architecture.md, as rules. */
@AnalyzeClasses(packages = "domefold", importOptions = ImportOption.DoNotIncludeTests.class)
class MapTest {
    private static final String[] CORE = {"domefold.evidence..", "domefold.outcome..", "domefold.patient..",
        "domefold.device..", "domefold.shell..", "domefold.engine..", "domefold.followup..", "domefold.choose..", "domefold.advise..",
        "domefold.plan..", "domefold.record..", "domefold.records..", "domefold.label..", "domefold.sheet..",
        "domefold.interview..", "domefold.practice..", "domefold.basics.."};

    @ArchTest
    static final ArchRule coreKnowsOnlyValuesAndMathematics = classes().that().resideInAnyPackage(CORE).should()
            .onlyDependOnClassesThat().resideInAnyPackage("domefold.evidence..", "domefold.outcome..",
                    "domefold.patient..", "domefold.device..", "domefold.shell..", "domefold.engine..",
                    "domefold.followup..", "domefold.choose..", "domefold.advise..", "domefold.plan..", "domefold.record..", "domefold.records..",
                    "domefold.label..", "domefold.sheet..", "domefold.interview..",
                    "domefold.practice..", "domefold.basics..", "java.lang", "java.lang.invoke", "java.lang.runtime", "java.util",
                    "java.util.function", "java.util.stream", "java.util.concurrent", "java.util.regex", "java.time", "java.time.format",
                    "java.text", "java.math", "org.apache.commons.math3..")
            .because("a result must be the same on every machine and every day");

    @ArchTest
    static final ArchRule theBasicsKnowNobody = classes().that().resideInAPackage("domefold.basics..").should()
            .onlyDependOnClassesThat().resideInAnyPackage("domefold.basics..", "java.lang", "java.util", "java.util.function")
            .because("every room may use them");

    @ArchTest
    static final ArchRule facesTouchNothing = noClasses().that().resideInAnyPackage("domefold.canvas..",
                    "domefold.screen..", "domefold.line..", "domefold.report..").should().dependOnClassesThat()
            .resideInAnyPackage("java.io..", "java.nio..", "com.googlecode.lanterna..", "org.jline..",
                    "com.fasterxml..", "domefold.store..", "domefold.terminal..", "domefold.app..")
            .because("screens are values; the shell does what they ask for");

    @ArchTest
    static final ArchRule onlyTheTerminalRoomKnowsTerminals = noClasses().that()
            .resideOutsideOfPackages("domefold.terminal..", "domefold.app..").should().dependOnClassesThat()
            .resideInAnyPackage("com.googlecode.lanterna..", "org.jline..")
            .because("another terminal library must cost one room");

    @ArchTest
    static final ArchRule onlyTheStoreKnowsFileFormats = noClasses().that()
            .resideOutsideOfPackages("domefold.store..", "domefold.export..").should().dependOnClassesThat()
            .resideInAnyPackage("com.fasterxml..", "de.siegmar..")
            .because("formats are lifted and checked in one place");

    @ArchTest
    static final ArchRule onlyOneRoomPrintsPaper = noClasses().that().resideOutsideOfPackage("domefold.export.pdf..").should()
            .dependOnClassesThat().resideInAnyPackage("org.apache.pdfbox..", "org.apache.xmpbox..", "java.awt..")
            .because("paper is asked for rarely and must not slow the start");

    @ArchTest
    static final ArchRule nothingStaticChanges = fields().that().areStatic().should().beFinal()
            .because("tests must not be able to disturb each other");

    @ArchTest
    static final ArchRule numbersArePrintedInANamedLocale = noClasses().should()
            .callMethod(String.class, "format", String.class, Object[].class)
            .orShould().callMethod(String.class, "formatted", Object[].class)
            .because("12.5 must not become 12,5 on another machine");

    @ArchTest
    static final ArchRule noCircles = slices().matching("domefold.(*)..").should().beFreeOfCycles();
}

package domefold.practice.exercise;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import domefold.advise.Advisor;
import domefold.device.Fill;
import domefold.interview.Guide;
import domefold.outcome.Refusal;
import domefold.patient.Measure;
import domefold.patient.Pocket;
import domefold.patient.Side;
import domefold.plan.PlanOptions;
import domefold.practice.FellowPlan;
import domefold.practice.Flags;
import domefold.practice.PatientDraw;
import domefold.practice.ReadingDrill;
import domefold.practice.ReadingSlip;
import domefold.practice.Slipped;
import domefold.practice.Standing;
import domefold.store.CatalogueFile;
import domefold.store.EvidenceFiles;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ExerciseTest {
    private static final Guide GUIDE = guide();

    private static Guide guide() {
        var evidence = EvidenceFiles.shipped();
        var catalogue = CatalogueFile.invented();
        return new Guide(evidence, catalogue, Map.of(), new Advisor(catalogue, evidence, PlanOptions.DEFAULT), "");
    }

    private static Exercise begin(int number, int level) {
        return Exercise.begin(GUIDE, PatientDraw.of(number, level, GUIDE.evidence()));
    }

    private static Exercise said(Exercise exercise, String... lines) {
        Exercise at = exercise;
        for (String line : lines) {
            Said said = at.say(line);
            assertTrue(said.kind() == Said.Kind.DONE || said.kind() == Said.Kind.COMMITTED, line + ": " + said.lines());
            at = said.exercise();
        }
        return at;
    }

    private static String refused(Exercise exercise, String line) {
        Said said = exercise.say(line);
        assertEquals(Said.Kind.REFUSED, said.kind(), line);
        assertSame(exercise, said.exercise());
        return said.lines().get(0);
    }

    @Test
    void aReadingAskedForIsTheCasesOwn() {
        Exercise asked = said(begin(2, 2), "ask base width");
        assertEquals(List.of("base width"), asked.readings().stream().map(Taken::name).toList());
        assertEquals(asked.practice().of().left().readings().value(Measure.BASE_WIDTH).orElseThrow(),
                Double.parseDouble(asked.readings().get(0).left().figure()));
        assertEquals(asked.practice().of().right().readings().value(Measure.BASE_WIDTH).orElseThrow(),
                Double.parseDouble(asked.readings().get(0).right().orElseThrow().figure()));
        assertTrue(refused(asked, "ask pinch").contains("upper pole pinch; fold pinch"));
        assertTrue(refused(asked, "ask shoe size").contains("names no reading"));
    }

    @Test
    void pagesShowWhatWasTakenAndTurningBackTakesNothing() {
        Exercise onCover = said(begin(2, 2), "", "");
        assertEquals(Page.COVER, onCover.page());
        assertEquals(Page.FRAME, onCover.turned(-1).page());
        assertEquals(onCover.readings(), onCover.turned(-1).turned(1).readings());
        assertSame(onCover, onCover.turned(1));
        Exercise asking = said(begin(2, 2), "state");
        assertEquals(0, asking.turned(-1).readings().size());
        assertEquals(0, said(asking.turned(-1).turned(-1), "").readings().size(), "Enter on a page passed by takes nothing");
        assertEquals(6, said(asking, "ask cover").readings().size());
    }

    @Test
    void whatIsStatedIsWhatIsMarked() {
        Exercise stated = said(begin(2, 2), "state", "yes", "11,5 118 mm", "300cc same", "dual-plane / subfascial", "keep lower 0.5",
                "gel / saline", "full", "smooth 300 / smooth 280", "290 300", "periareolar", "no", "35 mm", "us-2020", "uneven, 1, second reading",
                "state of the art");
        FellowPlan plan = stated.stated();
        assertEquals(11.5, plan.left().ceilingCm().orElseThrow());
        assertEquals(11.8, plan.right().ceilingCm().orElseThrow(), 1e-12);
        assertEquals(300, plan.right().volumeMl().orElseThrow());
        assertEquals(Pocket.DUAL_PLANE, plan.left().pocket().orElseThrow());
        assertEquals(Pocket.SUBFASCIAL, plan.right().pocket().orElseThrow());
        assertEquals(0, plan.left().foldLoweringCm().orElseThrow());
        assertEquals(0.5, plan.right().foldLoweringCm().orElseThrow());
        assertEquals(Fill.SALINE, plan.right().fill().orElseThrow());
        assertEquals("gel-smooth-full-300", plan.left().deviceId().orElseThrow());
        assertEquals("saline-smooth-full-280", plan.right().deviceId().orElseThrow());
        assertEquals(300, plan.right().fillMl().orElseThrow());
        assertEquals(3.5, plan.incisionCm().orElseThrow());
        assertEquals("US-2020", plan.schedule().orElseThrow());
        assertEquals(Set.of("sides-differ", "contraindication", "second-reading"), plan.warnings());
        assertEquals("state of the art", plan.reason());
        Exercise marked = said(stated, "commit");
        assertTrue(marked.marking().orElseThrow().marks().stream().anyMatch(mark -> mark.said().equals("11.5 cm")
                && mark.side().equals(java.util.Optional.of(Side.LEFT))));
        assertTrue(refused(marked, "undo").contains("handed in"));
    }

    @Test
    void nothingIsMarkedWhileSomethingIsOpen() {
        Exercise open = said(begin(2, 2), "state", "yes");
        assertTrue(refused(open, "commit").startsWith("Still open: ceiling, volume"));
        assertTrue(open.marking().isEmpty());
        assertTrue(refused(said(begin(2, 2), "state"), "skip").startsWith("An answer is needed here"));
    }

    @Test
    void aFellowWhoDeclinesIsAskedForWarningsAndReasonAlone() {
        Exercise declined = said(begin(3, 3), "state", "not now", "none", "too soon");
        assertEquals(Set.of("Would you operate now?", "What would you warn of?", "Your reason"), declined.answers().keySet());
        assertTrue(said(declined, "commit").marking().orElseThrow().marks().stream()
                .allMatch(mark -> mark.side().isEmpty()));
    }

    @Test
    void whatIsSkippedIsMarkedAsNotStated() {
        Exercise marked = said(begin(2, 2), "state", "yes", "skip", "skip", "skip", "skip", "skip", "skip", "skip", "skip", "skip",
                "skip", "none", "skip", "commit");
        assertTrue(marked.marking().orElseThrow().marks().stream().filter(mark -> mark.side().isPresent())
                .noneMatch(mark -> mark.standing() == Standing.INSIDE));
    }

    @Test
    void aWarningOfWhatTheEyeSeesCostsNothingWhereNoReadingRaisesIt() {
        var marks = said(begin(2, 2), "state", "no", "constricted base", "skip", "commit").marking().orElseThrow().marks();
        assertTrue(begin(2, 2).practice().history().contains("base is constricted"));
        assertTrue(marks.stream().anyMatch(mark -> mark.code().equals(java.util.Optional.of("constricted-base"))
                && mark.standing() == Standing.UNMARKED && mark.weight() == 0));
    }

    @Test
    void keepAloneKeepsBothFolds() {
        Exercise kept = said(begin(2, 2), "state", "yes", "skip", "skip", "skip", "keep");
        assertEquals(0, kept.stated().left().foldLoweringCm().orElseThrow());
        assertEquals(0, kept.stated().right().foldLoweringCm().orElseThrow());
    }

    @Test
    void undoTakesBackOneLineAtATime() {
        Exercise one = said(begin(2, 2), "state", "yes", "11 12");
        assertEquals(said(begin(2, 2), "state", "yes").answers(), said(one, "undo").answers());
        Exercise revised = said(one, "back", "11.5 same");
        assertEquals(11.5, revised.stated().right().ceilingCm().orElseThrow());
        assertEquals("volume", revised.current().orElseThrow().id());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"12 | Two values", "115 118 | between 5 and 25 cm", "wide narrow | is no number",
        "left | Two values", "12 13 14 | Two values"})
    void aSlipOfTypingIsRefusedWithASentence(String typed, String sentence) {
        String said = refused(said(begin(2, 2), "state", "yes"), typed);
        assertTrue(said.contains(sentence), said);
    }

    @Test
    void wordsThatLeaveMoreThanOneDeviceNameThem() {
        Exercise atDevice = said(begin(2, 2), "state", "yes", "skip", "skip", "skip", "skip", "gel", "full");
        assertTrue(refused(atDevice, "300").contains("gel-smooth-full-300"), refused(atDevice, "300"));
        assertTrue(refused(atDevice, "smooth 305").contains("nearest in size: gel-smooth-full-300"), refused(atDevice, "smooth 305"));
        assertEquals("gel-smooth-full-300", said(atDevice, "smooth 300").stated().right().deviceId().orElseThrow());
    }

    @Test
    void everyFlagThatIsMarkedCanBeWrittenInWords() {
        assertEquals(Set.copyOf(Flags.known(GUIDE.evidence().constants())),
                Stream.of(WarningWords.values()).map(WarningWords::code).collect(Collectors.toSet()));
        for (WarningWords one : WarningWords.values()) {
            assertEquals(Set.of(one.code()), WarningWords.read(one.words(), "warnings"));
            assertEquals(Set.of(one.code()), WarningWords.read(one.code(), "warnings"));
            assertEquals(Set.of(one.code()), WarningWords.read(String.valueOf(one.ordinal() + 1), "warnings"));
        }
        assertEquals(Set.of("nicotine", "lift-to-discuss"), WarningWords.read("she smokes, lift", "warnings"));
        assertEquals("unknown-warning", assertThrows(Refusal.class, () -> WarningWords.read("coverage", "warnings")).code());
    }

    @Test
    void everyPlantedSlipCanBeNamedInWords() {
        for (int number = 1; number <= 30; number++) {
            ReadingDrill drill = ReadingDrill.of(number, GUIDE.evidence());
            String typed = drill.planted().isEmpty() ? "none"
                    : drill.planted().stream().map(ExerciseTest::typed).collect(Collectors.joining(", "));
            ReadingDrill.Answered answered = drill.check(SlipWords.read(typed), GUIDE.evidence());
            assertTrue(answered.allRight(), number + ": " + typed + " missed " + answered.missed() + answered.unfounded());
        }
        assertEquals("which-side", assertThrows(Refusal.class, () -> SlipWords.read("mm base width")).code());
        assertEquals("which-reading", assertThrows(Refusal.class, () -> SlipWords.read("mm left")).code());
        assertEquals("unknown-slip", assertThrows(Refusal.class, () -> SlipWords.read("the age")).code());
    }

    private static String typed(Slipped slip) {
        String side = slip.side().map(one -> " " + one.key()).orElse("");
        return switch (slip.slip()) {
            case SIDES_SWAPPED -> "swapped";
            case MILLIMETRES -> "mm" + side + " " + slip.measure().orElseThrow().words();
            case HEIGHT_WEIGHT_EXCHANGED -> "height weight";
            case STRETCHED_SHORTER -> "stretched" + side;
            case SCAN_MIXED -> "scan" + side;
        };
    }

    @Test
    void slipsOfTheSameKindOnTheOtherSideAreNotTheSame() {
        assertEquals(Set.of(Slipped.on(Side.RIGHT, ReadingSlip.SCAN_MIXED)), SlipWords.read("scan right"));
    }
}

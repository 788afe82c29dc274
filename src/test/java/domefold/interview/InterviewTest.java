package domefold.interview;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import domefold.patient.Case;
import domefold.patient.HealthQuestion;
import domefold.patient.Measure;
import domefold.patient.Ptosis;
import domefold.patient.Side;
import domefold.store.CatalogueFile;
import domefold.store.EvidenceFiles;
import java.time.LocalDate;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Answers as typed, one line after another. */
class InterviewTest {
    private static final Guide GUIDE = new Guide(EvidenceFiles.shipped(), CatalogueFile.invented(),
            Map.of("risks", "surgical risks"), patientCase -> {
                throw new AssertionError("no plan is needed here");
            }, "");

    private static Interview fresh() {
        return Interview.begin(GUIDE, new Dossier(Case.empty("K-1", LocalDate.of(2026, 3, 4)), Choices.NONE));
    }

    private static Interview at(String words) {
        return fresh().go(words).interview();
    }

    private static double value(Interview interview, Measure measure, Side side) {
        return interview.dossier().patientCase().readings(measure, side).value(measure).orElseThrow();
    }

    @Test
    void beginsWithTheFirstThingTheCaseDoesNotSay() {
        assertEquals("ageYears", fresh().current().orElseThrow().id());
    }

    @Test
    void anEmptyLineNeverGivesACaseAnotherCode() {
        Guide offering = new Guide(GUIDE.evidence(), GUIDE.catalogue(), GUIDE.topics(), GUIDE.planner(), "C-2026-0001-9");
        Interview begun = Interview.begin(offering, new Dossier(Case.empty("", LocalDate.of(2026, 3, 4)), Choices.NONE));
        assertEquals("C-2026-0001-9", begun.say("").interview().dossier().patientCase().code());
        Interview named = begun.say("K-1").interview().go("case code").interview();
        assertEquals("K-1", named.say("").interview().dossier().patientCase().code());
        assertTrue(named.current().orElseThrow().offered(named.dossier(), offering).isEmpty());
    }

    @Test
    void aWordWhereWeightsAreAskedIsNamedWhole() {
        Reply reply = at("weights").say("smooth");
        assertEquals(Reply.Kind.REFUSED, reply.kind());
        assertTrue(reply.lines().get(0).startsWith("'smooth' is no weight; seven numbers"), reply.lines().toString());
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', value = {
        "12.5 12.8|12.5|12.8", "12,5 12,8|12.5|12.8", "12.5, 12.8|12.5|12.8", "12.5,12.8|12.5|12.8",
        "12.5 same|12.5|12.5", "12.5cm 12.8 cm|12.5|12.8", "125 mm 12.8|12.5|12.8", "12.5/12.8|12.5|12.8",
        "4.92in 5 in|12.4968|12.7"})
    void takesTwoValuesInOneLine(String typed, double left, double right) {
        Reply reply = at("base width").say(typed);
        assertEquals(Reply.Kind.TAKEN, reply.kind(), reply.lines().toString());
        assertEquals(left, value(reply.interview(), Measure.BASE_WIDTH, Side.LEFT), 1e-9);
        assertEquals(right, value(reply.interview(), Measure.BASE_WIDTH, Side.RIGHT), 1e-9);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', value = {
        "12.5|Two values", "same|no value yet", "twelve 12|is no number", "125 12.8|LEFT", "12.5 300 mL|no unit",
        "25 12|outside", "12.5 12.8 13|Two values", "skip|cannot be skipped"})
    void refusesWhatCannotBeABaseWidth_andSaysWhatWouldBe(String typed, String expected) {
        Interview before = at("base width");
        Reply reply = before.say(typed);
        assertEquals(Reply.Kind.REFUSED, reply.kind());
        assertTrue(reply.lines().get(0).contains(expected), reply.lines().toString());
        assertEquals(before.exchanges(), reply.interview().exchanges());
    }

    @Test
    void oneSideIsRevisedAlone() {
        Interview interview = at("base width").say("12.5 12.8").interview().go("base width").interview().say("right 13").interview();
        assertEquals(12.5, value(interview, Measure.BASE_WIDTH, Side.LEFT));
        assertEquals(13.0, value(interview, Measure.BASE_WIDTH, Side.RIGHT));
    }

    @Test
    void aSecondReadingIsAveragedWithTheFirst() {
        Interview interview = at("skin stretch").say("2.6 3.0").interview().go("skin stretch").interview().say("again 3.0 3.4").interview();
        assertEquals(2.8, value(interview, Measure.SKIN_STRETCH, Side.LEFT), 1e-12);
        assertEquals(3.2, value(interview, Measure.SKIN_STRETCH, Side.RIGHT), 1e-12);
        assertEquals(2, interview.dossier().patientCase().left().readings().get(Measure.SKIN_STRETCH).orElseThrow().takes());
    }

    @Test
    void aReadingNearAThresholdIsAskedForAgainAtOnce() {
        Reply reply = at("skin stretch").say("2.6 2.6");
        assertTrue(reply.lines().stream().anyMatch(line -> line.contains("second time")), reply.lines().toString());
    }

    @Test
    void stretchedShorterThanRestingIsRefused_whicheverComesFirst() {
        assertEquals(Reply.Kind.REFUSED, at("nipple to fold at rest").say("8 8").interview().say("7.5 8.5").kind());
        assertEquals(Reply.Kind.REFUSED, at("nipple to fold, stretched").say("7.5 8").interview().go("nipple to fold at rest").interview().say("8 8").kind());
    }

    @Test
    void undoTakesBackAndRedoGivesAgain() {
        Interview one = at("base width").say("12.5 12.8").interview();
        Interview two = one.say("11.8 11.9").interview();
        Reply undone = two.say("undo");
        assertEquals("breastHeightCm", undone.interview().current().orElseThrow().id());
        assertFalse(undone.interview().dossier().patientCase().left().readings().has(Measure.BREAST_HEIGHT));
        Interview earlier = undone.interview().say("undo").interview();
        assertFalse(earlier.dossier().patientCase().left().readings().has(Measure.BASE_WIDTH));
        Interview again = earlier.say("redo").interview().say("redo").interview();
        assertEquals(two.dossier(), again.dossier());
        assertEquals(two.exchanges(), again.exchanges());
    }

    @Test
    void healthIsAnsweredInOneLine() {
        Interview none = at("health").say("none").interview();
        assertEquals(6, none.dossier().patientCase().history().size());
        assertFalse(none.dossier().patientCase().history().containsValue(true));
        Interview some = at("health").say("nicotine, earlier surgery").interview();
        assertTrue(some.dossier().patientCase().history().get(HealthQuestion.NICOTINE));
        assertTrue(some.dossier().patientCase().history().get(HealthQuestion.EARLIER_BREAST_SURGERY));
        assertFalse(some.dossier().patientCase().history().get(HealthQuestion.ACTIVE_INFECTION));
        assertTrue(at("health").say("skip").interview().dossier().patientCase().history().isEmpty());
    }

    @Test
    void ptosisIsTypedAsTheTradeWritesIt() {
        Interview interview = at("ptosis").say("I 2").interview();
        assertEquals(Ptosis.GRADE_I, interview.dossier().patientCase().left().ptosis().orElseThrow());
        assertEquals(Ptosis.GRADE_II, interview.dossier().patientCase().right().ptosis().orElseThrow());
    }

    @Test
    void skippingLeavesItOpenAndIsNotAskedAgain() {
        Interview interview = at("bust").say("skip").interview();
        assertFalse(interview.dossier().patientCase().patient().has(Measure.BUST));
        assertEquals("intermammaryCm", interview.current().orElseThrow().id());
        assertEquals("skipped", interview.shown(interview.question("bustCm")).orElseThrow());
    }

    @Test
    void aJournalReplaysToTheSameDossier() {
        Interview said = fresh().say("31").interview().say("166").interview().say("58").interview().say("none").interview().say("sloped").interview();
        Interview replayed = fresh();
        for (Exchange exchange : said.exchanges()) {
            replayed = replayed.answer(exchange.questionId(), exchange.typed());
        }
        assertEquals(said.dossier(), replayed.dossier());
        assertEquals(said.current().orElseThrow().id(), replayed.current().orElseThrow().id());
    }

    @ParameterizedTest(name = "go {0}")
    @CsvSource({"device, device", "devices side by side, pins", "saline fill, fill", "base width, baseWidthCm",
        "nipple to fold, nippleToFoldCm", "opening, opening"})
    void aQuestionIsGoneToByItsNameBeforeByAWordInAnother(String words, String id) {
        assertEquals(id, at(words).current().orElseThrow().id());
    }

    @Test
    void heightAndWeightExchangedIsNamed() {
        Interview interview = at("height").say("57").interview();
        Reply reply = interview.current().isPresent() && interview.current().get().id().equals("weightKg")
                ? interview.say("166") : at("height").say("57");
        String said = String.join(" ", reply.lines());
        assertTrue(said.contains("height") && said.contains("weight"), said);
    }

    @Test
    void weightsAreSevenDigits() {
        assertEquals(Reply.Kind.TAKEN, at("weights").say("3 2 5 2 1 4 1").kind());
        assertEquals(Reply.Kind.TAKEN, at("weights").say("3252141").kind());
        assertEquals(Reply.Kind.REFUSED, at("weights").say("3 2 5 2 1 4").kind());
        assertEquals(Reply.Kind.REFUSED, at("weights").say("3 2 5 2 1 4 6").kind());
    }
}

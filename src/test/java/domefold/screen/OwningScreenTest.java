package domefold.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import domefold.Approved;
import domefold.canvas.Canvas;
import domefold.canvas.Glyphs;
import domefold.followup.course.LifeCourse;
import domefold.followup.course.PriceList;
import domefold.followup.course.Strategy;
import domefold.interview.Choices;
import domefold.interview.Dossier;
import domefold.interview.Interview;
import domefold.outcome.Band;
import domefold.patient.Case;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The pane of decades: approved pictures, keys and typed words that move it, and nothing lost on the way back. */
class OwningScreenTest {
    private static final String GEL = "gel-smooth-full-300";
    private static final String SALINE = "saline-smooth-full-280";

    private static final List<String> EITHER_SURFACE = Walk.ORDINARY.stream().map(line -> line.equals("smooth") ? "skip" : line).toList();

    private static Walk consult(List<String> lines, String pins, Optional<PriceList> prices) {
        Desk desk = Walk.desk();
        Desk priced = new Desk(desk.guide(), desk.today(), desk.practice(), prices);
        Interview fresh = Interview.begin(desk.guide(), new Dossier(Case.empty("", LocalDate.of(2026, 3, 4)), Choices.NONE));
        Interview answered = ((ConsultScreen) Walk.on(ConsultScreen.of(priced, fresh)).lines(lines).screen()).interview();
        return Walk.on(ConsultScreen.of(priced, pins.isEmpty() ? answered : answered.answer("pins", pins)).walk(-20)).key(Key.Kind.F3)
                .key(Key.Kind.F3).key(Key.Kind.F3).key(Key.Kind.F3).key(Key.Kind.F3).key(Key.Kind.F3).key(Key.Kind.F3);
    }

    private static Walk pane(String pins) {
        return consult(Walk.ORDINARY, pins, Optional.empty()).key(Key.Kind.F9);
    }

    @Test
    void theYearsCountedStandInTheNarrowestWindowWhateverTheSchedule() {
        for (String schedule : List.of("US-2020", "ACR-2023-GEL-EARLY")) {
            String picture = pane(GEL).line("schedule " + schedule).picture(60, 18);
            assertTrue(picture.contains("attended  to year 20"), picture);
        }
    }

    private static OwningScreen owning(Walk walk) {
        return (OwningScreen) walk.screen();
    }

    private static Walk tabs(Walk walk, int times) {
        for (int i = 0; i < times; i++) {
            walk.key(Key.Kind.TAB);
        }
        return walk;
    }

    @ParameterizedTest(name = "{0}x{1}")
    @CsvSource({"80, 24", "160, 48"})
    void looksAsApproved(int columns, int rows) {
        String size = "-" + columns + "x" + rows;
        Walk two = pane(SALINE + " " + GEL);
        Approved.check("owning-first" + size, two.picture(columns, rows));
        Approved.check("owning-years" + size, tabs(two, 1).picture(columns, rows));
        Approved.check("owning-outcomes" + size, tabs(two, 3).picture(columns, rows));
        Approved.check("owning-changed" + size, tabs(pane(SALINE + " " + GEL).line("mri").line("attend 60"), 3).picture(columns, rows));
        Approved.check("owning-rare-four" + size, tabs(consult(EITHER_SURFACE, GEL + " gel-textured-full-300 " + SALINE
                + " saline-smooth-full-240", Optional.empty()).key(Key.Kind.F9), 9).picture(columns, rows));
    }

    @Test
    void theWholePageIsApprovedByReadingIt() {
        PriceList prices = new PriceList("EUR", Map.of(PriceList.Item.ULTRASOUND, 100.0, PriceList.Item.MRI, 500.0));
        Walk walk = consult(Walk.ORDINARY, SALINE + " " + GEL, Optional.of(prices)).key(Key.Kind.F9);
        Approved.check("owning-whole", OwningParts.page(owning(walk).owning(), Glyphs.UNICODE, 100, 49).picture(Glyphs.UNICODE));
    }

    @Test
    void anyAssumptionCanBeTypedAndTheCourseMovesWithIt() {
        Walk walk = pane(GEL);
        Band before = silent(walk);
        for (String typed : List.of("ultrasound", "mri", "attend 40", "40 %", "year 8", "US-2006", "schedule fr-2018")) {
            walk.line("reset").line(typed);
            assertFalse(before.equals(silent(walk)), typed);
            assertTrue(walk.picture(160, 48).contains("changed here; F10 goes back"), typed);
        }
        walk.line("reset");
        assertEquals(before, silent(walk));
        assertTrue(walk.picture(160, 48).contains("as the consult has it"));
    }

    private static Band silent(Walk walk) {
        return owning(walk).owning().years().get(0).byYearShown().orElseThrow().over(LifeCourse::silentAtHorizon);
    }

    @Test
    void keysChangeTheSameAssumptions() {
        Walk walk = pane(GEL);
        assertEquals(Strategy.ULTRASOUND, owning(walk.key(Key.Kind.F5)).owning().now().strategy());
        assertEquals(0.75, owning(walk.key(Key.Kind.F6)).owning().now().adherence());
        assertFalse(owning(walk.key(Key.Kind.F7)).owning().now().schedule().equals(Optional.of("US-2020")));
        assertEquals(25, owning(walk.key(Key.Kind.F8)).owning().now().horizonYears());
        assertEquals(owning(walk).owning().start(), owning(walk.key(Key.Kind.F10)).owning().now());
    }

    @Test
    void whatMeansNothingHereIsRefusedInOneSentenceAndChangesNothing() {
        Walk walk = pane(GEL);
        Owning before = owning(walk).owning();
        for (String typed : List.of("attend 101", "attend -1", "year 0", "year 2.5", "year 61", "schedule mars", "what", "%", "NaN %")) {
            walk.line(typed);
            assertSame(before, owning(walk).owning(), typed);
            assertTrue(owning(walk).said().length() > 20, typed);
            assertFalse(owning(walk).said().contains("\n"), typed);
        }
    }

    @Test
    void escAndF9LeadBackToTheConsultAsItWas() {
        for (Key.Kind back : List.of(Key.Kind.ESCAPE, Key.Kind.F9)) {
            Walk walk = consult(Walk.ORDINARY, GEL, Optional.empty());
            Screen consult = walk.screen();
            walk.key(Key.Kind.F9).line("mri").key(Key.Kind.PAGE_DOWN).key(back);
            assertSame(consult, walk.screen());
        }
        assertEquals(List.of(), pane(GEL).line("mri").effects());
    }

    @Test
    void withoutPinsItIsTheDeviceInFocusAndWithoutAPlanNothingOpens() {
        Walk walk = consult(Walk.ORDINARY, "", Optional.empty()).key(Key.Kind.DOWN);
        ConsultScreen consult = (ConsultScreen) walk.screen();
        String focus = DeviceRows.of(consult.interview(), consult.devices()).get(1).device().id();
        assertEquals(focus, owning(walk.key(Key.Kind.F9)).owning().devices().get(0).id());
        assertTrue(consult(List.of(""), "", Optional.empty()).key(Key.Kind.F9).screen() instanceof ConsultScreen);
    }

    @Test
    void withoutAScheduleNothingIsCountedAndTheRestStands() {
        List<String> unscheduled = Walk.ORDINARY.stream().map(line -> line.equals("US-2020") ? "skip" : line).toList();
        Walk walk = consult(unscheduled, GEL, Optional.empty()).key(Key.Kind.F9);
        String page = OwningParts.page(owning(walk).owning(), Glyphs.UNICODE, 100, 58).picture(Glyphs.UNICODE);
        assertTrue(page.contains("No imaging schedule is chosen, so no exam is counted and no course computed."), page);
        assertTrue(page.contains("about 10 to 24 of 100 have it, 76 to 90 of 100 do not"), page);
        assertEquals(1, owning(walk.line("schedule US-2020")).owning().years().size());
    }

    @Test
    void aScheduleThatStatesNothingOrAsksSalineTooSaysSo() {
        Walk walk = pane(SALINE + " " + GEL);
        String none = whole(walk.line("schedule AU-2020"));
        assertTrue(none.contains("No exam years are stated for it: no exam, alarm or operation is counted."), none);
        assertTrue(none.contains("Without any exam, silent at year 10: about 10 to 24 of 100 have it, 76 to 90 of 100 do not"), none);
        assertFalse(none.contains("exams attended"), none);
        String yearly = whole(walk.line("schedule FR-2018"));
        assertTrue(yearly.contains("the schedule asks for its exams all the same"), yearly);
        assertTrue(yearly.contains("First one on 4 March 2027, if operated on 4 March 2026"), yearly);
        assertFalse(yearly.contains("no exam while nothing has changed"), yearly);
    }

    /** The page of both devices, one column after the other so that sentences stay whole. */
    private static String whole(Walk walk) {
        Owning owning = owning(walk).owning();
        return OwningParts.page(owning.showing(0, 1), Glyphs.UNICODE, 100, 100).picture(Glyphs.UNICODE).replaceAll("\\s+", " ")
                + OwningParts.page(owning.showing(1, 1), Glyphs.UNICODE, 100, 100).picture(Glyphs.UNICODE).replaceAll("\\s+", " ");
    }

    @Test
    void withoutAPriceListOnlyCountsAreShownAndItSaysSo() {
        String page = OwningParts.page(owning(pane(SALINE + " " + GEL)).owning(), Glyphs.UNICODE, 100, 49).picture(Glyphs.UNICODE);
        assertTrue(page.contains("The practice has entered no prices: counts only"), page);
        assertTrue(page.contains("For comparison only, no price of this practice:"), page);
        assertFalse(page.contains("EUR"), page);
    }

    @Test
    void anyKeysAtAnySizeDrawSomethingWholeAndAsciiStaysAscii() {
        long seed = 20260304L;
        SplittableRandom dice = new SplittableRandom(seed);
        Key.Kind[] kinds = Key.Kind.values();
        Walk walk = pane(SALINE + " " + GEL);
        for (int i = 0; i < 120; i++) {
            Key.Kind kind = kinds[dice.nextInt(kinds.length)];
            walk.key(kind == Key.Kind.CHARACTER ? Key.character("0 %amry".charAt(dice.nextInt(7))) : Key.of(kind));
            if (walk.screen() instanceof ConsultScreen) {
                walk = pane(SALINE + " " + GEL);
            }
            if (i % 10 == 0) {
                int rows = 1 + dice.nextInt(60);
                Canvas canvas = Frame.of(walk.screen(), 1 + dice.nextInt(200), rows, Glyphs.ASCII);
                assertEquals(rows, canvas.picture().lines().count(), "seed " + seed + ", key " + i);
                assertEquals("", canvas.picture().replaceAll("[\\x20-\\x7e\\n]", ""), "seed " + seed + ", key " + i);
            }
        }
    }

    @Test
    void theFirstKeyBackFromTheLastDeviceMoves() {
        Walk walk = pane(SALINE + " saline-smooth-full-240 " + GEL);
        for (int i = 0; i < 6; i++) {
            walk.key(Key.Kind.RIGHT);
        }
        assertTrue(walk.picture(80, 24).contains("2–3 of 3"), walk.picture(80, 24));
        assertTrue(walk.key(Key.Kind.LEFT).picture(80, 24).contains("1–2 of 3"), walk.picture(80, 24));
    }

    @Test
    void oneYearIsOneYear() {
        Owning owning = owning(pane(GEL).line("year 1")).owning();
        String page = OwningParts.page(owning, Glyphs.UNICODE, 100, 58).picture(Glyphs.UNICODE);
        assertTrue(java.util.regex.Pattern.compile(" 1 year$", java.util.regex.Pattern.MULTILINE).matcher(page).find(), page);
        assertFalse(page.contains(" 1 years"), page);
    }

    @Test
    void theEntryLineStaysFreeInTheSmallestWindow() {
        String three = SALINE + " saline-smooth-full-240 " + GEL;
        for (int columns : new int[] {60, 80, 100}) {
            for (int right = 0; right < 3; right++) {
                Walk walk = pane(three);
                for (int i = 0; i < right; i++) {
                    walk.key(Key.Kind.RIGHT);
                }
                List<String> lines = walk.picture(columns, 18).lines().toList();
                assertEquals(" >" + " ".repeat(18), lines.get(15).substring(0, 20), lines.get(15));
                assertTrue(lines.get(15).contains(" of 3") && lines.get(15).contains("rows 1–9 of "), lines.get(15));
                assertTrue(lines.get(17).contains("Esc back"), lines.get(17));
            }
        }
        assertTrue(pane(three).picture(60, 18).contains(" 1 of 3, rows 1–9 of "));
        Walk typing = pane(three);
        "schedule US-2020 and more than fits".codePoints().forEach(c -> typing.key(Key.character(c)));
        assertTrue(typing.picture(60, 18).contains("> schedule US-2020 and more than fits\n"), typing.picture(60, 18));
    }

    @Test
    void nothingOnTheWholePageIsCut() {
        for (int[] size : new int[][] {{78, 38}, {158, 38}, {158, 58}, {58, 58}}) {
            String page = OwningParts.page(owning(pane(SALINE + " " + GEL)).owning(), Glyphs.UNICODE, size[0], size[1]).picture(Glyphs.UNICODE);
            assertFalse(page.contains("…"), "at " + size[0]);
        }
    }
}

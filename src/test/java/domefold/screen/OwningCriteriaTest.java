package domefold.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import domefold.Check;
import domefold.canvas.Canvas;
import domefold.canvas.Glyphs;
import domefold.device.Device;
import domefold.device.Fill;
import domefold.device.Profile;
import domefold.device.Surface;
import domefold.evidence.Evidence;
import domefold.followup.shown.Framing;
import domefold.followup.shown.OutcomeRow;
import domefold.followup.shown.OutcomeWords;
import domefold.followup.shown.RiskFigure;
import domefold.followup.shown.RiskTable;
import domefold.outcome.Band;
import domefold.patient.Setting;
import domefold.store.EvidenceFiles;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * The criteria P1 to P8 for showing probabilities (BMC Health Serv Res 2013;13:225) and C7 to C10 for screening tests (Med
 * Decis Making 2014;34:699-710), held against every comparison the pane can draw.
 */
class OwningCriteriaTest {
    private static final Evidence EVIDENCE = EvidenceFiles.shipped();
    private static final List<Device> KINDS = kinds();

    private static List<Device> kinds() {
        List<Device> kinds = new ArrayList<>();
        for (Fill fill : Fill.values()) {
            for (Surface surface : Surface.values()) {
                for (double heightCm : new double[] {11, 12.5}) {
                    kinds.add(new Device(fill.key() + "-" + surface.key() + "-" + heightCm, "invented", fill, surface, Profile.FULL, 300,
                            fill == Fill.SALINE ? Optional.of(new Band(300, 330)) : Optional.empty(), 11, heightCm, 4.2));
                }
            }
        }
        return kinds;
    }

    /** Every pair of kinds, and four at once. */
    private static List<List<Device>> comparisons() {
        List<List<Device>> all = new ArrayList<>(List.of(KINDS.subList(0, 4), KINDS.subList(2, 6), KINDS.subList(4, 8)));
        KINDS.forEach(one -> KINDS.forEach(other -> all.add(List.of(one, other))));
        return all;
    }

    private static Owning owning(List<Device> devices) {
        Setting setting = new Setting(Optional.of("US-2020"), Optional.empty(), Optional.empty(), Optional.empty(), OptionalInt.of(20), Set.of());
        return Owning.of(devices, Assumptions.of(setting, EVIDENCE), Optional.empty(), LocalDate.of(2026, 3, 4), EVIDENCE);
    }

    private static StripPage page(Owning owning) {
        return OwningParts.page(owning, Glyphs.UNICODE, 158, 58);
    }

    private static String words(Cell cell) {
        Canvas canvas = new Canvas(58, cell.height(), Glyphs.UNICODE);
        cell.painter().accept(canvas);
        return canvas.picture().replaceAll("\\s+", " ").strip();
    }

    private static Strip strip(StripPage page, String heading) {
        List<Strip> found = page.strips().stream().filter(strip -> strip.heading().equals(List.of(heading))).toList();
        assertEquals(1, found.size(), heading);
        return found.get(0);
    }

    @Check("C-DIS-01")
    @Test
    void everyComparisonMeetsTheCriteriaForShowingProbabilities() {
        for (List<Device> devices : comparisons()) {
            Owning owning = owning(devices);
            StripPage page = page(owning);
            String names = devices.stream().map(Device::id).collect(Collectors.joining(" "));
            assertFalse(owning.risks().rows().isEmpty(), names);
            for (RiskTable.Row row : owning.risks().rows()) {
                String who = row.unit().equals("patient") ? "women" : "implants";
                Strip strip = strip(page, OutcomeWords.of(row.outcome()) + " by year 10, of 100 " + who);
                assertEquals(devices.size(), strip.cells().size(), "P1: a cell a device, " + names);
                for (int i = 0; i < devices.size(); i++) {
                    holds(words(strip.cells().get(i)), row.cells().get(i), names + ": " + row.outcome());
                }
            }
        }
    }

    private static void holds(String cell, Optional<RiskFigure> known, String where) {
        if (known.isEmpty()) {
            assertTrue(cell.startsWith("not known: ") || cell.startsWith("does not apply: "), "P1: " + where);
            assertFalse(cell.matches(".*\\d.*"), "P4, P5: no number without its heading, " + where);
            return;
        }
        RiskFigure figure = known.get();
        assertTrue(cell.contains(Framing.both(figure.per100())), "P3, P8: " + where + ": " + cell);
        assertTrue(figure.rows().size() == 1 ? cell.contains("one cohort") : cell.contains("range over " + figure.rows().size() + " cohorts"),
                "P6: " + where);
        for (OutcomeRow row : figure.rows()) {
            assertTrue(cell.contains(row.study() + " "), "P2: " + where);
            assertTrue(cell.contains(row.status().words()), "status: " + where + ": " + cell);
            assertEquals(10, row.year().orElseThrow(), "P5: " + where);
            assertTrue(row.intervalPercent().isPresent() ? cell.contains("interval ") || cell.contains("range ")
                    : cell.contains("no interval printed"), "P6: " + where);
        }
        long full = cell.chars().filter(c -> c == '●').count();
        long half = cell.chars().filter(c -> c == '◐').count();
        long dots = cell.chars().filter(c -> c == '·').count();
        if (OutcomeWords.FIRST.contains(figure.outcome())) {
            assertEquals(Framing.people(figure.per100().low()), full, "P7: " + where);
            assertEquals(Framing.people(figure.per100().high()), full + half, "P7: " + where);
            assertEquals(100, full + half + dots, "P5: one hundred, " + where);
        } else {
            assertTrue(cell.contains("█"), "P7: " + where);
        }
    }

    @Test
    void theReferenceGroupOfEveryFigureAndCurveStandsOnThePage() {
        for (List<Device> devices : comparisons()) {
            Owning owning = owning(devices);
            String text = page(owning).picture(Glyphs.UNICODE).replaceAll("\\s+", " ");
            owning.risks().rows().stream().flatMap(row -> row.cells().stream()).flatMap(Optional::stream)
                    .flatMap(figure -> figure.rows().stream()).map(OutcomeRow::provenance)
                    .forEach(line -> assertTrue(text.contains(line), "P2: " + line));
        }
    }

    @Check("C-DIS-02")
    @Test
    void aRevisionFigureIsNeverShown() {
        for (Device device : KINDS) {
            assertFalse(page(owning(List.of(device))).picture(Glyphs.UNICODE).contains("32.4"), device.id());
        }
        String gel = page(owning(List.of(KINDS.get(KINDS.get(0).fill() == Fill.GEL ? 0 : 4)))).picture(Glyphs.UNICODE);
        assertTrue(gel.contains("GEL-A 20.8 (95 % interval 17.2–25.2)"), "first operations");
    }

    @Check("C-DIS-04")
    @Test
    void itIsNeverClaimedThatSalineContractsLess() {
        for (List<Device> devices : comparisons()) {
            String text = page(owning(devices)).picture(Glyphs.UNICODE).replaceAll("\\s+", " ");
            for (String sentence : text.split("(?<=[.?:;]) ")) {
                String lower = sentence.toLowerCase(java.util.Locale.ROOT);
                boolean claim = lower.contains("saline") && lower.matches(".*\\b(less|lower|fewer|safer|better)\\b.*");
                assertTrue(!claim || lower.endsWith("?") || lower.startsWith("no claim is made"), sentence);
            }
            assertTrue(text.contains("no claim is made that saline has less"), "the disagreement stands");
            assertTrue(text.contains("No ranking of fills or surfaces by contracture"), "and is pointed at beside the figures");
        }
    }

    @Test
    void allThreeDisagreementsStandWithEveryPosition() {
        Owning owning = owning(List.of(KINDS.get(0), KINDS.get(7)));
        String text = page(owning).picture(Glyphs.UNICODE).replaceAll("\\s+", " ");
        assertEquals(3, owning.doubts().size());
        owning.doubts().forEach(doubt -> {
            assertTrue(text.contains(doubt.question()) && text.contains(doubt.caution()), doubt.id());
            doubt.positions().forEach(position -> assertTrue(text.contains(position.text()), position.text()));
        });
    }

    @Test
    void rareHarmsStandOnOneDenominatorOfTheirOwnAndFollowTheSurface() {
        for (Device device : KINDS) {
            StripPage page = page(owning(List.of(device)));
            String text = page.picture(Glyphs.UNICODE).replaceAll("\\s+", " ");
            String rare = text.substring(text.indexOf("Very rare harms, of 100 000 people"));
            assertEquals(device.surface() == Surface.TEXTURED, rare.contains("salt-loss macrotextured"), device.id());
            assertEquals(device.surface() == Surface.TEXTURED, rare.contains("On the market"), device.id());
            assertTrue(rare.contains("about 15 of 100 000 have it, 99 985 do not (no interval printed)"), device.id());
        }
    }

    @Test
    void whereGelIsShownTheExamIsExplainedBeforeItIsAdvised() {
        for (List<Device> devices : comparisons()) {
            String text = page(owning(devices)).picture(Glyphs.UNICODE).replaceAll("\\s+", " ");
            boolean gel = devices.stream().anyMatch(device -> device.fill() == Fill.GEL);
            assertEquals(gel, text.contains("What it looks for A broken shell."), "C7");
            assertEquals(gel, text.contains("A positive ultrasound is confirmed by MRI before any operation"), "C8");
            assertEquals(gel, text.contains("If it finds nothing The next exam of the schedule follows. Earliest dates 4 Mar 2031"), "C9");
            assertEquals(gel, text.contains("would never have caused trouble"), "C10");
        }
    }

    @Test
    void pastTheDataThereIsNoFigureOnlyTheWords() {
        Owning owning = owning(List.of(KINDS.stream().filter(device -> device.fill() == Fill.GEL).findFirst().orElseThrow()));
        String text = page(owning).picture(Glyphs.UNICODE).replaceAll("\\s+", " ");
        assertTrue(text.contains("to year 20: no data after year 10"), text);
        assertFalse(text.matches(".*\\d %? by year 20.*"), "no share by year 20");
    }
}

package domefold.followup.shown;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import domefold.Check;
import domefold.device.Device;
import domefold.device.Fill;
import domefold.device.Profile;
import domefold.device.Surface;
import domefold.evidence.Evidence;
import domefold.followup.survival.Rates;
import domefold.outcome.Band;
import domefold.store.EvidenceFiles;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Published figures as they are shown, against the papers they come from. */
class ShownReferenceTest {
    private final Evidence evidence = EvidenceFiles.shipped();

    private static Device device(Fill fill, Surface surface) {
        return new Device("x", "invented", fill, surface, Profile.FULL, 300,
                fill == Fill.SALINE ? Optional.of(new Band(300, 330)) : Optional.empty(), 11.5, 11.5, 4.2);
    }

    /** C-RAR-01: Cordeiro et al. 2020, PMC7247945; interval derived there by Wilson. */
    @Check("C-RAR-01")
    @Test
    void tenOf3546IsOneIn355And282Per100000() {
        assertEquals(282, RareHarm.per100000OneIn(3546 / 10.0), 1);
        RareHarm shown = RareHarm.forDevice(Surface.TEXTURED, Fill.GEL, evidence).stream()
                .filter(harm -> harm.source().contains("PMC7247945")).findFirst().orElseThrow();
        assertEquals(282, shown.per100000().orElseThrow(), 1);
        assertEquals(new Band(153, 518), shown.bandPer100000().orElseThrow());
        assertEquals(153, Wilson.interval(10, 3546).low() * RareHarm.DENOMINATOR, 1);
        assertEquals(518, Wilson.interval(10, 3546).high() * RareHarm.DENOMINATOR, 1);
    }

    /** C-RAR-02: Cordeiro et al. 2020, PMC7247945. */
    @Check("C-RAR-02")
    @Test
    void aRateOverTenYearsIsTakenByTheExponential() {
        assertEquals(0.3105, 100 * Rates.shareAtConstantRate(0.311 / 1000, 10), 0.001);
    }

    /** C-RAR-03: Doren et al. 2017. C-RAR-04: US FDA 2018 as restated. */
    @Check({"C-RAR-03", "C-RAR-04"})
    @Test
    void oneInSoManyBecomesSoManyOf100000() {
        assertEquals(30_303, 1e6 / 33, 1);
        assertEquals(3.3, RareHarm.per100000OneIn(1e6 / 33), 0.05);
        assertEquals(26.2, RareHarm.per100000OneIn(3817), 0.05);
        assertEquals(3.3, RareHarm.per100000OneIn(30_000), 0.05);
        RareHarm regulator = RareHarm.forDevice(Surface.TEXTURED, Fill.GEL, evidence).get(0);
        assertEquals(new Band(3.3, 26.2), regulator.bandPer100000().orElseThrow());
    }

    /** C-RAR-05. */
    @Check("C-RAR-05")
    @Test
    void rareHarmsHaveOneDenominatorAndNameCohortAndSurface() {
        for (Surface surface : Surface.values()) {
            for (RareHarm harm : RareHarm.forDevice(surface, Fill.GEL, evidence)) {
                assertFalse(harm.population().isEmpty());
                assertFalse(harm.surfaceWords().isEmpty());
                harm.per100000().ifPresent(value -> assertTrue(value >= 0 && value <= RareHarm.DENOMINATOR));
            }
        }
    }

    @Test
    void aSmoothShellIsNotShownTheFiguresOfTexturedOnes() {
        List<RareHarm> smooth = RareHarm.forDevice(Surface.SMOOTH, Fill.GEL, evidence);
        assertTrue(smooth.stream().noneMatch(harm -> harm.surfaceWords().contains("textured")), smooth.toString());
        assertTrue(smooth.stream().noneMatch(harm -> harm.surfaceWords().contains("polyurethane")), smooth.toString());
        assertTrue(smooth.stream().anyMatch(harm -> harm.measureWords().contains("not estimable")));
        assertTrue(RareHarm.forDevice(Surface.TEXTURED, Fill.GEL, evidence).stream()
                .anyMatch(harm -> harm.per100000().orElse(0) == 860));
        assertTrue(RareHarm.forDevice(Surface.SMOOTH, Fill.SALINE, evidence).stream()
                .noneMatch(harm -> harm.surfaceWords().equals("gel")));
        assertEquals(3, RareHarm.marketStatus(evidence).size());
    }

    /** C-DIS-01: decision-aid criteria P1 to P8 (BMC Health Serv Res 2013;13:225), as far as a value can meet them. */
    @Check("C-DIS-01")
    @Test
    void everyCellOfAComparisonMeetsTheCriteriaForShowingRisk() {
        List<Device> devices = List.of(device(Fill.GEL, Surface.SMOOTH), device(Fill.SALINE, Surface.SMOOTH),
                device(Fill.GEL, Surface.TEXTURED), device(Fill.SALINE, Surface.TEXTURED));
        RiskTable table = RiskTable.of(devices, 10, evidence);
        assertTrue(table.rows().size() > 5);
        Set<String> seen = new HashSet<>();
        for (RiskTable.Row row : table.rows()) {
            assertEquals(devices.size(), row.cells().size());
            assertTrue(seen.add(row.outcome() + row.unit()), "one row per outcome and unit");
            for (int i = 0; i < devices.size(); i++) {
                String words = table.words(row, i);
                assertTrue(words.contains("by year 10"), words);
                Optional<RiskFigure> cell = row.cells().get(i);
                if (cell.isEmpty()) {
                    assertTrue(words.contains("not known"), words);
                    continue;
                }
                assertEquals(10, cell.get().year());
                assertEquals(row.unit(), cell.get().unit());
                assertTrue(words.contains("per 100 "), words);
                assertTrue(words.contains("have it") && words.contains("do not"), words);
                for (OutcomeRow point : cell.get().rows()) {
                    assertTrue(words.contains(point.study()) && words.contains(point.status().words())
                            && words.contains(point.source()), words);
                }
            }
        }
    }

    /** C-DIS-02: US FDA June 2011 update as transcribed in the Australian report of April 2012. */
    @Check("C-DIS-02")
    @Test
    void removalByYearTenIs20Point8ForAFirstOperationAndNever32Point4() {
        for (Surface surface : Surface.values()) {
            RiskFigure removal = figure(device(Fill.GEL, surface), "removal_any", "patient");
            assertEquals(new Band(11.6, 20.8), removal.per100());
        }
        OutcomeRow revision = OutcomeRow.all(evidence).stream().filter(row -> row.outcome().equals("removal_any")
                && row.percent().orElse(0) == 32.4).findFirst().orElseThrow();
        assertTrue(revision.indication().contains("REVISION"));
        assertTrue(Comparability.whyNot(revision, device(Fill.GEL, Surface.SMOOTH)).orElseThrow().contains("revision cohort"));
    }

    /** C-DIS-03: Spear & Murphy 2014. */
    @Check("C-DIS-03")
    @Test
    void contractureOf18Point9IsSaidBothWays() {
        assertEquals("about 19 of 100 have it, 81 of 100 do not", Framing.both(18.9));
        assertEquals("fewer than 1 of 100 have it, more than 99 of 100 do not", Framing.both(0.2));
        assertEquals("about 5 to 19 of 100 have it, 81 to 95 of 100 do not", Framing.both(new Band(4.7, 18.9)));
    }

    /** C-DIS-04. */
    @Check("C-DIS-04")
    @Test
    void noClaimIsMadeThatSalineContractsLess() {
        Disagreements.Disagreement fill = Disagreements.of(evidence).stream()
                .filter(one -> one.id().equals("saline-gel-contracture")).findFirst().orElseThrow();
        assertTrue(fill.caution().contains("no claim is made that saline has less"));
        String positions = fill.positions().toString();
        for (String figure : List.of("2.25", "0.39 (0.02 to 6.69)", "5.0 v 2.8", "20.8", "18.9", "too thin to conclude")) {
            assertTrue(positions.contains(figure), figure + " in " + positions);
        }
    }

    @Test
    void whatTenYearRuptureMeansIsShownWithEveryWayOfCounting() {
        String positions = Disagreements.of(evidence).stream().filter(one -> one.id().equals("ten-year-rupture"))
                .findFirst().orElseThrow().positions().toString();
        for (String figure : List.of("24.2", "13 of 100 women", "7.7 of 100 implants", "10.1", "9.4", "15 to 17", "6 of 100",
                "3.8", "1.6")) {
            assertTrue(positions.contains(figure), figure + " in " + positions);
        }
        assertFalse(positions.contains("older generations"), positions);
    }

    /** C-PRO-01 and C-PRO-03 for what is shown here. */
    @Check({"C-PRO-01", "C-PRO-03"})
    @Test
    void nothingMarkedAsNotToBeUsedEntersAFigure() {
        for (Fill fill : Fill.values()) {
            for (Surface surface : Surface.values()) {
                for (int year = 1; year <= 15; year++) {
                    for (RiskFigure figure : RiskFigure.of(device(fill, surface), year, OutcomeRow.all(evidence))) {
                        for (OutcomeRow row : figure.rows()) {
                            assertFalse(row.source().isBlank());
                            assertFalse(row.note().contains("do not fit"), row.toString());
                            assertFalse(row.note().contains("leave out"), row.toString());
                            assertFalse(row.indication().contains("REVISION"), row.toString());
                            assertFalse(row.surfaceWords().contains("older"), row.toString());
                            assertEquals(fill.key(), row.fillWords());
                        }
                    }
                }
            }
        }
    }

    /** C-FIT-11's rule applied to ranges: Duteille 2017 had no scheduled MRI. */
    @Test
    void ruptureWithoutScheduledMriIsNotInTheRange() {
        RiskFigure rupture = figure(device(Fill.GEL, Surface.SMOOTH), "rupture", "patient");
        assertEquals(new Band(10.1, 24.2), rupture.per100());
        assertEquals(List.of("GEL-A", "GEL-B"), rupture.rows().stream().map(OutcomeRow::study).toList());
    }

    @Test
    void theFinalPointOfACohortStandsBeforeItsInterimOne() {
        RiskFigure contracture = figure(device(Fill.GEL, Surface.SMOOTH), "contracture_III_IV", "patient");
        assertEquals(new Band(4.7, 18.9), contracture.per100());
        assertTrue(contracture.restsOnMemory());
        assertTrue(contracture.mixesSurfaces());
    }

    @Test
    void theTenTopicsOfTheChecklistAreThereWithTheirSource() {
        List<Topics.Topic> topics = Topics.of(evidence);
        assertEquals(10, topics.size());
        topics.forEach(topic -> assertTrue(topic.source().contains("27 Oct 2021"), topic.toString()));
    }

    @Test
    void anExchangeIsDescribedForEachFillInTheSameAspects() {
        List<String> saline = Exchange.of(Fill.SALINE, evidence).stream().map(Exchange::aspect).toList();
        assertEquals(saline, Exchange.of(Fill.GEL, evidence).stream().map(Exchange::aspect).toList());
        assertEquals(4, saline.size());
    }

    private RiskFigure figure(Device device, String outcome, String unit) {
        return RiskFigure.of(device, 10, OutcomeRow.all(evidence)).stream()
                .filter(one -> one.outcome().equals(outcome) && one.unit().equals(unit)).findFirst().orElseThrow();
    }
}

package domefold.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import domefold.outcome.Band;
import domefold.outcome.Refusal;
import domefold.patient.Case;
import domefold.patient.Side;
import domefold.patient.Wishes;
import domefold.record.ConsultRecord;
import domefold.record.RecordStatus;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class SheetTest {
    private static final Map<Side, Limits> LIMITS = Map.of(
            Side.LEFT, new Limits(OptionalDouble.of(11.2), OptionalDouble.of(300), Optional.of(new Band(265, 330))),
            Side.RIGHT, new Limits(OptionalDouble.of(11.75), OptionalDouble.of(325.4), Optional.empty()));

    @Test
    void exchangingTheSidesExchangesTheColumnsAndNothingElse() {
        ConsultRecord record = SampleRecords.signed();
        List<List<String>> rows = SettledGrid.of(record).rows();
        List<List<String>> mirrored = SettledGrid.of(SampleRecords.mirrored(record)).rows();
        for (int i = 0; i < rows.size(); i++) {
            assertEquals(List.of(rows.get(i).get(0), rows.get(i).get(2), rows.get(i).get(1)), mirrored.get(i));
        }
        assertTrue(rows.stream().anyMatch(row -> !row.get(1).equals(row.get(2))), "the sample's sides differ");
    }

    @Test
    void aReadingKeepsThePrecisionItWasTypedIn() {
        List<List<String>> rows = ReadingsGrid.ofSides(SampleRecords.signed().inputs()).rows();
        assertEquals(List.of("nipple to fold at rest", "6.4 cm, mean of 2", "6.6 cm"), rows.get(0));
        assertEquals(List.of("base width", "12.0 cm", "12.8 cm"), rows.get(1));
        assertEquals(List.of("breast volume", "241 mL, by surface scan", "not taken"), rows.get(2));
    }

    @Test
    void wishesCarryTheirUnitAndTheirScale() {
        Case inputs = SampleRecords.signed().inputs().withWishes(new Wishes(Optional.of(Wishes.UpperPole.SLOPED),
                OptionalDouble.of(300), Map.of(Wishes.Matter.SHORT_SCAR, 3)));
        assertEquals(List.of(new Block.Fact("upper pole", "sloped"), new Block.Fact("size", "300 mL"),
                new Block.Fact("a short scar", "3 of 5")), ReadingsGrid.wishes(inputs).facts());
        assertEquals("not asked", ReadingsGrid.wishes(SampleRecords.signed().inputs()).facts().get(0).value());
    }

    @Test
    void anOrderHasTheSettledSizeItsNeighboursAndThePiecesPerSideInWords() {
        Order order = Order.of(SampleRecords.signed(), SampleRecords.SHA);
        assertEquals(List.of("LEFT GEL-M-290 settled", "LEFT GEL-M-270 smaller, in reserve",
                "LEFT GEL-M-330 larger, in reserve", "RIGHT GEL-M-330 settled", "RIGHT GEL-M-290 smaller, in reserve",
                "RIGHT GEL-M-360 larger, in reserve"), order.lines().stream().map(line -> line.side().name() + " "
                        + line.device().id() + " " + line.purpose().words()).toList());
        assertEquals(Map.of("GEL-M-270", 1, "GEL-M-290", 2, "GEL-M-330", 2, "GEL-M-360", 1), Order.pieces(List.of(order)));
        List<String> words = texts(OrderSheet.of(order));
        assertTrue(words.stream().anyMatch(text -> text.contains("dated 2026-01-05, sha256 " + "ab".repeat(32))));
    }

    @Test
    void aDayWithoutOrdersSaysSo() {
        assertTrue(texts(OrderSheet.ofDay(LocalDate.of(2026, 3, 4), List.of()))
                .contains("No case has anything to order for 04-Mar-2026 (2026-03-04)."));
    }

    @Test
    void whatMustNotBeOrderedOrLeaveIsRefusedInOneSentence() {
        assertEquals("practice-record", refusal(() -> Allowed.toLeave(SampleRecords.withStatus(RecordStatus.SIGNED, true))));
        assertEquals("practice-record", refusal(() -> Allowed.toOrder(SampleRecords.withStatus(RecordStatus.SIGNED, true))));
        assertEquals("order-of-draft", refusal(() -> Allowed.toOrder(SampleRecords.withStatus(RecordStatus.DRAFT, false))));
        assertEquals("order-of-error",
                refusal(() -> Allowed.toOrder(SampleRecords.withStatus(RecordStatus.ENTERED_IN_ERROR, false))));
        Allowed.toOrder(SampleRecords.signed());
        Allowed.toLeave(SampleRecords.withStatus(RecordStatus.DRAFT, false));
    }

    @Test
    void thePatientsSheetNamesWhoAdvisesAndWhatAHundredCountsAndHoldsNothingComputedForHer() {
        List<String> words = texts(PatientSheet.of(SampleRecords.signed(), SampleRecords.SHA));
        String all = String.join("\n", words);
        assertTrue(all.contains("Advised by US FDA labelling guidance (schedule US-2020)"), all);
        assertTrue(all.contains("Capsular contracture within 10 years: 9 to 19 of 100 women"), all);
        assertTrue(all.contains("Rupture within 10 years: 7 of 100 implants"), all);
        assertTrue(all.contains("from memory, fairly sure"), all);
        assertTrue(all.contains("where the scar lies (still to be discussed)"), all);
        for (String computed : List.of("ceiling", "margin", "verdict", "fits", "12.0 cm", "12.8 cm", "+0.2")) {
            assertFalse(all.contains(computed), "holds '" + computed + "'");
        }
    }

    /** Rules for numbers on paper: no "cc", no bare decimal point, no unit glued to its number, no trailing nought on mL. */
    @Test
    void everyNumberOnEverySheetCanBeReadOneWayOnly() {
        Pattern wrong = Pattern.compile("\\bcc\\b|\\s\\.\\d|\\d(cm|mL|ml)\\b|\\.0 mL");
        for (Sheet sheet : List.of(ClinicalSheet.of(SampleRecords.signed(), SampleRecords.SHA, LIMITS),
                PatientSheet.of(SampleRecords.signed(), SampleRecords.SHA),
                OrderSheet.of(Order.of(SampleRecords.signed(), SampleRecords.SHA)))) {
            for (String text : texts(sheet)) {
                Matcher found = wrong.matcher(text);
                assertFalse(found.find(), () -> sheet.title() + ": '" + found.group() + "' in " + text);
            }
        }
    }

    @Test
    void draftsErrorsPracticeAndInventedListsAreSaidFirst() {
        assertEquals(List.of("INVENTED DEVICE LIST: made by a geometric rule; nobody sells these devices."),
                Banners.of(SampleRecords.signed()));
        assertTrue(Banners.of(SampleRecords.withStatus(RecordStatus.DRAFT, true)).containsAll(
                List.of("DRAFT: not signed.", "PRACTICE: an invented patient. Not for care.")));
    }

    private static String refusal(Runnable act) {
        Refusal refusal = assertThrows(Refusal.class, act::run);
        assertFalse(refusal.getMessage().contains(". "), "one sentence");
        return refusal.code();
    }

    /** Every text on a sheet. */
    static List<String> texts(Sheet sheet) {
        List<String> texts = new ArrayList<>(sheet.banners());
        texts.add(sheet.title());
        for (Block block : sheet.blocks()) {
            if (block instanceof Block.Heading heading) {
                texts.add(heading.text());
            } else if (block instanceof Block.Words words) {
                texts.add(words.text());
            } else if (block instanceof Block.Facts facts) {
                facts.facts().forEach(fact -> texts.add(fact.name() + " " + fact.value()));
            } else if (block instanceof Block.Grid grid) {
                texts.addAll(grid.header());
                grid.rows().forEach(texts::addAll);
            } else if (block instanceof Block.Boxes boxes) {
                boxes.boxes().forEach(box -> texts.add(box.words()));
            }
        }
        return texts;
    }
}

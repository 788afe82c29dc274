package domefold.label;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import domefold.device.Device;
import domefold.device.Fill;
import domefold.device.Profile;
import domefold.device.Surface;
import domefold.outcome.Band;
import domefold.outcome.Note;
import domefold.patient.Side;
import domefold.record.Settlement;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class ImplantCheckTest {
    private static final LocalDate DAY = LocalDate.of(2026, 4, 2);
    private static final Device SALINE_300 = saline("S-300", 300);
    private static final Device SALINE_330 = saline("S-330", 330);
    private static final Optional<Settlement> SETTLED = Optional.of(new Settlement(Side.LEFT, SALINE_300, 310,
            Optional.empty(), new Settlement.Fold(OptionalDouble.empty(), OptionalDouble.empty(), "leave the fold"),
            Optional.empty(), Optional.empty(), List.of(SALINE_330), Optional.empty(), List.of(), List.of(),
            Optional.empty()));

    @Test
    void whatAgreesIsSilent() {
        assertEquals(List.of(), codes(ImplantCheck.differences(
                entry("S-300", 310, "(01)09521101530001(17)310704(240)S-300"), SETTLED, Optional.of(SALINE_300))));
    }

    @Test
    void aNeighbouringSizeAndAnotherFillAreSaidWithTheirNumbers() {
        List<Note> notes = ImplantCheck.differences(entry("S-330", 345, "(01)09521101530001(240)S-330"), SETTLED,
                Optional.of(SALINE_330));
        assertEquals(List.of("neighbouring-size", "other-fill"), codes(notes));
        assertEquals("LEFT: 345 mL where 310 mL was settled, 35 mL more", notes.get(1).text());
    }

    @Test
    void aForeignDeviceAndAFillOutsideItsLabelAreSaid() {
        assertEquals(List.of("other-device", "other-fill", "fill-outside-label", "label-not-read"), codes(
                ImplantCheck.differences(new ImplantedDevice(Side.LEFT, "S-400", 431, Optional.empty(), DAY), SETTLED,
                        Optional.of(saline("S-400", 400)))));
    }

    @Test
    void aLabelThatNamesAnotherDeviceOrHasExpiredIsSaid() {
        assertEquals(List.of("label-names-another", "expired", "made-later"), codes(ImplantCheck.differences(
                entry("S-300", 310, "(01)09521101530001(11)260403(17)260401(240)S-330"), SETTLED, Optional.of(SALINE_300))));
    }

    @Test
    void theLastDayOfUseIsStillInDate() {
        assertEquals(List.of(), codes(ImplantCheck.differences(
                entry("S-300", 310, "(01)09521101530001(11)260402(17)260402(240)S-300"), SETTLED, Optional.of(SALINE_300))));
    }

    @Test
    void anUnsettledSideAnUnlistedDeviceAndATypedLabelAreSaid() {
        assertEquals(List.of("nothing-settled", "not-in-list", "label-unchecked"), codes(ImplantCheck.differences(
                entry("S-300", 310, "S-300"), Optional.empty(), Optional.empty())));
        assertEquals(List.of("label-not-comparable"), codes(ImplantCheck.differences(
                entry("S-300", 310, "(01)09521101530001"), SETTLED, Optional.of(SALINE_300))));
    }

    @Test
    void aGelDeviceHoldsItsNominalVolume() {
        Device gel = new Device("G-300", "line", Fill.GEL, Surface.SMOOTH, Profile.FULL, 300, Optional.empty(), 11, 11, 4.4);
        assertTrue(codes(ImplantCheck.differences(entry("G-300", 310, "(01)09521101530001(240)G-300"), Optional.empty(),
                Optional.of(gel))).contains("gel-fill"));
    }

    @Test
    void oneSerialOnBothSidesIsALabelReadTwice() {
        ImplantedDevice left = entry("S-300", 310, "(01)09521101530001(21)77");
        ImplantedDevice right = new ImplantedDevice(Side.RIGHT, "S-300", 310, left.label(), DAY.plusDays(1));
        assertEquals(List.of("one-label-for-both", "two-days"), codes(ImplantCheck.between(left, right)));
    }

    private static ImplantedDevice entry(String reference, double fillMl, String label) {
        return new ImplantedDevice(Side.LEFT, reference, fillMl, Optional.of(LabelReader.read(label, 2026)), DAY);
    }

    private static Device saline(String id, double nominalMl) {
        return new Device(id, "line", Fill.SALINE, Surface.SMOOTH, Profile.MODERATE, nominalMl,
                Optional.of(new Band(nominalMl - 10, nominalMl + 30)), 11.5, 11.5, 3.6);
    }

    private static List<String> codes(List<Note> notes) {
        return notes.stream().map(Note::code).toList();
    }
}

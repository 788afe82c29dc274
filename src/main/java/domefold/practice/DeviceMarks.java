package domefold.practice;

import domefold.device.Catalogue;
import domefold.device.Device;
import domefold.device.Fill;
import domefold.device.Profile;
import domefold.outcome.Figures;
import domefold.outcome.Note;
import domefold.patient.Wishes;
import domefold.plan.SideFit;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;

/** One side's device, its fill and its profile. */
final class DeviceMarks {
    private static final String AGE = "age-below-label";

    private DeviceMarks() {}

    /** The engine's verdict on the device: fits is inside, tight is defensible. */
    static Judged device(SidePlan said, Optional<SideFit> fit) {
        if (said.deviceId().isEmpty()) {
            return Judged.notStated("a device of the list is asked for");
        }
        String id = said.deviceId().get();
        if (fit.isEmpty()) {
            return Judged.of(Standing.OUTSIDE, id, "the list has no device " + id);
        }
        SideFit found = fit.get();
        Standing standing = switch (found.verdict()) {
            case FITS -> Standing.INSIDE;
            case TIGHT -> Standing.DEFENSIBLE;
            case OUTSIDE -> Standing.OUTSIDE;
        };
        String decided = found.reasons().isEmpty() ? "no limit is touched"
                : String.join("; ", found.reasons().stream().map(Note::text).toList());
        return Judged.of(standing, id, decided).reading(stability(found));
    }

    private static String stability(SideFit fit) {
        if (fit.stability().isEmpty()) {
            return "";
        }
        String most = fit.decidingReading().map(measure -> "; the " + measure.words() + " matters most").orElse("");
        return "over the error of all readings it is not outside in " + percent(fit.stability().getAsDouble())
                + (fit.fitShare().isPresent() ? " and fits in " + percent(fit.fitShare().getAsDouble()) : "") + most;
    }

    private static String percent(double share) {
        return Figures.of(100 * share, 0, 0) + " of 100 draws";
    }

    /** The fill named must be the device's, allowed at her age, and inside the label's range. */
    static Judged fill(SidePlan said, Optional<Device> device, Optional<SideFit> fit) {
        if (said.fill().isEmpty()) {
            return Judged.notStated("saline or gel is asked for");
        }
        String words = said.fill().get().key()
                + (said.fillMl().isPresent() ? ", " + Figures.ml(said.fillMl().getAsDouble()) + " mL" : "");
        if (device.isEmpty()) {
            return Judged.of(Standing.UNMARKED, words, "no device of the list to hold it against");
        }
        Device held = device.get();
        if (held.fill() != said.fill().get()) {
            return Judged.of(Standing.OUTSIDE, words, "device " + held.id() + " is filled with " + held.fill().key());
        }
        Optional<Note> age = fit.flatMap(one -> one.reasons().stream().filter(note -> note.code().equals(AGE)).findFirst());
        if (age.isPresent()) {
            return Judged.of(Standing.OUTSIDE, words, age.get().text());
        }
        return held.fill() == Fill.GEL ? gel(said, held, words) : saline(said, held, words);
    }

    private static Judged gel(SidePlan said, Device held, String words) {
        String rule = "gel comes at its nominal " + Figures.ml(held.nominalMl()) + " mL";
        boolean other = said.fillMl().isPresent() && said.fillMl().getAsDouble() != held.nominalMl();
        return Judged.of(other ? Standing.OUTSIDE : Standing.INSIDE, words, rule);
    }

    private static Judged saline(SidePlan said, Device held, String words) {
        if (held.labelFillMl().isEmpty()) {
            return Judged.of(Standing.UNMARKED, words, "the list gives no fill range for " + held.id());
        }
        String rule = "the label's range is " + Figures.ml(held.labelFillMl().get().low()) + " to "
                + Figures.ml(held.labelFillMl().get().high()) + " mL";
        if (said.fillMl().isEmpty()) {
            return Judged.of(Standing.OUTSIDE, words, rule + "; no volume is stated");
        }
        boolean inside = held.labelFillMl().get().includes(said.fillMl().getAsDouble());
        return Judged.of(inside ? Standing.INSIDE : Standing.OUTSIDE, words, rule);
    }

    /** The profile against the look wanted (common practice, no source), and against the device itself. */
    static Judged profile(SidePlan said, Optional<Device> device, Wishes wishes) {
        if (said.profile().isEmpty()) {
            return Judged.notStated("a profile class is asked for");
        }
        Profile stated = said.profile().get();
        if (device.isPresent() && device.get().profile() != stated) {
            return Judged.of(Standing.OUTSIDE, stated.key(), "device " + device.get().id() + " is "
                    + device.get().profile().key());
        }
        if (wishes.upperPole().isEmpty()) {
            return Judged.of(Standing.UNMARKED, stated.key(), "she has no wish for the upper pole");
        }
        Wishes.UpperPole look = wishes.upperPole().get();
        return Judged.of(usual(look).contains(stated) ? Standing.INSIDE : Standing.DEFENSIBLE, stated.key(),
                "she wants the upper pole " + look.key() + "; which profile gives that is common practice, no source");
    }

    static Set<Profile> usual(Wishes.UpperPole look) {
        return switch (look) {
            case SLOPED -> EnumSet.range(Profile.LOW, Profile.MODERATE_PLUS);
            case EVEN -> EnumSet.range(Profile.MODERATE, Profile.FULL);
            case ROUND -> EnumSet.range(Profile.MODERATE_PLUS, Profile.EXTRA_FULL);
        };
    }

    static Optional<Device> find(SidePlan said, Catalogue catalogue) {
        return said.deviceId().flatMap(catalogue::find);
    }
}

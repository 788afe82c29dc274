package domefold.screen;

import domefold.canvas.Role;
import domefold.device.Device;
import domefold.device.Surface;
import domefold.evidence.Status;
import domefold.followup.shown.Disagreements;
import domefold.followup.shown.RareHarm;
import domefold.outcome.Numbers;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Where published figures disagree, and the very rare harms on their own denominator. */
final class DoubtStrips {
    private DoubtStrips() {}

    static void write(StripBuilder page, Owning owning) {
        page.part("Where published figures disagree");
        for (Disagreements.Disagreement one : owning.doubts()) {
            page.say(one.question(), Role.LABEL);
            page.say(one.caution(), Role.BODY);
            one.positions().forEach(position -> page.item("- ", position.text() + "; " + position.source() + " ("
                    + position.status().words() + ")", role(position.status())));
            page.blank();
        }
        rare(page, owning);
    }

    private static Role role(Status status) {
        return status.isMemory() ? Role.CAUTION : Role.FAINT;
    }

    private static void rare(StripBuilder page, Owning owning) {
        page.part("Very rare harms, of " + Numbers.count(RareHarm.DENOMINATOR) + " people");
        page.say("Each over the time its source looked at, named with it; where none is named, the table records none. A line over the whole"
                + " width holds for every device shown.", Role.FAINT);
        page.blank();
        List<List<RareHarm>> columns = owning.devices().stream().map(device -> RareHarm.forDevice(device.surface(), device.fill(),
                owning.evidence())).toList();
        Set<RareHarm> harms = new LinkedHashSet<>();
        columns.forEach(harms::addAll);
        for (RareHarm harm : harms) {
            String heading = harm.harm() + ": " + harm.population() + "; " + harm.surfaceWords();
            if (columns.stream().allMatch(column -> column.contains(harm))) {
                everyDevice(page, heading, harm);
                continue;
            }
            page.across(heading, owning.devices(), device -> columns.get(owning.devices().indexOf(device)).contains(harm) ? harm(page, harm) : other(page, device));
        }
        if (owning.devices().stream().anyMatch(device -> device.surface() == Surface.TEXTURED)) {
            page.say("On the market", Role.LABEL);
            RareHarm.marketStatus(owning.evidence()).forEach(harm -> page.item("- ", harm.population() + ": " + harm.surfaceWords() + ", "
                    + harm.measureWords() + "; " + AssumptionWords.said(harm.source(), harm.status()), role(harm.status())));
        }
    }

    private static void everyDevice(StripBuilder page, String heading, RareHarm harm) {
        page.say(heading, Role.LABEL);
        page.item("  ", harm.words(), Role.BODY);
        if (!harm.note().isEmpty()) {
            page.item("  ", harm.note(), Role.FAINT);
        }
        page.item("  ", AssumptionWords.said(harm.source(), harm.status()), role(harm.status()));
        page.blank();
    }

    private static Cell other(StripBuilder page, Device device) {
        return page.text("speaks of no " + device.surface().key() + " " + device.fill().key() + " device", Role.FAINT);
    }

    private static Cell harm(StripBuilder page, RareHarm harm) {
        List<Cell> cells = new ArrayList<>(List.of(page.text(harm.words(), Role.BODY)));
        if (!harm.note().isEmpty()) {
            cells.add(page.text(harm.note(), Role.FAINT));
        }
        cells.add(OwningParts.source(page, harm.source(), harm.status()));
        return StripBuilder.stack(cells);
    }
}

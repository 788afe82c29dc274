package domefold.report;

import domefold.basics.Lists;
import domefold.device.Catalogue;
import domefold.device.Surface;
import domefold.outcome.Note;
import domefold.outcome.Numbers;
import domefold.patient.Side;
import domefold.plan.DevicePair;
import domefold.plan.Plan;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;

/** A plan as readable text, LEFT and RIGHT in words, every number with its unit, its band and who stands behind it. */
public final class PlanText {
    private PlanText() {}

    /**
     * The whole plan.
     *
     * @param engine version of this program
     */
    public static String of(Plan plan, Catalogue catalogue, String engine) {
        Page page = new Page();
        page.ends("Plan for case " + plan.of().code() + ", " + plan.of().date(), "domefold " + engine);
        page.paragraph(0, "Device list: " + plan.catalogueName() + (catalogue.date().isEmpty() ? "" : ", " + catalogue.date())
                + ", " + offered(plan, catalogue) + ".");
        if (catalogue.invented()) {
            page.paragraph(0, Statements.INVENTED_LIST);
        }
        page.paragraph(0, Statements.SUPPORTS + " LEFT and RIGHT are the patient's own.");
        if (!plan.blocked().isEmpty()) {
            page.heading("BLOCKED: no device may be called fitting");
            plan.blocked().forEach(note -> note(page, note));
        }
        if (!plan.notes().isEmpty()) {
            page.heading("About this case");
            plan.notes().forEach(note -> note(page, note));
        }
        LimitsText.write(page, plan);
        CandidatesText.write(page, plan);
        pairs(page, plan.pairs());
        for (Side side : Side.values()) {
            LimitsText.working(page, plan.side(side));
        }
        return page.text();
    }

    private static String offered(Plan plan, Catalogue catalogue) {
        int all = catalogue.devices().size();
        int offered = plan.candidates().size();
        String surfaces = String.join(" and ", new TreeSet<>(Lists.map(plan.of().setting().surfaces(), Surface::key)));
        return offered == all ? Numbers.count(all, "device", "devices")
                : Numbers.count(offered) + " of " + Numbers.count(all, "device", "devices") + " offered" + (surfaces.isEmpty() ? "" : " (" + surfaces + ")");
    }

    /** A remark with its code, so that it can be found in the JSON and in a saved record. */
    static void note(Page page, Note note) {
        page.hanging("  - ", sentence(note.text()) + " [" + note.code() + "]");
    }

    /** With a capital and a full stop, whatever stood in the note. */
    static String sentence(String text) {
        String capital = text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
        return capital.endsWith(".") || capital.endsWith("!") || capital.endsWith("?") ? capital : capital + ".";
    }

    private static void pairs(Page page, List<DevicePair> pairs) {
        if (pairs.isEmpty()) {
            return;
        }
        page.heading("Pairs that leave the smallest difference between the sides");
        for (DevicePair pair : pairs) {
            page.hanging("  - ", "LEFT " + pair.leftId() + " at " + Numbers.ml(pair.leftFillMl()) + ", RIGHT "
                    + pair.rightId() + " at " + Numbers.ml(pair.rightFillMl())
                    + (pair.volumeGapMl().isPresent()
                            ? "; left less right remains " + Numbers.marginMl(pair.volumeGapMl().getAsDouble()) : "")
                    + ". " + pair.text());
        }
    }
}

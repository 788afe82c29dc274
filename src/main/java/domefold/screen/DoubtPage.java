package domefold.screen;

import domefold.canvas.Role;
import domefold.canvas.TextWidth;
import domefold.choose.OrderDoubt;
import domefold.choose.Weights;
import domefold.evidence.Constants;
import domefold.interview.Interview;
import domefold.outcome.Band;
import domefold.outcome.Numbers;
import domefold.patient.Side;
import domefold.plan.Candidate;
import domefold.plan.Doubt;
import domefold.plan.Plan;
import domefold.plan.VerdictDoubt;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** How sure verdicts and order are under the reading error, and what a second reading would buy. */
public final class DoubtPage {
    /** What stands where no device is left to be sure of. */
    public static final String NONE_FOLLOWED = "No device is pinned and none of the list stands within her limits, so there is no verdict to be"
            + " sure of.";

    private static final int FOLLOWED = 3;
    private static final int PLACES_SHOWN = 8;
    private static final int READINGS_SHOWN = 3;

    private DoubtPage() {}

    static List<OverlayView.Line> lines(ConsultScreen screen) {
        List<OverlayView.Line> lines = new ArrayList<>();
        Interview interview = screen.interview();
        Optional<Plan> plan = interview.plan();
        lines.add(new OverlayView.Line(0, "How sure this is", Role.TITLE));
        if (plan.isEmpty()) {
            lines.add(new OverlayView.Line(0, "Nothing is computed yet: the age and both base widths come first.", Role.BODY));
            return lines;
        }
        Constants constants = interview.guide().evidence().constants();
        Doubt doubt = Doubt.of(plan.get(), constants, interview.guide().options());
        lines.add(new OverlayView.Line(0, "Every reading is drawn " + Numbers.count(doubt.draws())
                + " times within its own error; the shares are of those draws.", Role.FAINT));
        List<Candidate> followed = followed(screen, plan.get());
        if (followed.isEmpty()) {
            lines.add(new OverlayView.Line(0, "", Role.BODY));
            lines.add(new OverlayView.Line(0, NONE_FOLLOWED, Role.BODY));
        }
        for (Candidate candidate : followed) {
            lines.add(new OverlayView.Line(0, "", Role.BODY));
            lines.add(new OverlayView.Line(0, candidate.device().id(), Role.LABEL));
            for (Side side : Side.values()) {
                verdict(doubt.of(candidate, side), side, lines);
            }
        }
        lines.add(new OverlayView.Line(0, "", Role.BODY));
        OrderDoubt.of(plan.get(), doubt, Weights.of(plan.get().of().wishes(), constants), constants)
                .ifPresent(order -> order(order, lines));
        return lines;
    }

    /** The pinned devices, or the first of the list. */
    private static List<Candidate> followed(ConsultScreen screen, Plan plan) {
        List<Candidate> pinned = DevicesView.pinned(screen, plan);
        return !pinned.isEmpty() ? pinned : DeviceRows.of(screen.interview(), screen.devices()).stream().limit(FOLLOWED).toList();
    }

    private static void verdict(Optional<VerdictDoubt> doubt, Side side, List<OverlayView.Line> lines) {
        if (doubt.isEmpty()) {
            lines.add(new OverlayView.Line(2, TextWidth.padRight(side.toString(), 7) + "no reading could change it, or one is missing", Role.FAINT));
            return;
        }
        VerdictDoubt d = doubt.get();
        lines.add(new OverlayView.Line(2, TextWidth.padRight(side.toString(), 7) + d.verdict().key() + " as read; of the draws "
                + Numbers.percent(d.fits()) + " fit, " + Numbers.percent(d.tight()) + " are tight, " + Numbers.percent(d.outside()) + " outside", DevicesView.roleOf(d.verdict())));
        if (d.changes() > 0) {
            d.again().stream().limit(READINGS_SHOWN).filter(take -> !Numbers.percent(take.changes()).equals(Numbers.percent(d.changes()))).forEach(take -> lines.add(
                    new OverlayView.Line(9, "with a second " + take.measure().words() + " it would change in "
                            + Numbers.percent(take.changes()) + " instead of " + Numbers.percent(d.changes()), Role.BODY)));
        }
    }

    private static void order(OrderDoubt order, List<OverlayView.Line> lines) {
        lines.add(new OverlayView.Line(0, "The order by her weights alone, fits and tight together, as readings move within their error", Role.LABEL));
        lines.add(new OverlayView.Line(2, TextWidth.padRight("place", 7) + TextWidth.padRight("device", 36)
                + TextWidth.padRight("comes first", 13) + TextWidth.padRight("places", 9) + "outside", Role.FAINT));
        order.standings().stream().limit(PLACES_SHOWN).forEach(place -> lines.add(new OverlayView.Line(2, row(place), Role.BODY)));
        if (!order.others().isEmpty()) {
            lines.add(new OverlayView.Line(2, "outside as it stands, first in some draw: " + String.join(", ", order.others().stream()
                    .limit(READINGS_SHOWN).map(place -> place.id() + " " + Numbers.percent(place.first())).toList()), Role.FAINT));
        }
    }

    private static String row(OrderDoubt.Standing place) {
        Band ranks = place.ranks();
        return TextWidth.padRight(String.valueOf(place.rank()), 7) + TextWidth.padRight(place.id(), 36)
                + TextWidth.padRight(Numbers.percent(place.first()), 13) + TextWidth.padRight(Numbers.range(ranks, 0), 9)
                + Numbers.percent(place.outside());
    }
}

package domefold.line;

import domefold.choose.OrderDoubt;
import domefold.choose.Weights;
import domefold.evidence.Constants;
import domefold.interview.Interview;
import domefold.outcome.Numbers;
import domefold.patient.Side;
import domefold.plan.Candidate;
import domefold.plan.Doubt;
import domefold.plan.Plan;
import domefold.report.Page;
import domefold.screen.DeviceRows;
import domefold.screen.DevicesState;
import domefold.screen.DoubtPage;
import java.util.List;

/** How sure verdicts and order are under the reading error, and what a second reading would buy. */
final class DoubtInWords {
    private static final int FOLLOWED = 3;
    private static final int PLACES_SHOWN = 8;
    private static final int OTHERS_SHOWN = 3;
    private static final int[] WIDTHS = {-5, 36, 11, 6, 7};

    private DoubtInWords() {}

    /** The pinned devices, or the first of that order where none is pinned; then the order by her weights. */
    static String of(Interview interview, DevicesState.Sort sort) {
        Page page = new Page();
        if (interview.plan().isEmpty()) {
            return page.paragraph(0, "Nothing is computed yet: the age and both base widths come first.").text();
        }
        Plan plan = interview.plan().get();
        Constants constants = interview.guide().evidence().constants();
        Doubt doubt = Doubt.of(plan, constants, interview.guide().options());
        page.line("How sure this is");
        page.paragraph(0, "Every reading is drawn " + Numbers.count(doubt.draws())
                + " times within its own error; the shares are of those draws.");
        List<Candidate> followed = followed(interview, sort);
        if (followed.isEmpty()) {
            page.blank().paragraph(0, DoubtPage.NONE_FOLLOWED);
        }
        for (Candidate candidate : followed) {
            page.heading(candidate.device().id());
            for (Side side : Side.values()) {
                page.hanging("  ", doubt.of(candidate, side).map(one -> one.text() + ".")
                        .orElse(side + ": no reading could change it, or one is missing."));
            }
        }
        OrderDoubt.of(plan, doubt, Weights.of(plan.of().wishes(), constants), constants).ifPresent(order -> order(page, order));
        return page.text();
    }

    private static List<Candidate> followed(Interview interview, DevicesState.Sort sort) {
        List<Candidate> pinned = SideBySide.pinned(interview);
        return !pinned.isEmpty() ? pinned
                : DeviceRows.of(interview, DevicesState.FIRST.withSort(sort).withFittingOnly(true)).stream().limit(FOLLOWED).toList();
    }

    private static void order(Page page, OrderDoubt order) {
        page.blank().paragraph(0, "The order by her weights alone, fits and tight together, as readings move within their error:");
        page.row(WIDTHS, List.of("place", "device", "comes first", "places", "outside"));
        order.standings().stream().limit(PLACES_SHOWN).forEach(one -> page.row(WIDTHS, List.of(String.valueOf(one.rank()), one.id(),
                Numbers.percent(one.first()), Numbers.range(one.ranks(), 0), Numbers.percent(one.outside()))));
        if (!order.others().isEmpty()) {
            page.paragraph(0, "Outside as it stands, first in some draw: " + String.join(", ", order.others().stream().limit(OTHERS_SHOWN)
                    .map(one -> one.id() + " " + Numbers.percent(one.first())).toList()) + ".");
        }
    }
}

package domefold.line;

import domefold.device.Device;
import domefold.interview.Interview;
import domefold.outcome.Figures;
import domefold.outcome.Numbers;
import domefold.plan.Candidate;
import domefold.plan.Verdict;
import domefold.report.Page;
import domefold.screen.DeviceRows;
import domefold.screen.DevicesState;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The device list as it was last printed. A number means the row that was printed with it, even where an answer has
 * changed the order since.
 *
 * @param sort what orders it
 * @param all true where devices outside on both sides are in it
 * @param ids device ids by number, from 1
 * @param printed how many rows were printed
 * @param pins true where a row can be pinned by its number
 */
record Listing(DevicesState.Sort sort, boolean all, List<String> ids, int printed, boolean pins) {
    static final Listing NONE = new Listing(DevicesState.FIRST.sort(), false, List.of(), 0, true);
    static final Listing TO_LOOK_AT = new Listing(DevicesState.FIRST.sort(), false, List.of(), 0, false);
    private static final int ROWS_AT_ONCE = 20;
    private static final int[] WIDTHS = {-3, 6, 8, 13, -5, -5, -5, 7, 7, 7};

    Listing {
        ids = List.copyOf(ids);
    }

    /** A list and its text. */
    record Printed(Listing listing, String text) {}

    /** The order of that name. */
    static Optional<DevicesState.Sort> sortNamed(String word) {
        return Arrays.stream(DevicesState.Sort.values()).filter(s -> !word.isBlank()
                && s.name().toLowerCase(Locale.ROOT).startsWith(word.toLowerCase(Locale.ROOT))).findFirst();
    }

    static List<String> sortWords() {
        return Arrays.stream(DevicesState.Sort.values()).map(s -> s.name().toLowerCase(Locale.ROOT)).toList();
    }

    /** The list from its first row: everything, or the first rows of what is not outside on both sides. */
    Printed first(Interview interview, DevicesState.Sort by, boolean every) {
        List<Candidate> rows = DeviceRows.of(interview, DevicesState.FIRST.withSort(by).withFittingOnly(!every));
        Page page = new Page();
        if (interview.plan().isEmpty()) {
            page.paragraph(0, "No device can be held against anything yet: the age and both base widths come first.");
            return new Printed(pins ? NONE : TO_LOOK_AT, page.text());
        }
        long fit = rows.stream().filter(c -> DeviceRows.both(c) == Verdict.FITS).count();
        page.paragraph(0, Numbers.count(rows.size(), "device", "devices")
                + (every ? "" : " of " + interview.plan().get().candidates().size()) + ", " + fit + (fit == 1 ? " fits" : " fit")
                + " both sides. Order: " + by.words() + ".");
        if (rows.isEmpty()) {
            page.paragraph(0, "Nothing fits or nearly fits; `devices all` shows every device"
                    + (pins ? ", `pin` and `compare` say what stands against it." : "."));
        }
        return new Listing(by, every, rows.stream().map(c -> c.device().id()).toList(), 0, pins)
                .rows(interview, page, every ? rows.size() : ROWS_AT_ONCE);
    }

    /** The rows after those printed last. */
    Printed more(Interview interview) {
        if (printed >= ids.size()) {
            return new Printed(this, new Page().paragraph(0, ids.isEmpty() ? "Nothing is listed yet; `devices` prints the list."
                    : "That was the whole list; `devices all` shows every device.").text());
        }
        return rows(interview, new Page(), ROWS_AT_ONCE);
    }

    private Printed rows(Interview interview, Page page, int most) {
        int to = Math.min(ids.size(), printed + most);
        if (to > printed) {
            page.row(WIDTHS, List.of("no.", "fill", "surface", "profile", "mL", "width", "proj.", "LEFT", "RIGHT", "opening"));
        }
        List<Candidate> candidates = interview.plan().orElseThrow().candidates();
        for (int i = printed; i < to; i++) {
            String id = ids.get(i);
            int number = i + 1;
            candidates.stream().filter(c -> c.device().id().equals(id)).findFirst()
                    .ifPresent(candidate -> page.row(WIDTHS, cells(number, candidate)));
        }
        if (to < ids.size()) {
            page.paragraph(0, Numbers.count(ids.size() - to, "more row", "more rows") + ": `devices more`.");
        }
        if (to > 0) {
            page.paragraph(0, "Width, projection and opening in cm." + (pins ? " `pin 1` puts row 1 beside the others." : ""));
        }
        return new Printed(new Listing(sort, all, ids, to, pins), page.text());
    }

    private static List<String> cells(int number, Candidate candidate) {
        Device device = candidate.device();
        List<String> cells = new ArrayList<>(List.of(number + ".", device.fill().key(), device.surface().key(),
                device.profile().key(), Figures.ml(device.nominalMl()), Numbers.plain(device.widthCm(), 1),
                Numbers.plain(device.projectionCm(), 1), candidate.left().verdict().key(), candidate.right().verdict().key()));
        cells.add(candidate.incision().map(i -> Numbers.range(new domefold.outcome.Band(i.lowCm(), i.highCm()), 1)).orElse("unknown"));
        return cells;
    }
}

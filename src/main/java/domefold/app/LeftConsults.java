package domefold.app;

import domefold.patient.Case;
import domefold.screen.StartScreen;
import domefold.store.Homes;
import domefold.store.Journal;
import domefold.store.Journals;
import java.io.IOException;
import java.time.Clock;
import java.time.Instant;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The consults that were begun and not finished. */
final class LeftConsults {
    private LeftConsults() {}

    /** Those that are not open elsewhere, the latest first. */
    static List<StartScreen.Left> of(Homes homes, Clock clock) throws IOException {
        List<StartScreen.Left> left = new ArrayList<>();
        for (Journal.Unfinished one : Journals.unfinished(homes.journals())) {
            if (!one.inUse() && !one.start().practice() && !one.entries().isEmpty()) {
                left.add(new StartScreen.Left(one.id(), code(one), one.entries().size(), moment(one.lastAt(), clock)));
            }
        }
        return left;
    }

    private static String moment(Instant at, Clock clock) {
        return DateTimeFormatter.ofPattern("d MMM yyyy HH:mm", Locale.ENGLISH).format(at.atZone(clock.getZone()));
    }

    private static String code(Journal.Unfinished left) {
        String code = left.start().start().map(Case::code).orElse("");
        for (Journal.Entry entry : left.entries()) {
            if (entry.question().equals("case")) {
                code = entry.text();
            }
        }
        return code;
    }
}

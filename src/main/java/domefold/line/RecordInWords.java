package domefold.line;

import domefold.interview.Interview;
import domefold.interview.Question;
import domefold.interview.Room;
import domefold.report.Page;
import domefold.report.Statements;
import domefold.screen.Desk;
import domefold.screen.SettledPage;
import java.util.List;

/** The summary as it will be saved, with what has to be known before it is signed. */
final class RecordInWords {
    private RecordInWords() {}

    static String of(Desk desk, Interview interview) {
        Page page = new Page();
        for (String line : SettledPage.texts(interview)) {
            String text = line.strip();
            page.hanging(" ".repeat(line.length() - line.stripLeading().length()), text);
        }
        for (Room room : Room.values()) {
            List<Question> open = interview.openIn(room);
            if (!open.isEmpty()) {
                page.paragraph(0, "Open in " + room.title() + ": " + String.join(", ", open.stream().map(Question::label).toList()) + ".");
            }
        }
        page.heading("Answers");
        interview.summary().forEach(line -> page.hanging("  ", QuestionInWords.flat(line)));
        List<String> cautions = LimitsInWords.cautions(interview);
        page.heading(cautions.isEmpty() ? "No caution stands." : "Cautions");
        cautions.forEach(line -> page.hanging("  ", line + (line.endsWith(".") ? "" : ".")));
        page.blank();
        banners(page, desk);
        return page.text();
    }

    /** What is said at the start and before signing. */
    static void banners(Page page, Desk desk) {
        if (desk.practice()) {
            page.paragraph(0, Statements.PRACTICE);
        }
        page.paragraph(0, desk.list().sentence());
        page.paragraph(0, Statements.SUPPORTS);
    }
}

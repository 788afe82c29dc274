package domefold.line;

import domefold.canvas.TextWidth;
import domefold.interview.Interview;
import domefold.interview.Question;
import domefold.interview.Room;
import domefold.report.Page;
import java.util.List;
import java.util.Optional;

/** The question that has the floor, with what is expected. */
final class QuestionInWords {
    private QuestionInWords() {}

    static void write(Page page, Interview interview) {
        Optional<Question> current = interview.current();
        if (current.isEmpty()) {
            page.paragraph(0, interview.complete()
                    ? "Every question has its answer: `sign` and your initials, for example `sign kb`; or `draft`."
                    : "Not complete: `draft` saves it as it is; signing needs a device on each side.");
            return;
        }
        Question question = current.get();
        around(page, interview, question);
        String offer = question.offered(interview.dossier(), interview.guide())
                .map(offered -> "; an empty line takes " + offered).orElse("");
        String standing = interview.shown(question).map(shown -> " Now " + flat(shown) + ".").orElse("");
        page.paragraph(0, question.prompt() + "?" + standing + " Answer: " + expects(question) + choices(interview, question)
                + offer + (question.required() ? "." : ", or skip."));
    }

    /** Here devices are pinned by words and row numbers, not by a key. */
    private static String expects(Question question) {
        return question.id().equals("pins") ? "row numbers or codes, `pin` before one to go on pinning, an empty line when done"
                : question.expects();
    }

    /** The words to choose from, where the question does not name them itself. */
    private static String choices(Interview interview, Question question) {
        List<String> words = question.words(interview.dossier(), interview.guide());
        boolean named = words.isEmpty() || words.stream().allMatch(word -> (question.prompt() + question.expects()).contains(word));
        return named || !question.expects().equals("one word") ? "" : " of " + String.join(", ", words);
    }

    /** How the question is answered, and the words that steer. */
    static String help(List<String> ofQuestion) {
        Page page = new Page();
        ofQuestion.forEach(line -> page.paragraph(0, line));
        page.blank().line("Words that work everywhere");
        for (SteeringWord word : SteeringWord.values()) {
            if (!word.form().isEmpty()) {
                page.hanging("  " + TextWidth.padRight(word.form(), 21), word.meaning());
            }
        }
        page.hanging("  " + TextWidth.padRight("same", 21), "second of two: the RIGHT is as the LEFT, 12.5 same");
        return page.text();
    }

    /** What has to be in sight to answer. */
    private static void around(Page page, Interview interview, Question question) {
        if (question.id().equals("discussed")) {
            int number = 0;
            for (String topic : interview.guide().topics().values()) {
                page.hanging(++number + ". ", topic);
            }
        } else if (question.id().equals("device")) {
            List<String> pinned = interview.dossier().choices().pinned();
            page.paragraph(0, pinned.isEmpty() ? "No device is pinned." : "Pinned: " + pins(pinned) + ".");
        }
    }

    /** The pinned devices with their numbers. */
    static String pins(List<String> pinned) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < pinned.size(); i++) {
            text.append(i == 0 ? "" : ", ").append(i + 1).append(" ").append(pinned.get(i));
        }
        return text.toString();
    }

    /** Runs of blanks that align on a screen, as a comma. */
    static String flat(String shown) {
        return shown.strip().replaceAll(" {2,}", ", ");
    }

    /** Where the consult now is. */
    static String room(Room room) {
        return "Room " + (room.ordinal() + 1) + " of " + Room.values().length + ": " + room.title() + ".";
    }
}

package domefold.screen;

import domefold.canvas.Canvas;
import domefold.canvas.Role;
import domefold.canvas.TextWidth;
import domefold.interview.Exchange;
import domefold.interview.Interview;
import domefold.interview.Question;
import domefold.outcome.Note;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The conversation: what was answered above, the question being asked below it, the line being typed last. */
final class ConversationView {
    private static final int WIDEST_LABEL = 28;
    private static final int MOST_SAID_LINES = 5;

    private ConversationView() {}

    /** One drawn line. */
    private record Line(String label, String text, Role role, boolean first) {
        Line(String label, String text, Role role) {
            this(label, text, role, true);
        }
    }

    /** In whatever height there is: the entry always, then the question, then what was said, then what went before. */
    static void draw(Canvas canvas, int column, int row, int width, int height, Interview interview, EntryLine entry,
            List<String> said, Role saidRole) {
        List<Line> asked = asked(canvas, interview, width);
        List<Line> remarks = new ArrayList<>();
        for (String sentence : said) {
            for (String part : canvas.wrap(sentence, width - 2)) {
                remarks.add(new Line("", part, saidRole));
            }
        }
        int room = Math.max(0, height - 1);
        List<Line> last = beginning(canvas, remarks, Math.min(room, Math.max(1, Math.min(MOST_SAID_LINES, room - asked.size() - 1))), width);
        List<Line> below = beginning(canvas, asked, room - last.size(), width);
        int top = row + room - last.size() - below.size();
        List<Line> past = past(canvas, interview, width);
        int from = Math.min(past.size(), Math.max(0, past.size() - (top - row - (past.isEmpty() ? 0 : 1))));
        while (from < past.size() && !past.get(from).first()) {
            from++;
        }
        int at = row;
        for (Line line : past.subList(from, past.size())) {
            line(canvas, column, at++, width, line);
        }
        at = Math.min(top, at + (past.isEmpty() ? 0 : 1));
        for (Line line : below) {
            line(canvas, column, at++, width, line);
        }
        entry.draw(canvas, column, at++, width);
        for (Line line : last) {
            line(canvas, column, at++, width, line);
        }
    }

    /** The first of the lines, an ellipsis on the last where some are left out. */
    private static List<Line> beginning(Canvas canvas, List<Line> lines, int most, int width) {
        if (lines.size() <= most || most <= 0) {
            return lines.subList(0, Math.min(lines.size(), Math.max(0, most)));
        }
        List<Line> kept = new ArrayList<>(lines.subList(0, most));
        Line end = kept.get(most - 1);
        String cut = TextWidth.cut(end.text(), width - 2, canvas.glyphs().ellipsis());
        kept.set(most - 1, new Line(end.label(), cut.equals(end.text()) ? cut + " " + canvas.glyphs().ellipsis() : cut, end.role()));
        return kept;
    }

    private static List<Line> asked(Canvas canvas, Interview interview, int width) {
        Optional<Question> current = interview.current();
        if (current.isEmpty()) {
            return List.of(new Line("", "Every question has its answer.", Role.QUESTION));
        }
        Question question = current.get();
        List<Line> lines = new ArrayList<>();
        for (String part : canvas.wrap(question.prompt(), width)) {
            lines.add(new Line("", part, Role.QUESTION));
        }
        String offer = question.offered(interview.dossier(), interview.guide()).map(o -> "; Enter takes " + o).orElse("");
        String standing = interview.shown(question).map(s -> "now " + s + "; ").orElse("");
        for (String part : canvas.wrap(standing + question.expects() + offer
                + (question.required() ? "" : ", or skip"), width)) {
            lines.add(new Line("", part, Role.FAINT));
        }
        return lines;
    }

    private static List<Line> past(Canvas canvas, Interview interview, int width) {
        List<Line> lines = new ArrayList<>();
        for (Question question : interview.questions()) {
            boolean asked = interview.exchanges().stream().anyMatch(exchange -> exchange.questionId().equals(question.id()));
            if (!asked && question.answered(interview.dossier())) {
                answer(canvas, lines, question.label(), question.shown(interview.dossier()).orElse(""), width);
            }
        }
        List<Exchange> exchanges = interview.exchanges();
        for (int at = 0; at < exchanges.size(); at++) {
            Exchange exchange = exchanges.get(at);
            if (at + 1 < exchanges.size() && exchanges.get(at + 1).questionId().equals(exchange.questionId())) {
                continue;
            }
            String prompt = interview.question(exchange.questionId()).label();
            answer(canvas, lines, prompt, exchange.shown(), width);
            for (Note note : exchange.remarks()) {
                List<String> sentences = canvas.wrap(note.text(), width - 2);
                for (int i = 0; i < sentences.size(); i++) {
                    lines.add(new Line(i == 0 ? null : " ", sentences.get(i), Role.CAUTION, i == 0));
                }
            }
        }
        return lines;
    }

    private static void answer(Canvas canvas, List<Line> lines, String label, String shown, int width) {
        int room = labelWidth(width);
        boolean whole = canvas.width(shown) <= width - room - 1;
        List<String> parts = canvas.wrap(whole ? shown : shown.replace("   RIGHT ", "\nRIGHT "), width - room - 1);
        List<String> names = canvas.wrap(label, room);
        for (int i = 0; i < Math.max(parts.size(), names.size()); i++) {
            lines.add(new Line(i < names.size() ? names.get(i) : "", i < parts.size() ? parts.get(i) : "", Role.ANSWER, i == 0));
        }
    }

    private static int labelWidth(int width) {
        return Math.min(WIDEST_LABEL, width * 2 / 5);
    }

    private static void line(Canvas canvas, int column, int row, int width, Line line) {
        if (line.role() == Role.CAUTION) {
            canvas.text(column, row, line.label() == null ? "!" : " ", Role.CAUTION);
            canvas.textWithin(column + 2, row, width - 2, line.text(), line.role());
        } else if (line.role() == Role.ANSWER) {
            int label = labelWidth(width);
            canvas.textWithin(column, row, label, line.label(), Role.LABEL);
            canvas.textWithin(column + label + 1, row, width - label - 1, line.text(), line.role());
        } else {
            canvas.textWithin(column, row, width, line.text(), line.role());
        }
    }
}

package domefold.screen;

import domefold.canvas.Role;
import domefold.interview.Interview;
import java.util.List;
import java.util.Locale;

/** The line of the record room: {@code sign AUTHOR}, {@code draft}, or a way back. */
final class RecordKeys {
    private RecordKeys() {}

    static String prompt(ConsultScreen screen) {
        if (screen.signed()) {
            return "signed; Ctrl-C leaves";
        }
        if (screen.interview().plan().map(plan -> !plan.blocked().isEmpty()).orElse(false)) {
            return "blocked: not to be signed; `draft` keeps it as it is";
        }
        return screen.interview().complete()
                ? "sign and your initials, for example `sign kb`; or `draft`"
                : "not complete: `draft` saves it; signing needs two devices";
    }

    static Screen.Step enter(ConsultScreen screen) {
        String line = screen.entry().text().strip();
        String word = line.split("\\s+")[0].toLowerCase(Locale.ROOT);
        String rest = line.substring(Math.min(line.length(), word.length())).strip();
        Interview interview = screen.interview();
        if (word.equals("draft") || word.equals("d")) {
            return new Screen.Step(cleared(screen, "Saving …"), new Effect.Save(interview, false, rest));
        }
        if (word.equals("sign") || word.equals("s")) {
            if (!interview.complete()) {
                return said(screen, "Signing needs every required answer, among them a device on each side; `draft` saves what there is.");
            }
            if (!interview.plan().map(plan -> plan.blocked().isEmpty()).orElse(false)) {
                return said(screen, "A blocked case is not signed off; `draft` keeps it with its working.");
            }
            if (rest.isEmpty()) {
                return said(screen, "Who signs? For example `sign kb`.");
            }
            return new Screen.Step(cleared(screen, "Saving …"), new Effect.Save(interview, true, rest));
        }
        if (word.equals("back")) {
            return Screen.Step.to(screen.walk(-1).withEntry(EntryLine.EMPTY));
        }
        if (word.startsWith("go") || word.equals("undo") || word.equals("redo")) {
            return screen.said(interview.say(line), word.equals("redo") ? Effect.Journal.REDO : Effect.Journal.UNDO);
        }
        return said(screen, line.isEmpty() ? prompt(screen) : "'" + word + "' is none of: sign, draft, back, go");
    }

    private static ConsultScreen cleared(ConsultScreen screen, String text) {
        return screen.withEntry(EntryLine.EMPTY).saying(List.of(text), Role.FAINT);
    }

    private static Screen.Step said(ConsultScreen screen, String text) {
        return Screen.Step.to(screen.saying(List.of(text), Role.REFUSED).withEntry(EntryLine.EMPTY));
    }
}

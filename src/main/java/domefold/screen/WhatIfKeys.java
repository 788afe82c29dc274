package domefold.screen;

import domefold.canvas.Role;
import domefold.interview.Interview;
import domefold.interview.WhatIf;
import domefold.outcome.Refusal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Keys and words while another answer is tried out. */
final class WhatIfKeys {
    private WhatIfKeys() {}

    static boolean asks(String line) {
        String lower = line.strip().toLowerCase(Locale.ROOT);
        return lower.startsWith("if ") || lower.startsWith("what if ");
    }

    static List<Screen.Hint> hints() {
        return List.of(new Screen.Hint("take Enter", "makes it so"), new Screen.Hint("drop Enter", "leaves all as it was"),
                new Screen.Hint("if … Enter", "one more change"), new Screen.Hint("Ctrl-Z", "undo"),
                new Screen.Hint("Up Down", "scroll"), new Screen.Hint("Esc", "drops"));
    }

    /** The screen with the change asked for in the entry line. */
    static Screen.Step asked(ConsultScreen screen) {
        String words = screen.entry().text().strip().replaceFirst("(?i)^what ", "").substring(2);
        if (screen.interview().plan().isEmpty()) {
            return Screen.Step.to(screen.saying(List.of("There is nothing to compare yet: the age and both base widths come first."), Role.REFUSED));
        }
        try {
            WhatIf next = screen.whatIf().orElseGet(() -> WhatIf.on(screen.interview())).with(words);
            return Screen.Step.to(screen.withWhatIf(Optional.of(next)));
        } catch (Refusal refusal) {
            return Screen.Step.to(screen.saying(List.of(refusal.getMessage()), Role.REFUSED));
        }
    }

    /** The name after {@code if} completed, or the names it could be. */
    static ConsultScreen completed(ConsultScreen screen) {
        String text = screen.entry().text();
        int at = text.toLowerCase(Locale.ROOT).indexOf("if ") + 3;
        String begun = text.substring(at).toLowerCase(Locale.ROOT);
        List<String> found = WhatIf.names(screen.interview()).stream().filter(name -> name.startsWith(begun)).toList();
        if (found.size() == 1) {
            return screen.withEntry(EntryLine.of(text.substring(0, at) + found.get(0) + " "));
        }
        return found.isEmpty() ? screen : screen.saying(List.of(String.join("   ", found)), Role.FAINT);
    }

    static Screen.Step onKey(ConsultScreen screen, Key key) {
        WhatIf whatIf = screen.whatIf().orElseThrow();
        if (key.isCtrl('z')) {
            WhatIf fewer = whatIf.undone();
            return Screen.Step.to(screen.withWhatIf(fewer.changes().isEmpty() ? Optional.empty() : Optional.of(fewer)));
        }
        return switch (key.kind()) {
            case ESCAPE -> Screen.Step.to(screen.entry().isEmpty() ? screen.withWhatIf(Optional.empty())
                    : screen.withEntry(EntryLine.EMPTY));
            case ENTER -> entered(screen, whatIf);
            case TAB -> Screen.Step.to(asks(screen.entry().text()) ? completed(screen) : screen);
            case F1 -> Screen.Step.to(screen.withOverlay(Overlay.of(Overlay.Kind.KEYS)));
            case DOWN, PAGE_DOWN -> Screen.Step.to(screen.withScroll(screen.scroll().by(key.is(Key.Kind.DOWN) ? 1 : 8)));
            case UP, PAGE_UP -> Screen.Step.to(screen.withScroll(screen.scroll().by(key.is(Key.Kind.UP) ? -1 : -8)));
            default -> Screen.Step.to(screen.withEntry(screen.entry().onKey(key)));
        };
    }

    private static Screen.Step entered(ConsultScreen screen, WhatIf whatIf) {
        String line = screen.entry().text().strip().toLowerCase(Locale.ROOT);
        if (asks(line)) {
            return asked(screen);
        }
        return switch (line) {
            case "take", "t", "yes" -> taken(screen, whatIf);
            case "drop", "d", "no" -> Screen.Step.to(screen.withWhatIf(Optional.empty()));
            case "undo" -> onKey(screen.withEntry(EntryLine.EMPTY), Key.ctrl('z'));
            default -> Screen.Step.to(screen.saying(List.of(line.isEmpty() ? "`take` makes it so, `drop` leaves all as it was."
                    : "'" + line + "' is none of: take, drop, if …, undo"), Role.REFUSED));
        };
    }

    /** Each change becomes an answer of the consult, journalled like any other. */
    private static Screen.Step taken(ConsultScreen screen, WhatIf whatIf) {
        Interview interview = screen.interview();
        List<Effect> lines = new ArrayList<>();
        for (WhatIf.Change change : whatIf.changes()) {
            interview = interview.answer(change.questionId(), change.typed());
            lines.add(new Effect.Journal(interview.dossier().patientCase().code(), Effect.Journal.ANSWER,
                    change.questionId(), change.typed()));
        }
        ConsultScreen next = screen.with(interview, screen.shown()).withWhatIf(Optional.empty())
                .saying(List.of("Taken: " + String.join(", ", whatIf.changes().stream().map(c -> c.label() + " " + c.now()).toList()) + "."), Role.FAINT);
        return new Screen.Step(next, new Effect.All(lines));
    }
}

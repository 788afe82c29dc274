package domefold.app;

import domefold.outcome.Refusal;
import domefold.store.AnswerJson;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.NoSuchFileException;
import java.util.LinkedHashMap;
import java.util.Map;

/** Failures as one sentence, or as JSON, and the exit code that belongs to each. */
final class ErrorReport {
    private final Console console;
    private final boolean json;

    ErrorReport(Console console, boolean json) {
        this.console = console;
        this.json = json;
    }

    int wrongUsage(String sentence) {
        return say("usage", "command line", sentence, Exit.WRONG_USAGE);
    }

    int refused(Refusal refusal) {
        return say(refusal.code(), refusal.where(), refusal.getMessage(), Exit.REFUSED);
    }

    int worldFailed(IOException failure) {
        return say("world", "", sentence(failure), Exit.WORLD_FAILED);
    }

    int defect(Throwable defect) {
        String logged = DefectLog.write(console, defect);
        return say("defect", "domefold", "this is a defect of Domefold, not of your input; " + logged, Exit.DEFECT);
    }

    /** Whatever a command threw. */
    int of(Throwable thrown) {
        if (thrown instanceof Refusal refusal) {
            return refused(refusal);
        }
        if (thrown instanceof WrongUsage usage) {
            return wrongUsage(usage.getMessage());
        }
        if (thrown instanceof IOException failure) {
            return worldFailed(failure);
        }
        if (thrown instanceof UncheckedIOException failure) {
            return worldFailed(failure.getCause());
        }
        return defect(thrown);
    }

    private int say(String code, String where, String text, int exit) {
        if (json) {
            Map<String, Object> error = new LinkedHashMap<>();
            error.put("code", code);
            error.put("where", where);
            error.put("text", text);
            sayOrLeave(AnswerJson.line(Map.of("error", error)));
        } else {
            sayOrLeave("domefold: " + text);
        }
        return exit;
    }

    /** Where standard error is gone there is nobody to tell; the exit code still says it. */
    private void sayOrLeave(String sentence) {
        try {
            console.say(sentence);
        } catch (UncheckedIOException nobodyListens) {
            return;
        }
    }

    private static String sentence(IOException failure) {
        if (failure instanceof AccessDeniedException denied) {
            return "may not open " + denied.getFile() + ": permission denied";
        }
        if (failure instanceof NoSuchFileException missing) {
            return "there is no " + missing.getFile();
        }
        String message = failure.getMessage();
        return message == null ? "reading or writing failed (" + failure.getClass().getSimpleName() + ")" : message;
    }
}

package domefold.app;

import domefold.followup.shown.Topics;
import domefold.interview.Choices;
import domefold.interview.Dossier;
import domefold.interview.Guide;
import domefold.interview.Interview;
import domefold.outcome.Refusal;
import domefold.patient.Case;
import domefold.record.ConsultRecord;
import domefold.record.TypedAnswer;
import domefold.screen.Desk;
import domefold.screen.ListLine;
import domefold.screen.StartScreen;
import domefold.store.Journal;
import java.io.IOException;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Lays out a consult: the desk, the interview at its beginning or where it was left, the list of unfinished ones. */
final class ConsultDesk {
    private final Workbench bench;
    private final Guide guide;

    ConsultDesk(Workbench bench, String offeredCode) {
        this.bench = bench;
        Map<String, String> topics = new LinkedHashMap<>();
        Topics.of(bench.evidence()).forEach(topic -> topics.put(topic.id(), topic.text()));
        this.guide = new Guide(bench.evidence(), bench.catalogue(), topics,
                bench.advisor(), offeredCode, bench.options());
    }

    Desk desk() {
        return new Desk(guide, today(), false, bench.settings().prices());
    }

    private LocalDate today() {
        return LocalDate.now(bench.console().clock());
    }

    /** An interview that begins with a case, or with nothing. */
    Interview begin(Optional<Case> from) {
        return Interview.begin(guide, new Dossier(from.orElseGet(() ->
                Case.empty("", today()).withSetting(bench.settings().defaults())), Choices.NONE));
    }

    /** Where that journal was left. Answers that are no longer accepted are left out. */
    Interview resume(Journal.Unfinished left) {
        Interview interview = begin(left.start().start().or(() ->
                Optional.of(Case.empty("", LocalDate.ofInstant(left.start().startedAt(), bench.console().clock().getZone()))
                        .withSetting(bench.settings().defaults()))));
        for (Journal.Entry entry : left.entries()) {
            interview = replay(interview, entry);
        }
        return interview;
    }

    /** A saved consult as it was, from its inputs and its answers as typed. */
    Interview again(ConsultRecord record) {
        Interview interview = begin(Optional.of(record.inputs()));
        for (TypedAnswer answer : record.answers()) {
            try {
                interview = interview.answer(answer.question(), answer.text());
            } catch (Refusal noLongerAccepted) {
                continue;
            }
        }
        return interview;
    }

    private static Interview replay(Interview interview, Journal.Entry entry) {
        if (entry.what().equals(domefold.screen.Effect.Journal.UNDO)) {
            return interview.undo().interview();
        }
        if (entry.what().equals(domefold.screen.Effect.Journal.REDO)) {
            return interview.redo().interview();
        }
        try {
            return interview.answer(entry.question(), entry.text());
        } catch (Refusal noLongerAccepted) {
            return interview;
        }
    }

    /** The start screen with what was left unfinished. */
    StartScreen start() throws IOException {
        return StartScreen.of(ListLine.of(bench.catalogue()), left());
    }

    /** What was left unfinished and is not open elsewhere, the latest first. */
    List<StartScreen.Left> left() throws IOException {
        return LeftConsults.of(bench.homes(), bench.console().clock());
    }
}

package domefold.app;

import domefold.interview.Interview;
import domefold.outcome.Refusal;
import domefold.patient.Case;
import domefold.screen.ConsultScreen;
import domefold.screen.Effect;
import domefold.store.Journal;
import domefold.store.Journals;
import domefold.store.Stored;
import domefold.terminal.Effects;
import java.io.IOException;
import java.time.Instant;
import java.util.Optional;

/** Carries out what the consult's screens ask for: the journal, saving, opening. */
final class ConsultEffects implements Effects, AutoCloseable {
    private final Workbench bench;
    private final ConsultDesk desk;
    private final ConsultSaving saving;
    private Journal journal;
    private int revision;

    ConsultEffects(Workbench bench, ConsultDesk desk, ConsultSaving saving) {
        this.bench = bench;
        this.desk = desk;
        this.saving = saving;
    }

    @Override
    public Effect.Outcome carryOut(Effect effect) throws IOException {
        try {
            if (effect instanceof Effect.Journal line) {
                return journalled(line);
            }
            if (effect instanceof Effect.Save save) {
                return saved(save);
            }
            if (effect instanceof Effect.Open open) {
                return new Effect.Opened(effect, opened(open.journalId()));
            }
            if (effect instanceof Effect.SetAside aside) {
                Journal.Unfinished left = Journals.find(bench.homes().journals(), aside.journalId())
                        .orElseThrow(() -> new Refusal("no-journal", aside.journalId(), "that consult is no longer there"));
                return new Effect.Done(effect, "Set aside; kept as " + Journals.keepAside(left).getFileName() + ".");
            }
            return new Effect.Done(effect, "");
        } catch (Refusal refused) {
            return new Effect.Failed(effect, refused.getMessage());
        } catch (IOException failure) {
            return new Effect.Failed(effect, failure.getMessage());
        }
    }

    private Effect.Outcome journalled(Effect.Journal line) throws IOException {
        if (journal != null) {
            journal.append(new Journal.Entry(now(), line.what(), line.questionId(), line.typed()));
        }
        return new Effect.Done(line, "");
    }

    private Instant now() {
        return bench.console().clock().instant();
    }

    private ConsultScreen opened(Optional<String> journalId) throws IOException {
        close();
        if (journalId.isPresent()) {
            Journal.Unfinished left = Journals.find(bench.homes().journals(), journalId.get())
                    .orElseThrow(() -> new Refusal("no-journal", journalId.get(), "that consult is no longer there"));
            journal = Journal.resume(left);
            Interview interview = desk.resume(left);
            revision = saving.revision(interview.dossier().patientCase().code());
            return ConsultScreen.of(desk.desk(), interview);
        }
        return opened(desk.begin(Optional.empty()), Optional.empty());
    }

    /** The screen of a consult that begins with that case, journalled from here on. */
    ConsultScreen opened(Interview interview, Optional<Case> start) throws IOException {
        revision = 0;
        journal = Journal.begin(bench.homes().journals(), new Journal.Start(now(), false, start, ""));
        return ConsultScreen.of(desk.desk(), interview);
    }

    private Effect.Outcome saved(Effect.Save save) throws IOException {
        Stored stored = save.sign() ? saving.sign(save.interview(), save.author(), revision)
                : saving.draft(save.interview(), save.author(), revision);
        revision = save.sign() ? 0 : stored.revision();
        if (save.sign() && journal != null) {
            journal.finish();
            journal = null;
        }
        return new Effect.Done(save, (save.sign() ? "Signed and saved: " : "Saved as a draft: ") + stored.file());
    }

    @Override
    public void close() throws IOException {
        if (journal != null) {
            journal.close();
            journal = null;
        }
    }
}

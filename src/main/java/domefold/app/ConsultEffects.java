package domefold.app;

import domefold.interview.Interview;
import domefold.outcome.Refusal;
import domefold.patient.Case;
import domefold.screen.ConsultScreen;
import domefold.screen.Effect;
import domefold.store.Claims;
import domefold.store.Journal;
import domefold.store.Journals;
import domefold.store.Stored;
import domefold.store.Workstation;
import domefold.terminal.Effects;
import java.io.IOException;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;

/** Carries out what the consult's screens ask for: the journal, saving, opening. */
final class ConsultEffects implements Effects, AutoCloseable {
    private final Workbench bench;
    private final ConsultDesk desk;
    private final ConsultSaving saving;
    private final RecordsEffects records;
    private Journal journal;
    private int revision;
    private boolean answered;
    private Optional<Claims> claimed = Optional.empty();
    private Stored amended;
    private Stored signed;
    private Instant begunAt;
    private Interview keptBeside;
    private String why = "";
    private int unsaved = Exit.DONE;

    ConsultEffects(Workbench bench, ConsultDesk desk, ConsultSaving saving) {
        this.bench = bench;
        this.desk = desk;
        this.saving = saving;
        this.records = new RecordsEffects(bench);
    }

    @Override
    public Effect.Outcome carryOut(Effect effect) throws IOException {
        try {
            if (claimed.isPresent() && amended != null) {
                claimed.get().refresh(amended.record().id(), now());
            }
            if (effect instanceof Effect.Journal line) {
                return journalled(line);
            }
            if (effect instanceof Effect.All all) {
                return each(all);
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
            if (effect instanceof Effect.Visit visit && visit.place().equals("records")) {
                return new Effect.Opened(effect, records.screen("", Optional.of(desk.start())));
            }
            if (effect instanceof Effect.Visit visit && visit.place().equals("start")) {
                close();
                return new Effect.Opened(effect, desk.start());
            }
            if (PracticeRoom.isHere(effect)) {
                return new PracticeRoom(bench, desk.desk()).carryOut(effect);
            }
            if (RecordsEffects.isHere(effect)) {
                return records.carryOut(effect);
            }
            return new Effect.Done(effect, "");
        } catch (Refusal refused) {
            unsaved = effect instanceof Effect.Save ? Exit.REFUSED : unsaved;
            if (effect instanceof Effect.Save save && refused.code().equals("version-clash")) {
                keptBeside = save.interview();
            }
            return new Effect.Failed(effect, refused.getMessage());
        } catch (IOException failure) {
            unsaved = effect instanceof Effect.Save ? Exit.WORLD_FAILED : unsaved;
            return new Effect.Failed(effect, failure.getMessage());
        }
    }

    private Effect.Outcome journalled(Effect.Journal line) throws IOException {
        if (signed != null) {
            return new Effect.Failed(line, "This consult is signed; what is changed now is not kept. " + amendInstead(signed));
        }
        if (journal != null) {
            answered = true;
            journal.append(new Journal.Entry(now(), line.what(), line.questionId(), line.typed()));
        }
        return new Effect.Done(line, "");
    }

    private Effect.Outcome each(Effect.All all) throws IOException {
        Effect.Outcome last = new Effect.Done(all, "");
        for (Effect effect : all.effects()) {
            last = carryOut(effect);
            if (last instanceof Effect.Failed) {
                return last;
            }
        }
        return last;
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
            begunAt = left.start().startedAt();
            answered = true;
            Interview interview = desk.resume(left);
            revision = saving.revision(interview.dossier().patientCase().code());
            return ConsultScreen.of(desk.desk(), interview);
        }
        return opened(desk.begin(Optional.empty()), Optional.empty());
    }

    /** The screen of a consult that begins with that case, journalled from here on. */
    ConsultScreen opened(Interview interview, Optional<Case> start) throws IOException {
        revision = 0;
        answered = false;
        begunAt = now();
        journal = Journal.begin(bench.homes().journals(), new Journal.Start(begunAt, false, start, ""));
        return ConsultScreen.of(desk.desk(), interview);
    }

    /**
     * The screen of a signed record's consult; it is not journalled, and signing makes the next version. The record is
     * claimed meanwhile; a claim without a sign of life is taken over.
     *
     * @throws Refusal if it is open elsewhere
     */
    ConsultScreen amending(Stored from, String reason) throws IOException {
        close();
        Claims claims = new Claims(bench.homes().records(), Workstation.here(bench.console().environment()), UUID.randomUUID());
        String id = from.record().id();
        String who = new By().name(bench.console());
        if (claims.take(id, who, now()).isPresent()) {
            claims.takeOver(id, who, now());
        }
        claimed = Optional.of(claims);
        amended = from;
        why = reason;
        ConsultScreen first = ConsultScreen.of(desk.desk(), desk.again(from.record()));
        return (ConsultScreen) first.onOutcome(new Effect.Done(Effect.NOTHING, amendment()));
    }

    /** What is being amended and why, in a sentence. */
    String amendment() {
        return "Amending " + amended.record().id() + ", version " + amended.version() + ": " + why.strip()
                + ". `sign` saves the next version.";
    }

    private Effect.Outcome amended(Effect.Save save) throws IOException {
        if (!save.sign()) {
            throw new Refusal("draft-of-amendment", amended.record().id(),
                    "An amendment is signed; a draft of it is not kept. `sign` and your initials saves it.");
        }
        amended = saving.amend(save.interview(), save.author(), amended, why);
        unsaved = Exit.DONE;
        return new Effect.Done(save, "Version " + amended.version() + " signed and saved: " + amended.file());
    }

    private Effect.Outcome saved(Effect.Save save) throws IOException {
        if (amended != null) {
            return amended(save);
        }
        if (signed != null) {
            return new Effect.Failed(save, "This consult is signed as version " + signed.version() + " already. " + amendInstead(signed));
        }
        if (save.sign() && begunAt != null) {
            Optional<Stored> earlier = saving.signedBefore(save.interview().dossier().patientCase().code(), begunAt);
            if (earlier.isPresent()) {
                throw new Refusal("already-signed", earlier.get().record().id(), "Case " + earlier.get().record().id()
                        + " was signed as version " + earlier.get().version() + " before this consult was begun. "
                        + amendInstead(earlier.get()));
            }
        }
        if (save.interview() == keptBeside) {
            throw new Refusal("kept-beside", save.interview().dossier().patientCase().code(),
                    "This was kept beside what another workstation saved; `records show` and look at both.");
        }
        Stored stored = save.sign() ? saving.sign(save.interview(), save.author(), revision)
                : saving.draft(save.interview(), save.author(), revision);
        revision = save.sign() ? 0 : stored.revision();
        unsaved = Exit.DONE;
        if (save.sign()) {
            signed = stored;
        }
        if (save.sign() && journal != null) {
            journal.finish();
            journal = null;
        }
        return new Effect.Done(save, (save.sign() ? "Signed and saved: " : "Saved as a draft: ") + stored.file());
    }

    private static String amendInstead(Stored signed) {
        return "`domefold records amend " + signed.record().id() + " --reason …` makes the next version.";
    }

    /** How a run ends whose last saving failed; a script has to learn of it. */
    int unsaved() {
        return unsaved;
    }

    /** True while answers stand in a journal that the next start will offer. */
    boolean offeredAgain() {
        return journal != null && answered;
    }

    /** A journal without an answer is not worth offering again. */
    @Override
    public void close() throws IOException {
        if (claimed.isPresent() && amended != null) {
            claimed.get().release(amended.record().id());
        }
        claimed = Optional.empty();
        amended = null;
        signed = null;
        keptBeside = null;
        if (journal != null) {
            if (answered) {
                journal.close();
            } else {
                journal.finish();
            }
            journal = null;
        }
    }
}

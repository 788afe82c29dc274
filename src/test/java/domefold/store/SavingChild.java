package domefold.store;

import domefold.outcome.Refusal;
import domefold.patient.Case;
import domefold.record.ConsultRecord;
import domefold.record.RecordStatus;
import domefold.record.TypedAnswer;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** A second process that saves, for tests that kill it or let it compete. Says each saved file on standard output. */
public final class SavingChild {
    private SavingChild() {}

    /** Arguments: folder, workstation, own case code, how many. */
    public static void main(String[] arguments) throws IOException {
        RecordStore store = new RecordStore(Path.of(arguments[0]), false, new Workstation(arguments[1]));
        int count = Integer.parseInt(arguments[3]);
        Stored own = signed(store, arguments[2]);
        say("saved", own);
        for (int i = 0; i < count; i++) {
            own = store.amend(own, changed(own.record(), arguments[1] + i), RecordStatus.AMENDED, "round " + i, "QT",
                    Samples.NOON.plusSeconds(i), loaded -> "summary " + loaded.sha256());
            say("saved", own);
            shared(store, arguments[2] + " " + i);
        }
        System.out.println("done");
    }

    /** Both children amend the one record; whoever loses keeps the other's version and the own one beside it. */
    private static void shared(RecordStore store, String mark) throws IOException {
        Optional<Stored> newest = store.shelf().newest("SHARED");
        if (newest.isEmpty()) {
            return;
        }
        try {
            say("saved", store.amend(newest.get(), changed(newest.get().record(), mark), RecordStatus.AMENDED, mark, "QT",
                    Samples.NOON, loaded -> "summary"));
        } catch (Refusal clash) {
            System.out.println("clash " + clash.code());
        }
    }

    static Stored signed(RecordStore store, String code) throws IOException {
        ConsultRecord draft = draft(code);
        Stored saved = store.saveDraft(draft, 0, loaded -> "summary of a draft");
        return store.sign(draft, saved.revision(), "QT", Samples.NOON, loaded -> "summary");
    }

    static ConsultRecord draft(String code) {
        Case of = Samples.ordinary();
        Case named = new Case(code, of.date(), of.readBy(), of.patient(), of.chest(), of.left(), of.right(), of.history(),
                of.wishes(), of.setting());
        return ConsultRecord.draft(named, Samples.draft().planJson(), Samples.draft().versions(), "QT", Samples.NOON);
    }

    static ConsultRecord changed(ConsultRecord record, String text) {
        return new ConsultRecord(record.id(), record.version(), record.status(), record.practice(), record.inputs(),
                List.of(new TypedAnswer("note", Optional.empty(), text)), record.planJson(), record.left(), record.right(),
                record.considered(), record.topics(), record.followUp(), record.outcomes(), record.overrides(),
                record.versions(), record.authorship(), record.amendment());
    }

    private static void say(String word, Stored stored) {
        System.out.println(word + " " + stored.record().id() + " " + stored.file().getFileName() + " " + stored.loaded().sha256());
    }

    /** Starts one in a JVM of its own. */
    static Process start(Path folder, String workstation, String code, int count, Path output) throws IOException {
        return new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-XX:TieredStopAtLevel=1",
                "-cp", System.getProperty("java.class.path"), SavingChild.class.getName(), folder.toString(), workstation, code,
                Integer.toString(count)).redirectError(ProcessBuilder.Redirect.INHERIT).redirectOutput(output.toFile()).start();
    }
}

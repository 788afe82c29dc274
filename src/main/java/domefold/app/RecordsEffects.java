package domefold.app;

import domefold.outcome.Refusal;
import domefold.report.SheetText;
import domefold.screen.Effect;
import domefold.screen.Screen;
import domefold.screen.records.RecordsScreen;
import domefold.sheet.Allowed;
import domefold.sheet.Order;
import domefold.sheet.OrderSheet;
import domefold.store.AtomicFile;
import domefold.store.RecordIndex;
import domefold.store.Stored;
import domefold.terminal.Effects;
import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;

/** Carries out what the coordinator's screens ask for. */
final class RecordsEffects implements Effects {
    private final Console console;
    private final RecordRoom room;

    RecordsEffects(Workbench bench) {
        this.console = bench.console();
        this.room = new RecordRoom(bench.homes());
    }

    /** Whether that effect is one of these. */
    static boolean isHere(Effect effect) {
        return effect instanceof Effect.ReadRecord || effect instanceof Effect.WriteRecord || effect instanceof Effect.MarkRecord;
    }

    /** The list as it stands now, the text of its first record read. */
    RecordsScreen screen(String question, Optional<Screen> back) throws IOException {
        RecordIndex.Opened opened = room.opened();
        RecordsScreen screen = RecordsScreen.of(opened.list(), LocalDate.now(console.clock()), back).asked(question);
        Effect wanted = screen.wanted();
        if (!(wanted instanceof Effect.Nothing)) {
            screen = (RecordsScreen) screen.onOutcome(carryOut(wanted));
        }
        return opened.unreadable().isEmpty() ? screen : (RecordsScreen) screen.onOutcome(new Effect.Failed(Effect.NOTHING,
                "Not listed, because unreadable: " + String.join(", ", opened.unreadable().keySet())
                        + ". `records verify` says what is wrong."));
    }

    @Override
    public Effect.Outcome carryOut(Effect effect) throws IOException {
        try {
            if (effect instanceof Effect.ReadRecord read) {
                return new Effect.Done(effect, text(read));
            }
            if (effect instanceof Effect.WriteRecord write) {
                return new Effect.Done(effect, "Written: " + written(write));
            }
            if (effect instanceof Effect.MarkRecord mark) {
                String said = new RecordMarks(console, room).mark(room.newest(mark.id()), mark.kind(), mark.day(), "",
                        new By().name(console));
                return new Effect.Listed(effect, room.opened().list(), said);
            }
            return new Effect.Done(effect, "");
        } catch (Refusal refused) {
            return new Effect.Failed(effect, refused.getMessage());
        } catch (IOException failure) {
            return new Effect.Failed(effect, failure.getMessage());
        }
    }

    private String text(Effect.ReadRecord read) throws IOException {
        Stored stored = room.newest(read.id());
        if (read.what().equals(Effect.ReadRecord.SUMMARY)) {
            return ShowCommand.text(room, stored);
        }
        Allowed.toOrder(stored.record());
        return SheetText.of(OrderSheet.of(Order.of(stored.record(), stored.loaded().sha256())));
    }

    private Path written(Effect.WriteRecord write) throws IOException {
        Path file = console.path(write.file()).toAbsolutePath();
        try {
            AtomicFile.create(file, RecordOut.bytes(room.newest(write.id()), write.format()));
            return file;
        } catch (FileAlreadyExistsException there) {
            throw new Refusal("file-exists", write.file(), file + " is there already; it was left as it is");
        }
    }
}

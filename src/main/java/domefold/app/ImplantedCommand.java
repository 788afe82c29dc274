package domefold.app;

import domefold.device.Device;
import domefold.label.DeviceLabel;
import domefold.label.ImplantCheck;
import domefold.label.ImplantedDevice;
import domefold.label.LabelReader;
import domefold.outcome.Note;
import domefold.outcome.Numbers;
import domefold.outcome.Refusal;
import domefold.patient.Side;
import domefold.record.ConsultRecord;
import domefold.record.RecordEvent;
import domefold.record.Settlement;
import domefold.sheet.Allowed;
import domefold.store.AnswerJson;
import domefold.store.ImplantDetail;
import domefold.store.Stored;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(name = "implanted", description = {"Enters what was put in on one side, and says where it differs from what was"
        + " settled.", ""},
        footer = {"", "Example: domefold records implanted K-2041 --side left --fill 290 --label \"(01)09521101530001(10)A1\""})
final class ImplantedCommand implements Runner {
    private final Domefold root;

    @Parameters(paramLabel = "ID", description = "The case code.")
    private String id;

    @Option(names = "--side", paramLabel = "left|right", required = true, completionCandidates = SideWords.class,
            description = "Her own left or right.")
    private String side;

    @Option(names = "--fill", paramLabel = "ML", required = true, converter = DecimalConverter.class,
            description = "The final fill in mL; for gel the listed volume.")
    private Double fillMl;

    @Option(names = "--label", paramLabel = "SCAN", description = "The label as scanned or typed (GS1 or HIBC; other text is"
            + " kept as typed).")
    private String label;

    @Option(names = "--device", paramLabel = "CODE", description = "The order code put in; otherwise the product code of the"
            + " label, otherwise what was settled.")
    private String device;

    @Option(names = "--on", paramLabel = "DATE", description = "The day of surgery; today without it.")
    private String on;

    @Mixin
    private By by;

    @Mixin
    private As as;

    /** What the completion script offers. */
    static final class SideWords implements Iterable<String> {
        @Override
        public Iterator<String> iterator() {
            return Stream.of(Side.values()).map(Side::key).iterator();
        }
    }

    ImplantedCommand(Domefold root) {
        this.root = root;
    }

    @Override
    public int run() throws Exception {
        Side where = side(side);
        LocalDate day = on == null ? LocalDate.now(root.console().clock()) : Days.day(on);
        RecordRoom room = new RecordRoom(root.homes());
        Stored stored = room.newest(id);
        ConsultRecord record = stored.record();
        if (!as.json()) {
            root.console().say(RecordFacts.of(room.header(stored)));
        }
        Allowed.toOrder(record);
        ImplantedDevice in = implanted(where, day, record.side(where));
        List<RecordEvent> events = room.shelf().events(record.id());
        List<Note> differences = differences(in, record, events);
        String text = sentence(in);
        room.store(root.console().environment()).addEvent(new RecordEvent(record.id(), record.version(),
                RecordEvent.Kind.IMPLANTED, day, text, by.name(root.console()), root.console().clock().instant(),
                ImplantDetail.json(in, differences)));
        root.console().answer(as.json(), () -> text + "\n" + words(differences),
                () -> AnswerJson.text(json(record, in, differences)));
        return Exit.DONE;
    }

    private static Side side(String typed) {
        for (Side side : Side.values()) {
            if (side.key().equals(typed.strip().toLowerCase(Locale.ROOT))) {
                return side;
            }
        }
        throw new WrongUsage("'" + typed + "' is no side; write left or right");
    }

    private ImplantedDevice implanted(Side where, LocalDate day, Optional<Settlement> settled) {
        Optional<DeviceLabel> read = label == null ? Optional.empty() : Optional.of(LabelReader.read(label, day.getYear()));
        Optional<String> code = Optional.ofNullable(device).or(() -> read.flatMap(DeviceLabel::productCode))
                .or(() -> settled.map(one -> one.device().id()));
        if (code.isEmpty()) {
            throw new Refusal("no-device", where.key(), "nothing was settled for " + where.name()
                    + "; say which device was put in: --device CODE");
        }
        if (!(fillMl > 0) || fillMl.isInfinite()) {
            throw new Refusal("bad-fill", "--fill", "a fill is a volume above 0 mL, not " + fillMl);
        }
        return new ImplantedDevice(where, code.get(), fillMl, read, day);
    }

    private List<Note> differences(ImplantedDevice in, ConsultRecord record, List<RecordEvent> events) throws Exception {
        List<Note> notes = new ArrayList<>(ImplantCheck.differences(in, record.side(in.side()), listed(in, record)));
        Optional<ImplantedDevice> other = ImplantDetail.last(events, in.side().other());
        other.ifPresent(there -> notes.addAll(in.side() == Side.LEFT ? ImplantCheck.between(in, there)
                : ImplantCheck.between(there, in)));
        ImplantDetail.last(events, in.side()).ifPresent(before -> notes.add(new Note("entered-before", in.side().name()
                + ": was entered before as " + before.reference() + ", " + Numbers.ml(before.fillMl())
                + "; both entries stand, the later one counts")));
        return notes;
    }

    /** The device as the record copied it, else as the list in use has it. */
    private Optional<Device> listed(ImplantedDevice in, ConsultRecord record) throws Exception {
        List<Device> known = new ArrayList<>();
        record.side(in.side()).ifPresent(settled -> {
            known.add(settled.device());
            known.addAll(settled.neighbours());
        });
        Optional<Device> copied = known.stream().filter(one -> one.id().equals(in.reference())).findFirst();
        return copied.isPresent() ? copied : root.bench(null).catalogue().find(in.reference());
    }

    private static String sentence(ImplantedDevice in) {
        return in.side().name() + ": " + in.reference() + ", filled to " + Numbers.ml(in.fillMl()) + ", put in on " + in.on()
                + in.label().map(read -> "; label " + read.scheme().words() + " " + read.deviceIdentifier()
                        + read.lot().map(lot -> ", lot " + lot).orElse("")
                        + read.serial().map(serial -> ", serial " + serial).orElse("")).orElse("");
    }

    private static String words(List<Note> differences) {
        return differences.isEmpty() ? "As settled.\n" : differences.stream().map(note -> "  differs: " + note.text() + "\n")
                .collect(Collectors.joining());
    }

    private static Map<String, Object> json(ConsultRecord record, ImplantedDevice in, List<Note> differences) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("format", "domefold-implanted/1");
        json.put("id", record.id());
        json.put("version", record.version());
        json.put("side", in.side().key());
        json.put("device", in.reference());
        json.put("fillMl", in.fillMl());
        json.put("on", in.on());
        json.put("agrees", differences.isEmpty());
        json.put("differences", differences.stream().map(note -> Map.of("code", note.code(), "text", note.text())).toList());
        return json;
    }
}

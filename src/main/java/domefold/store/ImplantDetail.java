package domefold.store;

import domefold.label.DeviceLabel;
import domefold.label.ImplantedDevice;
import domefold.label.LabelReader;
import domefold.outcome.Note;
import domefold.patient.Side;
import domefold.record.RecordEvent;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** What was put in, as the detail of an {@code implanted} event. The label is kept as it was read. */
public final class ImplantDetail {
    private ImplantDetail() {}

    /** As JSON, with every difference that was said when it was entered. */
    public static String json(ImplantedDevice in, List<Note> differences) {
        JsonOut out = new JsonOut(false);
        out.object(() -> {
            out.text("side", in.side().key()).text("reference", in.reference()).number("fillMl", in.fillMl())
                    .text("on", in.on().toString());
            in.label().ifPresent(label -> out.object("label", () -> label(out, label)));
            out.objects("differences", differences, note -> out.text("code", note.code()).text("text", note.text()));
        });
        return out.text().strip();
    }

    private static void label(JsonOut out, DeviceLabel label) {
        out.text("scheme", label.scheme().name().toLowerCase(java.util.Locale.ROOT))
                .text("deviceIdentifier", label.deviceIdentifier()).text("productCode", label.productCode())
                .text("lot", label.lot()).text("serial", label.serial())
                .text("made", label.made().map(day -> day.date().toString()))
                .text("expires", label.expires().map(day -> day.date().toString())).text("asRead", label.asRead());
    }

    /** What was last entered for that side. */
    public static Optional<ImplantedDevice> last(List<RecordEvent> events, Side side) {
        return events.stream().filter(event -> event.kind() == RecordEvent.Kind.IMPLANTED)
                .sorted(Comparator.comparing(RecordEvent::at)).map(ImplantDetail::read).flatMap(Optional::stream)
                .filter(in -> in.side() == side).reduce((before, after) -> after);
    }

    private static Optional<ImplantedDevice> read(RecordEvent event) {
        Fields fields = new Fields(JsonText.object(event.detailJson(), "implanted"), "implanted", later -> {});
        if (!fields.has("side")) {
            return Optional.empty();
        }
        Optional<DeviceLabel> label = fields.object("label").map(inside ->
                LabelReader.read(inside.needText("asRead"), event.day().getYear()));
        return Optional.of(new ImplantedDevice(fields.needWord("side", Side.values(), Side::key), fields.needText("reference"),
                fields.needNumber("fillMl"), label, fields.needDate("on")));
    }
}

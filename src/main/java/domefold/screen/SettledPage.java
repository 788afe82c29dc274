package domefold.screen;

import domefold.canvas.Role;
import domefold.device.Device;
import domefold.device.Neighbours;
import domefold.interview.Choices;
import domefold.interview.Interview;
import domefold.outcome.Numbers;
import domefold.patient.Pocket;
import domefold.patient.Route;
import domefold.patient.Side;
import domefold.plan.Candidate;
import domefold.plan.Plan;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** One page that could be read aloud in theatre: LEFT and RIGHT in full words, then what was and was not discussed. */
public final class SettledPage {
    private SettledPage() {}

    /** The page as lines of text, two blanks before what belongs to the line above. */
    public static List<String> texts(Interview interview) {
        return lines(interview).stream().map(line -> " ".repeat(line.indent()) + line.text()).toList();
    }

    static List<OverlayView.Line> lines(Interview interview) {
        List<OverlayView.Line> lines = new ArrayList<>();
        lines.add(new OverlayView.Line(0, "Settled", Role.TITLE));
        for (Side side : Side.values()) {
            side(interview, side, lines);
        }
        topics(interview, lines);
        return lines;
    }

    /** The same with the topics before the sides, while they are asked about. */
    static List<OverlayView.Line> topicsFirst(Interview interview) {
        List<OverlayView.Line> lines = new ArrayList<>();
        topics(interview, lines);
        for (Side side : Side.values()) {
            side(interview, side, lines);
        }
        return lines;
    }

    private static void side(Interview interview, Side side, List<OverlayView.Line> lines) {
        Choices.Settled settled = interview.dossier().choices().on(side);
        Optional<Device> device = settled.deviceId().flatMap(interview.guide().catalogue()::find);
        lines.add(new OverlayView.Line(0, side.toString(), Role.LABEL));
        if (device.isEmpty()) {
            lines.add(new OverlayView.Line(2, "device open", Role.FAINT));
            return;
        }
        Device d = device.get();
        lines.add(new OverlayView.Line(2, d.id() + ": " + DeviceColumns.name(d), Role.BODY));
        lines.add(new OverlayView.Line(2, fill(settled, d) + ", width "
                + Numbers.cm(d.widthCm()) + ", projection " + Numbers.cm(d.projectionCm()), Role.BODY));
        Optional<Plan> plan = interview.plan();
        Optional<Candidate> candidate = plan.flatMap(p -> p.candidates().stream().filter(c -> c.device().id().equals(d.id())).findFirst());
        candidate.ifPresent(c -> lines.add(new OverlayView.Line(2, "against her limits: " + c.side(side).verdict().key(),
                DevicesView.roleOf(c.side(side).verdict()))));
        lines.add(new OverlayView.Line(2, "pocket " + plan.flatMap(p -> p.side(side).pocket()).map(Pocket::key).orElse("open")
                + ", route " + interview.dossier().patientCase().setting().route().map(Route::key).orElse("open")
                + ", opening " + (settled.incisionCm().isPresent() ? Numbers.cm(settled.incisionCm().getAsDouble()) : "open"), Role.BODY));
        lines.add(new OverlayView.Line(2, settled.foldLoweringCm().isEmpty() ? "fold open"
                : settled.foldLoweringCm().getAsDouble() == 0 ? "keep the fold where it is"
                : "lower the fold by " + Numbers.cm(settled.foldLoweringCm().getAsDouble()), Role.BODY));
        List<Device> neighbours = Neighbours.of(interview.guide().catalogue(), d);
        lines.add(new OverlayView.Line(2, "in the room beside it: " + (neighbours.isEmpty() ? "no neighbouring size in the list"
                : String.join(", ", neighbours.stream().map(n -> n.id() + " " + Numbers.ml(n.nominalMl())).toList())), Role.FAINT));
    }

    /** Gel comes filled; a saline fill that nobody settled is open, whatever its nominal volume. */
    private static String fill(Choices.Settled settled, Device device) {
        if (settled.fillMl().isPresent()) {
            return "fill " + Numbers.ml(settled.fillMl().getAsDouble());
        }
        return device.labelFillMl().isEmpty() ? "fill " + Numbers.ml(device.nominalMl())
                : "fill open, label " + Numbers.ml(device.labelFillMl().get());
    }

    private static void topics(Interview interview, List<OverlayView.Line> lines) {
        Map<String, String> topics = interview.guide().topics();
        java.util.Set<String> discussed = interview.dossier().choices().discussed();
        lines.add(new OverlayView.Line(0, "Topics: " + discussed.size() + " of " + topics.size() + " talked over", Role.LABEL));
        int number = 0;
        for (Map.Entry<String, String> topic : topics.entrySet()) {
            number++;
            boolean done = discussed.contains(topic.getKey());
            lines.add(new OverlayView.Line(2, number + ". " + (done ? "talked over: " : "open: ") + topic.getValue(), done ? Role.BODY : Role.CAUTION));
        }
    }
}

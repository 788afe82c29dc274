package domefold.shell;

import domefold.outcome.Band;
import java.util.ArrayList;
import java.util.List;

/**
 * A saline device at every millilitre of a range: how width, height and apex head answer. Stretch is counted throughout,
 * so that no step appears where it would be switched on.
 *
 * @param rows one a millilitre, ends included
 */
public record FillResponse(List<Row> rows) {
    public FillResponse {
        rows = List.copyOf(rows);
    }

    /**
     * @param widthCm widest width as it lies; shapes are good to about 0.3 cm
     * @param heightCm height as it lies, a computed value beside the listed projection
     * @param apexHeadCm head at the apex, negative while the top is slack
     */
    public record Row(double volumeMl, ShellState.Kind kind, double widthCm, double heightCm, double apexHeadCm) {
        static Row of(ShellState state) {
            return new Row(state.volumeMl(), state.kind(), state.widthCm(), state.heightCm(), state.apexHeadCm());
        }
    }

    public static FillResponse over(DeviceShell shell, Band rangeMl) {
        List<Row> rows = new ArrayList<>();
        double last = Double.NaN;
        for (double volume = rangeMl.low(); volume <= rangeMl.high(); volume += 1) {
            rows.add(Row.of(shell.at(volume)));
            last = volume;
        }
        if (last < rangeMl.high()) {
            rows.add(Row.of(shell.at(rangeMl.high())));
        }
        return new FillResponse(rows);
    }
}

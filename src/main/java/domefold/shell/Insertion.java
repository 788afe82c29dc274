package domefold.shell;

import domefold.device.Device;
import domefold.device.Fill;
import domefold.evidence.Constants;
import domefold.evidence.Evidence;
import domefold.evidence.Table;
import domefold.outcome.Figures;
import domefold.outcome.Note;
import domefold.patient.Route;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The opening a device needs: an empty rolled shell for saline, a fitted plug for gel, then what the route allows. Good to
 * about 0.5 cm.
 */
public final class Insertion {
    private Insertion() {}

    /** What is read and fitted once, for a whole device list. */
    public record Fits(PlugFit byHand, PlugFit withFunnel, PublishedOpenings published) {
        public static Fits of(Evidence evidence) {
            Table table = evidence.table("incision");
            return new Fits(PlugFit.byHand(table, evidence.constants()), PlugFit.withFunnel(table, evidence.constants()),
                    PublishedOpenings.of(table));
        }
    }

    /**
     * @param areolaCm areola diameter, for the periareolar route
     */
    public static InsertionBand of(
            Device device, Route route, boolean funnel, OptionalDouble areolaCm, Fits fits, Evidence evidence) {
        Constants constants = evidence.constants();
        List<Note> notes = new ArrayList<>();
        double low;
        double typical;
        double high;
        String basis;
        if (device.fill() == Fill.SALINE) {
            RolledShell roll = RolledShell.of(
                    RolledShell.meridianCm(device.widthCm(), device.projectionCm()), constants);
            low = roll.singleSlitCm();
            typical = roll.scrollSlitCm();
            high = roll.thickScrollSlitCm();
            basis = "empty shell, rolled: one roll, from both sides, thick shell (model, assumed)";
        } else {
            PlugFit fit = funnel ? fits.withFunnel() : fits.byHand();
            double spread = Math.exp(constants.value("INC-RESIDUAL-SDS") * fit.relativeSd());
            typical = fit.typicalCm(device.nominalMl(), constants);
            low = typical / spread;
            high = typical * spread;
            basis = fit.basis();
        }
        fits.published().practice(device, funnel)
                .filter(band -> !band.includes(typical))
                .ifPresent(band -> notes.add(new Note("opening-against-practice", "common practice, no source, gives "
                        + Figures.cm(band.low()) + " to " + Figures.cm(band.high()) + " cm where the model says "
                        + Figures.of(typical, 1, 1) + " cm")));
        boolean allowed = RouteRule.check(route, device, typical, areolaCm, evidence, notes);
        return new InsertionBand(low, typical, high, route, funnel && device.fill() == Fill.GEL ? "funnel" : "hand",
                basis, allowed, notes);
    }
}

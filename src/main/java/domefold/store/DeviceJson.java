package domefold.store;

import domefold.device.Device;
import domefold.device.Fill;
import domefold.device.Profile;
import domefold.device.Surface;
import domefold.outcome.Band;
import domefold.patient.Route;
import domefold.plan.Candidate;
import java.util.Optional;

/** A device, a band and an incision as they stand in plans and records alike. */
final class DeviceJson {
    static final String[] FIELDS =
        {"id", "line", "fill", "surface", "profile", "volumeMl", "labelFillMl", "widthCm", "heightCm", "projectionCm"};

    private DeviceJson() {}

    static void fields(JsonOut out, Device device) {
        out.text("id", device.id()).text("line", device.line()).text("fill", device.fill().key())
                .text("surface", device.surface().key()).text("profile", device.profile().key())
                .number("volumeMl", device.nominalMl());
        device.labelFillMl().ifPresent(range -> out.object("labelFillMl", () -> band(out, range)));
        out.number("widthCm", device.widthCm()).number("heightCm", device.heightCm())
                .number("projectionCm", device.projectionCm());
    }

    static Device read(Fields fields) {
        fields.only(FIELDS);
        return new Device(fields.needText("id"), fields.needText("line"), fields.needWord("fill", Fill.values(), Fill::key),
                fields.needWord("surface", Surface.values(), Surface::key),
                fields.needWord("profile", Profile.values(), Profile::key), fields.needNumber("volumeMl"),
                band(fields, "labelFillMl"), fields.needNumber("widthCm"), fields.needNumber("heightCm"),
                fields.needNumber("projectionCm"));
    }

    static void band(JsonOut out, Band band) {
        out.number("low", band.low()).number("high", band.high());
    }

    static Optional<Band> band(Fields fields, String name) {
        return fields.object(name).map(inside -> {
            inside.only("low", "high");
            double low = inside.needNumber("low");
            double high = inside.needNumber("high");
            if (!(low <= high)) {
                throw inside.refusal("out-of-range", "high", "is below low; a range runs from low to high");
            }
            return new Band(low, high);
        });
    }

    static void incision(JsonOut out, Candidate.Incision incision) {
        out.number("low", incision.lowCm()).numberOrNull("typical", incision.typicalCm()).number("high", incision.highCm())
                .text("route", incision.route().key()).text("device", incision.device()).text("basis", incision.basis());
    }

    static Candidate.Incision incision(Fields fields) {
        fields.only("low", "typical", "high", "route", "device", "basis");
        return new Candidate.Incision(fields.needNumber("low"), fields.number("typical"), fields.needNumber("high"),
                fields.needWord("route", Route.values(), Route::key), fields.needText("device"), fields.needText("basis"));
    }
}

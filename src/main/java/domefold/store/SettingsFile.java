package domefold.store;

import domefold.evidence.Constant;
import domefold.evidence.Constants;
import domefold.evidence.Evidence;
import domefold.followup.course.PriceList;
import domefold.outcome.Refusal;
import domefold.patient.Setting;
import domefold.plan.WidthSchool;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** The settings, {@code domefold-settings/1}; the schema is {@code shared/schema/settings-1.json}. */
public final class SettingsFile {
    public static final String FORMAT = "domefold-settings/1";
    private static final int LARGEST_BYTES = 1 << 20;

    private SettingsFile() {}

    /**
     * The settings in that file, none where there is no file.
     *
     * @param evidence what ships: an override names one of its constants, a default one of its schedules
     * @throws Refusal if something in it is unknown or cannot be
     */
    public static Settings read(Path file, Evidence evidence) throws IOException {
        if (Files.notExists(file)) {
            return Settings.NONE;
        }
        String name = Shown.path(file);
        byte[] bytes = InputFile.bytes(file, "settings", LARGEST_BYTES);
        return read(new Fields(JsonText.object(InputFile.utf8(bytes, name), name), name, null), file, evidence);
    }

    private static Settings read(Fields top, Path file, Evidence evidence) {
        FormatLine.require(top, FORMAT, "a settings file");
        top.only("format", "practice", "author", "catalogue", "widthSchool", "defaults", "overrides", "prices");
        return new Settings(top.text("practice"), top.text("author"), catalogue(top, file),
                top.word("widthSchool", WidthSchool.values(), WidthSchool::key),
                top.object("defaults").map(fields -> CaseReader.setting(fields, CaseRules.of(evidence, any -> {}).schedules()))
                        .orElse(Setting.OPEN),
                overrides(top, evidence.constants()), top.object("prices").map(SettingsFile::prices));
    }

    private static Optional<Path> catalogue(Fields top, Path file) {
        return top.text("catalogue").map(text -> {
            try {
                return file.toAbsolutePath().resolveSibling(text).normalize();
            } catch (InvalidPathException wrong) {
                throw top.refusal("bad-path", "catalogue", "is " + Shown.quoted(text) + "; it should be the path of a device list");
            }
        });
    }

    private static Map<String, Constant.Override> overrides(Fields top, Constants constants) {
        Map<String, Constant.Override> out = new LinkedHashMap<>();
        top.objects("overrides", fields -> {
            fields.only("constant", "value", "date", "reason");
            String id = fields.needText("constant");
            double value = fields.needNumber("value");
            Constant shipped = constant(fields, id, constants);
            if (value < 0 && shipped.value() >= 0) {
                throw fields.refusal("out-of-range", "value", "is below 0; " + shipped.quantity() + " is never below 0");
            }
            String reason = fields.needText("reason");
            if (reason.isBlank()) {
                throw fields.refusal("no-reason", "reason", "is blank; an override says why");
            }
            Constant.Override change = new Constant.Override(value, fields.needDate("date"), reason);
            if (out.put(id, change) != null) {
                throw fields.refusal("constant-twice", "constant", "is \"" + id + "\" again; one override a constant");
            }
            return change;
        });
        return out;
    }

    private static Constant constant(Fields fields, String id, Constants constants) {
        if (!constants.has(id)) {
            List<String> ids = new ArrayList<>();
            constants.all().forEach(constant -> ids.add(constant.id()));
            throw fields.refusal("unknown-constant", "constant", "is " + Shown.quoted(id) + ", which is no constant here; "
                    + NearestName.of(id, ids).map(near -> "the nearest one is \"" + near + "\"")
                            .orElse("domefold evidence lists them all"));
        }
        return constants.all().stream().filter(constant -> constant.id().equals(id)).filter(Constants::usable).findFirst()
                .orElseThrow(() -> fields.refusal("constant-not-used", "constant", "is \"" + id
                        + "\", which is only shown and never computed with; it cannot be overridden"));
    }

    private static PriceList prices(Fields fields) {
        List<String> known = new ArrayList<>(List.of("currency"));
        Map<PriceList.Item, Double> prices = new EnumMap<>(PriceList.Item.class);
        for (PriceList.Item item : PriceList.Item.values()) {
            known.add(item.field());
        }
        fields.only(known);
        for (PriceList.Item item : PriceList.Item.values()) {
            OptionalDouble price = fields.number(item.field());
            if (price.isPresent() && price.getAsDouble() < 0) {
                throw fields.refusal("out-of-range", item.field(), "is below 0; a price is 0 or more");
            }
            price.ifPresent(value -> prices.put(item, value));
        }
        String currency = fields.needText("currency");
        if (currency.isBlank()) {
            throw fields.refusal("no-currency", "currency", "is blank; prices are in one currency, for example \"EUR\"");
        }
        return new PriceList(currency, prices);
    }

    /** Writes them, replacing the file; a device list is written by its absolute path. */
    public static void write(Path file, Settings settings) throws IOException {
        AtomicFile.folder(file.toAbsolutePath().getParent());
        AtomicFile.replace(file, text(settings));
    }

    static String text(Settings settings) {
        JsonOut out = new JsonOut();
        out.object(() -> {
            out.text("format", FORMAT).text("practice", settings.practice()).text("author", settings.author())
                    .text("catalogue", settings.catalogue().map(Path::toString))
                    .text("widthSchool", settings.widthSchool().map(WidthSchool::key));
            out.object("defaults", () -> CaseWriter.setting(out, settings.defaults()));
            out.objects("overrides", settings.overrides().entrySet(), change -> out.text("constant", change.getKey())
                    .number("value", change.getValue().value()).text("date", change.getValue().date().toString())
                    .text("reason", change.getValue().reason()));
            settings.prices().ifPresent(prices -> out.object("prices", () -> {
                out.text("currency", prices.currency());
                prices.prices().forEach((item, price) -> out.number(item.field(), price));
            }));
        });
        return out.text();
    }
}

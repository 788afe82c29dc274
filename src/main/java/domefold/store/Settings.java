package domefold.store;

import domefold.evidence.Constant;
import domefold.evidence.Constants;
import domefold.evidence.Evidence;
import domefold.followup.course.PriceList;
import domefold.patient.Setting;
import domefold.plan.WidthSchool;
import java.nio.file.Path;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * A surgeon's own values and a practice's own list and prices. Everything may be open.
 *
 * @param practice the practice's name, for prints
 * @param author the name or initials offered when signing
 * @param catalogue the practice's device list
 * @param widthSchool how wide a device is accepted without calling it tight
 * @param defaults what a fresh consult starts with
 * @param overrides constants with the surgeon's values, by id
 * @param prices the practice's own prices
 */
public record Settings(
        Optional<String> practice,
        Optional<String> author,
        Optional<Path> catalogue,
        Optional<WidthSchool> widthSchool,
        Setting defaults,
        Map<String, Constant.Override> overrides,
        Optional<PriceList> prices) {

    public static final Settings NONE = new Settings(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(),
            Setting.OPEN, Map.of(), Optional.empty());

    public Settings {
        overrides = Collections.unmodifiableMap(new LinkedHashMap<>(overrides));
    }

    /** The evidence with the surgeon's constants in their place; the shipped ones stay inside, and hers are marked. */
    public Evidence applied(Evidence shipped) {
        if (overrides.isEmpty()) {
            return shipped;
        }
        Constants constants = shipped.constants();
        for (Map.Entry<String, Constant.Override> change : overrides.entrySet()) {
            constants = constants.with(change.getKey(), change.getValue());
        }
        return shipped.with(constants);
    }
}

package domefold.practice.exercise;

import domefold.device.Catalogue;
import domefold.device.Device;
import domefold.outcome.Figures;
import domefold.outcome.Refusal;
import domefold.practice.SidePlan;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Finds a device by its code, or by words that leave only one: {@code gel smooth full 300}. */
final class DeviceByWords {
    private static final int MOST_NAMED = 6;
    private static final int NEAREST = 3;

    private DeviceByWords() {}

    /**
     * The device meant.
     *
     * @param said what was stated for that side; its fill and profile narrow the words where more than one device remains
     * @throws Refusal where none or more than one is left, with their codes
     */
    static Device of(String typed, SidePlan said, Catalogue catalogue, String where) {
        String wanted = typed.strip().toLowerCase(Locale.ROOT);
        List<Device> exact = catalogue.devices().stream().filter(one -> one.id().equalsIgnoreCase(wanted)).toList();
        List<String> tokens = List.of(wanted.replaceAll("(\\d)\\s*(ml|cc)\\b", "$1").split("\\s+"));
        List<Device> found = exact.isEmpty() ? catalogue.devices().stream()
                .filter(one -> tokens.stream().allMatch(token -> says(one, token))).toList() : exact;
        if (found.size() > 1) {
            found = narrowed(found, said);
        }
        if (found.size() == 1) {
            return found.get(0);
        }
        throw found.isEmpty() ? none(typed, tokens, said, catalogue, where) : new Refusal("more-devices", where, found.size()
                + " devices are '" + typed.strip() + "': " + found.stream().limit(MOST_NAMED).map(Device::id)
                .collect(Collectors.joining(", ")) + (found.size() > MOST_NAMED ? " ..." : ""));
    }

    private static Refusal none(String typed, List<String> tokens, SidePlan said, Catalogue catalogue, String where) {
        List<String> numbers = tokens.stream().filter(token -> token.matches("\\d+(\\.\\d+)?")).toList();
        List<String> others = tokens.stream().filter(token -> !numbers.contains(token)).toList();
        List<Device> without = narrowed(catalogue.devices().stream()
                .filter(one -> others.stream().allMatch(token -> says(one, token))).toList(), said);
        if (numbers.size() != 1 || without.isEmpty()) {
            return new Refusal("unknown-device", where, "no device of the list is '" + typed.strip()
                    + "'; write a code, or words like `gel full 300`");
        }
        double ml = Double.parseDouble(numbers.get(0));
        String near = without.stream().sorted(Comparator.comparingDouble((Device one) -> Math.abs(one.nominalMl() - ml))
                .thenComparing(Device::id)).limit(NEAREST).map(Device::id).collect(Collectors.joining(", "));
        return new Refusal("unknown-device", where, "no device of the list is '" + typed.strip() + "'; nearest in size: " + near);
    }

    private static List<Device> narrowed(List<Device> found, SidePlan said) {
        List<Device> narrowed = found.stream().filter(one -> said.fill().map(one.fill()::equals).orElse(true))
                .filter(one -> said.profile().map(one.profile()::equals).orElse(true)).toList();
        return narrowed.isEmpty() ? found : narrowed;
    }

    private static boolean says(Device device, String token) {
        return Stream.of(device.fill().key(), device.surface().key(), device.profile().key(), Figures.ml(device.nominalMl()),
                device.line().toLowerCase(Locale.ROOT)).anyMatch(token::equals) || device.id().equalsIgnoreCase(token);
    }
}

package domefold.line;

import domefold.device.Device;
import domefold.interview.Choices;
import domefold.interview.Interview;
import domefold.outcome.Refusal;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Which devices stand side by side after {@code pin} and {@code drop}. */
final class Pins {
    private final Interview interview;
    private final Listing listing;

    Pins(Interview interview, Listing listing) {
        this.interview = interview;
        this.listing = listing;
    }

    private List<String> pinned() {
        return interview.dossier().choices().pinned();
    }

    /**
     * The pins with those added: numbers of the list last printed, or codes.
     *
     * @throws Refusal where one is neither, is pinned already, or too many would stand there
     */
    List<String> adding(String words) {
        Set<String> pins = new LinkedHashSet<>(pinned());
        for (String word : words(words, "pin")) {
            String id = word.matches("\\d{1,4}") ? listed(Integer.parseInt(word)) : code(word);
            if (!pins.add(id)) {
                throw new Refusal("pinned-already", "pins", id + " is pinned already");
            }
        }
        if (pins.size() > Choices.MOST_PINNED) {
            throw new Refusal("too-many-pins", "pins", "up to " + Choices.MOST_PINNED + " devices stand side by side; `drop 1` lets one go");
        }
        return List.copyOf(pins);
    }

    /**
     * The pins without those: their own numbers, 1 to 4, or codes.
     *
     * @throws Refusal where one is not pinned
     */
    List<String> dropping(String words) {
        List<String> going = new ArrayList<>();
        for (String word : words(words, "drop")) {
            Optional<String> id = word.matches("\\d{1,4}")
                    ? Optional.of(Integer.parseInt(word) - 1).filter(i -> i >= 0 && i < pinned().size()).map(pinned()::get)
                    : pinned().stream().filter(word::equalsIgnoreCase).findFirst();
            going.add(id.orElseThrow(() -> new Refusal("not-pinned", "pins", "'" + word + "' is not pinned; "
                    + (pinned().isEmpty() ? "no device is" : "pinned are " + QuestionInWords.pins(pinned())))));
        }
        return pinned().stream().filter(id -> !going.contains(id)).toList();
    }

    private static List<String> words(String words, String verb) {
        if (words.isBlank()) {
            throw new Refusal("which-device", "pins", "which device? For example `" + verb + " 1`, or its code");
        }
        return List.of(words.strip().split("[\\s,;]+"));
    }

    /** The device printed with that number. */
    String listed(int number) {
        if (listing.printed() == 0) {
            throw new Refusal("no-list", "pins", "no list has been printed that " + number + " could be a row of; `devices` prints it");
        }
        if (number < 1 || number > listing.printed()) {
            throw new Refusal("no-such-row", "pins", "the list last printed has rows 1 to " + listing.printed() + ", not " + number);
        }
        return listing.ids().get(number - 1);
    }

    private String code(String word) {
        return interview.guide().catalogue().devices().stream().map(Device::id).filter(word::equalsIgnoreCase).findFirst()
                .orElseThrow(() -> new Refusal("unknown-device", "pins", "'" + word + "' is no device of the list '"
                        + interview.guide().catalogue().name() + "'"));
    }
}

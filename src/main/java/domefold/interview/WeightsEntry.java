package domefold.interview;

import domefold.outcome.Refusal;
import domefold.patient.Wishes;
import domefold.patient.Wishes.Matter;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** How much each matter counts, seven digits in the order shown: {@code 3 2 5 2 1 4 1}, or {@code 3252141}. */
final class WeightsEntry implements Question {
    @Override
    public String id() {
        return "weights";
    }

    @Override
    public Room room() {
        return Room.WISH;
    }

    @Override
    public String prompt() {
        return "What matters: scar, feel, imaging, exchange, adjustment, edges, cost";
    }

    @Override
    public String expects() {
        return "seven numbers 0 to 5";
    }

    @Override
    public boolean answered(Dossier dossier) {
        return !dossier.patientCase().wishes().weights().isEmpty();
    }

    @Override
    public Taken answer(String typed, Dossier dossier, Guide guide) {
        List<Integer> digits = new ArrayList<>();
        if (typed.chars().anyMatch(Character::isLetter)) {
            throw new Refusal("seven-weights", id(), "'" + typed.strip() + "' is no weight; seven numbers 0 to 5 are expected,"
                    + " for example 3 2 5 2 1 4 1");
        }
        for (char c : typed.replaceAll("[\\s,;/]", "").toCharArray()) {
            if (c < '0' || c > '5') {
                throw new Refusal("weight-range", id(), "'" + c + "' is not a weight; 0 does not matter, 5 matters most");
            }
            digits.add(c - '0');
        }
        Matter[] matters = Matter.values();
        if (digits.size() != matters.length) {
            throw new Refusal("seven-weights", id(), digits.size() + " weights where seven are expected: scar, feel, "
                    + "imaging, exchange, adjustment, edges, cost; for example 3 2 5 2 1 4 1");
        }
        Map<Matter, Integer> weights = new EnumMap<>(Matter.class);
        for (Matter matter : matters) {
            weights.put(matter, digits.get(matter.ordinal()));
        }
        Wishes wishes = dossier.patientCase().wishes();
        return Taken.quietly(dossier.withCase(dossier.patientCase()
                .withWishes(new Wishes(wishes.upperPole(), wishes.sizeWishMl(), weights))));
    }

    @Override
    public Optional<String> shown(Dossier dossier) {
        if (!answered(dossier)) {
            return Optional.empty();
        }
        StringBuilder out = new StringBuilder();
        dossier.patientCase().wishes().weights().forEach((matter, weight) -> out.append(out.isEmpty() ? "" : ", ")
                .append(matter.words().replaceFirst("^an? ", "")).append(' ').append(weight));
        return Optional.of(out.toString());
    }

    @Override
    public List<String> help(Guide guide) {
        List<String> lines = new ArrayList<>();
        for (Matter matter : Matter.values()) {
            lines.add((matter.ordinal() + 1) + ". " + matter.words());
        }
        lines.add("0 does not matter to her, 5 matters most. The weights order the list; they forbid nothing.");
        return lines;
    }
}

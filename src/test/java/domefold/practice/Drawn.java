package domefold.practice;

import domefold.evidence.Evidence;
import domefold.store.EvidenceFiles;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** Many women drawn once, and what can be counted in them. */
final class Drawn {
    static final Evidence EVIDENCE = EvidenceFiles.shipped();
    static final int WOMEN = 20_000;
    static final List<Person> POPULATION = draw();

    private Drawn() {}

    private static List<Person> draw() {
        PatientDraw draws = PatientDraw.from(EVIDENCE);
        List<Person> women = new ArrayList<>();
        for (int number = 1; number <= WOMEN; number++) {
            women.add(draws.next(new Dice(PatientDraw.seed(number, 0))));
        }
        return women;
    }

    static double mean(ToDoubleFunction<Person> of) {
        return POPULATION.stream().mapToDouble(of).average().orElseThrow();
    }

    static double sd(ToDoubleFunction<Person> of) {
        double mean = mean(of);
        double sum = POPULATION.stream().mapToDouble(of).map(value -> (value - mean) * (value - mean)).sum();
        return Math.sqrt(sum / (POPULATION.size() - 1));
    }

    static double percent(java.util.function.Predicate<Person> test) {
        return 100.0 * POPULATION.stream().filter(test).count() / POPULATION.size();
    }
}

package domefold.practice;

import domefold.patient.HealthQuestion;
import domefold.patient.Measure;
import domefold.patient.Wishes;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** A short history and a wish in plain words, invented to go with what was drawn. */
final class Story {
    private static final List<String> WORK = List.of("works in an office", "teaches", "works on a hospital ward",
            "runs a small shop", "drives a delivery round", "studies", "works on a farm", "looks after her family",
            "coaches swimming", "works in a kitchen");
    private static final List<String> WHY = List.of("She has thought about it for some years.",
            "She lost volume with her weight and wants it back.", "Clothes have never sat as she would like.",
            "Nobody has pressed her; it is her own idea.", "A friend had it done and she has read a good deal since.");
    private static final List<String> CHILDLESS = List.of("no children", "no children so far");
    private static final int OLDER = 26;
    private static final int MOST_CHILDREN = 3;
    private static final int LAST_NURSING = 43;

    private Story() {}

    static String history(Person person, Dice dice) {
        int age = (int) person.value(Measure.AGE);
        List<String> said = new ArrayList<>();
        said.add("Invented patient. She is " + age + " and " + (age < 20 ? "studies" : dice.pick(WORK)) + ".");
        said.add(children(age, dice));
        person.history().forEach((question, answer) -> {
            if (answer) {
                said.add(yes(question));
            }
        });
        if (person.history().values().stream().noneMatch(answer -> answer)) {
            said.add("She takes no medicines, does not smoke and has had no breast surgery.");
        }
        person.sightings().forEach(finding -> said.add(finding.text()));
        return String.join(" ", said);
    }

    private static String children(int age, Dice dice) {
        int most = Math.max(0, Math.min(MOST_CHILDREN, (age - OLDER) / 2 + 1));
        int children = age < OLDER ? 0 : dice.below(most + 1);
        if (children == 0) {
            return "She has " + dice.pick(CHILDLESS) + ".";
        }
        int stopped = Math.max(1 + dice.below(5), age - LAST_NURSING);
        return "She has " + children + (children == 1 ? " child" : " children") + "; she nursed and stopped " + stopped
                + (stopped == 1 ? " year ago." : " years ago.");
    }

    private static String yes(HealthQuestion question) {
        return switch (question) {
            case NICOTINE -> "She smokes most days.";
            case PREGNANT_OR_NURSING -> "A test last week showed that she is pregnant.";
            case ACTIVE_INFECTION -> "She is on the third day of antibiotics for an infected tooth.";
            case UNTREATED_BREAST_DISEASE -> "A lump was biopsied abroad, called pre-cancer, and never treated.";
            case CHEST_IRRADIATION -> "Her chest was irradiated for a lymphoma in her youth.";
            case EARLIER_BREAST_SURGERY -> "A benign lump was taken out through the fold some years ago.";
        };
    }

    static String wish(Person person, Set<Trap> traps, Dice dice) {
        Wishes wishes = person.wishes();
        List<String> said = new ArrayList<>();
        said.add("Invented wish. " + dice.pick(WHY));
        said.add(switch (wishes.upperPole().orElse(Wishes.UpperPole.EVEN)) {
            case SLOPED -> "She wants the upper breast to slope gently.";
            case EVEN -> "She wants the upper breast neither hollow nor round.";
            case ROUND -> "She wants the upper breast round and full.";
        });
        long size = Math.round(wishes.sizeWishMl().orElse(0));
        said.add(traps.contains(Trap.WISH_BEYOND_BASE)
                ? "She has set her heart on " + size + " mL and would be sorry with less."
                : "Trying sizers in her bra, she liked about " + size + " mL.");
        if (traps.contains(Trap.AGE_BELOW_LABEL)) {
            said.add("She asks for gel.");
        }
        if (traps.contains(Trap.MIXED_METHODS)) {
            said.add("She brings one side's readings from a surface scan taken elsewhere.");
        }
        return String.join(" ", said);
    }
}

package domefold.screen;

import domefold.practice.exercise.Logbook;
import java.util.List;
import java.util.OptionalInt;

/** Practice walked by keys, without a terminal. */
final class PracticeWalk {
    /** A plan for case 2 of level 2, one line a statement, in the order asked. */
    static final List<String> PLAN = List.of("yes", "10.5 same", "250 same", "dual-plane", "keep 0.5", "gel", "full",
            "smooth 240 / smooth 270", "inframammary", "yes", "3.5", "US-2020", "uneven sides, second reading", "so that it fits her base");

    private PracticeWalk() {}

    static PracticeDesk desk(Logbook log) {
        Desk consult = Walk.desk();
        return new PracticeDesk(new Desk(consult.guide(), consult.today(), true), log, List.of());
    }

    static Walk on(int number, int level) {
        return Walk.on(desk(Logbook.EMPTY).begin(OptionalInt.of(level), OptionalInt.of(number)));
    }

    /** For looking: {@code PracticeWalk COLSxROWS NUMBER LEVEL LINE...}; KEY:NAME presses a key, SHOW prints. */
    public static void main(String[] args) {
        int columns = Integer.parseInt(args[0].split("x")[0]);
        int rows = Integer.parseInt(args[0].split("x")[1]);
        Walk walk = on(Integer.parseInt(args[1]), Integer.parseInt(args[2]));
        for (int i = 3; i < args.length; i++) {
            if (args[i].equals("SHOW")) {
                System.out.println(walk.picture(columns, rows));
            } else if (args[i].equals("PLAN")) {
                walk.lines(PLAN);
            } else if (args[i].startsWith("KEY:")) {
                walk.key(Key.Kind.valueOf(args[i].substring(4)));
            } else {
                walk.line(args[i]);
            }
        }
        System.out.println(walk.picture(columns, rows) + walk.effects());
    }
}

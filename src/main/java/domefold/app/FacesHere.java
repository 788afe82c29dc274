package domefold.app;

import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;

/** The faces of this build. */
final class FacesHere {
    private FacesHere() {}

    static Faces of() {
        return new Faces() {
            @Override
            public int start(Workbench bench) {
                throw new WrongUsage("the start screen is not in this build yet; use 'domefold plan CASE.json'");
            }

            @Override
            public int consult(Workbench bench, Optional<Path> file, boolean line) {
                throw new WrongUsage("the consult is not in this build yet; use 'domefold plan CASE.json'");
            }

            @Override
            public int practise(Workbench bench, OptionalInt level, OptionalLong draw) {
                throw new WrongUsage("practice is not in this build yet");
            }

            @Override
            public int records(Workbench bench) {
                throw new WrongUsage("the records shell is not in this build yet; name one of its commands");
            }
        };
    }
}

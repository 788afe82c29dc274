package domefold.store;

import java.util.List;
import java.util.Map;

/** JSON as it stood in a file: numbers as typed, and the line of each value. */
sealed interface Json {
    int line();

    /** What it is, for a sentence. */
    String kind();

    /**
     * @param source the exact text between and with its braces
     */
    record Obj(Map<String, Json> fields, String source, int line) implements Json {
        @Override
        public String kind() {
            return "an object in braces";
        }
    }

    record Arr(List<Json> items, int line) implements Json {
        @Override
        public String kind() {
            return "a list in brackets";
        }
    }

    record Text(String text, int line) implements Json {
        @Override
        public String kind() {
            return "the text " + Shown.quoted(text);
        }
    }

    /** A number, exactly as it was written. */
    record Num(String typed, int line) implements Json {
        double value() {
            return Double.parseDouble(typed);
        }

        @Override
        public String kind() {
            return "the number " + Shown.plain(typed.length() > 40 ? typed.substring(0, 40) + "..." : typed);
        }
    }

    record Bool(boolean value, int line) implements Json {
        @Override
        public String kind() {
            return String.valueOf(value);
        }
    }

    record Null(int line) implements Json {
        @Override
        public String kind() {
            return "null";
        }
    }
}

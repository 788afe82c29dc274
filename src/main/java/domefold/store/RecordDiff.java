package domefold.store;

import domefold.record.Amendment.FieldChange;
import domefold.record.ConsultRecord;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Which fields of a record differ, by their paths in the file. A plan that was computed anew counts as one field. */
public final class RecordDiff {
    /** What every version has its own of. */
    private static final Set<String> OF_THE_VERSION = Set.of("format", "version", "status", "authorship", "amendment");

    private RecordDiff() {}

    public static List<FieldChange> between(ConsultRecord before, ConsultRecord after) {
        Map<String, String> old = flat(before);
        Map<String, String> now = flat(after);
        Set<String> fields = new LinkedHashSet<>(old.keySet());
        fields.addAll(now.keySet());
        List<FieldChange> changes = new ArrayList<>();
        for (String field : fields) {
            String was = old.getOrDefault(field, "");
            String is = now.getOrDefault(field, "");
            if (!was.equals(is)) {
                changes.add(new FieldChange(field, was, is));
            }
        }
        return changes;
    }

    private static Map<String, String> flat(ConsultRecord record) {
        Json.Obj object = JsonText.object(new String(RecordFile.bytes(record), StandardCharsets.UTF_8), "record");
        Map<String, String> out = new LinkedHashMap<>();
        object.fields().forEach((name, value) -> {
            if (name.equals("plan")) {
                out.put(name, "sha256 " + Digest.sha256(((Json.Obj) value).source().getBytes(StandardCharsets.UTF_8)));
            } else if (!OF_THE_VERSION.contains(name)) {
                flatten(name, value, out);
            }
        });
        return out;
    }

    private static void flatten(String path, Json value, Map<String, String> out) {
        if (value instanceof Json.Obj object) {
            object.fields().forEach((name, inside) -> flatten(path + "." + name, inside, out));
        } else if (value instanceof Json.Arr list) {
            for (int i = 0; i < list.items().size(); i++) {
                flatten(path + "[" + i + "]", list.items().get(i), out);
            }
        } else if (value instanceof Json.Text text) {
            out.put(path, text.text());
        } else if (value instanceof Json.Num number) {
            out.put(path, number.typed());
        } else {
            out.put(path, value.kind());
        }
    }
}

package liftwright.rig.text;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import liftwright.rig.Change;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.nodes.Tag;
import org.snakeyaml.engine.v2.schema.FailsafeSchema;

/**
 * Reads files with the YAML library's own constructor into plain maps, lists and strings, and makes
 * changes in those: nothing here is shared with what is tested.
 */
final class Referee {

    private Referee() {}

    static Object load(byte[] bytes) {
        String text = new String(bytes, StandardCharsets.UTF_8);
        return loadText(text);
    }

    private static Object loadText(String text) {
        var settings =
                LoadSettings.builder()
                        .setSchema(new FailsafeSchema())
                        .setTagConstructors(Map.of(Tag.NULL, nothing -> ""))
                        .build();
        return Objects.requireNonNullElse(new Load(settings).loadFromString(text), "");
    }

    /** Maps and lists are changed in place. */
    static void apply(Object root, Change change) {
        var segments = change.at().segments();
        Object parent = root;
        Object now = root;
        for (String segment : segments) {
            parent = now;
            now = child(now, segment);
        }
        String last = segments.isEmpty() ? "" : segments.getLast();
        switch (change) {
            case Change.Set(var _, var value) -> put(parent, last, value);
            case Change.Replace(var _, var value) -> put(parent, last, value(value));
            case Change.Remove _ -> {
                if (parent instanceof List<?> list) {
                    list.remove(index(list, last));
                } else {
                    map(parent).remove(last);
                }
            }
            case Change.Add(var _, var key, var value) -> {
                if (now instanceof List<?>) {
                    list(now).add(value(value));
                } else {
                    map(now).put(key, value(value));
                }
            }
            case Change.Move(var _, var to) -> {
                var list = list(parent);
                list.add(to, list.remove(index(list, last)));
            }
        }
    }

    private static void put(Object parent, String segment, Object value) {
        if (parent instanceof List<?>) {
            list(parent).set(index(list(parent), segment), value);
        } else {
            map(parent).put(segment, value);
        }
    }

    private static Object value(String text) {
        return text.startsWith("{") || text.startsWith("[") ? loadText(text) : text;
    }

    private static Object child(Object parent, String segment) {
        return parent instanceof List<?> list
                ? list.get(index(list, segment))
                : Objects.requireNonNullElse(map(parent).get(segment), "");
    }

    private static int index(List<?> list, String segment) {
        for (int i = 0; i < list.size(); i++) {
            if (list.get(i) instanceof Map<?, ?> map && segment.equals(map.get("id"))) {
                return i;
            }
        }
        return Integer.parseInt(segment) - 1;
    }

    @SuppressWarnings("unchecked")
    private static Map<String, Object> map(Object value) {
        return (Map<String, Object>) value;
    }

    @SuppressWarnings("unchecked")
    private static List<Object> list(Object value) {
        return (List<Object>) value;
    }

    /** Order of keys included, which maps do not compare. */
    static String print(Object value) {
        return switch (value) {
            case Map<?, ?> map -> {
                var parts = new ArrayList<String>();
                new LinkedHashMap<>(map).forEach((k, v) -> parts.add(print(k) + "=" + print(v)));
                yield parts.toString();
            }
            case List<?> list -> list.stream().map(Referee::print).toList().toString();
            case null -> "\"\"";
            default -> '"' + value.toString() + '"';
        };
    }
}

package liftwright.trials.evidence;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import liftwright.quantity.Quantity;
import liftwright.rig.CellType;
import liftwright.rig.Contactor;
import liftwright.rig.FanType;
import liftwright.rig.LimitName;
import liftwright.rig.Limits;
import liftwright.rig.Mount;
import liftwright.rig.PartId;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;
import liftwright.rig.Vec3;

/**
 * Writes a rig out as paths and texts by walking the components of its records: what is added to a
 * record later is an input without a line here. What it cannot write stops it.
 */
final class InputWriter {

    /** Components of a rig that say nothing of what is built. */
    private static final Set<String> TOLD_ONLY =
            Set.of("name", "revision", "note", "declaration", "defaults", "tables", "corrections");

    /** Where an order of entries with names means nothing; in every other list it is an input. */
    private static final Set<String> UNORDERED =
            Set.of(
                    "fans",
                    "packs",
                    "mounts",
                    "fan types",
                    "cells",
                    "other parts",
                    "crew",
                    "wiring/chains",
                    "wiring/contactors",
                    "wiring/kills",
                    "wiring/grounds",
                    "control/groups",
                    "control/sensors");

    /** Sections that the rig file calls otherwise than the record. */
    private static final Map<String, String> FILE_WORDS = Map.of("cell types", "cells");

    private final Rig rig;
    private final SortedMap<String, String> out = new TreeMap<>();
    private final IdentityHashMap<Object, Boolean> tables = new IdentityHashMap<>();

    InputWriter(Rig rig) {
        this.rig = rig;
    }

    SortedMap<String, String> write() {
        for (RecordComponent component : Rig.class.getRecordComponents()) {
            if (!TOLD_ONLY.contains(component.getName())) {
                String words = words(component.getName());
                put(FILE_WORDS.getOrDefault(words, words), value(component, rig));
            }
        }
        // A table that no part refers to is still one that the file names.
        for (RecordComponent kind : rig.tables().getClass().getRecordComponents()) {
            if (value(kind, rig.tables()) instanceof Map<?, ?> named) {
                named.forEach((file, table) -> leftOver(kind, String.valueOf(file), table));
            } else {
                throw unknown("tables/" + kind.getName(), kind.getType());
            }
        }
        return out;
    }

    private void leftOver(RecordComponent kind, String file, Object table) {
        if (!tables.containsKey(table)) {
            put("tables/" + words(kind.getName()) + "/" + Inputs.segment(file), table);
        }
    }

    private void put(String path, Object value) {
        switch (value) {
            case Optional<?> maybe -> maybe.ifPresent(inner -> put(path, inner));
            case OptionalInt maybe -> maybe.ifPresent(inner -> put(path, inner));
            case OptionalDouble maybe -> maybe.ifPresent(inner -> put(path, inner));
            case Quantity quantity -> set(path, ValueText.of(quantity));
            case Vec3 place -> place(path, place);
            case Limits limits -> limits(path, limits);
            case PartId id -> set(path, id.text());
            case RigPath at -> set(path, at.toString());
            case String text -> set(path, text);
            case Boolean yes -> set(path, yes ? "yes" : "no");
            case Number number -> set(path, number.toString());
            case Enum<?> word -> set(path, ValueText.of(word));
            case List<?> list -> list(path, list);
            case Map<?, ?> map -> map.forEach((key, inner) -> put(path + "/" + key(key), inner));
            case Record table when isTable(table) -> table(path, table);
            case Record part when isElsewhere(path, part) -> set(path, name(part).orElseThrow());
            case Record record -> components(path, record, false);
            default -> throw unknown(path, value.getClass());
        }
    }

    private void set(String path, String value) {
        if (out.put(path, value) != null) {
            throw new IllegalStateException("two inputs at " + path);
        }
    }

    private void components(String path, Record record, boolean named) {
        int before = out.size();
        if (isOneOfSeveralKinds(record)) {
            set(path + "/is", words(record.getClass().getSimpleName()));
        }
        RecordComponent[] all = record.getClass().getRecordComponents();
        // The path of a part in a list says what it is called.
        for (RecordComponent component : named ? Arrays.copyOfRange(all, 1, all.length) : all) {
            put(path + "/" + words(component.getName()), value(component, record));
        }
        if (out.size() == before) {
            set(path, "declared"); // unlike one that is not there at all
        }
    }

    private static boolean isOneOfSeveralKinds(Record record) {
        for (Class<?> type : record.getClass().getInterfaces()) {
            if (type.isSealed()) {
                return true;
            }
        }
        return false;
    }

    private void list(String path, List<?> list) {
        if (!list.isEmpty() && list.stream().allMatch(InputWriter::isWord)) {
            // Which fans belong together has no order.
            var words = list.stream().map(String::valueOf);
            set(
                    path,
                    (path.endsWith("/fans") ? words.sorted() : words)
                            .collect(Collectors.joining(", ")));
            return;
        }
        var named = new ArrayList<String>();
        for (int i = 0; i < list.size(); i++) {
            Object entry = list.get(i);
            if (entry instanceof Record part && name(part).isPresent()) {
                String name = name(part).get();
                if (named.contains(name)) {
                    throw new IllegalStateException(path + " has " + name + " twice");
                }
                named.add(name);
                components(path + "/" + Inputs.segment(name), part, true);
            } else {
                put(path + "/" + (i + 1), entry);
            }
        }
        if (!named.isEmpty() && !UNORDERED.contains(path)) {
            set(path + "/order", String.join(", ", named));
        }
    }

    /** Ids and numbers, which hold no comma. */
    private static boolean isWord(Object entry) {
        return entry instanceof PartId
                || entry instanceof Number
                || (entry instanceof String text && text.indexOf(',') < 0);
    }

    /** The id or the name that a record begins with. */
    private static Optional<String> name(Record part) {
        RecordComponent first = part.getClass().getRecordComponents()[0];
        if (!first.getName().equals("id") && !first.getName().equals("name")) {
            return Optional.empty();
        }
        return switch (value(first, part)) {
            case PartId id -> Optional.of(id.text());
            case String text -> Optional.of(text);
            default -> Optional.empty();
        };
    }

    /** Whether a part is written out in a section of its own, so that its name says it all. */
    private boolean isElsewhere(String path, Record part) {
        return switch (part) {
            case FanType type -> !path.startsWith("fan types/") && rig.fanTypes().contains(type);
            case CellType cell -> !path.startsWith("cells/") && rig.cellTypes().contains(cell);
            case Mount mount -> !path.startsWith("mounts/") && rig.mounts().contains(mount);
            case Contactor contactor ->
                    !path.startsWith("wiring/contactors/")
                            && rig.wiring().contactors().contains(contactor);
            default -> false;
        };
    }

    private static boolean isTable(Record record) {
        return record.getClass().getPackageName().equals("liftwright.rig.table")
                && record.getClass().getEnclosingClass() == null
                && hasRows(record);
    }

    private static boolean hasRows(Record record) {
        for (RecordComponent component : record.getClass().getRecordComponents()) {
            if (component.getName().equals("rows")) {
                return true;
            }
        }
        return false;
    }

    private void table(String path, Record table) {
        tables.put(table, true);
        set(path, TableDigest.of(table));
    }

    private void place(String path, Vec3 at) {
        String unit = path.endsWith("/at") || path.endsWith("/box") ? " m" : "";
        set(path + "/forward", at.x() + unit);
        set(path + "/right", at.y() + unit);
        set(path + "/down", at.z() + unit);
    }

    /** All that are in force: a default of this program that moves is a limit that moves. */
    private void limits(String path, Limits limits) {
        if (Limits.class.getRecordComponents().length != 1) {
            throw unknown(path, Limits.class);
        }
        for (LimitName name : LimitName.values()) {
            boolean own = limits.declared().containsKey(name);
            set(
                    path + "/" + name.key(),
                    ValueText.of(Quantity.exact(limits.si(name), name.dimension()))
                            + (own ? ", declared" : ", default"));
        }
    }

    private static String key(Object key) {
        return Inputs.segment(key instanceof Enum<?> word ? ValueText.of(word) : key.toString());
    }

    static Object value(RecordComponent component, Record of) {
        try {
            return component.getAccessor().invoke(of);
        } catch (IllegalAccessException | InvocationTargetException e) {
            throw new IllegalStateException("cannot read " + component, e);
        }
    }

    private static IllegalStateException unknown(String path, Class<?> type) {
        return new IllegalStateException("cannot write out " + path + ", a " + type.getName());
    }

    /** {@code linkLoss} and {@code LinkLoss} are {@code link loss}. */
    static String words(String component) {
        var words = new StringBuilder();
        for (int i = 0; i < component.length(); i++) {
            char c = component.charAt(i);
            if (Character.isUpperCase(c) && !words.isEmpty()) {
                words.append(' ');
            }
            words.append(Character.toLowerCase(c));
        }
        return words.toString();
    }
}

package liftwright.trials.evidence;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.random.RandomGenerator;

/**
 * A record with one leaf anywhere in it altered, whatever records it is made of: walked by the
 * types of values alone.
 */
final class Altered {

    private static final java.util.Set<String> NO_INPUT =
            java.util.Set.of(
                    "Rig.name",
                    "Rig.note",
                    "Rig.revision",
                    "Rig.declaration",
                    "Rig.corrections",
                    "Rig.defaults",
                    "Rig.tables",
                    "BenchTable.file",
                    "CellTest.file");

    private final RandomGenerator random;
    private String where = "";

    Altered(RandomGenerator random) {
        this.random = random;
    }

    /** The classes and components that led to what was altered. */
    String where() {
        return where;
    }

    /** Empty where chance led to something that cannot be altered, or no longer be made. */
    <T> Optional<T> in(T value) {
        where = "";
        return altered(value);
    }

    @SuppressWarnings("unchecked")
    private <T> Optional<T> altered(T value) {
        return (Optional<T>) (Optional<?>) any(value);
    }

    private Optional<?> any(Object value) {
        return switch (value) {
            case Optional<?> maybe ->
                    maybe.isEmpty()
                            ? Optional.empty()
                            : any(maybe.get()).<Object>map(inner -> Optional.of(inner));
            case OptionalInt maybe -> Optional.of(OptionalInt.of(maybe.orElse(3) + 1));
            case OptionalDouble maybe -> Optional.of(OptionalDouble.of(maybe.orElse(3) + 1));
            case Boolean yes -> Optional.of(!yes);
            case Integer number -> Optional.of(number + 1);
            case Double number -> Optional.of(Math.nextUp(number));
            case String text -> Optional.of(text + "x");
            case Enum<?> word -> other(word);
            case List<?> list -> list(list);
            case Map<?, ?> map -> map(map);
            case Record record -> record(record);
            default -> Optional.empty();
        };
    }

    private Optional<?> other(Enum<?> word) {
        Object[] all = word.getDeclaringClass().getEnumConstants();
        return all.length < 2
                ? Optional.empty()
                : Optional.of(Arrays.stream(all).filter(o -> o != word).findFirst().orElseThrow());
    }

    private Optional<?> list(List<?> list) {
        if (list.isEmpty()) {
            return Optional.empty();
        }
        int at = random.nextInt(list.size());
        return any(list.get(at))
                .map(
                        altered -> {
                            var copy = new ArrayList<Object>(list);
                            copy.set(at, altered);
                            return copy;
                        });
    }

    private Optional<?> map(Map<?, ?> map) {
        if (map.isEmpty()) {
            return Optional.empty();
        }
        Object key =
                map.keySet().stream().skip(random.nextInt(map.size())).findFirst().orElseThrow();
        Object value = map.get(key);
        return value == null
                ? Optional.empty()
                : any(value)
                        .map(
                                altered -> {
                                    var copy = new LinkedHashMap<Object, Object>(map);
                                    copy.put(key, altered);
                                    return copy;
                                });
    }

    private Optional<?> record(Record record) {
        RecordComponent[] components = record.getClass().getRecordComponents();
        if (components.length == 0) {
            return Optional.empty();
        }
        int at = random.nextInt(components.length);
        String name = record.getClass().getSimpleName() + "." + components[at].getName();
        where += " " + name;
        if (NO_INPUT.contains(name) || (name.endsWith("Row.line") && where.contains("Table"))) {
            return Optional.empty();
        }
        try {
            Object[] values = new Object[components.length];
            for (int i = 0; i < components.length; i++) {
                values[i] = components[i].getAccessor().invoke(record);
            }
            Optional<?> altered = any(values[at]);
            if (altered.isEmpty()) {
                return Optional.empty();
            }
            values[at] = altered.get();
            Constructor<?> whole =
                    record.getClass()
                            .getDeclaredConstructor(
                                    Arrays.stream(components)
                                            .map(RecordComponent::getType)
                                            .toArray(Class<?>[]::new));
            return Optional.of(whole.newInstance(values));
        } catch (InvocationTargetException e) {
            return Optional.empty(); // the record refuses it
        } catch (ReflectiveOperationException e) {
            throw new LinkageError("cannot read a record", e);
        }
    }
}

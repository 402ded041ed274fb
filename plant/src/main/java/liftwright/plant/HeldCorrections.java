package liftwright.plant;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import liftwright.plant.parameters.Parameter;
import liftwright.plant.parameters.ParameterTable;
import liftwright.quantity.Quantity;
import liftwright.quantity.SiText;
import liftwright.quantity.Tolerance;
import liftwright.rig.Fan;
import liftwright.rig.Pack;
import liftwright.rig.Rig;
import liftwright.rig.correction.Correction;
import liftwright.rig.correction.Found;

/**
 * Which corrections hold for a rig as it is, and which are void.
 *
 * <p>Values that were found together lean on each other, so a group falls as a whole where a value
 * that the fit started from is another now. Where only a part was exchanged or taken off, what was
 * found of that part alone falls, and the others keep what is known of them when nothing is asked
 * of it: the part was there when they were found.
 *
 * @param held what counts, without values that are void
 * @param voids what does not count, and why
 */
public record HeldCorrections(List<Correction> held, List<Voided> voids) {

    /** Nominal values that differ by less are the same: a fit of a table may round otherwise. */
    private static final double SAME_VALUE = 1e-9;

    /** Likewise of doubts, which are differences of fitted values. */
    private static final double SAME_DOUBT = 1e-6;

    public HeldCorrections {
        held = List.copyOf(held);
        voids = List.copyOf(voids);
    }

    /** Why a correction does not count. */
    public enum Why {
        /** Another part is in its place. */
        SERIAL,
        /** The part is no longer there. */
        GONE,
        /** The rig declares another value or doubt than the fit started from. */
        DECLARED,
        /** The rig has no such value. */
        UNKNOWN,
        /** The value is none that can be. */
        IMPOSSIBLE,
        /** It names some of the values that a table tells together, and not the others. */
        PARTIAL
    }

    /**
     * What does not count.
     *
     * @param group name of its group
     * @param parameter the value that fell by itself; empty where the whole group did
     * @param values how many values fell
     * @param why the first reason
     * @param at parameter or part that is the reason
     * @param words the reason in a clause, such as "p.2 has serial number A-7 now, and had A-3"
     */
    public record Voided(
            String group,
            Optional<String> parameter,
            int values,
            Why why,
            String at,
            String words) {}

    /** How many values count. */
    public int values() {
        return held.stream().mapToInt(group -> group.found().size()).sum();
    }

    /** How many values do not. */
    public int voided() {
        return voids.stream().mapToInt(Voided::values).sum();
    }

    /** Those that lie beside a rig, judged against it. */
    public static HeldCorrections of(Rig rig) {
        if (rig.corrections().isEmpty()) {
            return new HeldCorrections(List.of(), List.of());
        }
        var judge = new Judge(rig);
        rig.corrections().content().groups().forEach(judge::judge);
        return new HeldCorrections(judge.held, judge.voids);
    }

    /** Judges one group after the other. */
    private static final class Judge {

        private final ParameterTable declared;
        private final Map<String, String> serials = new HashMap<>();
        private final List<Set<String>> together = new ArrayList<>();
        private final List<Correction> held = new ArrayList<>();
        private final List<Voided> voids = new ArrayList<>();

        Judge(Rig rig) {
            // With all that any question asks, so that none judges a correction otherwise.
            declared = new Assembler(rig.asDeclared(), Set.of(), true, true).table;
            rig.fans().forEach(this::fan);
            rig.packs().forEach(this::pack);
            for (ParameterTable.Together rows : declared.together()) {
                together.add(
                        rows.rows().stream()
                                .map(row -> declared.rows().get(row).name())
                                .collect(Collectors.toSet()));
            }
        }

        private void fan(Fan fan) {
            serials.put(fan.id().text(), fan.serial().orElse(""));
        }

        private void pack(Pack pack) {
            serials.put(pack.id().text(), pack.serial().orElse(""));
        }

        void judge(Correction group) {
            Set<String> lost = new HashSet<>();
            List<Voided> single = new ArrayList<>();
            for (Found found : group.found()) {
                Optional<Voided> fallen = found.part().flatMap(part -> part(group, found, part));
                fallen.ifPresent(
                        one -> {
                            lost.add(found.parameter());
                            single.add(one);
                        });
            }
            Optional<Voided> whole = whole(group, lost);
            if (whole.isPresent()) {
                voids.add(whole.get());
                return;
            }
            voids.addAll(single);
            if (lost.size() < group.found().size()) {
                held.add(group.only(found -> !lost.contains(found.parameter())));
            }
        }

        /** Whether what was found of one part alone falls. */
        private Optional<Voided> part(Correction group, Found found, String part) {
            return exchanged(group, part)
                    .or(
                            () ->
                                    declared.has(found.parameter()) || serials.containsKey(part)
                                            ? Optional.empty()
                                            : Optional.of(gone(group, part)))
                    .map(
                            why ->
                                    new Voided(
                                            group.name(),
                                            Optional.of(found.parameter()),
                                            1,
                                            why.why(),
                                            part,
                                            why.words()));
        }

        private Optional<Voided> exchanged(Correction group, String part) {
            String was = group.serials().getOrDefault(part, "");
            String is = serials.getOrDefault(part, was);
            return was.equals(is)
                    ? Optional.empty()
                    : Optional.of(
                            whole(
                                    group,
                                    Why.SERIAL,
                                    part,
                                    part + " has " + number(is) + " now, and had " + number(was)));
        }

        private static String number(String serial) {
            return serial.isEmpty() ? "no serial number" : "serial number " + serial;
        }

        private static Voided gone(Correction group, String part) {
            return whole(group, Why.GONE, part, part + " is no longer there");
        }

        private static Voided whole(Correction group, Why why, String at, String words) {
            return new Voided(group.name(), Optional.empty(), group.found().size(), why, at, words);
        }

        /** Whether the group falls as a whole. */
        private Optional<Voided> whole(Correction group, Set<String> lost) {
            Set<String> named =
                    group.found().stream()
                            .flatMap(found -> found.part().stream())
                            .collect(Collectors.toSet());
            for (String part : group.serials().keySet()) {
                Optional<Voided> changed =
                        named.contains(part) ? Optional.empty() : exchanged(group, part);
                if (changed.isPresent()) {
                    return changed;
                }
            }
            for (Found found : group.found()) {
                if (!lost.contains(found.parameter())) {
                    Optional<Voided> changed = value(group, found);
                    if (changed.isPresent()) {
                        return changed;
                    }
                }
            }
            return partial(group, lost);
        }

        private Optional<Voided> value(Correction group, Found found) {
            String name = found.parameter();
            if (!declared.has(name)) {
                return Optional.of(whole(group, Why.UNKNOWN, name, "the rig has no value " + name));
            }
            Parameter row = declared.rows().get(declared.indexOf(name));
            if (!same(row, found.declared())) {
                return Optional.of(
                        whole(
                                group,
                                Why.DECLARED,
                                name,
                                name
                                        + " is declared as "
                                        + SiText.of(quantity(row))
                                        + " now, and was "
                                        + SiText.of(found.declared())));
            }
            if (!row.range().contains(found.value())) {
                return Optional.of(
                        whole(
                                group,
                                Why.IMPOSSIBLE,
                                name,
                                "no " + name + " can be " + found.value()));
            }
            return Optional.empty();
        }

        private Optional<Voided> partial(Correction group, Set<String> lost) {
            Set<String> names =
                    group.found().stream()
                            .map(Found::parameter)
                            .filter(name -> !lost.contains(name))
                            .collect(Collectors.toSet());
            for (Set<String> rows : together) {
                boolean some = rows.stream().anyMatch(names::contains);
                Optional<String> without =
                        rows.stream().filter(name -> !names.contains(name)).sorted().findFirst();
                if (some && without.isPresent()) {
                    return Optional.of(
                            whole(
                                    group,
                                    Why.PARTIAL,
                                    without.get(),
                                    "it says nothing of "
                                            + without.get()
                                            + ", which a table tells together with others of its"
                                            + " values"));
                }
            }
            return Optional.empty();
        }
    }

    /** What a row declares. */
    static Quantity quantity(Parameter row) {
        return new Quantity(row.nominal(), row.dimension(), row.tolerance());
    }

    private static boolean same(Parameter row, Quantity was) {
        Tolerance now = row.tolerance();
        Tolerance then = was.tolerance();
        return row.dimension().equals(was.dimension())
                && near(row.nominal(), was.si(), SAME_VALUE)
                && near(now.plus(), then.plus(), SAME_DOUBT)
                && near(now.minus(), then.minus(), SAME_DOUBT)
                && now.form() == then.form()
                && now.scope() == then.scope();
    }

    private static boolean near(double one, double other, double share) {
        return Math.abs(one - other) <= share * Math.max(Math.abs(one), Math.abs(other));
    }
}

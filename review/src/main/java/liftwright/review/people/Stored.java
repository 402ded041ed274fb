package liftwright.review.people;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import liftwright.answer.Finding;
import liftwright.answer.Finding.Severity;
import liftwright.answer.Section;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.physics.PackFire;
import liftwright.plant.Plant;
import liftwright.quantity.Band;
import liftwright.quantity.Measure;
import liftwright.review.people.FullThrottle.Moment;
import liftwright.review.wiring.WiringFindings;
import liftwright.rig.LimitName;
import liftwright.rig.Pack;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;

/** What the packs store, how far their fire reaches, and how high the bus can stand. */
final class Stored {

    private static final String FROM_MEMORY = "ends of what is from memory";

    private final Plant plant;
    private final Rig rig;
    private final double[] fullV;
    private final double[] storedJ;

    private final Optional<FullThrottle> full;

    /**
     * @param full for the bands; empty where it has no operating point
     */
    Stored(Plant plant, Optional<FullThrottle> full) {
        this.plant = plant;
        this.full = full;
        rig = plant.rig();
        double[] p = plant.parameters().nominal();
        fullV = plant.faultSupply(p).fullV();
        storedJ = new double[rig.packs().size()];
        for (int k = 0; k < storedJ.length; k++) {
            storedJ[k] = plant.storedJ(p, k);
        }
    }

    Optional<Section> section() {
        if (storedJ.length == 0) {
            return Optional.empty();
        }
        Map<RigPath, List<Integer>> groups = new LinkedHashMap<>();
        double all = 0;
        double most = 0;
        for (int k = 0; k < storedJ.length; k++) {
            groups.computeIfAbsent(rig.packs().get(k).declaredAt(), _ -> new ArrayList<>()).add(k);
            all += storedJ[k];
            most = Math.max(most, fullV[k]);
        }
        List<List<Value>> rows = new ArrayList<>();
        groups.values()
                .forEach(
                        group -> {
                            int one = group.getFirst();
                            rows.add(
                                    row(
                                            "each of " + name(group),
                                            group.size(),
                                            fullV[one],
                                            storedJ[one],
                                            m -> m.storedJ[one]));
                        });
        rows.add(
                row(
                        "all packs together",
                        storedJ.length,
                        most,
                        all,
                        m -> Arrays.stream(m.storedJ).sum()));
        return Optional.of(
                new Section.Table(
                        "people-energy",
                        "What the packs store and how far a fire reaches (from memory)",
                        List.of(
                                "part",
                                "count",
                                "pack-voltage-full",
                                "stored-energy",
                                "fire-heat",
                                "fire-reach"),
                        rows));
    }

    private String name(List<Integer> group) {
        Pack first = rig.packs().get(group.getFirst());
        Pack last = rig.packs().get(group.getLast());
        return group.size() == 1 ? first.id().text() : first.id() + " to " + last.id();
    }

    private List<Value> row(
            String part, int count, double volt, double joule, ToDoubleFunction<Moment> number) {
        double middle = (PackFire.LEAST_HEAT + PackFire.MOST_HEAT) / 2;
        return List.of(
                Value.words("part", part),
                Value.of("count", count),
                Value.of("pack-voltage-full", volt),
                Value.of("stored-energy", joule, full.flatMap(known -> known.band(number))),
                Value.of(
                        "fire-heat",
                        middle * joule,
                        band(PackFire.LEAST_HEAT * joule, PackFire.MOST_HEAT * joule)),
                Value.of(
                        "fire-reach",
                        reachM(joule, middle, geometric(PackFire.SHORTEST_S, PackFire.LONGEST_S)),
                        band(
                                reachM(joule, PackFire.LEAST_HEAT, PackFire.LONGEST_S),
                                reachM(joule, PackFire.MOST_HEAT, PackFire.SHORTEST_S))));
    }

    private static double geometric(double a, double b) {
        return Math.sqrt(a * b);
    }

    /** The farther of flames and of what hurts by shining. */
    private static double reachM(double joule, double heat, double burnS) {
        double radiant =
                burnS == PackFire.LONGEST_S
                        ? PackFire.LEAST_RADIANT
                        : burnS == PackFire.SHORTEST_S
                                ? PackFire.MOST_RADIANT
                                : (PackFire.LEAST_RADIANT + PackFire.MOST_RADIANT) / 2;
        return Math.max(
                PackFire.FLAME_M,
                PackFire.radiantM(heat * joule, burnS, radiant, PackFire.PAIN_WPM2));
    }

    private static Band band(double low, double high) {
        return new Band(low, high, 0.95, FROM_MEMORY, 0, 0);
    }

    List<Finding> findings() {
        List<Finding> findings = new ArrayList<>();
        double all = 0;
        int highest = -1;
        for (int k = 0; k < storedJ.length; k++) {
            all += storedJ[k];
            highest = highest < 0 || fullV[k] > fullV[highest] ? k : highest;
        }
        if (highest < 0) {
            return findings;
        }
        findings.add(energy(all));
        bus(highest).ifPresent(findings::add);
        return findings;
    }

    private Finding energy(double all) {
        return Finding.of(
                        Severity.NOTES,
                        "stored-energy",
                        Sentence.words("full packs store ")
                                .then(
                                        Measure.ENERGY,
                                        all,
                                        full.flatMap(
                                                known ->
                                                        known.band(
                                                                m ->
                                                                        Arrays.stream(m.storedJ)
                                                                                .sum())))
                                .then("; burning together they hurt bare skin within ")
                                .then(
                                        Measure.LENGTH,
                                        reachM(all, PackFire.MOST_HEAT, PackFire.SHORTEST_S))
                                .then(" at most, from memory"),
                        "heat two to three times what is stored, and poisonous gas that is not counted: upwind,"
                                + " a way for the wearer to drop the rig, a fire plan")
                .judging(Value.of("stored-energy", all));
    }

    private Optional<Finding> bus(int highest) {
        double limit = rig.limits().si(LimitName.HAZARDOUS_VOLTAGE);
        Pack pack = rig.packs().get(highest);
        double rise =
                WiringFindings.braking(plant).stream()
                        .filter(finding -> finding.code().equals("bus-brake-rise"))
                        .flatMap(finding -> finding.value().stream())
                        .map(Value::figure)
                        .mapToDouble(
                                figure ->
                                        figure instanceof Value.Figure.Amount amount
                                                ? amount.si()
                                                : 0)
                        .max()
                        .orElse(0);
        double volt = Math.max(fullV[highest], rise);
        if (volt <= limit) {
            return Optional.empty();
        }
        boolean braking = fullV[highest] <= limit;
        return Optional.of(
                Finding.of(
                                Severity.WARNS,
                                "bus-hazardous",
                                Sentence.words(
                                                braking
                                                        ? "braking fans lift the bus to "
                                                        : pack.series()
                                                                + " full cells in series stand at ")
                                        .then(Measure.VOLTAGE, volt)
                                        .then(", above ")
                                        .then(Measure.VOLTAGE, limit)
                                        .then(": hazardous to touch"),
                                "cover, mark and discharge it; capacitors stay charged after the packs are out")
                        .about(pack.id().text())
                        .at(pack.declaredAt().toString())
                        .against(
                                Value.of("bus-voltage", volt),
                                new Finding.Limit(
                                        Value.of("bus-voltage", limit),
                                        rig.limits().origin(LimitName.HAZARDOUS_VOLTAGE))));
    }
}

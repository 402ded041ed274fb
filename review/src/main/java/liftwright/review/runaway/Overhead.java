package liftwright.review.runaway;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import liftwright.answer.Finding;
import liftwright.answer.Finding.Severity;
import liftwright.answer.Section.Table;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.plant.Plant;
import liftwright.plant.motion.Peak;
import liftwright.plant.motion.RunawayPath;
import liftwright.plant.motion.Spring;
import liftwright.plant.motion.Strike;
import liftwright.plant.motion.Surroundings;
import liftwright.quantity.Measure;
import liftwright.quantity.Quantity;
import liftwright.rig.Restraint;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;
import liftwright.rig.Tether;

/**
 * What is above a rig, and what holds it: the line, lines down, a beam or a ceiling, at heights of
 * the soles.
 *
 * @param plant the rig
 * @param around lines and what is struck
 * @param line whether there is an overhead line
 * @param down whether there are lines down
 */
record Overhead(Plant plant, Surroundings around, boolean line, boolean down) {

    /** Shoulders over stature; from memory, within 2 % of published means. */
    private static final double SHOULDER = 0.82;

    /** Empty where neither a tether nor a room is declared. */
    static Optional<Overhead> of(Plant plant) {
        Rig rig = plant.rig();
        Optional<Tether> tether = rig.restraint().tether();
        OptionalDouble lowest = lowestM(rig);
        if (tether.isEmpty() && lowest.isEmpty()) {
            return Optional.empty();
        }
        double shoulderM = rig.wearer().map(w -> SHOULDER * w.stature().si()).orElse(0.0);
        List<Spring> springs = new ArrayList<>();
        tether.ifPresent(own -> springs.addAll(springs(own, shoulderM)));
        double topM = topM(plant, shoulderM);
        return Optional.of(
                new Overhead(
                        plant,
                        new Surroundings(
                                springs,
                                lowest.isPresent()
                                        ? OptionalDouble.of(lowest.getAsDouble() - topM)
                                        : OptionalDouble.empty()),
                        tether.isPresent(),
                        springs.size() > 1));
    }

    private static OptionalDouble lowestM(Rig rig) {
        return rig.restraint().room().stream()
                .map(Overhead::above)
                .flatMap(Optional::stream)
                .mapToDouble(Quantity::si)
                .min();
    }

    private static Optional<Quantity> above(Restraint.Room room) {
        return Stream.of(room.beam(), room.ceiling())
                .flatMap(Optional::stream)
                .min((a, b) -> Double.compare(a.si(), b.si()));
    }

    private static List<Spring> springs(Tether tether, double shoulderM) {
        double ringM = tether.harnessPoint().map(Quantity::si).orElse(shoulderM);
        List<Spring> springs = new ArrayList<>();
        springs.add(
                new Spring(
                        "line",
                        Spring.Way.LIFTS,
                        tether.anchorHeight().si() - tether.length().si() - ringM,
                        tether.stiffness().si(),
                        tether.damping().si()));
        tether.downLines()
                .ifPresent(
                        lines -> {
                            double length = lines.length().si();
                            double spread = lines.spread().si();
                            double up = Math.sqrt(Math.max(0, length * length - spread * spread));
                            double share = length > 0 ? up / length : 0;
                            if (share > 0) {
                                springs.add(
                                        new Spring(
                                                "lines down",
                                                Spring.Way.HOLDS,
                                                up - ringM,
                                                lines.count()
                                                        * lines.stiffness().si()
                                                        * share
                                                        * share,
                                                0));
                            }
                        });
        return springs;
    }

    /** Highest point over the soles, or over the lowest fan of a rig that nobody wears. */
    private static double topM(Plant plant, double shoulderM) {
        double[] p = plant.parameters().nominal();
        Optional<Double> stature = plant.rig().wearer().map(wearer -> wearer.stature().si());
        if (stature.isPresent()) {
            return Math.max(stature.get(), shoulderM + highestM(plant, p));
        }
        double lowest = Double.POSITIVE_INFINITY;
        for (int fan = 0; fan < plant.rig().fans().size(); fan++) {
            lowest = Math.min(lowest, -plant.fanPlace(p, fan).z());
        }
        return highestM(plant, p) - lowest;
    }

    /** Of the fans, over the middle between the shoulders or the frame's own middle. */
    private static double highestM(Plant plant, double[] p) {
        double highest = Double.NEGATIVE_INFINITY;
        for (int fan = 0; fan < plant.rig().fans().size(); fan++) {
            highest = Math.max(highest, -plant.fanPlace(p, fan).z());
        }
        return highest;
    }

    /** What catches a fall: lines down are slack in it, and hold it to no height it fell from. */
    Surroundings catching() {
        return new Surroundings(
                around.springs().stream()
                        .filter(spring -> spring.way() == Spring.Way.LIFTS)
                        .toList(),
                OptionalDouble.empty());
    }

    private RunawayPath run(RunawayRuns runs) {
        return runs.runaway().run(RunawayRuns.usual(plant, runs.slowestStop(), around), false);
    }

    Table table(RunawayRuns runs) {
        RunawayPath path = run(runs);
        List<Value> row = new ArrayList<>();
        row.add(Value.words("runaway-trigger", "every fan at full, hovering"));
        row.add(strike("overhead-height", path.strike().map(Strike::heightM)));
        row.add(strike("overhead-speed", path.strike().map(Strike::speedMps)));
        row.add(strike("overhead-energy", path.strike().map(Strike::energyJ)));
        row.add(peak("overhead-line", path, line ? 0 : -1));
        row.add(peak("overhead-down-lines", path, down ? 1 : -1));
        return new Table(
                "runaway-overhead",
                "The same under what is overhead and on its lines",
                List.of(
                        "runaway-trigger",
                        "overhead-height",
                        "overhead-speed",
                        "overhead-energy",
                        "overhead-line",
                        "overhead-down-lines"),
                List.of(row));
    }

    private static Value strike(String field, Optional<Double> si) {
        return si.map(value -> Value.of(field, value))
                .orElseGet(
                        () -> new Value(field, new Value.Figure.NotComputed("nothing is struck")));
    }

    private static Value peak(String field, RunawayPath path, int which) {
        if (which < 0) {
            return new Value(field, new Value.Figure.NotComputed("none is declared"));
        }
        Peak peak = path.peaks().get(which);
        return Value.of(field, peak.forceN());
    }

    List<Finding> findings(RunawayRuns runs) {
        if (!line && around.ceilingM().isEmpty()) {
            return List.of();
        }
        RunawayPath path = run(runs);
        Optional<Strike> strike = path.strike();
        if (strike.isPresent()) {
            return List.of(strikes(strike.get()));
        }
        if (line && !down) {
            return List.of(
                    Finding.of(
                                    Severity.WARNS,
                                    "tether-does-not-stop-a-climb",
                                    Sentence.words(
                                                    "an overhead tether does not stop a climb: with every fan"
                                                            + " at full the rig passes it at up to ")
                                            .then(Measure.SPEED, path.greatestUpMps())
                                            .then(
                                                    "; what it would strike is not declared (“beam” or"
                                                            + " “ceiling” of the room)"),
                                    "a line pulls, and goes slack when its end comes nearer")
                            .at(RigPath.of("restraint", "tether").toString()));
        }
        return List.of();
    }

    private Finding strikes(Strike strike) {
        String words =
                line
                        ? "an overhead tether does not stop a climb: with every fan at full the rig"
                                + " strikes what is overhead with its soles "
                        : "with every fan at full the rig strikes what is overhead with its soles ";
        return Finding.of(
                        Severity.WARNS,
                        line ? "tether-does-not-stop-a-climb" : "strikes-overhead",
                        Sentence.words(words)
                                .then(Measure.LENGTH, strike.heightM())
                                .then(" up, at ")
                                .then(Measure.SPEED, strike.speedMps())
                                .then(" and with ")
                                .then(Measure.IMPACT_ENERGY, strike.energyJ())
                                .then(", ")
                                .then(Measure.TIME, strike.timeS())
                                .then(" after the fault"),
                        "lines to the floor stop a climb; a line from above only catches the fall")
                .at(RigPath.of("restraint", line ? "tether" : "room").toString())
                .judging(Value.of("overhead-speed", strike.speedMps()));
    }
}

package liftwright.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import liftwright.answer.Finding;
import liftwright.answer.Remedy;
import liftwright.answer.Section;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.numerics.Work;
import liftwright.plant.Balancing;
import liftwright.plant.HoverPoint;
import liftwright.plant.balance.Allocation;
import liftwright.plant.balance.FanAtWork;
import liftwright.quantity.Measure;
import liftwright.rig.Change;
import liftwright.rig.Fan;
import liftwright.rig.Mount;
import liftwright.rig.Rig;
import liftwright.rig.Vec3;

/**
 * What it buys and costs to lean every fan along its circle about the upright axis, the way its own
 * swirl turns the rig: yaw to steer by, for some lift. In whole degrees from none to 15°, each a
 * rig of its own computed anew. Only fans that blow down from mounts without tilt on frame or trunk
 * lean; the others stay.
 */
final class CantSearch {

    static final int MOST_DEG = 15;

    /** A fan nearer to the axis than this has no circle, m. */
    private static final double ON_AXIS_M = 1e-3;

    private CantSearch() {}

    /**
     * What one cant comes to.
     *
     * @param yawRadps2 lesser of the two yaw reserves; empty where no trim holds the weight
     * @param liftN most lift without roll, pitch and yaw
     * @param left the number that balance judges
     */
    record Tried(int degrees, Optional<Double> yawRadps2, double liftN, double left) {}

    static Searched of(Rig rig, Work work) {
        if (!switch (Steering.of(Balancing.of(rig))) {
            case COMPUTER -> true;
            case ARMS, NOTHING -> false;
        }) {
            return only(
                    "cant-steers-nothing",
                    "cant buys no yaw here: with a shared throttle nothing commands it",
                    "yaw by cant needs a throttle for each fan");
        }
        List<Leaning> leaning = leaning(rig);
        if (leaning.isEmpty()) {
            return only(
                    "no-fan-to-cant",
                    "no fan can lean along its circle",
                    "fans that blow down from untilted mounts, off the upright axis, can");
        }
        work.stage("search for cant", MOST_DEG + 1);
        List<Tried> tried = new ArrayList<>();
        for (int degrees = 0; degrees <= MOST_DEG && !work.stopped(); degrees++) {
            int cant = degrees;
            (cant == 0 ? Optional.of(rig) : Revised.with(rig, changes(rig, leaning, cant)))
                    .flatMap(revised -> tried(revised, cant))
                    .ifPresent(tried::add);
            work.done(1);
        }
        if (tried.isEmpty()) {
            return only(
                    "cant-not-tried",
                    "no cant could be computed",
                    "no operating point was found at full throttle");
        }
        return told(rig, leaning, tried);
    }

    private static Searched only(String code, String sentence, String cause) {
        return new Searched(
                List.of(Finding.of(Finding.Severity.NOTES, code, Sentence.words(sentence), cause)),
                List.of());
    }

    private static Searched told(Rig rig, List<Leaning> leaning, List<Tried> tried) {
        Tried now = tried.getFirst();
        List<List<Value>> rows = new ArrayList<>();
        Tried best = now;
        for (Tried each : tried) {
            rows.add(
                    List.of(
                            Value.of("cant-added", Math.toRadians(each.degrees)),
                            each.yawRadps2
                                    .map(rate -> Value.of("cant-yaw-reserve", rate))
                                    .orElseGet(
                                            () ->
                                                    new Value(
                                                            "cant-yaw-reserve",
                                                            new Value.Figure.NotComputed(
                                                                    "no trim holds weight"))),
                            Value.of("cant-lift", each.liftN),
                            Value.of("cant-lift-lost", now.liftN - each.liftN),
                            Value.of("reserve-ratio", each.left)));
            best = isBetter(rig, each, best) ? each : best;
        }
        Section table =
                new Section.Table(
                        "cant-search",
                        "Fans leant along their circle: yaw bought, lift paid",
                        List.of(
                                "cant-added",
                                "cant-yaw-reserve",
                                "cant-lift",
                                "cant-lift-lost",
                                "reserve-ratio"),
                        rows);
        return new Searched(List.of(finding(rig, leaning, now, best)), List.of(table));
    }

    /** The first that gives what is asked; before that the one that comes nearest. */
    private static boolean isBetter(Rig rig, Tried each, Tried best) {
        return best.left < Steering.COMPUTER.demand(rig.limits()) && each.left > best.left + 1e-9;
    }

    private static Finding finding(Rig rig, List<Leaning> leaning, Tried now, Tried best) {
        if (best.degrees == 0) {
            return Finding.of(
                            Finding.Severity.NOTES,
                            "no-cant-needed",
                            Sentence.words(
                                    now.left >= Steering.COMPUTER.demand(rig.limits())
                                            ? "the reserves are there without more cant"
                                            : "no cant up to 15° betters the least reserve"),
                            "the table tells what it would buy and cost")
                    .judging(Value.of("reserve-ratio", now.left));
        }
        double cant = Math.toRadians(best.degrees);
        double lost = now.liftN - best.liftN;
        return Finding.of(
                        Finding.Severity.NOTES,
                        "cant-buys-yaw",
                        Sentence.words("leaning the fans ")
                                .then(Measure.ANGLE, cant)
                                .then(
                                        " along their circle takes the least reserve over what is asked from ")
                                .then(Measure.RATIO, now.left)
                                .then(" to ")
                                .then(Measure.RATIO, best.left)
                                .then(" and the most lift down by ")
                                .then(Measure.THRUST, lost),
                        "each leans the way its own swirl turns the rig, so that throttle turns it more")
                .judging(Value.of("reserve-ratio", now.left))
                .mendedBy(
                        List.of(
                                new Remedy(
                                        Sentence.words(
                                                        String.format(
                                                                Locale.ROOT,
                                                                "lean %d fans ",
                                                                leaning.size()))
                                                .then(Measure.ANGLE, cant)
                                                .then(" more along their circle, each by its spin"),
                                        changes(rig, leaning, best.degrees),
                                        new Remedy.Effect.Helps(
                                                Value.of("reserve-ratio", best.left),
                                                Value.of(
                                                        "reserve-ratio-gain",
                                                        best.left - now.left)))));
    }

    private static Optional<Tried> tried(Rig rig, int degrees) {
        Balancing balancing = Balancing.of(rig);
        Balancing.Worker worker = balancing.worker();
        double[] p = balancing.parameters().nominal();
        HoverPoint point = worker.liftOff(p);
        double left = BalanceJudge.nominal(balancing);
        return Steering.allocation(worker, p, point)
                .map(
                        can ->
                                new Tried(
                                        degrees,
                                        lesserYaw(can, point),
                                        can.greatestLift(true)
                                                .map(Allocation.Trim::liftN)
                                                .orElse(0.0),
                                        left));
    }

    private static Optional<Double> lesserYaw(Allocation can, HoverPoint point) {
        Optional<Double> right = Steering.reserveRadps2(can, point, Turn.YAW, 1);
        Optional<Double> left = Steering.reserveRadps2(can, point, Turn.YAW, -1);
        return right.flatMap(one -> left.map(other -> Math.min(one, other)));
    }

    /**
     * A fan that can lean.
     *
     * @param along unit vector in the mount's axes that its jet leans along
     * @param now where the jet goes, over its part downward
     */
    private record Leaning(Fan fan, Vec3 along, Vec3 now) {}

    private static List<Leaning> leaning(Rig rig) {
        Balancing balancing = Balancing.of(rig);
        Balancing.Worker worker = balancing.worker();
        List<FanAtWork> work = worker.liftOff(balancing.parameters().nominal()).ledger().fans();
        List<Leaning> leaning = new ArrayList<>();
        for (int k = 0; k < work.size(); k++) {
            Fan fan = rig.fans().get(k);
            Vec3 arm = work.get(k).arm();
            double radius = Math.hypot(arm.x(), arm.y());
            if (!canLean(fan) || radius < ON_AXIS_M) {
                continue;
            }
            double own = work.get(k).actual().z() * work.get(k).swirlNm();
            double way =
                    own != 0
                            ? Math.signum(own)
                            : switch (fan.spin()) {
                                case RIGHT_HAND -> 1;
                                case LEFT_HAND -> -1;
                            };
            // A jet towards (y, −x) pushes the rig towards (−y, x): to the right about down.
            Vec3 along = new Vec3(arm.y(), -arm.x(), 0).times(way / radius);
            Vec3 now = fan.blows();
            for (Fan.Lean lean : fan.leans()) {
                now = now.plus(lean.towards().times(Math.tan(lean.angle().si())));
            }
            leaning.add(new Leaning(fan, along, now));
        }
        return leaning;
    }

    private static boolean canLean(Fan fan) {
        Mount mount = fan.mount();
        boolean still =
                switch (mount.on()) {
                    case FRAME, TRUNK -> true;
                    case LEFT_UPPER_ARM, RIGHT_UPPER_ARM, LEFT_FOREARM, RIGHT_FOREARM -> false;
                };
        return still
                && fan.blows().z() == 1
                && mount.turnForward().si() == 0
                && mount.turnRight().si() == 0;
    }

    private static List<Change> changes(Rig rig, List<Leaning> leaning, int degrees) {
        List<Change> changes = new ArrayList<>();
        for (Leaning each : leaning) {
            Vec3 jet = each.now.plus(each.along.times(Math.tan(Math.toRadians(degrees))));
            String doubt =
                    each.fan.leans().stream()
                            .mapToDouble(lean -> lean.angle().tolerance().plus())
                            .max()
                            .stream()
                            .filter(rad -> rad > 0)
                            .mapToObj(
                                    rad ->
                                            String.format(
                                                    Locale.ROOT, " ± %.2f°", Math.toDegrees(rad)))
                            .findFirst()
                            .orElse("");
            var except = each.fan.declaredAt().child("except").child(each.fan.id().text());
            String value =
                    "{"
                            + lean("forward", "back", jet.x(), doubt)
                            + ", "
                            + lean("right", "left", jet.y(), doubt)
                            + "}";
            changes.add(
                    rig.declaration().at(except.child("cant")).isPresent()
                            ? new Change.Replace(except.child("cant"), value)
                            : new Change.Add(except, "cant", value));
        }
        return changes;
    }

    private static String lean(String towards, String against, double tangent, String doubt) {
        return String.format(
                Locale.ROOT,
                "%s: %.2f°%s",
                tangent < 0 ? against : towards,
                Math.toDegrees(Math.atan(Math.abs(tangent))),
                doubt);
    }
}

package liftwright.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import liftwright.answer.Finding;
import liftwright.answer.Finding.Severity;
import liftwright.answer.Section;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.numerics.CounterStream;
import liftwright.physics.FanLaw;
import liftwright.physics.FreeJet;
import liftwright.plant.Balancing;
import liftwright.plant.HoverPoint;
import liftwright.plant.balance.FanAtWork;
import liftwright.plant.balance.JetStrike;
import liftwright.plant.balance.Obstacle;
import liftwright.plant.body.Limb;
import liftwright.quantity.Measure;
import liftwright.rig.FanType;
import liftwright.rig.Rig;
import liftwright.rig.Vec3;

/**
 * What jets strike at lift-off: limbs and parts with the thrust they cost, intakes of other fans,
 * the ground under a wearer. What breathing another's jet costs is not computed, and said.
 */
final class JetTables {

    /** What a body catches is known to this share, between bounds; from memory. */
    private static final double CATCH = 0.4;

    /** A loss that is told, over the thrust. */
    private static final double LEAST_SHARE = 0.002;

    /** A limb in a jet faster than this is warned of, m/s; from memory. */
    private static final double FAST_MPS = 15;

    /** Where along the ground the wall jet is told, m. */
    private static final double OUT_M = 3;

    private final Rig rig;
    private final Balancing balancing;
    private final HoverPoint point;
    private final double densityKgpm3;

    JetTables(Balancing balancing, HoverPoint point, double densityKgpm3) {
        this.balancing = balancing;
        this.point = point;
        this.densityKgpm3 = densityKgpm3;
        rig = balancing.rig();
    }

    private FanType type(int fan) {
        return rig.fans().get(fan).type();
    }

    private FanAtWork fan(int fan) {
        return point.ledger().fans().get(fan);
    }

    private int fans() {
        return rig.fans().size();
    }

    /** Speed at the exit of a fan, m/s. */
    private double exitMps(int fan) {
        double thrustN = fan(fan).thrustN();
        if (!(thrustN > 0)) {
            return 0;
        }
        return thrustN / FanLaw.massFlowKgps(thrustN, densityKgpm3, type(fan).exitArea().si());
    }

    /** Speed on the axis so far away, with the neighbours that have merged by then. */
    private double speedMps(int fan, double distanceM) {
        return exitMps(fan)
                * FreeJet.axisSpeedShare(
                        distanceM, type(fan).exitArea().si(), merged(fan, distanceM));
    }

    /** Fans whose half-speed radius there meets that of this one, itself included. */
    private int merged(int fan, double distanceM) {
        int merged = 1;
        Vec3 along = fan(fan).actual();
        double wide = 2 * FreeJet.radiusM(0.75, distanceM, type(fan).exitArea().si());
        for (int k = 0; k < fans(); k++) {
            Vec3 to = fan(k).arm().minus(fan(fan).arm());
            double apart = to.minus(along.times(dot(to, along))).length();
            if (k != fan && dot(along, fan(k).actual()) > 0.94 && apart <= wide) {
                merged++;
            }
        }
        return merged;
    }

    private static double dot(Vec3 a, Vec3 b) {
        return a.x() * b.x() + a.y() * b.y() + a.z() * b.z();
    }

    /** Losses fan by fan; empty where no jet strikes anything. */
    Optional<Section> section(BalanceJudgement judgement) {
        boolean any =
                point.ledger().fans().stream().anyMatch(f -> f.strike().share() > LEAST_SHARE);
        if (!any) {
            return Optional.empty();
        }
        List<List<Value>> rows = new ArrayList<>();
        for (int k = 0; k < fans(); k++) {
            JetStrike strike = fan(k).strike();
            double[] lost = lostN(k, judgement);
            if (strike.share() > LEAST_SHARE && (lost.length > 1 || judgement.draws() == 0)) {
                double lossN = strike.share() * fan(k).thrustN();
                rows.add(
                        List.of(
                                Value.words("part", fan(k).id().text()),
                                Value.words("jet-strikes", names(strike)),
                                Value.of("jet-distance", nearest(strike)),
                                Value.of("jet-speed", speedMps(k, nearest(strike))),
                                Value.of(
                                        "jet-loss", lossN, Bands.shown(Bands.about(lossN, lost)))));
            }
        }
        return Optional.of(
                new Section.Table(
                        "jets",
                        "What the jets strike at lift-off",
                        List.of("part", "jet-strikes", "jet-distance", "jet-speed", "jet-loss"),
                        rows));
    }

    private static String names(JetStrike strike) {
        return String.join(", ", strike.hits().stream().map(hit -> hit.obstacle().name()).toList());
    }

    private static double nearest(JetStrike strike) {
        return strike.hits().stream()
                .mapToDouble(JetStrike.Hit::distanceM)
                .min()
                .orElse(JetStrike.REACH_M);
    }

    /** Lost thrust of a fan over the draws of the rig and of what bodies catch, N. */
    private static double[] lostN(int fan, BalanceJudgement judgement) {
        BalanceSample sample = judgement.sample();
        long channel = CounterStream.channel("what a body catches of a jet");
        return IntStream.range(0, judgement.draws())
                .filter(sample::isSolved)
                .mapToDouble(
                        draw -> {
                            double uniform =
                                    CounterStream.uniform(sample.settings.seed(), channel, draw);
                            return (1 + CATCH * (2 * uniform - 1)) * sample.jetLossN(fan, draw);
                        })
                .toArray();
    }

    /** Hazards. */
    List<Finding> findings() {
        List<Finding> findings = new ArrayList<>();
        onLimb().ifPresent(findings::add);
        intake().ifPresent(findings::add);
        ground().ifPresent(findings::add);
        return findings;
    }

    private Optional<Finding> onLimb() {
        int worst = -1;
        double fastest = FAST_MPS;
        String name = "";
        double distance = 0;
        int count = 0;
        for (int k = 0; k < fans(); k++) {
            for (JetStrike.Hit hit : fan(k).strike().hits()) {
                double speed = speedMps(k, hit.distanceM());
                if (hit.obstacle() instanceof Obstacle.Limb && speed > FAST_MPS) {
                    count++;
                    if (speed > fastest) {
                        fastest = speed;
                        worst = k;
                        name = hit.obstacle().name();
                        distance = hit.distanceM();
                    }
                }
            }
        }
        if (worst < 0) {
            return Optional.empty();
        }
        return Optional.of(
                hazard(
                        Severity.WARNS,
                        "jet-on-limb",
                        Optional.of(fan(worst).id().text()),
                        Sentence.words(
                                        "the jet of "
                                                + fan(worst).id()
                                                + " blows on the "
                                                + name
                                                + " ")
                                .then(Measure.LENGTH, distance)
                                .then(" away with ")
                                .then(Measure.SPEED, fastest),
                        others(count, "more jets on limbs")
                                + "the loss is in the ledger; what the jet carries along, cold and noise are not"));
    }

    private static String others(int count, String what) {
        return count > 1 ? String.format(Locale.ROOT, "%d %s; ", count - 1, what) : "";
    }

    private Optional<Finding> intake() {
        int from = -1;
        int into = -1;
        double fastest = 0;
        double distance = 0;
        int count = 0;
        for (int a = 0; a < fans(); a++) {
            Vec3 along = fan(a).actual().times(-1);
            for (int b = 0; b < fans(); b++) {
                double radius = type(b).tip().si() / 2;
                Vec3 to = fan(b).arm().plus(fan(b).actual().times(radius)).minus(fan(a).arm());
                double x = dot(to, along);
                if (a == b || x < radius || x > JetStrike.REACH_M || !(fan(a).thrustN() > 0)) {
                    continue;
                }
                double off = to.minus(along.times(x)).length();
                if (off < radius + FreeJet.radiusM(0.75, x, type(a).exitArea().si())) {
                    count++;
                    double speed = speedMps(a, x);
                    if (speed > fastest) {
                        fastest = speed;
                        from = a;
                        into = b;
                        distance = x;
                    }
                }
            }
        }
        if (from < 0) {
            return Optional.empty();
        }
        return Optional.of(
                hazard(
                        Severity.WARNS,
                        "intake-in-jet",
                        Optional.of(fan(into).id().text()),
                        Sentence.words(
                                        "the intake of "
                                                + fan(into).id()
                                                + " lies in the jet of "
                                                + fan(from).id()
                                                + ", ")
                                .then(Measure.LENGTH, distance)
                                .then(" from its exit, ")
                                .then(Measure.SPEED, fastest),
                        others(count, "more intakes in jets")
                                + "a fan that breathes a jet gives less than computed; how much is outside the laws here"));
    }

    /** Under a wearer, whose soles tell where the ground is at lift-off. */
    private Optional<Finding> ground() {
        double[] p = balancing.parameters().nominal();
        double sole = Double.NEGATIVE_INFINITY;
        for (Limb limb : balancing.limbs(p)) {
            sole = Math.max(sole, Math.max(limb.from().z(), limb.to().z()));
        }
        int worst = -1;
        double fastest = 0;
        double below = 0;
        for (int k = 0; k < fans(); k++) {
            double down = -fan(k).actual().z();
            double height = sole - fan(k).arm().z() - point.mass().centre().z();
            if (down > 0.7 && height > 0 && height < Double.POSITIVE_INFINITY) {
                double speed = speedMps(k, height / down);
                if (speed > fastest) {
                    fastest = speed;
                    worst = k;
                    below = height / down;
                }
            }
        }
        if (worst < 0) {
            return Optional.empty();
        }
        int merged = merged(worst, below);
        double diameter = Math.sqrt(4 * merged * type(worst).exitArea().si() / Math.PI);
        Sentence meets =
                Sentence.words("the jet of " + fan(worst).id() + " meets the ground with ")
                        .then(Measure.SPEED, fastest);
        Sentence sentence =
                OUT_M >= 2 * diameter
                        ? meets.then("; along it, ")
                                .then(Measure.LENGTH, OUT_M)
                                .then(" out, still some ")
                                .then(
                                        Measure.SPEED,
                                        exitMps(worst) * FreeJet.wallSpeedShare(OUT_M, diameter))
                                .then(" (± 30 %)")
                        : meets.then("; how fast it runs along it is outside the law so near");
        return Optional.of(
                hazard(
                        Severity.NOTES,
                        "ground-wall-jet",
                        Optional.of(fan(worst).id().text()),
                        sentence,
                        "dust, gravel and eyes: sweep the ground, keep people away; wall jet from memory"));
    }

    private static Finding hazard(
            Severity severity,
            String code,
            Optional<String> part,
            Sentence sentence,
            String cause) {
        return Finding.of(severity, code, sentence, cause).about(part);
    }
}

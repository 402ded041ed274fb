package liftwright.review.people;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import liftwright.answer.Finding;
import liftwright.answer.Finding.Severity;
import liftwright.answer.Section;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.physics.Noise;
import liftwright.quantity.Measure;
import liftwright.quantity.Quantity;
import liftwright.review.people.FullThrottle.Moment;
import liftwright.review.people.Numbers.What;
import liftwright.rig.CrewMember;
import liftwright.rig.LimitName;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;
import liftwright.rig.Vec3;

/**
 * How loud it is at the wearer's ears and where the crew stand, all fans at full throttle, and how
 * long that may last. In the far field sources add by energy and fall with distance; inside the
 * array, and within twice its size, only a bound is told.
 */
final class Hearing {

    /** Far field begins at so many times the array's radius (common practice). */
    private static final double FAR = 2;

    /** Double hearing protection is due from this level, dBA (common practice). */
    private static final double DOUBLE_DBA = 100;

    /** One who hears it. */
    private record Ear(
            String who,
            Optional<Double> distanceM,
            ToDoubleFunction<Moment> levelDba,
            String how) {}

    private final Rig rig;
    private final Numbers numbers;
    private final FullThrottle full;
    private final double exposureS;
    private final List<Ear> ears = new ArrayList<>();

    Hearing(Rig rig, Numbers numbers, FullThrottle full, Ground ground) {
        this.rig = rig;
        this.numbers = numbers;
        this.full = full;
        exposureS = rig.demands().hover().si() * rig.demands().runs();
        if (Arrays.stream(full.declared().speedRadps).noneMatch(speed -> speed > 0)) {
            return; // nothing sounds
        }
        ground.ears().ifPresent(place -> ears.add(wearer(ground, place)));
        double spreadM = ground.spreadM();
        for (CrewMember member : rig.crew()) {
            member.distance()
                    .map(Quantity::si)
                    .ifPresent(far -> ears.add(crew(member, far, spreadM)));
        }
    }

    private Ear wearer(Ground ground, Vec3 place) {
        double[] away = new double[rig.fans().size()];
        for (int k = 0; k < away.length; k++) {
            away[k] = ground.place(k).minus(place).length();
        }
        return new Ear(
                "wearer", Optional.empty(), m -> boundDba(m, away), "a bound, inside the array");
    }

    private Ear crew(CrewMember member, double distanceM, double spreadM) {
        double[] away = new double[rig.fans().size()];
        boolean far = distanceM >= FAR * spreadM;
        Arrays.fill(away, far ? distanceM : Math.max(0, distanceM - spreadM));
        return new Ear(
                member.name(),
                Optional.of(distanceM),
                m -> boundDba(m, away),
                far ? "far field" : "a bound, near the array");
    }

    /** Sum over the fans that turn, each at its distance and none nearer than its own width. */
    private double boundDba(Moment moment, double[] awayM) {
        double sum = Double.NEGATIVE_INFINITY;
        for (int k = 0; k < awayM.length; k++) {
            var type = rig.fans().get(k).type();
            if (moment.speedRadps[k] > 0) {
                sum =
                        Noise.sumDb(
                                sum,
                                Noise.nearBoundDb(
                                        numbers.of(moment.own, type, What.NOISE),
                                        awayM[k],
                                        type.tip().si()));
            }
        }
        return sum;
    }

    Optional<Section> section() {
        if (ears.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                new Section.Table(
                        "people-noise",
                        "How loud it is at full throttle, and how long that may last in a day",
                        List.of(
                                "person",
                                "person-distance",
                                "noise-level",
                                "noise-how",
                                "noise-time",
                                "niosh-time",
                                "niosh-dose",
                                "osha-time",
                                "osha-dose",
                                "ear-protection"),
                        ears.stream().map(this::row).toList()));
    }

    private List<Value> row(Ear ear) {
        double level = ear.levelDba().applyAsDouble(full.declared());
        return List.of(
                Value.words("person", ear.who()),
                ear.distanceM()
                        .map(far -> Value.of("person-distance", far))
                        .orElse(Value.words("person-distance", "wears it")),
                full.value("noise-level", ear.levelDba()),
                Value.words("noise-how", ear.how()),
                Value.of("noise-time", exposureS),
                full.value("niosh-time", m -> Noise.nioshS(ear.levelDba().applyAsDouble(m))),
                full.value("niosh-dose", m -> nioshDose(ear.levelDba().applyAsDouble(m))),
                osha(level, "osha-time", m -> Noise.oshaS(ear.levelDba().applyAsDouble(m))),
                osha(
                        level,
                        "osha-dose",
                        m -> exposureS / Noise.oshaS(ear.levelDba().applyAsDouble(m))),
                Value.words("ear-protection", protection(level)));
    }

    private Value osha(double level, String field, ToDoubleFunction<Moment> number) {
        if (level > Noise.OSHA_CEILING_DBA) {
            return new Value(
                    field, new Value.Figure.NotComputed("no time is allowed above 115 dBA"));
        }
        return level < Noise.OSHA_THRESHOLD_DBA
                ? new Value(field, new Value.Figure.NotComputed("nothing counts below 80 dBA"))
                : full.value(field, number);
    }

    private double nioshDose(double level) {
        return exposureS / Noise.nioshS(level);
    }

    private String protection(double level) {
        return level >= DOUBLE_DBA
                ? "double"
                : level >= rig.limits().si(LimitName.NOISE) ? "yes" : "below the limit";
    }

    List<Finding> findings() {
        List<Finding> findings = new ArrayList<>();
        double limit = rig.limits().si(LimitName.NOISE);
        for (Ear ear : ears) {
            double level = ear.levelDba().applyAsDouble(full.declared());
            if (level >= limit) {
                findings.add(loud(ear, level, limit));
            }
        }
        return findings;
    }

    private Finding loud(Ear ear, double level, double limit) {
        double dose = nioshDose(level);
        Sentence sentence =
                Sentence.words("at " + ear.who() + " up to ")
                        .then(Measure.SOUND_LEVEL, level, full.band(ear.levelDba()))
                        .then(": ")
                        .then(
                                Measure.TIME,
                                Noise.nioshS(level),
                                full.band(m -> Noise.nioshS(ear.levelDba().applyAsDouble(m))))
                        .then(" a day by NIOSH, ")
                        .then(
                                level > Noise.OSHA_CEILING_DBA
                                        ? Sentence.words("no time at all by OSHA")
                                        : Sentence.start()
                                                .then(
                                                        Measure.TIME,
                                                        Noise.oshaS(level),
                                                        full.band(
                                                                m ->
                                                                        Noise.oshaS(
                                                                                ear.levelDba()
                                                                                        .applyAsDouble(
                                                                                                m))))
                                                .then(" by OSHA"))
                        .then("; what is asked lasts ")
                        .then(Measure.TIME, exposureS)
                        .then(
                                level >= DOUBLE_DBA
                                        ? ". Plugs and muffs together"
                                        : ". Hearing protection");
        return Finding.of(
                        dose >= 1 || level >= DOUBLE_DBA ? Severity.WARNS : Severity.NOTES,
                        "noise",
                        sentence,
                        ear.how()
                                + "; walls and ground may add 3 dB each and are not counted; measure one fan"
                                + " at 1 m, “noise” of its type")
                .about(ear.who())
                .at(RigPath.of("limits", LimitName.NOISE.key()).toString())
                .against(
                        Value.of("noise-level", level, full.band(ear.levelDba())),
                        new Finding.Limit(
                                Value.of("noise-level", limit),
                                rig.limits().origin(LimitName.NOISE)));
    }
}

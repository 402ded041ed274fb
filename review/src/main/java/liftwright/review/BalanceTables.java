package liftwright.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import liftwright.answer.Section;
import liftwright.answer.Value;
import liftwright.physics.Turning;
import liftwright.plant.HoverPoint;
import liftwright.plant.balance.Allocation;
import liftwright.plant.balance.FanAtWork;
import liftwright.plant.balance.TurningCause;
import liftwright.plant.body.Beams;
import liftwright.plant.body.MassProperties;
import liftwright.quantity.Band;
import liftwright.rig.Limits;

/** What turns a rig, cause by cause and fan by fan, and what holds it. */
final class BalanceTables {

    static final String[] JOINTS = {
        "left shoulder, flexion",
        "left shoulder, abduction",
        "left shoulder, rotation",
        "left elbow, flexion",
        "right shoulder, flexion",
        "right shoulder, abduction",
        "right shoulder, rotation",
        "right elbow, flexion"
    };

    private BalanceTables() {}

    static Section turning(BalanceJudgement judgement) {
        List<List<Value>> rows = new ArrayList<>();
        for (Turn turn : Turn.values()) {
            double rate = rateRadps2(turn, judgement.point());
            rows.add(
                    List.of(
                            Value.words("axis", turn.word()),
                            Value.of(
                                    "turning-acceleration",
                                    rate,
                                    Bands.shown(rateBand(turn, judgement))),
                            Value.words("turns-towards", rate == 0 ? "does not" : turn.seen(rate)),
                            Value.words("turn-angle", turn.angleWords()),
                            time(turn, judgement.point())));
        }
        return new Section.Table(
                "turning",
                "Hands off at lift-off",
                List.of("axis", "turning-acceleration", "turns-towards", "turn-angle", "turn-time"),
                rows);
    }

    /** Angular acceleration as declared, rad/s². */
    static double rateRadps2(Turn turn, HoverPoint point) {
        return Rounding.off(turn.of(point.ledger().acceleration()), Rounding.RADPS2);
    }

    static Band rateBand(Turn turn, BalanceJudgement judgement) {
        return Rounding.off(
                Bands.about(
                        turn.of(judgement.point().ledger().acceleration()),
                        judgement.sample().accelerations(turn, judgement.draws())),
                Rounding.RADPS2);
    }

    /** Time to the angle of a turn; momentum drag damps yaw. */
    static double timeS(Turn turn, HoverPoint point) {
        double damping =
                switch (turn) {
                    case ROLL, PITCH -> 0;
                    case YAW -> point.yawDampingPerS();
                };
        return Turning.timeS(rateRadps2(turn, point), damping, turn.angleRad());
    }

    private static Value time(Turn turn, HoverPoint point) {
        double seconds = timeS(turn, point);
        return seconds < Double.POSITIVE_INFINITY
                ? Value.of("turn-time", seconds)
                : new Value("turn-time", new Value.Figure.Never());
    }

    /** One axis: the causes that add something, in their order, and the sum of all. */
    static Section ledger(Turn turn, BalanceJudgement judgement) {
        List<List<Value>> rows = new ArrayList<>();
        BalanceSample sample = judgement.sample();
        int draws = judgement.draws();
        double none = Rounding.momentNm(judgement.point().mass().weightN());
        for (TurningCause cause : TurningCause.values()) {
            double nm = Rounding.off(turn.of(judgement.point().ledger().of(cause)), none);
            Band band = Rounding.off(Bands.about(nm, sample.shares(turn, cause, draws)), none);
            if (nm != 0 || band.width() > 0) {
                rows.add(
                        List.of(
                                Value.words("turning-cause", words(cause)),
                                Value.of(turn.momentField(), nm, Bands.shown(band))));
            }
        }
        double all = Rounding.off(turn.of(judgement.point().ledger().moment()), none);
        rows.add(
                List.of(
                        Value.words("turning-cause", "all of them"),
                        Value.of(
                                turn.momentField(),
                                all,
                                Bands.shown(
                                        Rounding.off(
                                                Bands.about(all, sample.moments(turn, draws)),
                                                none)))));
        return new Section.Table(
                turn.word() + "-ledger",
                "Why it " + turn.verb() + " (positive " + turn.seen(1) + ")",
                List.of("turning-cause", turn.momentField()),
                rows);
    }

    static String words(TurningCause cause) {
        return switch (cause) {
            case PLACE -> "place of the fans";
            case THRUST_MISMATCH -> "unlike thrusts";
            case ARM_ANGLE -> "angle of the arms";
            case CANT -> "cant";
            case SEAT_ANGLE -> "seats of the fans";
            case MOUNT_ANGLE -> "tilt of mounts";
            case MOUNT_TWIST -> "twist of mounts";
            case FRAME_SLOPE -> "bending of beams";
            case SWIRL -> "swirl";
            case JETS -> "jets on limbs and structure";
        };
    }

    static Section fans(HoverPoint point) {
        List<List<Value>> rows = new ArrayList<>();
        double none = Rounding.momentNm(point.mass().weightN());
        for (FanAtWork fan : point.ledger().fans()) {
            List<Value> row = new ArrayList<>();
            row.add(Value.words("part", fan.id().text()));
            row.add(Value.of("fan-thrust-at-lift-off", fan.thrustN()));
            for (Turn turn : Turn.values()) {
                row.add(Value.of(turn.momentField(), Rounding.off(turn.of(fan.moment()), none)));
            }
            row.add(
                    Value.of(
                            "swirl-moment",
                            Rounding.off(Turn.YAW.of(fan.share(TurningCause.SWIRL)), none)));
            rows.add(row);
        }
        return new Section.Table(
                "fan-moments",
                "Fan by fan at lift-off",
                List.of(
                        "part",
                        "fan-thrust-at-lift-off",
                        "roll-moment",
                        "pitch-moment",
                        "yaw-moment",
                        "swirl-moment"),
                rows);
    }

    /** How far mounts on beams give; empty where none is on one. */
    static Optional<Section> gives(HoverPoint point) {
        if (point.gives().isEmpty()) {
            return Optional.empty();
        }
        List<List<Value>> rows = new ArrayList<>();
        for (Beams.Give give : point.gives()) {
            rows.add(
                    List.of(
                            Value.words("mount", give.mount()),
                            Value.of("mount-twist", Math.abs(give.twistRad())),
                            Value.of("mount-slope", give.slopeRad())));
        }
        return Optional.of(
                new Section.Table(
                        "mount-gives",
                        "How far mounts give at lift-off",
                        List.of("mount", "mount-twist", "mount-slope"),
                        rows));
    }

    static Section mass(MassProperties mass) {
        return new Section.Table(
                "mass-properties",
                "Mass, centre and inertia of the whole",
                List.of(
                        "mass",
                        "centre-forward",
                        "centre-right",
                        "centre-up",
                        "roll-inertia",
                        "pitch-inertia",
                        "yaw-inertia"),
                List.of(
                        List.of(
                                Value.of("mass", mass.massKg()),
                                Value.of(
                                        "centre-forward",
                                        Rounding.off(mass.centre().x(), Rounding.M)),
                                Value.of(
                                        "centre-right",
                                        Rounding.off(mass.centre().y(), Rounding.M)),
                                Value.of("centre-up", Rounding.off(-mass.centre().z(), Rounding.M)),
                                Value.of("roll-inertia", mass.inertia().xx()),
                                Value.of("pitch-inertia", mass.inertia().yy()),
                                Value.of("yaw-inertia", mass.inertia().zz()))));
    }

    /** The wearer alone: what the table of segments or the readings give, and how well. */
    static Section wearer(MassProperties person, BalanceJudgement judgement) {
        double[] values = BalanceSample.wearerValues(person);
        String[] fields = {
            "wearer-centre", "wearer-roll-inertia", "wearer-pitch-inertia", "wearer-yaw-inertia"
        };
        List<Value> row = new ArrayList<>();
        for (int k = 0; k < values.length; k++) {
            Band band = Bands.about(values[k], judgement.sample().wearers(k, judgement.draws()));
            row.add(
                    band.width() > Rounding.M // nothing in doubt reaches it
                            ? Value.of(fields[k], values[k], band)
                            : Value.of(fields[k], values[k]));
        }
        return new Section.Table(
                "wearer",
                "The wearer alone, standing with hanging arms",
                List.of(fields),
                List.of(row));
    }

    /** Joint angles that cancel the moments, from where the arms are held. */
    static Section arms(ArmTrim trim) {
        List<List<Value>> rows = new ArrayList<>();
        for (int joint = 0; joint < JOINTS.length; joint++) {
            rows.add(
                    List.of(
                            Value.words("joint", JOINTS[joint]),
                            Value.of("joint-turn", trim.turnRad().get(joint))));
        }
        return new Section.Table(
                "arm-trim",
                "Least turn of the arms that cancels it",
                List.of("joint", "joint-turn"),
                rows);
    }

    static Section reserves(Allocation can, HoverPoint point, Limits limits) {
        List<List<Value>> rows = new ArrayList<>();
        for (Turn turn : Turn.values()) {
            rows.add(
                    List.of(
                            Value.words("axis", turn.word()),
                            reserve(can, point, turn, 1),
                            reserve(can, point, turn, -1),
                            Value.of("reserve-asked", limits.si(Steering.asked(turn)))));
        }
        return new Section.Table(
                "reserves",
                "What the flight computer has left at weight, other moments zero",
                List.of("axis", "reserve-positive", "reserve-negative", "reserve-asked"),
                rows);
    }

    private static Value reserve(Allocation can, HoverPoint point, Turn turn, int sign) {
        String field = sign > 0 ? "reserve-positive" : "reserve-negative";
        Optional<Double> reserve = Steering.reserveRadps2(can, point, turn, sign);
        return reserve.map(rate -> Value.of(field, rate))
                .orElseGet(
                        () ->
                                new Value(
                                        field,
                                        new Value.Figure.NotComputed(
                                                "no trim holds weight and the other axes")));
    }

    static Section trims(Allocation can, HoverPoint point) {
        List<List<Value>> rows = new ArrayList<>();
        for (boolean held : new boolean[] {true, false}) {
            Optional<Allocation.Trim> trim = can.greatestLift(held);
            rows.add(
                    List.of(
                            Value.words("yaw-trim", held ? "yaw held to zero" : "yaw free"),
                            Value.of("trim-lift", trim.map(Allocation.Trim::liftN).orElse(0.0)),
                            Value.of(
                                    "trim-lift-to-weight",
                                    trim.map(Allocation.Trim::liftN).orElse(0.0)
                                            / point.mass().weightN()),
                            Value.of(
                                    "trim-yaw",
                                    Rounding.off(
                                            trim.map(Allocation.Trim::yawNm).orElse(0.0)
                                                    / point.mass().inertia().zz(),
                                            Rounding.RADPS2))));
        }
        return new Section.Table(
                "trims",
                "Most lift without roll and pitch",
                List.of("yaw-trim", "trim-lift", "trim-lift-to-weight", "trim-yaw"),
                rows);
    }

    static Section authority(Allocation can) {
        return new Section.Table(
                "authority",
                "Distance of hover from the edge of what the fans can do",
                List.of("authority-index", "authority-arm"),
                List.of(
                        List.of(
                                Value.of("authority-index", can.authorityN()),
                                Value.of("authority-arm", can.armM()))));
    }
}

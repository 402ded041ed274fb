package liftwright.review.kill;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import liftwright.answer.Finding;
import liftwright.answer.Finding.Severity;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.quantity.Measure;
import liftwright.quantity.Quantity;
import liftwright.rig.Control;
import liftwright.rig.Fan;
import liftwright.rig.FanType;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;
import liftwright.rig.Supplies;

/** What the throttle does when its signal is lost or frozen, and how it may be made live. */
final class ThrottleLink {

    /** After which time a lost signal should have acted, s. */
    static final double LOSS_S = 0.3;

    /** Throttle above which a rig should not become live. */
    static final double LIVE_BELOW = 0.03;

    /** Fastest rise of the throttle of a rig that somebody wears, 1/s. */
    static final double RISE_WORN_PER_S = 0.5;

    /** The same on a bench, 1/s. */
    static final double RISE_BENCH_PER_S = 1;

    private static final String ORIGIN = "common practice";
    private static final RigPath CONTROL = RigPath.of("control");

    private final Rig rig;
    private final Control control;

    ThrottleLink(Rig rig) {
        this.rig = rig;
        control = rig.control();
    }

    List<Finding> findings() {
        List<Finding> findings = new ArrayList<>();
        linkLoss().ifPresent(findings::add);
        lossTime().ifPresent(findings::add);
        rise().ifPresent(findings::add);
        liveBelow().ifPresent(findings::add);
        holding().ifPresent(findings::add);
        brownOut().ifPresent(findings::add);
        undeclared().ifPresent(findings::add);
        return findings;
    }

    private Optional<Finding> linkLoss() {
        if (!rig.isDeclared(CONTROL.child("link loss"))) {
            return Optional.of(
                    Alarm.of(
                            Severity.WARNS,
                            "link-loss-not-declared",
                            "control",
                            CONTROL.child("link loss"),
                            Sentence.words(
                                    "what a lost or frozen throttle signal does is not declared:"
                                            + " taken as the worst, the last throttle stays"),
                            "write “link loss” as it was tested, with the transmitter switched"
                                    + " off"));
        }
        return switch (control.linkLoss()) {
            case CUT, LOWER -> Optional.empty();
            case HOLD ->
                    Optional.of(
                            Alarm.of(
                                    Alarm.grave(rig),
                                    "link-loss-holds",
                                    "control",
                                    CONTROL.child("link loss"),
                                    Sentence.words(
                                            "a lost or frozen throttle signal leaves the last"
                                                    + " throttle on"),
                                    "nothing but a kill ends such a flight: let a lost signal cut"
                                            + " or lower"));
        };
    }

    private Optional<Finding> lossTime() {
        double time = control.lossTime().si();
        return time <= LOSS_S
                ? Optional.empty()
                : Optional.of(
                        above(
                                "link-loss-late",
                                "loss time",
                                Sentence.words("a throttle signal counts as lost only after ")
                                        .then(Measure.TIME, time),
                                Measure.TIME,
                                "loss-time",
                                time,
                                LOSS_S,
                                "until then the last throttle stays"));
    }

    private Optional<Finding> rise() {
        double most = rig.wearer().isPresent() ? RISE_WORN_PER_S : RISE_BENCH_PER_S;
        return control.rise()
                .map(Quantity::si)
                .filter(rise -> rise > most)
                .map(
                        rise ->
                                above(
                                        "throttle-rises-fast",
                                        "rise",
                                        Sentence.words("throttle may rise by ")
                                                .then(Measure.PERCENT, rise)
                                                .then(" a second"),
                                        Measure.PERCENT,
                                        "throttle-rise",
                                        rise,
                                        most,
                                        "a jerk of the hand becomes a jump before anybody reacts"));
    }

    private Optional<Finding> liveBelow() {
        return control.liveBelow()
                .map(Quantity::si)
                .filter(below -> below > LIVE_BELOW)
                .map(
                        below ->
                                above(
                                        "live-above-idle",
                                        "live below",
                                        Sentence.words(
                                                        "the rig can be made live with the throttle"
                                                                + " at up to ")
                                                .then(Measure.PERCENT, below),
                                        Measure.PERCENT,
                                        "live-below",
                                        below,
                                        LIVE_BELOW,
                                        "fans that start when packs are joined hurt hands"));
    }

    private static Finding above(
            String code,
            String key,
            Sentence sentence,
            Measure measure,
            String field,
            double value,
            double limit,
            String cause) {
        return Alarm.of(
                Severity.WARNS,
                code,
                "control",
                CONTROL.child(key),
                sentence.then(", above ").then(measure, limit),
                Value.of(field, value),
                new Finding.Limit(Value.of(field, limit), ORIGIN),
                cause);
    }

    /** A broken wire to one controller is a lost signal that no receiver knows of. */
    private Optional<Finding> holding() {
        return rig.fans().stream()
                .map(Fan::type)
                .filter(
                        type ->
                                type.controller().misbehaviour().signalLoss()
                                        == FanType.SignalLoss.HOLD)
                .findFirst()
                .map(
                        type ->
                                Alarm.of(
                                        Alarm.grave(rig),
                                        "controller-holds",
                                        type.name(),
                                        RigPath.of(
                                                "fan types",
                                                type.name(),
                                                "controller",
                                                "signal loss"),
                                        Sentence.words(
                                                "the controller of "
                                                        + type.name()
                                                        + " goes on at its last throttle without a"
                                                        + " signal"),
                                        "a wire that breaks on its way cannot be commanded to"
                                                + " zero"));
    }

    private Optional<Finding> brownOut() {
        return control.fedBy()
                .filter(supply -> !Supplies.isBattery(supply))
                .map(
                        pack ->
                                Alarm.of(
                                        Severity.WARNS,
                                        "control-on-one-pack",
                                        pack,
                                        CONTROL.child("fed by"),
                                        Sentence.words(
                                                "pack "
                                                        + pack
                                                        + " feeds receiver and computer: when it is"
                                                        + " lost, or sags under its fans, every fan"
                                                        + " loses its signal"),
                                        "a battery of their own, or two packs through diodes, rides"
                                                + " it out"));
    }

    private Optional<Finding> undeclared() {
        List<String> missing = new ArrayList<>();
        if (control.rise().isEmpty()) {
            missing.add("“rise”");
        }
        if (control.liveBelow().isEmpty()) {
            missing.add("“live below”");
        }
        if (control.stop().isEmpty()) {
            missing.add("“stop”");
        }
        if (control.fedBy().isEmpty()) {
            missing.add("“fed by”");
        }
        if (missing.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                Alarm.of(
                        Severity.NOTES,
                        "throttle-not-told",
                        "control",
                        CONTROL,
                        Sentence.words("of the throttle nobody said " + Alarm.list(missing)),
                        "what is not declared is not judged"));
    }
}

package liftwright.review;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import liftwright.answer.Finding;
import liftwright.answer.Finding.Severity;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.plant.HoverPoint;
import liftwright.plant.balance.FanAtWork;
import liftwright.plant.balance.TurningCause;
import liftwright.quantity.Band;
import liftwright.quantity.Measure;
import liftwright.rig.LimitName;
import liftwright.rig.Limits;
import liftwright.rig.Rig;
import liftwright.rig.Vec3;

/** What the builder should know of a rig's balance, beside the verdict. */
final class BalanceFindings {

    /** Sideways force worth saying, over weight. */
    private static final double PUSH_SHARE = 0.01;

    private BalanceFindings() {}

    static List<Finding> of(Rig rig, BalanceJudgement judgement) {
        List<Finding> findings = new ArrayList<>();
        HoverPoint point = judgement.point();
        if (!point.lifts()) {
            findings.add(neverLifts());
        } else {
            if (judgement.sample().heavy(judgement.draws()) > 0) {
                findings.add(seldomLifts(judgement));
            }
            for (Turn turn : Turn.values()) {
                findings.add(turns(turn, judgement, rig.limits()));
            }
            push(point).ifPresent(findings::add);
            findings.add(noPendulum(point));
        }
        findings.addAll(FanClaims.findings(rig));
        return findings;
    }

    private static Finding neverLifts() {
        return plain(
                Severity.STOPS,
                "never-lifts-off",
                Sentence.words("full throttle does not give the weight: it never lifts off"),
                "see the question of lift; what follows is told at full throttle");
    }

    private static Finding seldomLifts(BalanceJudgement judgement) {
        return plain(
                Severity.WARNS,
                "may-not-lift-off",
                Sentence.words(
                        String.format(
                                Locale.ROOT,
                                "full throttle does not give the weight in %d of %d draws",
                                judgement.sample().heavy(judgement.draws()),
                                judgement.draws())),
                "those draws count as having nothing left");
    }

    private static Finding plain(Severity severity, String code, Sentence sentence, String cause) {
        return Finding.of(severity, code, sentence, cause);
    }

    /** Warns where the whole band turns one way and faster than drift. */
    private static Finding turns(Turn turn, BalanceJudgement judgement, Limits limits) {
        HoverPoint point = judgement.point();
        double rate = BalanceTables.rateRadps2(turn, point);
        Band band = BalanceTables.rateBand(turn, judgement);
        double drift = limits.si(LimitName.DRIFT);
        boolean oneWay = band.low() > drift || band.high() < -drift;
        double seconds = BalanceTables.timeS(turn, point);
        Sentence sentence;
        if (rate == 0) {
            String nothing = "hands off nothing " + turn.verb() + " it as declared";
            sentence =
                    judgement.draws() == 0
                            ? Sentence.words(nothing)
                            : Sentence.words(nothing + "; within the doubt it could with up to ")
                                    .then(
                                            Measure.ANGULAR_ACCELERATION,
                                            Math.max(band.high(), -band.low()));
        } else {
            sentence =
                    Sentence.words("hands off it " + turn.seen(rate) + " with ")
                            .then(
                                    Measure.ANGULAR_ACCELERATION,
                                    Math.abs(rate),
                                    Bands.shown(rate < 0 ? Rounding.turned(band) : band))
                            .then(": " + turn.angleWords() + " in ")
                            .then(Measure.TIME, seconds);
        }
        return Finding.of(
                        oneWay ? Severity.WARNS : Severity.NOTES,
                        "turns-" + turn.word(),
                        sentence,
                        causes(turn, judgement))
                .judging(Value.of("turning-acceleration", rate, Bands.shown(band)));
    }

    /** The three causes that reach furthest, and the fan that adds most. */
    private static String causes(Turn turn, BalanceJudgement judgement) {
        record Reach(TurningCause cause, double nm) {}
        List<Reach> reaches = new ArrayList<>();
        for (TurningCause cause : TurningCause.values()) {
            Band band =
                    Bands.about(
                            turn.of(judgement.point().ledger().of(cause)),
                            judgement.sample().shares(turn, cause, judgement.draws()));
            reaches.add(new Reach(cause, Math.max(Math.abs(band.low()), Math.abs(band.high()))));
        }
        reaches.sort(Comparator.comparingDouble(Reach::nm).reversed());
        String words =
                String.join(
                        ", then ",
                        reaches.stream()
                                .limit(3)
                                .map(reach -> BalanceTables.words(reach.cause))
                                .toList());
        double whole = turn.of(judgement.point().ledger().moment());
        return judgement.point().ledger().fans().stream()
                .max(
                        Comparator.comparingDouble(
                                (FanAtWork fan) -> Math.signum(whole) * turn.of(fan.moment())))
                .map(
                        fan ->
                                "what matters most: "
                                        + words
                                        + "; the fan that adds most is "
                                        + fan.id())
                .orElse("what matters most: " + words);
    }

    private static Optional<Finding> push(HoverPoint point) {
        Vec3 force = point.ledger().force();
        double sideways = Math.hypot(force.x(), force.y());
        if (sideways < PUSH_SHARE * point.mass().weightN()) {
            return Optional.empty();
        }
        boolean along = Math.abs(force.x()) >= Math.abs(force.y());
        String way =
                along
                        ? force.x() > 0 ? "forward" : "back"
                        : force.y() > 0 ? "to the right" : "to the left";
        return Optional.of(
                plain(
                        Severity.NOTES,
                        "pushes-sideways",
                        Sentence.words("the fans push it " + way + " with ")
                                .then(Measure.THRUST, sideways)
                                .then(" at lift-off"),
                        "their thrusts do not all point up, and what does not cancel pushes"));
    }

    private static Finding noPendulum(HoverPoint point) {
        double lifted = 0;
        double high = 0;
        for (FanAtWork fan : point.ledger().fans()) {
            lifted += -fan.force().z();
            high += -fan.force().z() * -fan.arm().z();
        }
        double aboveM = lifted == 0 ? 0 : high / lifted;
        return plain(
                Severity.NOTES,
                "no-pendulum",
                Sentence.words("the lift acts ")
                        .then(Measure.SMALL_LENGTH, Math.abs(aboveM))
                        .then(aboveM < 0 ? " below" : " above")
                        .then(" the centre of mass, which steadies nothing"),
                "thrust turns with the rig: its height gives no pendulum, whichever way");
    }
}

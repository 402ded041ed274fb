package liftwright.review.restraint;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import liftwright.answer.Finding;
import liftwright.answer.Finding.Severity;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.physics.Gravity;
import liftwright.plant.hold.Ask;
import liftwright.plant.hold.Held;
import liftwright.plant.hold.TetherHold;
import liftwright.plant.hold.TetherNumbers;
import liftwright.plant.motion.RunawayPath;
import liftwright.plant.motion.Strike;
import liftwright.quantity.Measure;
import liftwright.rig.LimitName;
import liftwright.rig.Rig;

/** What gives, what is met and what was not declared. */
public final class HoldFindings {

    private final Rig rig;
    private final Held held;
    private final Optional<String> kill;

    private HoldFindings(Rig rig, Held held, Optional<String> kill) {
        this.rig = rig;
        this.held = held;
        this.kill = kill;
    }

    /**
     * All findings but the verdict's own.
     *
     * @param kill what stops a runaway
     * @param struck the runaway with what is overhead in its way, under a tether
     */
    public static List<Finding> of(
            Rig rig, Held held, Optional<String> kill, Optional<RunawayPath> struck) {
        var all = new HoldFindings(rig, held, kill);
        List<Finding> findings = new ArrayList<>();
        for (Ask ask : held.asks()) {
            all.asked(ask).ifPresent(findings::add);
        }
        held.tether().ifPresent(on -> all.tether(on, struck, findings));
        return findings;
    }

    private Optional<Finding> asked(Ask ask) {
        if (ask.margin().isEmpty()) {
            return Optional.of(undeclared(ask));
        }
        double margin = ask.margin().getAsDouble();
        if (margin >= 0 || ask.what() == Ask.What.HEADROOM) {
            return Optional.empty();
        }
        return Optional.of(
                Finding.of(
                                Severity.STOPS,
                                code(ask),
                                Sentence.words(
                                                HoldWords.name(ask)
                                                        + " under "
                                                        + HoldWords.under(rig, ask, kill)
                                                        + ": ")
                                        .then(HoldWords.told(ask)),
                                cause(ask.what()))
                        .at(HoldWords.path(ask.what()))
                        .against(
                                Value.of(HoldWords.field(ask.what().unit()), ask.load()),
                                new Finding.Limit(HoldWords.limitValue(ask), origin(ask.what()))));
    }

    private static String code(Ask ask) {
        return "hold-" + ask.what().name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
    }

    private String origin(Ask.What what) {
        return switch (what) {
            case SLIDES,
                    TURNS,
                    TIPS,
                    BOLT_PULLED,
                    BOLT_SHEARED,
                    BOLT_BOTH,
                    LINE,
                    DOWN_LINE,
                    GANTRY_TIPS,
                    GANTRY_SLIDES ->
                    rig.limits().origin(LimitName.RESTRAINT_FACTOR);
            case ANCHOR -> rig.limits().origin(LimitName.ANCHOR);
            case ARREST -> rig.limits().origin(LimitName.ARREST_FORCE);
            case FREE_FALL -> rig.limits().origin(LimitName.FREE_FALL);
            case LANDING -> rig.limits().origin(LimitName.IMPACT_SPEED);
            case HEADROOM, CLEARANCE, INGESTION, SIDE_REACH -> "declared in the rig file";
        };
    }

    private static String cause(Ask.What what) {
        return switch (what) {
            case SLIDES, GANTRY_SLIDES -> "friction holds what weight the pull leaves on the floor";
            case TURNS ->
                    "the fans turn about the upright, and friction at the feet is all that holds";
            case TIPS, GANTRY_TIPS -> "its weight has too short a lever to the edge of the feet";
            case BOLT_PULLED, BOLT_SHEARED, BOLT_BOTH ->
                    "bolts share the moment by their distance from the edge";
            case HEADROOM -> "a tether overhead does not stop a climb";
            case ANCHOR, LINE, ARREST -> "a stiff line stops a fall in a short way";
            case FREE_FALL -> "the line is slack at the top of the climb";
            case CLEARANCE -> "the line stretches more than there is room below the soles";
            case LANDING -> "the line is too long to catch the fall before the ground";
            case DOWN_LINE -> "down-lines stop a climb that has gained speed";
            case INGESTION -> "a slack line can go wherever anchor, ring and its length let it";
            case SIDE_REACH -> "the rig can go as far to the side as the line lets it";
        };
    }

    private static Finding undeclared(Ask ask) {
        String key = HoldWords.key(ask.what()).orElse(HoldWords.path(ask.what()));
        return Finding.of(
                        Severity.STOPS,
                        "not-declared",
                        Sentence.words(HoldWords.name(ask) + " is loaded with ")
                                .then(HoldWords.told(ask)),
                        "declare “" + key + "”: what a maker or a test says that it bears")
                .at(key);
    }

    private void tether(Held.OnTether on, Optional<RunawayPath> struck, List<Finding> findings) {
        struck.flatMap(RunawayPath::strike).ifPresent(strike -> findings.add(strike(on, strike)));
        if (on.line().down().isEmpty()) {
            findings.add(
                    Finding.of(
                                    Severity.WARNS,
                                    "no-down-lines",
                                    Sentence.words("nothing holds a climb: soles at ")
                                            .then(Measure.LENGTH, on.ran().apexM())
                                            .then(" in a runaway, were there nothing overhead"),
                                    "a line from above only stops a fall; lines to the ground stop a climb")
                            .at("restraint/tether")
                            .judging(Value.of("apex", on.ran().apexM())));
        }
        if (rig.wearer().isPresent() && on.line().straightM() > 0) {
            gettingDown(findings);
        }
        slack(on, findings);
    }

    private Finding strike(Held.OnTether on, Strike strike) {
        return Finding.of(
                        Severity.STOPS,
                        "upward-strike",
                        Sentence.words("a runaway strikes what is overhead, at ")
                                .then(Measure.LENGTH, on.line().overheadM())
                                .then(", with ")
                                .then(Measure.SPEED, strike.speedMps())
                                .then(" after ")
                                .then(Measure.TIME, strike.timeS())
                                .then(
                                        " ("
                                                + kill.map(id -> "stopped by " + id)
                                                        .orElse("nothing stops it")
                                                + ")"),
                        "a tether overhead does not stop a climb; down-lines or more head room do")
                .at("restraint/tether")
                .judging(Value.of("strike-speed", strike.speedMps()));
    }

    private void gettingDown(List<Finding> findings) {
        Optional<String> how = rig.restraint().tether().flatMap(tether -> tether.gettingDown());
        if (how.isEmpty()) {
            findings.add(
                    Finding.of(
                                    Severity.STOPS,
                                    "getting-down",
                                    Sentence.words(
                                            "the line can leave the wearer hanging, and how they get down is not declared"),
                                    "a person who hangs still in a harness can faint within minutes; declare"
                                            + " “getting down”, and try it with the rig dead")
                            .at("restraint/tether"));
        }
    }

    /** How far a loop hangs down at the top of a runaway, whatever covers the intakes. */
    private void slack(Held.OnTether on, List<Finding> findings) {
        TetherNumbers line = on.line();
        double ringM = line.ringM() + on.ran().apexM();
        double slackM = line.lengthM() - Math.abs(line.anchorM() - ringM);
        if (slackM > 0 && on.ran().apexM() > line.straightM()) {
            findings.add(
                    Finding.of(
                                    Severity.NOTES,
                                    "slack-line",
                                    Sentence.words("at the top of a runaway a loop of ")
                                            .then(Measure.LENGTH, slackM)
                                            .then(" hangs loose, and falls ")
                                            .then(
                                                    Measure.LENGTH,
                                                    TetherHold.freeFallM(line, on.ran()))
                                            .then(" tighten it again"),
                                    "keep the line out of the rotors: a sleeve, a weight on the loop, or a"
                                            + " take-up; a pull of "
                                            + Math.round(held.massKg() * Gravity.STANDARD_MPS2 / 10)
                                                    * 10
                                            + " N is what hangs on it at rest")
                            .at("restraint/tether/length")
                            .judging(Value.of("hold-length", slackM)));
        }
    }
}

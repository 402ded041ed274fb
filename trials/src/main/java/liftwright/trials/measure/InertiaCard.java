package liftwright.trials.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.physics.Gravity;
import liftwright.physics.Swing;
import liftwright.plant.body.MassLedger;
import liftwright.plant.body.Pose;
import liftwright.quantity.Measure;
import liftwright.rig.OtherPart;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;
import liftwright.trials.Channel.Instrument;

/**
 * Moments of inertia from a twist between two cords ({@link Swing#twoCordsKgm2}): upright cords of
 * equal length, the centre of mass midway between them, one axis of the body plumb. Two cords and
 * not a pivot, since a pivot gives the inertia as the difference of two like numbers.
 */
final class InertiaCard {

    static final double CORDS_M = 2;
    static final double CORDS_DOUBT_M = 0.005;
    static final double APART_DOUBT_M = 0.002;
    static final int SWINGS = 20;

    private static final double STEP_M = 0.05;

    /** Less than a radius of gyration of a millimetre is a point. */
    private static final double LEAST_M2 = 1e-6;

    /** Air that swings along makes it slower, an amplitude up to 10° by 0.2 % too. */
    private static final Doubts.LeftOut AIR =
            new Doubts.LeftOut(
                    0.002,
                    0.01,
                    "air that is carried along, and swings of up to 10° to each side, which are 0.2"
                            + " % slower; common practice");

    private static final Instrument TAPE =
            new Instrument(
                    "tape, for length and distance of the cords", 0.005, 0, "common practice");

    private record Hung(
            Bodies.Body body, Axis axis, int cords, int apart, double apartM, double kgm2) {}

    private final Asked asked;
    private final Rig rig;
    private final Doubts doubts = new Doubts("inertia");
    private final Sheet sheet;
    private final List<Bodies.Body> bodies = new ArrayList<>();
    private final List<Hung> hung = new ArrayList<>();
    private final List<Wanted> wanted = new ArrayList<>();

    InertiaCard(Asked asked) {
        this.asked = asked;
        rig = asked.rig();
        sheet = new Sheet(asked);
    }

    Optional<Measured> content() {
        Pose pose = Pose.declare(rig, doubts.rows());
        MassLedger ledger = MassLedger.declare(rig, pose, doubts.rows());
        for (Bodies.Body body : Bodies.of(rig, pose, ledger)) {
            body(body);
        }
        found();
        words();
        sheet.leftOut(wanted);
        return Predicted.of(asked, doubts, wanted, Predicted.DRAWS, () -> this::at)
                .map(sheet::done);
    }

    private void at(double[] p, double[] out) {
        List<Bodies.Solid> now = bodies.stream().map(body -> body.solid().apply(p)).toList();
        for (int k = 0; k < hung.size(); k++) {
            Hung one = hung.get(k);
            Bodies.Solid solid = now.get(bodies.indexOf(one.body));
            out[k] =
                    SWINGS
                            * Swing.twoCordsSwingS(
                                    solid.massKg(),
                                    p[one.cords],
                                    p[one.apart],
                                    one.axis.about(solid.inertia()));
        }
    }

    private void body(Bodies.Body body) {
        Bodies.Solid solid = body.solid().apply(doubts.rows().table().nominal());
        if (!(solid.massKg() > 0)) {
            return;
        }
        bodies.add(body);
        for (Axis axis : Axis.values()) {
            double kgm2 = axis.about(solid.inertia());
            if (!(kgm2 > LEAST_M2 * solid.massKg())) {
                sheet.note(
                        body.words()
                                + ": nothing declared has an extent about "
                                + axis.word()
                                + "; give parts their box");
                continue;
            }
            String where = body.words() + ", about " + axis.word() + " (" + axis.turn() + ")";
            double apartM = apartM(solid.massKg(), kgm2);
            hung.add(
                    new Hung(
                            body,
                            axis,
                            doubts.setUp(where + ", cords", CORDS_M, CORDS_DOUBT_M),
                            doubts.setUp(where + ", apart", apartM, APART_DOUBT_M),
                            apartM,
                            kgm2));
            wanted.add(
                    Wanted.of(
                            where + ": time of " + SWINGS + " swings",
                            Measure.TIME,
                            Instruments.STOPWATCH,
                            AIR));
        }
    }

    /**
     * Twice the radius of gyration, to 50 mm: it then swings as a weight on a cord of that length,
     * slowly enough for a hand.
     */
    static double apartM(double massKg, double kgm2) {
        return Math.max(2 * STEP_M, STEP_M * Math.round(2 * Math.sqrt(kgm2 / massKg) / STEP_M));
    }

    private void found() {
        List<List<Value>> rows = new ArrayList<>();
        double[] time = new double[wanted.size()];
        at(doubts.rows().table().nominal(), time);
        for (int k = 0; k < hung.size(); k++) {
            Hung one = hung.get(k);
            double kg = one.body.solid().apply(doubts.rows().table().nominal()).massKg();
            rows.add(
                    List.of(
                            Value.words(
                                    "measuring-what", one.body.words() + ", " + one.axis.turn()),
                            Value.of("inertia-expected", one.kgm2),
                            Value.of("cords-long", CORDS_M),
                            Value.of("cords-apart", one.apartM),
                            Value.of(
                                    "inertia-worth",
                                    Sheet.rounded(worthShare(time[k], one.apartM, kg))),
                            Value.of(
                                    "inertia-a-second",
                                    kg
                                            * Gravity.STANDARD_MPS2
                                            * one.apartM
                                            * one.apartM
                                            / (16 * Math.PI * Math.PI * CORDS_M)
                                            / (SWINGS * SWINGS))));
        }
        sheet.table(
                "cords",
                "How it hangs, and what the time is worth",
                List.of(
                        "measuring-what",
                        "inertia-expected",
                        "cords-long",
                        "cords-apart",
                        "inertia-worth",
                        "inertia-a-second"),
                rows);
    }

    /**
     * Share by which the inertia is in doubt: it goes with the square of time and distance, with
     * mass, and inversely with the length of the cords (JCGM 100, 5.1.2).
     *
     * @param timeS of all swings together
     */
    static double worthShare(double timeS, double apartM, double massKg) {
        double time = 2 * Instruments.STOPWATCH.errorSi() / timeS;
        double apart = 2 * APART_DOUBT_M / apartM;
        double cords = CORDS_DOUBT_M / CORDS_M;
        double mass = Predicted.halfWidth(Instruments.RIG_SCALE, massKg) / massKg;
        return Math.hypot(Math.hypot(time, apart), Math.hypot(cords, mass));
    }

    private void words() {
        sheet.tool(TAPE, Measure.LENGTH);
        sheet.tool(Instruments.RIG_SCALE, Measure.MASS);
        sheet.step(
                "Packs in but dead: leads out, contactors open. What hangs can fall: two rated"
                        + " points, slings that cannot slip, nobody beneath, a mat under it.");
        sheet.step(
                "Hang the body from two equal cords, plumb and as far apart as the table says, the"
                        + " centre of mass midway between them, the axis of the row plumb.");
        sheet.step(
                Sentence.words("Twist it by up to 10° and let go; it may not sway. Time ")
                        .then(SWINGS + " whole swings, there and back. Three times."));
        sheet.step(
                "Inertia = (last column) times the square of the time of all swings in seconds; a"
                        + " platform or spreader is timed by itself and taken off.");
        sheet.good("three times within the stopwatch’s error of each other");
        sheet.good("time inside its band; outside it a place, a mass or a box is not as declared");
        for (OtherPart part : rig.otherParts()) {
            sheet.write(part.declaredAt().child("box"), "box: [________, ________, ________]");
        }
        if (rig.wearer().isPresent()) {
            sheet.write(
                    RigPath.of("wearer", "measured", "yaw swing"),
                    "yaw swing: {cords: ________, apart: ________, time: ________, swings: ________}");
        }
        sheet.note(
                "I = m g D² T²/(16 π² L): mass m, distance D and length L of the cords, time T of one"
                        + " swing. Packs count as points, fans as disks, other parts as their box.");
        sheet.note(
                "The file has no key for the inertia of the rig: it follows from places, masses and"
                        + " boxes. That of the wearer has: see how to weigh and swing the wearer.");
    }
}

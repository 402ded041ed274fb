package liftwright.trials.measure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.physics.Swing;
import liftwright.plant.body.MassItem;
import liftwright.plant.body.MassLedger;
import liftwright.plant.body.Pose;
import liftwright.quantity.Measure;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;
import liftwright.rig.Vec3;
import liftwright.trials.Channel.Instrument;

/**
 * Centre of mass from two scales: a body lies level on two supports, and what each bears tells how
 * far along the centre is: m (b − c)/(b − a) on the support at a, the rest on that at b.
 */
final class CentreCard {

    /** Supports are laid to this, m. */
    private static final double LAID_M = 0.002;

    private static final double STEP_M = 0.05;

    /** How well a centre of mass should be known, m; common practice. */
    private static final double WANTED_M = 0.005;

    private static final Instrument TAPE =
            new Instrument("tape, to lay the supports", LAID_M, 0, "common practice");

    /** A body on scales along one axis. */
    private record Weighing(
            String words,
            Axis axis,
            int first,
            int second,
            double firstM,
            double secondM,
            Function<double[], Bodies.Solid> solid) {}

    private final Asked asked;
    private final Rig rig;
    private final Doubts doubts = new Doubts("centre");
    private final Pose pose;
    private final MassLedger ledger;
    private final Sheet sheet;
    private final List<Weighing> weighings = new ArrayList<>();
    private final List<Wanted> wanted = new ArrayList<>();
    private final List<Function<double[], Bodies.Solid>> solids = new ArrayList<>();

    CentreCard(Asked asked) {
        this.asked = asked;
        rig = asked.rig();
        pose = Pose.declare(rig, doubts.rows());
        ledger = MassLedger.declare(rig, pose, doubts.rows());
        sheet = new Sheet(asked);
    }

    Optional<Measured> content() {
        for (Bodies.Body body : Bodies.of(rig, pose, ledger)) {
            body(body);
        }
        if (rig.wearer().isPresent()) {
            worn();
        }
        found();
        words();
        return Predicted.of(asked, doubts, wanted, Predicted.DRAWS, () -> this::at)
                .map(sheet::done);
    }

    private void at(double[] p, double[] out) {
        List<Bodies.Solid> now = solids.stream().map(solid -> solid.apply(p)).toList();
        for (int k = 0; k < weighings.size(); k++) {
            Weighing one = weighings.get(k);
            Bodies.Solid solid = now.get(solids.indexOf(one.solid));
            double a = p[one.first];
            double b = p[one.second];
            double c = one.axis.along(solid.centre());
            out[2 * k] = solid.massKg() * (b - c) / (b - a);
            out[2 * k + 1] = solid.massKg() * (c - a) / (b - a);
        }
    }

    private void body(Bodies.Body body) {
        Bodies.Solid solid = body.solid().apply(doubts.rows().table().nominal());
        if (!(solid.massKg() > 0)) {
            sheet.note(body.words() + " has no declared mass");
            return;
        }
        solids.add(body.solid());
        for (Axis axis : Axis.values()) {
            weighing(body.words(), axis, solid, body.solid());
        }
        sheet.note("Places of " + body.words() + " are in " + body.axes() + ".");
        body.parts().stream()
                .sorted(Comparator.comparingDouble((Integer part) -> -kg(part)))
                .limit(3)
                .forEach(part -> sheet.write(place(part), "at: ________"));
    }

    /** The wearer in the rig stands on a board across two scales; nobody lies down in it. */
    private void worn() {
        Function<double[], Bodies.Solid> solid =
                p -> {
                    var mass = ledger.properties(p);
                    return new Bodies.Solid(
                            mass.massKg(),
                            mass.centre(),
                            mass.inertia(),
                            mass.items().stream().map(MassItem::at).toList());
                };
        solids.add(solid);
        Bodies.Solid nominal = solid.apply(doubts.rows().table().nominal());
        for (Axis axis : List.of(Axis.FORWARD, Axis.RIGHT)) {
            weighing("the wearer in the rig, on a board", axis, nominal, solid);
        }
        sheet.write(
                RigPath.of("wearer", "measured", "scales"),
                "scales: {feet: ________, hands: ________, apart: ________}");
    }

    private void weighing(
            String words, Axis axis, Bodies.Solid solid, Function<double[], Bodies.Solid> at) {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (Vec3 place : solid.places()) {
            least = Math.min(least, axis.along(place));
            most = Math.max(most, axis.along(place));
        }
        double a = STEP_M * (Math.floor(least / STEP_M) - 1);
        double b = STEP_M * (Math.ceil(most / STEP_M) + 1);
        String where = words + ", " + axis.word();
        weighings.add(
                new Weighing(
                        words,
                        axis,
                        doubts.setUp(where + ", first support", a, LAID_M),
                        doubts.setUp(where + ", second support", b, LAID_M),
                        a,
                        b,
                        at));
        wanted.add(Wanted.of(where + ": first scale", Measure.MASS, Instruments.SUPPORT_SCALE));
        wanted.add(Wanted.of(where + ": second scale", Measure.MASS, Instruments.SUPPORT_SCALE));
    }

    /** Where the supports are, and what the readings will be worth. */
    private void found() {
        double[] nominal = doubts.rows().table().nominal();
        double[] read = new double[wanted.size()];
        at(nominal, read);
        List<List<Value>> rows = new ArrayList<>();
        for (int k = 0; k < weighings.size(); k++) {
            Weighing one = weighings.get(k);
            double atFirst = read[2 * k];
            double atSecond = read[2 * k + 1];
            double apart = one.secondM - one.firstM;
            double centre = one.firstM + Swing.betweenScalesM(atFirst, atSecond, apart);
            rows.add(
                    List.of(
                            Value.words("measuring-what", one.words + ", " + one.axis.word()),
                            Value.of("support-first", one.firstM),
                            Value.of("support-second", one.secondM),
                            Value.of("centre-along", centre),
                            Value.of(
                                    "centre-worth",
                                    Sheet.rounded(worthM(atFirst, atSecond, apart)))));
        }
        sheet.table(
                "supports",
                "Where the supports lie, and where the centre should come out",
                List.of(
                        "measuring-what",
                        "support-first",
                        "support-second",
                        "centre-along",
                        "centre-worth"),
                rows);
    }

    /**
     * Doubt of c = a + (b − a) B/(A + B) by those of both scales and both supports (JCGM 100,
     * 5.1.2).
     */
    static double worthM(double atFirst, double atSecond, double apartM) {
        double sum = atFirst + atSecond;
        double first = Predicted.halfWidth(Instruments.SUPPORT_SCALE, atFirst);
        double second = Predicted.halfWidth(Instruments.SUPPORT_SCALE, atSecond);
        double scales = apartM / (sum * sum) * Math.hypot(atSecond * first, atFirst * second);
        double supports = LAID_M * Math.hypot(atFirst, atSecond) / sum;
        return Math.hypot(scales, supports);
    }

    private double kg(int part) {
        int packs = rig.fans().size();
        int others = packs + rig.packs().size();
        if (part < packs) {
            return rig.fans().get(part).type().mass().si();
        }
        if (part < others) {
            var pack = rig.packs().get(part - packs);
            return pack.mass()
                    .map(mass -> mass.si())
                    .orElse(pack.series() * pack.parallel() * pack.cell().mass().si());
        }
        return rig.otherParts().get(part - others).mass().si();
    }

    private RigPath place(int part) {
        int packs = rig.fans().size();
        int others = packs + rig.packs().size();
        if (part < packs) {
            return rig.fans().get(part).declaredAt().child("at");
        }
        if (part < others) {
            return rig.packs().get(part - packs).declaredAt().child("at");
        }
        return rig.otherParts().get(part - others).declaredAt().child("at");
    }

    private void words() {
        sheet.tool(TAPE, Measure.LENGTH);
        sheet.step(
                "Packs in, as for flight. Zero both scales with the supports on them: a rod or edge"
                        + " each, across the body.");
        sheet.step(
                "Lay the body level on both, the supports where the table says (measured along the"
                        + " axis from the origin of the body; forward, right and up count). Where"
                        + " yours must lie elsewhere, write where: the reading at one is what all"
                        + " weighs times the distance of the centre from the other over the distance"
                        + " of both.");
        sheet.step(
                "Forward and right as it is worn or flies; for up lay it on its back, so that up"
                        + " points along the bench. Nothing may swing: tie loose leads.");
        sheet.step("Read both. Turn the body end for end and read again; take the mean.");
        if (rig.wearer().isPresent()) {
            sheet.step(
                    "The wearer in the rig stands still on a stiff board across both scales, arms as"
                            + " for flight, a helper at each side. Packs dead, kills pulled.");
        }
        sheet.good(
                Sentence.words("centre found to ")
                        .then(Measure.SMALL_LENGTH, WANTED_M)
                        .then(" on each axis (default, common practice)"));
        sheet.good("both scales together read what the card of masses found");
        sheet.good("what turning end for end changes is less than what the table says it is worth");
        sheet.note(
                "The file has no key for the centre of the rig: it follows from places and masses of"
                        + " parts. Where it comes out elsewhere, measure the places of the heaviest"
                        + " again; that of the wearer goes under “measured”.");
    }
}

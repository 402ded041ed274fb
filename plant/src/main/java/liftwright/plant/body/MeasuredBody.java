package liftwright.plant.body;

import java.util.Optional;
import liftwright.physics.Swing;
import liftwright.plant.parameters.ImpossibleValueException;
import liftwright.plant.parameters.ParameterRows;
import liftwright.plant.parameters.Range;
import liftwright.quantity.Dimension;
import liftwright.quantity.Quantity;
import liftwright.quantity.Tolerance;
import liftwright.rig.RigPath;
import liftwright.rig.Vec3;
import liftwright.rig.Wearer;

/**
 * What was measured on the wearer, as rows of the parameter table: it goes before what the table of
 * segments gives. Readings are rows of their own, so that their errors are drawn and run through
 * the formulas of {@link Swing}.
 */
final class MeasuredBody {

    /**
     * Yaw inertia of people over that stacked from segments: the stack reads 13 % to 28 % low
     * against three measured men (see the tests).
     */
    private static final Quantity YAW_FACTOR =
            new Quantity(
                    1,
                    Dimension.NONE,
                    new Tolerance(0.4, 0.05, Tolerance.Form.NORMAL, Tolerance.Scope.SHARED));

    private static final RigPath AT = RigPath.of("wearer", "measured");

    private record Scales(int feet, int hands, int apart, int handsBelow) {}

    private record Pivot(int above, int time, int swings) {}

    private record Cords(
            int length, int apart, int time, int swings, int hungMass, int hungInertia) {}

    /** How an inertia is known. */
    private sealed interface Known {
        record Said(int row) implements Known {}

        record Swung(Pivot pivot) implements Known {}

        record Twisted(Cords cords) implements Known {}

        /** As computed, times a row. */
        record Stacked(int factor) implements Known {}

        record Computed() implements Known {}
    }

    private record Centre(int forward, int right, int down) {}

    private final Optional<Scales> scales;
    private final Optional<Centre> centre;
    private final Known roll;
    private final Known pitch;
    private final Known yaw;

    private MeasuredBody(Wearer.Measured measured, ParameterRows table) {
        scales = measured.scales().map(own -> scales(own, table));
        centre = measured.centre().map(own -> centre(own, table));
        roll = known("roll", measured.rollInertia(), measured.rollSwing(), table);
        pitch = known("pitch", measured.pitchInertia(), measured.pitchSwing(), table);
        yaw = yaw(measured, table);
    }

    static MeasuredBody declare(Wearer wearer, ParameterRows table) {
        return new MeasuredBody(wearer.measured(), table);
    }

    private static int row(
            RigPath at, String key, Quantity value, Range range, ParameterRows table) {
        return table.row(at.child(key), key + " of " + at.segments().getLast(), value, range);
    }

    private static Scales scales(Wearer.Scales own, ParameterRows table) {
        RigPath at = AT.child("scales");
        return new Scales(
                row(at, "feet", own.feet(), Range.POSITIVE, table),
                row(at, "hands", own.hands(), Range.POSITIVE, table),
                row(at, "apart", own.apart(), Range.POSITIVE, table),
                row(at, "hands below shoulders", own.handsBelow(), Range.ANY, table));
    }

    private static Centre centre(Wearer.Centre own, ParameterRows table) {
        RigPath at = AT.child("centre of mass");
        return new Centre(
                row(at, "forward", own.forward(), Range.ANY, table),
                row(at, "right", own.right(), Range.ANY, table),
                row(at, "down", own.down(), Range.ANY, table));
    }

    private static Known known(
            String axis,
            Optional<Quantity> said,
            Optional<Wearer.PivotSwing> swing,
            ParameterRows table) {
        if (said.isPresent()) {
            String key = axis + " inertia";
            return new Known.Said(
                    table.row(AT.child(key), key + " of the wearer", said.get(), Range.POSITIVE));
        }
        return swing.map(own -> (Known) new Known.Swung(pivot(axis, own, table)))
                .orElseGet(Known.Computed::new);
    }

    private static Pivot pivot(String axis, Wearer.PivotSwing own, ParameterRows table) {
        RigPath at = AT.child(axis + " swing");
        return new Pivot(
                row(at, "bar above shoulders", own.above(), Range.ANY, table),
                row(at, "time", own.time(), Range.POSITIVE, table),
                own.swings());
    }

    private static Known yaw(Wearer.Measured measured, ParameterRows table) {
        if (measured.yawSwing().isPresent()) {
            Wearer.CordSwing own = measured.yawSwing().get();
            RigPath at = AT.child("yaw swing");
            return new Known.Twisted(
                    new Cords(
                            row(at, "cords", own.cords(), Range.POSITIVE, table),
                            row(at, "apart", own.apart(), Range.POSITIVE, table),
                            row(at, "time", own.time(), Range.POSITIVE, table),
                            own.swings(),
                            row(at, "platform mass", own.hungMass(), Range.NOT_NEGATIVE, table),
                            row(
                                    at,
                                    "platform inertia",
                                    own.hungInertia(),
                                    Range.NOT_NEGATIVE,
                                    table)));
        }
        RigPath at = AT.child("yaw inertia");
        String label = "yaw inertia of the wearer";
        return measured.yawInertia()
                .map(said -> (Known) new Known.Said(table.row(at, label, said, Range.POSITIVE)))
                .orElseGet(
                        () -> new Known.Stacked(table.row(at, label, YAW_FACTOR, Range.POSITIVE)));
    }

    /**
     * Distance of the centre of mass below the shoulders as the scales say, for the level person
     * with straight arms; empty where none were read.
     */
    Optional<Double> centreBelowShouldersM(double[] p) {
        return scales.map(
                own ->
                        p[own.handsBelow]
                                + Swing.betweenScalesM(p[own.hands], p[own.feet], p[own.apart]));
    }

    /** Centre of mass of the standing person as it was said, m; empty where it was not. */
    Optional<Vec3> centre(double[] p) {
        return centre.map(own -> new Vec3(p[own.forward], p[own.right], p[own.down]));
    }

    /**
     * Inertias of the person who stands with hanging arms, about the own centre.
     *
     * @param computed the same from segments
     * @param centreBelowM place of the centre below the shoulders, m
     * @throws ImpossibleValueException if a reading gives none that can be
     */
    Inertia standing(double[] p, double massKg, double centreBelowM, Inertia computed) {
        return new Inertia(
                positive("roll", of(p, roll, massKg, centreBelowM, computed.xx())),
                positive("pitch", of(p, pitch, massKg, centreBelowM, computed.yy())),
                positive("yaw", of(p, yaw, massKg, centreBelowM, computed.zz())),
                computed.xy(),
                computed.xz(),
                computed.yz());
    }

    private static double positive(String axis, double kgm2) {
        if (!(kgm2 > 0)) {
            throw new ImpossibleValueException(AT + "/" + axis + " inertia", kgm2, Range.POSITIVE);
        }
        return kgm2;
    }

    private static double of(
            double[] p, Known known, double massKg, double centreBelowM, double computedKgm2) {
        return switch (known) {
            case Known.Said(int row) -> p[row];
            case Known.Swung(Pivot own) ->
                    Swing.pendulumKgm2(
                            massKg, p[own.above] + centreBelowM, p[own.time] / own.swings);
            case Known.Twisted(Cords own) ->
                    Swing.twoCordsKgm2(
                                    massKg + p[own.hungMass],
                                    p[own.length],
                                    p[own.apart],
                                    p[own.time] / own.swings)
                            - p[own.hungInertia];
            case Known.Stacked(int factor) -> p[factor] * computedKgm2;
            case Known.Computed() -> computedKgm2;
        };
    }
}

package liftwright.flight.loops;

import liftwright.rig.Vec3;

/** How each axis of a craft answers its commands. */
final class Dynamics {

    private final Craft craft;
    private final FanMatrix matrix;

    Dynamics(Craft craft) {
        this.craft = craft;
        matrix = FanMatrix.of(craft.fans());
    }

    /** Round an integrator: turn rate for an axis that turns, speed for climb. */
    Actuation of(Axis axis) {
        Lags lags = craft.lags();
        double forward = lags.computerS() + 0.5 / lags.controlHz() + lags.escS();
        return switch (axis) {
            case ROLL -> turning(1, forward);
            case PITCH -> turning(2, forward);
            case YAW -> turning(3, forward);
            case CLIMB, ACROSS -> new Actuation(spoolS(0), 0, 0, forward, 0, lags.velocityS());
        };
    }

    private Actuation turning(int row, double forward) {
        double lead = leadS(row);
        // A lead beyond the spooling would hold the loop open over decades: the controller takes it
        // out again with a lag of its own.
        double slowed = lead > 0.5 * spoolS(row) ? lead : 0;
        return new Actuation(
                spoolS(row), lead, slowed, forward, craft.lags().filterS(), craft.lags().gyroS());
    }

    /** Lag of the fans that act on a row, each by what it gives, s. */
    double spoolS(int row) {
        double sum = 0;
        double all = 0;
        for (int f = 0; f < craft.fans().size(); f++) {
            double gives = matrix.row(row, f) * matrix.share(row, f);
            sum += Math.abs(gives) * craft.fans().get(f).rotor().lagS();
            all += Math.abs(gives);
        }
        if (all > 0) {
            return sum / all;
        }
        return craft.fans().stream().mapToDouble(fan -> fan.rotor().lagS()).average().orElse(0);
    }

    /**
     * Lead of a moment over its steady value: a rotor that is sped up pushes back by J dΩ/dt,
     * against its spin.
     */
    double leadS(int row) {
        double sum = 0;
        for (int f = 0; f < craft.fans().size(); f++) {
            Lifter fan = craft.fans().get(f);
            Vec3 axis = fan.axis();
            double along = row == 1 ? axis.x() : row == 2 ? axis.y() : axis.z();
            sum -=
                    fan.spin()
                            * along
                            * fan.rotor().inertiaKgm2()
                            / fan.rotor().newtonSpRad()
                            * matrix.share(row, f);
        }
        return sum;
    }
}

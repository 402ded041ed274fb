package liftwright.plant.motion;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import liftwright.numerics.DormandPrince;
import liftwright.physics.Gravity;

/**
 * One body up and down: lifted, pulled down by its weight, held by drag, lines, mats and what
 * stands above. Integrated from event to event; for one run.
 */
final class Climb {

    private static final int HEIGHT = 0;
    private static final int SPEED = 1;
    private static final int LIFT_J = 2;
    private static final int DRAG_J = 3;
    private static final int SPRING_J = 4;
    private static final int OWN = 5;

    /** Events are found to this, s. */
    private static final double WHEN_S = 1e-9;

    /** Moments that are kept lie no farther apart than this, s. */
    private static final double KEPT_S = 0.05;

    /** Allowed error of a step over the value: where moments are kept, and for figures alone. */
    private static final double ALLOWED = 1e-8;

    private static final double ALLOWED_OF_FIGURES = 1e-6;

    private static final int GROUND_EVENT = 0;
    private static final int TOP_EVENT = 1;
    private static final int CEILING_EVENT = 2;
    private static final int SPRING_EVENTS = 3;

    private enum Phase {
        /** On its feet. */
        STANDING,
        /** In the air, whatever lines hold it. */
        FREE,
        /** Against what stands above. */
        PRESSED
    }

    private final Body body;
    private final Surroundings around;
    private final Spring[] springs;
    private final Lifting lifting;
    private final boolean keep;
    private final DormandPrince made;
    private final DormandPrince.Event[] inTheAir;
    private final DormandPrince.Event[] lifted;
    private final DormandPrince.Event[] released;
    private final DormandPrince.Slope slope = this::slopes;

    private final List<Moment> moments = new ArrayList<>();
    private final List<Double> liftsN = new ArrayList<>();
    private final double[] peakN;
    private final double[] peakS;
    private final double[] stretchM;

    private Phase phase = Phase.FREE;
    private Optional<Moment> liftOff = Optional.empty();
    private Optional<Moment> atStop = Optional.empty();
    private Optional<Moment> contact = Optional.empty();
    private Optional<Moment> impact = Optional.empty();
    private Optional<Strike> strike = Optional.empty();
    private Moment apex = new Moment(0, 0, 0);
    private double greatestUpMps;
    private double struckJ;

    Climb(Body body, Surroundings around, Lifting lifting, boolean keep) {
        this.body = body;
        this.around = around;
        this.lifting = lifting;
        this.keep = keep;
        springs = around.springs().toArray(Spring[]::new);
        peakN = new double[springs.length];
        peakS = new double[springs.length];
        stretchM = new double[springs.length];
        double allowed = keep ? ALLOWED : ALLOWED_OF_FIGURES;
        double[] absolute = new double[OWN + lifting.states()];
        for (int i = 0; i < absolute.length; i++) {
            absolute[i] = i < LIFT_J ? allowed : 1e5 * allowed;
        }
        made = new DormandPrince(absolute.length, allowed, absolute);
        if (keep) {
            made.longestStep(KEPT_S);
        }
        inTheAir = new DormandPrince.Event[SPRING_EVENTS + 2 * springs.length];
        inTheAir[GROUND_EVENT] = (t, y) -> y[SPEED] < 0 ? -y[HEIGHT] : -1;
        inTheAir[TOP_EVENT] = (t, y) -> -y[SPEED];
        double ceilingM = around.ceilingM().orElse(Double.POSITIVE_INFINITY);
        inTheAir[CEILING_EVENT] = (t, y) -> y[HEIGHT] - ceilingM;
        for (int k = 0; k < springs.length; k++) {
            Spring spring = springs[k];
            inTheAir[SPRING_EVENTS + 2 * k] = (t, y) -> spring.stretchM(y[HEIGHT]);
            inTheAir[SPRING_EVENTS + 2 * k + 1] = (t, y) -> -rise(spring, t, y);
        }
        lifted = new DormandPrince.Event[] {this::netN};
        released = new DormandPrince.Event[] {(t, y) -> -netN(t, y)};
    }

    /**
     * Runs it.
     *
     * @param fromM height of the soles, ≥ 0, m
     * @param upMps speed, m/s
     * @param firstStopS when a kill first acts, s; may be infinite
     * @param horizonS how long at most, s
     */
    RunawayPath run(double fromM, double upMps, double firstStopS, double horizonS) {
        double[] start = new double[OWN + lifting.states()];
        start[HEIGHT] = fromM;
        start[SPEED] = upMps;
        lifting.begin(start, OWN);
        made.start(0, start);
        phase = fromM <= 0 && upMps <= 0 && netN(0, start) < 0 ? Phase.STANDING : Phase.FREE;
        apex = here();
        observe();
        boolean failed = false;
        while (made.t() < horizonS && impact.isEmpty() && !failed) {
            if (made.t() >= firstStopS && atStop.isEmpty()) {
                atStop = Optional.of(here());
            }
            double untilS = Math.min(horizonS, lifting.nextChangeS(made.t()));
            failed = !made.step(slope, untilS);
            if (!failed) {
                happen(made.first(WHEN_S, events()));
                observe();
                if (made.t() >= untilS) {
                    lifting.change(made.t());
                    made.changed();
                    settle();
                }
            }
        }
        return path(failed, fromM, upMps);
    }

    /** Whether it stays where it stands or is pressed, after a jump of the thrust. */
    private void settle() {
        switch (phase) {
            case STANDING -> phase = netN() >= 0 ? leave() : phase;
            case PRESSED -> phase = netN() < 0 ? Phase.FREE : phase;
            case FREE -> {
                // goes on
            }
        }
    }

    private DormandPrince.Event[] events() {
        return switch (phase) {
            case STANDING -> lifted;
            case FREE -> inTheAir;
            case PRESSED -> released;
        };
    }

    private void happen(int which) {
        if (which < 0) {
            return;
        }
        switch (phase) {
            case STANDING -> phase = leave();
            case PRESSED -> phase = Phase.FREE;
            case FREE -> {
                switch (which) {
                    case GROUND_EVENT -> impact = Optional.of(here());
                    case CEILING_EVENT -> strikes();
                    default -> touch(which - SPRING_EVENTS);
                }
            }
        }
    }

    /** The top and peaks need only be observed; a line that takes hold is noted. */
    private void touch(int event) {
        if (event >= 0 && event % 2 == 0 && contact.isEmpty()) {
            contact = Optional.of(here());
        }
    }

    private Phase leave() {
        liftOff = liftOff.or(() -> Optional.of(here()));
        return Phase.FREE;
    }

    private void strikes() {
        Moment now = here();
        double energyJ = body.massKg() * now.upMps() * now.upMps() / 2;
        strike =
                strike.or(
                        () ->
                                Optional.of(
                                        new Strike(
                                                now.timeS(), now.heightM(), now.upMps(), energyJ)));
        struckJ += energyJ;
        observe();
        double[] y = made.y().clone();
        y[SPEED] = 0;
        y[HEIGHT] = around.ceilingM().orElseThrow();
        made.start(now.timeS(), y);
        phase = netN() >= 0 ? Phase.PRESSED : Phase.FREE;
    }

    private void slopes(double t, double[] y, double[] out) {
        double up = phase == Phase.FREE ? y[SPEED] : 0;
        double liftN = lifting.upN(t, y, OWN, up);
        lifting.slopes(t, y, OWN, out);
        double dragN = body.dragUpN(up);
        double springN = springsN(y[HEIGHT], up);
        boolean moves = phase == Phase.FREE;
        out[HEIGHT] = up;
        out[SPEED] = moves ? (liftN + dragN + springN) / body.massKg() - Gravity.STANDARD_MPS2 : 0;
        out[LIFT_J] = liftN * up;
        out[DRAG_J] = dragN * up;
        out[SPRING_J] = springN * up;
    }

    private double springsN(double heightM, double upMps) {
        double sum = 0;
        for (Spring spring : springs) {
            sum += spring.upN(heightM, upMps);
        }
        return sum;
    }

    private double netN() {
        return netN(made.t(), made.y());
    }

    /** What is left of the upward force on a body that does not move, N. */
    private double netN(double t, double[] y) {
        return lifting.upN(t, y, OWN, 0)
                + springsN(y[HEIGHT], 0)
                - body.massKg() * Gravity.STANDARD_MPS2;
    }

    /** How fast the force in a stretched spring rises, N/s; a slack one rises. */
    private double rise(Spring spring, double t, double[] y) {
        double up = y[SPEED];
        if (spring.stretchM(y[HEIGHT]) <= 0) {
            return 1;
        }
        double sign =
                switch (spring.way()) {
                    case LIFTS -> -1;
                    case HOLDS -> 1;
                };
        double risen = sign * spring.stiffnessNpm() * up;
        if (spring.dampingNspm() == 0) {
            return risen;
        }
        double accelerated =
                (lifting.upN(t, y, OWN, up) + body.dragUpN(up) + springsN(y[HEIGHT], up))
                                / body.massKg()
                        - Gravity.STANDARD_MPS2;
        return risen + sign * spring.dampingNspm() * accelerated;
    }

    private Moment here() {
        return new Moment(made.t(), made.y()[HEIGHT], made.y()[SPEED]);
    }

    private void observe() {
        double heightM = made.y()[HEIGHT];
        double upMps = made.y()[SPEED];
        if (heightM > apex.heightM()) {
            apex = here();
        }
        greatestUpMps = Math.max(greatestUpMps, upMps);
        for (int k = 0; k < springs.length; k++) {
            double force = springs[k].forceN(heightM, upMps);
            // Taut this very moment: a damper takes hold at once.
            if (springs[k].stretchM(heightM) > -1e-9 && force == 0) {
                double rate = springs[k].way() == Spring.Way.LIFTS ? -upMps : upMps;
                force = Math.max(0, springs[k].dampingNspm() * rate);
            }
            if (force > peakN[k]) {
                peakN[k] = force;
                peakS[k] = made.t();
            }
            stretchM[k] = Math.max(stretchM[k], springs[k].stretchM(heightM));
        }
        if (keep) {
            moments.add(here());
            liftsN.add(lifting.upN(made.t(), made.y(), OWN, phase == Phase.FREE ? upMps : 0));
        }
    }

    private RunawayPath path(boolean failed, double fromM, double upMps) {
        Moment last = here();
        List<Peak> peaks = new ArrayList<>();
        for (int k = 0; k < springs.length; k++) {
            peaks.add(new Peak(springs[k], peakN[k], peakS[k], stretchM[k]));
        }
        double weightN = body.massKg() * Gravity.STANDARD_MPS2;
        boolean comesDown =
                !failed
                        && switch (phase) {
                            case STANDING -> true;
                            case PRESSED -> false;
                            case FREE ->
                                    impact.isPresent()
                                            || lifting.upN(last.timeS(), made.y(), OWN, 0)
                                                    < weightN;
                        };
        return new RunawayPath(
                moments,
                liftsN,
                liftOff,
                atStop,
                apex,
                greatestUpMps,
                comesDown,
                impact,
                contact,
                strike,
                peaks,
                last,
                lifting.beyondLaw(),
                failed,
                Math.max(closure(fromM, upMps), lifting.closure(made.y(), OWN)));
    }

    private double closure(double fromM, double upMps) {
        double[] y = made.y();
        double weightN = body.massKg() * Gravity.STANDARD_MPS2;
        double gained =
                body.massKg() * (y[SPEED] * y[SPEED] - upMps * upMps) / 2
                        + weightN * (y[HEIGHT] - fromM);
        double given = y[LIFT_J] + y[DRAG_J] + y[SPRING_J] - struckJ;
        double turned =
                Math.abs(y[LIFT_J])
                        + Math.abs(y[DRAG_J])
                        + Math.abs(y[SPRING_J])
                        + weightN * apex.heightM();
        return turned > 0 ? Math.abs(gained - given) / turned : 0;
    }
}

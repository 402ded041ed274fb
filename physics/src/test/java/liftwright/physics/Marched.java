package liftwright.physics;

import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BracketedUnivariateSolver;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.events.AdaptableInterval;
import org.hipparchus.ode.events.ODEEventDetector;
import org.hipparchus.ode.events.ODEEventHandler;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;

/** Equations of motion, integrated by the numeric library: the referee of closed forms. */
final class Marched {

    /** The slope of a state. */
    interface Slope {
        double[] at(double[] state);
    }

    /** What passes zero downwards at the end. */
    interface End {
        double of(double[] state);
    }

    private Marched() {}

    /** The state after a time. */
    static double[] after(double timeS, double[] start, Slope slope) {
        return integrator()
                .integrate(equation(start.length, slope), new ODEState(0, start), timeS)
                .getPrimaryState();
    }

    /** Time and state where {@code end} falls to zero. */
    static ODEStateAndDerivative until(End end, double latestS, double[] start, Slope slope) {
        DormandPrince853Integrator integrator = integrator();
        integrator.addEventDetector(new Detector(end));
        return integrator.integrate(equation(start.length, slope), new ODEState(0, start), latestS);
    }

    private static DormandPrince853Integrator integrator() {
        return new DormandPrince853Integrator(1e-12, 10, 1e-11, 1e-11);
    }

    private static OrdinaryDifferentialEquation equation(int size, Slope slope) {
        return new OrdinaryDifferentialEquation() {
            @Override
            public int getDimension() {
                return size;
            }

            @Override
            public double[] computeDerivatives(double t, double[] state) {
                return slope.at(state);
            }
        };
    }

    private record Detector(End end) implements ODEEventDetector {
        @Override
        public AdaptableInterval getMaxCheckInterval() {
            return (state, forward) -> 0.05;
        }

        @Override
        public int getMaxIterationCount() {
            return 200;
        }

        @Override
        public BracketedUnivariateSolver<UnivariateFunction> getSolver() {
            return new BracketingNthOrderBrentSolver(0, 1e-12, 0, 5);
        }

        @Override
        public ODEEventHandler getHandler() {
            return (state, detector, increasing) ->
                    increasing
                            ? org.hipparchus.ode.events.Action.CONTINUE
                            : org.hipparchus.ode.events.Action.STOP;
        }

        @Override
        public double g(ODEStateAndDerivative state) {
            return end.of(state.getPrimaryState());
        }
    }
}

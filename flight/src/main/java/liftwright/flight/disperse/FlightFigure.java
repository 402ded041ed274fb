package liftwright.flight.disperse;

import java.util.Map;
import java.util.function.ToDoubleFunction;
import liftwright.flight.run.FlightOutcome.Figures;

/** The numbers of a flight, in the order of the columns of a file. */
enum FlightFigure {
    DURATION("lasted s", "", figures -> Double.NaN),
    MISS("miss m", "flights-miss", Figures::missM),
    WORST_MISS("worst miss m", "", Figures::worstMissM),
    HEIGHT_LOST("height lost m", "flights-height-lost", Figures::heightLostM),
    TILT("tilt rad", "flights-tilt", Figures::tiltRad),
    DRIFT("drift m", "flights-drift", Figures::driftM),
    SATURATED("saturated 1", "", Figures::saturatedShare),
    ENERGY("energy J", "", Figures::energyJ),
    CHARGE("charge left 1", "", Figures::chargeLeft),
    LANDING("landing m/s", "flights-landing", Figures::landingMps),
    AIR("in the air s", "", Figures::airS),
    BEYOND_LAW("thrust beyond law 1", "", Figures::beyondLawShare);

    private final String head;
    private final String field;
    private final ToDoubleFunction<Figures> of;

    FlightFigure(String head, String field, ToDoubleFunction<Figures> of) {
        this.head = head;
        this.field = field;
        this.of = of;
    }

    /** Head of its column, with the unit. */
    String head() {
        return head;
    }

    /** Field in which an answer shows it; empty where it shows none. */
    String field() {
        return field;
    }

    double of(double durationS, Figures figures) {
        return this == DURATION ? durationS : of.applyAsDouble(figures);
    }

    double of(Flown.Made made) {
        return of(made.durationS(), made.figures());
    }

    /** Figures from the numbers of a line; every one of them. */
    static Figures figures(Map<FlightFigure, Double> line) {
        return new Figures(
                line.getOrDefault(MISS, 0.0),
                line.getOrDefault(WORST_MISS, 0.0),
                line.getOrDefault(HEIGHT_LOST, 0.0),
                line.getOrDefault(TILT, 0.0),
                line.getOrDefault(DRIFT, 0.0),
                line.getOrDefault(SATURATED, 0.0),
                line.getOrDefault(ENERGY, 0.0),
                line.getOrDefault(CHARGE, 0.0),
                line.getOrDefault(LANDING, 0.0),
                line.getOrDefault(AIR, 0.0),
                line.getOrDefault(BEYOND_LAW, 0.0));
    }
}

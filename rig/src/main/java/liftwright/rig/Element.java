package liftwright.rig;

import java.util.List;
import java.util.Optional;
import liftwright.quantity.Dimension;
import liftwright.quantity.Quantity;

/** One two-terminal thing in a chain of the wiring. */
public sealed interface Element {

    PartId id();

    /** Where its values are written; one place may serve many generated elements. */
    RigPath declaredAt();

    /**
     * A wire out and back.
     *
     * @param gauge American wire gauge; 0 is 1/0, −1 is 2/0, −2 is 3/0, −3 is 4/0
     * @param conductors equal wires side by side each way, ≥ 1
     * @param length one way, m
     * @param covering its insulation and what it lies in
     */
    record Run(
            PartId id,
            RigPath declaredAt,
            int gauge,
            int conductors,
            Quantity length,
            Covering covering)
            implements Element {

        /** A wire of whose insulation nothing is known. */
        public Run(PartId id, RigPath declaredAt, int gauge, int conductors, Quantity length) {
            this(id, declaredAt, gauge, conductors, length, Covering.UNKNOWN);
        }
    }

    /**
     * Connector, lug or splice; both poles together.
     *
     * @param kind as declared
     * @param resistance out and back together, Ω
     * @param rating continuous current, A
     * @param wear what became of it
     * @param heatCapacity of one pole, J/K
     */
    record Joint(
            PartId id,
            RigPath declaredAt,
            String kind,
            Quantity resistance,
            Optional<Quantity> rating,
            Wear wear,
            Quantity heatCapacity)
            implements Element {

        /** Heat capacity of one pole where nothing tells it: 10 g of brass, J/K. */
        public static final double USUAL_J_PER_K = 4;

        /** The same over its rating: 0.1 g of metal for each ampere, J/(K A). */
        public static final double J_PER_K_A = 0.04;

        /** A new joint with the heat capacity of 10 g of brass. */
        public Joint(
                PartId id,
                RigPath declaredAt,
                String kind,
                Quantity resistance,
                Optional<Quantity> rating) {
            this(
                    id,
                    declaredAt,
                    kind,
                    resistance,
                    rating,
                    Wear.NONE,
                    Quantity.exact(USUAL_J_PER_K, new Dimension(2, 1, -2, 0, -1, 0)));
        }
    }

    /**
     * @param rating A
     * @param resistance Ω
     * @param breaks breaking capacity, A
     * @param voltage DC voltage rating, V
     * @param opening when it opens
     * @param heatCapacity of its body, J/K
     */
    record Fuse(
            PartId id,
            RigPath declaredAt,
            Quantity rating,
            Quantity resistance,
            Optional<Quantity> breaks,
            Optional<Quantity> voltage,
            FuseOpening opening,
            Quantity heatCapacity)
            implements Element {

        /** Heat capacity of a fuse over its rating, from memory, J/(K A). */
        public static final double J_PER_K_A = 0.1;

        /** A slow fuse of the usual curve. */
        public Fuse(
                PartId id,
                RigPath declaredAt,
                Quantity rating,
                Quantity resistance,
                Optional<Quantity> breaks,
                Optional<Quantity> voltage) {
            this(
                    id,
                    declaredAt,
                    rating,
                    resistance,
                    breaks,
                    voltage,
                    FuseOpening.usual(FuseOpening.Speed.SLOW, rating.si()),
                    Cooling.doubted(
                            J_PER_K_A * rating.si(), new Dimension(2, 1, -2, 0, -1, 0), 0.5));
        }

        public FuseOpening.Speed speed() {
            return opening.speed();
        }

        /** Time against current, current rising, time falling. */
        public List<FuseOpening.Point> points() {
            return opening.points();
        }

        /** Time in which its element settles, s. */
        public Quantity timeConstant() {
            return opening.timeConstant();
        }

        /** Factor on every time of the curve, about 1. */
        public Quantity timeDoubt() {
            return opening.timeDoubt();
        }
    }

    /** One pole of a contactor. */
    record Pole(PartId id, RigPath declaredAt, Contactor contactor) implements Element {}
}

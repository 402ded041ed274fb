package liftwright.rig;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import liftwright.quantity.Quantity;

/**
 * A stand that holds fans while they run.
 *
 * @param kind what it is
 * @param fans those it holds
 * @param thrustPoints where that which lifts when worn points on the stand: forward, right, down
 *     (unit vector); worn it is up, (0, 0, −1)
 * @param height of the middle of thrust above the ground, m
 * @param mass of stand and ballast, kg, without the fans and what else of the rig it carries
 * @param centreHeight of the centre of that mass above the ground, m
 * @param feetApart sideways, m
 * @param feetDeep fore and aft, m
 * @param friction coefficient of its feet on the ground, 1
 * @param carriesWearer whether the wearer is on it
 */
public record HoldingStand(
        RigPath declaredAt,
        Kind kind,
        List<PartId> fans,
        Vec3 thrustPoints,
        Quantity height,
        Quantity mass,
        Quantity centreHeight,
        Quantity feetApart,
        Quantity feetDeep,
        Quantity friction,
        Optional<Bolts> bolts,
        Optional<Clamps> clamps,
        boolean carriesWearer) {

    public HoldingStand {
        fans = List.copyOf(fans);
    }

    public enum Kind {
        BENCH,
        STAND,
        TABLE,
        /** On wheels. */
        CART
    }

    /**
     * Bolts to the ground, at the corners and along the edges of a rectangle.
     *
     * @param count all of them
     * @param strength pull that one holds with its hole, N; where it is empty the size decides
     * @param size thread
     * @param boltClass of the steel; the least there is where it was not declared
     * @param apart distance sideways, m
     * @param deep distance fore and aft, m
     */
    public record Bolts(
            RigPath declaredAt,
            int count,
            Optional<Quantity> strength,
            Optional<BoltSize> size,
            BoltClass boltClass,
            Quantity apart,
            Quantity deep) {}

    /**
     * Clamps that press the stand down.
     *
     * @param count all of them
     * @param force of each, N
     */
    public record Clamps(int count, Quantity force) {}

    /** Coarse metric threads (ISO 261). */
    public enum BoltSize {
        M5(5, 0.8),
        M6(6, 1),
        M8(8, 1.25),
        M10(10, 1.5),
        M12(12, 1.75),
        M16(16, 2);

        private final double diameterMm;
        private final double pitchMm;

        BoltSize(double diameterMm, double pitchMm) {
            this.diameterMm = diameterMm;
            this.pitchMm = pitchMm;
        }

        /** Nominal diameter, m. */
        public double diameterM() {
            return 1e-3 * diameterMm;
        }

        /** Pitch of the thread, m. */
        public double pitchM() {
            return 1e-3 * pitchMm;
        }
    }

    /** Strength classes of steel bolts up to M16 (ISO 898-1). */
    public enum BoltClass {
        CLASS_4_6(225e6, 400e6),
        CLASS_5_8(380e6, 520e6),
        CLASS_8_8(580e6, 800e6),
        CLASS_10_9(830e6, 1040e6);

        private final double proofPa;
        private final double ultimatePa;

        BoltClass(double proofPa, double ultimatePa) {
            this.proofPa = proofPa;
            this.ultimatePa = ultimatePa;
        }

        /** Stress under proof load, Pa. */
        public double proofPa() {
            return proofPa;
        }

        /** Least tensile strength, Pa. */
        public double ultimatePa() {
            return ultimatePa;
        }

        /** As stamped on the head: {@code 8.8}. */
        public String word() {
            return name().toLowerCase(Locale.ROOT).replace("class_", "").replace('_', '.');
        }
    }
}

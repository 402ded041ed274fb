package liftwright.rig;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import liftwright.quantity.Dimension;
import liftwright.quantity.Dimensions;
import liftwright.quantity.Quantity;
import liftwright.quantity.Tolerance;
import liftwright.rig.table.BenchTable;

/**
 * One kind of fan unit: duct or open rotor, motor and controller.
 *
 * @param name as declared
 * @param ducted whether a duct surrounds the rotor
 * @param tip rotor tip diameter, m
 * @param hub hub diameter, m
 * @param exitArea exit area of the jet, m²
 * @param mass of rotor, duct and motor, kg
 * @param data where the performance comes from
 * @param performance thrust and torque against speed
 * @param swirl residual swirl share s_r, 1
 * @param scatter thrust of single units over the type's, 1 ± scatter
 * @param installation thrust when installed over thrust on the stand, 1
 * @param lot what a few measured fans of the lot are worth; never beside a bench table
 * @param extremes what people near it meet: its sound, and its thrust when wired wrongly
 */
public record FanType(
        String name,
        boolean ducted,
        Quantity tip,
        Quantity hub,
        Quantity exitArea,
        Quantity mass,
        Data data,
        Performance performance,
        Motor motor,
        Rotor rotor,
        Controller controller,
        Optional<Intake> intake,
        Quantity swirl,
        Quantity scatter,
        Quantity installation,
        Optional<Lot> lot,
        Extremes extremes) {

    /**
     * What people near a fan meet.
     *
     * @param noise sound level of one fan at full throttle in 1 m, dBA (A-weighted, re 20 µPa)
     * @param reversedThrust thrust when two motor leads are swapped over that at the same throttle,
     *     against the usual direction, 0 to 1
     */
    public record Extremes(Quantity noise, Quantity reversedThrust) {

        /** From memory. */
        public static final Extremes USUAL =
                new Extremes(
                        new Quantity(
                                110,
                                Dimensions.SOUND_LEVEL,
                                new Tolerance(6, 6, Tolerance.Form.NORMAL, Tolerance.Scope.SHARED)),
                        new Quantity(
                                0.35,
                                Dimension.NONE,
                                new Tolerance(
                                        0.15, 0.15, Tolerance.Form.BOUND, Tolerance.Scope.SHARED)));
    }

    /** Sound level of one fan at full throttle in 1 m, dBA. */
    public Quantity noise() {
        return extremes.noise();
    }

    /** Thrust with two motor leads swapped over that at the same throttle, backwards, 0 to 1. */
    public Quantity reversedThrust() {
        return extremes.reversedThrust();
    }

    public enum Data {
        /** From the one who sells it: worth 0.90 (+0.05/−0.15) of itself until measured. */
        SELLER,
        MEASURED,
        ESTIMATE
    }

    /**
     * How thrust and torque of the rotor are known; declared values hold in still air at 1.225
     * kg/m³.
     */
    public sealed interface Performance {
        /**
         * One known point.
         *
         * @param speed rad/s
         * @param thrust N
         * @param shaftPower W
         */
        record AtSpeed(Quantity speed, Quantity thrust, Quantity shaftPower)
                implements Performance {}

        /**
         * T = k_T Ω², Q = k_Q Ω².
         *
         * @param thrust k_T, N·s²/rad²
         * @param torque k_Q, N·m·s²/rad²
         */
        record Coefficients(Quantity thrust, Quantity torque) implements Performance {}

        /**
         * Rows measured on a stand, which count in place of what is claimed.
         *
         * @param table the rows
         * @param claimed what is declared beside them, if anything; never another table
         */
        record Measured(BenchTable table, Optional<Performance> claimed) implements Performance {
            public Measured {
                if (claimed.isPresent() && claimed.get() instanceof Measured) {
                    throw new IllegalArgumentException("a claim is no table");
                }
            }
        }
    }

    /**
     * What the fans that were bought are worth of their label: thrust at equal speed in equal air
     * over the declared one.
     *
     * @param evidence what was measured
     * @param findsScatter whether the scatter of the lot is to be found from it, since none was
     *     declared
     */
    public record Lot(Evidence evidence, boolean findsScatter) {

        /** What was measured. */
        public sealed interface Evidence {}

        /** Worked out elsewhere: the lot's mean, with its doubt. */
        public record Worth(Quantity worth) implements Evidence {}

        /**
         * Single fans.
         *
         * @param byFan worth of each by its name, 1
         * @param stand 1 ± what all readings share
         */
        public record Fans(Map<String, Double> byFan, Quantity stand) implements Evidence {
            public Fans {
                byFan = Collections.unmodifiableMap(new LinkedHashMap<>(byFan));
            }
        }

        /**
         * Rows of single fans; each tells its fan and its speed.
         *
         * @param stand 1 ± what all readings share
         */
        public record Rows(BenchTable table, Quantity stand) implements Evidence {}
    }

    /**
     * The motor. Its first three values may be missing where a {@link Performance.Measured} table
     * tells all speeds: they are then found from the rows.
     *
     * @param speedConstant K_v, rad/s/V
     * @param windingResistance at 20 °C, Ω
     * @param noLoadCurrent I₀, A
     * @param polePairs of the motor
     * @param heating how it warms
     */
    public record Motor(
            Optional<Quantity> speedConstant,
            Optional<Quantity> windingResistance,
            Optional<Quantity> noLoadCurrent,
            OptionalInt polePairs,
            Heating heating) {

        /** A motor that warms like that of a common fan of 0.6 kg. */
        public Motor(
                Optional<Quantity> speedConstant,
                Optional<Quantity> windingResistance,
                Optional<Quantity> noLoadCurrent,
                OptionalInt polePairs) {
            this(speedConstant, windingResistance, noLoadCurrent, polePairs, Heating.usual(0.6));
        }
    }

    /**
     * @param topSpeed declared maximum, rad/s
     * @param inertia of all that turns about the shaft, kg·m²
     * @param mass of all that turns, kg
     * @param blades their number
     * @param bladeMass of one blade, kg
     * @param bladeCentre radius of the centre of mass of a blade, m
     */
    public record Rotor(
            Optional<Quantity> topSpeed,
            Optional<Quantity> inertia,
            Optional<Quantity> mass,
            OptionalInt blades,
            Optional<Quantity> bladeMass,
            Optional<Quantity> bladeCentre) {

        /** A rotor whose blades are not known. */
        public Rotor(Optional<Quantity> topSpeed, Optional<Quantity> inertia) {
            this(
                    topSpeed,
                    inertia,
                    Optional.empty(),
                    OptionalInt.empty(),
                    Optional.empty(),
                    Optional.empty());
        }
    }

    /** What a controller does when its throttle signal is lost. */
    public enum SignalLoss {
        STOP,
        /** The last command stays. */
        HOLD,
        IDLE
    }

    /**
     * What a controller does when something is wrong.
     *
     * @param signalLoss when its signal is lost
     * @param startUpSurge how long its fan runs at full when it is made live wrongly, s
     * @param idle least duty at which it keeps turning, 0 to 1
     */
    public record Misbehaviour(
            SignalLoss signalLoss, Quantity startUpSurge, Optional<Quantity> idle) {

        /**
         * It stops without a signal (common practice) and surges for half a second (from memory).
         */
        public static final Misbehaviour USUAL =
                new Misbehaviour(
                        SignalLoss.STOP, Quantity.exact(0.5, Dimensions.TIME), Optional.empty());
    }

    /** What a controller does at a lower duty or after a stop. */
    public enum Braking {
        COAST,
        /** Shorts the winding: the energy of the rotor heats it. */
        SHORT,
        /** Synchronous rectification: the energy of the rotor goes back to the supply. */
        FREEWHEEL
    }

    /**
     * How a controller switches and follows.
     *
     * @param braking empty where it is not declared
     * @param frequency of its pulse width modulation, Hz
     * @param capacitorResistance in series with its capacitance, Ω
     * @param delay from command to torque, s; empty where it follows at once
     * @param slew fastest change of duty, 1/s; nothing limits it where it is empty
     */
    public record Switching(
            Optional<Braking> braking,
            Optional<Quantity> frequency,
            Optional<Quantity> capacitorResistance,
            Optional<Quantity> delay,
            Optional<Quantity> slew) {

        /** A controller that follows at once. */
        public Switching(
                Optional<Braking> braking,
                Optional<Quantity> frequency,
                Optional<Quantity> capacitorResistance) {
            this(braking, frequency, capacitorResistance, Optional.empty(), Optional.empty());
        }

        /** Nothing is declared. */
        public static final Switching UNKNOWN =
                new Switching(Optional.empty(), Optional.empty(), Optional.empty());
    }

    /**
     * @param onResistance of the conducting switches, Ω
     * @param currentLimit winding current at which it lowers the duty, A
     * @param topVoltage absolute maximum at its input, V
     * @param topElectricalSpeed electrical speed it can follow (mechanical speed × pole pairs),
     *     rad/s
     * @param capacitance at its input, F
     * @param capacitorVoltage rating of that capacitor, V
     * @param cutOff voltage at which it stops the motor, V
     * @param fixedPower drawn at any throttle, W
     * @param switchingLoss k_sw of I_b = d I + k_sw I (1 − d), 1
     * @param mass kg
     * @param switching how it switches
     * @param cooling how it warms
     * @param misbehaviour what it does when something is wrong
     */
    public record Controller(
            Quantity onResistance,
            Optional<Quantity> currentLimit,
            Optional<Quantity> topVoltage,
            Optional<Quantity> topElectricalSpeed,
            Optional<Quantity> capacitance,
            Optional<Quantity> capacitorVoltage,
            Optional<Quantity> cutOff,
            Quantity fixedPower,
            Quantity switchingLoss,
            Quantity mass,
            Switching switching,
            Cooling cooling,
            Misbehaviour misbehaviour) {

        /** What it does when its signal is lost. */
        public SignalLoss signalLoss() {
            return misbehaviour.signalLoss();
        }

        /** How long its fan runs at full when it is made live wrongly, s. */
        public Quantity startUpSurge() {
            return misbehaviour.startUpSurge();
        }

        /** A controller that stops without a signal. */
        public Controller(
                Quantity onResistance,
                Optional<Quantity> currentLimit,
                Optional<Quantity> topVoltage,
                Optional<Quantity> topElectricalSpeed,
                Optional<Quantity> capacitance,
                Optional<Quantity> capacitorVoltage,
                Optional<Quantity> cutOff,
                Quantity fixedPower,
                Quantity switchingLoss,
                Quantity mass,
                Switching switching,
                Cooling cooling) {
            this(
                    onResistance,
                    currentLimit,
                    topVoltage,
                    topElectricalSpeed,
                    capacitance,
                    capacitorVoltage,
                    cutOff,
                    fixedPower,
                    switchingLoss,
                    mass,
                    switching,
                    cooling,
                    Misbehaviour.USUAL);
        }

        /** A controller that warms like a common one of its mass, or of 0.1 kg if it has none. */
        public Controller(
                Quantity onResistance,
                Optional<Quantity> currentLimit,
                Optional<Quantity> topVoltage,
                Optional<Quantity> topElectricalSpeed,
                Optional<Quantity> capacitance,
                Optional<Quantity> capacitorVoltage,
                Optional<Quantity> cutOff,
                Quantity fixedPower,
                Quantity switchingLoss,
                Quantity mass,
                Switching switching) {
            this(
                    onResistance,
                    currentLimit,
                    topVoltage,
                    topElectricalSpeed,
                    capacitance,
                    capacitorVoltage,
                    cutOff,
                    fixedPower,
                    switchingLoss,
                    mass,
                    switching,
                    Cooling.usual(mass.si() > 0 ? mass.si() : 0.1));
        }
    }
}

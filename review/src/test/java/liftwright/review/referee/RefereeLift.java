package liftwright.review.referee;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * Lift over weight by bracketing. At a rotor speed everything of a fan unit is explicit: torque
 * gives current, current and speed give the voltage; so the fan at the end of a branch is found by
 * bracketing its speed, and the split it hangs on by bracketing its voltage.
 */
final class RefereeLift {

    private static final double RHO_0 = 1.225;

    /** For the declared values 2⁻⁴⁴ of the first bracket is left. */
    private static final int STEPS = 44;

    /** And for one draw of a thousand, whose band is no sharper than a thousandth: 2⁻²⁶. */
    private static final int STEPS_OF_DRAW = 26;

    /** Share of the winding current lost in switching at no duty. */
    static final double SWITCHING = 0.03;

    /**
     * Largest resistance at 20 °C of tin-plated strand, Ω per 1,000 ft: FAA AC 43.13-1B Chg 1,
     * table 11-9.
     */
    private static double ohmPerKft(int gauge) {
        return switch (gauge) {
            case 6 -> 0.44;
            case 8 -> 0.70;
            case 10 -> 1.26;
            case 12 -> 2.02;
            default -> throw new IllegalArgumentException("no row for " + gauge + " AWG");
        };
    }

    private final RefereeRig rig;
    private final RefereeDraw draw;
    private final double density;
    private final int steps;

    private RefereeLift(RefereeRig rig, RefereeDraw draw) {
        this.rig = rig;
        this.draw = draw;
        this.steps = draw.asDeclared() ? STEPS : STEPS_OF_DRAW;
        this.density = density(rig.elevationM(), rig.temperatureC(), rig.humidity());
    }

    static double ratio(RefereeRig rig, RefereeDraw draw) {
        return new RefereeLift(rig, draw).ratio();
    }

    /** Weight of the whole, N. */
    static double weightN(RefereeRig rig, RefereeDraw draw) {
        return new RefereeLift(rig, draw).weight();
    }

    /** Fastest rotor on full packs, declared values, rad/s. */
    static double fastestOnFullPacks(RefereeRig rig) {
        return new RefereeLift(rig.withJudgedAtCharge(1), RefereeDraw.nominal()).fastest();
    }

    /** US standard atmosphere pressure, moist ideal gas, saturation by Buck (1981). */
    static double density(double elevationM, double celsius, double humidity) {
        double geopotential = 6_356_766.0 * elevationM / (6_356_766.0 + elevationM);
        double pressure = 101_325 * Math.pow((288.15 - 0.0065 * geopotential) / 288.15, 5.25588);
        double vapour = humidity * 611.21 * Math.exp(17.502 * celsius / (240.97 + celsius));
        double kelvin = celsius + 273.15;
        return (pressure - vapour) / (287.05307 * kelvin) + vapour / (461.5 * kelvin);
    }

    /** One fan of this draw in SI. */
    private final class Unit {
        final double thrustPerSpeed2;
        final double torquePerSpeed2;
        final double kv;
        final double ohm;
        final double noLoad;
        final double limit;
        final double fixedW = rig.fan().fixedW();
        final double duty = rig.share();
        final double branchOhm;

        Unit() {
            var fan = rig.fan();
            double omega = fan.speedRpm() * Math.PI / 30;
            thrustPerSpeed2 = draw.of("thrust", fan.thrustN()) / (omega * omega) * density / RHO_0;
            torquePerSpeed2 =
                    draw.of("shaft power", fan.shaftPowerW())
                            / (omega * omega * omega)
                            * density
                            / RHO_0;
            kv = draw.of("speed constant", fan.speedConstantRpmPerV()) * Math.PI / 30;
            ohm =
                    (draw.of("winding resistance", fan.windingMilliohm())
                                    + draw.of("on-resistance", fan.onMilliohm()))
                            / 1000;
            noLoad = draw.of("no-load current", fan.noLoadA());
            limit = fan.currentLimitA().orElse(Double.MAX_VALUE);
            branchOhm = wireOhm("branch", rig.branch()) + rig.branchJointMilliohm() / 1000;
        }

        /** Winding current without limit. */
        double current(double omega) {
            return noLoad + kv * torquePerSpeed2 * omega * omega;
        }

        /** The highest speed the current limit allows. */
        double topSpeed() {
            return Math.sqrt((limit - noLoad) / (kv * torquePerSpeed2));
        }

        double terminalAtFullDuty(double omega) {
            return (ohm * current(omega) + omega / kv) / duty;
        }

        /** Bus current at terminal voltage v and speed omega. */
        double bus(double v, double omega) {
            double d = Math.min(duty, (ohm * current(omega) + omega / kv) / v);
            return (d + SWITCHING * (1 - d)) * current(omega) + fixedW / v;
        }

        /** Speed and terminal voltage behind the branch when the split has a voltage. */
        double[] at(double split) {
            double top = topSpeed();
            double atTop = terminalAtFullDuty(top);
            if (atTop + branchOhm * ((duty + SWITCHING * (1 - duty)) * limit + fixedW / atTop)
                    < split) {
                return new double[] {top, limitedTerminal(split, top)};
            }
            double low = 0;
            double high = Math.min(top, duty * split * kv);
            double omega = narrowed(speed -> above(split, speed), low, high, steps);
            return new double[] {omega, terminalAtFullDuty(omega)};
        }

        /** How far the split would have to lie above what it has for a fan at full duty, V. */
        private double above(double split, double omega) {
            double v = terminalAtFullDuty(omega);
            double bus = (duty + SWITCHING * (1 - duty)) * current(omega) + fixedW / v;
            return v + branchOhm * bus - split;
        }

        /**
         * At the current limit the winding takes constant power; of the two voltages the higher is
         * stable.
         */
        private double limitedTerminal(double split, double omega) {
            double watt = (1 - SWITCHING) * (ohm * limit + omega / kv) * limit + fixedW;
            double left = split - branchOhm * SWITCHING * limit;
            return (left + Math.sqrt(left * left - 4 * branchOhm * watt)) / 2;
        }
    }

    private double wireOhm(String name, RefereeRig.Wire wire) {
        double metres = draw.of(name + " length", wire.lengthMm()) / 1000;
        double perMetre = ohmPerKft(wire.gauge()) / 304.8;
        return 2 * metres * perMetre * (1 + 0.00393 * (rig.temperatureC() + 30 - 20));
    }

    private double restVolt() {
        var charge = rig.cell().charge();
        var volt = rig.cell().volt();
        double at = rig.judgedAtCharge();
        for (int i = 1; i < charge.size(); i++) {
            if (at <= charge.get(i)) {
                double share = (at - charge.get(i - 1)) / (charge.get(i) - charge.get(i - 1));
                return volt.get(i - 1) + share * (volt.get(i) - volt.get(i - 1));
            }
        }
        return volt.getLast();
    }

    /** A voltage behind a resistance, and how many fans hang on it. */
    private record Source(double ohm, int fans) {}

    private List<Source> sources() {
        double trunk =
                wireOhm("trunk", rig.trunk())
                        + (rig.trunkJointMilliohm() + rig.fuseMilliohm()) / 1000;
        List<Source> each = new ArrayList<>();
        for (int fans : rig.fansOfPack()) {
            double ohm = cellsMilliohm() / 1000 + rig.interconnectMilliohm() / 1000 + trunk;
            each.add(new Source(ohm, fans));
        }
        if (!rig.oneBus()) {
            return each;
        }
        double siemens = each.stream().mapToDouble(source -> 1 / source.ohm()).sum();
        return List.of(new Source(1 / siemens, rig.fans()));
    }

    private double ratio() {
        double emf = rig.series() * restVolt();
        double lift = 0;
        for (Source source : sources()) {
            lift += liftOf(emf, source.ohm(), source.fans());
        }
        return lift / weight();
    }

    private double fastest() {
        double emf = rig.series() * restVolt();
        return sources().stream()
                .mapToDouble(source -> point(new Unit(), emf, source.ohm(), source.fans())[0])
                .max()
                .orElseThrow();
    }

    /** Cells in series, each with an error of its own where that is declared. */
    private double cellsMilliohm() {
        double sum = 0;
        for (int cell = 0; cell < rig.series(); cell++) {
            sum +=
                    draw.of("resistance", rig.cell().resistanceMilliohm())
                            + draw.of("settling", rig.cell().settlingMilliohm());
        }
        return sum;
    }

    /**
     * Usable lift of so many fans on one split behind one source; electrically they are alike, so
     * they share alike.
     */
    private double liftOf(double emf, double ohm, int fans) {
        Unit unit = new Unit();
        double[] point = point(unit, emf, ohm, fans);
        var fan = rig.fan();
        if (fan.cutOffV().isPresent() && point[1] < fan.cutOffV().get()) {
            return 0;
        }
        double up = Math.cos(Math.toRadians(draw.of("cant", rig.cantDegrees())));
        double installed =
                draw.of("installation", fan.installation())
                        * (fan.seller()
                                ? draw.of(
                                        "seller",
                                        new Doubtful(0.9, "", 0.05 / 0.9, 0.15 / 0.9, false, false))
                                : 1);
        double lift = 0;
        for (int i = 0; i < fans; i++) {
            double scatter = draw.of("scatter", fan.scatterPercent());
            lift +=
                    unit.thrustPerSpeed2
                            * point[0]
                            * point[0]
                            * scatter
                            * intakeFactor()
                            * up
                            * installed;
        }
        return lift;
    }

    /** Speed and terminal voltage of so many fans on one split behind one source. */
    private double[] point(Unit unit, double emf, double ohm, int fans) {
        double low = 0.3 * emf;
        double high = emf;
        return unit.at(
                narrowed(
                        split -> {
                            double[] point = unit.at(split);
                            return split + ohm * fans * unit.bus(point[1], point[0]) - emf;
                        },
                        low,
                        high,
                        steps));
    }

    /**
     * The lower end of a bracket narrowed to 2⁻ˢᵗᵉᵖˢ of itself: below it what is asked is negative,
     * above it not. Chords, kept off the ends so that both close in (the Illinois rule, from
     * memory), and halves at every fourth step, where a bend or a pole makes chords creep.
     */
    private static double narrowed(DoubleUnaryOperator of, double from, double to, int steps) {
        double low = from;
        double high = to;
        double atLow = Double.NaN;
        double atHigh = Double.NaN;
        double width = Math.scalb(to - from, -steps);
        int same = 0;
        for (int i = 0; high - low > width; i++) {
            double chord = low + (high - low) * atLow / (atLow - atHigh);
            double at = i % 4 == 3 || !(chord >= low && chord <= high) ? (low + high) / 2 : chord;
            at = Math.clamp(at, low + width / 2, high - width / 2);
            double value = of.applyAsDouble(at);
            boolean below = value < 0;
            if (below) {
                low = at;
                atLow = value;
                atHigh /= same == -1 ? 2 : 1;
            } else {
                high = at;
                atHigh = value;
                atLow /= same == 1 ? 2 : 1;
            }
            same = below ? -1 : 1;
        }
        return low;
    }

    /** Idelchik's sharp-edged perforated plate, thrust at equal shaft power (momentum theory). */
    private double intakeFactor() {
        return rig.fan()
                .screen()
                .map(
                        screen -> {
                            double f = draw.of("free area", screen.freeArea());
                            double root = 0.707 * Math.pow(1 - f, 0.375) + 1 - f;
                            double zeta = root * root / (f * f);
                            double areas =
                                    draw.of("exit area", rig.fan().exitAreaCm2())
                                            / screen.faceCm2();
                            return Math.pow(1 + zeta * areas * areas, -2.0 / 3);
                        })
                .orElse(1.0);
    }

    private double weight() {
        var fan = rig.fan();
        double kg = rig.fans() * (draw.of("mass", fan.massKg()) + fan.controllerKg());
        double pack =
                rig.series() * draw.of("cell mass", rig.cell().massG()) / 1000
                        + draw.of("extra mass", rig.extraMass());
        kg += rig.fansOfPack().size() * pack;
        for (int i = 0; i < rig.partsKg().size(); i++) {
            kg += draw.of("part " + i, rig.partsKg().get(i));
        }
        return kg * 9.80665;
    }
}

package liftwright.rig.shape.kind;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import liftwright.quantity.Dimension;
import liftwright.quantity.Dimensions;

/** What quantities of a rig file measure: the words and the unit that problems speak in. */
public enum Measure {
    SHARE("a share", "%", 0.01, Dimension.NONE),
    RATIO("a plain number", "", 1, Dimension.NONE),
    LENGTH("a length", "mm", 1e-3, of(1, 0, 0, 0)),
    HEIGHT("a length", "m", 1, of(1, 0, 0, 0)),
    AREA("an area", "cm²", 1e-4, of(2, 0, 0, 0)),
    MASS("a mass", "kg", 1, of(0, 1, 0, 0)),
    TIME("a time", "s", 1, of(0, 0, 1, 0)),
    FREQUENCY("a rate", "Hz", 1, of(0, 0, -1, 0)),
    ANGLE("an angle", "°", Math.PI / 180, new Dimension(0, 0, 0, 0, 0, 1)),
    ROTATION("a speed of rotation", "rpm", Math.PI / 30, new Dimension(0, 0, -1, 0, 0, 1)),
    TURN_RATE("a turn rate", "deg/s", Math.PI / 180, new Dimension(0, 0, -1, 0, 0, 1)),
    TURN_ACCELERATION("an angular acceleration", "rad/s²", 1, new Dimension(0, 0, -2, 0, 0, 1)),
    SPEED("a speed", "m/s", 1, of(1, 0, -1, 0)),
    ACCELERATION("an acceleration", "m/s²", 1, of(1, 0, -2, 0)),
    FORCE("a force", "N", 1, of(1, 1, -2, 0)),
    TORQUE("a torque", "N·m", 1, of(2, 1, -2, 0)),
    STIFFNESS("a stiffness", "N/m", 1, of(0, 1, -2, 0)),
    DAMPING("a damping", "N·s/m", 1, of(0, 1, -1, 0)),
    PRESSURE("a pressure", "hPa", 100, of(-1, 1, -2, 0)),
    MODULUS("an elastic modulus", "GPa", 1e9, of(-1, 1, -2, 0)),
    RIGIDITY("a rigidity", "N·m²", 1, of(3, 1, -2, 0)),
    TEMPERATURE("a temperature", "°C", 1, new Dimension(0, 0, 0, 0, 1, 0)),
    KELVIN("a temperature difference", "K", 1, new Dimension(0, 0, 0, 0, 1, 0)),
    POWER("a power", "W", 1, of(2, 1, -3, 0)),
    ENERGY("an energy", "J", 1, of(2, 1, -2, 0)),
    VOLTAGE("a voltage", "V", 1, of(2, 1, -3, -1)),
    CURRENT("a current", "A", 1, of(0, 0, 0, 1)),
    RESISTANCE("a resistance", "mΩ", 1e-3, of(2, 1, -3, -2)),
    CAPACITANCE("a capacitance", "µF", 1e-6, of(-2, -1, 4, 2)),
    INDUCTANCE("an inductance", "µH", 1e-6, of(2, 1, -2, -2)),
    CHARGE("a charge", "Ah", 3600, of(0, 0, 1, 1)),
    SPEED_CONSTANT("a speed constant", "rpm/V", Math.PI / 30, new Dimension(-2, -1, 2, 1, 0, 1)),
    INERTIA("a moment of inertia", "kg·m²", 1, of(2, 1, 0, 0)),
    THRUST_COEFFICIENT("a thrust coefficient", "N·s²/rad²", 1, new Dimension(1, 1, 0, 0, 0, -2)),
    TORQUE_COEFFICIENT("a torque coefficient", "N·m·s²/rad²", 1, new Dimension(2, 1, 0, 0, 0, -2)),
    HEAT_CAPACITY("a heat capacity", "J/K", 1, new Dimension(2, 1, -2, 0, -1, 0)),
    HEAT_CONDUCTANCE("a thermal conductance", "W/K", 1, new Dimension(2, 1, -3, 0, -1, 0)),
    PER_KELVIN("a change per kelvin", "%/K", 0.01, new Dimension(0, 0, 0, 0, -1, 0)),
    PER_SECOND("a rise per second", "%/s", 0.01, of(0, 0, -1, 0)),
    FAILURE_RATE("a rate of failures", "1/h", 1 / 3600.0, of(0, 0, -1, 0)),
    SOUND_LEVEL("a sound level", "dBA", 1, Dimensions.SOUND_LEVEL);

    private static final double ZERO_CELSIUS_K = 273.15;

    private final String words;
    private final String unit;
    private final double siPerUnit;
    private final Dimension dimension;

    Measure(String words, String unit, double siPerUnit, Dimension dimension) {
        this.words = words;
        this.unit = unit;
        this.siPerUnit = siPerUnit;
        this.dimension = dimension;
    }

    private static Dimension of(int length, int mass, int time, int current) {
        return new Dimension(length, mass, time, current, 0, 0);
    }

    /** With article: {@code a length}. */
    public String words() {
        return words;
    }

    /** The unit that builders would use first. */
    public String unit() {
        return unit;
    }

    public Dimension dimension() {
        return dimension;
    }

    /** A range end in that unit, three digits: {@code 140 mm}. */
    public String show(double si) {
        double value = this == TEMPERATURE ? si - ZERO_CELSIUS_K : si / siPerUnit;
        String number =
                new BigDecimal(value)
                        .round(new MathContext(4, RoundingMode.HALF_EVEN))
                        .stripTrailingZeros()
                        .toPlainString()
                        .replace('-', '−');
        return unit.isEmpty() ? number : unit.equals("°") ? number + unit : number + " " + unit;
    }
}

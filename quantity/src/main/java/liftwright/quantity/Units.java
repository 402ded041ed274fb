package liftwright.quantity;

import static liftwright.quantity.Dimensions.ACCELERATION;
import static liftwright.quantity.Dimensions.ANGLE;
import static liftwright.quantity.Dimensions.ANGULAR_SPEED;
import static liftwright.quantity.Dimensions.AREA;
import static liftwright.quantity.Dimensions.CAPACITANCE;
import static liftwright.quantity.Dimensions.CHARGE;
import static liftwright.quantity.Dimensions.CURRENT;
import static liftwright.quantity.Dimensions.DIMENSIONLESS;
import static liftwright.quantity.Dimensions.ENERGY;
import static liftwright.quantity.Dimensions.FORCE;
import static liftwright.quantity.Dimensions.FREQUENCY;
import static liftwright.quantity.Dimensions.INDUCTANCE;
import static liftwright.quantity.Dimensions.LENGTH;
import static liftwright.quantity.Dimensions.MASS;
import static liftwright.quantity.Dimensions.POWER;
import static liftwright.quantity.Dimensions.PRESSURE;
import static liftwright.quantity.Dimensions.RESISTANCE;
import static liftwright.quantity.Dimensions.SOUND_LEVEL;
import static liftwright.quantity.Dimensions.SPEED;
import static liftwright.quantity.Dimensions.TEMPERATURE;
import static liftwright.quantity.Dimensions.TIME;
import static liftwright.quantity.Dimensions.VOLTAGE;
import static liftwright.quantity.Dimensions.VOLUME;

import java.util.List;

/**
 * The table of units: the only one in the product. Sizes are those of NIST SP 811 (2008), appendix
 * B; what is exact there is built from its definition here, so that no digit is lost: the
 * international foot and pound (0.3048 m, 0.453 592 37 kg) and standard gravity (9.806 65 m/s²).
 */
final class Units {

    private static final String SI = "SI (SP 811, tables 1 to 3)";
    private static final String WITH_SI = "SP 811, table 6";
    private static final String SP811 = "SP 811, appendix B.8";
    private static final String DEFINED = "by definition, from units of SP 811";
    private static final String TRADE = "by definition, common practice";

    private static final Dimension ROOT_TIME = new Dimension(0, 0, 0, 0, 0, 0, 1);

    private static final Dimension FLUX = VOLTAGE.times(TIME);

    private static final Scale FOOT = Scale.of(3048, -4);
    private static final Scale INCH = Scale.of(254, -4);
    private static final Scale POUND = Scale.of(45359237, -8);
    private static final Scale GRAVITY = Scale.of(980665, -5);
    private static final Scale POUND_FORCE = POUND.times(GRAVITY);
    private static final Scale OUNCE = POUND.per(Scale.of(16, 0));
    private static final Scale HOUR = Scale.of(3600, 0);
    private static final Scale MINUTE = Scale.of(60, 0);
    private static final Scale TURN = Scale.of(2 * Math.PI, 0);

    private static final Scale CIRCULAR_MIL =
            new Scale(Math.PI, 4, 0).times(INCH.times(Scale.of(1, -3)).power(2));

    static final List<Unit> ALL =
            List.of(
                    Unit.of("m", "metre", LENGTH, Scale.ONE, SI).withPrefixes("nµmcdk"),
                    Unit.of("in", "inch", LENGTH, INCH, SP811),
                    Unit.of("ft", "foot", LENGTH, FOOT, SP811),
                    Unit.of("yd", "yard", LENGTH, FOOT.times(Scale.of(3, 0)), SP811),
                    Unit.of("mi", "mile", LENGTH, FOOT.times(Scale.of(5280, 0)), SP811),
                    Unit.of("nmi", "nautical mile", LENGTH, Scale.of(1852, 0), SP811),
                    Unit.of("mil", "mil (0.001 in)", LENGTH, INCH.times(Scale.of(1, -3)), SP811),
                    Unit.of("cmil", "circular mil", AREA, CIRCULAR_MIL, SP811).withPrefixes("k"),
                    Unit.of("L", "litre", VOLUME, Scale.of(1, -3), WITH_SI).withPrefixes("mc"),
                    Unit.of("g", "gram", MASS, Scale.of(1, -3), SI).withPrefixes("µmk"),
                    Unit.of("t", "tonne (1000 kg)", MASS, Scale.of(1, 3), WITH_SI),
                    Unit.of("lb", "pound (mass)", MASS, POUND, SP811),
                    Unit.of("oz", "ounce (mass)", MASS, OUNCE, SP811),
                    Unit.of("slug", "slug (lbf·s²/ft)", MASS, POUND_FORCE.per(FOOT), SP811),
                    Unit.of("s", "second", TIME, Scale.ONE, SI).withPrefixes("nµm"),
                    Unit.of("min", "minute", TIME, MINUTE, WITH_SI),
                    Unit.of("h", "hour", TIME, HOUR, WITH_SI),
                    Unit.of("d", "day", TIME, Scale.of(86400, 0), WITH_SI),
                    Unit.of("Hz", "hertz", FREQUENCY, Scale.ONE, SI).withPrefixes("mkMG"),
                    Unit.of("A", "ampere", CURRENT, Scale.ONE, SI).withPrefixes("nµmk"),
                    Unit.of("V", "volt", VOLTAGE, Scale.ONE, SI).withPrefixes("µmk"),
                    Unit.of("Ω", "ohm", RESISTANCE, Scale.ONE, SI)
                            .withAscii("ohm")
                            .alsoWritten(
                                    "\u2126") // the ohm sign, NIST and Unicode prefer the Greek
                            // letter
                            .withPrefixes("nµmkM"),
                    Unit.of("F", "farad", CAPACITANCE, Scale.ONE, SI).withPrefixes("pnµm"),
                    Unit.of("H", "henry", INDUCTANCE, Scale.ONE, SI).withPrefixes("nµm"),
                    Unit.of("Wb", "weber", FLUX, Scale.ONE, SI).withPrefixes("µm"),
                    Unit.of("T", "tesla", FLUX.per(AREA), Scale.ONE, SI).withPrefixes("µm"),
                    Unit.of("C", "coulomb", CHARGE, Scale.ONE, SI).withPrefixes("µmk"),
                    Unit.of("Ah", "ampere-hour", CHARGE, HOUR, SP811).withPrefixes("mk"),
                    Unit.of("J", "joule", ENERGY, Scale.ONE, SI).withPrefixes("mkM"),
                    Unit.of("Wh", "watt-hour", ENERGY, HOUR, SP811).withPrefixes("mkM"),
                    Unit.of(
                            "Btu",
                            "British thermal unit (IT)",
                            ENERGY,
                            Scale.of(105505585262d, -8),
                            SP811),
                    Unit.of("W", "watt", POWER, Scale.ONE, SI).withPrefixes("µmkM"),
                    Unit.of(
                            "hp",
                            "horsepower (550 ft·lbf/s)",
                            POWER,
                            FOOT.times(POUND_FORCE).times(Scale.of(550, 0)),
                            SP811),
                    Unit.of(
                            "PS",
                            "metric horsepower (75 kgf·m/s)",
                            POWER,
                            GRAVITY.times(Scale.of(75, 0)),
                            SP811),
                    Unit.of("N", "newton", FORCE, Scale.ONE, SI).withPrefixes("µmkM"),
                    Unit.of("lbf", "pound-force", FORCE, POUND_FORCE, SP811),
                    Unit.of("ozf", "ounce-force", FORCE, OUNCE.times(GRAVITY), SP811),
                    Unit.of("kgf", "kilogram-force", FORCE, GRAVITY, SP811),
                    Unit.of("gf", "gram-force", FORCE, GRAVITY.times(Scale.of(1, -3)), DEFINED),
                    Unit.of("Pa", "pascal", PRESSURE, Scale.ONE, SI).withPrefixes("mhkMG"),
                    Unit.of("bar", "bar", PRESSURE, Scale.of(1, 5), WITH_SI).withPrefixes("m"),
                    Unit.of("atm", "standard atmosphere", PRESSURE, Scale.of(101325, 0), SP811),
                    Unit.of("psi", "lbf/in²", PRESSURE, POUND_FORCE.per(INCH.power(2)), SP811),
                    Unit.of(
                            "ksi",
                            "1000 lbf/in²",
                            PRESSURE,
                            POUND_FORCE.per(INCH.power(2)).times(Scale.of(1, 3)),
                            SP811),
                    Unit.of("psf", "lbf/ft²", PRESSURE, POUND_FORCE.per(FOOT.power(2)), SP811),
                    Unit.of(
                            "inHg",
                            "inch of mercury, conventional",
                            PRESSURE,
                            Scale.of(3386389, -3),
                            SP811),
                    Unit.of(
                            "mmHg",
                            "millimetre of mercury, conventional",
                            PRESSURE,
                            Scale.of(1333224, -4),
                            SP811),
                    Unit.of(
                            "inH2O",
                            "inch of water, conventional",
                            PRESSURE,
                            Scale.of(2490889, -4),
                            SP811),
                    Unit.of("mmH2O", "millimetre of water, conventional", PRESSURE, GRAVITY, SP811),
                    Unit.of("K", "kelvin, all differences", TEMPERATURE, Scale.ONE, SI)
                            .alsoWritten("\u212a") // the kelvin sign
                            .withPrefixes("m"),
                    Unit.of("°C", "degree Celsius, only alone", TEMPERATURE, Scale.ONE, SI)
                            .withAscii("degC")
                            .alsoWritten("\u2103")
                            .withOffset(new Decimal(27315, -2)),
                    Unit.of(
                                    "°F",
                                    "degree Fahrenheit, only alone",
                                    TEMPERATURE,
                                    new Scale(5, 9, 0),
                                    SP811)
                            .withAscii("degF")
                            .alsoWritten("\u2109")
                            .withOffset(new Decimal(45967, -2)),
                    Unit.of(
                                    "°R",
                                    "degree Rankine, differences of °F",
                                    TEMPERATURE,
                                    new Scale(5, 9, 0),
                                    SP811)
                            .withAscii("degR"),
                    Unit.of("rad", "radian", ANGLE, Scale.ONE, SI).withPrefixes("µm"),
                    Unit.of("°", "degree", ANGLE, new Scale(Math.PI, 180, 0), WITH_SI)
                            .withAscii("deg"),
                    Unit.of(
                            "arcmin",
                            "minute of arc",
                            ANGLE,
                            new Scale(Math.PI, 10800, 0),
                            WITH_SI),
                    Unit.of("rev", "revolution", ANGLE, TURN, SP811),
                    Unit.of(
                                    "rpm",
                                    "revolution per minute",
                                    ANGULAR_SPEED,
                                    new Scale(Math.PI, 30, 0),
                                    SP811)
                            .withPrefixes("k"),
                    Unit.of(
                            "mph",
                            "mile per hour",
                            SPEED,
                            FOOT.times(Scale.of(5280, 0)).per(HOUR),
                            SP811),
                    Unit.of("kt", "knot", SPEED, Scale.of(1852, 0).per(HOUR), SP811)
                            .alsoWritten("knot"),
                    Unit.of("gn", "standard gravity", ACCELERATION, GRAVITY, SP811),
                    Unit.of("%", "percent, 0.01", DIMENSIONLESS, Scale.of(1, -2), "SP 811, 7.10.2"),
                    Unit.of("ppm", "part per million", DIMENSIONLESS, Scale.of(1, -6), TRADE),
                    Unit.of(
                            "dBA",
                            "A-weighted sound level, re 20 µPa",
                            SOUND_LEVEL,
                            Scale.ONE,
                            "IEC 61672-1"),
                    Unit.of(
                                    "√Hz",
                                    "root hertz, in noise densities",
                                    ROOT_TIME.power(-1),
                                    Scale.ONE,
                                    TRADE)
                            .withAscii("rtHz"),
                    Unit.of("√s", "root second", ROOT_TIME, Scale.ONE, TRADE).withAscii("rts"),
                    Unit.of("√h", "root hour, in random walks", ROOT_TIME, MINUTE, TRADE)
                            .withAscii("rth"));

    private Units() {}
}

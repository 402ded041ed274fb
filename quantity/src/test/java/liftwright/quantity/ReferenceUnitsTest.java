package liftwright.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tech.units.indriya.unit.Units.AMPERE;
import static tech.units.indriya.unit.Units.COULOMB;
import static tech.units.indriya.unit.Units.FARAD;
import static tech.units.indriya.unit.Units.GRAM;
import static tech.units.indriya.unit.Units.HENRY;
import static tech.units.indriya.unit.Units.HERTZ;
import static tech.units.indriya.unit.Units.HOUR;
import static tech.units.indriya.unit.Units.JOULE;
import static tech.units.indriya.unit.Units.KELVIN;
import static tech.units.indriya.unit.Units.KILOGRAM;
import static tech.units.indriya.unit.Units.LITRE;
import static tech.units.indriya.unit.Units.METRE;
import static tech.units.indriya.unit.Units.MINUTE;
import static tech.units.indriya.unit.Units.NEWTON;
import static tech.units.indriya.unit.Units.OHM;
import static tech.units.indriya.unit.Units.PASCAL;
import static tech.units.indriya.unit.Units.RADIAN;
import static tech.units.indriya.unit.Units.SECOND;
import static tech.units.indriya.unit.Units.VOLT;
import static tech.units.indriya.unit.Units.WATT;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.random.RandomGenerator;
import javax.measure.MetricPrefix;
import javax.measure.Unit;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;
import tech.units.indriya.AbstractUnit;

/**
 * A reference library of units as referee: random compound units are built in it by its own
 * arithmetic, and written as text for ours. Its parser is not asked, for it reads {@code 1e-3 kg}
 * as one kilogram; nor is its radian, which it takes for a plain number.
 */
class ReferenceUnitsTest {

    private static final Map<String, Unit<?>> SAME = same();

    private static final Map<String, MetricPrefix> PREFIXES =
            Map.of(
                    "n", MetricPrefix.NANO,
                    "µ", MetricPrefix.MICRO,
                    "m", MetricPrefix.MILLI,
                    "c", MetricPrefix.CENTI,
                    "h", MetricPrefix.HECTO,
                    "k", MetricPrefix.KILO,
                    "M", MetricPrefix.MEGA);

    private static final List<Unit<?>> BASE = List.of(METRE, KILOGRAM, SECOND, AMPERE, KELVIN);

    private static Map<String, Unit<?>> same() {
        var pound = KILOGRAM.multiply(0.45359237);
        var foot = METRE.multiply(0.3048);
        var gravity = METRE.divide(SECOND.pow(2)).multiply(9.80665);
        var poundForce = pound.multiply(gravity);
        var map = new HashMap<String, Unit<?>>();
        map.put("m", METRE);
        map.put("g", GRAM);
        map.put("s", SECOND);
        map.put("min", MINUTE);
        map.put("h", HOUR);
        map.put("A", AMPERE);
        map.put("V", VOLT);
        map.put("Ω", OHM);
        map.put("F", FARAD);
        map.put("H", HENRY);
        map.put("C", COULOMB);
        map.put("J", JOULE);
        map.put("W", WATT);
        map.put("N", NEWTON);
        map.put("Pa", PASCAL);
        map.put("Hz", HERTZ);
        map.put("K", KELVIN);
        map.put("L", LITRE);
        map.put("Ah", AMPERE.multiply(HOUR));
        map.put("Wh", WATT.multiply(HOUR));
        map.put("lb", pound);
        map.put("oz", pound.divide(16));
        map.put("lbf", poundForce);
        map.put("ft", foot);
        map.put("in", foot.divide(12));
        map.put("yd", foot.multiply(3));
        map.put("mi", foot.multiply(5280));
        map.put("slug", poundForce.multiply(SECOND.pow(2)).divide(foot));
        map.put("hp", foot.multiply(poundForce).divide(SECOND).multiply(550));
        map.put("psi", poundForce.divide(foot.divide(12).pow(2)));
        map.put("psf", poundForce.divide(foot.pow(2)));
        map.put("kgf", KILOGRAM.multiply(gravity));
        map.put("mph", foot.multiply(5280).divide(HOUR));
        map.put("gn", gravity);
        return map;
    }

    @Test
    void compoundUnitsHaveTheSizeAndDimensionOfTheReference() {
        Seeded.check(1000, ReferenceUnitsTest::compare);
    }

    private static void compare(RandomGenerator random) {
        var text = new StringBuilder();
        Unit<?> reference = AbstractUnit.ONE;
        int factors = random.nextInt(1, 5);
        for (int i = 0; i < factors; i++) {
            String symbol = pick(random, List.copyOf(SAME.keySet()));
            String prefix = random.nextBoolean() ? prefixFor(symbol, random) : "";
            int power = random.nextInt(1, 3);
            boolean below = i > 0 && random.nextBoolean();
            text.append(i == 0 ? "" : below ? "·" : "*").append(prefix).append(symbol);
            text.append(below ? "^-" + power : power == 1 ? "" : "^" + power);
            Unit<?> unit = prefixed(prefix, SAME.get(symbol));
            reference = reference.multiply(unit.pow(below ? -power : power));
        }
        var ours = QuantityParser.parse("1 " + text);
        if (ours instanceof Reading.Refused<Quantity>(var refusal)) {
            assertThat(refusal.code()).isEqualTo(Refusal.Code.UNIT_TOO_COMPLEX);
            return;
        }
        var quantity = Read.ok(ours);
        double size = sizeOf(reference, quantity.dimension());
        assertThat(quantity.si()).as("%s", text).isCloseTo(size, within(1e-12 * size));
    }

    private static Unit<?> prefixed(
            String prefix, @org.jspecify.annotations.Nullable Unit<?> unit) {
        if (unit == null) {
            throw new AssertionError("no reference unit");
        }
        var known = PREFIXES.get(prefix);
        return known == null ? unit : unit.prefix(known);
    }

    /** One of the unit in SI; the library refuses the conversion where the dimensions differ. */
    private static double sizeOf(Unit<?> reference, Dimension d) {
        Unit<?> coherent = AbstractUnit.ONE;
        int[] powers = {d.length(), d.mass(), d.time(), d.current(), d.temperature()};
        for (int i = 0; i < powers.length; i++) {
            if (powers[i] != 0) {
                coherent = coherent.multiply(BASE.get(i).pow(powers[i]));
            }
        }
        try {
            return reference.getConverterToAny(coherent).convert(1.0);
        } catch (javax.measure.IncommensurableException otherDimension) {
            throw new AssertionError(otherDimension);
        }
    }

    private static String prefixFor(String symbol, RandomGenerator random) {
        var possible =
                PREFIXES.keySet().stream()
                        .sorted()
                        .filter(
                                p -> {
                                    var entry = UnitIndex.find(p + symbol);
                                    return entry != null && entry.unit().symbol().equals(symbol);
                                })
                        .toList();
        return possible.isEmpty() ? "" : pick(random, possible);
    }

    @Test
    void theReferenceKnowsTheDegreeAsWeDo() {
        assertThat(Read.si("1°"))
                .isCloseTo(Math.PI / 180 * sizeOf(RADIAN, Dimension.NONE), within(1e-17));
    }

    private static <T> T pick(RandomGenerator random, List<T> list) {
        return list.get(random.nextInt(list.size()));
    }
}

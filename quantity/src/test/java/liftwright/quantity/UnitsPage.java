package liftwright.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.LinkedHashMap;

/** The reference page of units, as text. */
final class UnitsPage {

    private static final String HEAD =
            """
            # Quantities: how they are written, and every unit

            Made from the table of units that reads them.

            ## A value

            A number, a space if you like, a unit.

            | Written | Means |
            |---|---|
            | `120 mm` ✓ | 0.12 m |
            | `1e-3 kg` ✓ | 0.001 kg |
            | `-40 mm`, `−40 mm` | a hyphen or a true minus sign; a dash is refused |
            | `1,000 mm`, `0,5 kg` | refused: write `1000 mm`, `0.5 kg` |
            | `12 AWG` | refused: a gauge is no unit; the rig file has a place for it |
            | `16 lb` as a force | refused: `lb` is always a mass, `lbf` always a force |

            ## A compound unit

            `·`, `*` or a space multiplies, `/` divides, `²`, `^2` or a digit right behind the unit raises: `cm²`, `cm^2` and
            `cm2` are one. Below the line a product needs parentheses: `W/(m·K)`; `W/m·K` is refused since it can be read in
            two ways (NIST SP 811, 6.1.6). `W/m/K` can not and is read. `1/K`, `/K`, `K^-1` and `K⁻¹` are one. A whole number may stand
            before the unit below the line: `Ω/1000 ft`.

            Angle is a dimension of its own: `rpm` is angle per time and `Hz` is not; a speed constant is `rpm/V`, a thrust
            coefficient `N·s²/rad²`. Torque (`N·m`) and energy (`J`) are not told apart.

            `°C` and `°F` stand alone and say how warm something is. Differences are in `K`, or `°R` where they are counted
            in °F: `W/(m·K)`, never `W/(m·°C)`.

            ## A tolerance

            | Written | Means |
            |---|---|
            | `68 kg ± 0.4 kg` ✓ | 95 % of what it may be lies within (k = 2, normal; JCGM 100) |
            | `68 ± 0.4 kg` ✓ | the same |
            | `4.2 mΩ ± 4 %` ✓ | a share of the value |
            | `80 % ± 5 %` ✓ | 75 % to 85 %: in the unit of the value, so points and no share of it |
            | `0.10 +0.15/-0.20` ✓ | another width up than down |
            | `10 mm +0/-5 %` ✓ | never more |
            | `5 N ± 0.2 N bound` ✓ | anywhere between the ends alike, never beyond |
            | `4.2 mΩ ± 4 % each` ✓ | every part made from this value has its own error |
            | `4.2 mΩ ± 4 % shared` ✓ | all parts have the same error; what is meant without a word |
            | `12 °C ± 2 K` ✓ | also `± 2 °C`; a share of a temperature in °C is refused |
            | `± 3 % each` ✓ | alone, where a key asks for a scatter: a factor of 1 ± 0.03 |
            | `4.2 mohm +/- 4 %` ✓ | the same in ASCII |

            A range has two ends, the lower first: `-40…180 mm` ✓, `-40..180 mm` ✓, `-40 to 180 mm` ✓.

            Case counts: `mV` is not `MV`. What is refused is shown with its place and, where one guess is good, with the text
            that was perhaps meant.

            ## The units

            Sizes are those of NIST SP 811 (2008). The prefixes are those that may stand before the unit: p n µ m c d h k M G
            are 10 to the power −12 −9 −6 −3 −2 −1 2 3 6 9; µ may be written u.
            """;

    private UnitsPage() {}

    static String text() {
        var page = new StringBuilder(HEAD);
        var groups = new LinkedHashMap<Dimension, StringBuilder>();
        for (Unit unit : Units.ALL) {
            groups.computeIfAbsent(unit.dimension(), d -> new StringBuilder()).append(row(unit));
        }
        page.append("\n| Unit | Name | Is | Prefixes | Also written | Source |\n");
        page.append("|---|---|---|---|---|---|\n");
        groups.values().forEach(page::append);
        return page.toString();
    }

    private static String row(Unit unit) {
        var others = unit.spellings().stream().skip(1).filter(UnitsPage::isTyped).toList();
        return "| `%s` | %s | %s | %s | %s | %s |%n"
                .formatted(
                        unit.symbol(),
                        unit.name(),
                        size(unit),
                        String.join(" ", unit.prefixes().split("")),
                        others.isEmpty() ? "" : "`" + String.join("`, `", others) + "`",
                        unit.source())
                .replace(System.lineSeparator(), "\n");
    }

    /** Signs that look like the unit itself are read, but nobody looks for them on a page. */
    private static boolean isTyped(String spelling) {
        return spelling.chars().allMatch(c -> c < 128);
    }

    private static String size(Unit unit) {
        String coherent = coherent(unit);
        if (unit.hasOffset()) {
            return unit.scale().equals(Scale.ONE) ? "t + 273.15 K" : "(t + 459.67) × 5/9 K";
        }
        var number =
                new BigDecimal(unit.scale().toSi(1, 0))
                        .round(new MathContext(10))
                        .stripTrailingZeros();
        boolean plain = number.scale() <= 10 && number.precision() - number.scale() <= 8;
        String digits = plain ? number.toPlainString() : number.toString().replace('E', 'e');
        return digits.equals("1") && coherent.startsWith("1/")
                ? coherent
                : (digits + " " + coherent).strip();
    }

    /** The SI unit of the same dimension by its name; for that one itself, its base units. */
    private static String coherent(Unit unit) {
        return Units.ALL.stream()
                .filter(u -> u.dimension().equals(unit.dimension()))
                .filter(u -> u.scale().equals(Scale.ONE) && !u.equals(unit))
                .findFirst()
                .map(Unit::symbol)
                .filter(symbol -> !unit.scale().equals(Scale.ONE))
                .orElse(CoherentUnit.of(unit.dimension()));
    }
}

package liftwright.rig.shape.kind;

import java.util.Optional;
import liftwright.quantity.Quantity;
import liftwright.quantity.Tolerance;
import liftwright.rig.Problem.Code;
import liftwright.rig.text.Node;

/**
 * A quantity with its unit and, where known, its doubt.
 *
 * @param measure what it measures
 * @param range allowed values
 * @param implied what a bare doubt such as {@code ± 2 %} is the doubt of: {@code 1}, {@code 0 V};
 *     empty where a value must be written
 */
public record Amount(Measure measure, Range range, String implied) implements Kind<Quantity> {

    /**
     * A normal doubt wider than this share of a value that cannot be negative would be drawn below
     * zero too often: k = 2 stands at 40 %, so zero stands at five standard deviations.
     */
    static final double WIDEST_NORMAL = 0.40;

    public static Amount of(Measure measure, Range range) {
        return new Amount(measure, range, "");
    }

    public static Amount positive(Measure measure) {
        return of(measure, Range.POSITIVE);
    }

    public static Amount notNegative(Measure measure) {
        return of(measure, Range.NOT_NEGATIVE);
    }

    public static Amount any(Measure measure) {
        return of(measure, Range.ANY);
    }

    public static Amount share() {
        return of(Measure.SHARE, Range.SHARE);
    }

    /** Only a doubt is written; its middle is understood. */
    public static Amount doubt(Measure measure, String implied) {
        return new Amount(measure, Range.ANY, implied);
    }

    @Override
    public Optional<Quantity> read(Node node, Spot spot, Problems problems) {
        return Scalars.text(node, spot, this, problems).flatMap(t -> read(t, spot, problems));
    }

    private Optional<Quantity> read(String text, Spot spot, Problems problems) {
        String whole = text;
        if (!implied.isEmpty()) {
            if (!text.startsWith("±") && !text.startsWith("+")) {
                problems.add(
                        Code.NOT_A_QUANTITY,
                        spot,
                        Problems.quote(text),
                        expectation(),
                        "Write the doubt alone, beginning with ±.");
                return Optional.empty();
            }
            whole = implied + " " + text;
        }
        return QuantityText.read(whole, measure, spot, expectation(), problems)
                .filter(quantity -> isAllowed(quantity, text, spot, problems));
    }

    private boolean isAllowed(Quantity quantity, String text, Spot spot, Problems problems) {
        double si = quantity.si();
        Tolerance doubt = quantity.tolerance();
        String quoted = Problems.quote(text);
        if (!range.holds(si)) {
            problems.add(Code.OUT_OF_RANGE, spot, quoted, expectation(), "");
            return false;
        }
        if (measure == Measure.TEMPERATURE || !range.isOneSided() || doubt.isNone()) {
            return true;
        }
        if (doubt.form() == Tolerance.Form.NORMAL && doubt.minus() > WIDEST_NORMAL * si) {
            problems.add(
                    Code.OUT_OF_RANGE,
                    spot,
                    quoted,
                    "a ± of at most 40 % on a value that cannot be negative",
                    "Say between which ends it lies, for example “"
                            + measure.show(si)
                            + " ± "
                            + measure.show(si / 2)
                            + " bound”.");
            return false;
        }
        if (!range.holds(si - doubt.minus())) {
            problems.add(
                    Code.OUT_OF_RANGE,
                    spot,
                    quoted,
                    expectation() + ", with its lower end too",
                    "Make the lower side of the doubt smaller.");
            return false;
        }
        return true;
    }

    @Override
    public String expectation() {
        if (!implied.isEmpty()) {
            return "a doubt such as ± 2 % each";
        }
        return measure.words()
                + (measure.unit().isEmpty() ? "" : " (" + measure.unit() + ")")
                + range.words(measure);
    }
}

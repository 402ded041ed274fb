package liftwright.rig.shape.kind;

import java.util.Optional;
import liftwright.quantity.Quantity;
import liftwright.rig.Problem.Code;
import liftwright.rig.text.Node;

/**
 * The noise of a sensor as amplitude density: a quantity per root hertz. Dimensions count whole
 * powers only, so the value inside is the quantity before {@code /√Hz}.
 *
 * @param measures what the sensor may measure
 */
public record NoiseDensity(java.util.List<Measure> measures) implements Kind<Quantity> {

    private static final String PER_ROOT_HERTZ = "/√Hz";

    public NoiseDensity {
        measures = java.util.List.copyOf(measures);
    }

    @Override
    public Optional<Quantity> read(Node node, Spot spot, Problems problems) {
        var text = Scalars.text(node, spot, this, problems);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        String given = text.get();
        int at = given.indexOf(PER_ROOT_HERTZ);
        if (at > 0) {
            String plain = given.substring(0, at) + given.substring(at + PER_ROOT_HERTZ.length());
            for (Measure measure : measures) {
                if (QuantityText.read(plain, measure)
                                instanceof QuantityText.Result.Good(var quantity)
                        && quantity.si() >= 0) {
                    return Optional.of(quantity);
                }
            }
        }
        problems.add(Code.NOT_A_QUANTITY, spot, Problems.quote(given), expectation(), "");
        return Optional.empty();
    }

    @Override
    public String expectation() {
        return "a noise density such as 0.005 deg/s/√Hz";
    }
}

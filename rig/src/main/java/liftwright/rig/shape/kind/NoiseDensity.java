package liftwright.rig.shape.kind;

import java.util.List;
import java.util.Optional;
import liftwright.quantity.Dimension;
import liftwright.quantity.Quantity;
import liftwright.quantity.QuantityParser;
import liftwright.quantity.Reading;
import liftwright.rig.Problem.Code;
import liftwright.rig.text.Node;

/**
 * The noise of a sensor as amplitude density: a quantity per root hertz.
 *
 * @param measures what the sensor may measure
 */
public record NoiseDensity(List<Measure> measures) implements Kind<Quantity> {

    private static final Dimension PER_ROOT_HERTZ = new Dimension(0, 0, 0, 0, 0, 0, 1);

    public NoiseDensity {
        measures = List.copyOf(measures);
    }

    @Override
    public Optional<Quantity> read(Node node, Spot spot, Problems problems) {
        var text = Scalars.text(node, spot, this, problems);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        if (QuantityParser.parse(text.get()) instanceof Reading.Parsed<Quantity>(var quantity)
                && quantity.si() >= 0
                && measures.stream()
                        .map(m -> m.dimension().times(PER_ROOT_HERTZ))
                        .anyMatch(quantity.dimension()::equals)) {
            return Optional.of(quantity);
        }
        problems.add(Code.WRONG_UNIT, spot, Problems.quote(text.get()), expectation(), "");
        return Optional.empty();
    }

    @Override
    public String expectation() {
        return "a noise density such as 0.005 deg/s/√Hz";
    }
}

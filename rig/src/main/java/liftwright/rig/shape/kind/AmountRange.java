package liftwright.rig.shape.kind;

import java.util.Optional;
import liftwright.quantity.Quantity;
import liftwright.rig.text.Node;

/**
 * A quantity, or two ends between which the parts of a group are spread evenly: {@code 40 mm},
 * {@code -40…180 mm}.
 *
 * @param measure what it measures
 */
public record AmountRange(Measure measure) implements Kind<AmountRange.Ends> {

    /**
     * @param from first part
     * @param to last part; equal to {@code from} when one value was written
     * @param single whether one value was written
     */
    public record Ends(Quantity from, Quantity to, boolean single) {}

    @Override
    public Optional<Ends> read(Node node, Spot spot, Problems problems) {
        return Scalars.text(node, spot, this, problems)
                .flatMap(t -> QuantityText.readRange(t, measure, spot, expectation(), problems))
                .map(range -> new Ends(range.from(), range.to(), range.isSingle()));
    }

    @Override
    public String expectation() {
        return Amount.any(measure).expectation() + ", or two ends as in −40…180 " + measure.unit();
    }
}

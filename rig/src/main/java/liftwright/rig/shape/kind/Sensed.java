package liftwright.rig.shape.kind;

import java.util.List;
import java.util.Optional;
import liftwright.quantity.Quantity;
import liftwright.rig.Problem.Code;
import liftwright.rig.text.Node;

/**
 * A value of what a sensor measures, which another key decides: any of several measures.
 *
 * @param measures what the sensor may measure, the first in the words of problems
 * @param form which value of it
 */
public record Sensed(List<Measure> measures, Form form) implements Kind<Quantity> {

    /** Which value of what is measured. */
    public enum Form {
        /** An offset; its doubt alone may be written, about zero. */
        OFFSET("an offset with its unit, such as 0.1 deg/s ± 0.5 deg/s"),
        /** The largest, above zero. */
        LARGEST("a largest value with its unit, such as 2000 deg/s");

        private final String words;

        Form(String words) {
            this.words = words;
        }
    }

    public Sensed {
        measures = List.copyOf(measures);
    }

    @Override
    public Optional<Quantity> read(Node node, Spot spot, Problems problems) {
        return Scalars.text(node, spot, this, problems).flatMap(t -> read(t, spot, problems));
    }

    private Optional<Quantity> read(String text, Spot spot, Problems problems) {
        for (Measure measure : measures) {
            Optional<Quantity> one = QuantityText.attempt(whole(text, measure), measure);
            if (one.isPresent()) {
                return one.filter(quantity -> isAllowed(quantity, text, spot, problems));
            }
        }
        // none reads it: the first tells what is wrong
        Measure first = measures.getFirst();
        return QuantityText.read(whole(text, first), first, spot, expectation(), problems);
    }

    private String whole(String text, Measure measure) {
        return form == Form.OFFSET && text.startsWith("±")
                ? "0 " + measure.unit() + " " + text
                : text;
    }

    private boolean isAllowed(Quantity quantity, String text, Spot spot, Problems problems) {
        boolean allowed =
                switch (form) {
                    case OFFSET -> true;
                    case LARGEST -> quantity.si() - quantity.tolerance().minus() > 0;
                };
        if (!allowed) {
            problems.add(
                    Code.OUT_OF_RANGE, spot, Problems.quote(text), expectation() + ", above 0", "");
        }
        return allowed;
    }

    @Override
    public String expectation() {
        return form.words;
    }
}

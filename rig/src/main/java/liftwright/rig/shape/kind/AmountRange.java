package liftwright.rig.shape.kind;

import java.util.Optional;
import liftwright.quantity.Quantity;
import liftwright.rig.Problem.Code;
import liftwright.rig.text.Node;

/**
 * A quantity, or two ends between which the parts of a group are spread evenly: {@code 40 mm},
 * {@code -40…180 mm}. Three full stops serve as well as the ellipsis.
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
        var amount = Amount.any(measure);
        var text = Scalars.text(node, spot, this, problems);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        String given = text.get();
        int ellipsis = given.indexOf('…');
        int length = 1;
        if (ellipsis < 0) {
            ellipsis = given.indexOf("...");
            length = 3;
        }
        if (ellipsis < 0) {
            return amount.read(node, spot, problems).map(q -> new Ends(q, q, true));
        }
        String first = given.substring(0, ellipsis).strip();
        String last = given.substring(ellipsis + length).strip();
        if (first.isEmpty() || last.isEmpty()) {
            problems.add(Code.NOT_A_QUANTITY, spot, Problems.quote(given), expectation(), "");
            return Optional.empty();
        }
        // one unit serves both ends
        String firstWhole = endsInDigit(first) ? first + " " + afterNumber(last) : first;
        return amount.read(scalar(firstWhole, node), spot, problems)
                .flatMap(
                        from ->
                                amount.read(scalar(last, node), spot, problems)
                                        .map(to -> new Ends(from, to, false)));
    }

    private static Node scalar(String text, Node original) {
        return new Node.Scalar(text, false, original.span());
    }

    private static boolean endsInDigit(String text) {
        char c = text.charAt(text.length() - 1);
        return c >= '0' && c <= '9';
    }

    private static String afterNumber(String text) {
        int i = 0;
        while (i < text.length() && "+-−.0123456789".indexOf(text.charAt(i)) >= 0) {
            i++;
        }
        return text.substring(i).strip();
    }

    @Override
    public String expectation() {
        return Amount.any(measure).expectation() + ", or two ends as in −40…180 " + measure.unit();
    }
}

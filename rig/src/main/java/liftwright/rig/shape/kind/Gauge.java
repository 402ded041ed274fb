package liftwright.rig.shape.kind;

import java.util.Optional;
import liftwright.rig.Problem.Code;
import liftwright.rig.book.WireGauge;
import liftwright.rig.text.Node;

/**
 * A wire's American gauge: {@code 12 AWG}, {@code 1/0 AWG} to {@code 4/0 AWG}. Inside, 1/0 is 0 and
 * 4/0 is −3, so that each step down is one step thicker.
 */
public record Gauge() implements Kind<Integer> {

    private static final String UNIT = "AWG";

    @Override
    public Optional<Integer> read(Node node, Spot spot, Problems problems) {
        var text = Scalars.text(node, spot, this, problems);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        String given = text.get();
        if (given.endsWith(UNIT)) {
            String number = given.substring(0, given.length() - UNIT.length()).strip();
            if (number.length() == 3 && number.endsWith("/0") && isDigit(number.charAt(0))) {
                int zeros = number.charAt(0) - '0';
                if (zeros >= 1 && zeros <= 1 - WireGauge.THICKEST) {
                    return Optional.of(1 - zeros);
                }
            } else if (!number.isEmpty()
                    && number.length() <= 2
                    && number.chars().allMatch(c -> isDigit((char) c))) {
                int gauge = Integer.parseInt(number);
                if (gauge <= WireGauge.THINNEST) {
                    return Optional.of(gauge);
                }
            }
        }
        problems.add(
                Code.NOT_A_QUANTITY, spot, Problems.quote(given), expectation(), advice(given));
        return Optional.empty();
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }

    /** A metric size is answered with the gauge next to it. */
    private static String advice(String given) {
        return QuantityText.attempt(given, Measure.AREA)
                .filter(area -> area.si() > 0)
                .map(
                        area ->
                                "The gauge nearest to that area is "
                                        + WireGauge.nearest(1e6 * area.si())
                                        + ".")
                .orElse("");
    }

    @Override
    public String expectation() {
        return "a wire gauge such as 12 AWG or 2/0 AWG";
    }
}

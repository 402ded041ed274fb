package liftwright.rig.shape.kind;

import java.util.Optional;
import liftwright.rig.Problem.Code;
import liftwright.rig.text.Node;

/**
 * A whole number.
 *
 * @param what what it counts, with article
 * @param least smallest allowed
 * @param most largest allowed
 */
public record Whole(String what, int least, int most) implements Kind<Integer> {

    @Override
    public Optional<Integer> read(Node node, Spot spot, Problems problems) {
        var text = Scalars.text(node, spot, this, problems);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        String given = text.get();
        var number = parse(given);
        if (number.isEmpty()) {
            problems.add(
                    Code.WRONG_KIND,
                    spot,
                    Problems.quote(given),
                    expectation(),
                    "Write digits only, without a unit.");
            return Optional.empty();
        }
        long value = number.get();
        if (value < least || value > most) {
            problems.add(Code.OUT_OF_RANGE, spot, given, expectation(), "");
            return Optional.empty();
        }
        return Optional.of((int) value);
    }

    private static Optional<Long> parse(String text) {
        int start = text.startsWith("-") ? 1 : 0;
        if (text.length() == start || text.length() > start + 12) {
            return Optional.empty();
        }
        for (int i = start; i < text.length(); i++) {
            if (text.charAt(i) < '0' || text.charAt(i) > '9') {
                return Optional.empty();
            }
        }
        return Optional.of(Long.parseLong(text));
    }

    @Override
    public String expectation() {
        return what + ", a whole number from " + least + " to " + most;
    }
}

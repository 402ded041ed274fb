package liftwright.rig.shape.kind;

import java.util.Optional;
import liftwright.rig.Problem.Code;
import liftwright.rig.text.Node;

/**
 * Any text of the builder's own, such as a note.
 *
 * @param what what it is, with article: {@code a note}
 */
public record Text(String what) implements Kind<String> {

    /** Longest text, characters. */
    static final int LONGEST = 2000;

    @Override
    public Optional<String> read(Node node, Spot spot, Problems problems) {
        var text = Scalars.text(node, spot, this, problems);
        if (text.isPresent() && text.get().length() > LONGEST) {
            problems.add(
                    Code.OUT_OF_RANGE,
                    spot,
                    text.get().length() + " characters",
                    "at most " + LONGEST + " characters",
                    "");
            return Optional.empty();
        }
        return text;
    }

    @Override
    public String expectation() {
        return what;
    }
}

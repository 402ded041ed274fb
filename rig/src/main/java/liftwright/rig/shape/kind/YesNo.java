package liftwright.rig.shape.kind;

import java.util.Optional;
import liftwright.rig.Problem.Code;
import liftwright.rig.text.Node;

/** A statement that holds or does not. */
public record YesNo() implements Kind<Boolean> {

    @Override
    public Optional<Boolean> read(Node node, Spot spot, Problems problems) {
        var text = Scalars.text(node, spot, this, problems);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        if (text.get().equals("yes") || text.get().equals("no")) {
            return Optional.of(text.get().equals("yes"));
        }
        problems.add(Code.UNKNOWN_WORD, spot, Problems.quote(text.get()), expectation(), "");
        return Optional.empty();
    }

    @Override
    public String expectation() {
        return "yes or no";
    }
}

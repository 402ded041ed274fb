package liftwright.rig.shape.kind;

import java.util.Optional;
import liftwright.rig.text.Node;

/** The lasting name that a part is given. */
public record Ident() implements Kind<String> {

    @Override
    public Optional<String> read(Node node, Spot spot, Problems problems) {
        return Scalars.text(node, spot, this, problems)
                .filter(name -> Name.check(name, spot, node.span(), problems));
    }

    @Override
    public String expectation() {
        return Name.RULE;
    }
}

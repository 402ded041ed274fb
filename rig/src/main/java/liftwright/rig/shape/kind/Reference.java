package liftwright.rig.shape.kind;

import java.util.Optional;
import liftwright.rig.text.Node;

/**
 * The name of something else: of a part, a mount, a type, or of an entry of the parts book. Whether
 * it exists is known only when the whole file has been read.
 *
 * @param to what is named
 */
public record Reference(To to) implements Kind<String> {

    /** What a name may point to. */
    public enum To {
        MOUNT("a mount"),
        FAN_TYPE("a fan type"),
        FAN_GROUP("a fan group"),
        FAN("a fan or a fan group"),
        CELL_TYPE("a cell type"),
        PACK("a pack or a pack group"),
        CONTACTOR("a contactor"),
        NODE("a pack, a fan or a name of your own for a bus"),
        PERSON("one of the crew, or the wearer"),
        OPEN_CIRCUIT("an open-circuit curve of the parts book"),
        JOINT("a joint of the parts book, or a kind of your own with its resistance"),
        PART("a part"),
        /** See {@link liftwright.rig.Supplies}. */
        SUPPLY("a pack, or the words own battery"),
        SIGNAL_GROUND("a signal ground");

        private final String words;

        To(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    @Override
    public Optional<String> read(Node node, Spot spot, Problems problems) {
        return Scalars.text(node, spot, this, problems);
    }

    @Override
    public String expectation() {
        return "the name of " + to.words;
    }
}

package liftwright.rig.shape;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import liftwright.rig.Problem;
import liftwright.rig.Rig;
import liftwright.rig.shape.bind.Shelf;
import liftwright.rig.text.Node;
import liftwright.rig.text.YamlText;

/** Rig files as texts, for tests. */
final class Texts {

    private Texts() {}

    static Node node(String yaml) {
        var reading = YamlText.read("rig.yaml", yaml.getBytes(StandardCharsets.UTF_8));
        assertThat(reading.problems()).isEmpty();
        return reading.root().orElseThrow();
    }

    static Read read(String yaml) {
        return RigReader.read("rig.yaml", node(yaml), Shelf.beside("rig.yaml", Good::beside));
    }

    static Rig rig(String yaml) {
        Read read = read(yaml);
        assertThat(errors(read)).isEmpty();
        return read.rig().orElseThrow();
    }

    static List<Problem> errors(Read read) {
        return read.problems().stream().filter(p -> p.code().isError()).toList();
    }
}

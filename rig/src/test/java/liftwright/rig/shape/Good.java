package liftwright.rig.shape;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import liftwright.rig.csv.Beside;

/** A small rig that is right in every respect. */
final class Good {

    private Good() {}

    static String text() {
        return resource("/format/small.yaml");
    }

    /** The tables that stand beside the saved files. */
    static Beside.Fetched beside(String path) {
        return new Beside.Fetched.Bytes(
                resource("/format/" + path).getBytes(StandardCharsets.UTF_8));
    }

    static String resource(String name) {
        try (var in = Good.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalArgumentException(name);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}

package liftwright.rig.shape;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** A small rig that is right in every respect. */
final class Good {

    private Good() {}

    static String text() {
        return resource("/format/small.yaml");
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

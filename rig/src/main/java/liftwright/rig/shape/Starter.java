package liftwright.rig.shape;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The commented rig file that a builder begins with; every value in it is a placeholder. */
public final class Starter {

    private static final String RESOURCE = "/liftwright/rig/starter.yaml";

    private Starter() {}

    /** The file's text, UTF-8 when written, lines ended by line feeds. */
    public static String text() {
        try (var in = Starter.class.getResourceAsStream(RESOURCE)) {
            if (in == null) {
                throw new IllegalStateException("the program lacks its resource " + RESOURCE);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}

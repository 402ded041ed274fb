package liftwright.rig.shape.kind;

import java.util.Optional;
import liftwright.rig.text.Node;

/**
 * What a value can be. Each kind reads itself from the tree and says in words what it expects; the
 * schema and the reference page are made from the same objects.
 *
 * @param <T> what a value of this kind is inside
 */
public sealed interface Kind<T>
        permits Amount,
                AmountRange,
                Either,
                FilePath,
                Gauge,
                Ident,
                ListOf,
                MapOf,
                NoiseDensity,
                Reference,
                Section,
                Sensed,
                Text,
                Whole,
                Word,
                YesNo {

    /**
     * Reads a value; whatever is wrong with it goes to {@code problems}.
     *
     * @return empty when it could not be read, which has then been reported
     */
    Optional<T> read(Node node, Spot spot, Problems problems);

    /** What is expected, as it stands after "expected": {@code a length such as 140 mm}. */
    String expectation();
}

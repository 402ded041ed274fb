package liftwright.rig.shape.kind;

import java.util.Optional;
import liftwright.rig.text.Node;

/**
 * A single text in one way, or a map or list in another.
 *
 * @param one how a single text is read
 * @param other how a map or a list is read
 */
public record Either<A, B>(Kind<A> one, Kind<B> other) implements Kind<Either.Of<A, B>> {

    /** What was written. */
    public sealed interface Of<A, B> {
        record One<A, B>(A value) implements Of<A, B> {}

        record Other<A, B>(B value) implements Of<A, B> {}
    }

    @Override
    public Optional<Of<A, B>> read(Node node, Spot spot, Problems problems) {
        return switch (node) {
            case Node.Scalar scalar -> one.read(scalar, spot, problems).map(Of.One::new);
            case Node.Entries entries -> other.read(entries, spot, problems).map(Of.Other::new);
            case Node.Items items -> other.read(items, spot, problems).map(Of.Other::new);
        };
    }

    @Override
    public String expectation() {
        return one.expectation() + ", or " + other.expectation();
    }
}

package liftwright.rig.shape.kind;

import java.util.Optional;
import liftwright.rig.Problem.Code;
import liftwright.rig.text.Node;

/** The step that all kinds of single texts share. */
final class Scalars {

    private Scalars() {}

    /** The text of a scalar that says something; else a problem and nothing. */
    static Optional<String> text(Node node, Spot spot, Kind<?> kind, Problems problems) {
        return switch (node) {
            case Node.Scalar(var value, var quoted, var _) -> {
                if (value.isEmpty() && !quoted) {
                    problems.add(
                            Code.WRONG_KIND,
                            spot,
                            "nothing",
                            kind.expectation(),
                            "Write a value or take the key out.");
                    yield Optional.empty();
                }
                yield Optional.of(value);
            }
            case Node.Entries _ -> wrong("a map", spot, kind, problems);
            case Node.Items _ -> wrong("a list", spot, kind, problems);
        };
    }

    static <T> Optional<T> wrong(String found, Spot spot, Kind<?> kind, Problems problems) {
        problems.add(Code.WRONG_KIND, spot, found, kind.expectation(), "");
        return Optional.empty();
    }

    static String name(Node node) {
        return switch (node) {
            case Node.Entries _ -> "a map";
            case Node.Items _ -> "a list";
            case Node.Scalar(var value, var _, var _) ->
                    value.isEmpty() ? "nothing" : Problems.quote(value);
        };
    }
}

package liftwright.rig.text;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import liftwright.rig.RigPath;

/** The files that edits are tried on, and what can be edited in them. */
final class Samples {

    private static final Path EXAMPLES = Path.of("..", "examples");
    private static final Path SAVED =
            Path.of("src", "test", "resources", "liftwright", "rig", "text");

    private Samples() {}

    /** The rigs that come with the tool. */
    static List<Path> examples() {
        return List.of("mudlark", "curlew", "sandpiper", "measured").stream()
                .map(name -> EXAMPLES.resolve(name).resolve("rig.yaml"))
                .toList();
    }

    /** Files laid out in every way that YAML allows and a person might choose; never edited. */
    static List<Path> saved() {
        return List.of("v1-comments-everywhere", "v1-crlf-and-bom", "v1-flow", "v1-odd-layout")
                .stream()
                .map(name -> SAVED.resolve(name + ".yaml"))
                .toList();
    }

    static List<Path> all() {
        var all = new ArrayList<>(examples());
        all.addAll(saved());
        return all;
    }

    static byte[] bytes(Path path) {
        try {
            return Files.readAllBytes(path);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static RigText read(Path path) {
        return RigText.read(path.getFileName().toString(), bytes(path));
    }

    /** A node with its path and with where its entry begins: at its key, or at itself. */
    record Spot(RigPath path, Node node, int start, Optional<Node> parent) {}

    static List<Spot> spots(Node root) {
        var spots = new ArrayList<Spot>();
        collect(new RigPath(List.of()), root, root.span().from(), Optional.empty(), spots);
        return spots;
    }

    private static void collect(
            RigPath path, Node node, int start, Optional<Node> parent, List<Spot> spots) {
        spots.add(new Spot(path, node, start, parent));
        switch (node) {
            case Node.Entries(var entries, var _) -> {
                for (var entry : entries) {
                    collect(
                            path.child(entry.key()),
                            entry.value(),
                            entry.keySpan().from(),
                            Optional.of(node),
                            spots);
                }
            }
            case Node.Items(var items, var _) -> {
                for (int i = 0; i < items.size(); i++) {
                    String segment =
                            items.get(i) instanceof Node.Entries map
                                            && map.value("id").orElse(null)
                                                    instanceof Node.Scalar id
                                    ? id.value()
                                    : Integer.toString(i + 1);
                    collect(
                            path.child(segment),
                            items.get(i),
                            items.get(i).span().from(),
                            Optional.of(node),
                            spots);
                }
            }
            case Node.Scalar _ -> {}
        }
    }
}

package liftwright.rig.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.function.Consumer;
import liftwright.rig.Problem;
import liftwright.rig.text.Node;
import liftwright.rig.text.Span;
import liftwright.testkit.Seeded;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Every value of every example is spoiled in many ways, one at a time: the outcome is a rig, or
 * problems that say where; never an exception.
 */
class NodeMutationTest {

    private static final String ALL_THAT_HOLDS = "/format/v1-failures.yaml";

    private static final List<String> TEXTS =
            List.of(
                    "", "0", "-1", "x", "1e999 m", "5 kg", "-5 mm", "0 V", "± 3 %", "yes", "p.1",
                    "left", "top.1.2", "100 %", "∞", "12 AWG", "\u202e", "a/b", "1…2 mm", "NaN");

    /**
     * A plain run takes every seventh mutant, which meets every way of spoiling; a deep run all.
     */
    private static final int STRIDE = Seeded.deep() ? 1 : 7;

    @ParameterizedTest
    @ValueSource(strings = {"mudlark", "curlew", "sandpiper", "measured", ALL_THAT_HOLDS})
    void aSpoiledExampleIsARigOrLocatedProblems(String name) throws IOException {
        String text =
                name.equals(ALL_THAT_HOLDS)
                        ? Good.resource(name)
                        : Files.readString(Path.of("..", "examples", name, "rig.yaml"));
        Node root = Texts.node(text);
        var tried = new int[2];
        var told = new HashSet<String>();
        mutants(
                root,
                mutant -> {
                    if (tried[0]++ % STRIDE != 0) {
                        return;
                    }
                    Read read = read(mutant);
                    if (read.rig().isEmpty()) {
                        tried[1]++;
                        if (Texts.errors(read).isEmpty()) {
                            fail("no rig, and no reason: " + mutant);
                        }
                    }
                    for (Problem problem : read.problems()) {
                        if (problem.at().line() < 1 || problem.at().column() < 1) {
                            fail("a problem without a place: " + problem);
                        }
                        told.add(problem.found() + problem.expected() + problem.advice());
                    }
                });
        assertThat(told).noneMatch(words -> words.matches("(?s).*[\\p{Cc}\\p{Cf}].*"));
        assertThat(tried[0]).isGreaterThan(1000);
        assertThat(tried[1]).as("of %s mutants, those refused", tried[0]).isGreaterThan(100);
    }

    private static Read read(Node mutant) {
        try {
            return RigReader.read("rig.yaml", mutant);
        } catch (RuntimeException e) {
            return fail("no file may give an exception: " + mutant, e);
        }
    }

    private static void mutants(Node node, Consumer<Node> use) {
        Span span = node.span();
        TEXTS.forEach(text -> use.accept(new Node.Scalar(text, false, span)));
        use.accept(new Node.Items(List.of(), span));
        use.accept(new Node.Items(List.of(node, node), span));
        use.accept(new Node.Entries(List.of(), span));
        use.accept(new Node.Entries(List.of(new Node.Entry("id", span, node)), span));
        switch (node) {
            case Node.Scalar _ -> {}
            case Node.Items(var items, var _) -> {
                for (int i = 0; i < items.size(); i++) {
                    int at = i;
                    use.accept(new Node.Items(without(items, at), span));
                    mutants(
                            items.get(at),
                            m -> use.accept(new Node.Items(with(items, at, m), span)));
                }
            }
            case Node.Entries(var entries, var _) -> {
                for (int i = 0; i < entries.size(); i++) {
                    int at = i;
                    Node.Entry entry = entries.get(at);
                    use.accept(new Node.Entries(without(entries, at), span));
                    use.accept(
                            new Node.Entries(
                                    with(
                                            entries,
                                            at,
                                            new Node.Entry(
                                                    entry.key() + "x",
                                                    entry.keySpan(),
                                                    entry.value())),
                                    span));
                    mutants(
                            entry.value(),
                            m ->
                                    use.accept(
                                            new Node.Entries(
                                                    with(
                                                            entries,
                                                            at,
                                                            new Node.Entry(
                                                                    entry.key(),
                                                                    entry.keySpan(),
                                                                    m)),
                                                    span)));
                }
            }
        }
    }

    private static <T> List<T> without(List<T> list, int at) {
        var copy = new ArrayList<>(list);
        copy.remove(at);
        return copy;
    }

    private static <T> List<T> with(List<T> list, int at, T value) {
        var copy = new ArrayList<>(list);
        copy.set(at, value);
        return copy;
    }
}

package liftwright.rig.text;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.random.RandomGenerator;
import liftwright.rig.Change;
import liftwright.rig.RigPath;
import liftwright.rig.text.RigText.Edit;
import liftwright.rig.text.Samples.Spot;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class EditPropertyTest {

    private static final List<String> TEXTS =
            List.of(
                    "1",
                    "4° ± 0.25°",
                    "0.10 +0.15/−0.20",
                    "x: y",
                    "a, b",
                    "# no comment",
                    "it's",
                    "\"",
                    "{a}",
                    "[",
                    "- a",
                    "-",
                    "?",
                    "!",
                    "&a",
                    "*a",
                    "@",
                    "%",
                    "`",
                    "|",
                    ">",
                    " ",
                    "😀 x",
                    "x #y",
                    "x # y",
                    "a:",
                    ":a",
                    "null",
                    "~",
                    "yes",
                    "0x1F",
                    "1e3",
                    "---",
                    "...",
                    "C:\\x",
                    "tab\there",
                    "<<",
                    "é",
                    "a]",
                    "a}",
                    "'quoted'",
                    "a\\nb");

    private static final List<String> COLLECTIONS =
            List.of("{}", "[]", "{id: new, mass: 2 kg}", "[a, {b: c}]", "{'k: l': \"m\", n: }");

    private int made;
    private int refused;

    @Test
    void randomEditsSayWhatTheyShouldAndTouchNothingElse() {
        Seeded.check(
                600,
                random -> {
                    RigText text = Samples.read(pick(random, Samples.all()));
                    for (int i = random.nextInt(1, 4); i > 0; i--) {
                        text = edited(text, random);
                    }
                });
        // A splicer that refused everything would be right every time.
        assertThat(refused).as("refused, made " + made).isLessThan(made / 20);
    }

    private RigText edited(RigText before, RandomGenerator random) {
        var spots = Samples.spots(before.root().orElseThrow());
        Spot spot = pick(random, spots.subList(1, spots.size()));
        Change change = change(spot, spots, random);
        byte[] bytes = before.bytes();
        var edit = before.with(List.of(change));
        assertThat(before.bytes()).as("undo").isEqualTo(bytes);
        if (!(edit instanceof Edit.Changed(var after, var steps))) {
            refused++;
            return before;
        }
        made++;
        Object expected = Referee.load(bytes);
        Referee.apply(expected, change);
        assertThat(Referee.print(Referee.load(after.bytes())))
                .as(() -> change + "\n" + after.text())
                .isEqualTo(Referee.print(expected));
        assertThat(steps).hasSize(1);
        var splices = steps.getFirst().splices();
        assertThat(Splice.apply(before.text(), splices)).isEqualTo(after.text());
        assertThat(splices).allSatisfy(splice -> allowed(before.text(), spot, change, splice));
        return after;
    }

    /** Where an edit may touch the text, said without the splicer's help. */
    private static void allowed(String text, Spot spot, Change change, Splice splice) {
        var span = spot.node().span();
        String gone = text.substring(splice.from(), splice.to());
        switch (change) {
            case Change.Set _ ->
                    assertThat(splice.from() == splice.to() || inside(splice, span, 1)).isTrue();
            case Change.Add _ -> {
                if (!(spot.node() instanceof Node.Scalar)) {
                    assertThat(gone).isEmpty();
                }
            }
            case Change.Replace _ -> {
                if (splice.from() < splice.to() && !inside(splice, span, 1)) {
                    assertThat(splice.from()).isGreaterThan(spot.start());
                    assertThat(splice.to()).isLessThanOrEqualTo(lineEnd(text, span.to()));
                }
            }
            case Change.Remove _ -> {
                // Comment lines above it, itself, and to the end of its last line.
                assertThat(splice.to()).isLessThanOrEqualTo(next(text, lineEnd(text, span.to())));
                if (splice.from() < spot.start()) {
                    assertThat(text.substring(splice.from(), spot.start()).lines())
                            .allMatch(line -> line.strip().matches("(#.*|-|,|)"));
                }
            }
            case Change.Move _ -> {
                var list = spot.parent().orElseThrow().span();
                assertThat(splice.to()).isLessThanOrEqualTo(lineEnd(text, list.to()));
                // the first entry may own comments above the list
                int above = Math.min(splice.from(), list.from());
                assertThat(text.substring(above, list.from()).lines())
                        .allMatch(line -> line.strip().matches("(#.*|)"));
            }
        }
    }

    private static boolean inside(Splice splice, Span span, int blanks) {
        return splice.from() >= span.from() - blanks && splice.to() <= span.to();
    }

    private static int lineEnd(String text, int offset) {
        int end = offset;
        while (end < text.length() && "\r\n".indexOf(text.charAt(end)) < 0) {
            end++;
        }
        return end;
    }

    private static int next(String text, int offset) {
        int next = offset;
        while (next < text.length() && "\r\n, ".indexOf(text.charAt(next)) >= 0) {
            next++;
        }
        return next;
    }

    private static Change change(Spot spot, List<Spot> spots, RandomGenerator random) {
        var at = spot.path();
        String text = pick(random, TEXTS);
        String any = random.nextBoolean() ? pick(random, COLLECTIONS) : text;
        String key = "new " + random.nextInt(1000);
        return switch (spot.node()) {
            case Node.Scalar _ when random.nextInt(3) > 0 -> new Change.Set(at, text);
            case Node.Entries _ when random.nextInt(4) == 0 -> new Change.Set(at.child(key), text);
            case Node.Entries _ when random.nextInt(3) == 0 -> new Change.Add(at, key, any);
            case Node.Items _ when random.nextInt(2) == 0 -> new Change.Add(at, "", any);
            case Node _
                    when spot.parent().orElse(null) instanceof Node.Items(var items, var _)
                            && random.nextInt(2) == 0 ->
                    new Change.Move(at, random.nextInt(items.size()));
            case Node _ when random.nextInt(2) == 0 && spots.size() > 2 -> new Change.Remove(at);
            default -> new Change.Replace(at, any);
        };
    }

    private static <T> T pick(RandomGenerator random, List<T> from) {
        return from.get(random.nextInt(from.size()));
    }

    static List<Path> files() {
        return Samples.all();
    }

    @ParameterizedTest
    @MethodSource("files")
    void aPlainValueSetAndSetBackGivesTheFile(Path file) {
        RigText text = Samples.read(file);
        int tried = 0;
        for (Spot spot : Samples.spots(text.root().orElseThrow())) {
            if (!(spot.node() instanceof Node.Scalar(var old, var quoted, var span)) || quoted) {
                continue;
            }
            // What stands for nothing behind no colon gets one, and lines that go on become one.
            boolean bare = old.isEmpty() && !text.text().substring(0, span.from()).endsWith(":");
            if (bare || span.of(text.text()).contains("\n")) {
                continue;
            }
            var path = spot.path();
            var there = path.segments().getLast().equals("id") ? old : "another: 1";
            var changed =
                    text.with(List.of(new Change.Set(path, there), new Change.Set(path, old)));
            assertThat(changed).as(path.toString()).isInstanceOf(Edit.Changed.class);
            assertThat(((Edit.Changed) changed).text().bytes())
                    .as(path.toString())
                    .isEqualTo(text.bytes());
            tried++;
        }
        assertThat(tried).isGreaterThan(5);
    }

    @ParameterizedTest
    @MethodSource("files")
    void everySpanHoldsItsValueAndNothingElse(Path file) {
        RigText text = Samples.read(file);
        assertThat(text.problems()).isEmpty();
        assertThat(Referee.print(Referee.load(text.bytes())))
                .isEqualTo(print(text.root().orElseThrow()));
        for (Spot spot : Samples.spots(text.root().orElseThrow())) {
            Span span = spot.node().span();
            String part = span.of(text.text());
            assertThat(part).isEqualTo(part.strip());
            if (!part.contains("\n")) {
                // Where brackets end a text, its letters may mean more elsewhere.
                assertThat(Referee.print(Referee.load(("- " + part).getBytes(UTF_8))))
                        .as(part)
                        .isEqualTo("[" + print(spot.node()) + "]");
            }
            String above = text.text().substring(0, span.from()).replace("\r\n", "\n");
            String line = above.substring(above.lastIndexOf('\n') + 1).replace("\uFEFF", "");
            assertThat(span.line())
                    .isEqualTo((int) above.chars().filter(c -> c == '\n').count() + 1);
            assertThat(span.column()).isEqualTo(line.codePointCount(0, line.length()) + 1);
        }
    }

    /** The tree as the referee prints what it loads. */
    private static String print(Node node) {
        return switch (node) {
            case Node.Entries(var entries, var _) -> {
                var parts = new ArrayList<String>();
                entries.forEach(e -> parts.add('"' + e.key() + "\"=" + print(e.value())));
                yield parts.toString();
            }
            case Node.Items(var items, var _) ->
                    items.stream().map(EditPropertyTest::print).toList().toString();
            case Node.Scalar(var value, var _, var _) -> '"' + value + '"';
        };
    }

    @Test
    void manyChangesAreMadeTogetherOrNotAtAll() {
        RigText text = Samples.read(Samples.examples().getFirst());
        var good = new Change.Set(RigPath.of("site", "elevation"), "9 m");
        var bad = new Change.Remove(RigPath.of("no such thing"));
        assertThat(text.with(List.of(good, bad))).isInstanceOf(Edit.Refused.class);
        var done = (Edit.Changed) text.with(List.of(good, good));
        assertThat(done.steps()).hasSize(2);
        assertThat(done.text().text()).contains("elevation: 9 m\n");
        assertThat(String.format(Locale.ROOT, "%d", done.text().bytes().length))
                .isEqualTo(Integer.toString(text.bytes().length));
    }
}

package liftwright.rig.text;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import liftwright.rig.Change;
import liftwright.rig.RigPath;
import liftwright.rig.text.RigText.Edit;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** What single edits make of texts, letter by letter; expectations written by hand. */
class SpliceTest {

    private static Change set(String at, String value) {
        return new Change.Set(RigPath.parse(at), value);
    }

    private static Change add(String at, String key, String value) {
        return new Change.Add(RigPath.parse(at), key, value);
    }

    private static Change remove(String at) {
        return new Change.Remove(RigPath.parse(at));
    }

    private static Change replace(String at, String value) {
        return new Change.Replace(RigPath.parse(at), value);
    }

    private static Change move(String at, int index) {
        return new Change.Move(RigPath.parse(at), index);
    }

    static Stream<Arguments> edits() {
        return Stream.of(
                // Set: values that stand
                edit(
                        "a: 1 kg # old\nb: 2\n",
                        set("a", "2 kg ± 1 %"),
                        "a: 2 kg ± 1 % # old\nb: 2\n"),
                edit("a:   1\t# tab\n", set("a", "x"), "a:   x\t# tab\n"),
                edit("m: {x: 1 , y: [2, 3]}\n", set("m/x", "9"), "m: {x: 9 , y: [2, 3]}\n"),
                edit("m: {x: 1, y: [2, 3]}\n", set("m/y/2", "a, b"), "m: {x: 1, y: [2, 'a, b']}\n"),
                edit("😀: 1\n'q k': 😀 # 😀\n", set("q k", "ok"), "😀: 1\n'q k': ok # 😀\n"),
                edit("\uFEFFa: 1\r\nb: 2\r\n", set("a", "3"), "\uFEFFa: 3\r\nb: 2\r\n"),
                edit("a: 1", set("a", "3"), "a: 3"),
                edit("a: 'it''s'\n", set("a", "its"), "a: its\n"),
                edit("a:\n  long\n  text # c\nb: 1\n", set("a", "s"), "a:\n  s # c\nb: 1\n"),
                edit("f:\n- id: x\n  m: 1\n", set("f/x/m", "2"), "f:\n- id: x\n  m: 2\n"),
                edit("f:\n- id: x.1\n  m: 1\n", set("f/x.1/m", "2"), "f:\n- id: x.1\n  m: 2\n"),
                edit("f:\n- a\n- b\n", set("f/2", "c"), "f:\n- a\n- c\n"),
                // Set: quotes only when needed
                edit("a: 1\n", set("a", "x: y"), "a: 'x: y'\n"),
                edit("a: 1\n", set("a", "x # y"), "a: 'x # y'\n"),
                edit("a: 1\n", set("a", "it's: 1"), "a: 'it''s: 1'\n"),
                edit("a: 1\n", set("a", " x "), "a: ' x '\n"),
                edit("a: 1\n", set("a", "x, y"), "a: x, y\n"),
                edit("a: 1\n", set("a", "@x"), "a: '@x'\n"),
                edit("a: 1\n", set("a", "*x"), "a: '*x'\n"),
                edit("a: 1\n", set("a", "- x"), "a: '- x'\n"),
                edit("a: 1\n", set("a", "{x}"), "a: '{x}'\n"),
                edit("a: 1\n", set("a", "tab\there"), "a: tab\there\n"),
                edit("a: 1\n", set("a", "+0.15/−0.20"), "a: +0.15/−0.20\n"),
                // Set: what stands for nothing
                edit("a:\nb: 2\n", set("a", "1"), "a: 1\nb: 2\n"),
                edit("a:   # c\nb: 2\n", set("a", "1"), "a: 1   # c\nb: 2\n"),
                edit("m: {a: , b: 2}\n", set("m/a", "1"), "m: {a: 1 , b: 2}\n"),
                edit("m: {a, b: 2}\n", set("m/a", "1"), "m: {a: 1, b: 2}\n"),
                edit("m: {\"a\":, b: 2}\n", set("m/a", "1"), "m: {\"a\": 1, b: 2}\n"),
                edit("l:\n  -\n  - b\n", set("l/1", "1"), "l:\n  - 1\n  - b\n"),
                edit("a: 1 # c\n", set("a", ""), "a: # c\n"),
                edit("a: [1, 2]\n", set("a/1", ""), "a: ['', 2]\n"),
                // Set: keys that are missing
                edit("s:\n  e: 1\nd: 2\n", set("s/t", "5 °C"), "s:\n  e: 1\n  t: 5 °C\nd: 2\n"),
                edit(
                        "s:\n  e: 1 # of e\n\n# of d\nd: 2\n",
                        set("s/t", "5"),
                        "s:\n  e: 1 # of e\n  t: 5\n\n# of d\nd: 2\n"),
                edit("s:\r\n  e: 1\r\n", set("s/t", "5"), "s:\r\n  e: 1\r\n  t: 5\r\n"),
                edit("s:\r\n  e: 1", set("s/t", "5"), "s:\r\n  e: 1\r\n  t: 5"),
                edit("\uFEFFa: 1", set("b", "2"), "\uFEFFa: 1\nb: 2"),
                edit("s: {e: 1}\n", set("s/t", "5"), "s: {e: 1, t: 5}\n"),
                edit("s: {}\n", set("s/t", "5"), "s: {t: 5}\n"),
                edit("s: {e: 1,}\n", set("s/t", "5"), "s: {e: 1, t: 5,}\n"),
                edit(
                        "s: {e: 1, # c\n  f: 2 # d\n}\n",
                        set("s/t", "5"),
                        "s: {e: 1, # c\n  f: 2, t: 5 # d\n}\n"),
                edit("s:\n", set("s/t", "5"), "s: {t: 5}\n"),
                edit("s: {e: 1}\n", set("s/a/b", "5: 6"), "s: {e: 1, a: {b: '5: 6'}}\n"),
                edit("s:\n  e: 1\n", set("s/a/b/c", "5"), "s:\n  e: 1\n  a: {b: {c: 5}}\n"),
                edit(
                        "f:\n  - id: x\n    m: 1\n",
                        set("f/x/n", "2"),
                        "f:\n  - id: x\n    m: 1\n    n: 2\n"),
                edit("f:\n  - {id: x}\n", set("f/x/n", "2"), "f:\n  - {id: x, n: 2}\n"),
                edit("f: [{id: x}, {id: y}]\n", set("f/x/n", "2"), "f: [{id: x, n: 2}, {id: y}]\n"),
                edit(
                        "s:\n  e: {f: 1}   # c\nd: 2\n",
                        set("s/t", "5"),
                        "s:\n  e: {f: 1}   # c\n  t: 5\nd: 2\n"),
                // Add
                edit("l: [1, 2]\n", add("l", "", "{a: b}"), "l: [1, 2, {a: b}]\n"),
                edit("l: []\n", add("l", "", "3"), "l: [3]\n"),
                edit("l:\n  - 1 # c\n# d\n", add("l", "", "2"), "l:\n  - 1 # c\n  - 2\n# d\n"),
                edit(
                        "l:\n- 1\nm: 2\n",
                        add("l", "", "{id: a, b: [c]}"),
                        "l:\n- 1\n- {id: a, b: [c]}\nm: 2\n"),
                edit(
                        "l:\n  - id: a\n    b: 1\n",
                        add("l", "", "x: y"),
                        "l:\n  - id: a\n    b: 1\n  - 'x: y'\n"),
                edit("m:\n  a: 1\n", add("m", "k.1 b", "[x, y]"), "m:\n  a: 1\n  k.1 b: [x, y]\n"),
                edit("m: {a: 1}\n", add("m", "k, b", "v"), "m: {a: 1, 'k, b': v}\n"),
                edit("a: 1\n", add("l", "", "{id: x}"), "a: 1\nl: [{id: x}]\n"),
                edit("a: 1\nl:\n", add("l", "", "{id: x}"), "a: 1\nl: [{id: x}]\n"),
                edit("a: 1\n", add("l/m", "k", "v"), "a: 1\nl: {m: {k: v}}\n"),
                // Remove
                edit("a: 1\nb: 2\nc: 3\n", remove("b"), "a: 1\nc: 3\n"),
                edit(
                        "# head\n\na: 1\n# mine\n# too\nb: 2 # and this\n\n# of c\nc: 3\n",
                        remove("b"),
                        "# head\n\na: 1\n\n# of c\nc: 3\n"),
                edit(
                        "m:\n# other column\n  # mine\n  a: 1\n  b: 2\n",
                        remove("m/a"),
                        "m:\n# other column\n  b: 2\n"),
                edit("a: 1\nb: 2", remove("b"), "a: 1"),
                edit("a: 1\r\n# c\r\nb:\r\n  d: 2\r\n", remove("b"), "a: 1\r\n"),
                edit("m: {a: 1, b: 2, c: 3}\n", remove("m/a"), "m: {b: 2, c: 3}\n"),
                edit("m: {a: 1, b: 2, c: 3}\n", remove("m/b"), "m: {a: 1, c: 3}\n"),
                edit("m: {a: 1, b: 2, c: 3}\n", remove("m/c"), "m: {a: 1, b: 2}\n"),
                edit("m: {a: 1}\n", remove("m/a"), "m: {}\n"),
                edit("m: [a, b,]\n", remove("m/2"), "m: [a,]\n"),
                edit(
                        "m: [\n  a, # of a\n  # of b\n  b, # of b\n  c # of c\n]\n",
                        remove("m/2"),
                        "m: [\n  a, # of a\n  c # of c\n]\n"),
                edit(
                        "m: [\n  a, # of a\n  # of b\n  b # of b\n]\n",
                        remove("m/2"),
                        "m: [\n  a, # of a\n]\n"),
                edit("m:\n  # c\n  a: 1\nb: 2\n", remove("m/a"), "m: {}\nb: 2\n"),
                edit("m: # k\n  - a\nb: 2\n", remove("m/1"), "m: [] # k\nb: 2\n"),
                edit("f:\n  - id: x\n    t: 1\n", remove("f/x/id"), "f:\n  - t: 1\n"),
                edit(
                        "f:\n  - id: x # c\n    # of t\n    t: 1\n",
                        remove("f/x/id"),
                        "f:\n  - \n    # of t\n    t: 1\n"),
                edit("f:\n  - id: x\n", remove("f/x/id"), "f:\n  - {}\n"),
                edit(
                        "f:\n  - id: x\n    t: 1\n  # of y\n  - id: y\n",
                        remove("f/y"),
                        "f:\n  - id: x\n    t: 1\n"),
                edit("l: [a: 1, b: 2]\n", remove("l/1"), "l: [b: 2]\n"),
                // Replace
                edit("a: 1 # c\n", replace("a", "{x: 1}"), "a: {x: 1} # c\n"),
                edit("a: {x: 1} # c\n", replace("a", "7"), "a: 7 # c\n"),
                edit(
                        "a: # c\n  x: 1\n  y: 2 # d\n# e\nb: 2\n",
                        replace("a", "[1, 2]"),
                        "a: [1, 2] # c\n# e\nb: 2\n"),
                edit(
                        "f:\n  - id: x\n    m: 1 # c\n  - id: y\n",
                        replace("f/x", "{id: x}"),
                        "f:\n  - {id: x} # c\n  - id: y\n"),
                edit("a:\nb: 1\n", replace("a", "{x: 1}"), "a: {x: 1}\nb: 1\n"),
                edit("a: [b: 1, c]\n", replace("a/1", "d, e"), "a: ['d, e', c]\n"),
                // Move
                edit("l: [a, [b], c]\n", move("l/1", 2), "l: [[b], c, a]\n"),
                edit("l: [{id: a}, {id: b}]\n", move("l/b", 0), "l: [{id: b}, {id: a}]\n"),
                edit(
                        "l:\n  # of a\n  - a # t\n\n  - id: b\n    m: 1\nz: 1\n",
                        move("l/1", 1),
                        "l:\n  - id: b\n    m: 1\n\n  # of a\n  - a # t\nz: 1\n"),
                edit("l:\r\n- a\r\n- b", move("l/2", 0), "l:\r\n- b\r\n- a"),
                edit("l: [a, b]\n", move("l/1", 0), "l: [a, b]\n"));
    }

    private static Arguments edit(String before, Change change, String after) {
        return Arguments.of(before, change, after);
    }

    @ParameterizedTest(name = "{1}")
    @MethodSource("edits")
    void anEditChangesNothingElse(String before, Change change, String after) {
        var text = RigText.read("rig.yaml", before.getBytes(UTF_8));
        assertThat(text.problems()).isEmpty();
        var edit = text.with(List.of(change));
        assertThat(edit).isInstanceOf(Edit.Changed.class);
        assertThat(((Edit.Changed) edit).text().text()).isEqualTo(after);
        assertThat(text.bytes()).as("undo").isEqualTo(before.getBytes(UTF_8));
    }

    static Stream<Arguments> refused() {
        return Stream.of(
                Arguments.of("a: |\n  block\n", set("a", "1"), "block of lines"),
                Arguments.of("a: {b: 1}\n", set("a", "1"), "more than one text"),
                Arguments.of("a: 1\n", set("a/b", "1"), "a is a text"),
                Arguments.of("a: [1]\n", set("a/7", "1"), "There is no a/7"),
                Arguments.of("a: 1\n", set("a", "two\nlines"), "one line"),
                Arguments.of("a: 1\n", set("a", "bell\u0007"), "invisible"),
                Arguments.of("a: 1\n", set("a", "\u202Eright to left"), "invisible"),
                Arguments.of("a: 1\n", set("b/<</c", "1"), "`<<` cannot be a key"),
                Arguments.of("a: {b: 1}\n", add("a", "c/d", "1"), "cannot be a key"),
                Arguments.of("a: {b: 1}\n", add("a", "b", "1"), "a/b is there already"),
                Arguments.of("a: {b: 1}\n", add("a", "", "1"), "cannot be a key"),
                Arguments.of("a: 1\n", add("a", "", "1"), "a is a text"),
                Arguments.of("a: [1]\n", add("a", "", "{x: 1"), "cannot be read"),
                Arguments.of("a: [1]\n", add("a", "", "[1] # c"), "does not end where"),
                Arguments.of("a: [1]\n", add("a", "", "{x: &y 1}"), "cannot be read"),
                Arguments.of("a: 1\n", remove("b"), "There is no b"),
                Arguments.of("a: 1\n", remove(""), "entry by entry"),
                Arguments.of("a: 1\n", remove("a"), "last entry of the file"),
                Arguments.of("a: 1\n", replace("b", "1"), "There is no b"),
                Arguments.of("a: 1\n", replace("", "1"), "entry by entry"),
                Arguments.of("a: [1, 2]\n", move("a/1", 2), "no position 2"),
                Arguments.of("a: 1\nb: 2\n", move("a", 1), "no entry of a list"),
                Arguments.of("l: [a, # c\n  b]\n", move("l/1", 1), "Comments stand between"),
                Arguments.of("l:\n  - - a\n    - b\n", move("l/1/1", 1), "behind a dash"),
                Arguments.of("l: [a\n  , b]\n", remove("l/1"), "comma stands in another line"),
                Arguments.of("l: [a: 1]\n", set("l/1/b", "1"), "no braces"),
                Arguments.of("l: [a: 1]\n", remove("l/1/a"), "half of a pair"),
                Arguments.of("a: &x 1\n", set("a", "2"), "mend its problems"),
                Arguments.of("a: |+\n  b\n\n", set("c", "2"), "by hand"),
                Arguments.of("a: 1\n", set("x/".repeat(40) + "y", "2"), "No path has more"));
    }

    @ParameterizedTest(name = "{1}")
    @MethodSource("refused")
    void whatCannotBeDoneIsRefusedWithTheReason(String before, Change change, String reason) {
        var edit = RigText.read("rig.yaml", before.getBytes(UTF_8)).with(List.of(change));
        assertThat(edit).isInstanceOf(Edit.Refused.class);
        assertThat(((Edit.Refused) edit).reason()).contains(reason);
        assertThat(((Edit.Refused) edit).change()).isEqualTo(change);
    }
}

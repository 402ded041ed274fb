package liftwright.rig.complete;

import static java.nio.charset.StandardCharsets.UTF_8;
import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.BiConsumer;
import liftwright.rig.complete.Completion.Option;
import liftwright.rig.shape.Shape;
import liftwright.rig.shape.kind.Either;
import liftwright.rig.shape.kind.Key;
import liftwright.rig.shape.kind.Kind;
import liftwright.rig.shape.kind.ListOf;
import liftwright.rig.shape.kind.MapOf;
import liftwright.rig.shape.kind.Need;
import liftwright.rig.shape.kind.Reference;
import liftwright.rig.shape.kind.Section;
import liftwright.rig.shape.kind.Word;
import liftwright.rig.text.Node;
import liftwright.rig.text.YamlText;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CompletionTest {

    /** Stands for the cursor in the texts here. */
    private static final String CURSOR = "¦";

    private static final String RIG = example("mudlark");

    private static String example(String name) {
        try {
            return Files.readString(Path.of("..", "examples", name, "rig.yaml"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Completion at(String textWithCursor) {
        int offset = textWithCursor.indexOf(CURSOR);
        assertThat(offset).as(textWithCursor).isNotNegative();
        return Completion.at(textWithCursor.replace(CURSOR, ""), offset);
    }

    private static List<String> labels(Completion completion) {
        return completion.options().stream().map(Option::label).toList();
    }

    private static List<String> labelsAt(String textWithCursor) {
        return labels(at(textWithCursor));
    }

    private static String mudlark(String from, String to) {
        assertThat(RIG).contains(from);
        return RIG.replace(from, to);
    }

    /** Goes to every section by every way, in blocks and in braces. */
    private static final class Walk {
        private final BiConsumer<String, Section> visit;
        private final Set<String> seen = new HashSet<>();

        Walk(BiConsumer<String, Section> visit) {
            this.visit = visit;
        }

        void block(Section section, String above, String indent, String lead) {
            visit.accept(above + lead + CURSOR + "\n", section);
            if (seen.add(section.name())) {
                for (Key<?> key : section.keys()) {
                    into(key.kind(), above + lead + key.name() + ":", indent);
                }
            }
        }

        /** {@code above} ends behind a colon; what follows may be deeper than {@code indent}. */
        private void into(Kind<?> kind, String above, String indent) {
            String deeper = indent + "  ";
            switch (kind) {
                case Section section -> block(section, above + "\n", deeper, deeper);
                case MapOf<?> map ->
                        into(map.value(), above + "\n" + deeper + "some name:", deeper);
                case ListOf<?> list -> {
                    if (list.item() instanceof Section section) {
                        block(section, above + "\n", deeper + "  ", deeper + "- ");
                    }
                }
                case Either<?, ?> either -> {
                    into(either.one(), above, indent);
                    into(either.other(), above, indent);
                }
                default -> {}
            }
        }
    }

    @Test
    void everyKeyOfTheTableIsOfferedWhereItBelongs() {
        var visited = new HashSet<String>();
        new Walk(
                        (text, section) -> {
                            visited.add(section.name());
                            assertThat(labelsAt(text))
                                    .as(text)
                                    .containsExactlyInAnyOrderElementsOf(
                                            section.keys().stream().map(Key::name).toList());
                        })
                .block(Shape.root(), "", "", "");
        assertThat(visited).isEqualTo(Shape.sections().keySet());
    }

    @Test
    void everyKeyOfTheTableIsOfferedInBracesThatAreStillOpen() {
        var visited = new HashSet<String>();
        braces(Shape.root(), "", new HashSet<>(), visited);
        assertThat(visited).containsAll(Shape.sections().keySet());
    }

    private static void braces(
            Section section, String above, Set<String> seen, Set<String> visited) {
        if (!above.isEmpty()) {
            String open = "rig: x\n" + above + CURSOR + "\nrevision: 1\n";
            assertThat(labelsAt(open))
                    .as(open)
                    .containsExactlyInAnyOrderElementsOf(
                            section.keys().stream().map(Key::name).toList());
        }
        visited.add(section.name());
        if (seen.add(section.name())) {
            for (Key<?> key : section.keys()) {
                inBraces(key.kind(), above + key.name() + ": ", seen, visited);
            }
        }
    }

    private static void inBraces(
            Kind<?> kind, String above, Set<String> seen, Set<String> visited) {
        switch (kind) {
            case Section section -> braces(section, above + "{", seen, visited);
            case MapOf<?> map -> inBraces(map.value(), above + "{some name: ", seen, visited);
            case ListOf<?> list -> inBraces(list.item(), above + "[", seen, visited);
            case Either<?, ?> either -> {
                inBraces(either.one(), above, seen, visited);
                inBraces(either.other(), above, seen, visited);
            }
            default -> {}
        }
    }

    @Test
    void everyWordOfTheTableIsOffered() {
        int[] words = {0};
        new Walk(
                        (text, section) -> {
                            for (Key<?> key : section.keys()) {
                                wordsOf(key.kind())
                                        .forEach(
                                                word -> {
                                                    words[0]++;
                                                    String asked =
                                                            text.replace(
                                                                    CURSOR,
                                                                    key.name() + ": " + CURSOR);
                                                    assertThat(labelsAt(asked))
                                                            .as(asked)
                                                            .contains(word);
                                                });
                            }
                        })
                .block(Shape.root(), "", "", "");
        assertThat(words[0]).isGreaterThan(50);
    }

    private static List<String> wordsOf(Kind<?> kind) {
        return switch (kind) {
            case Word<?> word -> List.copyOf(word.words().keySet());
            case Either<?, ?> either -> {
                var all = new ArrayList<>(wordsOf(either.one()));
                all.addAll(wordsOf(either.other()));
                yield all;
            }
            default -> List.of();
        };
    }

    @ParameterizedTest
    @ValueSource(strings = {"mudlark", "curlew", "sandpiper", "measured", "fitted"})
    void whatStandsInAnExampleIsOfferedWhereItStands(String name) {
        String text = example(name);
        var root = YamlText.read("rig.yaml", text.getBytes(UTF_8)).root().orElseThrow();
        int[] checked = {0, 0};
        check(text, root, Shape.root(), checked);
        assertThat(checked[0]).as("keys").isGreaterThan(50);
        assertThat(checked[1]).as("words and names").isGreaterThan(10);
    }

    private static void check(String text, Node node, Kind<?> kind, int[] checked) {
        switch (kind) {
            case Section section -> {
                for (var entry : ((Node.Entries) node).entries()) {
                    checked[0]++;
                    int end = entry.keySpan().to();
                    var completion = Completion.at(text, end);
                    assertThat(labels(completion)).as(entry.key()).contains(entry.key());
                    assertThat(completion.from()).isEqualTo(entry.keySpan().from());
                    assertThat(completion.to()).isEqualTo(end);
                    check(
                            text,
                            entry.value(),
                            requireNonNull(section.byName().get(entry.key())).kind(),
                            checked);
                }
            }
            case MapOf<?> map ->
                    ((Node.Entries) node)
                            .entries()
                            .forEach(e -> check(text, e.value(), map.value(), checked));
            case ListOf<?> list ->
                    ((Node.Items) node)
                            .items()
                            .forEach(item -> check(text, item, list.item(), checked));
            case Either<?, ?> either ->
                    check(
                            text,
                            node,
                            node instanceof Node.Scalar ? either.one() : either.other(),
                            checked);
            case Word<?> _, Reference _ -> {
                checked[1]++;
                var span = node.span();
                var completion = Completion.at(text, span.to());
                assertThat(labels(completion)).as(span.of(text)).contains(span.of(text));
                assertThat(completion.from()).isEqualTo(span.from());
                assertThat(completion.to()).isEqualTo(span.to());
            }
            default -> {}
        }
    }

    @Test
    void keysThatStandThereAreNotOfferedAgainNorWhatTheyRuleOut() {
        var fan = labelsAt(mudlark("row: 4, from: {right: -240 mm, up: 150 mm},", "row: 4, ¦,"));
        assertThat(fan).contains("from", "at", "spacing").doesNotContain("id", "rows", "ring");
        assertThat(labelsAt("wearer:\n  mass: 60 kg\n  ¦\n  body: female\n"))
                .contains("stature")
                .doesNotContain("mass", "body");
    }

    @Test
    void requiredKeysComeFirst() {
        var top = labelsAt("¦");
        var required =
                Shape.root().keys().stream()
                        .filter(k -> k.need() instanceof Need.Required)
                        .map(Key::name)
                        .toList();
        assertThat(required).isNotEmpty();
        assertThat(top.subList(0, required.size())).containsExactlyElementsOf(required);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "type: F140, mount: back, row; type: ¦, mount: back, row; F140",
                "mount: left pod, rows; mount: ¦, rows; back|left pod|right pod",
                "cell: C80, series; cell: ¦, series; C80",
                "p.3: [back-top.3, back; p.3: [¦, back; back-top|left|right|back-bottom.4|right.8",
                "{contactor: main}; {contactor: ¦}; main",
                "opens: [main], by: radio; opens: [¦], by: radio; main",
                "held by: watcher; held by: ¦; watcher|wearer",
                "from: p                ; from: ¦; p|p.1|p.12",
                "fans: [left, right]; fans: [left, ¦]; back-top|left|right.1",
                "at: {mount: left pod}, twin; at: {mount: ¦}, twin; right pod",
                "joint: bullet 8 mm; joint: ¦; bullet 8 mm|bullet 6 mm",
                "open circuit: LiPo; open circuit: ¦; LiPo",
                "spin: alternating, twin; spin: ¦, twin; left-hand|right-hand|alternating"
            })
    void referencesAreNamesOfTheFile(String from, String to, String names) {
        assertThat(labelsAt(mudlark(from.strip(), to.strip()))).contains(names.split("\\|"));
    }

    @Test
    void keysThatNamePartsAreThePartsOfTheGroup() {
        var fans = labelsAt(mudlark("twin: right}\n", "twin: right, except: {¦}}\n"));
        assertThat(fans).hasSize(16).contains("left.1", "right.8").doesNotContain("back-top.1");
        var packs = labelsAt(mudlark("        p.5: [left.1, right.8]\n", "        ¦\n"));
        assertThat(packs).containsExactly("p.5");
        var all = labelsAt(RIG + "serials:\n  ¦\n");
        assertThat(all).hasSize(24 + 12);
    }

    @Test
    void aBrokenLineElsewhereDoesNotMatter() {
        String broken = mudlark("  humidity: 80 %\n", "  ¦\n").replace("crew:\n", "crew: {[\n");
        assertThat(labelsAt(broken)).contains("humidity", "pressure").doesNotContain("elevation");
        String above = mudlark("  humidity: 80 %\n", "  ¦\n").replace("rig: Mudlark", "rig: \"x");
        assertThat(labelsAt(above)).contains("humidity");
    }

    @Test
    void whatIsInsertedFitsWhereItGoes() {
        var key = at("site:\n  elev¦\n");
        assertThat(key.options())
                .anySatisfy(
                        option -> {
                            assertThat(option.label()).isEqualTo("elevation");
                            assertThat(option.insert()).isEqualTo("elevation: ");
                        });
        var named = at("site:\n  elev¦: 4 m\n");
        assertThat(named.options()).anySatisfy(o -> assertThat(o.insert()).isEqualTo("elevation"));
        var glued = at("wearer:\n  body:¦\n");
        assertThat(glued.options()).anySatisfy(o -> assertThat(o.insert()).isEqualTo(" female"));
        var spaced = at("wearer:\n  body:  fem¦\n");
        assertThat(spaced.from()).isEqualTo("wearer:\n  body:  ".length());
        var blanks = at("fan ty¦pes:\n  F:\n    tip: 1 m\n");
        assertThat(blanks.from()).isZero();
        assertThat(blanks.to()).isEqualTo("fan types".length());
        assertThat(labels(blanks)).contains("fan types");
    }

    @Test
    void detailsComeFromTheTable() {
        var option =
                at("site:\n  ¦\n").options().stream()
                        .filter(o -> o.label().equals("elevation"))
                        .findFirst()
                        .orElseThrow();
        var site = requireNonNull(Shape.sections().get("site"));
        var row = requireNonNull(site.byName().get("elevation"));
        assertThat(option.detail()).contains(row.meaning()).contains(row.kind().expectation());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "# site¦",
                "site: # ¦\n",
                "note: a, b ¦",
                "rig: x\n     ¦\n",
                "nonsense: {¦}",
                "fans: {¦}",
                "- ¦"
            })
    void whereNothingIsKnownNothingIsOffered(String text) {
        assertThat(labelsAt(text)).isEmpty();
    }

    @Test
    void anyTextAtAnyOffsetGivesSomethingThatFits() {
        int[] offered = {0};
        Seeded.check(
                150,
                random -> {
                    int from = random.nextInt(RIG.length());
                    int to = Math.min(RIG.length(), from + random.nextInt(40));
                    String junk =
                            List.of(
                                            "", "{", "}", "[", ": ", "\"", "'", "#", "\t", "\r\n",
                                            "😀", "- ")
                                    .get(random.nextInt(12));
                    String text = RIG.substring(0, from) + junk + RIG.substring(to);
                    int offset =
                            random.nextBoolean()
                                    ? from + random.nextInt(-3, 4)
                                    : random.nextInt(text.length());
                    var completion = Completion.at(text, offset);
                    int cursor = Math.clamp(offset, 0, text.length());
                    assertThat(cursor).isBetween(completion.from(), completion.to());
                    assertThat(completion.from()).isNotNegative();
                    assertThat(completion.to()).isLessThanOrEqualTo(text.length());
                    assertThat(text.substring(completion.from(), completion.to()))
                            .doesNotContain("\n");
                    offered[0] += completion.options().isEmpty() ? 0 : 1;
                });
        assertThat(offered[0]).isPositive();
        for (int offset : new int[] {-5, 0, 1, Integer.MAX_VALUE, Integer.MIN_VALUE}) {
            Completion.at("", offset);
            Completion.at("\uFEFFrig: x", offset);
            Completion.at(RIG, offset);
        }
    }

    @Test
    void namesThatCouldNotBeWrittenAreNotOffered() {
        var types = labelsAt("fan types:\n  \"a: {b\": {}\n  good: {}\nfans:\n  - type: ¦\n");
        assertThat(types).containsExactly("good");
    }
}

package liftwright.rig.draft;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import liftwright.rig.file.Folder;
import liftwright.rig.file.RigReading;
import liftwright.rig.text.RigText;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Outline, parts and problems of a rig, each at its stretch of the text. */
class ShownRigTest {

    private static RigReading example(String name) {
        Path folder = Path.of("..", "examples", name);
        try {
            return RigReading.read(
                    "rig.yaml", Files.readAllBytes(folder.resolve("rig.yaml")), new Folder(folder));
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"mudlark", "curlew", "sandpiper", "measured", "fitted"})
    void everyEntryOfTheOutlineStandsWhereItSays(String name) {
        RigText text = example(name).text();
        var top = Outline.of(text);
        assertThat(top).hasSizeGreaterThan(5);
        top.forEach(entry -> check(text, entry, 0, text.text().length()));
    }

    private static void check(RigText text, Outline entry, int from, int to) {
        String own = text.text().substring(entry.span().from(), entry.span().to());
        assertThat(entry.span().from()).as(own).isBetween(from, to);
        assertThat(entry.span().to()).as(own).isBetween(entry.span().from(), to);
        boolean numbered = entry.path().segments().getLast().matches("[0-9]+|.*\\..*");
        assertThat(numbered || own.contains(entry.key())).as(own).isTrue();
        entry.value().ifPresent(value -> assertThat(own).contains(value));
        assertThat(text.span(entry.path())).as(entry.path().toString()).isPresent();
        entry.children()
                .forEach(child -> check(text, child, entry.span().from(), entry.span().to()));
    }

    @Test
    void theOutlineOfMudlarkShowsItsSections() {
        var top = Outline.of(example("mudlark").text());
        assertThat(top.stream().map(Outline::key))
                .startsWith("liftwright", "rig", "revision")
                .contains("fans", "packs", "wiring");
        var fans = top.stream().filter(o -> o.key().equals("fans")).findFirst().orElseThrow();
        assertThat(fans.children().stream().map(Outline::key))
                .containsExactly("back-top", "back-bottom", "left");
        assertThat(fans.value()).isEmpty();
    }

    @Test
    void aBrokenFileStillHasAnOutline() {
        String broken = example("mudlark").text().text().replace("site:", "site: {");
        var text = RigText.read("rig.yaml", broken.getBytes(UTF_8));
        assertThat(text.problems()).isNotEmpty();
        assertThat(Outline.of(text).stream().map(Outline::key)).contains("fans", "packs");
        assertThat(Outline.of(RigText.read("rig.yaml", new byte[0]))).isEmpty();
    }

    @Test
    void everyPartOfMudlarkIsThereAndPointsToItsGroup() {
        var reading = example("mudlark");
        var rig = reading.rig().orElseThrow();
        var parts = ShownPart.of(reading);
        assertThat(parts)
                .hasSize(
                        rig.fans().size()
                                + rig.packs().size()
                                + rig.mounts().size()
                                + rig.otherParts().size());
        String text = reading.text().text();
        var right3 = part(parts, "right.3");
        assertThat(right3.path()).hasToString("fans/left");
        assertThat(text.substring(right3.span().from(), right3.span().to()))
                .startsWith("{id: left,")
                .endsWith("}");
        assertThat(right3.twin()).contains("left.3");
        assertThat(part(parts, "left.8").twin()).contains("right.8");
        assertThat(part(parts, "back-top.1").twin()).isEmpty();
        assertThat(part(parts, "left pod").twin()).contains("right pod");
        assertThat(part(parts, "right pod").twin()).contains("left pod");
        assertThat(part(parts, "right pod").path()).hasToString("mounts/left pod");
        assertThat(part(parts, "right pod shell").twin()).contains("left pod shell");
        assertThat(part(parts, "p.12").kind()).isEqualTo(ShownPart.Kind.PACK);
        assertThat(part(parts, "p.12").path()).hasToString("packs/p");
    }

    private static ShownPart part(List<ShownPart> parts, String id) {
        return parts.stream().filter(p -> p.id().equals(id)).findFirst().orElseThrow();
    }

    @Test
    void aGapInAPatternIsNobodysTwin() {
        String text =
                example("mudlark")
                        .text()
                        .text()
                        .replace(
                                "twin: right}\n",
                                "twin: right, except: {right.2: {absent: yes}}}\n");
        var parts = ShownPart.of(RigReading.read("rig.yaml", text.getBytes(UTF_8)));
        // The wiring still names it, so the file has an error and no parts at all.
        assertThat(parts).isEmpty();
        String unwired = text.replace("p.11: [left.7, right.2]", "p.11: [left.7]");
        var whole = ShownPart.of(RigReading.read("rig.yaml", unwired.getBytes(UTF_8)));
        assertThat(whole).isNotEmpty().noneMatch(p -> p.id().equals("right.2"));
        assertThat(whole.stream().filter(p -> p.id().equals("left.2")).findFirst())
                .hasValueSatisfying(p -> assertThat(p.twin()).isEmpty());
    }

    /** The offset of a place, counted letter by letter. */
    private static int counted(String text, int line, int column) {
        int at = text.startsWith("\uFEFF") ? 1 : 0;
        for (int l = 1; l < line && at < text.length(); at++) {
            char c = text.charAt(at);
            if (c == '\n' || (c == '\r' && !text.startsWith("\n", at + 1))) {
                l++;
            }
        }
        for (int c = 1; c < column; c++) {
            at += Character.charCount(text.codePointAt(at));
        }
        return at;
    }

    @Test
    void problemsHaveTheOffsetsOfTheirPlaces() {
        String whole = example("mudlark").text().text().replace("note: ", "note: 🌊🌊 ");
        var seen = new java.util.HashSet<String>();
        Seeded.check(
                300,
                random -> {
                    int from = random.nextInt(whole.length());
                    int to = Math.min(whole.length(), from + random.nextInt(1, 12));
                    String junk =
                            List.of("", "{", ":", "😀 😀: 1", "\t", "x y", "[", "\"", "5 parsec")
                                    .get(random.nextInt(9));
                    String text = whole.substring(0, from) + junk + whole.substring(to);
                    var bytes = text.getBytes(UTF_8);
                    var reading = RigReading.read("rig.yaml", bytes);
                    String read = reading.text().text();
                    for (var found : FoundProblem.of(reading)) {
                        var at = found.problem().at();
                        assertThat(found.span().from())
                                .as(found.toString())
                                .isEqualTo(counted(read, at.line(), at.column()));
                        assertThat(found.span().to()).isBetween(found.span().from(), read.length());
                        assertThat(read.substring(found.span().from(), found.span().to()))
                                .doesNotContain("\n");
                        seen.add(found.problem().code().name());
                    }
                });
        assertThat(seen).hasSizeGreaterThan(4);
    }

    @Test
    void aProblemUnderlinesWhatItIsAbout() {
        String text =
                example("mudlark")
                        .text()
                        .text()
                        .replace("elevation: 4 m", "elevation: 4 kg")
                        .replace("humidity:", "humility:");
        var reading = RigReading.read("rig.yaml", text.getBytes(UTF_8));
        assertThat(
                        FoundProblem.of(reading).stream()
                                .filter(p -> p.problem().code().isError())
                                .map(p -> text.substring(p.span().from(), p.span().to())))
                .containsExactly("4 kg", "humility");
    }

    @Test
    void aProblemOfATablePointsToWhereTheTableIsNamed() {
        Path folder = Path.of("..", "examples", "fitted");
        var beside = new Folder(folder);
        var reading =
                RigReading.read(
                        "rig.yaml",
                        example("fitted").text().bytes(),
                        path ->
                                path.contains("rotor")
                                        ? new liftwright.rig.csv.Beside.Fetched.Bytes(
                                                "thrust N\n1\nx\n".getBytes(UTF_8))
                                        : beside.fetch(path));
        var ofTables =
                FoundProblem.of(reading).stream()
                        .filter(p -> !p.problem().at().file().equals("rig.yaml"))
                        .toList();
        assertThat(ofTables).isNotEmpty();
        for (var found : ofTables) {
            String named = reading.text().text().substring(found.span().from(), found.span().to());
            assertThat(found.problem().at().file()).endsWith(named);
            assertThat(found.found()).contains("line " + found.problem().at().line());
        }
    }
}

package liftwright.rig.guide;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import liftwright.quantity.UnitSystem;
import liftwright.rig.Fan;
import liftwright.rig.Rig;
import liftwright.rig.Wiring;
import liftwright.rig.file.RigReading;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** A rig from answers. */
class GuideTest {

    private static List<GuideField> fields(Guide guide) {
        return guide.steps().stream().flatMap(s -> s.fields().stream()).toList();
    }

    private static GuideField field(Guide guide, String key) {
        return fields(guide).stream().filter(f -> f.key().equals(key)).findFirst().orElseThrow();
    }

    private static RigReading read(Guide guide) {
        return RigReading.read("rig.yaml", guide.text().orElseThrow().getBytes(UTF_8));
    }

    @ParameterizedTest
    @EnumSource
    void withoutAnyAnswerThereIsARigOfTwelveFans(UnitSystem units) {
        Guide guide = Guide.of(Map.of(), units);
        RigReading reading = read(guide);
        assertThat(reading.problems()).isEmpty();
        assertThat(reading.rig().orElseThrow().fans()).hasSize(12);
        assertThat(fields(guide)).hasSizeLessThan(45);
        assertThat(guide.text().orElseThrow()).contains("PLACEHOLDER").contains("measure yours");
        String inch = units == UnitSystem.US ? " in" : " mm";
        assertThat(field(guide, "tip").value()).endsWith(inch);
        assertThat(guide.text().orElseThrow())
                .contains("spacing: " + field(guide, "spacing").value());
    }

    @Test
    void everyFieldSaysWhatItIsAndHoldsAPlaceholder() {
        Guide guide = Guide.of(Map.of(), UnitSystem.SI);
        assertThat(fields(guide)).isNotEmpty();
        var keys = new HashSet<String>();
        for (GuideField field : fields(guide)) {
            assertThat(keys.add(field.key())).as(field.key()).isTrue();
            assertThat(field.label()).isNotBlank();
            assertThat(field.help()).endsWith(".");
            assertThat(field.value()).isNotBlank();
            assertThat(field.answered()).isFalse();
            assertThat(field.problem()).isEmpty();
            assertThat(field.choices().isEmpty()).isEqualTo(field.kind() != GuideField.Kind.CHOICE);
        }
    }

    @Test
    void allowedAnswersMakeAFileThatReadsWithoutProblem() {
        Seeded.check(
                1000,
                random -> {
                    Map<String, String> answers = RandomAnswers.of(random);
                    UnitSystem units = random.nextBoolean() ? UnitSystem.SI : UnitSystem.US;
                    Guide guide = Guide.of(answers, units);
                    List<String> wrong =
                            fields(guide).stream()
                                    .filter(f -> f.problem().isPresent())
                                    .map(f -> f.key() + ": " + f.problem())
                                    .toList();
                    // Placeholders follow the answers before them; only a spacing may be too small.
                    assertThat(wrong).as("%s", answers).isEmpty();
                    RigReading reading = read(guide);
                    assertThat(reading.problems()).isEmpty();
                    says(answers, guide, reading.rig().orElseThrow());
                });
    }

    private static void says(Map<String, String> answers, Guide guide, Rig rig) {
        int back = number(guide, "back rows") * number(guide, "back row");
        int arm = number(guide, "arm rows") * number(guide, "arm row");
        assertThat(rig.fans()).hasSize(back + 2 * arm);
        assertThat(rig.packs()).hasSize(number(guide, "packs"));
        assertThat(rig.name()).isEqualTo(field(guide, "name").value());
        String text = guide.text().orElseThrow();
        for (String key : List.of("wearer mass", "tip", "capacity", "frame mass", "fuse")) {
            boolean used = rig.wearer().isPresent() || !key.equals("wearer mass");
            if (used && answers.containsKey(key)) {
                assertThat(text).contains(" " + answers.get(key));
            }
        }
        everyFanHangsOnOnePackAndPacksShareThem(rig);
    }

    private static int number(Guide guide, String key) {
        return Integer.parseInt(field(guide, key).value());
    }

    private static void everyFanHangsOnOnePackAndPacksShareThem(Rig rig) {
        Map<String, List<Wiring.Chain>> to =
                rig.wiring().chains().stream().collect(Collectors.groupingBy(Wiring.Chain::to));
        Map<String, Long> fed =
                rig.fans().stream()
                        .map(Fan::id)
                        .map(id -> only(to, only(to, id.text()).from()).from())
                        .collect(Collectors.groupingBy(pack -> pack, Collectors.counting()));
        assertThat(fed).hasSameSizeAs(rig.packs());
        long least = fed.values().stream().mapToLong(v -> v).min().orElseThrow();
        long most = fed.values().stream().mapToLong(v -> v).max().orElseThrow();
        assertThat(most - least).isLessThanOrEqualTo(1);
    }

    private static Wiring.Chain only(Map<String, List<Wiring.Chain>> to, String node) {
        List<Wiring.Chain> chains = to.getOrDefault(node, List.of());
        assertThat(chains).as(node).hasSize(1);
        return chains.getFirst();
    }

    /** With a pack for each pair, both of a pair hang on one. */
    @Test
    void mirrorImagesHangOnOnePack() {
        assertThat(Feeding.of(Feeding.inPairs(2, 4, 2), 6))
                .containsExactly(
                        List.of("back.1", "back.4"),
                        List.of("back.2", "back.3"),
                        List.of("back.5", "back.8"),
                        List.of("back.6", "back.7"),
                        List.of("left.1", "right.1"),
                        List.of("left.2", "right.2"));
        assertThat(Feeding.inPairs(1, 3, 0)).containsExactly("back.1", "back.3", "back.2");
    }

    @ParameterizedTest
    @CsvSource({
        "name, '', name",
        "wearer mass, 75, unit",
        "wearer mass, 75 m, mass",
        "wearer mass, '', mass",
        "wearer mass, heavy, mass",
        "wearer mass, '75,5 kg', decimal point",
        "wearer mass, 75 kg ± 60 kg, 40 %",
        "wearer mass, -75 kg, from 20 kg",
        "stature, 9 m, from",
        "body, horse, Choose",
        "tip, 2 m, from",
        "tip, 180, unit",
        "back rows, two, whole number",
        "back rows, 99, from 0 to 6",
        "back rows, 1.5, whole number",
        "spacing, 100 mm, touch",
        "packs, 13, at most as many",
        "packs, 0, from 1",
        "trunk wire, 10 mm², nearest",
        "fuse, 0 A, from",
        "capacity, 8 V, charge",
        "series, 400, from 3 to 30",
        "thrust to weight, , plain number",
    })
    void aWrongAnswerIsToldAtItsField(String key, String answer, String word) {
        Guide guide = Guide.of(Map.of(key, answer == null ? "" : answer), UnitSystem.SI);
        assertThat(guide.text()).isEmpty();
        assertThat(field(guide, key).problem().orElseThrow()).containsIgnoringCase(word);
        assertThat(fields(guide).stream().filter(f -> f.problem().isPresent())).hasSize(1);
        assertThat(field(guide, key).value()).isEqualTo(answer == null ? "" : answer);
    }

    @Test
    void armsNeedAWearer() {
        Guide guide = Guide.of(Map.of("body", "nobody", "arm rows", "1"), UnitSystem.SI);
        assertThat(field(guide, "arm rows").problem()).isPresent();
        Guide alone = Guide.of(Map.of("body", "nobody"), UnitSystem.SI);
        assertThat(read(alone).rig().orElseThrow().wearer()).isEqualTo(Optional.empty());
    }

    @Test
    void noFanIsNoRig() {
        Guide guide = Guide.of(Map.of("back rows", "0", "arm rows", "0"), UnitSystem.SI);
        assertThat(field(guide, "back rows").problem()).isPresent();
        assertThat(guide.text()).isEmpty();
    }

    @Test
    void whatDoesNotShowIsRefused() {
        Guide guide = Guide.of(Map.of("name", "a\u0007b"), UnitSystem.SI);
        assertThat(field(guide, "name").problem()).isPresent();
        Guide turned = Guide.of(Map.of("name", "a\u202eb"), UnitSystem.SI);
        assertThat(turned.text().map(t -> read(turned).problems()).orElse(List.of())).isEmpty();
    }
}

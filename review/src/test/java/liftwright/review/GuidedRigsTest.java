package liftwright.review;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.random.RandomGenerator;
import liftwright.answer.Answer;
import liftwright.answer.Evidence;
import liftwright.answer.Outcome;
import liftwright.numerics.Work;
import liftwright.quantity.Dimension;
import liftwright.quantity.Dimensions;
import liftwright.quantity.UnitSystem;
import liftwright.quantity.WrittenQuantity;
import liftwright.rig.Rig;
import liftwright.rig.file.RigReading;
import liftwright.rig.guide.Guide;
import liftwright.rig.guide.GuideField;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/** Whatever the guide is answered, the rig that it writes can be asked. */
class GuidedRigsTest {

    private static final Settings SETTINGS = new Settings(7, 256, 256, 1, false);

    private static final List<Dimension> SCALED =
            List.of(Dimensions.LENGTH, Dimensions.MASS, Dimensions.FORCE, Dimensions.CHARGE);

    private static Rig rig(Map<String, String> answers) {
        String text = Guide.of(answers, UnitSystem.SI).text().orElseThrow();
        return RigReading.read("rig.yaml", text.getBytes(UTF_8)).rig().orElseThrow();
    }

    private static List<Optional<? extends Answer>> asked(Rig rig, Stage stage) {
        Work work = Work.quiet();
        return List.of(
                LiftQuestion.staged(rig, "none", SETTINGS).answer(stage, work),
                EnduranceQuestion.staged(rig, "none", new Task.Hover(), SETTINGS)
                        .answer(stage, work),
                BalanceQuestion.staged(rig, "none", SETTINGS).answer(stage, work));
    }

    @Test
    void everyGuidedRigHasItsThreeAnswers() {
        Seeded.check(
                20,
                random -> {
                    Map<String, String> answers = answers(random);
                    for (var answer : asked(rig(answers), Stage.NOMINAL)) {
                        assertThat(answer).as("%s", answers).isPresent();
                        assertThat(answer.get().sections()).isNotEmpty();
                        assertThat(answer.get().evidence().checks())
                                .as("%s", answers)
                                .allMatch(Evidence.Check::passed);
                    }
                });
    }

    /** The rig that stands before anybody answers is one whose answers say something. */
    @Test
    void theFirstRigIsJudged() {
        for (var answer : asked(rig(Map.of()), Stage.WHOLE)) {
            assertThat(answer.orElseThrow().verdict().outcome())
                    .isIn(Outcome.HOLDS, Outcome.DOES_NOT_HOLD, Outcome.CANNOT_BE_TOLD);
        }
    }

    /** Some fields answered: another choice, another count, another size of the placeholder. */
    private static Map<String, String> answers(RandomGenerator random) {
        Map<String, String> answers = new HashMap<>();
        for (GuideField field :
                Guide.of(Map.of(), UnitSystem.SI).steps().stream()
                        .flatMap(step -> step.fields().stream())
                        .toList()) {
            if (random.nextInt(3) == 0) {
                answer(field, random).ifPresent(text -> answers.put(field.key(), text));
            }
        }
        if ("nobody".equals(answers.get("body"))) {
            answers.put("arm rows", "0");
            answers.put("back rows", "2");
        }
        answers.remove("packs");
        answers.remove("spacing"); // may be too small beside another tip
        return answers;
    }

    private static Optional<String> answer(GuideField field, RandomGenerator random) {
        return switch (field.kind()) {
            case TEXT -> Optional.of("Heron");
            case CHOICE ->
                    Optional.of(
                            field.choices().get(random.nextInt(field.choices().size())).value());
            case COUNT ->
                    Optional.of(
                            field.key().equals("series")
                                    ? Integer.toString(10 + random.nextInt(8))
                                    : Integer.toString(1 + random.nextInt(3)));
            case QUANTITY -> scaled(field.value(), random.nextDouble(0.8, 1.3));
        };
    }

    private static Optional<String> scaled(String text, double by) {
        return SCALED.stream()
                .flatMap(dimension -> WrittenQuantity.read(text, dimension).stream())
                .findFirst()
                .map(w -> w.with(w.range().from().si() * by, w.range().from().si() / 1000));
    }
}

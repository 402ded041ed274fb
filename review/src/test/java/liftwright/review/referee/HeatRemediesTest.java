package liftwright.review.referee;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import liftwright.answer.Outcome;
import liftwright.answer.Remedy;
import liftwright.answer.Sentence;
import liftwright.numerics.Work;
import liftwright.quantity.Measure;
import liftwright.review.HeatAnswer;
import liftwright.review.HeatCase;
import liftwright.review.HeatQuestion;
import liftwright.review.Settings;
import liftwright.review.Task;
import liftwright.rig.Change;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;
import liftwright.rig.text.RigText;
import org.junit.jupiter.api.Test;

/**
 * What would mend a wire that gives out first: from the file it turns the verdict, and less does
 * not.
 */
class HeatRemediesTest {

    private static final Settings SETTINGS = new Settings(9, 128, 128, 2, true);

    private static RigText text() throws IOException {
        return Written.text(
                Files.readString(Path.of("..", "examples", "mudlark", "revisions", "4.yaml")));
    }

    private static HeatAnswer ask(Rig rig, Settings settings) {
        return HeatQuestion.ask(rig, "test", HeatCase.of(new Task.Hover()), settings, Work.quiet())
                .orElseThrow();
    }

    private static Stream<Sentence.Part.Amount> amounts(Sentence sentence) {
        return sentence.parts().stream()
                .filter(Sentence.Part.Amount.class::isInstance)
                .map(Sentence.Part.Amount.class::cast);
    }

    @Test
    void remediesOfAThinWireTurnTheVerdictFromTheFile() throws IOException {
        RigText text = text();
        HeatAnswer answer = ask(Written.rig(text), SETTINGS);
        assertThat(answer.verdict().outcome()).isEqualTo(Outcome.DOES_NOT_HOLD);
        double first = amounts(answer.verdict().sentence()).findFirst().orElseThrow().si();
        assertThat(first).as("about twenty seconds").isBetween(17.0, 23.0);

        Remedy thicker =
                answer.remedies().stream()
                        .filter(remedy -> remedy.toString().contains("in place of 16 AWG"))
                        .findFirst()
                        .orElseThrow();
        assertThat(thicker.effect()).isInstanceOf(Remedy.Effect.Clears.class);

        // Its mass is told, and stands in the file: 24 runs of 0.55 m out and back, copper of two
        // cross-sections (ASTM B258) at 8.89 kg/l and somewhat more insulation.
        double massKg =
                amounts(thicker.name())
                        .filter(amount -> amount.measure() == Measure.MASS)
                        .findFirst()
                        .orElseThrow()
                        .si();
        int gauge = gauge(thicker.changes());
        double copperKg = 24 * 2 * 0.55 * (mm2(gauge) - mm2(16)) * 8.89e-3;
        assertThat(massKg).isBetween(copperKg, 1.3 * copperKg);
        Rig mended = Written.rig(Written.edited(text, thicker.changes()));
        double before = kg(Written.rig(text));
        assertThat(kg(mended) - before).isCloseTo(massKg, offset(2e-3));

        Settings plain = SETTINGS.withoutRemedies();
        assertThat(ask(mended, plain).verdict().outcome()).isEqualTo(Outcome.HOLDS);
        // One gauge less does not, with as much mass.
        List<Change> less = new ArrayList<>(thicker.changes());
        less.set(0, new Change.Set(at(thicker.changes()), (gauge + 2) + " AWG"));
        assertThat(ask(Written.rig(Written.edited(text, less)), plain).verdict().outcome())
                .isNotEqualTo(Outcome.HOLDS);
    }

    private static double kg(Rig rig) {
        return rig.otherParts().stream().mapToDouble(part -> part.mass().si()).sum();
    }

    private static double mm2(int gauge) {
        double mm = 0.127 * Math.pow(92, (36 - gauge) / 39.0);
        return Math.PI / 4 * mm * mm;
    }

    private static RigPath at(List<Change> changes) {
        return changes.getFirst().at();
    }

    private static int gauge(List<Change> changes) {
        return Integer.parseInt(((Change.Set) changes.getFirst()).value().split(" ", 2)[0]);
    }
}

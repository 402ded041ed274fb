package liftwright.trials.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import liftwright.plant.CorrectionMaker;
import liftwright.plant.Plant;
import liftwright.plant.parameters.Parameter;
import liftwright.plant.parameters.ParameterTable;
import liftwright.rig.Rig;
import liftwright.rig.correction.Correction;
import liftwright.rig.correction.Corrections;
import liftwright.rig.correction.CorrectionsRead;
import liftwright.rig.correction.Grounds;
import liftwright.trials.Basis;
import liftwright.trials.Topic;
import liftwright.trials.TrialExamples;
import org.junit.jupiter.api.Test;

/** What tests found voids a pass where it lies beyond what the card had allowed for. */
class CorrectionInputsTest {

    private static final Rig RIG = TrialExamples.rig("mudlark");
    private static final ParameterTable TABLE = Plant.assembleHeated(RIG).parameters();

    /** The rig with one row found so many half-widths of its doubt below what is declared. */
    private static Rig found(Parameter row, double times) {
        double value = row.nominal() - times * row.tolerance().minus();
        Correction group =
                new CorrectionMaker(RIG, TABLE)
                        .make(
                                "one",
                                new CorrectionMaker.Posterior(
                                        new int[] {TABLE.indexOf(row.name())},
                                        new double[] {value},
                                        new boolean[] {false},
                                        new double[] {1e-8}),
                                new Grounds(
                                        List.of(new Grounds.Test("t", "sha256:" + "0".repeat(64))),
                                        OptionalDouble.of(1),
                                        1));
        return RIG.with(
                new CorrectionsRead(
                        new Corrections("sha256:" + "1".repeat(64), 1, List.of(group)),
                        "d",
                        false));
    }

    private static Parameter each(String ending) {
        return TABLE.rows().stream()
                .filter(row -> row.name().contains(": ") && row.name().endsWith(ending))
                .findFirst()
                .orElseThrow();
    }

    private static List<String> paths(Rig rig, Basis basis) {
        return Inputs.of(rig).since(Inputs.of(RIG).restingOn(basis), basis).stream()
                .map(Inputs.Difference::path)
                .toList();
    }

    private static Basis about(Topic topic, String part) {
        return new Basis(Set.of(topic), Optional.of(Set.of(part)));
    }

    @Test
    void withinTheDeclaredDoubtItIsNone() {
        assertThat(Inputs.of(found(each("/scatter"), 0.99))).isEqualTo(Inputs.of(RIG));
    }

    @Test
    void beyondItIsOneAboutItsValueAndItsPart() {
        Parameter scatter = each("/scatter");
        String part = scatter.name().substring(0, scatter.name().indexOf(':'));
        Rig rig = found(scatter, 2.5);
        String path = "corrections/" + scatter.name();
        assertThat(paths(rig, about(Topic.FAN, part))).containsExactly(path);
        assertThat(paths(rig, about(Topic.MASS, part))).isEmpty();
        assertThat(paths(rig, about(Topic.FAN, "another"))).isEmpty();
    }

    @Test
    void aFitOfOneMoreTestThatMovesItALittleIsNoOther() {
        Parameter scatter = each("/scatter");
        assertThat(Inputs.of(found(scatter, 2.4))).isEqualTo(Inputs.of(found(scatter, 2.6)));
        assertThat(Inputs.of(found(scatter, 2.4))).isNotEqualTo(Inputs.of(found(scatter, 3.1)));
    }

    @Test
    void everyRowOfATableHasATopic() {
        assertThat(TABLE.rows()).isNotEmpty();
        for (Parameter row : TABLE.rows()) {
            String path = "corrections/" + row.name();
            assertThat(Topics.of(path)).isNotEmpty();
            assertThat(Topics.of(path)).isEqualTo(Topics.of(CorrectionInputs.inRig(path)));
        }
        assertThat(Topics.of("corrections/wearer/mass")).contains(Topic.MASS);
        assertThat(Topics.of("corrections/site/elevation")).containsExactly(Topic.SITE);
    }
}

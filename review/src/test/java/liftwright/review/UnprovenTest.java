package liftwright.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import liftwright.answer.AnswerJson;
import liftwright.answer.Outcome;
import liftwright.answer.Verdict;
import liftwright.numerics.Work;
import liftwright.plant.CorrectionMaker;
import liftwright.plant.Plant;
import liftwright.plant.parameters.ParameterTable;
import liftwright.rig.Change;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;
import liftwright.rig.correction.Correction;
import liftwright.rig.correction.Corrections;
import liftwright.rig.correction.CorrectionsRead;
import liftwright.rig.correction.Grounds;
import liftwright.rig.file.RigReading;
import org.junit.jupiter.api.Test;

/** A correction that turns a verdict to "met" needs its evidence; one that does not needs none. */
class UnprovenTest {

    private static final Settings SETTINGS = new Settings(5, 256, 1024, 1, false);
    private static final String INSTALLATION = "fan types/F460/installation";
    private static final OptionalDouble GOOD = OptionalDouble.of(1);
    private static final OptionalDouble NONE = OptionalDouble.empty();

    /** Sandpiper, asked for so many times the thrust to weight that it has as declared. */
    private static Rig asked(double times) throws IOException {
        byte[] bytes = Files.readAllBytes(Path.of("..", "examples", "sandpiper", "rig.yaml"));
        RigReading file = RigReading.read("rig.yaml", bytes);
        double has = new LiftJudge(SETTINGS).nominal(Plant.assemble(file.rig().orElseThrow()));
        var change =
                new Change.Set(
                        RigPath.of("demands", "thrust to weight"),
                        String.format(Locale.ROOT, "%.4f", times * has));
        return ((RigReading.Edit.Changed) file.with(List.of(change))).reading().rig().orElseThrow();
    }

    private static Rig found(
            Rig rig, double value, OptionalDouble heldOut, double distance, boolean stale) {
        ParameterTable table = Plant.assemble(rig).parameters();
        Correction group =
                new CorrectionMaker(rig, table)
                        .make(
                                "installation of F460",
                                new CorrectionMaker.Posterior(
                                        new int[] {table.indexOf(INSTALLATION)},
                                        new double[] {value},
                                        new boolean[] {true},
                                        new double[] {1e-6}),
                                new Grounds(
                                        List.of(
                                                new Grounds.Test(
                                                        "2026-03-14-1",
                                                        "sha256:" + "0".repeat(64))),
                                        heldOut,
                                        distance));
        return rig.with(
                new CorrectionsRead(
                        new Corrections("sha256:" + "1".repeat(64), 1, List.of(group)),
                        "sha256:" + "2".repeat(64),
                        stale));
    }

    private static LiftAnswer ask(Rig rig) {
        return LiftQuestion.ask(rig, "drawn", SETTINGS, Work.quiet()).orElseThrow();
    }

    private static Verdict verdict(Rig rig) {
        return ask(rig).verdict();
    }

    @Test
    void whatOnlyACorrectionMeetsNeedsATestThatWasHeldOut() throws IOException {
        Rig rig = asked(1.04);
        assertThat(verdict(rig).outcome()).isNotEqualTo(Outcome.HOLDS);
        assertThat(verdict(found(rig, 1.05, GOOD, 2, false)).outcome()).isEqualTo(Outcome.HOLDS);
        Verdict without = verdict(found(rig, 1.05, NONE, 2, false));
        assertThat(without.outcome()).isEqualTo(Outcome.CANNOT_BE_TOLD);
        assertThat(without.downgrades()).singleElement().asString().contains("held out");
        assertThat(without.wouldTell().orElseThrow().sentence().toString())
                .contains("2026-03-14-1");
        assertThat(without.wouldTell().orElseThrow().path()).isEqualTo(INSTALLATION);
    }

    @Test
    void neitherIsOneMetThatMissedItsTestWentTooFarOrIsOfAnotherRevision() throws IOException {
        Rig rig = asked(1.04);
        for (Rig one :
                List.of(
                        found(rig, 1.05, OptionalDouble.of(3.5), 2, false),
                        found(rig, 1.05, GOOD, 4.5, false),
                        found(rig, 1.05, GOOD, 2, true))) {
            Verdict verdict = verdict(one);
            assertThat(verdict.outcome()).isEqualTo(Outcome.CANNOT_BE_TOLD);
            assertThat(verdict.wouldTell()).isPresent();
        }
    }

    @Test
    void whatIsMetAsDeclaredStaysMetAndWhatACorrectionMissesIsMissedWithoutEvidence()
            throws IOException {
        Rig rig = asked(0.8);
        assertThat(verdict(rig).outcome()).isEqualTo(Outcome.HOLDS);
        assertThat(verdict(found(rig, 0.95, NONE, 9, true)).outcome()).isEqualTo(Outcome.HOLDS);
        assertThat(verdict(found(rig, 0.5, NONE, 9, true)).outcome())
                .isEqualTo(Outcome.DOES_NOT_HOLD);
    }

    @Test
    void theAnswerSaysHowManyCountAndAsDeclaredItIsTheSameToTheByte() throws IOException {
        Rig rig = asked(0.8);
        Rig corrected = found(rig, 0.95, GOOD, 2, true);
        LiftAnswer answer = ask(corrected);
        assertThat(answer.evidence().corrected().held()).isEqualTo(1);
        assertThat(answer.evidence().corrected().ofAnotherRevision()).isTrue();
        assertThat(answer.evidence().measured()).anyMatch(told -> told.part().equals(INSTALLATION));
        assertThat(answer.findings())
                .anyMatch(finding -> finding.code().equals("corrections-of-another-revision"));
        String json = AnswerJson.write(answer, "r", "v");
        assertThat(json)
                .contains("\"corrections\":\"sha256:" + "2".repeat(64))
                .contains("\"corrected\":{\"held\":1,\"void\":0,\"ofAnotherRevision\":true");
        assertThat(AnswerJson.write(ask(corrected.asDeclared()), "r", "v"))
                .isEqualTo(AnswerJson.write(ask(rig), "r", "v"));
    }

    @Test
    void whatIsVoidIsToldWithItsReasonAndCountsForNothing() throws IOException {
        Rig rig = asked(0.8);
        Rig corrected = found(rig, 0.5, GOOD, 2, false);
        byte[] bytes = Files.readAllBytes(Path.of("..", "examples", "sandpiper", "rig.yaml"));
        var change = new Change.Set(RigPath.parse(INSTALLATION), "0.93 ± 0.03");
        Rig changed =
                ((RigReading.Edit.Changed) RigReading.read("rig.yaml", bytes).with(List.of(change)))
                        .reading()
                        .rig()
                        .orElseThrow()
                        .with(corrected.corrections());
        LiftAnswer answer = ask(changed);
        assertThat(answer.evidence().corrected().voided()).isEqualTo(1);
        assertThat(answer.evidence().corrected().why().getFirst())
                .contains("0.93")
                .contains("0.92");
        assertThat(answer.findings()).anyMatch(finding -> finding.code().equals("correction-void"));
    }
}

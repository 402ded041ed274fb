package liftwright.app;

import static liftwright.app.Shown.si;
import static liftwright.app.Shown.table;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import liftwright.answer.AnswerJson;
import liftwright.answer.AnswerSchema;
import liftwright.answer.Outcome;
import liftwright.answer.Remedy;
import liftwright.answer.Section;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.numerics.Work;
import liftwright.plant.Balancing;
import liftwright.plant.HoverPoint;
import liftwright.plant.balance.FanAtWork;
import liftwright.review.BalanceAnswer;
import liftwright.review.BalanceQuestion;
import liftwright.review.Settings;
import liftwright.rig.Change;
import liftwright.rig.Control;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;
import liftwright.rig.Vec3;
import liftwright.rig.file.Folder;
import liftwright.rig.file.RigReading;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What the third answer says of the examples agrees with itself and comes true when done. */
class BalanceExamplesTest {

    private static final Path EXAMPLES = Path.of("..", "examples");
    private static final Settings SETTINGS = new Settings(11, 128, 128, 2, true);

    private static RigReading reading(String name) throws IOException {
        return reading(EXAMPLES.resolve(name).resolve("rig.yaml"));
    }

    private static RigReading reading(Path file) throws IOException {
        return RigReading.read(
                "rig.yaml", Files.readAllBytes(file), new Folder(file.resolveSibling("")));
    }

    /** One that leans back and turns, and whose arms have little left. */
    private static RigReading firstMudlark() throws IOException {
        return reading(EXAMPLES.resolve("mudlark/revisions/1.yaml"));
    }

    private static Rig rig(String name) throws IOException {
        return reading(name).rig().orElseThrow();
    }

    private static Rig with(RigReading reading, List<Change> changes) {
        return switch (reading.with(changes)) {
            case RigReading.Edit.Changed(var changed, var _) -> changed.rig().orElseThrow();
            case RigReading.Edit.Refused(var change, var reason) ->
                    throw new AssertionError(change + ": " + reason);
        };
    }

    private static BalanceAnswer ask(Rig rig, Settings settings) {
        return BalanceQuestion.ask(rig, "test", settings, Work.quiet()).orElseThrow();
    }

    private static double judged(BalanceAnswer answer) {
        return answer.verdict().sentence().parts().stream()
                .filter(Sentence.Part.Amount.class::isInstance)
                .mapToDouble(part -> ((Sentence.Part.Amount) part).si())
                .findFirst()
                .orElseThrow();
    }

    @ParameterizedTest
    @ValueSource(strings = {"mudlark", "curlew", "sandpiper", "measured"})
    void theAnswerAgreesWithItself(String name) throws IOException {
        BalanceAnswer answer = ask(rig(name), SETTINGS.withoutRemedies());
        assertThat(answer.evidence().checks())
                .hasSize(3)
                .allMatch(check -> check.residual() <= check.allowed());
        // Causes, and fans, add up to the same moment about every axis.
        Section.Table fans = table(answer, "fan-moments");
        int column = 2;
        for (String axis : List.of("roll", "pitch", "yaw")) {
            Section.Table ledger = table(answer, axis + "-ledger");
            double all = si(ledger.rows().getLast().get(1));
            double byCause = -all;
            for (List<Value> row : ledger.rows()) {
                byCause += si(row.get(1));
            }
            int at = column++;
            double byFan = fans.rows().stream().mapToDouble(row -> si(row.get(at))).sum();
            assertThat(byCause).isCloseTo(all, within(1e-4));
            assertThat(byFan).isCloseTo(all, within(1e-3));
        }
        if (rig(name).control().kind() == Control.Kind.FLIGHT_COMPUTER) {
            double least = Double.POSITIVE_INFINITY;
            for (List<Value> row : table(answer, "reserves").rows()) {
                double reserve = Math.min(si(row.get(1)), si(row.get(2)));
                least = Math.min(least, reserve / si(row.get(3)));
            }
            assertThat(judged(answer)).isCloseTo(least, within(1e-9 * (1 + Math.abs(least))));
        }
        var schema =
                SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                        .getSchema(AnswerSchema.text("balance"));
        assertThat(schema.validate(AnswerJson.write(answer, name, "0"), InputFormat.JSON))
                .isEmpty();
    }

    /** Every fan at its share of full throttle: lift is weight, and nothing rolls or pitches it. */
    @ParameterizedTest
    @ValueSource(strings = {"curlew", "sandpiper"})
    void theTrimOfLeastPowerHoldsTheWeight(String name) throws IOException {
        Rig rig = rig(name);
        Balancing balancing = Balancing.of(rig);
        Balancing.Worker worker = balancing.worker();
        double[] p = balancing.parameters().nominal();
        HoverPoint point = worker.liftOff(p);
        double evenW = worker.drawnW();
        List<FanAtWork> full = worker.fullThrottle(p, point.mass().centre()).orElseThrow();
        BalanceAnswer answer = ask(rig, SETTINGS.withoutRemedies());
        List<List<Value>> shares = table(answer, "trim-shares").rows();
        List<List<Value>> rows = table(answer, "least-power").rows();
        double weightN = point.mass().weightN();
        double[] drawnW = new double[2];
        for (int trim = 0; trim < 2; trim++) {
            Vec3 force = Vec3.ZERO;
            Vec3 moment = Vec3.ZERO;
            double[] thrustN = new double[full.size()];
            double top = 0;
            for (int k = 0; k < thrustN.length; k++) {
                double share = si(shares.get(k).get(2 + trim));
                thrustN[k] = share * full.get(k).thrustN();
                top = Math.max(top, share);
                force = force.plus(full.get(k).force().times(share));
                moment = moment.plus(full.get(k).moment().times(share));
            }
            assertThat(-force.z()).isCloseTo(weightN, within(1e-7 * weightN));
            assertThat(moment.x()).isCloseTo(0, within(1e-7 * weightN));
            assertThat(moment.y()).isCloseTo(0, within(1e-7 * weightN));
            assertThat(moment.z() / point.mass().inertia().zz())
                    .isCloseTo(trim == 0 ? 0 : si(rows.get(1).get(4)), within(1e-6));
            assertThat(worker.thrusts(thrustN)).isTrue();
            drawnW[trim] = worker.drawnW();
            assertThat(si(rows.get(trim).get(1))).isCloseTo(drawnW[trim], within(1e-6 * evenW));
            assertThat(si(rows.get(trim).get(2)))
                    .isCloseTo(evenW - drawnW[trim], within(1e-6 * evenW));
            assertThat(si(rows.get(trim).get(3))).isCloseTo(top, within(1e-12));
        }
        // Fewer demands cost no more, but for what the law leaves out of the supply.
        assertThat(drawnW[1]).isLessThan(drawnW[0] * 1.001);
    }

    @Test
    void theArmAnglesCancelTheMoment() throws IOException {
        RigReading reading = firstMudlark();
        Rig rig = reading.rig().orElseThrow();
        BalanceAnswer before = ask(rig, SETTINGS.withoutRemedies());
        List<List<Value>> turns = table(before, "arm-trim").rows();
        var wearer = rig.wearer().orElseThrow();
        RigPath posture = RigPath.of("wearer", "posture");
        List<Change> changes = new ArrayList<>();
        int next = 0;
        for (String side : List.of("left", "right")) {
            var arm = side.equals("left") ? wearer.left() : wearer.right();
            RigPath shoulder = posture.child(side + " shoulder");
            changes.add(
                    turned(shoulder.child("flexion"), arm.shoulderFlexion().si(), turns, next++));
            changes.add(
                    turned(
                            shoulder.child("abduction"),
                            arm.shoulderAbduction().si(),
                            turns,
                            next++));
            changes.add(
                    turned(shoulder.child("rotation"), arm.shoulderRotation().si(), turns, next++));
            changes.add(
                    turned(
                            posture.child(side + " elbow").child("flexion"),
                            arm.elbowFlexion().si(),
                            turns,
                            next++));
        }
        BalanceAnswer after = ask(with(reading, changes), SETTINGS.withoutRemedies());
        double largest = 0;
        for (List<Value> row : table(before, "turning").rows()) {
            largest = Math.max(largest, Math.abs(si(row.get(1))));
        }
        assertThat(largest).isGreaterThan(0.5);
        for (List<Value> row : table(after, "turning").rows()) {
            assertThat(si(row.get(1))).isCloseTo(0, within(1e-3 * largest));
        }
        assertThat(judged(after)).isGreaterThan(0.99);
    }

    private static Change turned(RigPath at, double heldRad, List<List<Value>> turns, int row) {
        double degrees = Math.toDegrees(heldRad + si(turns.get(row).get(1)));
        return new Change.Set(at, String.format(Locale.ROOT, "%.6f°", degrees));
    }

    /** A remedy that is said to clear the verdict does, and its size is the least. */
    @Test
    void whatClearsTheVerdictDoesSo() throws IOException {
        RigReading off = firstMudlark();
        BalanceAnswer answer = ask(off.rig().orElseThrow(), SETTINGS);
        assertThat(answer.verdict().outcome()).isNotEqualTo(Outcome.HOLDS);
        List<Remedy> clears =
                answer.remedies().stream()
                        .filter(remedy -> remedy.effect() instanceof Remedy.Effect.Clears)
                        .toList();
        assertThat(clears).isNotEmpty();
        for (Remedy remedy : clears) {
            BalanceAnswer after = ask(with(off, remedy.changes()), SETTINGS.withoutRemedies());
            assertThat(after.verdict().outcome()).as("%s", remedy.name()).isEqualTo(Outcome.HOLDS);
        }
    }
}

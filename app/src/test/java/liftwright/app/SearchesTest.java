package liftwright.app;

import static liftwright.app.Shown.si;
import static liftwright.app.Shown.table;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import liftwright.answer.Remedy;
import liftwright.answer.Value;
import liftwright.numerics.Work;
import liftwright.plant.Balancing;
import liftwright.plant.HoverPoint;
import liftwright.plant.balance.FanAtWork;
import liftwright.review.BalanceAnswer;
import liftwright.review.BalanceQuestion;
import liftwright.review.Search;
import liftwright.review.Settings;
import liftwright.rig.Change;
import liftwright.rig.Fan;
import liftwright.rig.Rig;
import liftwright.rig.file.Folder;
import liftwright.rig.file.RigReading;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What searches find is the best of all that was tried one by one, and comes true when written. */
class SearchesTest {

    private static final Path EXAMPLES = Path.of("..", "examples");
    private static final Settings SETTINGS = new Settings(11, 128, 128, 2, false);

    private static RigReading reading(String name) throws IOException {
        Path file = EXAMPLES.resolve(name).resolve("rig.yaml");
        return RigReading.read(
                "rig.yaml", Files.readAllBytes(file), new Folder(EXAMPLES.resolve(name)));
    }

    private static RigReading with(RigReading reading, List<Change> changes) {
        return switch (reading.with(changes)) {
            case RigReading.Edit.Changed(var changed, var _) -> changed;
            case RigReading.Edit.Refused(var change, var reason) ->
                    throw new AssertionError(change + ": " + reason);
        };
    }

    private static BalanceAnswer ask(RigReading reading, Search search) {
        return BalanceQuestion.ask(
                        reading.rig().orElseThrow(), "test", SETTINGS, Set.of(search), Work.quiet())
                .orElseThrow();
    }

    private static List<Change> spins(Rig rig, int rightHand) {
        List<Change> changes = new ArrayList<>();
        for (int k = 0; k < rig.fans().size(); k++) {
            Fan fan = rig.fans().get(k);
            changes.add(
                    new Change.Set(
                            fan.declaredAt().child("except").child(fan.id().text()).child("spin"),
                            (rightHand >> k & 1) == 1 ? "right-hand" : "left-hand"));
        }
        return changes;
    }

    /** Yaw of the ledger at four throttles and three swirls, the rig computed anew for each. */
    private static double worstYaw(Rig rig) {
        Balancing balancing = Balancing.of(rig);
        Balancing.Worker worker = balancing.worker();
        double worst = 0;
        for (int end = -1; end <= 1; end++) {
            double[] p = balancing.parameters().nominal();
            for (int row = 0; row < p.length; row++) {
                int input = balancing.parameters().inputOf(row);
                if (input >= 0
                        && balancing
                                .parameters()
                                .inputs()
                                .get(input)
                                .at()
                                .toString()
                                .endsWith("/swirl")) {
                    var tolerance = rig.fans().getFirst().type().swirl().tolerance();
                    p[row] += end < 0 ? -tolerance.minus() : end * tolerance.plus();
                }
            }
            HoverPoint point = worker.liftOff(p);
            double lift = point.throttle();
            for (double throttle : new double[] {lift / 2, lift, (1 + lift) / 2, 1}) {
                double yaw = 0;
                for (FanAtWork fan :
                        worker.atThrottle(p, point.mass().centre(), throttle).orElseThrow()) {
                    yaw += fan.moment().z();
                }
                worst = Math.max(worst, Math.abs(yaw) / point.mass().inertia().zz());
            }
        }
        return worst;
    }

    @ParameterizedTest
    @CsvSource({"sandpiper, 15", "sandpiper, 5", "curlew, 1"})
    void theBestSpinsAreThoseOfAllTried(String name, int start) throws IOException {
        RigReading plain = reading(name);
        Rig rig = plain.rig().orElseThrow();
        RigReading begun = with(plain, spins(rig, start));
        int all = 1 << rig.fans().size();
        assertThat(all).isLessThanOrEqualTo(256);
        double[] worst = new double[all];
        double least = Double.POSITIVE_INFINITY;
        for (int rightHand = 0; rightHand < all; rightHand++) {
            worst[rightHand] = worstYaw(with(plain, spins(rig, rightHand)).rig().orElseThrow());
            least = Math.min(least, Math.max(0.001, worst[rightHand]));
        }
        int fewest = 99;
        for (int rightHand = 0; rightHand < all; rightHand++) {
            if (worst[rightHand] <= least + 1e-9) {
                fewest = Math.min(fewest, Integer.bitCount(rightHand ^ start));
            }
        }
        BalanceAnswer answer = ask(begun, Search.SPINS);
        List<List<Value>> rows = table(answer, "spin-search").rows();
        assertThat(si(rows.get(0).get(1))).isCloseTo(worst[start], within(1e-9));
        double found = si(rows.get(1).get(1));
        assertThat(Math.max(0.001, found)).isCloseTo(least, within(1e-9));
        assertThat(si(rows.get(1).get(2))).isLessThanOrEqualTo(found + 1e-12);
        assertThat(si(rows.get(1).get(3))).isEqualTo(fewest);
        List<Remedy> remedies =
                answer.findings().stream()
                        .filter(finding -> finding.code().equals("spins-better"))
                        .flatMap(finding -> finding.remedies().stream())
                        .toList();
        assertThat(remedies).hasSize(fewest > 0 ? 1 : 0);
        for (Remedy remedy : remedies) {
            Rig after = with(begun, remedy.changes()).rig().orElseThrow();
            assertThat(worstYaw(after)).isCloseTo(found, within(1e-9));
        }
    }

    /** Twins mirror their originals: a fan reversed alone must not reverse its twin. */
    @Test
    void aTwinKeepsItsOwnSpin() throws IOException {
        RigReading plain = reading("mudlark");
        Rig rig = plain.rig().orElseThrow();
        List<Change> one =
                List.of(
                        new Change.Set(
                                rig.fans().stream()
                                        .filter(fan -> fan.id().text().equals("left.2"))
                                        .findFirst()
                                        .orElseThrow()
                                        .declaredAt()
                                        .child("except")
                                        .child("left.2")
                                        .child("spin"),
                                "right-hand"));
        RigReading begun = with(plain, one);
        BalanceAnswer answer = ask(begun, Search.SPINS);
        List<List<Value>> rows = table(answer, "spin-search").rows();
        for (Remedy remedy : answer.remedies()) {
            Rig after = with(begun, remedy.changes()).rig().orElseThrow();
            assertThat(worstYaw(after)).isCloseTo(si(rows.get(1).get(1)), within(1e-9));
        }
        assertThat(si(rows.get(1).get(1))).isLessThanOrEqualTo(si(rows.get(0).get(1)));
    }
}

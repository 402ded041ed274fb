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
import liftwright.rig.RigPath;
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
        List<Change> one = new ArrayList<>();
        for (Fan fan : rig.fans()) {
            if (fan.id().text().endsWith("t.2") && fan.id().text().length() < 8) {
                one.add(
                        new Change.Set(
                                fan.declaredAt()
                                        .child("except")
                                        .child(fan.id().text())
                                        .child("spin"),
                                "right-hand"));
            }
        }
        assertThat(one).hasSize(2); // left.2 and right.2, which is its twin
        RigReading begun = with(plain, one);
        BalanceAnswer answer = ask(begun, Search.SPINS);
        List<List<Value>> rows = table(answer, "spin-search").rows();
        assertThat(answer.remedies()).hasSize(1);
        for (Remedy remedy : answer.remedies()) {
            Rig after = with(begun, remedy.changes()).rig().orElseThrow();
            assertThat(worstYaw(after)).isCloseTo(si(rows.get(1).get(1)), within(1e-9));
        }
        assertThat(si(rows.get(1).get(1))).isLessThan(si(rows.get(0).get(1)));
    }

    /** Every row of the table is a rig with the cants written in, and its own programmes. */
    @Test
    void cantCostsLiftAndBuysYaw() throws IOException {
        for (String name : List.of("curlew", "sandpiper")) {
            RigReading plain = reading(name);
            BalanceAnswer answer = ask(plain, Search.CANT);
            List<List<Value>> rows = table(answer, "cant-search").rows();
            assertThat(rows).hasSize(16);
            assertThat(si(rows.getFirst().get(3))).isZero();
            for (int degrees = 1; degrees <= 15; degrees++) {
                List<Value> row = rows.get(degrees);
                List<Value> before = rows.get(degrees - 1);
                assertThat(si(row.get(0))).isCloseTo(Math.toRadians(degrees), within(1e-12));
                assertThat(si(row.get(2))).isLessThan(si(before.get(2)));
                assertThat(si(row.get(3)) + si(row.get(2)))
                        .isCloseTo(si(rows.getFirst().get(2)), within(1e-9));
            }
            // A cant of 10° is worth arm times its tangent against a swirl of centimetres.
            assertThat(si(rows.get(10).get(1))).isGreaterThan(2 * si(rows.getFirst().get(1)));
            // Cant adds to swirl from the first degree on; leant the other way it would take from
            // it.
            double none = si(rows.getFirst().get(1));
            assertThat(2 * si(rows.get(1).get(1)) - si(rows.get(2).get(1)))
                    .isCloseTo(none, within(0.1 * none));
            for (Remedy remedy : answer.remedies()) {
                Rig after = with(plain, remedy.changes()).rig().orElseThrow();
                BalanceAnswer again =
                        BalanceQuestion.ask(after, "test", SETTINGS, Work.quiet()).orElseThrow();
                double least = Double.POSITIVE_INFINITY;
                for (List<Value> reserve : table(again, "reserves").rows()) {
                    least =
                            Math.min(
                                    least,
                                    Math.min(si(reserve.get(1)), si(reserve.get(2)))
                                            / si(reserve.get(3)));
                }
                assertThat(remedy.effect()).isInstanceOf(Remedy.Effect.Helps.class);
                assertThat(si(((Remedy.Effect.Helps) remedy.effect()).after()))
                        .isCloseTo(least, within(1e-9 * (1 + Math.abs(least))));
            }
        }
    }

    /** Tilt by the ledger when each pack's fans are dead, over all ways to feed eight fans. */
    @Test
    void theBestPairingIsThatOfAllTried() throws IOException {
        RigReading begun =
                with(
                        reading("curlew"),
                        List.of(
                                feed("p.1", "fan.1, fan.2"),
                                feed("p.2", "fan.3, fan.4"),
                                feed("p.3", "fan.5, fan.6"),
                                feed("p.4", "fan.7, fan.8")));
        BalanceAnswer answer = ask(begun, Search.PAIRING);
        List<List<Value>> rows = table(answer, "pairing-search").rows();
        assertThat(rows).hasSize(4);
        double[][] tilt = tilts(begun.rig().orElseThrow());
        double before = rows.stream().mapToDouble(row -> si(row.get(1))).max().orElseThrow();
        double after = rows.stream().mapToDouble(row -> si(row.get(2))).max().orElseThrow();
        assertThat(before).isCloseTo(worst(tilt, new int[] {0, 0, 1, 1, 2, 2, 3, 3}), within(1e-6));
        double least = least(tilt, new int[8], 0);
        // Moving a fan to another pack moves its thrust by what the packs' leads differ in.
        assertThat(after).isCloseTo(least, within(1e-3 * before));
        assertThat(after).isLessThan(0.2 * before);
        assertThat(answer.remedies()).hasSize(1);
        Rig rewired = with(begun, answer.remedies().getFirst().changes()).rig().orElseThrow();
        assertThat(rewired.fans()).hasSize(8);
        assertThat(
                        ask(with(begun, answer.remedies().getFirst().changes()), Search.PAIRING)
                                .remedies())
                .isEmpty();
    }

    private static Change feed(String pack, String fans) {
        return new Change.Replace(
                RigPath.of("wiring", "feeds", "feed", "fans", pack), "[" + fans + "]");
    }

    private static double[][] tilts(Rig rig) {
        Balancing balancing = Balancing.of(rig);
        HoverPoint point = balancing.worker().liftOff(balancing.parameters().nominal());
        return point.ledger().fans().stream()
                .map(fan -> point.mass().inertia().acceleration(fan.moment()))
                .map(rate -> new double[] {rate.x(), rate.y()})
                .toArray(double[][]::new);
    }

    private static double worst(double[][] tilt, int[] pack) {
        double worst = 0;
        for (int lost = 0; lost < 4; lost++) {
            double roll = 0;
            double pitch = 0;
            for (int k = 0; k < pack.length; k++) {
                roll += pack[k] == lost ? 0 : tilt[k][0];
                pitch += pack[k] == lost ? 0 : tilt[k][1];
            }
            worst = Math.max(worst, Math.hypot(roll, pitch));
        }
        return worst;
    }

    private static double least(double[][] tilt, int[] pack, int next) {
        if (next == pack.length) {
            return worst(tilt, pack);
        }
        double least = Double.POSITIVE_INFINITY;
        for (int to = 0; to < 4; to++) {
            int has = 0;
            for (int k = 0; k < next; k++) {
                has += pack[k] == to ? 1 : 0;
            }
            if (has < 2) {
                pack[next] = to;
                least = Math.min(least, least(tilt, pack, next + 1));
            }
        }
        return least;
    }
}

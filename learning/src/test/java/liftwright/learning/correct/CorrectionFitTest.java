package liftwright.learning.correct;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import liftwright.learning.fit.Fitted;
import liftwright.learning.replay.Driven;
import liftwright.learning.replay.Watched;
import liftwright.learning.truth.SimulatedTest;
import liftwright.learning.truth.SimulatedTest.Sort;
import liftwright.numerics.Work;
import liftwright.plant.HeldCorrections;
import liftwright.plant.parameters.ParameterTable;
import liftwright.plant.recording.Recording;
import liftwright.plant.recording.Samples;
import liftwright.plant.recording.Signal;
import liftwright.plant.recording.Track;
import liftwright.plant.supply.CellDraw;
import liftwright.rig.Rig;
import liftwright.rig.correction.Corrections;
import liftwright.rig.correction.CorrectionsRead;
import liftwright.rig.correction.Found;
import liftwright.rig.correction.Grounds;
import org.junit.jupiter.api.Test;

/** Numbers that are known are found again, with the doubt that is left. */
class CorrectionFitTest {

    private static Grounds.Test name(int number) {
        return new Grounds.Test("2026-03-14-" + number, "sha256:" + "0".repeat(64));
    }

    /** What the channels of a test would show, were the numbers of its rig {@code p}. */
    private static Recording shown(Driven driven, double[] p, SplittableRandom random) {
        double[][] out = driven.blocks();
        driven.predict(p, new CellDraw.Expected(), out);
        List<Track> tracks = new ArrayList<>(driven.recording().all(Signal.THROTTLE));
        for (int c = 0; c < out.length; c++) {
            Watched watched = driven.watched().get(c);
            double offset = watched.track().errorSi() / 2 * random.nextGaussian();
            double gain = 1 + watched.track().errorShare() / 2 * random.nextGaussian();
            double[] values = new double[out[c].length];
            for (int i = 0; i < values.length; i++) {
                double noise = 5e-4 * Math.abs(out[c][i]) * random.nextGaussian();
                values[i] = gain * out[c][i] + offset + noise;
            }
            tracks.add(
                    new Track(
                            watched.track().signal(),
                            watched.track().of(),
                            watched.track().errorSi(),
                            watched.track().errorShare(),
                            new Samples(watched.blocks().timesS(), values)));
        }
        return new Recording(tracks);
    }

    @SuppressWarnings("ArrayRecordComponent") // handed through, never compared
    private record Case(Rig rig, double[] truth, ParameterTable table, FitResult found) {}

    /** A fit takes a second or two; both tests look at these. */
    private static final List<Case> DRAWN = Stream.of(4, 5, 7).map(seed -> draw(seed)).toList();

    private static Case draw(int seed) {
        SimulatedTest test = SimulatedTest.draw(seed, Sort.HEALTHY, 4);
        Rig rig = test.rig().asDeclared();
        SplittableRandom random = new SplittableRandom(seed);
        Driven driven = Driven.of(rig, test.recording());
        double[] truth = new double[driven.parameters().size()];
        driven.parameters().draw(seed, 3, truth);
        List<FitTest> tests = new ArrayList<>();
        for (int i = 1; i <= 2; i++) {
            tests.add(new FitTest(name(i), Driven.of(rig, shown(driven, truth, random))));
        }
        FitResult found = CorrectionFit.of(rig, tests, 1, Work.quiet()).orElseThrow();
        return new Case(rig, truth, driven.parameters(), found);
    }

    @Test
    void whatIsFoundLiesInItsBandAndFitsBetterThanWhatIsDeclared() {
        int inside = 0;
        int all = 0;
        int narrowed = 0;
        for (Case drawn : DRAWN) {
            FitResult found = drawn.found();
            assertThat(found.correction()).isPresent();
            // What is not proven to be most probable would bear nothing out: here it is proven.
            assertThat(found.fitted().converged()).isTrue();
            assertThat(found.correction().get().grounds().heldOut()).isPresent();
            double before = 0;
            double after = 0;
            for (Fitted.Residual one : found.fitted().residuals()) {
                if (one.channel().startsWith("thrust") || one.channel().startsWith("speed")) {
                    before += one.declaredRmsSi();
                    after += one.rmsSi();
                }
            }
            assertThat(after).isLessThan(before);
            assertThat(found.heldOut().orElseThrow()).isBetween(0.05, 1.5);
            for (FitResult.Moved one : found.moved()) {
                Found value = one.found();
                double truth = drawn.truth()[drawn.table().indexOf(value.parameter())];
                inside += truth >= value.low() && truth <= value.high() ? 1 : 0;
                all++;
                narrowed += one.left() < 0.5 ? 1 : 0;
            }
        }
        assertThat(narrowed).isGreaterThan(1);
        assertThat(all).isGreaterThan(10);
        // 95 % are expected; of some tens of correlated values rather fewer may be inside.
        assertThat(inside).isGreaterThan((int) (0.85 * all));
    }

    @Test
    void whatIsFoundHoldsForItsRigAndNarrowsItsTable() {
        Case drawn = DRAWN.getFirst();
        Rig corrected =
                drawn.rig()
                        .with(
                                new CorrectionsRead(
                                        new Corrections(
                                                "sha256:" + "1".repeat(64),
                                                1,
                                                List.of(drawn.found().correction().orElseThrow())),
                                        "sha256:" + "2".repeat(64),
                                        false));
        HeldCorrections judged = HeldCorrections.of(corrected);
        assertThat(judged.voids()).isEmpty();
        assertThat(judged.values()).isEqualTo(drawn.found().moved().size());
    }
}

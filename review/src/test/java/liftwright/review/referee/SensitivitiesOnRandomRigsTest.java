package liftwright.review.referee;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import liftwright.numerics.Work;
import liftwright.review.LiftQuestion;
import liftwright.review.Sensitivities;
import liftwright.review.Sensitivity;
import liftwright.review.Settings;
import liftwright.rig.Change;
import liftwright.rig.text.RigText;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/** What moves the lift of drawn rigs, held against the referee's whole recomputation. */
class SensitivitiesOnRandomRigsTest {

    private static final Settings SETTINGS = new Settings(5, 1024, 1024, 2, false);

    private static Sensitivities of(RefereeRig rig) {
        return LiftQuestion.staged(Written.rig(RefereeText.of(rig)), "drawn", SETTINGS)
                .sensitivities(Work.quiet())
                .orElseThrow();
    }

    private static Map<String, String> names() {
        Map<String, String> names = new HashMap<>();
        RefereeInputs.PATHS.forEach((name, path) -> names.put(path, name));
        return names;
    }

    /** The referee's whole rig anew with one value at an end of its band. */
    private static double atEnd(RefereeRig rig, String name, int side) {
        return RefereeLift.ratio(rig, RefereeDraw.shifted(name, side));
    }

    @Test
    void movesAreThoseOfWholeRecomputation() {
        int[] held = {0};
        Seeded.check(
                30,
                random -> {
                    RefereeRig rig = RefereeRandom.rig(random);
                    Sensitivities told = of(rig);
                    double last = Double.POSITIVE_INFINITY;
                    for (Sensitivity one : told.inputs()) {
                        String name = names().get(one.at().toString());
                        assertThat(Math.abs(one.moves())).isLessThanOrEqualTo(last);
                        last = Math.abs(one.moves());
                        if (name == null || isOfEach(name)) {
                            continue; // each part draws its own: there is no one value to move
                        }
                        double moved = (atEnd(rig, name, 1) - atEnd(rig, name, -1)) / 2;
                        assertThat(one.moves())
                                .as(one.at() + "\n" + RefereeText.of(rig))
                                .isCloseTo(moved, within(1e-6 * Math.abs(moved) + 1e-9));
                        held[0]++;
                    }
                    // Nothing that the referee knows moves it more than the last that is told.
                    if (told.inputs().size() == Sensitivities.TOLD) {
                        List<String> paths =
                                told.inputs().stream().map(i -> i.at().toString()).toList();
                        for (var input : RefereeInputs.PATHS.entrySet()) {
                            if (!paths.contains(input.getValue()) && !isOfEach(input.getKey())) {
                                double moved =
                                        (atEnd(rig, input.getKey(), 1)
                                                        - atEnd(rig, input.getKey(), -1))
                                                / 2;
                                assertThat(Math.abs(moved))
                                        .as(input.getKey())
                                        .isLessThanOrEqualTo(last * (1 + 1e-6) + 1e-9);
                            }
                        }
                    }
                });
        assertThat(held[0]).as("values held against the referee").isGreaterThan(0);
    }

    private static boolean isOfEach(String name) {
        return name.equals("scatter") || name.equals("resistance") || name.equals("settling");
    }

    @Test
    void sharesAreThoseOfTheRefereesVariance() {
        int[] held = {0};
        Seeded.check(
                6,
                random -> {
                    RefereeRig rig = RefereeRandom.rig(random);
                    long seed = random.nextLong();
                    double all = variance(rig, seed, "");
                    for (Sensitivity one : of(rig).inputs()) {
                        String name = names().get(one.at().toString());
                        if (name == null || isOfEach(name)) {
                            continue;
                        }
                        // All but one at their declared values: of what is nearly linear the
                        // first-order share is this ratio.
                        double share = variance(rig, seed, name) / all;
                        assertThat(one.varianceShare().orElseThrow())
                                .as(one.at() + "\n" + RefereeText.of(rig))
                                .isCloseTo(share, within(0.06 + 4 * one.shareError()));
                        held[0]++;
                    }
                });
        assertThat(held[0]).as("shares held against the referee").isGreaterThan(0);
    }

    private static double variance(RefereeRig rig, long seed, String only) {
        int draws = 600;
        double sum = 0;
        double squares = 0;
        double about = RefereeLift.ratio(rig, RefereeDraw.nominal());
        for (int k = 0; k < draws; k++) {
            var random = new SplittableRandom(seed + k);
            double one =
                    RefereeLift.ratio(
                                    rig,
                                    only.isEmpty()
                                            ? RefereeDraw.of(random, "")
                                            : RefereeDraw.alone(random, only))
                            - about;
            sum += one;
            squares += one * one;
        }
        return squares / draws - sum / draws * sum / draws;
    }

    @Test
    void stopsAreWhatTheFileWouldSayOverTheBand() {
        int[] set = {0};
        Seeded.check(
                20,
                random -> {
                    RefereeRig rig = RefereeRandom.rig(random);
                    RigText text = Written.text(RefereeText.of(rig));
                    for (Sensitivity one : of(rig).inputs()) {
                        String name = names().get(one.at().toString());
                        if (one.stops().isEmpty() || name == null || isOfEach(name)) {
                            continue;
                        }
                        assertThat(one.stops()).hasSize(21);
                        for (int side : new int[] {-1, 0, 1}) {
                            String stop = one.stops().get(10 + 10 * side);
                            RigText set_ =
                                    Written.edited(text, List.of(new Change.Set(one.at(), stop)));
                            double ratio =
                                    ratio(Written.rig(set_))
                                            - RefereeLift.ratio(
                                                    rig,
                                                    side == 0
                                                            ? RefereeDraw.nominal()
                                                            : RefereeDraw.shifted(name, side));
                            assertThat(ratio)
                                    .as(stop)
                                    .isCloseTo(0, within(1e-3 * Math.abs(one.moves()) + 1e-9));
                        }
                        set[0]++;
                    }
                });
        assertThat(set[0]).as("values that were set").isGreaterThan(0);
    }

    private static double ratio(liftwright.rig.Rig rig) {
        return LiftQuestion.staged(rig, "drawn", SETTINGS)
                .judged(Work.quiet())
                .orElseThrow()
                .nominal();
    }
}

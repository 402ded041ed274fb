package liftwright.review.referee;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.random.RandomGenerator;
import liftwright.answer.Finding;
import liftwright.answer.Remedy;
import liftwright.numerics.Work;
import liftwright.review.LiftAnswer;
import liftwright.review.LiftQuestion;
import liftwright.review.Settings;
import liftwright.rig.Change;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/**
 * A remedy that breaks another limit is refused, and only such a remedy: whether more cells in
 * series break a limit of rotor speed, controller voltage or capacitor voltage is computed by the
 * referee, whose speeds come from its own bisection.
 */
class RefusedRemediesTest {

    private static final int RIGS = 150;

    /** Shares of a rating that count as its limit; common practice. */
    private static final double SPEED_SHARE = 0.95;

    private static final double VOLTAGE_SHARE = 0.85;
    private static final double TIP_MACH = 0.60;

    private enum Rated {
        ROTOR_SPEED("rotor speed"),
        CONTROLLER_VOLTAGE("controller"),
        CAPACITOR_VOLTAGE("capacitor");

        final String word;

        Rated(String word) {
            this.word = word;
        }
    }

    private static final class Tally {
        int rigs;
        final Map<Rated, Integer> refused = new EnumMap<>(Rated.class);
        int allowed;
    }

    @Test
    void whatBreaksALimitIsRefusedAndNothingElse() {
        Tally tally = new Tally();
        Seeded.check(RIGS, random -> hold(random, tally));
        if (tally.rigs >= RIGS) {
            assertThat(tally.allowed).as("more cells allowed").isGreaterThan(RIGS / 10);
            for (Rated rated : Rated.values()) {
                assertThat(tally.refused.getOrDefault(rated, 0))
                        .as("more cells refused for %s", rated)
                        .isGreaterThan(RIGS / 30);
            }
        }
    }

    private static void hold(RandomGenerator random, Tally tally) {
        tally.rigs++;
        RefereeRig drawn = RefereeRandom.rig(random);
        if (mach(drawn) > TIP_MACH) {
            return; // beyond that limit as it is: a fan more would be too
        }
        double nominal = RefereeLift.ratio(drawn, RefereeDraw.nominal());
        RefereeRig rig = drawn.withDemand(nominal * random.nextDouble(1.02, 1.2));
        Rated rated = Rated.values()[random.nextInt(Rated.values().length)];
        // Somewhere above what the rig does now, where a few more cells may or may not reach it.
        double limit = value(rated, rig) * random.nextDouble(1.02, 1.25);
        String text = with(rated, limit, RefereeText.of(rig));

        for (Remedy remedy : remedies(text, random.nextLong())) {
            int series = series(remedy, rig.series());
            RefereeRig changed = rig.withSeries(series);
            boolean breaksRated = value(rated, changed) > limit;
            boolean breaksMach = mach(changed) > TIP_MACH;
            String as = remedy.changes() + " in\n" + text;
            if (remedy.effect() instanceof Remedy.Effect.Refused(var reason)) {
                assertThat(breaksRated || breaksMach).as(as).isTrue();
                if (!breaksMach) {
                    assertThat(reason.toString()).as(as).contains(rated.word);
                    tally.refused.merge(rated, 1, Integer::sum);
                }
            } else {
                assertThat(breaksRated || breaksMach).as(as).isFalse();
                tally.allowed += series > rig.series() ? 1 : 0;
            }
        }
    }

    /** What the limit is held against, on full packs: rad/s or V. */
    private static double value(Rated rated, RefereeRig rig) {
        return switch (rated) {
            case ROTOR_SPEED -> RefereeLift.fastestOnFullPacks(rig);
            case CONTROLLER_VOLTAGE, CAPACITOR_VOLTAGE ->
                    rig.series() * rig.cell().volt().getLast();
        };
    }

    /** Tip Mach number in dry air, a = √(1.4 · 287.05 · T) (US Standard Atmosphere 1976). */
    private static double mach(RefereeRig rig) {
        double sound = Math.sqrt(1.4 * 287.05287 * (rig.temperatureC() + 273.15));
        return RefereeLift.fastestOnFullPacks(rig) * rig.fan().tipMm() / 2000 / sound;
    }

    private static String with(Rated rated, double limit, String text) {
        return switch (rated) {
            case ROTOR_SPEED ->
                    text.replace(
                            "    motor: {",
                            String.format(
                                    Locale.ROOT,
                                    "    rotor: {top speed: %.9g rpm}%n    motor: {",
                                    limit / SPEED_SHARE * 30 / Math.PI));
            case CONTROLLER_VOLTAGE -> controller("top voltage", limit, text);
            case CAPACITOR_VOLTAGE -> controller("capacitor voltage", limit, text);
        };
    }

    private static String controller(String key, double limit, String text) {
        return text.replace(
                "    controller: {",
                String.format(
                        Locale.ROOT, "    controller: {%s: %.9g V, ", key, limit / VOLTAGE_SHARE));
    }

    private static int series(Remedy remedy, int now) {
        return remedy.changes().stream()
                .filter(change -> change.at().toString().equals("packs/p/series"))
                .map(change -> ((Change.Set) change).value())
                .mapToInt(Integer::parseInt)
                .findFirst()
                .orElse(now);
    }

    private static Iterable<Remedy> remedies(String text, long seed) {
        LiftAnswer answer =
                LiftQuestion.ask(
                                Written.rig(text),
                                "drawn",
                                new Settings(seed, 256, 256, 2, true),
                                Work.quiet())
                        .orElseThrow();
        return answer.findings().stream().map(Finding::remedies).flatMap(r -> r.stream()).toList();
    }
}

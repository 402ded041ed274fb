package liftwright.flight.loops;

import java.util.List;
import java.util.Optional;

/** Loops round a body that gives in the harness, at every frequency of it that practice knows. */
final class HarnessCheck {

    private static final double BELOW = 300;
    private static final double ABOVE = 20;

    private HarnessCheck() {}

    /**
     * Nearest that a loop comes to −1 over all modes; empty where none matters to it.
     *
     * @param crossoverRadps of the rigid loop
     */
    static Optional<Loop.Harness> nearest(
            Cascade cascade,
            int stage,
            double crossoverRadps,
            List<FlexMode> modes,
            double inertia,
            double lags) {
        Optional<Loop.Harness> nearest = Optional.empty();
        for (FlexMode mode : modes) {
            if (mode.isFarFrom(crossoverRadps / inertia)) {
                continue;
            }
            Nyquist found = look(cascade, stage, crossoverRadps, mode, inertia, lags);
            double distance = found.stable() ? found.distance() : 0;
            if (nearest.isEmpty() || distance < nearest.get().distance()) {
                nearest = Optional.of(new Loop.Harness(distance, mode.radps()));
            }
        }
        return nearest;
    }

    /** Whether a loop keeps a distance from −1 with every mode. */
    static boolean keeps(
            Cascade cascade,
            int stage,
            double crossoverRadps,
            List<FlexMode> modes,
            double inertia,
            double lags,
            double distance) {
        for (FlexMode mode : modes) {
            if (!mode.isFarFrom(crossoverRadps / inertia)) {
                Nyquist found = look(cascade, stage, crossoverRadps, mode, inertia, lags);
                if (!found.stable() || found.distance() < distance) {
                    return false;
                }
            }
        }
        return true;
    }

    private static Nyquist look(
            Cascade cascade,
            int stage,
            double crossoverRadps,
            FlexMode mode,
            double inertia,
            double lags) {
        double slow = Math.min(crossoverRadps, mode.radps());
        double fast = Math.max(crossoverRadps, mode.radps());
        return Nyquist.of(
                cascade.giving(mode).open(stage, inertia, lags), slow / BELOW, fast * ABOVE);
    }
}

package liftwright.plant.identify;

import liftwright.rig.FanType;
import liftwright.rig.table.BenchTable;

/** Fits made before. */
public final class FanFits {

    private record Key(BenchTable table, FanPriors priors) {}

    private static final Remembered<Key, FanFit> MADE = new Remembered<>();

    private FanFits() {}

    /** {@link FanFit#of(BenchTable, FanType)}, made once. Safe from any thread. */
    public static FanFit of(BenchTable table, FanType type) {
        return MADE.get(new Key(table, FanPriors.of(type)), _ -> FanFit.of(table, type));
    }
}

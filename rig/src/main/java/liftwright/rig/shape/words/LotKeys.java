package liftwright.rig.shape.words;

import static liftwright.rig.shape.kind.Key.defaulted;
import static liftwright.rig.shape.kind.Key.open;

import java.util.Map;
import liftwright.quantity.Quantity;
import liftwright.rig.shape.kind.Amount;
import liftwright.rig.shape.kind.FilePath;
import liftwright.rig.shape.kind.Key;
import liftwright.rig.shape.kind.MapOf;
import liftwright.rig.shape.kind.Measure;
import liftwright.rig.shape.kind.Range;
import liftwright.rig.shape.kind.Rule;
import liftwright.rig.shape.kind.Section;
import liftwright.rig.shape.kind.Stated;

/** What a few measured fans of a lot are worth of their label. */
public final class LotKeys {

    private static final Range WORTH_RANGE = new Range(0.05, false, 2);

    public static final Key<Map<String, Stated<Quantity>>> MEASURED =
            open(
                    "measured",
                    new MapOf<>(
                            "worths by fan",
                            Amount.of(Measure.RATIO, WORTH_RANGE),
                            MapOf.Names.NEW),
                    "Measured thrust over the label's at equal speed in equal air, by the name or"
                            + " number of the fan.",
                    "{f17: 0.86, f18: 0.84, f23: 0.87}",
                    "one of `measured`, `bench` and `worth` must stand there");
    public static final Key<String> BENCH =
            open(
                    "bench",
                    new FilePath("a [bench table](tables.md#bench-table)", ".csv"),
                    "Measured rows; each tells its speed, and its fan in the column `fan`.",
                    "f140-lot.csv",
                    "one of `measured`, `bench` and `worth` must stand there");
    public static final Key<Quantity> WORTH =
            open(
                    "worth",
                    Amount.of(Measure.RATIO, WORTH_RANGE),
                    "The lot's mean, worked out elsewhere.",
                    "0.86 ± 0.03",
                    "one of `measured`, `bench` and `worth` must stand there");
    public static final Key<Quantity> STAND =
            defaulted(
                    "stand",
                    Amount.doubt(Measure.RATIO, "1"),
                    "± 2 %",
                    "common practice: a stand in a workshop; `check --stand` tells yours",
                    "What all readings of the stand share. More fans do not make it smaller.",
                    "± 1.5 %");

    public static final Section SECTION =
            Section.of(
                            "lot",
                            "What a few measured fans of a lot are worth of their label: it stands in"
                                    + " for those that nobody measured.",
                            MEASURED,
                            BENCH,
                            WORTH,
                            STAND)
                    .with(
                            Rule.atLeastOne(MEASURED, BENCH, WORTH),
                            Rule.atMostOne(MEASURED, BENCH, WORTH));

    private LotKeys() {}
}

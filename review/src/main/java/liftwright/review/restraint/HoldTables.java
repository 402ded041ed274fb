package liftwright.review.restraint;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import liftwright.answer.Section;
import liftwright.answer.Value;
import liftwright.plant.hold.Ask;
import liftwright.plant.hold.Held;
import liftwright.quantity.Band;
import liftwright.rig.Rig;

/** All that is asked of stand and tether, a line each. */
public final class HoldTables {

    private static final List<String> COLUMNS =
            List.of("hold", "worst-fans", "load", "bears", "asked-times", "restraint-margin");

    private HoldTables() {}

    /**
     * Tables of what is declared: {@code stand-loads}, {@code tether-loads}.
     *
     * @param bands of the margin of each ask, where draws were made
     */
    public static List<Section> of(
            Rig rig, Held held, Optional<String> kill, Function<Ask, Optional<Band>> bands) {
        List<Section> tables = new ArrayList<>();
        held.stand()
                .ifPresent(
                        _ ->
                                tables.add(
                                        table(
                                                "stand-loads",
                                                "What the stand bears under its worst fans at full throttle, full packs",
                                                rig,
                                                of(held, "restraint/stand"),
                                                kill,
                                                bands)));
        held.tether()
                .ifPresent(
                        _ ->
                                tables.add(
                                        table(
                                                "tether-loads",
                                                "What the tether meets in a runaway and after it",
                                                rig,
                                                of(held, "restraint/tether"),
                                                kill,
                                                bands)));
        return tables;
    }

    /**
     * A greater margin says only how small the load is: {@code 3870237 %} of a bolt that is hardly
     * sheared.
     */
    private static final double TIMES_TOLD = 10;

    private static List<Ask> of(Held held, String path) {
        return held.asks().stream().filter(ask -> HoldWords.path(ask.what()).equals(path)).toList();
    }

    private static Section table(
            String id,
            String title,
            Rig rig,
            List<Ask> asks,
            Optional<String> kill,
            Function<Ask, Optional<Band>> bands) {
        List<List<Value>> rows = new ArrayList<>();
        for (Ask ask : asks) {
            String field = HoldWords.field(ask.what().unit());
            rows.add(
                    List.of(
                            Value.words("hold", HoldWords.name(ask)),
                            Value.words("worst-fans", HoldWords.under(rig, ask, kill)),
                            Value.of(field, ask.load()),
                            ask.capacity().isPresent()
                                    ? Value.of(field, ask.capacity().getAsDouble())
                                    : notDeclared("bears"),
                            Value.of("asked-times", ask.factor()),
                            margin(ask, bands)));
        }
        return new Section.Table(id, title, COLUMNS, rows);
    }

    private static Value margin(Ask ask, Function<Ask, Optional<Band>> bands) {
        if (ask.margin().isEmpty()) {
            return notDeclared("restraint-margin");
        }
        double margin = ask.margin().getAsDouble();
        if (!Double.isFinite(margin)) {
            return Value.words("restraint-margin", "nothing loads it");
        }
        Optional<Band> band = bands.apply(ask);
        return band.map(Band::low).orElse(margin) > TIMES_TOLD
                ? Value.words("restraint-margin", "more than " + (int) TIMES_TOLD + " times")
                : Value.of("restraint-margin", margin, band);
    }

    private static Value notDeclared(String field) {
        return new Value(field, new Value.Figure.NotComputed("not declared"));
    }
}

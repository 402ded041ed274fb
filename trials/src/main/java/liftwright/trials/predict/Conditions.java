package liftwright.trials.predict;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;
import liftwright.numerics.CounterStream;
import liftwright.quantity.Dimension;
import liftwright.quantity.Quantity;
import liftwright.quantity.Tolerance;
import liftwright.rig.Rig;
import liftwright.rig.table.StartState;

/**
 * What a day brings: air and packs as they are found. What is empty is as the rig file declares it.
 *
 * @param airK temperature of the air, K
 * @param packs charge and temperature by the id of the pack
 */
public record Conditions(OptionalDouble airK, Map<String, Found> packs) {

    /** As declared. */
    public static final Conditions DECLARED = new Conditions(OptionalDouble.empty(), Map.of());

    /** 95 % of the errors of a thermometer in the shade are smaller, K; common practice. */
    private static final double AIR_ERROR_K = 1;

    /** The same for charge told from a rest voltage; from memory. */
    private static final double CHARGE_ERROR = 0.03;

    /** The same for a pack felt with a thermometer, K; common practice. */
    private static final double PACK_ERROR_K = 2;

    private static final Dimension KELVIN = new Dimension(0, 0, 0, 0, 1, 0);

    /**
     * A pack as it is found.
     *
     * @param charge share left, 0 to 1
     * @param kelvin temperature, K
     */
    public record Found(OptionalDouble charge, OptionalDouble kelvin) {}

    public Conditions {
        packs = Map.copyOf(packs);
    }

    /** The rig in the air of the day. */
    Rig in(Rig rig) {
        if (airK.isEmpty()) {
            return rig;
        }
        Quantity air =
                new Quantity(
                        airK.getAsDouble(),
                        KELVIN,
                        new Tolerance(
                                AIR_ERROR_K,
                                AIR_ERROR_K,
                                Tolerance.Form.NORMAL,
                                Tolerance.Scope.SHARED));
        return rig.at(rig.site().at(air));
    }

    /** What a run starts from, as found. */
    StartState found() {
        return state((part, width) -> 0);
    }

    /** The same in a draw of the errors with which it was found. */
    StartState drawn(long seed, int draw) {
        return state(
                (part, width) ->
                        width
                                / 2
                                * CounterStream.normal(
                                        seed, CounterStream.channel("found/" + part), draw));
    }

    @FunctionalInterface
    private interface Missed {
        double of(String part, double width);
    }

    private StartState state(Missed error) {
        List<StartState.Row> rows = new ArrayList<>();
        SortedMap<String, Found> sorted = new TreeMap<>(packs);
        sorted.forEach(
                (pack, found) -> {
                    OptionalDouble kelvin = off(found.kelvin, error.of(pack + "/k", PACK_ERROR_K));
                    OptionalDouble charge = off(found.charge, error.of(pack + "/q", CHARGE_ERROR));
                    OptionalDouble left =
                            charge.isPresent()
                                    ? OptionalDouble.of(Math.clamp(charge.getAsDouble(), 0, 1))
                                    : charge;
                    rows.add(row(pack, StartState.Place.CORE, kelvin, left));
                    rows.add(row(pack, StartState.Place.SURFACE, kelvin, OptionalDouble.empty()));
                });
        return new StartState("", rows);
    }

    private static OptionalDouble off(OptionalDouble value, double by) {
        return value.isPresent() ? OptionalDouble.of(value.getAsDouble() + by) : value;
    }

    private static StartState.Row row(
            String pack, StartState.Place place, OptionalDouble kelvin, OptionalDouble charge) {
        return new StartState.Row(0, pack, place, kelvin, charge, OptionalDouble.empty());
    }
}

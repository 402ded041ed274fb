package liftwright.trials.day;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import liftwright.rig.LimitName;
import liftwright.rig.Rig;
import liftwright.trials.day.Reason.Rule;

/**
 * Whether the packs of a card are fit, and how many runs they give. Nothing is charged in between.
 */
final class PackRules {

    /** Cells of which fullest and emptiest differ by more at rest are out, V; common practice. */
    static final double MOST_SPREAD_V = 0.050;

    /** And by more than this are watched, V; common practice. */
    static final double WATCHED_SPREAD_V = 0.030;

    /** Warmest cells at the start of a run, K; common practice. */
    static final double WARMEST_K = 318.15;

    private static final double ROUNDING = 1e-9;

    private final Day day;
    private final double reserve;
    private final double coldestK;
    private final Map<String, Double> left = new HashMap<>();

    PackRules(Rig rig, Day day) {
        this.day = day;
        reserve = rig.demands().reserve().si();
        coldestK = rig.limits().si(LimitName.CELL_AT_START);
        day.packs().forEach((id, pack) -> left.put(id, pack.charge()));
    }

    /**
     * How many runs the packs give, at most as many as a pass needs; tells why there is none. All
     * of them where nothing runs.
     */
    int runs(DayCard card, List<Reason> reasons) {
        int most = card.planned().repeats();
        if (!card.runs()) {
            return most;
        }
        if (card.chargePerRun().isEmpty()) {
            reasons.add(new Reason(Rule.CHARGE, "what a run takes out of the packs is not known"));
            return 0;
        }
        int runs = most;
        for (Map.Entry<String, Double> taken : new TreeMap<>(card.chargePerRun()).entrySet()) {
            if (taken.getValue() > 0) {
                Optional<String> unfit = unfit(taken.getKey());
                unfit.ifPresent(why -> reasons.add(new Reason(Rule.PACKS, why)));
                runs =
                        Math.min(
                                runs,
                                unfit.isPresent()
                                        ? 0
                                        : runs(taken.getKey(), taken.getValue(), reasons));
            }
        }
        return runs;
    }

    private int runs(String pack, double perRun, List<Reason> reasons) {
        double free = left.getOrDefault(pack, 0.0) - reserve;
        int runs = (int) Math.floor(Math.min(1e6, free / perRun + ROUNDING));
        if (runs < 1) {
            reasons.add(
                    new Reason(
                            Rule.CHARGE,
                            String.format(
                                    Locale.ROOT,
                                    "%s: a run takes %.0f %%, and %.0f %% are left above the reserve",
                                    pack,
                                    100 * perRun,
                                    Math.max(0, 100 * free))));
        }
        return Math.max(0, runs);
    }

    private Optional<String> unfit(String id) {
        Optional<Day.ReadyPack> found = Optional.ofNullable(day.packs().get(id));
        if (found.isEmpty()) {
            return Optional.of(id + " is not ready");
        }
        Day.ReadyPack pack = found.get();
        if (pack.spreadV().isEmpty()) {
            return Optional.of(id + ": nobody looked at its cells at rest");
        }
        if (pack.spreadV().get() > MOST_SPREAD_V) {
            return Optional.of(
                    String.format(
                            Locale.ROOT,
                            "%s: its cells differ by %.0f mV at rest, at most %.0f mV",
                            id,
                            1000 * pack.spreadV().get(),
                            1000 * MOST_SPREAD_V));
        }
        if (pack.kelvin() < coldestK || pack.kelvin() > WARMEST_K) {
            return Optional.of(
                    String.format(
                            Locale.ROOT,
                            "%s: its cells are at %.0f °C, from %.0f °C to %.0f °C at a start",
                            id,
                            pack.kelvin() - 273.15,
                            coldestK - 273.15,
                            WARMEST_K - 273.15));
        }
        return Optional.empty();
    }

    /** Takes the charge of an allowed card. */
    void take(DayCard card, int runs) {
        card.chargePerRun().forEach((pack, share) -> left.merge(pack, -runs * share, Double::sum));
    }
}

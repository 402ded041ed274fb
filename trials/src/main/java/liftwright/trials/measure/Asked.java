package liftwright.trials.measure;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import liftwright.numerics.Work;
import liftwright.rig.CellType;
import liftwright.rig.FanType;
import liftwright.rig.Rig;
import liftwright.rig.stand.Stand;
import liftwright.trials.Planned;
import liftwright.trials.Run;

/**
 * What a card is made for.
 *
 * @param stand for thrust, where one is planned in a file of its own
 * @param seed of all draws
 * @param threads ≥ 1
 */
record Asked(Rig rig, Planned card, Optional<Stand> stand, long seed, int threads, Work work) {

    /** Throttles where the card names none. */
    private static final List<Double> USUAL_THROTTLES = List.of(0.2, 0.4, 0.6, 0.8, 1.0);

    /** Fan types in use that the card is about: the one it names, else all. */
    List<FanType> fanTypes() {
        return rig.fanTypes().stream()
                .filter(type -> isMeant(type.name()))
                .filter(type -> rig.fans().stream().anyMatch(fan -> fan.type().equals(type)))
                .toList();
    }

    /** Cell types in use that the card is about. */
    List<CellType> cellTypes() {
        return rig.cellTypes().stream()
                .filter(type -> isMeant(type.name()))
                .filter(type -> rig.packs().stream().anyMatch(pack -> pack.cell().equals(type)))
                .toList();
    }

    /** Number of the first fan of a type. */
    int firstFan(FanType type) {
        for (int k = 0; k < rig.fans().size(); k++) {
            if (rig.fans().get(k).type().equals(type)) {
                return k;
            }
        }
        throw new IllegalArgumentException("no fan is a " + type.name());
    }

    private boolean isMeant(String name) {
        return card.id().subject().isEmpty() || card.id().subject().equals(name);
    }

    /** Throttles above nothing that the card's run names, each once and rising. */
    List<Double> throttles() {
        List<Double> named =
                card.run().stream()
                        .flatMap(run -> run.steps().stream())
                        .flatMap(
                                step ->
                                        switch (step.level()) {
                                            case Run.Level.Throttle(double share) ->
                                                    Stream.of(share);
                                            case Run.Level.OfWeight _ -> Stream.<Double>empty();
                                        })
                        .filter(share -> share > 0 && share <= 1)
                        .sorted()
                        .distinct()
                        .toList();
        return named.isEmpty() ? USUAL_THROTTLES : named;
    }
}

package liftwright.flight.ask;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import liftwright.answer.Section;
import liftwright.answer.Value;
import liftwright.flight.profile.Profile;
import liftwright.flight.run.FlightOutcome;
import liftwright.flight.run.Near;
import liftwright.flight.run.Pushed;
import liftwright.quantity.Band;

/** How near the modules of a scene come to each other, two by two. */
final class ModuleTable {

    private ModuleTable() {}

    /**
     * @param drawn flights, whose band stands beside
     */
    static Section of(Profile.Together together, FlightOutcome shown, List<FlightOutcome> drawn) {
        List<List<Value>> rows = new ArrayList<>();
        for (int k = 0; k < shown.near().size(); k++) {
            Near pair = shown.near().get(k);
            int which = k;
            double[] least =
                    drawn.stream().mapToDouble(one -> one.near().get(which).leastM()).toArray();
            long jets =
                    drawn.stream().filter(one -> one.near().get(which).jetS().isPresent()).count();
            Optional<Band> band =
                    least.length < 2 ? Optional.empty() : Optional.of(NextFlight.of(least).band());
            rows.add(
                    List.of(
                            Value.words("module-one", pair.one()),
                            Value.words("module-other", pair.other()),
                            Value.of("module-apart", pair.leastM(), band),
                            Value.of("module-wanted", together.apartM()),
                            Value.of("flight-time", pair.atS()),
                            Value.words("module-jet", jet(pair, jets, drawn.size())),
                            Value.words(
                                    "flight-standing",
                                    pair.isClear(together.apartM()) ? "kept" : "not kept")));
        }
        return new Section.Table(
                "modules-apart",
                "Modules of the scene, two by two",
                List.of(
                        "module-one",
                        "module-other",
                        "module-apart",
                        "module-wanted",
                        "flight-time",
                        "module-jet",
                        "flight-standing"),
                rows);
    }

    /** Who is pushed by jets; empty where nobody is. */
    static Optional<Section> pushed(FlightOutcome shown) {
        if (shown.pushed().isEmpty()) {
            return Optional.empty();
        }
        List<List<Value>> rows = new ArrayList<>();
        for (Pushed one : shown.pushed()) {
            rows.add(
                    List.of(
                            Value.words("module-one", one.name()),
                            Value.of("module-push", one.mostN()),
                            Value.of("module-push-share", one.weightShare()),
                            Value.of("flight-time", one.atS())));
        }
        return Optional.of(
                new Section.Table(
                        "modules-pushed",
                        "Modules that jets of others push",
                        List.of("module-one", "module-push", "module-push-share", "flight-time"),
                        rows));
    }

    private static String jet(Near pair, long jets, int drawn) {
        String shown =
                pair.jetS().isPresent()
                        ? String.format(
                                java.util.Locale.ROOT,
                                "reaches at %.1f s",
                                pair.jetS().getAsDouble())
                        : "reaches neither";
        return jets == 0 ? shown : shown + "; in " + jets + " of " + drawn + " drawn flights";
    }
}

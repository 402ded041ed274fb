package liftwright.trials.predict;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import liftwright.plant.Cause;
import liftwright.plant.Discharge;
import liftwright.plant.Plant;

/** Why a step must not be run as planned, at the declared values. */
final class Cut {

    private final Plant plant;
    private final List<Watch> watches;

    Cut(Plant plant, List<Watch> watches) {
        this.plant = plant;
        this.watches = watches;
    }

    /**
     * @param whole whether the step was followed to its end
     * @return empty where nothing speaks against it
     */
    Optional<String> reason(Discharge run, boolean whole, Trace trace, int step) {
        if (run.failed()) {
            return Optional.of("it has no operating point");
        }
        Optional<Discharge.End> end = run.ended();
        if (end.isPresent()) {
            return Optional.of(
                    words(end.get())
                            + String.format(
                                    Locale.ROOT, " %.0f s after the start", end.get().timeS()));
        }
        if (!whole) {
            return Optional.of("it is not reached");
        }
        int from = step == 0 ? 0 : trace.end(step - 1) + 1;
        for (int k = 0; k < watches.size(); k++) {
            Watch watch = watches.get(k);
            double[] values = trace.of(k);
            for (int at = from; at < values.length && watch.limit().isPresent(); at++) {
                int sign = watch.gauge().sign();
                if (sign * (values[at] - watch.limit().get().si()) >= 0) {
                    return Optional.of(
                            "the limit of "
                                    + watch.channel().field().replace("card-", "").replace('-', ' ')
                                    + " is reached at "
                                    + watch.part()
                                    + String.format(
                                            Locale.ROOT,
                                            " %.0f s after the start",
                                            trace.timesS()[at]));
                }
            }
        }
        return Optional.empty();
    }

    private String words(Discharge.End end) {
        String part = end.part().map(number -> " at " + part(end.cause(), number)).orElse("");
        return switch (end.cause()) {
            case RESERVE -> "the reserve of charge is reached" + part;
            case CELL_VOLTAGE -> "a cell falls to its least voltage under load" + part;
            case CELL_CURRENT -> "a cell gives its peak current" + part;
            case CUT_OFF -> "a controller cuts off" + part;
            case FULL_THROTTLE -> "full throttle does not give it";
            case EMPTY -> "a cell is empty" + part;
            case OVERHEATED -> "the limit of temperature is reached" + part;
            case FUSE_OPENED -> "a fuse opens" + part;
        };
    }

    private String part(Cause cause, int number) {
        return switch (cause) {
            case RESERVE, CELL_VOLTAGE, CELL_CURRENT, EMPTY ->
                    plant.rig().packs().get(number).id().text();
            case CUT_OFF -> plant.rig().fans().get(number).id().text();
            case FULL_THROTTLE -> plant.rig().name();
            case OVERHEATED, FUSE_OPENED -> {
                var heat = plant.heatParts().get(number);
                yield heat.id().text() + " (" + heat.kind().name().toLowerCase(Locale.ROOT) + ")";
            }
        };
    }
}

package liftwright.plant;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** When each cause was first reached in each part of a rig; infinite where it was not yet. */
final class ReachedTimes {

    private static final List<Cause> IN_ORDER_OF_BLAME =
            Stream.concat(Stream.of(Cause.CUT_OFF), Stream.of(Cause.values())).distinct().toList();

    private final double[][] timeS;

    /**
     * @param heatParts parts that warm; 0 where no heat is computed
     */
    ReachedTimes(int packs, int fans, int heatParts) {
        timeS = new double[Cause.values().length][];
        for (Cause cause : Cause.values()) {
            timeS[number(cause)] =
                    new double
                            [switch (cause) {
                                case RESERVE, CELL_VOLTAGE, CELL_CURRENT, EMPTY -> packs;
                                case CUT_OFF -> fans;
                                case FULL_THROTTLE -> 1;
                                case OVERHEATED, FUSE_OPENED -> heatParts;
                            }];
        }
        clear();
    }

    private static int number(Cause cause) {
        return switch (cause) {
            case RESERVE -> 0;
            case CELL_VOLTAGE -> 1;
            case CELL_CURRENT -> 2;
            case CUT_OFF -> 3;
            case FULL_THROTTLE -> 4;
            case EMPTY -> 5;
            case OVERHEATED -> 6;
            case FUSE_OPENED -> 7;
        };
    }

    /** One time for each part; written in place. */
    double[] of(Cause cause) {
        return timeS[number(cause)];
    }

    void clear() {
        for (double[] times : timeS) {
            Arrays.fill(times, Double.POSITIVE_INFINITY);
        }
    }

    void forgetAfter(double whenS) {
        for (double[] times : timeS) {
            for (int part = 0; part < times.length; part++) {
                if (times[part] > whenS) {
                    times[part] = Double.POSITIVE_INFINITY;
                }
            }
        }
    }

    /** First time in any part; infinite if none. */
    double first(Cause cause) {
        double first = Double.POSITIVE_INFINITY;
        for (double time : of(cause)) {
            first = Math.min(first, time);
        }
        return first;
    }

    /** First time of all; infinite if none. */
    double first() {
        double first = Double.POSITIVE_INFINITY;
        for (double[] times : timeS) {
            for (double time : times) {
                first = Math.min(first, time);
            }
        }
        return first;
    }

    static OptionalDouble told(double time) {
        return time < Double.POSITIVE_INFINITY ? OptionalDouble.of(time) : OptionalDouble.empty();
    }

    /**
     * The first of all. A controller that cuts off comes before all that happens in the same
     * moment, because its stop brings it about; else ties go to the cause and part that is listed
     * first.
     */
    Optional<Discharge.End> end() {
        double first = first();
        if (first == Double.POSITIVE_INFINITY) {
            return Optional.empty();
        }
        for (Cause cause : IN_ORDER_OF_BLAME) {
            double[] times = of(cause);
            for (int part = 0; part < times.length; part++) {
                if (times[part] == first) {
                    return Optional.of(
                            new Discharge.End(
                                    cause,
                                    first,
                                    cause == Cause.FULL_THROTTLE
                                            ? Optional.empty()
                                            : Optional.of(part)));
                }
            }
        }
        throw new IllegalStateException("a first time belongs to a part");
    }

    Map<Cause, Double> firsts() {
        Map<Cause, Double> firsts = new EnumMap<>(Cause.class);
        for (Cause cause : Cause.values()) {
            told(first(cause)).ifPresent(time -> firsts.put(cause, time));
        }
        return firsts;
    }
}

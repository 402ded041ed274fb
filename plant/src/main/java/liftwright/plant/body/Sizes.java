package liftwright.plant.body;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import liftwright.physics.BodySegment;
import liftwright.plant.parameters.ImpossibleValueException;
import liftwright.plant.parameters.ParameterRows;
import liftwright.plant.parameters.Range;
import liftwright.quantity.Quantity;
import liftwright.rig.RigPath;
import liftwright.rig.Wearer;

/**
 * Lengths and masses of the wearer's segments: those of de Leva 1996 [DELEVA96], scaled with
 * stature and mass, unless they were measured.
 */
final class Sizes {

    private static final RigPath MEASURED = RigPath.of("wearer", "measured");

    private final BodySegment.Reference body;
    private final int stature;
    private final Optional<Integer> betweenShoulders;
    private final Optional<Integer> betweenHips;
    private final Map<BodySegment, Integer> lengths = new EnumMap<>(BodySegment.class);
    private final Map<BodySegment, Integer> masses = new EnumMap<>(BodySegment.class);

    private Sizes(Wearer wearer, ParameterRows table) {
        body = reference(wearer.body());
        stature =
                table.row(
                        RigPath.of("wearer", "stature"),
                        "stature of the wearer",
                        wearer.stature(),
                        Range.POSITIVE);
        Wearer.Sizes sizes = wearer.measured().sizes();
        betweenShoulders =
                sizes.betweenShoulders().map(read -> row("between shoulders", read, table));
        betweenHips = sizes.betweenHips().map(read -> row("between hips", read, table));
        for (Wearer.Segment segment : Wearer.Segment.values()) {
            Quantity length = sizes.lengths().get(segment);
            if (length != null) {
                lengths.put(of(segment), row(segment.key(), length, table));
            }
            Quantity mass = sizes.masses().get(segment);
            if (mass != null) {
                masses.put(of(segment), row(segment.key() + " mass", mass, table));
            }
        }
    }

    static Sizes declare(Wearer wearer, ParameterRows table) {
        return new Sizes(wearer, table);
    }

    private static int row(String key, Quantity value, ParameterRows table) {
        return table.row(MEASURED.child(key), key + " of the wearer", value, Range.POSITIVE);
    }

    private static BodySegment.Reference reference(Wearer.Body body) {
        return switch (body) {
            case FEMALE -> BodySegment.Reference.FEMALE;
            case MALE -> BodySegment.Reference.MALE;
        };
    }

    private static BodySegment of(Wearer.Segment segment) {
        return switch (segment) {
            case HEAD -> BodySegment.HEAD;
            case TRUNK -> BodySegment.TRUNK;
            case UPPER_ARM -> BodySegment.UPPER_ARM;
            case FOREARM -> BodySegment.FOREARM;
            case HAND -> BodySegment.HAND;
            case THIGH -> BodySegment.THIGH;
            case SHANK -> BodySegment.SHANK;
            case FOOT -> BodySegment.FOOT;
        };
    }

    /** Which table of proportions holds. */
    BodySegment.Reference body() {
        return body;
    }

    /** Standing height, m. */
    double statureM(double[] p) {
        return p[stature];
    }

    /** Length of a segment, m. */
    double lengthM(double[] p, BodySegment segment) {
        Integer read = lengths.get(segment);
        return read == null ? segment.lengthM(body, p[stature]) : p[read];
    }

    /** From the middle to a shoulder joint, m. */
    double shoulderHalfM(double[] p) {
        return betweenShoulders
                .map(read -> p[read] / 2)
                .orElse(BodySegment.SHOULDER_HALF_SPACING * p[stature]);
    }

    /** From the middle to a hip joint, m. */
    double hipHalfM(double[] p) {
        return betweenHips
                .map(read -> p[read] / 2)
                .orElse(BodySegment.HIP_HALF_SPACING * p[stature]);
    }

    /**
     * Mass of one segment, kg; the trunk has what the others leave.
     *
     * @param wholeKg of the person
     * @throws ImpossibleValueException if they leave nothing
     */
    double massKg(double[] p, BodySegment segment, double wholeKg) {
        if (masses.isEmpty() || segment != BodySegment.TRUNK) {
            Integer read = masses.get(segment);
            return read == null ? segment.massShare(body) / wholeShare() * wholeKg : p[read];
        }
        double others = massKg(p, BodySegment.HEAD, wholeKg);
        for (BodySegment each : Person.PAIRED) {
            others += 2 * massKg(p, each, wholeKg);
        }
        if (!(others < wholeKg)) {
            throw new ImpossibleValueException(
                    MEASURED + "/trunk mass", wholeKg - others, Range.POSITIVE);
        }
        return wholeKg - others;
    }

    /** The table's percentages, rounded one by one, add up to 99.99 or 100. */
    private double wholeShare() {
        double pairs = 0;
        for (BodySegment each : Person.PAIRED) {
            pairs += each.massShare(body);
        }
        return BodySegment.HEAD.massShare(body) + BodySegment.TRUNK.massShare(body) + 2 * pairs;
    }
}

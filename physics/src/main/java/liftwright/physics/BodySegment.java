package liftwright.physics;

/**
 * Segments of the human body: length, mass, centre of mass and radii of gyration, de Leva 1996,
 * Table 4 [DELEVA96]. Young adults, trained; other people differ, so every value carries the
 * builder's own tolerance. Yaw inertia stacked from segments reads 20 % to 28 % below measured
 * people.
 *
 * <p>Lengths run from the proximal end to the distal end (head: vertex to mid-gonion; trunk:
 * suprasternale to mid-hip; hand: wrist to third metacarpal; shank to the malleolus).
 */
public enum BodySegment {
    HEAD(
            new Row(0.2002, 6.68, 58.94, 33.0, 35.9, 31.8),
            new Row(0.2033, 6.94, 59.76, 36.2, 37.6, 31.2)),
    TRUNK(
            new Row(0.5293, 42.57, 41.51, 35.7, 33.9, 17.1),
            new Row(0.5319, 43.46, 44.86, 37.2, 34.7, 19.1)),
    UPPER_TRUNK(
            new Row(0.1425, 15.45, 20.77, 74.6, 50.2, 71.8),
            new Row(0.1707, 15.96, 29.99, 71.6, 45.4, 65.9)),
    MIDDLE_TRUNK(
            new Row(0.2053, 14.65, 45.12, 43.3, 35.4, 41.5),
            new Row(0.2155, 16.33, 45.02, 48.2, 38.3, 46.8)),
    LOWER_TRUNK(
            new Row(0.1815, 12.47, 49.20, 43.3, 40.2, 44.4),
            new Row(0.1457, 11.17, 61.15, 61.5, 55.1, 58.7)),
    UPPER_ARM(
            new Row(0.2751, 2.55, 57.54, 27.8, 26.0, 14.8),
            new Row(0.2817, 2.71, 57.72, 28.5, 26.9, 15.8)),
    FOREARM(
            new Row(0.2643, 1.38, 45.59, 26.1, 25.7, 9.4),
            new Row(0.2689, 1.62, 45.74, 27.6, 26.5, 12.1)),
    HAND(
            new Row(0.0780, 0.56, 74.74, 53.1, 45.4, 33.5),
            new Row(0.0862, 0.61, 79.00, 62.8, 51.3, 40.1)),
    THIGH(
            new Row(0.3685, 14.78, 36.12, 36.9, 36.4, 16.2),
            new Row(0.4222, 14.16, 40.95, 32.9, 32.9, 14.9)),
    SHANK(
            new Row(0.4323, 4.81, 44.16, 27.1, 26.7, 9.3),
            new Row(0.4340, 4.33, 44.59, 25.5, 24.9, 10.3)),
    FOOT(
            new Row(0.2283, 1.29, 40.14, 29.9, 27.9, 13.9),
            new Row(0.2581, 1.37, 44.15, 25.7, 24.5, 12.4));

    /** Half the distance between the shoulder joints over stature (from memory; measure yours). */
    public static final double SHOULDER_HALF_SPACING = 0.1085;

    /** Half the distance between the hip joints over stature (from memory; measure yours). */
    public static final double HIP_HALF_SPACING = 0.0525;

    /** The two reference bodies of the table. */
    public enum Reference {
        FEMALE(1.735, 61.9),
        MALE(1.741, 73.0);

        private final double statureM;
        private final double massKg;

        Reference(double statureM, double massKg) {
            this.statureM = statureM;
            this.massKg = massKg;
        }

        /** Mean stature of the sample, m. */
        public double statureM() {
            return statureM;
        }

        /** Mean mass of the sample, kg. */
        public double massKg() {
            return massKg;
        }
    }

    /** Axes of the radii of gyration, through the segment's own centre of mass. */
    public enum Axis {
        /** Front to back. */
        SAGITTAL,
        /** Side to side. */
        TRANSVERSE,
        /** Along the segment. */
        LONGITUDINAL
    }

    private record Row(
            double lengthM,
            double massPercent,
            double centrePercent,
            double sagittalPercent,
            double transversePercent,
            double longitudinalPercent) {}

    private final Row female;
    private final Row male;

    BodySegment(Row female, Row male) {
        this.female = female;
        this.male = male;
    }

    private Row row(Reference body) {
        return switch (body) {
            case FEMALE -> female;
            case MALE -> male;
        };
    }

    /**
     * Length of the segment, scaled with stature, m.
     *
     * @param statureM standing height of the person, m
     */
    public double lengthM(Reference body, double statureM) {
        return row(body).lengthM * statureM / body.statureM;
    }

    /** Share of the body's mass (one limb of a pair), 0 to 1. */
    public double massShare(Reference body) {
        return row(body).massPercent / 100;
    }

    /** Centre of mass from the proximal end over the segment's length, 0 to 1. */
    public double centreShare(Reference body) {
        return row(body).centrePercent / 100;
    }

    /** Radius of gyration about an axis through the centre of mass over the segment's length. */
    public double gyrationShare(Reference body, Axis axis) {
        Row row = row(body);
        return switch (axis) {
            case SAGITTAL -> row.sagittalPercent / 100;
            case TRANSVERSE -> row.transversePercent / 100;
            case LONGITUDINAL -> row.longitudinalPercent / 100;
        };
    }
}

package liftwright.review.cause.truth;

/**
 * Segments of a person, typed from de Leva, J. Biomech. 29, 1996, table 4: length in mm, mass in
 * per cent of the body, centre of mass in per cent of the length from the upper end, radii of
 * gyration about the axes front to back, side to side and along, in per cent of the length.
 */
enum Segment {
    HEAD(1, "200.2 6.68 58.94 33.0 35.9 31.8", "203.3 6.94 59.76 36.2 37.6 31.2"),
    TRUNK(1, "529.3 42.57 41.51 35.7 33.9 17.1", "531.9 43.46 44.86 37.2 34.7 19.1"),
    UPPER_ARM(2, "275.1 2.55 57.54 27.8 26.0 14.8", "281.7 2.71 57.72 28.5 26.9 15.8"),
    FOREARM(2, "264.3 1.38 45.59 26.1 25.7 9.4", "268.9 1.62 45.74 27.6 26.5 12.1"),
    HAND(2, "78.0 0.56 74.74 53.1 45.4 33.5", "86.2 0.61 79.00 62.8 51.3 40.1"),
    THIGH(2, "368.5 14.78 36.12 36.9 36.4 16.2", "422.2 14.16 40.95 32.9 32.9 14.9"),
    SHANK(2, "432.3 4.81 44.16 27.1 26.7 9.3", "434.0 4.33 44.59 25.5 24.9 10.3"),
    FOOT(2, "228.3 1.29 40.14 29.9 27.9 13.9", "258.1 1.37 44.15 25.7 24.5 12.4");

    /** Stature of the women and men of the table, mm. */
    private static final double[] STATURE = {1735, 1741};

    private final int count;
    private final double[][] rows;

    Segment(int count, String women, String men) {
        this.count = count;
        rows = new double[][] {numbers(women), numbers(men)};
    }

    private static double[] numbers(String row) {
        return java.util.Arrays.stream(row.split(" ")).mapToDouble(Double::parseDouble).toArray();
    }

    private double[] row(boolean man) {
        return rows[man ? 1 : 0];
    }

    /** Length over stature. */
    double length(boolean man) {
        return row(man)[0] / STATURE[man ? 1 : 0];
    }

    /** Mass of one over the body's: rounding of the table is shared out. */
    double mass(boolean man) {
        double whole = 0;
        for (Segment each : values()) {
            whole += each.count * each.row(man)[1];
        }
        return row(man)[1] / whole;
    }

    double centre(boolean man) {
        return row(man)[2] / 100;
    }

    /** Radius of gyration over length about axis 0 (front to back), 1 (side to side), 2 (along). */
    double gyration(boolean man, int axis) {
        return row(man)[3 + axis] / 100;
    }
}

package liftwright.rig.book;

import java.util.Arrays;
import java.util.List;
import liftwright.rig.FuseOpening;

/** Ratings in which the forms of fuse are sold. */
public enum FuseSeries {
    /** ISO 8820-3, from memory. */
    BLADE(1, 2, 3, 4, 5, 7.5, 10, 15, 20, 25, 30, 35, 40),

    /** Large blades and bolt-down links: ISO 8820-3, from 100 A up ISO 8820-5, from memory. */
    LARGE(
            20, 25, 30, 35, 40, 50, 60, 70, 80, 100, 125, 150, 175, 200, 225, 250, 300, 350, 400,
            450, 500),

    /** The R 10 series of ISO 3. */
    CARTRIDGE(
            1, 1.25, 1.6, 2, 2.5, 3.15, 4, 5, 6.3, 8, 10, 12.5, 16, 20, 25, 32, 40, 50, 63, 80, 100,
            125, 160, 200, 250, 315, 400, 500);

    private final List<Double> ratingsA;

    FuseSeries(double... ratingsA) {
        this.ratingsA = Arrays.stream(ratingsA).boxed().toList();
    }

    /** The form that a fuse is, by its curve and its rating, A. */
    public static FuseSeries of(FuseOpening.Speed speed, double ratingA) {
        return switch (speed) {
            case VERY_FAST -> CARTRIDGE;
            case FAST -> ratingA <= BLADE.greatestA() ? BLADE : LARGE;
            case SLOW -> LARGE;
        };
    }

    /** A, rising. */
    public List<Double> ratingsA() {
        return ratingsA;
    }

    /** The greatest of them, A. */
    public double greatestA() {
        return ratingsA.getLast();
    }

    /** Those above a rating, A, rising; none where it is the greatest. */
    public List<Double> largerThan(double ratingA) {
        return ratingsA.stream().filter(size -> size > ratingA * (1 + 1e-9)).toList();
    }
}

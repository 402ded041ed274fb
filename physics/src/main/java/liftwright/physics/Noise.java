package liftwright.physics;

/**
 * Levels of sound that add, and how long an ear may bear them. Sources that have nothing to do with
 * each other add by energy. The law of distance holds in the free far field: several times the size
 * of what sounds, and of the whole array, away. Walls and ground add up to 3 dB each (common
 * practice); they are not counted here.
 */
public final class Noise {

    /** Level that may be borne for eight hours, dBA [NIOSH98]. */
    public static final double NIOSH_DBA = 85;

    /** Exchange rate, dB for half the time [NIOSH98]. */
    static final double NIOSH_EXCHANGE_DB = 3;

    /** Level that may be borne for eight hours, dBA [CFR1910]. */
    public static final double OSHA_DBA = 90;

    /** Exchange rate, dB for half the time [CFR1910]. */
    static final double OSHA_EXCHANGE_DB = 5;

    /** No steady noise above this, however short, dBA [CFR1910]. */
    public static final double OSHA_CEILING_DBA = 115;

    /** Below this nothing counts towards a dose of the hearing conservation rule, dBA [CFR1910]. */
    public static final double OSHA_THRESHOLD_DBA = 80;

    /** The working day of both rules, s. */
    static final double DAY_S = 8 * 3600;

    private Noise() {}

    /** Level of n equal sources at one place, L + 10 log₁₀ n, dB. */
    public static double equalDb(double levelDb, int sources) {
        if (sources < 1) {
            throw new IllegalArgumentException("one source at least");
        }
        return levelDb + 10 * Math.log10(sources);
    }

    /** Level of two sources at one place, 10 log₁₀(10^(a/10) + 10^(b/10)), dB. */
    public static double sumDb(double aDb, double bDb) {
        double high = Math.max(aDb, bDb);
        double low = Math.min(aDb, bDb);
        if (low == Double.NEGATIVE_INFINITY) {
            return high;
        }
        return high + 10 * Math.log10(1 + Math.pow(10, (low - high) / 10));
    }

    /**
     * Level at a distance in the free far field, L₁ − 20 log₁₀(r/1 m), dB.
     *
     * @param atOneMetreDb L₁, dB at 1 m
     * @param distanceM r &gt; 0, m
     */
    public static double atDistanceDb(double atOneMetreDb, double distanceM) {
        return atOneMetreDb - 20 * Math.log10(distanceM);
    }

    /**
     * Highest level that a source may have at a place near it: by the law of distance, but from no
     * nearer than its own size, since closer in sound does not rise any more. A bound for places
     * inside an array, where no law of distance holds; this project's own.
     *
     * @param atOneMetreDb dB at 1 m
     * @param distanceM ≥ 0, m
     * @param sizeM of what sounds, the diameter of a fan, &gt; 0
     */
    public static double nearBoundDb(double atOneMetreDb, double distanceM, double sizeM) {
        return atDistanceDb(atOneMetreDb, Math.max(distanceM, sizeM));
    }

    /** Time a level may last in a day, 8 h/2^((L − 85)/3), s [NIOSH98]. */
    public static double nioshS(double levelDba) {
        return DAY_S / Math.pow(2, (levelDba - NIOSH_DBA) / NIOSH_EXCHANGE_DB);
    }

    /**
     * Time a level may last in a day, 8 h/2^((L − 90)/5), s [CFR1910, appendix A]; the table of the
     * rule rounds it. Above {@link #OSHA_CEILING_DBA} no time is allowed, which the caller says.
     */
    public static double oshaS(double levelDba) {
        return DAY_S / Math.pow(2, (levelDba - OSHA_DBA) / OSHA_EXCHANGE_DB);
    }

    /** Level over eight hours that has a dose, 85 + 10 log₁₀ D, dBA [NIOSH98]; D 1 is all. */
    public static double nioshAverageDba(double dose) {
        return NIOSH_DBA + 10 * Math.log10(dose);
    }

    /** Level over eight hours that has a dose, 90 + 16.61 log₁₀ D, dBA [CFR1910, appendix A]. */
    public static double oshaAverageDba(double dose) {
        return OSHA_DBA + 16.61 * Math.log10(dose);
    }
}

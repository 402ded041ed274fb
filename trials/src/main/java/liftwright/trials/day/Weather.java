package liftwright.trials.day;

import liftwright.trials.Planned;
import liftwright.trials.Rung;

/** What wind a rig is taken off the ground in at first; common practice. */
final class Weather {

    /** Mean wind, m/s. */
    static final double MOST_WIND_MPS = 3;

    /** Gust, m/s. */
    static final double MOST_GUST_MPS = 5;

    private Weather() {}

    /** Whether wind can carry the rig away on a card: it leaves the ground. */
    static boolean matters(Planned card) {
        Rung rung = card.id().kind().rung();
        return rung == Rung.HOP || rung == Rung.FREE;
    }
}

package liftwright.trials.day;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import liftwright.rig.DefaultUsed;

/**
 * A day as it is found before anything runs.
 *
 * @param date of the day
 * @param start when the crew begins
 * @param hoursS how long it works at most, s
 * @param lightUntil when it gets dark
 * @param airK temperature of the air, K
 * @param windMps mean wind where it is tested
 * @param gustMps strongest gust, at least the wind
 * @param packs those that are ready, by id
 * @param people those who are there, each with the roles that he or she can take
 * @param killProof file of the proof of the kills; empty where there is none yet
 * @param aborts runs of today that were aborted so far
 * @param unexplained whether something happened today that nobody can explain
 * @param defaults what the file leaves open
 */
public record Day(
        LocalDate date,
        LocalTime start,
        double hoursS,
        LocalTime lightUntil,
        double airK,
        double windMps,
        double gustMps,
        Map<String, ReadyPack> packs,
        Map<String, Set<String>> people,
        Optional<String> killProof,
        int aborts,
        boolean unexplained,
        java.util.List<DefaultUsed> defaults) {

    /** Role of who wears the rig. */
    public static final String WEARER = "wearer";

    /** Role of who gives throttle to a rig that nobody wears. */
    public static final String THROTTLE = "throttle";

    /** Role of who holds a kill, of a rig that names nobody for it. */
    public static final String KILL = "kill";

    /** Role of who stands by with what puts out or covers a fire. */
    public static final String FIRE = "fire";

    /** Role of who minds lines and tether. */
    public static final String LINES = "lines";

    public Day {
        packs = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(packs));
        people = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(people));
        defaults = java.util.List.copyOf(defaults);
        if (!(hoursS > 0) || !(gustMps >= windMps) || aborts < 0) {
            throw new IllegalArgumentException("not a day");
        }
    }

    /**
     * @param charge share of full, 0 to 1
     * @param kelvin temperature of the cells, K
     * @param spreadV between fullest and emptiest cell at rest, V; empty where it was not measured
     */
    public record ReadyPack(double charge, double kelvin, Optional<Double> spreadV) {}
}

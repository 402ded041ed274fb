package liftwright.learning.explain;

/**
 * A test that could be made next.
 *
 * @param words what to do
 * @param nats expected information about what is not yet told, ½ ln det
 * @param costMin time that it takes, min
 * @param risk factor on its cost for what can go wrong, ≥ 1: nothing turns 1, on the bench 1.5, on
 *     the stand 2, near weight 4; from memory
 * @param tells which causes it tells apart, in words; empty where none in particular
 */
public record NextTest(String words, double nats, double costMin, double risk, String tells) {

    public NextTest {
        if (!(costMin > 0) || !(risk >= 1)) {
            throw new IllegalArgumentException("a test costs time, and its risk is at least 1");
        }
    }

    /** Information for the time and risk that it costs, nats/min. */
    public double worth() {
        return nats / (costMin * risk);
    }
}

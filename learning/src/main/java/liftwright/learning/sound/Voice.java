package liftwright.learning.sound;

/**
 * A fan as it is heard.
 *
 * @param fan its id
 * @param type name of its type
 * @param blades that pass in one turn, ≥ 1
 * @param topRadS speed that it does not exceed, rad/s, &gt; 0
 */
public record Voice(String fan, String type, int blades, double topRadS) {

    public Voice {
        if (blades < 1 || !(topRadS > 0)) {
            throw new IllegalArgumentException("a fan without blades or speed");
        }
    }

    /** Rate at which blades pass at its top speed, Hz. */
    public double topHz() {
        return blades * topRadS / (2 * Math.PI);
    }
}

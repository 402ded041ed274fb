package liftwright.plant.hold;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A tether in numbers. Heights are above the ground unless another is named.
 *
 * @param anchorM height of the anchor, m
 * @param lengthM of the line, m
 * @param stiffnessNpm of the line, N/m
 * @param dampingNspm of the line, N·s/m
 * @param ringM height of the ring above the soles, m
 * @param overheadM height of what a climb strikes: a beam, a ceiling, else the anchor itself, m
 * @param matsM thickness of mats, m
 * @param anchorStrengthN empty where nothing is declared
 * @param lineStrengthN empty where nothing is declared
 * @param harnessLimitN empty where nothing is declared
 * @param sideReachM how far to the sides nothing is met; empty where nothing is declared
 * @param wallM from the middle of the room to the nearest wall; empty where nothing is declared
 */
public record TetherNumbers(
        double anchorM,
        double lengthM,
        double stiffnessNpm,
        double dampingNspm,
        double ringM,
        double overheadM,
        double matsM,
        OptionalDouble anchorStrengthN,
        OptionalDouble lineStrengthN,
        OptionalDouble harnessLimitN,
        OptionalDouble sideReachM,
        OptionalDouble wallM,
        Optional<Gantry> gantry,
        Optional<Down> down) {

    /** A frame on the ground that carries the anchor over its middle. */
    public record Gantry(double massKg, Footprint feet, double friction) {}

    /**
     * Lines from the ring to the ground, evenly around.
     *
     * @param lengthM of each, m
     * @param spreadM from below the rig to where each is fastened, m
     * @param stiffnessNpm of each, N/m
     * @param ringM height of the ring above the soles, m
     */
    public record Down(
            int count,
            double lengthM,
            double spreadM,
            double stiffnessNpm,
            OptionalDouble strengthN,
            double ringM) {

        /**
         * Height of the soles at which they are straight, m; below 0 where standing is too high.
         */
        public double straightM() {
            return uprightM() - ringM;
        }

        private double uprightM() {
            double square = lengthM * lengthM - spreadM * spreadM;
            return square > 0 ? Math.sqrt(square) : 0;
        }

        /** Upward share of the direction of a straight line; 0 where it does not reach at all. */
        public double upShare() {
            return uprightM() / lengthM;
        }

        /** Stiffness of all against a climb, N/m. */
        public double togetherNpm() {
            double up = upShare();
            return count * stiffnessNpm * up * up;
        }
    }

    /** Height of the soles at which the overhead line is straight, m; may be below the ground. */
    public double straightM() {
        return anchorM - lengthM - ringM;
    }
}

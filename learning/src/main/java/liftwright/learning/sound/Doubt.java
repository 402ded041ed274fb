package liftwright.learning.sound;

/**
 * What the listener knows of how it was recorded.
 *
 * @param delayS time that the sound took from the fans to the microphone, s, ≥ 0
 * @param clock standard deviation of the recorder's clock, relative; 5·10⁻⁵ is what crystals of
 *     telephones keep, from memory
 * @param movingMS greatest speed of the rig towards the microphone or away, m/s, ≥ 0: Doppler
 * @param returns standard deviation of a fan's ratio to the others from one run to the next,
 *     relative: charge, heat and air differ; 0.002 is an assumption
 */
public record Doubt(double delayS, double clock, double movingMS, double returns) {

    private static final double SOUND_M_S = 340;

    /** A rig that stands, at this distance, m. */
    public static Doubt standing(double distanceM) {
        return new Doubt(distanceM / SOUND_M_S, 5e-5, 0, 0.002);
    }

    /** The same for a rig that moved. */
    public Doubt moving(double fastestMS) {
        return new Doubt(delayS, clock, fastestMS, returns);
    }

    /** Standard deviation that all speeds share, relative. */
    double shared() {
        double doppler = movingMS / SOUND_M_S / 1.96;
        return Math.sqrt(clock * clock + doppler * doppler);
    }
}

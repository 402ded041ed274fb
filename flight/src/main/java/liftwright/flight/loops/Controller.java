package liftwright.flight.loops;

/**
 * The loops at work: position → velocity → attitude → rate → {@link Mixer}. For one run; steps
 * allocate nothing.
 */
public final class Controller {

    /** Numbers of a felt state: place, velocity (scene), quaternion, turn rates (body). */
    public static final int FELT = 13;

    private final Mixer mixer;
    private final double[] wrench = new double[4];

    public Controller(LoopDesign.Granted granted) {
        mixer = new Mixer(granted.craft());
    }

    public Mixer mixer() {
        return mixer;
    }

    /** Forgets what integrals hold. */
    public void begin() {}

    /**
     * One step of the computer.
     *
     * @param dtS since the last
     * @param felt in: {@value #FELT} numbers as estimated, in the order of the body's state
     * @param standing what else holds the rig
     * @param wanted the set point
     * @param fanV in: voltage measured at each controller, V
     * @param duty out: 0 to 1 for each fan
     */
    public void step(
            double dtS,
            double[] felt,
            Standing standing,
            Wanted wanted,
            double[] fanV,
            double[] duty) {
        mixer.share(wrench, fanV, duty);
    }
}

package liftwright.rig;

/** A way in which the joints of an arm can be made to push. */
public enum Exertion {
    SHOULDER_FLEXION("shoulder flexion"),
    SHOULDER_EXTENSION("shoulder extension"),
    SHOULDER_ABDUCTION("shoulder abduction"),
    SHOULDER_ADDUCTION("shoulder adduction"),
    SHOULDER_OUTWARD("shoulder outward rotation"),
    SHOULDER_INWARD("shoulder inward rotation"),
    ELBOW_FLEXION("elbow flexion"),
    ELBOW_EXTENSION("elbow extension");

    private final String key;

    Exertion(String key) {
        this.key = key;
    }

    /** The word in the file. */
    public String key() {
        return key;
    }

    /** Whether it is the shoulder that pushes; else the elbow does. */
    public boolean isOfShoulder() {
        return switch (this) {
            case SHOULDER_FLEXION,
                    SHOULDER_EXTENSION,
                    SHOULDER_ABDUCTION,
                    SHOULDER_ADDUCTION,
                    SHOULDER_OUTWARD,
                    SHOULDER_INWARD ->
                    true;
            case ELBOW_FLEXION, ELBOW_EXTENSION -> false;
        };
    }
}

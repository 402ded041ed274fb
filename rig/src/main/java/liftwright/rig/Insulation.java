package liftwright.rig;

/** Material of a wire's insulation; what it bears and conducts stands in the parts book. */
public enum Insulation {
    PVC("PVC"),
    XLPE("XLPE"),
    ETFE("ETFE"),
    SILICONE("silicone"),
    FEP("FEP"),
    PTFE("PTFE");

    private final String word;

    Insulation(String word) {
        this.word = word;
    }

    /** As a file writes it. */
    public String word() {
        return word;
    }
}

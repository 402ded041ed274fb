package liftwright.plant.heat;

/**
 * How warm a rig is: temperatures of all its bodies of heat, what flows into each, the state of its
 * fuses, and how far its joints have grown worse.
 */
public final class HeatState {

    /** Conductors and lumps of all lines, then three shells of each, then bodies, K. */
    final double[] kelvin;

    /** Heat that each of them keeps, W. */
    final double[] keptW;

    /** What each fuse is from opening, 1 − θ: 1 when cold, 0 when it opens. */
    final double[] fuseRoom;

    /** Factor on the resistance of each line's node, ≥ 1, for good. */
    final double[] grown;

    HeatState(int temperatures, int fuses, int nodes) {
        kelvin = new double[temperatures];
        keptW = new double[temperatures];
        fuseRoom = new double[fuses];
        grown = new double[nodes];
    }

    public void copyFrom(HeatState other) {
        System.arraycopy(other.kelvin, 0, kelvin, 0, kelvin.length);
        System.arraycopy(other.keptW, 0, keptW, 0, keptW.length);
        System.arraycopy(other.fuseRoom, 0, fuseRoom, 0, fuseRoom.length);
        System.arraycopy(other.grown, 0, grown, 0, grown.length);
    }
}

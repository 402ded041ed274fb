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

    final double[] fuse;

    /** Factor on the resistance of each line's node, ≥ 1, for good. */
    final double[] grown;

    HeatState(int temperatures, int fuses, int nodes) {
        kelvin = new double[temperatures];
        keptW = new double[temperatures];
        fuse = new double[fuses];
        grown = new double[nodes];
    }

    public void copyFrom(HeatState other) {
        System.arraycopy(other.kelvin, 0, kelvin, 0, kelvin.length);
        System.arraycopy(other.keptW, 0, keptW, 0, keptW.length);
        System.arraycopy(other.fuse, 0, fuse, 0, fuse.length);
        System.arraycopy(other.grown, 0, grown, 0, grown.length);
    }
}

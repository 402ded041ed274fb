package liftwright.plant.heat;

import liftwright.rig.Insulation;

/**
 * What a material of insulation conducts and holds; from memory, ± 15 %.
 *
 * @param conductivityWpmK W/(m·K)
 * @param capacityJpm3K heat capacity per volume, J/(m³·K)
 */
record WallData(double conductivityWpmK, double capacityJpm3K) {

    static WallData of(Insulation material) {
        return switch (material) {
            case PVC -> new WallData(0.17, 1.9e6);
            case XLPE -> new WallData(0.29, 2.1e6);
            case ETFE -> new WallData(0.24, 3.3e6);
            case SILICONE -> new WallData(0.20, 1.6e6);
            case FEP -> new WallData(0.20, 2.5e6);
            case PTFE -> new WallData(0.25, 2.2e6);
        };
    }
}

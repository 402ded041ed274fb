package liftwright.plant;

/**
 * The supply at its strongest, for faults: full packs, resistance at once (nothing settled), wires
 * warm. Arrays count as the rig's packs and chains; they belong to the caller.
 *
 * @param fullV rest voltage of each pack, full, V
 * @param packOhm resistance of each pack, Ω
 * @param chainOhm resistance of each chain, out and back, Ω
 * @param wireK temperature that its wires are taken at, K
 */
@SuppressWarnings("ArrayRecordComponent") // handed through, never compared
public record FaultSupply(double[] fullV, double[] packOhm, double[] chainOhm, double wireK) {}

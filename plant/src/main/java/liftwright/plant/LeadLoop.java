package liftwright.plant;

import java.util.List;
import liftwright.rig.PartId;

/**
 * What a pack sees when it is plugged in: leads and controllers' capacitors as one series circuit.
 *
 * <p>A chain that leads to the share s of the capacitance carries the share s of the current, so it
 * counts with s² of its length and resistance. Exact for equal branches side by side; with unequal
 * branches single capacitors may ring above what this circuit says.
 *
 * @param pack number of the pack
 * @param fans numbers of the fans whose controllers declare a capacitance and hang on it
 * @param firstFan id of the first of them
 * @param lengthM length of run in the circuit, out and back counted once, m
 * @param resistanceOhm pack at once and wiring, Ω
 * @param capacitanceF sum over those controllers, F
 * @param sourceV the full pack at rest, V
 */
public record LeadLoop(
        int pack,
        List<Integer> fans,
        PartId firstFan,
        double lengthM,
        double resistanceOhm,
        double capacitanceF,
        double sourceV) {

    public LeadLoop {
        fans = List.copyOf(fans);
    }
}

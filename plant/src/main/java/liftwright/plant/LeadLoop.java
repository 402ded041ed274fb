package liftwright.plant;

import java.util.List;

/**
 * Packs, leads and the capacitors of the controllers they feed as one series circuit, which stores
 * and loses as much as they do.
 *
 * <p>A chain that carries the share s of the current counts with s² of its length and resistance.
 * Exact for equal packs and equal branches side by side; with unequal branches single capacitors
 * may ring a tenth above what this circuit says.
 *
 * @param fans numbers of the fans that hang on it
 * @param lengthM one-way length of run in the circuit, m
 * @param resistanceOhm of packs, without settling, and wiring, Ω
 * @param capacitanceF sum over the controllers; 0 where one of them declares none, F
 * @param sourceV full packs at rest, V
 * @param currentA out of the packs together before the event, A
 */
public record LeadLoop(
        List<Integer> fans,
        double lengthM,
        double resistanceOhm,
        double capacitanceF,
        double sourceV,
        double currentA) {

    public LeadLoop {
        fans = List.copyOf(fans);
    }
}

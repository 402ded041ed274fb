package liftwright.review.wiring;

import liftwright.physics.AircraftWire;
import liftwright.physics.Conductor;
import liftwright.rig.Element;

/** Resistance of one element, out and back, at its declared value. */
final class ElementOhm {

    private ElementOhm() {}

    /**
     * @param wireK temperature of runs, K
     * @return Ω
     */
    static double of(Element element, double wireK) {
        return switch (element) {
            case Element.Run run ->
                    Conductor.outAndBackOhm(
                                    AircraftWire.of(run.gauge()).ohmpm(),
                                    run.length().si(),
                                    run.conductors())
                            * Conductor.copperFactor(wireK);
            case Element.Joint joint -> joint.resistance().si();
            case Element.Fuse fuse -> fuse.resistance().si();
            case Element.Pole pole -> pole.contactor().resistance().si();
        };
    }
}

package liftwright.review.wiring;

import liftwright.physics.AircraftWire;
import liftwright.physics.Conductor;
import liftwright.rig.Element;

/** Resistance of one element, out and back, at its declared values. */
final class ElementOhm {

    private ElementOhm() {}

    /**
     * As it is, damage counted in.
     *
     * @param wireK temperature of runs, K
     * @return Ω
     */
    static double of(Element element, double wireK) {
        double fresh = fresh(element, wireK);
        return switch (element) {
            case Element.Joint joint -> fresh * joint.wear().damage().si();
            case Element.Run _, Element.Fuse _, Element.Pole _ -> fresh;
        };
    }

    /** As new. */
    static double fresh(Element element, double wireK) {
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

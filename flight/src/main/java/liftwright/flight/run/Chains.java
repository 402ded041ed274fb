package liftwright.flight.run;

import java.util.List;
import java.util.Optional;
import liftwright.quantity.Quantity;
import liftwright.rig.Contactor;
import liftwright.rig.Element;
import liftwright.rig.Kill;
import liftwright.rig.Rig;
import liftwright.rig.Wiring;

/** What a kill does to a rig, and how long after the press. */
final class Chains {

    /** When what happens, s after the press; infinite where it does not. */
    @SuppressWarnings("ArrayRecordComponent") // handed through, never compared
    record Acts(double zeroS, double openS, boolean[] opens) {}

    private Chains() {}

    static Optional<Acts> of(Rig rig, String killId) {
        return rig.wiring().kills().stream()
                .filter(kill -> kill.id().equals(killId))
                .findFirst()
                .map(kill -> acts(rig.wiring(), kill));
    }

    private static Acts acts(Wiring wiring, Kill kill) {
        double delay = kill.delay().si();
        boolean zero = kill.order() != Kill.Order.OPEN_AT_ONCE || kill.opens().isEmpty();
        boolean open = kill.order() != Kill.Order.COMMAND_ZERO_ONLY && !kill.opens().isEmpty();
        double opensIn = 0;
        List<Wiring.Chain> chains = wiring.chains();
        boolean[] opens = new boolean[chains.size()];
        for (int k = 0; k < opens.length; k++) {
            for (Element element : chains.get(k).elements()) {
                if (element instanceof Element.Pole(var _, var _, Contactor contactor)
                        && kill.opens().contains(contactor.name())) {
                    opens[k] = true;
                    opensIn = Math.max(opensIn, time(contactor.opensIn()));
                }
            }
        }
        return new Acts(
                zero ? delay : Double.POSITIVE_INFINITY,
                open ? delay + opensIn : Double.POSITIVE_INFINITY,
                opens);
    }

    private static double time(Quantity quantity) {
        return quantity.si();
    }
}

package liftwright.flight.run;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import liftwright.plant.Drive;
import liftwright.rig.Pack;
import liftwright.rig.table.StartState;

/** Packs at the charge that a profile starts with. */
final class Charged {

    private Charged() {}

    static void start(Drive drive, FlightCase flight) {
        OptionalDouble charge = flight.profile().start().chargeShare();
        if (charge.isEmpty()) {
            drive.start();
            return;
        }
        if (!flight.plant().isHeated()) {
            throw new IllegalArgumentException("a charge at the start is one of a heated plant");
        }
        List<StartState.Row> rows = new ArrayList<>();
        for (Pack pack : flight.plant().rig().packs()) {
            rows.add(
                    new StartState.Row(
                            0,
                            pack.id().text(),
                            StartState.Place.WHOLE,
                            OptionalDouble.empty(),
                            charge,
                            OptionalDouble.empty()));
        }
        drive.start(new StartState("", rows));
    }
}

package liftwright.plant.supply;

import liftwright.plant.heat.HeatLoad;
import liftwright.plant.heat.HeatState;

/** What hangs on the supply and warms: implemented by the fans. */
public interface Warmed {

    /** Takes temperatures: resistances and magnets follow. */
    void warm(HeatState at);

    /**
     * Tells the heat that they make at the point last solved.
     *
     * @param out their bodies, and what leaves at the shafts
     */
    void tell(NetworkState supply, HeatLoad out);
}

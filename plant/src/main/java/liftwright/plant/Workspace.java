package liftwright.plant;

import liftwright.plant.body.Pose;
import liftwright.plant.supply.NetworkState;
import liftwright.plant.thrust.FanUnits;

/** Scratch of one thread for one plant: {@link Plant#workspace()}. */
public final class Workspace {

    final NetworkState network;
    final FanUnits units;
    final double[] frames;
    final double[] limb = new double[Pose.FRAME];

    Workspace(NetworkState network, FanUnits units, int mounts) {
        this.network = network;
        this.units = units;
        frames = new double[mounts * Pose.FRAME];
    }
}

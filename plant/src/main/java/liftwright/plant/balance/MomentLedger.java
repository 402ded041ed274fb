package liftwright.plant.balance;

import java.util.List;
import liftwright.plant.body.Inertia;
import liftwright.rig.Vec3;

/**
 * What turns a rig that hovers: the wrench of all fans about the centre of mass of the whole, and
 * the shares of every fan and cause in its moment.
 *
 * <p>Signs (ISO 1151-1): a positive roll lowers the right side, a positive pitch leans the wearer
 * back, a positive yaw turns to the right.
 *
 * @param fans every fan
 * @param force sum of the fans' forces, N
 * @param moment their moment about the centre of mass, N·m, summed fan by fan
 * @param acceleration angular acceleration from rest, rad/s²
 */
public record MomentLedger(List<FanAtWork> fans, Vec3 force, Vec3 moment, Vec3 acceleration) {

    public MomentLedger {
        fans = List.copyOf(fans);
    }

    /**
     * @param inertia of the whole about its centre of mass
     */
    public static MomentLedger of(List<FanAtWork> fans, Inertia inertia) {
        Vec3 force = Vec3.ZERO;
        Vec3 moment = Vec3.ZERO;
        for (FanAtWork fan : fans) {
            force = force.plus(fan.force());
            moment = moment.plus(fan.moment());
        }
        return new MomentLedger(fans, force, moment, inertia.acceleration(moment));
    }

    /** What a cause adds to the moment over all fans, N·m. */
    public Vec3 of(TurningCause cause) {
        Vec3 sum = Vec3.ZERO;
        for (FanAtWork fan : fans) {
            sum = sum.plus(fan.share(cause));
        }
        return sum;
    }

    /**
     * Greatest difference, over the axes, between the sum of all shares and the moment, over the
     * sum of the magnitudes of all shares; rounding alone leaves about 1e-16.
     */
    public double closure() {
        Vec3 sum = Vec3.ZERO;
        double whole = 0;
        for (FanAtWork fan : fans) {
            for (TurningCause cause : TurningCause.values()) {
                Vec3 share = fan.share(cause);
                sum = sum.plus(share);
                whole += share.length();
            }
        }
        Vec3 miss = sum.minus(moment);
        double worst =
                Math.max(Math.abs(miss.x()), Math.max(Math.abs(miss.y()), Math.abs(miss.z())));
        return whole == 0 ? worst : worst / whole;
    }
}

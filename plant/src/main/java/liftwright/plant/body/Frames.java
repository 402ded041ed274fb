package liftwright.plant.body;

import liftwright.plant.parameters.ParameterRows;
import liftwright.rig.Mount;
import liftwright.rig.Rig;
import liftwright.rig.Vec3;

/**
 * Where mounts and what carries them are at the declared values, whether they carry something or
 * not: the rig at lift-off without twist, as it is drawn. Nothing of a rig but its wearer and its
 * mounts is looked at.
 */
public final class Frames {

    private final Pose pose;
    private final double[] p;

    private Frames(Pose pose, double[] p) {
        this.pose = pose;
        this.p = p;
    }

    /**
     * Those of a rig.
     *
     * @throws liftwright.plant.parameters.ImpossibleValueException if a declared value is none that
     *     can be
     */
    public static Frames of(Rig rig) {
        ParameterRows rows = new ParameterRows();
        Pose pose = Pose.declare(rig, rows);
        return new Frames(pose, rows.table().nominal());
    }

    /** Axes of what a mount is on: the trunk, the frame or a limb. */
    public Axes carrier(Mount.Carrier on) {
        double[] frame = new double[Pose.FRAME];
        pose.limbFrame(p, on, frame);
        return axes(pose.start(p, on), frame);
    }

    /** Length of what a mount is on, m; 0 where it is no limb. */
    public double lengthM(Mount.Carrier on) {
        return pose.limbLengthM(p, on);
    }

    /** Axes of a mount, its tilt included. */
    public Axes mount(Mount mount) {
        double[] limb = new double[Pose.FRAME];
        pose.limbFrame(p, mount.on(), limb);
        double[] frame = new double[Pose.FRAME];
        Pose.tilt(limb, mount.turnForward().si(), mount.turnRight().si(), frame, 0);
        return axes(carrier(mount.on()).place(onCarrier(mount)), frame);
    }

    /** Place of a mount's origin in the axes of what it is on, m. */
    public Vec3 onCarrier(Mount mount) {
        return mount.at().plus(new Vec3(0, 0, mount.along().si() * lengthM(mount.on())));
    }

    private static Axes axes(Vec3 origin, double[] frame) {
        return new Axes(
                origin,
                new Vec3(frame[0], frame[3], frame[6]),
                new Vec3(frame[1], frame[4], frame[7]),
                new Vec3(frame[2], frame[5], frame[8]));
    }
}

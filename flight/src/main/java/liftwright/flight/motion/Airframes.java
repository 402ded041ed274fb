package liftwright.flight.motion;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import liftwright.physics.Gravity;
import liftwright.plant.Balancing;
import liftwright.plant.HoverPoint;
import liftwright.plant.Plant;
import liftwright.plant.SiteGround;
import liftwright.plant.balance.FanAtWork;
import liftwright.plant.body.Limb;
import liftwright.plant.body.MassItem;
import liftwright.plant.body.MassProperties;
import liftwright.rig.Rig;
import liftwright.rig.Tether;
import liftwright.rig.Vec3;

/**
 * Makes {@link Airframe}s of one rig, a draw at a time: masses, places and thrust lines of its
 * lift-off as balance knows them, beams bent and jets followed as there. For one thread.
 */
public final class Airframes {

    /** From a fan's place to the middle of its intake over the tip diameter, from memory. */
    static final double INTAKE_AHEAD = 0.3;

    /** C_d A of a person, standing, from the front, the side and above, from memory, m². */
    static final Vec3 WEARER_DRAG_M2 = new Vec3(0.7, 0.5, 0.2);

    /** C_d of what nobody wears, over the box that its parts fill, from memory. */
    static final double BOX_DRAG = 1;

    /** Half the width of a sole, from memory, m. */
    private static final double HALF_SOLE_M = 0.045;

    /** How far all feet are pressed in by the weight, from memory, m. */
    private static final double PRESSED_M = 0.004;

    /** Share of critical damping of what stands on its feet, from memory. */
    private static final double STANDING_DAMPING = 0.5;

    /** Points that stand on the ground: corners of a module, heels and balls of a wearer. */
    private static final int SKIDS = 4;

    private static final int SOLES = 8;

    private final Plant plant;
    private final Rig rig;
    private final Balancing balancing;
    private final SiteGround site;
    private final Balancing.Worker worker;
    private Vec3 centre = Vec3.ZERO;

    public Airframes(Plant plant) {
        this.plant = plant;
        rig = plant.rig();
        balancing = plant.balancing();
        site = plant.ground();
        worker = balancing.worker();
    }

    /**
     * The rig at a vector, lines of its tether included. Allocates.
     *
     * @param give of the wearer; without meaning for a rig that nobody wears
     */
    public Airframe of(double[] p, Give give) {
        HoverPoint hover = worker.liftOff(p);
        MassProperties mass = hover.mass();
        centre = mass.centre();
        List<Airframe.FanLine> fans = new ArrayList<>();
        for (int k = 0; k < rig.fans().size(); k++) {
            FanAtWork fan = hover.ledger().fans().get(k);
            double ahead = INTAKE_AHEAD * rig.fans().get(k).type().tip().si();
            fans.add(
                    new Airframe.FanLine(
                            fan.arm(),
                            fan.arm().plus(fan.actual().times(ahead)),
                            fan.actual(),
                            fan.strike().force(),
                            fan.strike().turn()));
        }
        List<Limb> limbs = balancing.limbs(p);
        List<Airframe.Loose> loose =
                rig.wearer().isPresent() ? new Wearing(mass, give).masses() : List.of();
        Airframe.Ground ground =
                ground(mass.massKg(), limbs.isEmpty() ? SKIDS : SOLES)
                        .on(site.friction(p), site.slopeRad(p), site.slopeToRad(p));
        List<Airframe.Foot> feet =
                limbs.isEmpty() ? skids(mass, fans) : soles(limbs, centre.z(), ground);
        Airframe bare =
                new Airframe(
                        mass.massKg(),
                        mass.inertia(),
                        fans,
                        loose,
                        feet,
                        ground,
                        drag(mass, feet),
                        List.of(),
                        plant.siteDensityKgpm3(p));
        return bare.withLines(lines(bare, centre));
    }

    /** Centre of mass of the last one made, in the axes of the rig file, m. */
    public Vec3 centre() {
        return centre;
    }

    /**
     * Feet so stiff that the weight presses all of them in by {@link #PRESSED_M}, and as stiff to
     * the side, on level ground without friction.
     */
    static Airframe.Ground ground(double massKg, int feet) {
        double each = massKg * Gravity.STANDARD_MPS2 / (Math.max(1, feet) * PRESSED_M);
        double rate = Math.sqrt(Gravity.STANDARD_MPS2 / PRESSED_M);
        double damping = 2 * STANDING_DAMPING * rate / Gravity.STANDARD_MPS2;
        double side = 2 * STANDING_DAMPING * each / rate;
        return new Airframe.Ground(each, damping, each, side, 0);
    }

    /**
     * Heel and ball of both feet, at both edges of the sole, moved so that their middle is under
     * the centre of mass: nobody stands otherwise, whatever posture was declared for the hover. On
     * a slope ankles and knees follow the ground and the body stays upright.
     */
    private static List<Airframe.Foot> soles(
            List<Limb> limbs, double centreDownM, Airframe.Ground ground) {
        List<Vec3> ends = new ArrayList<>();
        Vec3 sum = Vec3.ZERO;
        for (Limb limb : limbs) {
            if (limb.name().endsWith("foot")) {
                for (Vec3 end : List.of(limb.from(), limb.to())) {
                    ends.add(end);
                    sum = sum.plus(end);
                }
            }
        }
        Vec3 middle = new Vec3(sum.x() / ends.size(), sum.y() / ends.size(), centreDownM);
        List<Airframe.Foot> feet = new ArrayList<>();
        for (Vec3 end : ends) {
            for (double side : new double[] {-HALF_SOLE_M, HALF_SOLE_M}) {
                Vec3 at = end.minus(middle).plus(new Vec3(0, side, 0));
                double falls = ground.fallM(at.x(), at.y());
                feet.add(new Airframe.Foot(at.plus(new Vec3(0, 0, falls)), 0));
            }
        }
        return feet;
    }

    /** Four feet at the corners of the rectangle that fans and parts fill, under the lowest. */
    private List<Airframe.Foot> skids(MassProperties mass, List<Airframe.FanLine> fans) {
        Box box = box(mass, fans);
        List<Airframe.Foot> feet = new ArrayList<>();
        for (double x : new double[] {box.least.x(), box.most.x()}) {
            for (double y : new double[] {box.least.y(), box.most.y()}) {
                feet.add(new Airframe.Foot(new Vec3(x, y, box.most.z()), Airframe.FRAME));
            }
        }
        return feet;
    }

    private record Box(Vec3 least, Vec3 most) {
        Box with(Vec3 at, double reachM) {
            return new Box(
                    new Vec3(
                            Math.min(least.x(), at.x() - reachM),
                            Math.min(least.y(), at.y() - reachM),
                            Math.min(least.z(), at.z() - reachM)),
                    new Vec3(
                            Math.max(most.x(), at.x() + reachM),
                            Math.max(most.y(), at.y() + reachM),
                            Math.max(most.z(), at.z() + reachM)));
        }
    }

    private Box box(MassProperties mass, List<Airframe.FanLine> fans) {
        Box box = new Box(Vec3.ZERO, Vec3.ZERO);
        for (int k = 0; k < fans.size(); k++) {
            box = box.with(fans.get(k).at(), rig.fans().get(k).type().tip().si() / 2);
        }
        for (MassItem item : mass.items()) {
            if (item.kind() != MassItem.Kind.FAN) {
                box = box.with(item.at().minus(mass.centre()), 0);
            }
        }
        return box;
    }

    private Airframe.Drag drag(MassProperties mass, List<Airframe.Foot> feet) {
        if (rig.wearer().isPresent()) {
            Vec3 moment = Vec3.ZERO;
            double kg = 0;
            for (MassItem item : mass.items()) {
                if (item.kind() == MassItem.Kind.WEARER) {
                    moment = moment.plus(item.at().times(item.massKg()));
                    kg += item.massKg();
                }
            }
            return new Airframe.Drag(WEARER_DRAG_M2, moment.times(1 / kg).minus(mass.centre()));
        }
        Vec3 least = feet.get(0).at();
        Vec3 most = feet.get(feet.size() - 1).at();
        double deep = most.x() - least.x();
        double wide = most.y() - least.y();
        double high = 2 * most.z();
        return new Airframe.Drag(
                new Vec3(wide * high, deep * high, deep * wide).times(BOX_DRAG), Vec3.ZERO);
    }

    /** Lines of the declared tether, at their declared values, over the start of the flight. */
    private List<Airframe.Line> lines(Airframe bare, Vec3 centre) {
        Optional<Tether> declared = rig.restraint().tether();
        if (declared.isEmpty()) {
            return List.of();
        }
        Tether tether = declared.get();
        double soles = bare.soleDepthM().orElse(0.0);
        double top = rig.wearer().isPresent() ? -centre.z() : -soles;
        double ring = tether.harnessPoint().map(height -> soles - height.si()).orElse(top);
        Vec3 at = new Vec3(0, 0, ring);
        List<Airframe.Line> lines = new ArrayList<>();
        lines.add(
                new Airframe.Line(
                        "tether",
                        new Vec3(0, 0, -tether.anchorHeight().si()),
                        at,
                        tether.length().si(),
                        tether.stiffness().si(),
                        tether.damping().si()));
        tether.downLines().ifPresent(down -> down(down, at, lines));
        return lines;
    }

    private static void down(Tether.DownLines down, Vec3 ring, List<Airframe.Line> lines) {
        for (int k = 0; k < down.count(); k++) {
            double way = 2 * Math.PI * (k + 0.5) / down.count();
            Vec3 foot = new Vec3(Math.cos(way), Math.sin(way), 0).times(down.spread().si());
            lines.add(
                    new Airframe.Line(
                            "down-line " + (k + 1),
                            foot,
                            ring,
                            down.length().si(),
                            down.stiffness().si(),
                            0));
        }
    }
}

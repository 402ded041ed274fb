package liftwright.plant.body;

import java.util.ArrayList;
import java.util.List;
import liftwright.physics.Cantilever;
import liftwright.plant.parameters.ParameterRows;
import liftwright.plant.parameters.Range;
import liftwright.rig.Beam;
import liftwright.rig.Fan;
import liftwright.rig.Mount;
import liftwright.rig.PartId;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;
import liftwright.rig.Vec3;

/**
 * Mounts that stand on beams and give under the thrust and swirl of their fans. Angles and places
 * are declared of the rig at rest, so weight has bent the beams already and thrust alone bends them
 * further. The loads are those of the straight beam (first order).
 */
public final class Beams {

    /**
     * @param runs from clamp to mount, in the axes of what the mount is on
     * @param bending row of E I, or of the tube's outside
     * @param torsion row of G J, or of the wall
     * @param modulus row, −1 where the rigidities are declared
     * @param shear row, −1 likewise
     */
    private record Row(
            Mount mount, Vec3 runs, int length, int bending, int torsion, int modulus, int shear) {

        double bendingNm2(double[] p) {
            return modulus < 0
                    ? p[bending]
                    : p[modulus] * Cantilever.tubeSecondMomentM4(p[bending], p[torsion]);
        }

        double torsionNm2(double[] p) {
            return modulus < 0
                    ? p[torsion]
                    : p[shear] * 2 * Cantilever.tubeSecondMomentM4(p[bending], p[torsion]);
        }
    }

    /**
     * A fan on its beam.
     *
     * @param twisted place and direction of thrust with the twist of the beam
     * @param bent the same with its bending too
     */
    public record Given(Pushed twisted, Pushed bent) {}

    /**
     * @param at place, m
     * @param direction of thrust
     */
    public record Pushed(Vec3 at, Vec3 direction) {}

    /**
     * How far one mount gives.
     *
     * @param mount its name
     * @param twistRad about the beam, right-hand
     * @param slopeRad of the end, ≥ 0
     */
    public record Give(String mount, double twistRad, double slopeRad) {}

    /**
     * All fans and mounts under load.
     *
     * @param fans in the order of the rig's
     * @param gives of the mounts on beams
     */
    public record Loaded(List<Given> fans, List<Give> gives) {
        public Loaded {
            fans = List.copyOf(fans);
            gives = List.copyOf(gives);
        }
    }

    private final Rig rig;
    private final Pose pose;
    private final List<Row> rows;

    private Beams(Rig rig, Pose pose, List<Row> rows) {
        this.rig = rig;
        this.pose = pose;
        this.rows = List.copyOf(rows);
    }

    /** Declares the parameters of all beams that hold fans. */
    public static Beams declare(Rig rig, Pose pose, ParameterRows table) {
        List<Row> rows = new ArrayList<>();
        List<String> known = new ArrayList<>();
        for (Fan fan : rig.fans()) {
            Mount mount = fan.mount();
            if (mount.beam().isPresent() && !known.contains(mount.name())) {
                known.add(mount.name());
                rows.add(row(rig, mount, mount.beam().get(), table));
            }
        }
        return new Beams(rig, pose, rows);
    }

    private static Row row(Rig rig, Mount mount, Beam beam, ParameterRows table) {
        DeclaredKeys keys = new DeclaredKeys(rig.declaration());
        String declared = Pose.original(rig, mount, keys).orElse(mount).name();
        RigPath at = RigPath.of("mounts", declared, "beam");
        PartId part = new PartId(mount.name());
        String of = " of the beam of mount " + declared;
        int length =
                table.row(at.child("length"), "length" + of, part, beam.length(), Range.POSITIVE);
        return switch (beam.section()) {
            case Beam.Rigidities(var bending, var torsion) ->
                    new Row(
                            mount,
                            beam.runs(),
                            length,
                            table.row(
                                    at.child("bending rigidity"),
                                    "bending rigidity" + of,
                                    part,
                                    bending,
                                    Range.POSITIVE),
                            table.row(
                                    at.child("torsion rigidity"),
                                    "torsion rigidity" + of,
                                    part,
                                    torsion,
                                    Range.POSITIVE),
                            -1,
                            -1);
            case Beam.Tube(var outside, var wall, var modulus, var shear) ->
                    new Row(
                            mount,
                            beam.runs(),
                            length,
                            table.row(
                                    at.child("outside"),
                                    "outside" + of,
                                    part,
                                    outside,
                                    Range.POSITIVE),
                            table.row(at.child("wall"), "wall" + of, part, wall, Range.POSITIVE),
                            table.row(
                                    at.child("modulus"),
                                    "modulus" + of,
                                    part,
                                    modulus,
                                    Range.POSITIVE),
                            table.row(
                                    at.child("shear modulus"),
                                    "shear modulus" + of,
                                    part,
                                    shear,
                                    Range.POSITIVE));
        };
    }

    /**
     * A beam at rest.
     *
     * @param mount at its tip
     * @param tip place of that mount, rig axes, m
     * @param along from clamp to mount, unit vector, rig axes
     * @param lengthM m
     * @param bendingNm2 E I, N·m²
     * @param torsionNm2 G J, N·m²
     */
    public record Standing(
            Mount mount,
            Vec3 tip,
            Vec3 along,
            double lengthM,
            double bendingNm2,
            double torsionNm2) {}

    /** All beams as they stand, nothing pulling at them. Allocates. */
    public List<Standing> standing(double[] p) {
        if (rows.isEmpty()) {
            return List.of();
        }
        Pose.Placed placed = pose.placed(p);
        return rows.stream()
                .map(
                        row ->
                                new Standing(
                                        row.mount,
                                        placed.at(row.mount, Vec3.ZERO),
                                        placed.onLimb(row.mount, row.runs),
                                        p[row.length],
                                        row.bendingNm2(p),
                                        row.torsionNm2(p)))
                .toList();
    }

    /** Whether no fan is on a beam. */
    public boolean none() {
        return rows.isEmpty();
    }

    /**
     * Where the fans are and how they push under load. Allocates.
     *
     * @param places of all fans, beams straight
     * @param thrustN of all fans, N
     * @param swirlNm moments about their thrusts, right-hand, N·m
     */
    public Loaded under(double[] p, List<FanPlace> places, double[] thrustN, double[] swirlNm) {
        List<Given> fans = new ArrayList<>();
        for (FanPlace place : places) {
            Pushed straight = new Pushed(place.at(), place.actual());
            fans.add(new Given(straight, straight));
        }
        List<Give> gives = new ArrayList<>();
        if (rows.isEmpty()) {
            return new Loaded(fans, gives);
        }
        Pose.Placed placed = pose.placed(p);
        for (Row row : rows) {
            gives.add(give(row, placed, p, places, thrustN, swirlNm, fans));
        }
        return new Loaded(fans, gives);
    }

    /** Loads one beam and moves its fans in {@code fans}. */
    private Give give(
            Row row,
            Pose.Placed placed,
            double[] p,
            List<FanPlace> places,
            double[] thrustN,
            double[] swirlNm,
            List<Given> fans) {
        Vec3 tip = placed.at(row.mount, Vec3.ZERO);
        Vec3 along = placed.onLimb(row.mount, row.runs);
        Vec3 force = Vec3.ZERO;
        Vec3 moment = Vec3.ZERO;
        for (int k = 0; k < places.size(); k++) {
            if (isOn(row, k)) {
                Vec3 push = places.get(k).actual().times(thrustN[k]);
                force = force.plus(push);
                moment =
                        moment.plus(places.get(k).at().minus(tip).cross(push))
                                .plus(places.get(k).actual().times(swirlNm[k]));
            }
        }
        double lengthM = p[row.length];
        double ei = row.bendingNm2(p);
        double torqueNm = dot(moment, along);
        double twistRad = Cantilever.twistRad(torqueNm, lengthM, row.torsionNm2(p));
        Vec3 forceTurn = along.cross(force);
        Vec3 across = moment.minus(along.times(torqueNm));
        Vec3 slope =
                forceTurn
                        .times(Cantilever.slopeOfForceRad(1, lengthM, ei))
                        .plus(across.times(Cantilever.slopeOfMomentRad(1, lengthM, ei)));
        Vec3 way =
                forceTurn
                        .cross(along)
                        .times(Cantilever.wayOfForceM(1, lengthM, ei))
                        .plus(across.cross(along).times(Cantilever.wayOfMomentM(1, lengthM, ei)));
        for (int k = 0; k < places.size(); k++) {
            if (isOn(row, k)) {
                Vec3 offset = turned(places.get(k).at().minus(tip), along.times(twistRad));
                Vec3 push = turned(places.get(k).actual(), along.times(twistRad));
                fans.set(
                        k,
                        new Given(
                                new Pushed(tip.plus(offset), push),
                                new Pushed(
                                        tip.plus(way).plus(turned(offset, slope)),
                                        turned(push, slope))));
            }
        }
        return new Give(row.mount.name(), twistRad, slope.length());
    }

    private boolean isOn(Row row, int fan) {
        return rig.fans().get(fan).mount().name().equals(row.mount.name());
    }

    private static double dot(Vec3 a, Vec3 b) {
        return a.x() * b.x() + a.y() * b.y() + a.z() * b.z();
    }

    /** A vector turned by a rotation vector, right-hand, rad (Rodrigues). */
    private static Vec3 turned(Vec3 v, Vec3 by) {
        double angle = by.length();
        if (angle == 0) {
            return v;
        }
        Vec3 axis = by.times(1 / angle);
        return v.times(Math.cos(angle))
                .plus(axis.cross(v).times(Math.sin(angle)))
                .plus(axis.times(dot(axis, v) * (1 - Math.cos(angle))));
    }
}

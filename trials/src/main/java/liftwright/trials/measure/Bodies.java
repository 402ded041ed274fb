package liftwright.trials.measure;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import liftwright.plant.body.Inertia;
import liftwright.plant.body.MassItem;
import liftwright.plant.body.MassLedger;
import liftwright.plant.body.MassProperties;
import liftwright.plant.body.Pose;
import liftwright.rig.Fan;
import liftwright.rig.Mount;
import liftwright.rig.OtherPart;
import liftwright.rig.Pack;
import liftwright.rig.Rig;
import liftwright.rig.Vec3;

/**
 * What of a rig is stiff in itself and can be laid on scales or hung from cords: all that is on
 * frame and trunk as one, and every mount on a limb by itself, in its own axes. The wearer is no
 * part of them.
 */
final class Bodies {

    /**
     * One of them.
     *
     * @param words what it is called
     * @param mounts names of its mounts
     * @param axes in whose axes its places are told
     * @param parts numbers of its parts: fans, then packs, then other parts of the rig
     * @param solid at a vector
     */
    record Body(
            String words,
            List<String> mounts,
            String axes,
            List<Integer> parts,
            Function<double[], Solid> solid) {}

    /**
     * A stiff body.
     *
     * @param centre of mass in the axes of the body, m
     * @param inertia about it
     * @param places of its parts, m
     */
    record Solid(double massKg, Vec3 centre, Inertia inertia, List<Vec3> places) {}

    /** A part as a mass with an extent. */
    private record Piece(double massKg, Vec3 at, Inertia own) {}

    private final Rig rig;
    private final Pose pose;
    private final MassLedger ledger;

    private Bodies(Rig rig, Pose pose, MassLedger ledger) {
        this.rig = rig;
        this.pose = pose;
        this.ledger = ledger;
    }

    /**
     * Those of a rig.
     *
     * @param ledger declared with the pose
     */
    static List<Body> of(Rig rig, Pose pose, MassLedger ledger) {
        return new Bodies(rig, pose, ledger).list();
    }

    private List<Body> list() {
        Map<String, List<Integer>> byMount = new LinkedHashMap<>();
        List<Integer> trunk = new ArrayList<>();
        List<String> trunkMounts = new ArrayList<>();
        List<Mount> mounts = mounts();
        for (int k = 0; k < mounts.size(); k++) {
            Mount mount = mounts.get(k);
            if (isOnLimb(mount)) {
                byMount.computeIfAbsent(mount.name(), _ -> new ArrayList<>()).add(k);
            } else {
                trunk.add(k);
                if (!trunkMounts.contains(mount.name())) {
                    trunkMounts.add(mount.name());
                }
            }
        }
        List<Body> bodies = new ArrayList<>();
        if (!trunk.isEmpty()) {
            bodies.add(
                    new Body(
                            byMount.isEmpty() ? "the rig" : "what is on frame and trunk",
                            List.copyOf(trunkMounts),
                            "the axes of the rig file, nobody leaning",
                            List.copyOf(trunk),
                            p -> solid(onTrunk(p, trunk))));
        }
        byMount.forEach(
                (name, parts) ->
                        bodies.add(
                                new Body(
                                        name,
                                        List.of(name),
                                        "the axes of mount " + name,
                                        List.copyOf(parts),
                                        p -> solid(onMount(p, parts)))));
        return bodies;
    }

    /** Mounts of fans, packs and other parts, in this order. */
    private List<Mount> mounts() {
        List<Mount> mounts = new ArrayList<>();
        rig.fans().stream().map(Fan::mount).forEach(mounts::add);
        rig.packs().stream().map(Pack::mount).forEach(mounts::add);
        rig.otherParts().stream().map(OtherPart::mount).forEach(mounts::add);
        return mounts;
    }

    private static boolean isOnLimb(Mount mount) {
        return mount.on().onWearer() && mount.on() != Mount.Carrier.TRUNK;
    }

    private List<MassItem> items(double[] p) {
        MassProperties mass = ledger.properties(p);
        int parts = rig.fans().size() + rig.packs().size() + rig.otherParts().size();
        return mass.items().subList(mass.items().size() - parts, mass.items().size());
    }

    /** In the axes of the trunk: the wearer's lean taken back. */
    private List<Piece> onTrunk(double[] p, List<Integer> parts) {
        double[] turn = new double[Pose.FRAME];
        pose.trunk(p, turn);
        List<MassItem> items = items(p);
        return parts.stream()
                .map(items::get)
                .map(
                        item ->
                                new Piece(
                                        item.massKg(),
                                        back(turn, item.at()),
                                        back(turn, item.own())))
                .toList();
    }

    /** Turnᵀ · v. */
    private static Vec3 back(double[] turn, Vec3 v) {
        return new Vec3(
                turn[0] * v.x() + turn[3] * v.y() + turn[6] * v.z(),
                turn[1] * v.x() + turn[4] * v.y() + turn[7] * v.z(),
                turn[2] * v.x() + turn[5] * v.y() + turn[8] * v.z());
    }

    /** Turnᵀ · I · turn. */
    private static Inertia back(double[] turn, Inertia i) {
        double[][] own = {
            {i.xx(), i.xy(), i.xz()}, {i.xy(), i.yy(), i.yz()}, {i.xz(), i.yz(), i.zz()}
        };
        double[][] out = new double[3][3];
        for (int a = 0; a < 3; a++) {
            for (int b = 0; b < 3; b++) {
                for (int k = 0; k < 3; k++) {
                    for (int l = 0; l < 3; l++) {
                        out[a][b] += turn[3 * k + a] * own[k][l] * turn[3 * l + b];
                    }
                }
            }
        }
        return new Inertia(out[0][0], out[1][1], out[2][2], out[0][1], out[0][2], out[1][2]);
    }

    /** In the axes of the mount, where places are as declared. */
    private List<Piece> onMount(double[] p, List<Integer> parts) {
        List<MassItem> items = items(p);
        return parts.stream().map(k -> piece(k, items.get(k).massKg())).toList();
    }

    private Piece piece(int part, double kg) {
        int packs = rig.fans().size();
        int others = packs + rig.packs().size();
        if (part < packs) {
            Fan fan = rig.fans().get(part);
            return new Piece(kg, fan.at(), disk(kg, fan.type().tip().si() / 2, fan.blows()));
        }
        if (part < others) {
            return new Piece(kg, rig.packs().get(part - packs).at(), Inertia.ZERO);
        }
        OtherPart other = rig.otherParts().get(part - others);
        return new Piece(kg, other.at(), other.box().map(box -> box(kg, box)).orElse(Inertia.ZERO));
    }

    /** A thin, even disk: m r²/4 across, twice that about its axis. */
    private static Inertia disk(double kg, double radiusM, Vec3 axis) {
        double across = kg * radiusM * radiusM / 4;
        return new Inertia(
                across * (1 + axis.x() * axis.x()),
                across * (1 + axis.y() * axis.y()),
                across * (1 + axis.z() * axis.z()),
                across * axis.x() * axis.y(),
                across * axis.x() * axis.z(),
                across * axis.y() * axis.z());
    }

    private static Inertia box(double kg, Vec3 edges) {
        double x = edges.x() * edges.x();
        double y = edges.y() * edges.y();
        double z = edges.z() * edges.z();
        return new Inertia(kg * (y + z) / 12, kg * (x + z) / 12, kg * (x + y) / 12, 0, 0, 0);
    }

    private static Solid solid(List<Piece> pieces) {
        double kg = 0;
        Vec3 moment = Vec3.ZERO;
        for (Piece piece : pieces) {
            kg += piece.massKg;
            moment = moment.plus(piece.at.times(piece.massKg));
        }
        Vec3 centre = moment.times(1 / kg);
        Inertia inertia = Inertia.ZERO;
        for (Piece piece : pieces) {
            Vec3 r = piece.at.minus(centre);
            inertia = inertia.plus(piece.own).plus(point(piece.massKg, r));
        }
        return new Solid(kg, centre, inertia, pieces.stream().map(Piece::at).toList());
    }

    /** Of a mass in one point, about another. */
    static Inertia point(double kg, Vec3 r) {
        return new Inertia(
                kg * (r.y() * r.y() + r.z() * r.z()),
                kg * (r.x() * r.x() + r.z() * r.z()),
                kg * (r.x() * r.x() + r.y() * r.y()),
                -kg * r.x() * r.y(),
                -kg * r.x() * r.z(),
                -kg * r.y() * r.z());
    }
}

package liftwright.trials.predict;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;
import java.util.function.IntUnaryOperator;
import java.util.stream.IntStream;
import liftwright.plant.Discharge;
import liftwright.plant.Plant;
import liftwright.plant.heat.HeatPart;
import liftwright.quantity.Quantity;
import liftwright.rig.CellType;
import liftwright.rig.Fan;
import liftwright.rig.FanType;
import liftwright.rig.LimitName;
import liftwright.rig.Pack;
import liftwright.rig.Rig;
import liftwright.trials.Run;

/**
 * Finds in a run at the declared values what is worth reading: of the parts of a kind those whose
 * limit is nearest, of which the worst is read then.
 */
final class Survey implements CardRun.Listener {

    /** Less current than this is none, A. */
    private static final double NONE_A = 0.01;

    private final Plant plant;
    private final Rig rig;
    private final CardRun card;
    private final double[] packA;
    private final double[] chainA;
    private final double[] speedRadps;
    private final double[] windingA;
    private final double[] hottestK;

    Survey(Plant plant, CardRun card) {
        this.plant = plant;
        this.card = card;
        rig = plant.rig();
        packA = new double[rig.packs().size()];
        chainA = new double[rig.wiring().chains().size()];
        speedRadps = new double[rig.fans().size()];
        windingA = new double[rig.fans().size()];
        hottestK = new double[plant.heatParts().size()];
    }

    @Override
    public void at(Discharge run, int step) {
        for (int k = 0; k < packA.length; k++) {
            packA[k] = Math.max(packA[k], run.packA(k));
        }
        for (int k = 0; k < chainA.length; k++) {
            chainA[k] = Math.max(chainA[k], Math.abs(run.network().chainA(k)));
        }
        for (int k = 0; k < speedRadps.length; k++) {
            if (card.turns(k)) {
                speedRadps[k] = Math.max(speedRadps[k], run.fans().units().speedRadps(k));
                windingA[k] = Math.max(windingA[k], run.fans().units().windingA(k));
            }
        }
        for (int k = 0; k < hottestK.length; k++) {
            hottestK[k] = Math.max(hottestK[k], run.nowK(k));
        }
    }

    List<Watch> watches() {
        List<Watch> found = new ArrayList<>();
        int[] fans = IntStream.range(0, speedRadps.length).filter(card::turns).toArray();
        int[] packs = IntStream.range(0, packA.length).filter(k -> packA[k] > NONE_A).toArray();
        thrust(fans, found);
        found.add(plain(Gauge.ENERGY, "all packs that give", packs));
        if (packs.length > 0) {
            packs(packs, found);
        }
        found.add(
                nearest(
                        Gauge.SPEED,
                        fans,
                        k -> speedRadps[k],
                        k -> share(type(k).rotor().topSpeed(), LimitName.ROTOR_SPEED_SHARE),
                        rig.limits().origin(LimitName.ROTOR_SPEED_SHARE),
                        "fan"));
        found.add(
                nearest(
                        Gauge.WINDING_CURRENT,
                        fans,
                        k -> windingA[k],
                        k ->
                                share(
                                        type(k).controller().currentLimit(),
                                        LimitName.CONTROLLER_CURRENT_SHARE),
                        rig.limits().origin(LimitName.CONTROLLER_CURRENT_SHARE),
                        "fan"));
        heat(Gauge.WIRE, HeatPart.Kind.WIRE, "wire", found);
        heat(Gauge.JOINT, HeatPart.Kind.JOINT, "joint", found);
        heat(Gauge.CONTROLLER, HeatPart.Kind.SWITCHES, "controller", found);
        heat(Gauge.WINDING, HeatPart.Kind.WINDING, "winding", found);
        heat(Gauge.MAGNETS, HeatPart.Kind.MAGNETS, "motor", found);
        heat(Gauge.CELLS, HeatPart.Kind.CELLS, "pack", found);
        return List.copyOf(found);
    }

    private FanType type(int fan) {
        return rig.fans().get(fan).type();
    }

    private double share(Optional<Quantity> most, LimitName name) {
        return most.map(of -> of.si() * rig.limits().si(name)).orElse(Double.POSITIVE_INFINITY);
    }

    private void thrust(int[] fans, List<Watch> found) {
        found.add(plain(Gauge.THRUST, fans.length == 1 ? fan(fans[0]) : "all that run", fans));
        List<String> mounts =
                IntStream.of(fans)
                        .mapToObj(k -> rig.fans().get(k).mount().name())
                        .distinct()
                        .toList();
        boolean weighed =
                card.run().held() == Run.Held.BENCH || card.run().held() == Run.Held.STAND;
        if (weighed && mounts.size() > 1) {
            for (String mount : mounts) {
                found.add(
                        plain(
                                Gauge.MOUNT_THRUST,
                                mount,
                                IntStream.of(fans)
                                        .filter(k -> rig.fans().get(k).mount().name().equals(mount))
                                        .toArray()));
            }
        }
    }

    private String fan(int number) {
        Fan fan = rig.fans().get(number);
        return fan.id().text();
    }

    private static Watch plain(Gauge gauge, String part, int[] members) {
        return new Watch(gauge, part, members, Optional.empty());
    }

    private void packs(int[] packs, List<Watch> found) {
        found.add(
                nearest(
                        Gauge.PACK_CURRENT,
                        packs,
                        k -> packA[k],
                        this::mostA,
                        "peak current of the cell, else its continuous one, declared",
                        "pack"));
        found.add(
                new Watch(
                        Gauge.CELL_VOLTAGE,
                        "lowest cell of all packs that give",
                        packs,
                        Optional.of(
                                new Watch.Limit(
                                        rig.limits().si(LimitName.CELL_UNDER_LOAD),
                                        rig.limits().origin(LimitName.CELL_UNDER_LOAD)))));
        found.add(
                new Watch(
                        Gauge.CHARGE,
                        "emptiest of all packs that give",
                        packs,
                        Optional.of(
                                new Watch.Limit(
                                        rig.demands().reserve().si(),
                                        "reserve, demands of the rig file"))));
    }

    private double mostA(int number) {
        Pack pack = rig.packs().get(number);
        CellType cell = pack.cell();
        return cell.peakCurrent()
                .or(cell::continuousCurrent)
                .map(most -> most.si() * pack.parallel())
                .orElse(Double.POSITIVE_INFINITY);
    }

    /** Of those that have one limit the ones that come nearest to it. */
    private Watch nearest(
            Gauge gauge,
            int[] all,
            IntToDoubleFunction most,
            IntToDoubleFunction limit,
            String origin,
            String name) {
        int worst = all[0];
        for (int k : all) {
            boolean nearer =
                    most.applyAsDouble(k) * limit.applyAsDouble(worst)
                            > most.applyAsDouble(worst) * limit.applyAsDouble(k);
            worst = nearer ? k : worst;
        }
        double nearestSi = limit.applyAsDouble(worst);
        int[] alike = IntStream.of(all).filter(k -> limit.applyAsDouble(k) == nearestSi).toArray();
        String id =
                (gauge == Gauge.PACK_CURRENT
                                ? rig.packs().get(worst).id()
                                : rig.fans().get(worst).id())
                        .text();
        return new Watch(
                gauge,
                words(alike.length, name, id),
                alike,
                nearestSi < Double.POSITIVE_INFINITY
                        ? Optional.of(new Watch.Limit(nearestSi, origin))
                        : Optional.empty());
    }

    private static String words(int count, String name, String id) {
        return count == 1 ? id : "worst of " + count + " " + name + "s, likely " + id;
    }

    private void heat(Gauge gauge, HeatPart.Kind kind, String name, List<Watch> found) {
        List<HeatPart> parts = plant.heatParts();
        int[] used =
                IntStream.range(0, hottestK.length)
                        .filter(k -> parts.get(k).kind() == kind && warms(parts.get(k)))
                        .toArray();
        if (used.length == 0) {
            return;
        }
        IntToDoubleFunction room = k -> parts.get(k).limitK() - hottestK[k];
        int nearest =
                IntStream.of(used)
                        .boxed()
                        .min((a, b) -> Double.compare(room.applyAsDouble(a), room.applyAsDouble(b)))
                        .orElseThrow();
        HeatPart worst = parts.get(nearest);
        int[] alike =
                IntStream.of(used).filter(k -> parts.get(k).limitK() == worst.limitK()).toArray();
        found.add(
                new Watch(
                        gauge,
                        words(alike.length, name, worst.id().text()),
                        alike,
                        Optional.of(new Watch.Limit(worst.limitK(), worst.limitOrigin()))));
    }

    private boolean warms(HeatPart part) {
        IntUnaryOperator used =
                switch (part.kind()) {
                    case WIRE, JOINT, FUSE, POLE -> k -> chainA[k] > NONE_A ? 1 : 0;
                    case SWITCHES, CONTROLLER, WINDING, MAGNETS -> k -> card.turns(k) ? 1 : 0;
                    case CELLS -> k -> packA[k] > NONE_A ? 1 : 0;
                };
        return used.applyAsInt(part.owner()) == 1;
    }
}

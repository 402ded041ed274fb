package liftwright.plant.heat;

import static liftwright.plant.RigSketch.si;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.random.RandomGenerator;
import liftwright.plant.RigSketch;
import liftwright.rig.Element;
import liftwright.rig.FuseOpening;
import liftwright.rig.Insulation;
import liftwright.rig.PartId;
import liftwright.rig.Rig;
import liftwright.rig.Wear;

/** Small rigs at random that warm, exact in all: one to three packs, one to four fans. */
final class HeatedRigs {

    private final RandomGenerator random;
    private final RigSketch sketch = WarmSketch.sketch();
    private int next;

    private HeatedRigs(RandomGenerator random) {
        this.random = random;
    }

    static Rig random(RandomGenerator random) {
        return new HeatedRigs(random).rig();
    }

    private Rig rig() {
        int packs = random.nextInt(1, 4);
        boolean bus = packs > 1 && random.nextBoolean();
        var fan = WarmSketch.fanType("F", fanNumbers());
        int fans = 0;
        for (int k = 1; k <= packs; k++) {
            var cell = WarmSketch.cellType("C" + k, cellNumbers());
            sketch.packs.add(RigSketch.pack("p", k, cell, 14, random.nextDouble(0.85, 1)));
            String split = bus ? "bus" : "split." + k;
            int feeds = random.nextInt(1, 3);
            sketch.wire("p." + k, split, chain(feeds * 90.0, true));
            for (int f = 0; f < feeds; f++) {
                fans++;
                sketch.fans.add(RigSketch.fan("f", fans, fan));
                sketch.wire(split, "f." + fans, chain(90, random.nextBoolean()));
            }
        }
        if (!bus && packs > 1 && random.nextBoolean()) {
            sketch.wire("split.1", "split.2", chain(40, false));
        }
        WarmSketch.oneGroup(sketch);
        return sketch.rig();
    }

    private WarmSketch.FanNumbers fanNumbers() {
        return new WarmSketch.FanNumbers(
                1.24e-5 * about(0.2),
                2.28e-7 * about(0.1),
                54.45 * about(0.02),
                0.012 * about(0.3),
                2.5,
                0.002 * about(0.4),
                random.nextInt(4) == 0 ? Optional.of(75.0) : Optional.empty(),
                WarmSketch.cooling(60 * about(0.4), 15 * about(0.4), 1.2, 1.8 * about(0.5)),
                WarmSketch.heating(44 * about(0.4), 159 * about(0.4), 1.5 * about(0.4), 4));
    }

    private WarmSketch.CellNumbers cellNumbers() {
        return new WarmSketch.CellNumbers(
                random.nextDouble(15_000, 40_000),
                random.nextDouble(0.0008, 0.0025),
                random.nextDouble(0.0003, 0.0012),
                random.nextDouble(3, 40),
                165 * about(0.3),
                2 * about(0.5),
                0.1 * about(0.5));
    }

    private double about(double share) {
        return random.nextDouble(1 - share, 1 + share);
    }

    private Element[] chain(double ampere, boolean fused) {
        List<Element> elements = new ArrayList<>();
        joint(ampere, elements);
        if (fused) {
            String id = "fuse" + next++;
            double rating = ampere * random.nextDouble(0.5, 1.6);
            elements.add(
                    WarmSketch.fuse(
                            id,
                            rating,
                            0.05 / rating,
                            random.nextBoolean() ? FuseOpening.Speed.FAST : FuseOpening.Speed.SLOW,
                            random.nextDouble(5, 60)));
        }
        if (random.nextInt(4) == 0) {
            elements.add(WarmSketch.pole("pole" + next++, 0.2e-3, ampere));
        }
        int runs = random.nextInt(1, 3);
        for (int k = 0; k < runs; k++) {
            elements.add(run(ampere));
        }
        joint(ampere, elements);
        return elements.toArray(new Element[0]);
    }

    private void joint(double ampere, List<Element> elements) {
        Wear wear =
                random.nextInt(3) == 0
                        ? new Wear(
                                si(random.nextDouble(1, 4)),
                                random.nextBoolean() ? Optional.of(si(0.01)) : Optional.empty())
                        : Wear.NONE;
        elements.add(
                WarmSketch.joint(
                        "j" + next++,
                        random.nextDouble(0.02, 0.08) / ampere,
                        random.nextInt(6) == 0 ? 0 : ampere * random.nextDouble(0.6, 2),
                        random.nextDouble(2, 12),
                        wear));
    }

    private Element run(double ampere) {
        int[] gauges = ampere > 100 ? new int[] {6, 4, 2} : new int[] {14, 12, 10, 8};
        int gauge = gauges[random.nextInt(gauges.length)];
        Insulation material = WarmSketch.MATERIALS.get(random.nextInt(WarmSketch.MATERIALS.size()));
        double classK = material == Insulation.PVC ? 343.15 : 423.15;
        return WarmSketch.run(
                "w" + next++,
                gauge,
                random.nextInt(5) == 0 ? 2 : 1,
                random.nextDouble(0.05, 1.2),
                material,
                classK,
                random.nextDouble(0.3e-3, 1.2e-3),
                random.nextInt(4) == 0 ? 3 : 1,
                random.nextInt(3) == 0 ? random.nextDouble(0.5, 10) : 0);
    }

    /** Whether packs are joined to each other. */
    static boolean isTied(Rig rig) {
        return rig.wiring().chains().stream()
                .anyMatch(
                        chain ->
                                chain.to().equals("bus")
                                        || (chain.from().startsWith("split")
                                                && chain.to().startsWith("split")));
    }

    /** Whether a joint grows worse above its limit. */
    static boolean grows(Rig rig) {
        return rig.wiring().chains().stream()
                .flatMap(chain -> chain.elements().stream())
                .anyMatch(
                        element ->
                                element instanceof Element.Joint joint
                                        && joint.wear().growthPerS().isPresent());
    }

    /** Number of an element in its chain. */
    static int element(Rig rig, int chain, PartId id) {
        List<Element> elements = rig.wiring().chains().get(chain).elements();
        for (int k = 0; k < elements.size(); k++) {
            if (elements.get(k).id().equals(id)) {
                return k;
            }
        }
        throw new AssertionError("no element " + id);
    }
}

package liftwright.plant;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import liftwright.quantity.Quantity;
import liftwright.rig.Element;
import liftwright.rig.Rig;
import liftwright.rig.Wiring;

/** Walks the wiring outward from the packs and makes series circuits of it. */
final class LeadLoops {

    private final Rig rig;
    private final double[] packOhm;
    private final double[] chainOhm;
    private final double[] fullV;
    private final Map<String, Integer> fanAt = new HashMap<>();
    private final Map<String, Integer> packAt = new HashMap<>();

    LeadLoops(Rig rig, double[] packOhm, double[] chainOhm, double[] fullV) {
        this.rig = rig;
        this.packOhm = packOhm;
        this.chainOhm = chainOhm;
        this.fullV = fullV;
        for (int fan = 0; fan < rig.fans().size(); fan++) {
            fanAt.put(rig.fans().get(fan).id().text(), fan);
        }
        for (int pack = 0; pack < rig.packs().size(); pack++) {
            packAt.put(rig.packs().get(pack).id().text(), pack);
        }
    }

    /** A chain on the way, from the node nearer to the start to the one farther off. */
    private record Step(int chain, String near, String far) {}

    /**
     * Each pack as if it were the first to be plugged in: other packs are passed by, current goes
     * as capacitance does. Where the wiring meshes, the way of fewest chains counts.
     */
    List<LeadLoop> pluggedIn() {
        List<LeadLoop> loops = new ArrayList<>();
        for (int pack = 0; pack < rig.packs().size(); pack++) {
            String root = rig.packs().get(pack).id().text();
            List<Step> steps = outward(root, false);
            List<Integer> fans = fansOn(steps);
            if (fans.isEmpty()) {
                continue;
            }
            double whole = capacitanceF(fans);
            double ohm = packOhm[pack];
            double length = 0;
            if (whole > 0) {
                Map<String, Double> behind = new HashMap<>();
                fans.forEach(
                        fan ->
                                behind.put(
                                        rig.fans().get(fan).id().text(),
                                        capacitanceF(List.of(fan))));
                // From the ends inward: each node passes on what hangs behind it.
                for (Step step : steps.reversed()) {
                    double share = behind.getOrDefault(step.far, 0.0) / whole;
                    behind.merge(step.near, share * whole, Double::sum);
                    ohm += share * share * chainOhm[step.chain];
                    length += share * share * lengthM(rig.wiring().chains().get(step.chain));
                }
            }
            loops.add(new LeadLoop(fans, length, ohm, whole, fullV[pack], 0));
        }
        return loops;
    }

    /** What hangs together as one circuit whose fans all stop at once, with the currents before. */
    List<LeadLoop> cut(SteadyState before) {
        List<LeadLoop> loops = new ArrayList<>();
        Set<String> taken = new HashSet<>();
        for (int first = 0; first < rig.packs().size(); first++) {
            String root = rig.packs().get(first).id().text();
            if (taken.contains(root)) {
                continue;
            }
            List<Step> steps = outward(root, true);
            Set<Integer> packs = new TreeSet<>(Set.of(first));
            for (Step step : steps) {
                if (packAt.containsKey(step.far)) {
                    packs.add(packAt.get(step.far));
                    taken.add(step.far);
                }
            }
            List<Integer> fans = fansOn(steps);
            double current = 0;
            for (int pack : packs) {
                current += before.packA(pack);
            }
            if (!fans.isEmpty() && current > 0) {
                loops.add(loop(fans, packs, steps, current, before));
            }
        }
        return loops;
    }

    private LeadLoop loop(
            List<Integer> fans,
            Set<Integer> packs,
            List<Step> steps,
            double current,
            SteadyState before) {
        Set<String> nodes = new HashSet<>();
        packs.forEach(pack -> nodes.add(rig.packs().get(pack).id().text()));
        steps.forEach(step -> nodes.add(step.far));
        double source = 0;
        double ohm = 0;
        double length = 0;
        for (int pack : packs) {
            double share = before.packA(pack) / current;
            source += share * fullV[pack];
            ohm += share * share * packOhm[pack];
        }
        for (int chain = 0; chain < chainOhm.length; chain++) {
            Wiring.Chain own = rig.wiring().chains().get(chain);
            if (nodes.contains(own.from())) {
                double share = before.chainA(chain) / current;
                ohm += share * share * chainOhm[chain];
                length += share * share * lengthM(own);
            }
        }
        return new LeadLoop(fans, length, ohm, capacitanceF(fans), source, current);
    }

    private List<Step> outward(String root, boolean throughPacks) {
        List<Step> steps = new ArrayList<>();
        Set<String> seen = new HashSet<>(Set.of(root));
        Deque<String> next = new ArrayDeque<>(List.of(root));
        while (!next.isEmpty()) {
            String near = next.removeFirst();
            for (int chain = 0; chain < rig.wiring().chains().size(); chain++) {
                Wiring.Chain own = rig.wiring().chains().get(chain);
                String far =
                        own.from().equals(near)
                                ? own.to()
                                : own.to().equals(near) ? own.from() : near;
                if ((throughPacks || !packAt.containsKey(far)) && seen.add(far)) {
                    steps.add(new Step(chain, near, far));
                    next.addLast(far);
                }
            }
        }
        return steps;
    }

    private List<Integer> fansOn(List<Step> steps) {
        return steps.stream()
                .filter(step -> fanAt.containsKey(step.far))
                .map(step -> fanAt.get(step.far))
                .toList();
    }

    /** Sum over the controllers of these fans; 0 where one of them declares none. */
    private double capacitanceF(List<Integer> fans) {
        double sum = 0;
        for (int fan : fans) {
            double own =
                    rig.fans()
                            .get(fan)
                            .type()
                            .controller()
                            .capacitance()
                            .map(Quantity::si)
                            .orElse(0.0);
            if (own == 0) {
                return 0;
            }
            sum += own;
        }
        return sum;
    }

    /** Wires side by side lie as close as one: their number is not counted. */
    private static double lengthM(Wiring.Chain chain) {
        double sum = 0;
        for (Element element : chain.elements()) {
            sum +=
                    switch (element) {
                        case Element.Run run -> run.length().si();
                        case Element.Joint _, Element.Fuse _, Element.Pole _ -> 0;
                    };
        }
        return sum;
    }
}

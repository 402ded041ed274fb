package liftwright.plant;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import liftwright.quantity.Quantity;
import liftwright.rig.Element;
import liftwright.rig.Fan;
import liftwright.rig.Rig;
import liftwright.rig.Wiring;

/**
 * Walks the wiring outward from each pack, as if it were the first to be plugged in: other packs
 * are passed by. Where the wiring meshes, the way of fewest chains counts.
 */
final class LeadLoops {

    private final Rig rig;
    private final double[] packOhm;
    private final double[] chainOhm;
    private final double[] fullV;
    private final Map<String, Integer> fanAt = new HashMap<>();
    private final Set<String> packNodes = new HashSet<>();

    LeadLoops(Rig rig, double[] packOhm, double[] chainOhm, double[] fullV) {
        this.rig = rig;
        this.packOhm = packOhm;
        this.chainOhm = chainOhm;
        this.fullV = fullV;
        for (int fan = 0; fan < rig.fans().size(); fan++) {
            fanAt.put(rig.fans().get(fan).id().text(), fan);
        }
        rig.packs().forEach(pack -> packNodes.add(pack.id().text()));
    }

    /** A chain on the way, from the node nearer to the pack to the one farther off. */
    private record Step(int chain, String near, String far) {}

    List<LeadLoop> all() {
        List<LeadLoop> loops = new ArrayList<>();
        for (int pack = 0; pack < rig.packs().size(); pack++) {
            String root = rig.packs().get(pack).id().text();
            List<Step> steps = outward(root);
            Map<String, Double> behind = new HashMap<>();
            List<Integer> fans = new ArrayList<>();
            for (Step step : steps) {
                Integer fan = fanAt.get(step.far);
                if (fan != null && capacitanceF(fan) > 0) {
                    fans.add(fan);
                    behind.merge(step.far, capacitanceF(fan), Double::sum);
                }
            }
            // From the ends inward: each node passes on what hangs behind it.
            for (Step step : steps.reversed()) {
                behind.merge(step.near, behind.getOrDefault(step.far, 0.0), Double::sum);
            }
            double whole = behind.getOrDefault(root, 0.0);
            if (fans.isEmpty()) {
                continue;
            }
            double ohm = packOhm[pack];
            double length = 0;
            for (Step step : steps) {
                double share = behind.getOrDefault(step.far, 0.0) / whole;
                ohm += share * share * chainOhm[step.chain];
                length += share * share * lengthM(rig.wiring().chains().get(step.chain));
            }
            loops.add(
                    new LeadLoop(
                            pack,
                            fans,
                            rig.fans().get(fans.getFirst()).id(),
                            length,
                            ohm,
                            whole,
                            fullV[pack]));
        }
        return loops;
    }

    private List<Step> outward(String root) {
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
                if (!packNodes.contains(far) && seen.add(far)) {
                    steps.add(new Step(chain, near, far));
                    next.addLast(far);
                }
            }
        }
        return steps;
    }

    private double capacitanceF(int fan) {
        Fan own = rig.fans().get(fan);
        return own.type().controller().capacitance().map(Quantity::si).orElse(0.0);
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

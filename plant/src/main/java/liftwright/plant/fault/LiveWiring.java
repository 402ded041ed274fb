package liftwright.plant.fault;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import liftwright.rig.Rig;
import liftwright.rig.Wiring;

/**
 * The wiring of a rig as a graph that can lose parts: which fans are dead, which packs give nothing
 * and which chains carry nothing after a loss. Two losses that leave the same alive come to the
 * same. Immutable.
 */
public final class LiveWiring {

    private final int nodes;
    private final int[] packNode;
    private final int[] fanNode;
    private final int[] from;
    private final int[] to;

    private LiveWiring(int nodes, int[] packNode, int[] fanNode, int[] from, int[] to) {
        this.nodes = nodes;
        this.packNode = packNode;
        this.fanNode = fanNode;
        this.from = from;
        this.to = to;
    }

    /** The wiring of a rig, all of it closed. */
    public static LiveWiring of(Rig rig) {
        Map<String, Integer> number = new HashMap<>();
        int[] packs = rig.packs().stream().mapToInt(p -> node(p.id().text(), number)).toArray();
        int[] fans = rig.fans().stream().mapToInt(f -> node(f.id().text(), number)).toArray();
        List<Wiring.Chain> chains = rig.wiring().chains();
        int[] from = chains.stream().mapToInt(chain -> node(chain.from(), number)).toArray();
        int[] to = chains.stream().mapToInt(chain -> node(chain.to(), number)).toArray();
        return new LiveWiring(number.size(), packs, fans, from, to);
    }

    private static int node(String name, Map<String, Integer> number) {
        return number.computeIfAbsent(name, _ -> number.size());
    }

    /**
     * The same effect with everything named that is dead by it: fans that no pack reaches, packs
     * that reach no fan, chains that lead nowhere. What fans are told stays.
     */
    public Effect whole(Effect effect) {
        boolean[] open = marked(from.length, effect.openChains());
        boolean[] deadFan = marked(fanNode.length, effect.deadFans());
        boolean[] lostPack = marked(packNode.length, effect.lostPacks());
        boolean changes = true;
        while (changes) {
            changes = unreached(open, deadFan, lostPack);
            changes |= ends(open, deadFan, lostPack);
        }
        return effect.and(Effect.dead(numbers(deadFan)))
                .and(Effect.open(numbers(open)))
                .and(Effect.lost(numbers(lostPack)));
    }

    /**
     * The same without what is dead on the whole rig already: spare packs, fans that nothing feeds.
     * Nothing stays nothing.
     */
    public Effect taken(Effect effect) {
        Effect all = whole(effect);
        Effect before = whole(Effect.NONE);
        return effect.and(Effect.dead(without(all.deadFans(), before.deadFans())))
                .and(Effect.open(without(all.openChains(), before.openChains())))
                .and(Effect.lost(without(all.lostPacks(), before.lostPacks())));
    }

    private static int[] without(int[] all, int[] before) {
        return IntStream.of(all).filter(k -> Arrays.binarySearch(before, k) < 0).toArray();
    }

    private static boolean[] marked(int count, int[] numbers) {
        boolean[] marked = new boolean[count];
        for (int number : numbers) {
            marked[number] = true;
        }
        return marked;
    }

    private static int[] numbers(boolean[] marked) {
        return IntStream.range(0, marked.length).filter(k -> marked[k]).toArray();
    }

    /** Takes away fans without a pack and packs without a fan; whether there were any. */
    private boolean unreached(boolean[] open, boolean[] deadFan, boolean[] lostPack) {
        int[] part = parts(open);
        boolean[] fed = new boolean[nodes];
        boolean[] used = new boolean[nodes];
        for (int pack = 0; pack < packNode.length; pack++) {
            fed[part[packNode[pack]]] |= !lostPack[pack];
        }
        for (int fan = 0; fan < fanNode.length; fan++) {
            used[part[fanNode[fan]]] |= !deadFan[fan];
        }
        boolean any = false;
        for (int fan = 0; fan < fanNode.length; fan++) {
            if (!deadFan[fan] && !fed[part[fanNode[fan]]]) {
                deadFan[fan] = true;
                any = true;
            }
        }
        for (int pack = 0; pack < packNode.length; pack++) {
            if (!lostPack[pack] && !used[part[packNode[pack]]]) {
                lostPack[pack] = true;
                any = true;
            }
        }
        return any;
    }

    /** Takes away chains with an end at which nothing is; whether there were any. */
    private boolean ends(boolean[] open, boolean[] deadFan, boolean[] lostPack) {
        int[] at = new int[nodes];
        for (int pack = 0; pack < packNode.length; pack++) {
            at[packNode[pack]] += lostPack[pack] ? 0 : 2;
        }
        for (int fan = 0; fan < fanNode.length; fan++) {
            at[fanNode[fan]] += deadFan[fan] ? 0 : 2;
        }
        for (int chain = 0; chain < from.length; chain++) {
            if (!open[chain]) {
                at[from[chain]]++;
                at[to[chain]]++;
            }
        }
        boolean any = false;
        for (int chain = 0; chain < from.length; chain++) {
            boolean loop = from[chain] == to[chain];
            if (!open[chain] && (loop || at[from[chain]] < 2 || at[to[chain]] < 2)) {
                open[chain] = true;
                any = true;
            }
        }
        return any;
    }

    /** A node that stands for the connected part of each node. */
    private int[] parts(boolean[] open) {
        int[] part = new int[nodes];
        for (int node = 0; node < nodes; node++) {
            part[node] = node;
        }
        for (int chain = 0; chain < from.length; chain++) {
            if (!open[chain]) {
                part[root(part, to[chain])] = root(part, from[chain]);
            }
        }
        for (int node = 0; node < nodes; node++) {
            part[node] = root(part, node);
        }
        return part;
    }

    private static int root(int[] part, int node) {
        int at = node;
        while (part[at] != at) {
            part[at] = part[part[at]];
            at = part[at];
        }
        return at;
    }
}

package liftwright.plant.fault;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * What a loss does to a rig in numbers: fans that stop, chains that open, packs that give nothing,
 * fans that keep a duty whatever they are told, fans that turn the wrong way round, channels that
 * reach the wrong fan. Fans, packs and chains count as in the rig's lists. Equal effects are equal
 * objects, however they were put together.
 */
public final class Effect {

    /** Nothing is lost. */
    public static final Effect NONE = new Effect(new Made());

    private final int[] deadFans;
    private final int[] openChains;
    private final int[] lostPacks;
    private final int[] reversedFans;
    private final SortedMap<Integer, Double> stuckDuty;
    private final SortedMap<Integer, Double> mostDuty;
    private final List<int[]> exchanged;

    /** What is being put together. */
    private static final class Made {
        IntStream dead = IntStream.empty();
        IntStream open = IntStream.empty();
        IntStream lost = IntStream.empty();
        IntStream reversed = IntStream.empty();
        final SortedMap<Integer, Double> stuck = new TreeMap<>();
        final SortedMap<Integer, Double> most = new TreeMap<>();
        final List<int[]> exchanged = new ArrayList<>();
    }

    private Effect(Made made) {
        deadFans = made.dead.sorted().distinct().toArray();
        openChains = made.open.sorted().distinct().toArray();
        lostPacks = made.lost.sorted().distinct().toArray();
        stuckDuty = new TreeMap<>(made.stuck);
        mostDuty = new TreeMap<>(made.most);
        for (int fan : deadFans) {
            stuckDuty.remove(fan);
            mostDuty.remove(fan);
        }
        mostDuty.keySet().removeAll(stuckDuty.keySet());
        reversedFans = made.reversed.filter(fan -> !isDead(fan)).sorted().distinct().toArray();
        exchanged = new ArrayList<>();
        made.exchanged.stream().sorted(Arrays::compare).forEach(this::exchange);
    }

    /** The same exchange told twice is told once. */
    private void exchange(int[] pair) {
        if (exchanged.stream().noneMatch(known -> Arrays.equals(known, pair))) {
            exchanged.add(pair);
        }
    }

    /** Fans that stop and draw nothing. */
    public static Effect dead(int... fans) {
        Made made = new Made();
        made.dead = IntStream.of(fans);
        return new Effect(made);
    }

    /** Chains of the wiring that open. */
    public static Effect open(int... chains) {
        Made made = new Made();
        made.open = IntStream.of(chains);
        return new Effect(made);
    }

    /** Packs that neither give nor take. */
    public static Effect lost(int... packs) {
        Made made = new Made();
        made.lost = IntStream.of(packs);
        return new Effect(made);
    }

    /** Fans whose motor leads are swapped: they turn and blow the wrong way. */
    public static Effect reversed(int... fans) {
        Made made = new Made();
        made.reversed = IntStream.of(fans);
        return new Effect(made);
    }

    /**
     * A fan that stays at a duty, whatever it is told.
     *
     * @param duty 0 to 1
     */
    public static Effect stuck(int fan, double duty) {
        Made made = new Made();
        made.stuck.put(fan, share(duty));
        return new Effect(made);
    }

    /**
     * A fan that goes no higher than a duty.
     *
     * @param duty 0 to 1
     */
    public static Effect noMore(int fan, double duty) {
        Made made = new Made();
        made.most.put(fan, share(duty));
        return new Effect(made);
    }

    /** Two channels that reach each other's fan. */
    public static Effect exchanged(int one, int other) {
        if (one == other) {
            return NONE;
        }
        Made made = new Made();
        made.exchanged.add(new int[] {Math.min(one, other), Math.max(one, other)});
        return new Effect(made);
    }

    private static double share(double duty) {
        if (!(duty >= 0 && duty <= 1)) {
            throw new IllegalArgumentException("a duty lies between 0 and 1");
        }
        return duty;
    }

    /**
     * Both at once. A fan that is stuck at two duties keeps the greater; one that is limited twice
     * keeps to the less; a dead fan is neither stuck nor reversed.
     */
    public Effect and(Effect other) {
        Made made = new Made();
        made.dead = both(deadFans, other.deadFans);
        made.open = both(openChains, other.openChains);
        made.lost = both(lostPacks, other.lostPacks);
        made.reversed = both(reversedFans, other.reversedFans);
        made.stuck.putAll(stuckDuty);
        other.stuckDuty.forEach((fan, duty) -> made.stuck.merge(fan, duty, Math::max));
        made.most.putAll(mostDuty);
        other.mostDuty.forEach((fan, duty) -> made.most.merge(fan, duty, Math::min));
        made.exchanged.addAll(exchanged);
        made.exchanged.addAll(other.exchanged);
        return new Effect(made);
    }

    private static IntStream both(int[] some, int[] others) {
        return IntStream.concat(IntStream.of(some), IntStream.of(others));
    }

    /** Whether nothing is lost. */
    public boolean isNone() {
        return equals(NONE);
    }

    private boolean isDead(int fan) {
        return Arrays.binarySearch(deadFans, fan) >= 0;
    }

    /** Fans that stop, rising. */
    public int[] deadFans() {
        return deadFans.clone();
    }

    /** Chains that open, rising. */
    public int[] openChains() {
        return openChains.clone();
    }

    /** Packs that give nothing, rising. */
    public int[] lostPacks() {
        return lostPacks.clone();
    }

    /** Fans that turn the wrong way round, rising. */
    public int[] reversedFans() {
        return reversedFans.clone();
    }

    /** Duty at which a fan stays, 0 to 1. */
    public SortedMap<Integer, Double> stuckDuty() {
        return new TreeMap<>(stuckDuty);
    }

    /** Duty that a fan does not pass, 0 to 1. */
    public SortedMap<Integer, Double> mostDuty() {
        return new TreeMap<>(mostDuty);
    }

    /** Pairs of fans whose channels are exchanged, one pair after the other. */
    public List<int[]> exchangedChannels() {
        return exchanged.stream().map(int[]::clone).toList();
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Effect that
                && Arrays.equals(deadFans, that.deadFans)
                && Arrays.equals(openChains, that.openChains)
                && Arrays.equals(lostPacks, that.lostPacks)
                && Arrays.equals(reversedFans, that.reversedFans)
                && stuckDuty.equals(that.stuckDuty)
                && mostDuty.equals(that.mostDuty)
                && exchanged().equals(that.exchanged());
    }

    private List<List<Integer>> exchanged() {
        return exchanged.stream().map(pair -> List.of(pair[0], pair[1])).toList();
    }

    @Override
    public int hashCode() {
        int hash = Arrays.hashCode(deadFans);
        hash = 31 * hash + Arrays.hashCode(openChains);
        hash = 31 * hash + Arrays.hashCode(lostPacks);
        hash = 31 * hash + Arrays.hashCode(reversedFans);
        hash = 31 * hash + stuckDuty.hashCode();
        hash = 31 * hash + mostDuty.hashCode();
        return 31 * hash + exchanged().hashCode();
    }

    @Override
    public String toString() {
        return "dead "
                + Arrays.toString(deadFans)
                + ", open "
                + Arrays.toString(openChains)
                + ", lost "
                + Arrays.toString(lostPacks)
                + ", reversed "
                + Arrays.toString(reversedFans)
                + ", stuck "
                + stuckDuty
                + ", no more than "
                + mostDuty
                + ", exchanged "
                + exchanged();
    }
}

package liftwright.numerics;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;

/**
 * Least sets of elements, as an algebra: families in which no set contains another. The empty
 * family stands for "never", the family of the empty set for "without anything".
 *
 * <p>A cut set of a structure stops it when all its elements fail; it is minimal when no smaller
 * set within it does. They are found from the leaves up (MOCUS of Fussell and Vesely, 1972, from
 * memory): a structure that needs all of its parts is cut by the cut sets of each, one that needs
 * any of them by one of each together; what contains another is dropped. Without "not" in the
 * structure this is exact also where elements stand in several places. The number of sets may grow
 * exponentially; a largest size keeps it bounded and leaves out nothing smaller, since joining sets
 * never makes them smaller.
 */
public final class CutSets {

    private static final Comparator<BitSet> ORDER =
            Comparator.comparingInt(BitSet::cardinality).thenComparing(CutSets::lexical);

    private CutSets() {}

    /**
     * The minimal cut sets of a structure: smallest first, then by the numbers of their elements.
     * Empty where it cannot fail; the empty set alone where it never works.
     *
     * @param largest number of elements of the largest that are wanted, ≥ 0; all larger ones are
     *     left out, all smaller ones are there
     */
    public static List<BitSet> cuts(Monotone works, int largest) {
        return switch (works) {
            case Monotone.Element(int number) -> largest < 1 ? List.of() : List.of(one(number));
            case Monotone.All(var parts) -> either(each(parts, largest, true));
            case Monotone.Any(var parts) -> together(each(parts, largest, true), largest);
        };
    }

    /**
     * The minimal path sets of a structure, whose elements alone make it work; in the same order.
     * Empty where it never works; the empty set alone where it always does.
     *
     * @param largest as for cuts
     */
    public static List<BitSet> paths(Monotone works, int largest) {
        return switch (works) {
            case Monotone.Element(int number) -> largest < 1 ? List.of() : List.of(one(number));
            case Monotone.All(var parts) -> together(each(parts, largest, false), largest);
            case Monotone.Any(var parts) -> either(each(parts, largest, false));
        };
    }

    private static List<List<BitSet>> each(List<Monotone> parts, int largest, boolean cuts) {
        return parts.stream()
                .map(part -> cuts ? cuts(part, largest) : paths(part, largest))
                .toList();
    }

    /**
     * The minimal sets that meet each set of a family (its transversals): the cut sets of what
     * works while one of these sets is whole.
     *
     * @param largest as for cuts
     */
    public static List<BitSet> transversals(Collection<BitSet> family, int largest) {
        List<List<BitSet>> single =
                family.stream().map(set -> set.stream().mapToObj(CutSets::one).toList()).toList();
        return together(single, largest);
    }

    /** The minimal sets of several families. */
    public static List<BitSet> either(List<List<BitSet>> families) {
        return minimal(families.stream().flatMap(List::stream).toList());
    }

    /**
     * The minimal unions of one set of each family.
     *
     * @param largest as for cuts
     */
    public static List<BitSet> together(List<List<BitSet>> families, int largest) {
        List<BitSet> joined = List.of(new BitSet());
        for (List<BitSet> family : families) {
            List<BitSet> longer = new ArrayList<>();
            for (BitSet left : joined) {
                for (BitSet right : family) {
                    BitSet both = (BitSet) left.clone();
                    both.or(right);
                    if (both.cardinality() <= largest) {
                        longer.add(both);
                    }
                }
            }
            joined = minimal(longer);
        }
        return joined;
    }

    /** The sets that contain no other; smallest first, then by the numbers of their elements. */
    public static List<BitSet> minimal(Collection<BitSet> sets) {
        List<BitSet> sorted = sets.stream().distinct().sorted(ORDER).toList();
        List<BitSet> kept = new ArrayList<>();
        for (BitSet set : sorted) {
            if (kept.stream().noneMatch(smaller -> within(smaller, set))) {
                kept.add(set);
            }
        }
        return List.copyOf(kept);
    }

    private static boolean within(BitSet inner, BitSet outer) {
        for (int at = inner.nextSetBit(0); at >= 0; at = inner.nextSetBit(at + 1)) {
            if (!outer.get(at)) {
                return false;
            }
        }
        return true;
    }

    private static BitSet one(int number) {
        BitSet set = new BitSet();
        set.set(number);
        return set;
    }

    /** Which of two sets of one size has the first smaller number. */
    private static int lexical(BitSet one, BitSet other) {
        int at = one.nextSetBit(0);
        int beside = other.nextSetBit(0);
        while (at >= 0 && beside >= 0 && at == beside) {
            at = one.nextSetBit(at + 1);
            beside = other.nextSetBit(beside + 1);
        }
        return Integer.compare(at, beside);
    }
}

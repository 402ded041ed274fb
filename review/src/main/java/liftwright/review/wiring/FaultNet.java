package liftwright.review.wiring;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import liftwright.plant.FaultSupply;
import liftwright.rig.Element;
import liftwright.rig.Rig;
import liftwright.rig.Wiring;

/**
 * Currents that flow into a fault somewhere within a chain, packs full, loads left out, with any
 * fuses already open. A fault between two elements splits its chain in two; each part may be fed.
 */
final class FaultNet {

    /** Far below any real joint, Ω. */
    private static final double NEXT_TO_NOTHING_OHM = 1e-9;

    /** So that what hangs in the air has a voltage, S: far below any real path. */
    private static final double LEAK_S = 1e-12;

    private final List<Wiring.Chain> chains;
    private final double[][] elementOhm;
    private final int[] from;
    private final int[] to;
    private final int[] packNode;
    private final FaultSupply supply;
    private final int nodes;

    FaultNet(Rig rig, List<Wiring.Chain> chains, FaultSupply supply) {
        this.chains = List.copyOf(chains);
        this.supply = supply;
        Map<String, Integer> number = new HashMap<>();
        packNode =
                rig.packs().stream().mapToInt(pack -> number(number, pack.id().text())).toArray();
        from = chains.stream().mapToInt(chain -> number(number, chain.from())).toArray();
        to = chains.stream().mapToInt(chain -> number(number, chain.to())).toArray();
        nodes = number.size();
        elementOhm =
                chains.stream()
                        .map(
                                chain ->
                                        chain.elements().stream()
                                                .mapToDouble(
                                                        element ->
                                                                ElementOhm.of(
                                                                        element, supply.wireK()))
                                                .toArray())
                        .toArray(double[][]::new);
    }

    private static int number(Map<String, Integer> numbers, String node) {
        return numbers.computeIfAbsent(node, _ -> numbers.size());
    }

    /**
     * A fault.
     *
     * @param chain it lies in
     * @param place number of elements of the chain between its first node and the fault
     */
    record Spot(int chain, int place) {}

    /**
     * Currents of one solution.
     *
     * @param chainA of every chain, from its first node to its second, A; of the fault's own chain
     *     not
     * @param nearA from the first node of the fault's chain into the fault, A
     * @param farA from its second node into the fault, A
     * @param volt at the fault, V
     */
    @SuppressWarnings("ArrayRecordComponent") // read, never compared
    record Flow(double[] chainA, double nearA, double farA, double volt) {

        /** Through an element of a chain, A, by its size. */
        double through(Spot fault, int chain, int place) {
            if (chain != fault.chain) {
                return Math.abs(chainA[chain]);
            }
            return Math.abs(place < fault.place ? nearA : farA);
        }
    }

    /** Every fuse with its place. */
    List<Place<Element.Fuse>> fuses() {
        return places(Element.Fuse.class);
    }

    /** Every run with its place. */
    List<Place<Element.Run>> runs() {
        return places(Element.Run.class);
    }

    /** An element where it stands. */
    record Place<E extends Element>(int chain, int place, E element) {}

    private <E extends Element> List<Place<E>> places(Class<E> kind) {
        List<Place<E>> found = new ArrayList<>();
        for (int chain = 0; chain < chains.size(); chain++) {
            List<Element> elements = chains.get(chain).elements();
            for (int place = 0; place < elements.size(); place++) {
                if (kind.isInstance(elements.get(place))) {
                    found.add(new Place<>(chain, place, kind.cast(elements.get(place))));
                }
            }
        }
        return found;
    }

    /**
     * @param faultOhm resistance of the fault itself, ≥ 0
     * @param open fuses that no longer conduct
     */
    Flow solve(Spot fault, double faultOhm, Set<Place<Element.Fuse>> open) {
        int size = nodes + 1;
        double[][] a = new double[size][size + 1];
        for (int node = 0; node < size; node++) {
            a[node][node] = LEAK_S;
        }
        for (int pack = 0; pack < packNode.length; pack++) {
            double siemens = 1 / Math.max(supply.packOhm()[pack], NEXT_TO_NOTHING_OHM);
            a[packNode[pack]][packNode[pack]] += siemens;
            a[packNode[pack]][size] += siemens * supply.fullV()[pack];
        }
        a[nodes][nodes] += 1 / Math.max(faultOhm, NEXT_TO_NOTHING_OHM);
        double[] siemens = new double[chains.size()];
        double near = 0;
        double far = 0;
        for (int chain = 0; chain < chains.size(); chain++) {
            int count = chains.get(chain).elements().size();
            if (chain == fault.chain) {
                near = between(chain, 0, fault.place, open);
                far = between(chain, fault.place, count, open);
                join(a, from[chain], nodes, near);
                join(a, to[chain], nodes, far);
            } else {
                siemens[chain] = between(chain, 0, count, open);
                join(a, from[chain], to[chain], siemens[chain]);
            }
        }
        double[] volt = solved(a);
        double[] ampere = new double[chains.size()];
        for (int chain = 0; chain < chains.size(); chain++) {
            ampere[chain] = siemens[chain] * (volt[from[chain]] - volt[to[chain]]);
        }
        return new Flow(
                ampere,
                near * (volt[from[fault.chain]] - volt[nodes]),
                far * (volt[to[fault.chain]] - volt[nodes]),
                volt[nodes]);
    }

    /** Conductance of the elements of a chain between two places; 0 where a fuse is open. */
    private double between(int chain, int first, int end, Set<Place<Element.Fuse>> open) {
        for (Place<Element.Fuse> fuse : open) {
            if (fuse.chain == chain && fuse.place >= first && fuse.place < end) {
                return 0;
            }
        }
        double ohm = 0;
        for (int place = first; place < end; place++) {
            ohm += elementOhm[chain][place];
        }
        return 1 / Math.max(ohm, NEXT_TO_NOTHING_OHM);
    }

    private static void join(double[][] a, int one, int other, double siemens) {
        if (one == other) {
            return;
        }
        a[one][one] += siemens;
        a[other][other] += siemens;
        a[one][other] -= siemens;
        a[other][one] -= siemens;
    }

    /** Elimination; the matrix is symmetric and its diagonal rules, so nothing is exchanged. */
    private static double[] solved(double[][] a) {
        int size = a.length;
        for (int pivot = 0; pivot < size; pivot++) {
            for (int row = pivot + 1; row < size; row++) {
                double share = a[row][pivot] / a[pivot][pivot];
                if (share != 0) {
                    for (int column = pivot; column <= size; column++) {
                        a[row][column] -= share * a[pivot][column];
                    }
                }
            }
        }
        double[] volt = new double[size];
        for (int row = size - 1; row >= 0; row--) {
            double sum = a[row][size];
            for (int column = row + 1; column < size; column++) {
                sum -= a[row][column] * volt[column];
            }
            volt[row] = sum / a[row][row];
        }
        return volt;
    }
}

package liftwright.plant.heat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import liftwright.rig.table.StartState;
import liftwright.rig.table.StartState.Place;

/** How warm a rig is when a run starts, from a {@link StartState} and to one. */
public final class HeatStart {

    private static final OptionalDouble NONE = OptionalDouble.empty();

    private final HeatBank bank;
    private final HeatNumbers n;

    public HeatStart(HeatBank bank, HeatNumbers n) {
        this.bank = bank;
        this.n = n;
    }

    /**
     * Everything as warm as the air, packs as declared; fuses cold, joints as declared.
     *
     * @param packK temperature of each pack, K
     */
    public void rest(double[] packK, HeatState to) {
        Arrays.fill(to.kelvin, n.airK);
        for (int pack = 0; pack < packK.length; pack++) {
            body(to, bank.meanCell(pack), packK[pack]);
            body(to, bank.warmestCell(pack), packK[pack]);
        }
        Arrays.fill(to.fuseRoom, 1);
        Arrays.fill(to.grown, 1);
    }

    private void body(HeatState to, int body, double kelvin) {
        to.kelvin[n.inner(body)] = kelvin;
        to.kelvin[n.outer(body)] = kelvin;
    }

    /**
     * Takes over the temperatures and fuses of a row: of one place of a part, or of the whole part.
     *
     * @return whether the rig has such a part with such a place
     */
    public boolean take(StartState.Row row, HeatState to) {
        boolean found = false;
        for (int part = 0; part < bank.parts().size(); part++) {
            if (!bank.parts().get(part).id().text().equals(row.part())) {
                continue;
            }
            for (Body body : bodies(part)) {
                if (row.place() == Place.WHOLE || row.place() == body.place) {
                    found = true;
                    row.temperatureK().ifPresent(kelvin -> body.warm(to, kelvin));
                }
            }
            int fuse = bank.index().fuse[part];
            if (fuse >= 0) {
                row.fuse().ifPresent(share -> to.fuseRoom[fuse] = 1 - share);
            }
        }
        return found;
    }

    /**
     * Nodes that one row of a state stands for.
     *
     * @param told those whose mean a row tells
     * @param taken those that take it over
     */
    @SuppressWarnings("ArrayRecordComponent") // read by this class alone
    private record Body(Place place, int[] told, int[] taken) {

        void warm(HeatState to, double kelvin) {
            for (int at : taken) {
                to.kelvin[at] = kelvin;
            }
        }

        /** Mean temperature by heat capacity, K. */
        double meanK(HeatState of, HeatNumbers n) {
            double heat = 0;
            double capacity = 0;
            for (int at : told) {
                heat += n.capacityJpK[at] * of.kelvin[at];
                capacity += n.capacityJpK[at];
            }
            return heat / capacity;
        }
    }

    private static Body body(Place place, int... at) {
        return new Body(place, at, at);
    }

    /** What is told of a part; of a pack the cells that warmed most, so that none is too cool. */
    private List<Body> bodies(int part) {
        HeatPart of = bank.parts().get(part);
        int own = of.owner();
        int[] nodes = bank.index().nodes[part];
        return switch (of.kind()) {
            case WIRE -> List.of(body(Place.COPPER, nodes), body(Place.INSULATION, shells(nodes)));
            case JOINT, FUSE, POLE -> List.of(body(Place.WHOLE, nodes));
            case SWITCHES -> List.of(body(Place.JUNCTION, n.inner(bank.controller(own))));
            case CONTROLLER -> List.of(body(Place.SINK, n.outer(bank.controller(own))));
            case WINDING -> List.of(body(Place.WINDING, n.inner(bank.motor(own))));
            case MAGNETS -> List.of(body(Place.CASE, n.outer(bank.motor(own))));
            case CELLS -> {
                int mean = bank.meanCell(own);
                int most = bank.warmestCell(own);
                yield List.of(
                        new Body(
                                Place.CORE,
                                new int[] {n.inner(most)},
                                new int[] {n.inner(mean), n.inner(most)}),
                        new Body(
                                Place.SURFACE,
                                new int[] {n.outer(most)},
                                new int[] {n.outer(mean), n.outer(most)}));
            }
        };
    }

    private int[] shells(int[] nodes) {
        return IntStream.rangeClosed(1, WireKinds.SHELLS)
                .flatMap(shell -> Arrays.stream(nodes).map(node -> shell * n.nodes + node))
                .toArray();
    }

    /**
     * A state in rows: each place of each part, at its mean.
     *
     * @param charge share left in each pack
     * @param openedS when a part opened as a fuse; infinite if it did not
     */
    public List<StartState.Row> rows(HeatState at, double[] charge, double[] openedS) {
        List<StartState.Row> rows = new ArrayList<>();
        for (int part = 0; part < bank.parts().size(); part++) {
            HeatPart of = bank.parts().get(part);
            int fuse = bank.index().fuse[part];
            boolean open = openedS[part] < Double.POSITIVE_INFINITY;
            for (Body body : bodies(part)) {
                rows.add(
                        new StartState.Row(
                                0,
                                of.id().text(),
                                body.place,
                                OptionalDouble.of(body.meanK(at, n)),
                                body.place == Place.CORE
                                        ? OptionalDouble.of(share(charge[of.owner()]))
                                        : NONE,
                                fuse < 0
                                        ? NONE
                                        : OptionalDouble.of(
                                                open ? 1 : share(1 - at.fuseRoom[fuse]))));
            }
        }
        return rows;
    }

    /** A step can end a hair beyond empty or open. */
    private static double share(double value) {
        return Math.clamp(value, 0, 1);
    }
}

package liftwright.plant.heat;

import liftwright.rig.table.StartState;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;

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
        Arrays.fill(to.fuse, 0);
        Arrays.fill(to.grown, 1);
    }

    private void body(HeatState to, int body, double kelvin) {
        to.kelvin[n.inner(body)] = kelvin;
        to.kelvin[n.outer(body)] = kelvin;
    }

    /**
     * Takes over the temperatures and fuses of a row: of one place of a part, or of the whole part
     * where the place is blank.
     *
     * @return whether the rig has such a part and place
     */
    public boolean take(StartState.Row row, HeatState to) {
        boolean found = false;
        for (int part = 0; part < bank.parts().size(); part++) {
            HeatPart of = bank.parts().get(part);
            if (!of.id().text().equals(row.part())) {
                continue;
            }
            if (row.place().isBlank()) {
                found = true;
                row.temperatureK().ifPresent(kelvin -> whole(of, to, kelvin));
            } else {
                int at = place(of, row.place());
                if (at >= 0) {
                    found = true;
                    row.temperatureK().ifPresent(kelvin -> to.kelvin[at] = kelvin);
                }
            }
            int fuse = bank.index().fuse[part];
            if (fuse >= 0) {
                row.fuse().ifPresent(share -> to.fuse[fuse] = share);
            }
        }
        return found;
    }

    private void whole(HeatPart part, HeatState to, double kelvin) {
        for (Place place : placesOf(part)) {
            to.kelvin[place.at] = kelvin;
        }
    }

    private int place(HeatPart part, String name) {
        for (Place place : placesOf(part)) {
            if (place.name.equals(name)) {
                return place.at;
            }
        }
        return -1;
    }

    private record Place(String name, int at) {}

    /** All places of a part; the same names for every part of a kind. */
    private List<Place> placesOf(HeatPart part) {
        int own = part.owner();
        return switch (part.kind()) {
            case WIRE -> cells(part);
            case JOINT, FUSE, POLE -> List.of(new Place("", nodes(part)[0]));
            case SWITCHES -> List.of(new Place("junction", n.inner(bank.controller(own))));
            case CONTROLLER -> List.of(new Place("sink", n.outer(bank.controller(own))));
            case WINDING -> List.of(new Place("winding", n.inner(bank.motor(own))));
            case MAGNETS -> List.of(new Place("case", n.outer(bank.motor(own))));
            case CELLS ->
                    List.of(
                            new Place("core", n.inner(bank.meanCell(own))),
                            new Place("surface", n.outer(bank.meanCell(own))),
                            new Place("warmest core", n.inner(bank.warmestCell(own))),
                            new Place("warmest surface", n.outer(bank.warmestCell(own))));
        };
    }

    private int[] nodes(HeatPart part) {
        return bank.index().nodes[bank.parts().indexOf(part)];
    }

    private List<Place> cells(HeatPart part) {
        List<Place> places = new ArrayList<>();
        int[] nodes = nodes(part);
        for (int cell = 0; cell < nodes.length; cell++) {
            String name = "cell " + (cell + 1);
            places.add(new Place(name, nodes[cell]));
            for (int shell = 1; shell <= WireKinds.SHELLS; shell++) {
                places.add(new Place(name + " shell " + shell, shell * n.nodes + nodes[cell]));
            }
        }
        return places;
    }

    /**
     * A state in rows: each place of each part.
     *
     * @param charge share left in each pack
     */
    public List<StartState.Row> rows(HeatState at, double[] charge) {
        List<StartState.Row> rows = new ArrayList<>();
        for (int part = 0; part < bank.parts().size(); part++) {
            HeatPart of = bank.parts().get(part);
            int fuse = bank.index().fuse[part];
            OptionalDouble left =
                    of.kind() == HeatPart.Kind.CELLS ? OptionalDouble.of(charge[of.owner()]) : NONE;
            OptionalDouble share = fuse < 0 ? NONE : OptionalDouble.of(Math.min(1, at.fuse[fuse]));
            List<Place> places = placesOf(of);
            for (int k = 0; k < places.size(); k++) {
                rows.add(
                        new StartState.Row(
                                rows.size() + 2,
                                of.id().text(),
                                places.get(k).name,
                                OptionalDouble.of(at.kelvin[places.get(k).at]),
                                k == 0 ? left : NONE,
                                k == 0 ? share : NONE));
            }
        }
        return rows;
    }
}

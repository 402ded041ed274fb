package liftwright.plant;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import liftwright.plant.body.Beams;
import liftwright.plant.body.MassLedger;
import liftwright.plant.body.Pose;
import liftwright.plant.body.ThrustLines;
import liftwright.plant.heat.HeatBank;
import liftwright.plant.hold.HoldRows;
import liftwright.plant.parameters.ParameterRows;
import liftwright.plant.parameters.ParameterTable;
import liftwright.plant.supply.CellDraw;
import liftwright.plant.supply.Network;
import liftwright.plant.supply.PackBank;
import liftwright.plant.supply.Wires;
import liftwright.plant.thrust.FanBank;
import liftwright.plant.thrust.Swirls;
import liftwright.rig.Element;
import liftwright.rig.Rig;
import liftwright.rig.Wiring;

/**
 * Joins supply, thrust and body over one parameter table. The order in which they declare their
 * parameters is the order of the vector; draws do not depend on it.
 */
final class Assembler {

    final Rig rig;
    final HeldCorrections corrections;
    final ParameterTable table;
    final SiteAir air;
    final SiteGround ground;
    final FanBank fans;
    final PackBank packs;
    final Wires wires;
    final Network network;
    final Pose pose;
    final ThrustLines lines;
    final Beams beams;
    final MassLedger ledger;
    final Swirls swirls;

    /** What warms; empty for a plant without heat. */
    final Optional<HeatBank> heat;

    /** What holds the rig; empty for a plant that is not asked for it. */
    final Optional<HoldRows> hold;

    /** What the cells are where nothing is drawn of them. */
    final CellDraw cells;

    /**
     * The same structure over other numbers; nothing is assembled twice.
     *
     * @param table of the same rows
     * @param cells what its cells are
     */
    Assembler(Assembler like, ParameterTable table, CellDraw cells) {
        this.table = table;
        this.cells = cells;
        rig = like.rig;
        corrections = like.corrections;
        air = like.air;
        ground = like.ground;
        fans = like.fans;
        packs = like.packs;
        wires = like.wires;
        network = like.network;
        pose = like.pose;
        lines = like.lines;
        beams = like.beams;
        ledger = like.ledger;
        swirls = like.swirls;
        heat = like.heat;
        hold = like.hold;
    }

    /**
     * @param opened names of the contactors that stand open
     * @param heated whether the parts warm
     */
    Assembler(Rig rig, Set<String> opened, boolean heated) {
        this(rig, opened, heated, false);
    }

    /**
     * @param opened names of the contactors that stand open
     * @param heated whether the parts warm
     * @param held whether what holds the rig is asked
     */
    Assembler(Rig rig, Set<String> opened, boolean heated, boolean held) {
        this.rig = rig;
        corrections = HeldCorrections.of(rig);
        ParameterRows rows = new ParameterRows(corrections.held());
        air = SiteAir.declare(rig.site(), rows);
        fans = FanBank.declare(rig, rows);
        packs = PackBank.declare(rig, rows);
        wires = Wires.declare(rig.wiring(), rows);
        pose = Pose.declare(rig, rows);
        lines = ThrustLines.declare(rig, pose, rows);
        beams = Beams.declare(rig, pose, rows);
        ledger = MassLedger.declare(rig, pose, rows);
        swirls = Swirls.declare(rig, rows);
        ground = SiteGround.declare(rig.site().ground(), rows);
        heat = heated ? Optional.of(HeatBank.declare(rig, rows)) : Optional.empty();
        hold = held ? Optional.of(HoldRows.declare(rig, rows)) : Optional.empty();
        table = rows.table();
        cells = new CellDraw.Expected();
        network = Network.of(packNodes(rig), fanNodes(rig), wires, open(rig, opened));
    }

    static List<String> packNodes(Rig rig) {
        return rig.packs().stream().map(pack -> pack.id().text()).toList();
    }

    static List<String> fanNodes(Rig rig) {
        return rig.fans().stream().map(fan -> fan.id().text()).toList();
    }

    private static boolean[] open(Rig rig, Set<String> opened) {
        List<Wiring.Chain> chains = rig.wiring().chains();
        boolean[] open = new boolean[chains.size()];
        for (int chain = 0; chain < open.length; chain++) {
            open[chain] =
                    chains.get(chain).elements().stream()
                            .anyMatch(
                                    element ->
                                            element instanceof Element.Pole pole
                                                    && opened.contains(pole.contactor().name()));
        }
        return open;
    }
}

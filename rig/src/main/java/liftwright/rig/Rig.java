package liftwright.rig;

import java.util.List;
import java.util.Optional;
import liftwright.rig.table.Tables;

/**
 * A rig as declared, with groups, twins and feeds written out.
 *
 * @param declaration the declaration it was made from; edits go through it
 * @param tables the tables that the declaration names
 * @param defaults every value that a default stands in for
 */
public record Rig(
        String name,
        int revision,
        String note,
        Site site,
        Demands demands,
        Limits limits,
        Optional<Wearer> wearer,
        List<Mount> mounts,
        List<FanType> fanTypes,
        List<Fan> fans,
        List<CellType> cellTypes,
        List<Pack> packs,
        Wiring wiring,
        List<OtherPart> otherParts,
        Control control,
        Declaration declaration,
        Tables tables,
        List<DefaultUsed> defaults) {

    public Rig {
        mounts = List.copyOf(mounts);
        fanTypes = List.copyOf(fanTypes);
        fans = List.copyOf(fans);
        cellTypes = List.copyOf(cellTypes);
        packs = List.copyOf(packs);
        otherParts = List.copyOf(otherParts);
        defaults = List.copyOf(defaults);
    }
}

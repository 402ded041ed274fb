package liftwright.rig;

import java.util.List;
import java.util.Optional;
import liftwright.rig.correction.CorrectionsRead;
import liftwright.rig.table.Tables;

/**
 * A rig as declared, with groups, twins and feeds written out.
 *
 * @param crew people near it who do not wear it
 * @param restraint what holds it during tests
 * @param rates how often parts fail
 * @param riskMatrix which risk a severity with a likelihood makes
 * @param declaration the declaration it was made from; edits go through it
 * @param tables the tables that the declaration names
 * @param defaults every value that a default stands in for
 * @param corrections what tests found in place of what is declared
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
        List<CrewMember> crew,
        Restraint restraint,
        Rates rates,
        RiskMatrix riskMatrix,
        Declaration declaration,
        Tables tables,
        List<DefaultUsed> defaults,
        CorrectionsRead corrections) {

    public Rig {
        mounts = List.copyOf(mounts);
        fanTypes = List.copyOf(fanTypes);
        fans = List.copyOf(fans);
        cellTypes = List.copyOf(cellTypes);
        packs = List.copyOf(packs);
        otherParts = List.copyOf(otherParts);
        crew = List.copyOf(crew);
        defaults = List.copyOf(defaults);
    }

    /** A rig of which no test found anything. */
    public Rig(
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
            List<CrewMember> crew,
            Restraint restraint,
            Rates rates,
            RiskMatrix riskMatrix,
            Declaration declaration,
            Tables tables,
            List<DefaultUsed> defaults) {
        this(
                name,
                revision,
                note,
                site,
                demands,
                limits,
                wearer,
                mounts,
                fanTypes,
                fans,
                cellTypes,
                packs,
                wiring,
                otherParts,
                control,
                crew,
                restraint,
                rates,
                riskMatrix,
                declaration,
                tables,
                defaults,
                CorrectionsRead.NONE);
    }

    /** A rig with nobody around it, that nothing holds, and of whose parts no rates are known. */
    public Rig(
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
        this(
                name,
                revision,
                note,
                site,
                demands,
                limits,
                wearer,
                mounts,
                fanTypes,
                fans,
                cellTypes,
                packs,
                wiring,
                otherParts,
                control,
                List.of(),
                Restraint.NONE,
                Rates.NONE,
                RiskMatrix.USUAL,
                declaration,
                tables,
                defaults);
    }

    /** The same at another site. */
    public Rig at(Site other) {
        return with(other, fans, packs, corrections);
    }

    /** The same with other fans. */
    public Rig with(List<Fan> others) {
        return with(site, others, packs, corrections);
    }

    /** The same with other packs. */
    public Rig fedBy(List<Pack> others) {
        return with(site, fans, others, corrections);
    }

    /** The same with what tests found in place of what is declared. */
    public Rig with(CorrectionsRead found) {
        return with(site, fans, packs, found);
    }

    /** The same, where what tests found is left out of account. */
    public Rig asDeclared() {
        return corrections.isEmpty() ? this : with(CorrectionsRead.NONE);
    }

    private Rig with(
            Site otherSite, List<Fan> otherFans, List<Pack> otherPacks, CorrectionsRead found) {
        return new Rig(
                name,
                revision,
                note,
                otherSite,
                demands,
                limits,
                wearer,
                mounts,
                fanTypes,
                otherFans,
                cellTypes,
                otherPacks,
                wiring,
                otherParts,
                control,
                crew,
                restraint,
                rates,
                riskMatrix,
                declaration,
                tables,
                defaults,
                found);
    }

    /**
     * Whether the file says a value that has a default.
     *
     * @param at where it would stand, as in {@code control/link loss}
     */
    public boolean isDeclared(RigPath at) {
        return defaults.stream().noneMatch(used -> used.at().equals(at));
    }
}

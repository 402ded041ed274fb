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

    /**
     * A rig with nobody around it, that nothing holds, of whose parts no rates are known and of
     * which no test found anything.
     */
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
                defaults,
                CorrectionsRead.NONE);
    }

    /** The same at another site. */
    public Rig at(Site other) {
        return with(other, limits, fans, packs, wiring, control, corrections);
    }

    /** The same within other limits. */
    public Rig within(Limits others) {
        return with(site, others, fans, packs, wiring, control, corrections);
    }

    /** The same with other fans. */
    public Rig with(List<Fan> others) {
        return with(site, limits, others, packs, wiring, control, corrections);
    }

    /** The same with other packs. */
    public Rig fedBy(List<Pack> others) {
        return with(site, limits, fans, others, wiring, control, corrections);
    }

    /** The same with other wires. */
    public Rig wired(Wiring other) {
        return with(site, limits, fans, packs, other, control, corrections);
    }

    /** The same under another control. */
    public Rig under(Control other) {
        return with(site, limits, fans, packs, wiring, other, corrections);
    }

    /** The same with what tests found in place of what is declared. */
    public Rig with(CorrectionsRead found) {
        return with(site, limits, fans, packs, wiring, control, found);
    }

    /** The same, where what tests found is left out of account. */
    public Rig asDeclared() {
        return corrections.isEmpty() ? this : with(CorrectionsRead.NONE);
    }

    private Rig with(
            Site otherSite,
            Limits otherLimits,
            List<Fan> otherFans,
            List<Pack> otherPacks,
            Wiring otherWiring,
            Control otherControl,
            CorrectionsRead found) {
        return new Rig(
                name,
                revision,
                note,
                otherSite,
                demands,
                otherLimits,
                wearer,
                mounts,
                fanTypes,
                otherFans,
                cellTypes,
                otherPacks,
                otherWiring,
                otherParts,
                otherControl,
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

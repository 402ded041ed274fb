package liftwright.rig.shape.bind;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import liftwright.rig.Control;
import liftwright.rig.CrewMember;
import liftwright.rig.Declaration;
import liftwright.rig.Demands;
import liftwright.rig.Kill;
import liftwright.rig.Limits;
import liftwright.rig.OtherPart;
import liftwright.rig.Rates;
import liftwright.rig.Restraint;
import liftwright.rig.Rig;
import liftwright.rig.RiskMatrix;
import liftwright.rig.Site;
import liftwright.rig.Wearer;
import liftwright.rig.Wiring;
import liftwright.rig.correction.CorrectionsRead;
import liftwright.rig.shape.kind.Fields;
import liftwright.rig.shape.kind.Problems;
import liftwright.rig.shape.words.FanKeys;
import liftwright.rig.shape.words.PackKeys;
import liftwright.rig.shape.words.RigKeys;

/** Binds all sections in the order in which they need each other. */
public final class WholeRig {

    private WholeRig() {}

    /**
     * The rig that a file describes.
     *
     * @param file what the file states
     * @param declaration the same as a tree, which the rig carries
     * @param shelf gives the tables that the file names
     * @param problems takes what is wrong between the sections
     * @return empty when anything is wrong with the file, here or before
     */
    public static Optional<Rig> bind(
            Fields file, Declaration declaration, Shelf shelf, Problems problems) {
        var ledger = new Ledger(problems);
        var people = new PeopleBinder(ledger);
        String name = ledger.value(file, RigKeys.RIG);
        int revision = ledger.value(file, RigKeys.REVISION);
        Optional<Fields> wearerFields = file.get(RigKeys.WEARER);
        boolean worn = file.has(RigKeys.WEARER);
        Site site = people.site(Ledger.section(file, RigKeys.SITE));
        Demands demands = people.demands(Ledger.section(file, RigKeys.DEMANDS), worn);
        Limits limits = people.limits(Ledger.section(file, RigKeys.LIMITS));
        Optional<Wearer> wearer = people.wearer(wearerFields);

        var mounts = new MountsBinder(ledger, worn);
        mounts.bind(file.get(RigKeys.MOUNTS).orElse(Map.of()));
        var types =
                new FanTypesBinder(ledger, shelf)
                        .bind(file.get(RigKeys.FAN_TYPES).orElse(Map.of()));
        var cells = new CellsBinder(ledger, shelf).bind(file.get(RigKeys.CELLS).orElse(Map.of()));

        var parts = new Parts(ledger);
        Serials serials = serials(file, ledger);
        var fanGroups = file.get(RigKeys.FANS).orElse(List.of());
        new FansBinder(ledger, types, mounts, parts, serials).bind(fanGroups);
        var packGroups = file.get(RigKeys.PACKS).orElse(List.of());
        new PacksBinder(ledger, cells, mounts, parts, serials).bind(packGroups);
        List<OtherPart> others =
                new OtherPartsBinder(ledger, mounts, parts)
                        .bind(file.get(RigKeys.OTHER_PARTS).orElse(List.of()));
        serials.reportUnused(parts);
        var risks = new RisksBinder(ledger);
        List<CrewMember> crew = risks.crew(file);
        Wiring wiring =
                new WiringBinder(ledger, parts, people(crew, worn))
                        .bind(Ledger.section(file, RigKeys.WIRING));
        Control control =
                new ControlBinder(ledger, parts).bind(Ledger.section(file, RigKeys.CONTROL));
        Restraint restraint =
                new RestraintBinder(ledger, parts, worn)
                        .bind(Ledger.section(file, RigKeys.RESTRAINT));
        Rates rates = risks.rates(file);
        RiskMatrix matrix = risks.matrix(file);
        if (problems.hasErrors()) {
            return Optional.empty();
        }
        return Optional.of(
                new Rig(
                        name,
                        revision,
                        file.get(RigKeys.NOTE).orElse(""),
                        site,
                        demands,
                        limits,
                        wearer,
                        List.copyOf(mounts.all().values()),
                        List.copyOf(types.values()),
                        parts.fans(),
                        List.copyOf(cells.values()),
                        parts.packs(),
                        wiring,
                        others,
                        control,
                        crew,
                        restraint,
                        rates,
                        matrix,
                        declaration,
                        shelf.tables(),
                        ledger.defaults(),
                        CorrectionsRead.NONE));
    }

    /** Who may hold a kill. */
    private static Set<String> people(List<CrewMember> crew, boolean worn) {
        var names = new HashSet<String>();
        crew.forEach(member -> names.add(member.name()));
        if (worn) {
            names.add(Kill.WEARER);
        }
        return names;
    }

    private static Serials serials(Fields file, Ledger ledger) {
        var serials = new Serials(ledger);
        file.get(RigKeys.SERIALS).ifPresent(serials::add);
        for (var group : file.get(RigKeys.FANS).orElse(List.of())) {
            group.value()
                    .stated(FanKeys.SERIALS)
                    .ifPresent(s -> serials.add(ledger.value(group.value(), FanKeys.ID), s));
        }
        for (var group : file.get(RigKeys.PACKS).orElse(List.of())) {
            group.value()
                    .stated(PackKeys.SERIALS)
                    .ifPresent(s -> serials.add(ledger.value(group.value(), PackKeys.ID), s));
        }
        return serials;
    }
}

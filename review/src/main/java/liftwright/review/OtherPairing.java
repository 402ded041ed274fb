package liftwright.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import liftwright.answer.Section;
import liftwright.answer.Value;
import liftwright.plant.Plant;
import liftwright.plant.fault.Fault;
import liftwright.review.failures.FaultFate;
import liftwright.review.failures.FaultGroup;
import liftwright.rig.Change;
import liftwright.rig.Rig;

/** What the loss of each pack does as wired, and with the fans fed in other sets. */
final class OtherPairing {

    private OtherPairing() {}

    /** Empty where no better pairing is known. */
    static Optional<Section> of(Plant plant, FaultPanel panel) {
        Rig rig = plant.rig();
        List<Change> changes = PairingSearch.better(rig);
        Optional<Rig> revised = changes.isEmpty() ? Optional.empty() : Revised.with(rig, changes);
        if (revised.isEmpty()) {
            return Optional.empty();
        }
        Plant other = Plant.assemble(revised.get());
        FaultPanel otherPanel = new FaultPanel(other);
        FaultPanel.Worker before = panel.worker();
        FaultPanel.Worker after = otherPanel.worker();
        double[] p = plant.parameters().nominal();
        double[] q = other.parameters().nominal();
        List<List<Value>> rows = new ArrayList<>();
        for (FaultGroup group : panel.groups()) {
            Optional<FaultGroup> same = lost(otherPanel, group.first().part().text());
            if (group.first().kind() == Fault.Kind.PACK && same.isPresent()) {
                FaultFate now = before.found(p, group).fate();
                FaultFate then = after.found(q, same.get()).fate();
                rows.add(
                        List.of(
                                Value.words("fails", group.first().part().text()),
                                Value.words("fault-outcome", now.outcome().words()),
                                Value.of("fault-margin", now.margin()),
                                Value.words("fault-outcome-paired", then.outcome().words()),
                                Value.of("fault-margin-paired", then.margin())));
            }
        }
        return rows.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        new Section.Table(
                                "pack-pairings",
                                "The loss of each pack as wired, and with fans fed in other sets",
                                List.of(
                                        "fails",
                                        "fault-outcome",
                                        "fault-margin",
                                        "fault-outcome-paired",
                                        "fault-margin-paired"),
                                rows));
    }

    private static Optional<FaultGroup> lost(FaultPanel panel, String pack) {
        return panel.groups().stream()
                .filter(
                        group ->
                                group.first().kind() == Fault.Kind.PACK
                                        && group.first().part().text().equals(pack))
                .findFirst();
    }
}

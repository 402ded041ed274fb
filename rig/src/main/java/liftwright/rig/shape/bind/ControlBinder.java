package liftwright.rig.shape.bind;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import liftwright.quantity.Dimension;
import liftwright.quantity.Quantity;
import liftwright.rig.Control;
import liftwright.rig.Fan;
import liftwright.rig.PartId;
import liftwright.rig.Problem.Code;
import liftwright.rig.shape.kind.Fields;
import liftwright.rig.shape.kind.Problems;
import liftwright.rig.shape.kind.Stated;
import liftwright.rig.shape.words.ControlKeys;

/** The control groups; every fan is in exactly one. */
final class ControlBinder {

    private static final String ALL = "all";

    private final Ledger ledger;
    private final Parts parts;

    ControlBinder(Ledger ledger, Parts parts) {
        this.ledger = ledger;
        this.parts = parts;
    }

    Control bind(Fields control) {
        var sensors = new SensorsBinder(ledger);
        Control.Kind kind = ledger.value(control, ControlKeys.KIND);
        Map<String, Stated<Fields>> declared = control.get(ControlKeys.GROUPS).orElse(Map.of());
        return new Control(
                kind,
                declared.isEmpty() ? List.of(all(control)) : groups(control, declared),
                ledger.value(control, ControlKeys.LINK_LOSS),
                ledger.value(control, ControlKeys.LOSS_TIME),
                control.get(ControlKeys.RISE),
                control.get(ControlKeys.LIVE_BELOW),
                control.get(ControlKeys.STOP),
                control.get(ControlKeys.RATE),
                control.get(ControlKeys.DELAY),
                sensors.sensors(control),
                ledger.value(control, ControlKeys.COMPUTERS),
                new SupplyBinder(ledger, parts).of(control, ControlKeys.FED_BY),
                ledger.value(control, ControlKeys.LOWERING),
                control.get(ControlKeys.RADIO),
                SensorsBinder.estimator(control),
                sensors.loops(control));
    }

    private Control.Group all(Fields control) {
        ledger.note(
                control,
                ControlKeys.GROUPS,
                "one group of all fans, share 100 %",
                "common practice");
        return new Control.Group(
                ALL,
                control.spotOf(ControlKeys.GROUPS).path(),
                parts.fans().stream().map(Fan::id).toList(),
                Quantity.exact(1, Dimension.NONE));
    }

    private List<Control.Group> groups(Fields control, Map<String, Stated<Fields>> declared) {
        var groupOf = new HashMap<PartId, String>();
        var groups = new ArrayList<Control.Group>();
        boolean whole = true;
        for (var entry : declared.entrySet()) {
            Fields fields = entry.getValue().value();
            whole &= !fields.failed(ControlKeys.GROUP_FANS);
            groups.add(
                    new Control.Group(
                            entry.getKey(),
                            fields.spot().path(),
                            members(entry.getKey(), fields, groupOf),
                            ledger.value(fields, ControlKeys.SHARE)));
        }
        if (whole) {
            reportLeftOut(control, groupOf);
        }
        return groups;
    }

    private List<PartId> members(String group, Fields fields, Map<PartId, String> groupOf) {
        var members = new ArrayList<PartId>();
        for (Stated<String> name : fields.get(ControlKeys.GROUP_FANS).orElse(List.of())) {
            String twice = "";
            for (PartId fan : parts.fansOf(name)) {
                String before = groupOf.putIfAbsent(fan, group);
                if (before == null) {
                    members.add(fan);
                } else if (twice.isEmpty()) {
                    twice = before;
                    ledger.problems()
                            .add(
                                    Code.CONTRADICTION,
                                    name.spot(),
                                    Problems.quote(fan.text()) + " in two groups",
                                    "a fan in one group",
                                    "It is in " + Problems.quote(before) + " already.");
                }
            }
        }
        return members;
    }

    private void reportLeftOut(Fields control, Map<PartId, String> groupOf) {
        var left =
                parts.fans().stream()
                        .map(Fan::id)
                        .filter(fan -> !groupOf.containsKey(fan))
                        .map(PartId::text)
                        .toList();
        if (!left.isEmpty()) {
            String first = String.join(", ", left.subList(0, Math.min(4, left.size())));
            ledger.problems()
                    .add(
                            Code.CONTRADICTION,
                            control.spotOf(ControlKeys.GROUPS),
                            first + (left.size() > 4 ? " and others" : "") + " in no group",
                            "every fan in one group",
                            "Add it to a group, or take the groups out.");
        }
    }
}

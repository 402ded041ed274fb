package liftwright.rig.shape.bind;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import liftwright.quantity.Quantity;
import liftwright.rig.CrewMember;
import liftwright.rig.Kill;
import liftwright.rig.Problem.Code;
import liftwright.rig.Rates;
import liftwright.rig.RiskMatrix;
import liftwright.rig.shape.kind.Fields;
import liftwright.rig.shape.kind.Stated;
import liftwright.rig.shape.words.CrewKeys;
import liftwright.rig.shape.words.RateKeys;
import liftwright.rig.shape.words.RigKeys;
import liftwright.rig.shape.words.RiskKeys;

/** Who is near the rig, how often its parts fail, and which risk that makes. */
final class RisksBinder {

    private final Ledger ledger;

    RisksBinder(Ledger ledger) {
        this.ledger = ledger;
    }

    List<CrewMember> crew(Fields file) {
        var crew = new ArrayList<CrewMember>();
        Map<String, Stated<Fields>> declared = file.get(RigKeys.CREW).orElse(Map.of());
        declared.forEach((name, stated) -> crew.add(member(name, stated.value())));
        return crew;
    }

    private CrewMember member(String name, Fields fields) {
        if (name.equals(Kill.WEARER)) {
            ledger.problems()
                    .add(
                            Code.CONTRADICTION,
                            fields.spot(),
                            "a crew member named “wearer”",
                            "another name: the wearer has a section of their own",
                            "Write what concerns the wearer under “wearer”.");
        }
        return new CrewMember(
                name,
                fields.spot().path(),
                fields.get(CrewKeys.REACTION),
                fields.get(CrewKeys.DISTANCE),
                fields.get(CrewKeys.ROLE).orElse(""));
    }

    Rates rates(Fields file) {
        return file.get(RigKeys.RATES).map(this::bindRates).orElse(Rates.NONE);
    }

    private Rates bindRates(Fields fields) {
        var known = new EnumMap<Rates.PartKind, Quantity>(Rates.PartKind.class);
        RateKeys.OF.forEach((kind, key) -> fields.get(key).ifPresent(r -> known.put(kind, r)));
        return new Rates(known, ledger.value(fields, RateKeys.EXPOSURE));
    }

    RiskMatrix matrix(Fields file) {
        ledger.note(file, RigKeys.RISK_MATRIX, "that of the parts book", RiskMatrix.USUAL.source());
        return file.get(RigKeys.RISK_MATRIX).map(this::declared).orElse(RiskMatrix.USUAL);
    }

    private RiskMatrix declared(Fields fields) {
        var rows =
                new EnumMap<RiskMatrix.Likelihood, Map<RiskMatrix.Severity, String>>(
                        RiskMatrix.USUAL.cells());
        RiskKeys.ROWS.forEach(
                (level, key) ->
                        fields.get(key)
                                .ifPresent(
                                        row ->
                                                rows.put(
                                                        level,
                                                        RiskMatrix.row(
                                                                row.stream()
                                                                        .map(Stated::value)
                                                                        .toList()))));
        return new RiskMatrix(ledger.value(fields, RiskKeys.SOURCE), true, rows);
    }
}

package liftwright.rig.shape.bind;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import liftwright.rig.Fan;
import liftwright.rig.Problem.Code;
import liftwright.rig.shape.kind.Either;
import liftwright.rig.shape.kind.Fields;
import liftwright.rig.shape.kind.Stated;
import liftwright.rig.shape.words.FanKeys;

/** Which way the rotors of a group turn. */
final class Spins {

    private Spins() {}

    static List<Fan.Spin> of(Ledger ledger, Fields group, int count) {
        return switch (ledger.value(group, FanKeys.SPIN)) {
            case Either.Of.One<String, List<Stated<Fan.Spin>>>(var word) ->
                    switch (word) {
                        case "left-hand" -> Collections.nCopies(count, Fan.Spin.LEFT_HAND);
                        case "right-hand" -> Collections.nCopies(count, Fan.Spin.RIGHT_HAND);
                        default -> alternating(count);
                    };
            case Either.Of.Other<String, List<Stated<Fan.Spin>>>(var list) -> {
                if (list.size() != count) {
                    ledger.problems()
                            .add(
                                    Code.CONTRADICTION,
                                    group.spotOf(FanKeys.SPIN),
                                    list.size() + " senses",
                                    count + " senses, one a fan",
                                    "Write one for each fan of the group, or “alternating”.");
                    yield alternating(count);
                }
                yield list.stream().map(Stated::value).toList();
            }
        };
    }

    private static List<Fan.Spin> alternating(int count) {
        var spins = new ArrayList<Fan.Spin>(count);
        for (int i = 0; i < count; i++) {
            spins.add(i % 2 == 0 ? Fan.Spin.RIGHT_HAND : Fan.Spin.LEFT_HAND);
        }
        return spins;
    }
}

package liftwright.rig.shape.bind;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import liftwright.rig.Problem.Code;
import liftwright.rig.shape.kind.Fields;
import liftwright.rig.shape.kind.Key;
import liftwright.rig.shape.kind.Nearest;
import liftwright.rig.shape.kind.Problems;
import liftwright.rig.shape.kind.Stated;
import liftwright.rig.shape.words.FanKeys;

/** What a group takes from the one that it is like. */
final class Likeness {

    /** What names single parts never passes on. */
    private static final List<Key<?>> OWN =
            List.of(
                    FanKeys.ID,
                    FanKeys.LIKE,
                    FanKeys.TWIN,
                    FanKeys.SERIALS,
                    FanKeys.EXCEPT,
                    FanKeys.NOTE);

    private static final List<Key<?>> PATTERN = List.of(FanKeys.ROW, FanKeys.ROWS, FanKeys.RING);

    /** What tells where the fans of a pattern are. */
    private static final List<Key<?>> LAYOUT =
            List.of(
                    FanKeys.FROM,
                    FanKeys.TO,
                    FanKeys.SPACING,
                    FanKeys.ROW_SPACING,
                    FanKeys.RUNS,
                    FanKeys.NEXT_ROW,
                    FanKeys.RADIUS,
                    FanKeys.START);

    private Likeness() {}

    /** The group with what it takes from an earlier one; empty when there is no such group. */
    static Optional<Fields> merge(Ledger ledger, Fields group, Map<String, Fields> earlier) {
        Stated<String> like = group.stated(FanKeys.LIKE).orElse(null);
        if (like == null) {
            return Optional.of(group);
        }
        Fields model = earlier.get(like.value());
        if (model == null) {
            ledger.problems()
                    .add(
                            Code.NO_SUCH_PART,
                            like.spot(),
                            Problems.quote(like.value()),
                            "the id of a fan group further up",
                            Nearest.advice(like.value(), earlier.keySet()));
            return Optional.empty();
        }
        Set<String> left = new HashSet<>();
        OWN.forEach(key -> left.add(key.name()));
        boolean ownPattern = PATTERN.stream().anyMatch(group::has);
        if (ownPattern) {
            PATTERN.forEach(key -> left.add(key.name()));
            LAYOUT.forEach(key -> left.add(key.name()));
        }
        if (group.has(FanKeys.FROM)) {
            left.add(FanKeys.AT.name());
            left.add(FanKeys.SPACING.name());
            left.add(FanKeys.RUNS.name());
        } else if (group.has(FanKeys.AT) || group.has(FanKeys.SPACING)) {
            left.add(FanKeys.FROM.name());
            left.add(FanKeys.TO.name());
        }
        return Optional.of(group.over(model, left));
    }
}

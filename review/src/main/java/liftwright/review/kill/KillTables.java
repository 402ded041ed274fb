package liftwright.review.kill;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import liftwright.answer.Section;
import liftwright.answer.Value;
import liftwright.rig.Kill;

/**
 * Kill chains as tables: each kill, each thing that one needs, and what together leaves thrust on.
 */
final class KillTables {

    /** Things that must fail together in the largest set that is told. */
    static final int LARGEST = 3;

    /** Sets that are told. */
    static final int MOST = 40;

    private final KillStructure structure;
    private final KillTimes times;

    KillTables(KillStructure structure, KillTimes times) {
        this.structure = structure;
        this.times = times;
    }

    List<Section> all() {
        return structure.chains().isEmpty() ? List.of() : List.of(chains(), needs(), cuts());
    }

    private Section.Table chains() {
        return new Section.Table(
                "kill-chains",
                "Kill chains",
                List.of(
                        "kill",
                        "kill-means",
                        "kill-chain",
                        "kill-leaves",
                        "kill-on-loss",
                        "kill-reaction",
                        "kill-time"),
                structure.chains().stream().map(this::row).toList());
    }

    private List<Value> row(KillStructure.Chain chain) {
        Kill kill = chain.kill();
        List<String> left = structure.leftBy(chain);
        return List.of(
                Value.words("kill", kill.id()),
                Value.words("kill-means", kill.by().name().toLowerCase(Locale.ROOT)),
                Value.words("kill-chain", drawn(chain)),
                Value.words("kill-leaves", structure.words(left)),
                Value.words("kill-on-loss", kill.opensOnLoss() ? "acts" : "does not act"),
                Value.of("kill-reaction", times.reactionS(kill)),
                times.pressToStillS(kill, left)
                        .map(time -> Value.of("kill-time", time))
                        .orElseGet(
                                () ->
                                        new Value(
                                                "kill-time",
                                                new Value.Figure.NotComputed(
                                                        "no inertia of the rotor"))));
    }

    /** "watcher → switch of remote → radio link hand → contactor main". */
    private String drawn(KillStructure.Chain chain) {
        String always = words(chain.always());
        String opening = words(chain.opening());
        return switch (chain.kill().order()) {
            case OPEN_AT_ONCE -> opening.isEmpty() ? always : always + " → " + opening;
            case COMMAND_ZERO_ONLY -> always + " → zero by " + words(chain.commanding());
            case COMMAND_ZERO_THEN_OPEN ->
                    always
                            + " → zero by "
                            + words(chain.commanding())
                            + (opening.isEmpty() ? "" : ", then " + opening);
        };
    }

    private String words(java.util.Set<Integer> numbers) {
        return numbers.stream()
                .map(number -> structure.needs().get(number).words())
                .collect(Collectors.joining(" → "));
    }

    private Section.Table needs() {
        List<List<Value>> rows = new ArrayList<>();
        for (int number = 0; number < structure.needs().size(); number++) {
            BitSet alone = new BitSet();
            alone.set(number);
            List<String> left = structure.leftWithout(alone);
            rows.add(
                    List.of(
                            Value.words("kill-need", structure.needs().get(number).words()),
                            Value.words(
                                    "kill-served",
                                    Alarm.list(
                                            structure.served(number).stream()
                                                    .map(Kill::id)
                                                    .toList())),
                            Value.words("kill-leaves", structure.words(left))));
        }
        return new Section.Table(
                "kill-needs",
                "What the kills need",
                List.of("kill-need", "kill-served", "kill-leaves"),
                rows);
    }

    private Section.Table cuts() {
        return new Section.Table(
                "kill-cuts",
                "What keeps thrust on although every kill is pressed",
                List.of("kill-cut", "kill-cut-size", "kill-leaves"),
                structure.cuts(LARGEST).stream()
                        .limit(MOST)
                        .map(
                                cut ->
                                        List.of(
                                                Value.words("kill-cut", together(cut)),
                                                Value.of("kill-cut-size", cut.cardinality()),
                                                Value.words(
                                                        "kill-leaves",
                                                        structure.words(
                                                                structure.leftWithout(cut)))))
                        .toList());
    }

    private String together(BitSet cut) {
        return Alarm.list(
                cut.stream().mapToObj(number -> structure.needs().get(number).words()).toList());
    }
}

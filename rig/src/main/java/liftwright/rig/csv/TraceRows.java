package liftwright.rig.csv;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import liftwright.rig.Problem.Code;
import liftwright.rig.shape.kind.Measure;
import liftwright.rig.shape.kind.Nearest;
import liftwright.rig.shape.kind.Problems;
import liftwright.rig.shape.kind.Range;
import liftwright.rig.table.ThrottleTrace;
import liftwright.rig.table.ThrottleTrace.Command;

/** Throttle traces. */
final class TraceRows {

    static final Column TIME = Column.needed("time", Measure.TIME, Range.between(0, 100_000));
    static final Column THROTTLE = Column.open("throttle", Measure.SHARE, Range.SHARE).forGroups();
    static final Column LIFT = Column.open("lift", Measure.FORCE, Range.between(0, 100_000));
    static final Column NOTE = Column.text("note");

    static final Vocabulary WORDS =
            new Vocabulary(
                    List.of(TIME, THROTTLE, LIFT, NOTE),
                    Map.of(
                            "duty",
                            "A trace commands throttle: write “throttle [%]”.",
                            "thrust",
                            "A trace commands the lift of the whole rig, “lift [N]”, or its"
                                    + " throttle."));

    private final Tabular table;
    private final Faults faults;
    private final Head head;

    private TraceRows(Tabular table, Faults faults) {
        this.table = table;
        this.faults = faults;
        this.head = Head.read(table, WORDS, faults);
    }

    /** The table, if nothing is wrong with it. */
    static Optional<ThrottleTrace> read(
            String file, Tabular table, List<String> groups, Faults faults) {
        return new TraceRows(table, faults).read(file, groups);
    }

    private Optional<ThrottleTrace> read(String file, List<String> groups) {
        head.require(WORDS, faults);
        List<Head.Found> throttles = head.all(THROTTLE);
        Optional<Head.Found> lift = head.find(LIFT);
        List<Head.Found> commands = lift.map(List::of).orElse(throttles);
        columns(throttles, lift, groups);
        var numbers = new Numbers(table.separator(), faults);
        var times = new Times(faults);
        var rows = new ArrayList<ThrottleTrace.Row>();
        for (Line line : table.rows()) {
            var values = new ArrayList<Double>();
            for (Head.Found command : commands) {
                numbers.needed(command, line).ifPresent(values::add);
            }
            var found = head.find(TIME);
            OptionalDouble time =
                    found.isPresent() ? numbers.needed(found.get(), line) : OptionalDouble.empty();
            if (time.isEmpty()) {
                continue;
            }
            times.next(time.getAsDouble(), line, found.orElseThrow());
            if (values.size() == commands.size()) {
                rows.add(new ThrottleTrace.Row(line.number(), time.getAsDouble(), values));
            }
        }
        Times.atLeastTwo(table, faults);
        startsAtZero(rows);
        if (!faults.isEmpty()) {
            return Optional.empty();
        }
        boolean whole = lift.isPresent() || throttles.getFirst().suffix().isEmpty();
        return Optional.of(
                new ThrottleTrace(
                        file,
                        lift.isPresent() ? Command.LIFT : Command.THROTTLE,
                        whole ? List.of() : throttles.stream().map(Head.Found::suffix).toList(),
                        rows));
    }

    private void columns(
            List<Head.Found> throttles, Optional<Head.Found> lift, List<String> groups) {
        if (throttles.isEmpty() && lift.isEmpty()) {
            faults.add(
                    Code.MISSING_KEY,
                    table.head().number(),
                    1,
                    THROTTLE.name(),
                    "no column of commands",
                    "“throttle [%]”, “lift [N]”, or “throttle GROUP [%]” for each control group",
                    "");
            return;
        }
        boolean some = throttles.stream().anyMatch(found -> !found.suffix().isEmpty());
        for (Head.Found found : throttles) {
            Cell at = table.head().cells().get(found.index());
            if (lift.isPresent()) {
                contradiction(at, found.name(), "throttle and lift", "one of them");
            } else if (some && found.suffix().isEmpty()) {
                contradiction(
                        at,
                        found.name(),
                        "a throttle for all beside one for a group",
                        "one for all, or one for each group");
            } else if (!found.suffix().isEmpty() && !groups.contains(found.suffix())) {
                faults.add(
                        Code.NO_SUCH_PART,
                        at,
                        found.name(),
                        Problems.quote(found.suffix()),
                        "a control group of the rig",
                        groups.isEmpty()
                                ? "The rig declares none: write “throttle [%]”."
                                : Nearest.to(found.suffix(), groups)
                                        .map(near -> "Perhaps “" + near + "” is meant.")
                                        .orElse("The rig has: " + String.join(", ", groups) + "."));
            }
        }
        if (some && faults.isEmpty()) { // a name that was not understood may be the missing one
            groups.stream()
                    .filter(group -> throttles.stream().noneMatch(f -> f.suffix().equals(group)))
                    .forEach(
                            group ->
                                    faults.add(
                                            Code.MISSING_KEY,
                                            table.head().number(),
                                            1,
                                            THROTTLE.name() + " " + group,
                                            "no throttle for the group " + Problems.quote(group),
                                            "“throttle " + group + " [%]”",
                                            ""));
        }
    }

    private void contradiction(Cell at, String name, String found, String expected) {
        faults.add(Code.CONTRADICTION, at, name, found, expected, "");
    }

    private void startsAtZero(List<ThrottleTrace.Row> rows) {
        if (faults.isEmpty() && rows.getFirst().timeS() != 0) {
            Cell cell = table.rows().getFirst().cells().get(head.find(TIME).orElseThrow().index());
            faults.add(
                    Code.OUT_OF_RANGE,
                    cell,
                    TIME.name(),
                    Problems.quote(cell.text()),
                    "0 in the first row",
                    "A trace says what is commanded from the start.");
        }
    }
}

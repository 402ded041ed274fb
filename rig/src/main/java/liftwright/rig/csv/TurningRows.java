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
import liftwright.rig.table.TurningTable;
import liftwright.rig.table.TurningTable.Axis;
import liftwright.rig.table.TurningTable.Swap;

/** Measured turning. */
final class TurningRows {

    private static final Range RATES = Range.between(-1000, 1000);
    private static final Range DOUBTS = Range.between(1e-6, 1000);

    static final Column THROTTLE = Column.open("throttle", Measure.SHARE, Range.SHARE);
    static final Column ARMS =
            Column.open("arms doubt", Measure.ANGLE, Range.between(0, Math.PI / 2));
    static final Column ROLL = Column.open("roll", Measure.TURN_ACCELERATION, RATES);
    static final Column ROLL_DOUBT = Column.open("roll doubt", Measure.TURN_ACCELERATION, DOUBTS);
    static final Column PITCH = Column.open("pitch", Measure.TURN_ACCELERATION, RATES);
    static final Column PITCH_DOUBT = Column.open("pitch doubt", Measure.TURN_ACCELERATION, DOUBTS);
    static final Column YAW = Column.open("yaw", Measure.TURN_ACCELERATION, RATES);
    static final Column YAW_DOUBT = Column.open("yaw doubt", Measure.TURN_ACCELERATION, DOUBTS);
    static final Column SWAP = Column.text("swap");
    static final Column NOTE = Column.text("note");

    static final Vocabulary WORDS =
            new Vocabulary(
                    List.of(
                            THROTTLE,
                            ROLL,
                            ROLL_DOUBT,
                            PITCH,
                            PITCH_DOUBT,
                            YAW,
                            YAW_DOUBT,
                            ARMS,
                            SWAP,
                            NOTE),
                    Map.of(
                            "duty",
                            "Write the throttle that was commanded: “throttle [%]”.",
                            "time",
                            "Write accelerations: twice the angle over the square of the time."));

    private static final String SWAPS =
            "“half turn FAN”, “exchange FAN FAN”, “reversal FAN”, or nothing";

    private record Pair(Axis axis, Column rate, Column doubt) {}

    private static final List<Pair> PAIRS =
            List.of(
                    new Pair(Axis.ROLL, ROLL, ROLL_DOUBT),
                    new Pair(Axis.PITCH, PITCH, PITCH_DOUBT),
                    new Pair(Axis.YAW, YAW, YAW_DOUBT));

    private final Tabular table;
    private final List<String> fans;
    private final Faults faults;
    private final Head head;

    private TurningRows(Tabular table, List<String> fans, Faults faults) {
        this.table = table;
        this.fans = fans;
        this.faults = faults;
        this.head = Head.read(table, WORDS, faults);
    }

    /** The table, if nothing is wrong with it. */
    static Optional<TurningTable> read(
            String file, Tabular table, List<String> fans, Faults faults) {
        return new TurningRows(table, fans, faults).read(file);
    }

    private Optional<TurningTable> read(String file) {
        if (head.find(ROLL).isEmpty() && head.find(PITCH).isEmpty() && head.find(YAW).isEmpty()) {
            faults.add(
                    Code.MISSING_KEY,
                    table.head().number(),
                    1,
                    YAW.name(),
                    "no column of turning",
                    "“roll [rad/s²]”, “pitch [rad/s²]” or “yaw [rad/s²]”",
                    "");
        }
        for (Pair pair : PAIRS) {
            if (head.find(pair.rate).isPresent() && head.find(pair.doubt).isEmpty()) {
                head.missing(pair.doubt, faults);
            }
        }
        var numbers = new Numbers(table.separator(), faults);
        var rows = new ArrayList<TurningTable.Row>();
        for (Line line : table.rows()) {
            row(line, numbers).ifPresent(rows::add);
        }
        if (rows.isEmpty() && faults.isEmpty()) {
            faults.add(
                    Code.MISSING_KEY,
                    table.head().number(),
                    1,
                    "",
                    "no row",
                    "a row for each measurement",
                    "");
        }
        return faults.isEmpty() ? Optional.of(new TurningTable(file, rows)) : Optional.empty();
    }

    private Optional<TurningTable.Row> row(Line line, Numbers numbers) {
        var rates = new ArrayList<TurningTable.Rate>();
        for (Pair pair : PAIRS) {
            OptionalDouble rate = open(pair.rate, line, numbers);
            if (rate.isPresent() && head.find(pair.doubt).isPresent()) {
                OptionalDouble doubt = numbers.needed(head.find(pair.doubt).get(), line);
                if (doubt.isPresent()) {
                    rates.add(
                            new TurningTable.Rate(
                                    pair.axis, rate.getAsDouble(), doubt.getAsDouble()));
                }
            }
        }
        OptionalDouble throttle = open(THROTTLE, line, numbers);
        OptionalDouble arms = open(ARMS, line, numbers);
        Swap swap = head.find(SWAP).map(at -> swap(line, at)).orElseGet(Swap.None::new);
        if (rates.isEmpty()) {
            if (faults.isEmpty()) {
                faults.add(
                        Code.MISSING_KEY,
                        line.number(),
                        1,
                        YAW.name(),
                        "a row in which nothing was measured",
                        "a roll, pitch or yaw",
                        "Leave out such a row.");
            }
            return Optional.empty();
        }
        return Optional.of(new TurningTable.Row(line.number(), throttle, arms, swap, rates));
    }

    private OptionalDouble open(Column column, Line line, Numbers numbers) {
        Optional<Head.Found> found = head.find(column);
        return found.isPresent() ? numbers.open(found.get(), line) : OptionalDouble.empty();
    }

    private Swap swap(Line line, Head.Found at) {
        Cell cell = line.cells().get(at.index());
        String text = cell.text().strip().replaceAll("\\s+", " ");
        if (text.isEmpty()) {
            return new Swap.None();
        }
        if (text.startsWith("half turn ")) {
            return new Swap.HalfTurn(fan(text.substring("half turn ".length()), cell));
        }
        if (text.startsWith("reversal ")) {
            return new Swap.Reversal(fan(text.substring("reversal ".length()), cell));
        }
        if (text.startsWith("exchange ")) {
            String two = text.substring("exchange ".length());
            // Names may hold blanks: the split is where both halves are fans.
            for (int k = two.indexOf(' '); k >= 0; k = two.indexOf(' ', k + 1)) {
                String one = two.substring(0, k);
                String other = two.substring(k + 1);
                if (fans.contains(one) && fans.contains(other) && !one.equals(other)) {
                    return new Swap.Exchange(one, other);
                }
            }
        }
        faults.add(Code.UNKNOWN_WORD, cell, SWAP.name(), Problems.quote(text), SWAPS, "");
        return new Swap.None();
    }

    private String fan(String name, Cell cell) {
        if (!fans.contains(name)) {
            faults.add(
                    Code.NO_SUCH_PART,
                    cell,
                    SWAP.name(),
                    Problems.quote(name),
                    "a fan of the rig",
                    Nearest.to(name, fans)
                            .map(near -> "Perhaps “" + near + "” is meant.")
                            .orElse(""));
            return name;
        }
        return name;
    }
}

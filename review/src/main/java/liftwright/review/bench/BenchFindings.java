package liftwright.review.bench;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import liftwright.answer.Finding;
import liftwright.answer.Finding.Severity;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.physics.FanLaw;
import liftwright.physics.FanLaw.Plausibility;
import liftwright.plant.identify.FanFit;
import liftwright.quantity.Measure;
import liftwright.rig.table.BenchTable;

/** What the one who measured should look at, row by row. */
final class BenchFindings {

    /** Rows named one by one; of more, their number is told. */
    private static final int MOST_ROWS = 8;

    /** Less than this of a row that was set aside is not worth a word. */
    private static final double TOLD = 0.005;

    private final BenchTable table;
    private final Known known;
    private final Map<Integer, RowPower> powers;
    private final List<Finding> found = new ArrayList<>();

    BenchFindings(BenchTable table, Known known, Map<Integer, RowPower> powers) {
        this.table = table;
        this.known = known;
        this.powers = powers;
    }

    /** Worst first. */
    List<Finding> found() {
        return found.stream().sorted(Comparator.comparing(Finding::severity)).toList();
    }

    void ofFit(FanFit fit) {
        fit.rows().stream()
                .filter(FanFit.RowResidual::outlier)
                .limit(MOST_ROWS)
                .forEach(this::setAside);
        for (String note : fit.notes()) {
            note("fit-note", note, "what rows do not tell must be declared or measured");
        }
    }

    private void setAside(FanFit.RowResidual row) {
        Sentence said = Sentence.words("line " + row.line() + " follows no law of the others:");
        boolean first = true;
        for (Left left :
                List.of(
                        new Left("thrust", row.thrust().orElse(0)),
                        new Left("current", row.current().orElse(0)),
                        new Left("torque", row.torque().orElse(0)),
                        new Left("speed", row.speed().orElse(0)))) {
            if (Math.abs(left.share) >= TOLD) {
                said =
                        said.then((first ? " " : ", ") + left.what + " off by ")
                                .then(Measure.PERCENT, left.share);
                first = false;
            }
        }
        found.add(
                Finding.of(
                                Severity.WARNS,
                                "row-set-aside",
                                said.then("; it was set aside"),
                                "a slip of the pen, a unit, a reading before the fan had settled")
                        .at("line " + row.line()));
    }

    private record Left(String what, double share) {}

    void ofPower() {
        if (known.exitM2().isEmpty()) {
            note(
                    "power-not-judged",
                    "whether the rows can be true was not judged: nothing tells the exit area",
                    "give it with --exit-area, or tip and hub, or the fan type of a rig file");
            return;
        }
        List<BenchTable.Row> rows =
                table.rows().stream().filter(row -> powers.containsKey(row.line())).toList();
        if (rows.isEmpty()) {
            note(
                    "power-not-judged",
                    "whether the rows can be true was not judged: no row tells a power",
                    "momentum theory holds a thrust against a power");
            return;
        }
        judged(rows, Plausibility.IMPOSSIBLE);
        judged(rows, Plausibility.BEYOND_THIS_SIZE);
    }

    private void judged(List<BenchTable.Row> rows, Plausibility which) {
        List<BenchTable.Row> own =
                rows.stream().filter(row -> power(row).plausibility() == which).toList();
        own.stream().limit(MOST_ROWS).forEach(row -> found.add(judged(row, which)));
        if (own.size() > MOST_ROWS) {
            note(
                    "more-rows",
                    own.size() - MOST_ROWS + " more rows like these: see the table",
                    "the rows share a cause");
        }
    }

    private RowPower power(BenchTable.Row row) {
        RowPower power = powers.get(row.line());
        if (power == null) {
            throw new IllegalStateException("line " + row.line() + " tells no power");
        }
        return power;
    }

    private Finding judged(BenchTable.Row row, Plausibility which) {
        RowPower power = power(row);
        boolean impossible = which == Plausibility.IMPOSSIBLE;
        double credible =
                power.electrical()
                        ? FanLaw.CREDIBLE_ELECTRICAL_EFFICIENCY
                        : FanLaw.CREDIBLE_SHAFT_EFFICIENCY;
        String whose = power.electrical() ? " of its electrical power" : " of its shaft power";
        return Finding.of(
                        impossible ? Severity.STOPS : Severity.WARNS,
                        impossible ? "row-impossible" : "row-doubtful",
                        Sentence.words("line " + row.line() + " would need ")
                                .then(Measure.PERCENT, power.share())
                                .then(
                                        whose
                                                + " for its thrust alone"
                                                + (impossible
                                                        ? ", which no fan can"
                                                        : ", beyond anything of this size")),
                        "thrust, exit area, voltage and current do not go together: check scale, shunt and"
                                + " exit")
                .at("line " + row.line())
                .against(
                        Value.of("bench-ideal", power.share()),
                        new Finding.Limit(
                                Value.of("bench-ideal", impossible ? 1 : credible),
                                impossible
                                        ? "momentum theory, Rankine–Froude"
                                        : "common practice"));
    }

    private void note(String code, String words, String cause) {
        found.add(Finding.of(Severity.NOTES, code, Sentence.words(words), cause));
    }
}

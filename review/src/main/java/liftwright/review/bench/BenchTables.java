package liftwright.review.bench;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import liftwright.answer.Section;
import liftwright.answer.Value;
import liftwright.plant.identify.FanFit;
import liftwright.plant.identify.FanUnknown;
import liftwright.quantity.Band;
import liftwright.rig.table.BenchTable;

/** The tables of an answer about a bench table. */
final class BenchTables {

    private static final double NORMAL = 1.96;

    private final BenchTable table;
    private final Map<Integer, RowPower> powers;

    BenchTables(BenchTable table, Map<Integer, RowPower> powers) {
        this.table = table;
        this.powers = powers;
    }

    /** The coefficients with their 95 % intervals. */
    Section.Table coefficients(FanFit fit) {
        List<List<Value>> rows = new ArrayList<>();
        for (FanFit.Coefficient one : fit.coefficients()) {
            rows.add(
                    List.of(
                            Value.words("bench-what", one.unknown().words()),
                            Value.of("bench-coefficient", one.value(), band(one.low(), one.high())),
                            Value.words("bench-unit", unit(one.unknown())),
                            Value.words(
                                    "bench-origin",
                                    one.assumed() ? "assumed, not told by the rows" : "the rows")));
        }
        return new Section.Table(
                "coefficients",
                "Coefficients in still air of 1.225 kg/m³, with 95 % intervals",
                List.of("bench-what", "bench-coefficient", "bench-unit", "bench-origin"),
                rows);
    }

    private static Band band(double low, double high) {
        return new Band(low, high, 0.95, "Student's t about a least-squares fit", 0, 0);
    }

    private static String unit(FanUnknown unknown) {
        return switch (unknown) {
            case THRUST -> "N·s²/rad²";
            case TORQUE -> "N·m·s²/rad²";
            case SPEED_CONSTANT -> "rad/s/V";
            case WINDING -> "Ω";
            case NO_LOAD -> "A";
            case SWITCHING,
                    THRUST_DRIFT,
                    TORQUE_DRIFT,
                    THRUST_INFLOW,
                    THRUST_INFLOW_SQUARE,
                    TORQUE_INFLOW,
                    TORQUE_INFLOW_SQUARE ->
                    "1";
        };
    }

    /** What is declared beside what the rows say; empty where nothing is declared. */
    Optional<Section> differences(List<FanFit.Difference> differences) {
        if (differences.isEmpty()) {
            return Optional.empty();
        }
        List<List<Value>> rows = new ArrayList<>();
        for (FanFit.Difference one : differences) {
            double factor = Math.exp(NORMAL * one.foundDeviation());
            rows.add(
                    List.of(
                            Value.words("bench-what", one.label()),
                            Value.of("bench-declared", one.declared()),
                            Value.of(
                                    "bench-coefficient",
                                    one.found(),
                                    band(one.found() / factor, one.found() * factor)),
                            Value.of("bench-difference", one.found() / one.declared() - 1)));
        }
        return Optional.of(
                new Section.Table(
                        "declared",
                        "What is declared, and what the rows say (SI)",
                        List.of(
                                "bench-what",
                                "bench-declared",
                                "bench-coefficient",
                                "bench-difference"),
                        rows));
    }

    Section lot(FanFit.Lot lot) {
        List<List<Value>> rows = new ArrayList<>();
        for (FanFit.Unit unit : lot.units()) {
            rows.add(
                    List.of(
                            Value.words("bench-fan", unit.name()),
                            Value.of("bench-rows", unit.rows()),
                            Value.of("bench-fan-thrust", unit.thrustShare()),
                            Value.of("bench-fan-current", unit.currentShare())));
        }
        return new Section.Table(
                "lot",
                "Single fans beside the mean of the table",
                List.of("bench-fan", "bench-rows", "bench-fan-thrust", "bench-fan-current"),
                rows);
    }

    /** Every row: what was read, what the fit leaves over, what momentum theory says. */
    Section.Table rows(Optional<FanFit> fit) {
        Map<Integer, FanFit.RowResidual> left = new HashMap<>();
        fit.ifPresent(found -> found.rows().forEach(row -> left.put(row.line(), row)));
        boolean torque = table.rows().stream().anyMatch(row -> row.torqueNm().isPresent());
        List<List<Value>> rows = new ArrayList<>();
        for (BenchTable.Row row : table.rows()) {
            Optional<FanFit.RowResidual> own = Optional.ofNullable(left.get(row.line()));
            Optional<RowPower> power = Optional.ofNullable(powers.get(row.line()));
            List<Value> cells = new ArrayList<>();
            cells.add(Value.of("bench-line", row.line()));
            cells.add(measured("bench-speed", row.speedRadps()));
            cells.add(Value.of("bench-thrust", row.thrustN()));
            cells.add(left("bench-left-thrust", own.map(FanFit.RowResidual::thrust)));
            cells.add(left("bench-left-current", own.map(FanFit.RowResidual::current)));
            if (torque) {
                cells.add(left("bench-left-torque", own.map(FanFit.RowResidual::torque)));
            }
            cells.add(left("bench-left-speed", own.map(FanFit.RowResidual::speed)));
            cells.add(
                    power.map(one -> Value.of("bench-ideal", one.share()))
                            .orElseGet(() -> Value.words("bench-ideal", "-")));
            cells.add(Value.words("bench-remark", remark(own, power)));
            rows.add(cells);
        }
        return new Section.Table(
                "rows",
                "Every row: what the fit leaves of it, and what of its power the thrust alone needs",
                columns(torque),
                rows);
    }

    private static List<String> columns(boolean torque) {
        List<String> columns =
                new ArrayList<>(
                        List.of(
                                "bench-line",
                                "bench-speed",
                                "bench-thrust",
                                "bench-left-thrust",
                                "bench-left-current"));
        if (torque) {
            columns.add("bench-left-torque");
        }
        columns.addAll(List.of("bench-left-speed", "bench-ideal", "bench-remark"));
        return columns;
    }

    private static Value measured(String field, OptionalDouble value) {
        return value.isPresent() ? Value.of(field, value.getAsDouble()) : Value.words(field, "-");
    }

    private static Value left(String field, Optional<OptionalDouble> value) {
        return measured(field, value.orElseGet(OptionalDouble::empty));
    }

    private static String remark(Optional<FanFit.RowResidual> row, Optional<RowPower> power) {
        List<String> words = new ArrayList<>();
        if (row.map(FanFit.RowResidual::outlier).orElse(false)) {
            words.add("set aside");
        }
        power.map(RowPower::plausibility)
                .ifPresent(
                        how -> {
                            switch (how) {
                                case CREDIBLE -> {}
                                case BEYOND_THIS_SIZE -> words.add("doubtful");
                                case IMPOSSIBLE -> words.add("impossible");
                            }
                        });
        return String.join(", ", words);
    }
}

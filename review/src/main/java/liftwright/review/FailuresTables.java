package liftwright.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import liftwright.answer.Outcome;
import liftwright.answer.Section;
import liftwright.answer.Section.Matrix.Cell;
import liftwright.answer.Section.Matrix.Standing;
import liftwright.answer.Value;
import liftwright.quantity.Band;
import liftwright.review.failures.Asked;
import liftwright.review.failures.FaultFate;
import liftwright.review.failures.FaultNumber;
import liftwright.rig.RiskMatrix.Likelihood;
import liftwright.rig.RiskMatrix.Severity;

/** Failures as tables: what is left with each, and which of them no second thing is needed for. */
final class FailuresTables {

    private final FailuresJudgement judgement;
    private final List<FaultView> views;
    private final Asked asked;
    private final List<FaultNumber> numbers;

    FailuresTables(FailuresJudgement judgement, List<FaultView> views) {
        this.judgement = judgement;
        this.views = views;
        asked = judgement.sample().panel().asked();
        numbers =
                views.stream()
                        .flatMap(view -> view.found().figures().stream())
                        .findFirst()
                        .map(FaultNumber::of)
                        .orElse(List.of());
    }

    /** What is left with each fault, single points first. */
    Section matrix() {
        List<String> columns = new ArrayList<>(List.of("fault-outcome", "fault-verdict"));
        columns.add("fault-margin");
        shown().forEach(number -> columns.add(number.field()));
        return new Section.Matrix(
                "failures",
                "What is left with each failure",
                columns,
                views.stream().map(this::line).toList());
    }

    private List<FaultNumber> shown() {
        return numbers.stream().filter(number -> !isBeside(number)).toList();
    }

    /** What a computer can do with yaw let go stands in a table of its own. */
    private static boolean isBeside(FaultNumber number) {
        return switch (number) {
            case TRIM_FREE, ROLL_FREE, PITCH_FREE -> true;
            case LIFT, TRIM_HELD, ROLL, PITCH, YAW, REACH, REACH_YAW_FREE, TILT, TURNING -> false;
        };
    }

    private Section.Matrix.Line line(FaultView view) {
        List<Cell> cells = new ArrayList<>();
        FaultFate fate = view.found().fate();
        Standing stands = standing(view.verdict(), fate.margin());
        cells.add(new Cell(Value.words("fault-outcome", fate.outcome().words()), stands));
        cells.add(new Cell(Value.words("fault-verdict", view.verdict().label()), stands));
        cells.add(
                new Cell(
                        Value.of("fault-margin", fate.margin(), Bands.shown(view.margin())),
                        stands));
        shown().forEach(number -> cells.add(number(view, number)));
        return new Section.Matrix.Line(view.part(), view.how(), view.group().others(), cells);
    }

    /** How bad and how likely each is. */
    Section risks() {
        List<List<Value>> rows = new ArrayList<>();
        for (FaultView view : views) {
            rows.add(
                    List.of(
                            Value.words("fails", view.part()),
                            Value.words("fails-how", view.how()),
                            Value.of("fault-impact", view.found().fate().impactMps()),
                            Value.words("fault-severity", severity(view.severity())),
                            view.likelihood()
                                    .map(each -> Value.words("fault-likelihood", likelihood(each)))
                                    .orElseGet(() -> notDeclared("fault-likelihood")),
                            view.risk()
                                    .map(word -> Value.words("fault-risk", word))
                                    .orElseGet(() -> notDeclared("fault-risk"))));
        }
        return new Section.Table(
                "failure-risks",
                "How bad and how likely each failure is",
                List.of(
                        "fails",
                        "fails-how",
                        "fault-impact",
                        "fault-severity",
                        "fault-likelihood",
                        "fault-risk"),
                rows);
    }

    /** What a flight computer has left if it lets yaw go; empty for other rigs. */
    Optional<Section> yawFree() {
        List<FaultNumber> beside = numbers.stream().filter(FailuresTables::isBeside).toList();
        if (beside.isEmpty()) {
            return Optional.empty();
        }
        List<String> columns = new ArrayList<>(List.of("fails", "fails-how"));
        beside.forEach(number -> columns.add(number.field()));
        List<List<Value>> rows = new ArrayList<>();
        for (FaultView view : views) {
            if (view.found().figures().isPresent()) {
                List<Value> row = new ArrayList<>();
                row.add(Value.words("fails", view.part()));
                row.add(Value.words("fails-how", view.how()));
                beside.forEach(number -> row.add(number(view, number).value()));
                rows.add(row);
            }
        }
        return Optional.of(
                new Section.Table(
                        "yaw-free",
                        "The same with yaw let go, at the declared values",
                        columns,
                        rows));
    }

    private static Value notDeclared(String field) {
        return new Value(field, new Value.Figure.NotComputed("no rate declared"));
    }

    /** "II critical". */
    static String severity(Severity severity) {
        return severity.number() + " " + word(severity);
    }

    private static String word(Severity severity) {
        return switch (severity) {
            case CATASTROPHIC -> "catastrophic";
            case CRITICAL -> "critical";
            case MARGINAL -> "marginal";
            case NEGLIGIBLE -> "negligible";
        };
    }

    private static String likelihood(Likelihood level) {
        String word =
                switch (level) {
                    case FREQUENT -> "frequent";
                    case PROBABLE -> "probable";
                    case OCCASIONAL -> "occasional";
                    case REMOTE -> "remote";
                    case IMPROBABLE -> "improbable";
                    case ELIMINATED -> "eliminated";
                };
        return level.letter() + " " + word;
    }

    private static Standing standing(Outcome verdict, double margin) {
        return switch (verdict) {
            case HOLDS -> Standing.HOLDS;
            case DOES_NOT_HOLD -> Standing.SHORT;
            case CANNOT_BE_TOLD -> Standing.UNTOLD;
            case NOT_JUDGED -> margin < 0 ? Standing.SHORT : Standing.HOLDS;
        };
    }

    private Cell number(FaultView view, FaultNumber number) {
        Optional<Band> band = view.band(number, judgement);
        if (view.found().figures().isEmpty() || band.isEmpty()) {
            return new Cell(notTold(number, "not in the fans"), Standing.TOLD);
        }
        double si = number.in(view.found().figures().get()).orElse(0);
        Band told = isBeside(number) ? Bands.about(si, new double[0]) : band.get();
        Standing stands = standing(number, told);
        return si <= FaultNumber.NONE
                ? new Cell(notTold(number, "no trim"), stands)
                : new Cell(Value.of(number.field(), si, Bands.shown(told)), stands);
    }

    private static Value notTold(FaultNumber number, String reason) {
        return new Value(number.field(), new Value.Figure.NotComputed(reason));
    }

    /** Some reserve is asked, not that of a whole rig; where yaw is held nothing with yaw free. */
    private Standing standing(FaultNumber number, Band band) {
        boolean held = asked.yawHeld();
        return switch (number) {
            case LIFT -> atLeast(asked.liftShare(), band);
            case TRIM_HELD -> held ? atLeast(asked.liftShare(), band) : Standing.TOLD;
            case TRIM_FREE -> held ? Standing.TOLD : atLeast(asked.liftShare(), band);
            case ROLL -> held ? atLeast(0, band) : Standing.TOLD;
            case PITCH -> held ? atLeast(0, band) : Standing.TOLD;
            case YAW -> held ? atLeast(0, band) : Standing.TOLD;
            case ROLL_FREE -> held ? Standing.TOLD : atLeast(0, band);
            case PITCH_FREE -> held ? Standing.TOLD : atLeast(0, band);
            case REACH -> held ? atLeast(0, band) : Standing.TOLD;
            case REACH_YAW_FREE -> held ? Standing.TOLD : atLeast(0, band);
            case TILT -> atMost(asked.driftRadps2(), band);
            case TURNING -> held ? atMost(asked.driftRadps2(), band) : Standing.TOLD;
        };
    }

    private static Standing atLeast(double least, Band band) {
        return band.low() >= least
                ? Standing.HOLDS
                : band.high() < least ? Standing.SHORT : Standing.UNTOLD;
    }

    private static Standing atMost(double most, Band band) {
        return band.high() <= most
                ? Standing.HOLDS
                : band.low() > most ? Standing.SHORT : Standing.UNTOLD;
    }

    /** What ends a flight with nothing else going wrong. */
    Section singlePoints() {
        List<List<Value>> rows = new ArrayList<>();
        for (FaultView view : views) {
            if (view.isSinglePoint()) {
                FaultFate fate = view.found().fate();
                rows.add(
                        List.of(
                                Value.words("fails", view.part()),
                                Value.words("fails-how", view.how()),
                                Value.words("fault-outcome", fate.outcome().words()),
                                Value.of("fault-margin", fate.margin(), Bands.shown(view.margin())),
                                Value.words("fault-severity", severity(view.severity())),
                                Value.words("alike", String.join(", ", view.group().others()))));
            }
        }
        return new Section.Table(
                "single-points",
                "What ends a flight by itself",
                List.of(
                        "fails",
                        "fails-how",
                        "fault-outcome",
                        "fault-margin",
                        "fault-severity",
                        "alike"),
                rows);
    }
}

package liftwright.review.runaway;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import liftwright.answer.Section;
import liftwright.answer.Section.Plot;
import liftwright.answer.Section.Table;
import liftwright.answer.Value;
import liftwright.plant.motion.Moment;
import liftwright.plant.motion.RunawayPath;
import liftwright.review.runaway.RunawayReview.Run;

/** Tables and curves of runaways. */
final class RunawayTables {

    private static final String NOTHING = "nothing stops it";
    private static final String NO_CLIMB = "it does not leave the ground";

    /** Share of thrust that counts as none left. */
    private static final double TENTH = 0.1;

    private RunawayTables() {}

    static List<Section> of(RunawayRuns runs) {
        List<Section> sections = new ArrayList<>();
        sections.add(times(runs));
        sections.add(motion(runs));
        sections.add(wrongs(runs));
        List<Run> shown = runs.runs().stream().filter(Run::ends).toList();
        if (!shown.isEmpty()) {
            sections.add(
                    new Plot(
                            "runaway-heights",
                            "Every fan at full from a hover, untied: height over time",
                            "time",
                            "height-above-ground",
                            shown.stream().map(run -> curve(run, Moment::heightM)).toList()));
            sections.add(
                    new Plot(
                            "runaway-speeds",
                            "The same: upward speed over time",
                            "time",
                            "runaway-speed",
                            shown.stream().map(run -> curve(run, Moment::upMps)).toList()));
        }
        return sections;
    }

    private static Plot.Series curve(Run run, ToDoubleFunction<Moment> of) {
        return new Plot.Series(
                run.kill().label(),
                Plot.Mark.LINE,
                run.path().moments().stream()
                        .map(at -> new Plot.Point(at.timeS(), of.applyAsDouble(at)))
                        .toList());
    }

    private static Table times(RunawayRuns runs) {
        List<List<Value>> rows = new ArrayList<>();
        for (Run run : runs.runs()) {
            KillPath kill = run.kill();
            boolean acts = kill.acts() != KillPath.Acts.NOTHING;
            rows.add(
                    List.of(
                            Value.words("kill-path", kill.label()),
                            Value.of("runaway-detection", kill.detectionS()),
                            Value.of("runaway-reaction", kill.reactionS()),
                            Value.words(
                                    "runaway-reaction-from",
                                    kill.reactionFrom().isEmpty()
                                            ? "no person"
                                            : kill.reactionFrom()),
                            Value.of("runaway-switch", kill.switchS()),
                            acts ? Value.of("runaway-total", kill.totalS()) : none("runaway-total"),
                            goneS(run)
                                    .map(s -> Value.of("runaway-spool-down", s))
                                    .orElseGet(
                                            () ->
                                                    new Value(
                                                            "runaway-spool-down",
                                                            new Value.Figure.NotComputed(
                                                                    kill.share() > 0
                                                                            ? "it is lowered"
                                                                            : "nothing stops it")))));
        }
        return new Table(
                "runaway-times",
                "What would stop a runaway, and when",
                List.of(
                        "kill-path",
                        "runaway-detection",
                        "runaway-reaction",
                        "runaway-reaction-from",
                        "runaway-switch",
                        "runaway-total",
                        "runaway-spool-down"),
                rows);
    }

    /** From the kill until a tenth of the thrust is left. */
    private static Optional<Double> goneS(Run run) {
        RunawayPath path = run.path();
        Optional<Moment> stop = path.atStop();
        if (stop.isEmpty() || run.kill().share() > 0 || !run.ends()) {
            return Optional.empty();
        }
        double atS = stop.get().timeS();
        double first = -1;
        for (int k = 0; k < path.moments().size(); k++) {
            double s = path.moments().get(k).timeS();
            double liftN = path.liftsN().get(k);
            if (s < atS) {
                first = liftN;
            } else if (first > 0 && liftN <= TENTH * first) {
                double before = path.liftsN().get(k - 1);
                double beforeS = path.moments().get(k - 1).timeS();
                double share = (before - TENTH * first) / (before - liftN);
                return Optional.of(beforeS + share * (s - beforeS) - atS);
            }
        }
        return Optional.empty();
    }

    private static Table motion(RunawayRuns runs) {
        List<List<Value>> rows = new ArrayList<>();
        double massKg = runs.runaway().massKg();
        for (Run run : runs.runs()) {
            RunawayPath path = run.path();
            List<Value> row = new ArrayList<>();
            row.add(Value.words("kill-path", run.kill().label()));
            row.add(then("runaway-height-at-kill", path.atStop().map(Moment::heightM)));
            row.add(then("runaway-climb-speed", path.atStop().map(Moment::upMps)));
            row.add(
                    run.ends()
                            ? Value.of("runaway-apex", path.apex().heightM(), run.apexM())
                            : none("runaway-apex"));
            Optional<Double> impact = path.impact().map(at -> Math.abs(at.upMps()));
            row.add(
                    impact.map(mps -> Value.of("runaway-impact", mps, run.impactMps()))
                            .orElseGet(() -> none("runaway-impact")));
            row.add(then("runaway-energy", impact.map(mps -> massKg * mps * mps / 2)));
            rows.add(row);
        }
        return new Table(
                "runaways",
                "Every fan at full from a hover at the height that is asked, untied",
                List.of(
                        "kill-path",
                        "runaway-height-at-kill",
                        "runaway-climb-speed",
                        "runaway-apex",
                        "runaway-impact",
                        "runaway-energy"),
                rows);
    }

    private static Table wrongs(RunawayRuns runs) {
        List<List<Value>> rows = new ArrayList<>();
        double startM = runs.plant().rig().demands().height().si();
        for (RunawayRuns.Wrong wrong : runs.wrongs()) {
            RunawayPath path = wrong.path();
            boolean stays = path.impact().isEmpty() && path.comesDown();
            String end =
                    path.failed()
                            ? "it could not be followed"
                            : stays
                                    ? NO_CLIMB
                                    : !path.comesDown()
                                            ? NOTHING
                                            : path.apex().heightM() > startM
                                                    ? "it climbs and falls"
                                                    : "it sinks";
            rows.add(
                    List.of(
                            Value.words("runaway-trigger", wrong.words()),
                            path.failed() || !path.comesDown()
                                    ? none("runaway-apex")
                                    : Value.of("runaway-apex", path.apex().heightM()),
                            then("runaway-impact", path.impact().map(at -> Math.abs(at.upMps()))),
                            Value.words("runaway-end", end)));
        }
        return new Table(
                "runaway-triggers",
                runs.slowest()
                        .map(run -> "What else makes it climb, stopped by " + run.kill().label())
                        .orElse("What else makes it climb, with nothing to stop it"),
                List.of("runaway-trigger", "runaway-apex", "runaway-impact", "runaway-end"),
                rows);
    }

    private static Value then(String field, Optional<Double> si) {
        return si.map(value -> Value.of(field, value)).orElseGet(() -> none(field));
    }

    private static Value none(String field) {
        return new Value(field, new Value.Figure.NotComputed("nothing stops it"));
    }
}

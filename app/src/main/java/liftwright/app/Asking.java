package liftwright.app;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import liftwright.answer.Answer;
import liftwright.numerics.Work;
import liftwright.quantity.Dimensions;
import liftwright.quantity.Quantity;
import liftwright.quantity.QuantityParser;
import liftwright.quantity.Reading;
import liftwright.report.ProblemReport;
import liftwright.review.BalanceQuestion;
import liftwright.review.EnduranceQuestion;
import liftwright.review.FailureCase;
import liftwright.review.FailuresQuestion;
import liftwright.review.HeatQuestion;
import liftwright.review.LiftQuestion;
import liftwright.review.RestraintQuestion;
import liftwright.review.Settings;
import liftwright.review.Task;
import liftwright.rig.Change;
import liftwright.rig.Control;
import liftwright.rig.Pack;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;
import liftwright.rig.csv.TableReader;
import liftwright.rig.csv.TableReading;
import liftwright.rig.file.RigReading;
import liftwright.rig.table.ThrottleTrace;
import liftwright.rig.table.TurningTable;

/** Asks one question, under the conditions that the options set. */
final class Asking {

    static final String LIFT = "lift";
    static final String ENDURANCE = "endurance";
    static final String BALANCE = "balance";
    static final String HEAT = "heat";
    static final String FAILURES = "failures";
    static final String RESTRAINT = "restraint";

    /** Between two hops that no file knows of, s. */
    private static final double HOP_PAUSE_S = 60;

    private final Options options;
    private final Surroundings around;
    private final HeatAsking heat;

    Asking(Options options, Surroundings around, HeatAsking heat) {
        this.options = options;
        this.around = around;
        this.heat = heat;
    }

    /** Whether an option stands that changes the rig in memory. */
    boolean changesTheRig() {
        return options.text(Grammar.CHARGE).isPresent()
                || options.text(Grammar.CELL_TEMPERATURE).isPresent();
    }

    /**
     * The rig under the conditions asked for: as it stands, or changed in memory.
     *
     * @throws UsageException when a condition is none
     */
    RigSource under(RigSource source, Rig rig) {
        List<Change> changes = new ArrayList<>();
        options.text(Grammar.CHARGE).ifPresent(text -> set(rig, "charge", text, changes));
        options.text(Grammar.CELL_TEMPERATURE)
                .ifPresent(text -> set(rig, "temperature", text, changes));
        if (changes.isEmpty()) {
            return source;
        }
        return switch (source.read().with(changes)) {
            case RigReading.Edit.Changed(var reading, var _) -> {
                if (reading.rig().isEmpty()) {
                    throw new UsageException(
                            "the rig does not read with these conditions: "
                                    + ProblemReport.write(
                                                    source.file().named(),
                                                    "",
                                                    reading.problems(),
                                                    options.look())
                                            .strip());
                }
                yield new RigSource(source.file(), reading.counting(rig.corrections()));
            }
            case RigReading.Edit.Refused(var change, var reason) ->
                    throw new UsageException(change.at() + " cannot be set: " + reason);
        };
    }

    private static void set(Rig rig, String key, String value, List<Change> changes) {
        Set<RigPath> groups = new LinkedHashSet<>();
        rig.packs().stream().map(Pack::declaredAt).forEach(groups::add);
        groups.forEach(group -> changes.add(new Change.Set(group.child(key), value)));
    }

    Optional<? extends Answer> ask(
            String question, RigSource source, Rig rig, Settings settings, Work work) {
        return switch (question) {
            case LIFT -> LiftQuestion.ask(rig, source.digest(), settings, work);
            case ENDURANCE ->
                    EnduranceQuestion.ask(
                            rig,
                            source.digest(),
                            task(rig, new Task.Hover(), HOP_PAUSE_S),
                            settings,
                            work);
            case BALANCE ->
                    BalanceQuestion.ask(
                            rig,
                            source.digest(),
                            settings,
                            options.searches(),
                            options.text(Grammar.MEASURED).map(named -> turning(named, rig)),
                            work);
            case HEAT ->
                    HeatQuestion.ask(
                            rig,
                            source.digest(),
                            heat.from(
                                    task(
                                            rig,
                                            HeatQuestion.demanded(rig),
                                            rig.demands().pause().si()),
                                    rig),
                            settings,
                            work);
            case FAILURES -> FailuresQuestion.ask(rig, source.digest(), failures(), settings, work);
            case RESTRAINT -> RestraintQuestion.ask(rig, source.digest(), settings, work);
            default -> throw new IllegalStateException("no question " + question);
        };
    }

    /** Asked among all questions, it leaves out what takes long. */
    private FailureCase failures() {
        FailureCase usual =
                options.question().isPresent() ? FailureCase.usual() : FailureCase.quick();
        return new FailureCase(
                options.pairs().orElse(usual.pairsShown()),
                options.has(Grammar.TRIPLES),
                usual.timelines());
    }

    /** What the options ask the packs to carry; else what the question itself takes. */
    private Task task(Rig rig, Task without, double usualPauseS) {
        Optional<String> trace = options.text(Grammar.TRACE);
        if (trace.isPresent()) {
            return new Task.Trace(read(trace.get(), rig));
        }
        if (options.hops().isPresent()) {
            return new Task.Hops(options.hops().getAsInt(), pauseS(usualPauseS));
        }
        return options.has(Grammar.FULL_THROTTLE) ? new Task.FullThrottle() : without;
    }

    private double pauseS(double usualS) {
        Optional<String> given = options.text(Grammar.PAUSE);
        if (given.isEmpty()) {
            return usualS;
        }
        String text = given.get();
        return switch (QuantityParser.parse(text, Dimensions.TIME)) {
            case Reading.Parsed<Quantity>(var quantity) when quantity.si() >= 0 -> quantity.si();
            case Reading.Parsed<Quantity> _ ->
                    throw new UsageException(Grammar.PAUSE + " is a time, such as 60 s");
            case Reading.Refused<Quantity> _ ->
                    throw new UsageException(
                            Grammar.PAUSE
                                    + " is a time with its unit, such as \"90 s\", not "
                                    + text);
        };
    }

    private TurningTable turning(String named, Rig rig) {
        var file = new UserFile(named, UserFile.path(named, around.folder()));
        List<String> fans = rig.fans().stream().map(fan -> fan.id().text()).toList();
        return switch (TableReader.turning(named, file.read(), fans)) {
            case TableReading.Whole<TurningTable>(var table) -> table;
            case TableReading.Broken<TurningTable>(var problems) ->
                    throw new UsageException(
                            "the measured turning cannot be used.\n"
                                    + ProblemReport.write(named, "", problems, options.look())
                                            .strip());
        };
    }

    private ThrottleTrace read(String named, Rig rig) {
        var file = new UserFile(named, UserFile.path(named, around.folder()));
        List<String> groups = rig.control().groups().stream().map(Control.Group::name).toList();
        return switch (TableReader.trace(named, file.read(), groups)) {
            case TableReading.Whole<ThrottleTrace>(var table) -> table;
            case TableReading.Broken<ThrottleTrace>(var problems) ->
                    throw new UsageException(
                            "the trace cannot be used.\n"
                                    + ProblemReport.write(named, "", problems, options.look())
                                            .strip());
        };
    }
}

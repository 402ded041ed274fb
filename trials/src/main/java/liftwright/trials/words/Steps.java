package liftwright.trials.words;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import liftwright.answer.Fields;
import liftwright.answer.Section.Card.Block;
import liftwright.answer.Section.Card.Style;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.quantity.Measure;
import liftwright.trials.Abort;
import liftwright.trials.Channel;
import liftwright.trials.Reading;
import liftwright.trials.Run;
import liftwright.trials.predict.Stopping;

/** What is ordered, what should be read, and with what. */
final class Steps {

    /** Heads the steps that are left out. */
    static final String NOT_RUN = "Planned steps that this rig must not run";

    private Steps() {}

    static List<Block> blocks(CardFacts facts) {
        List<Block> blocks = new ArrayList<>();
        instruments(facts).ifPresent(blocks::add);
        facts.planned().run().ifPresent(run -> blocks.addAll(steps(facts, run)));
        if (facts.predicted().stream().anyMatch(step -> !step.isEmpty())) {
            blocks.add(readings(facts));
        }
        notes(facts).ifPresent(blocks::add);
        return blocks;
    }

    private static Optional<Block> instruments(CardFacts facts) {
        Map<Channel.Instrument, List<String>> read = new LinkedHashMap<>();
        facts.predicted().forEach(step -> step.forEach(one -> add(one.channel(), read)));
        facts.aborts().stream().map(Abort::channel).forEach(channel -> add(channel, read));
        if (read.isEmpty()) {
            return Optional.empty();
        }
        List<List<Value>> rows = new ArrayList<>();
        read.forEach(
                (instrument, channels) -> {
                    rows.add(
                            List.of(
                                    Value.words("instrument", instrument.words()),
                                    Value.words("instrument-reads", some(channels)),
                                    error(instrument, channels.getFirst()),
                                    instrument.errorShare() > 0
                                            ? Value.of("instrument-share", instrument.errorShare())
                                            : Value.words("instrument-share", "none"),
                                    Value.words("instrument-origin", instrument.origin())));
                });
        return Optional.of(
                CardText.rows(
                        facts.planned().id(),
                        "instruments",
                        "Instruments, and what error they may have (95 %)",
                        List.of(
                                "instrument",
                                "instrument-reads",
                                "instrument-error",
                                "instrument-share",
                                "instrument-origin"),
                        rows));
    }

    /** The error of a temperature is a difference of two. */
    private static Value error(Channel.Instrument instrument, String field) {
        if (!(instrument.errorSi() > 0)) {
            return Value.words("instrument-error", "none");
        }
        return Value.of(
                Fields.of(field).measure() == Measure.TEMPERATURE ? "instrument-kelvin" : field,
                instrument.errorSi());
    }

    private static void add(Channel channel, Map<Channel.Instrument, List<String>> read) {
        List<String> fields = read.computeIfAbsent(channel.instrument(), _ -> new ArrayList<>());
        if (!fields.contains(channel.field())) {
            fields.add(channel.field());
        }
    }

    private static String some(List<String> fields) {
        return String.join(", ", fields.stream().map(id -> Fields.of(id).label()).toList());
    }

    private static List<Block> steps(CardFacts facts, Run run) {
        List<List<Value>> rows = new ArrayList<>();
        List<String> cut = new ArrayList<>();
        for (int k = 0; k < run.steps().size(); k++) {
            Run.Step step = run.steps().get(k);
            if (facts.cut(k).isPresent()) {
                cut.add("Step " + (k + 1) + ": " + facts.cut(k).get() + ".");
                continue;
            }
            rows.add(
                    List.of(
                            Value.of("card-step", k + 1),
                            ordered(step.level()),
                            Value.of("step-rise", step.riseS()),
                            Value.of("step-hold", step.holdS()),
                            Value.words("done", "")));
        }
        List<Block> blocks = new ArrayList<>();
        if (!cut.isEmpty()) {
            blocks.add(CardText.lines(NOT_RUN, Style.PLAIN, cut));
        }
        if (!rows.isEmpty()) {
            blocks.add(
                    CardText.rows(
                            facts.planned().id(),
                            "steps",
                            "Steps, in this order, each called before it is done",
                            List.of("card-step", "ordered", "step-rise", "step-hold", "done"),
                            rows));
        }
        return blocks;
    }

    /** How long a stop takes, and what else is to be known of the numbers. */
    private static Optional<Block> notes(CardFacts facts) {
        if (facts.predictions().steps().isEmpty()) {
            return Optional.empty();
        }
        List<Sentence> lines = new ArrayList<>();
        Stopping stopping = facts.predictions().stopping();
        lines.add(
                Sentence.words("A stop takes ")
                        .then(Measure.TIME, stopping.totalS())
                        .then(
                                " from the reading on ("
                                        + stopping.words()
                                        + "); rotors coast after it."));
        facts.predictions().notes().forEach(note -> lines.add(Sentence.words(note)));
        for (int k = 0; k < facts.predictions().steps().size(); k++) {
            for (String note : facts.predictions().steps().get(k).notes()) {
                lines.add(Sentence.words("Step " + (k + 1) + ": " + note));
            }
        }
        return Optional.of(new Block.Lines("What these numbers rest on", Style.PLAIN, lines));
    }

    private static Value ordered(Run.Level level) {
        return switch (level) {
            case Run.Level.Throttle(double share) -> Value.of("ordered-throttle", share);
            case Run.Level.OfWeight(double share) -> Value.of("ordered-weight", share);
        };
    }

    private static Block readings(CardFacts facts) {
        List<List<Value>> rows = new ArrayList<>();
        for (int k = 0; k < facts.predicted().size(); k++) {
            for (Reading reading : facts.predicted().get(k)) {
                rows.add(
                        List.of(
                                Value.of("card-step", k + 1),
                                Value.words("read-of", channel(reading.channel())),
                                Value.of(
                                        reading.channel().field(),
                                        reading.expectedSi(),
                                        reading.band()),
                                Value.words("read", "")));
            }
        }
        return CardText.rows(
                facts.planned().id(),
                "readings",
                "What should be read at the end of each step, and what was",
                List.of("card-step", "read-of", "should-read", "read"),
                rows);
    }

    /** What is read of what. */
    static String channel(Channel channel) {
        String label = Fields.of(channel.field()).label();
        return channel.part().isEmpty() ? label : label + ", " + channel.part();
    }
}

package liftwright.app;

import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import liftwright.app.record.PassWriting;
import liftwright.app.record.TrialsRecord;
import liftwright.trials.CardId;
import liftwright.trials.ask.Trials;
import liftwright.trials.ask.TrialsCase;
import liftwright.trials.evidence.Gate;
import liftwright.trials.evidence.Pass;

/** {@code card pass}: writes down what came of a card, on the build that the rig file is now. */
record CardPass(Options options, Consumer<String> say) {

    /**
     * @throws UsageException when something is missing, or when a closed card shall be passed
     */
    Exit write(TrialsRecord record, TrialsCase about, Trials trials, List<String> rest) {
        if (rest.size() != 1) {
            throw new UsageException(
                    "card pass RIG CARD: name one card. See: liftwright card --help");
        }
        CardId id = CardVerb.named(trials, rest.getFirst());
        Pass.Outcome outcome = outcome();
        var said =
                new PassWriting.Said(
                        outcome,
                        by(),
                        options.cleanRuns().orElse(outcome == Pass.Outcome.PASSED ? 1 : 0),
                        options.text(CardGrammar.NOTE).orElse(""));
        try {
            return told(id, record, new PassWriting(record, about, trials).write(id, said));
        } catch (IOException e) {
            throw new UsageException("the pass could not be written: " + e.getMessage());
        }
    }

    private Exit told(CardId id, TrialsRecord record, PassWriting.Outcome became) {
        return switch (became) {
            case PassWriting.Outcome.Written(Pass pass, int needed) -> {
                boolean few = pass.isPassed() && pass.cleanRuns() < needed;
                say.accept(
                        "wrote number "
                                + pass.number()
                                + " into "
                                + record.folder().folder().getFileName()
                                + ": "
                                + id
                                + " "
                                + pass.outcome().word()
                                + (few ? "; " + needed + " clean runs make a pass" : ""));
                yield Exit.CLEAR;
            }
            case PassWriting.Outcome.Refused(var reasons) ->
                    throw new UsageException(
                            id
                                    + " is closed today, so nothing done on it counts as passed: "
                                    + Gate.words(reasons)
                                    + ". What went wrong can be written down with "
                                    + CardGrammar.OUTCOME);
        };
    }

    private List<String> by() {
        return options.text(CardGrammar.BY)
                .map(names -> Arrays.stream(names.split(",", -1)).map(String::strip).toList())
                .filter(names -> names.stream().noneMatch(String::isBlank))
                .orElseThrow(
                        () ->
                                new UsageException(
                                        "who answers for it? Say "
                                                + CardGrammar.BY
                                                + " NAME, several with commas"));
    }

    private Pass.Outcome outcome() {
        String word = options.text(CardGrammar.OUTCOME).orElse(Pass.Outcome.PASSED.word());
        return Arrays.stream(Pass.Outcome.values())
                .filter(one -> one.word().equals(word))
                .findFirst()
                .orElseThrow(
                        () ->
                                new UsageException(
                                        CardGrammar.OUTCOME
                                                + " is "
                                                + Arrays.stream(Pass.Outcome.values())
                                                        .map(Pass.Outcome::word)
                                                        .collect(Collectors.joining(", "))
                                                + ", not "
                                                + word));
    }
}

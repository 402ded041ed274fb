package liftwright.app.record;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import liftwright.trials.CardId;
import liftwright.trials.Planned;
import liftwright.trials.ask.Trials;
import liftwright.trials.ask.TrialsCase;
import liftwright.trials.evidence.Gate;
import liftwright.trials.evidence.Pass;

/**
 * Writes down what came of a card, on the build that the rig file is now.
 *
 * @param record of the rig
 * @param about the rig as it was read
 * @param trials of it
 */
public record PassWriting(TrialsRecord record, TrialsCase about, Trials trials) {

    /**
     * What somebody says of a card.
     *
     * @param outcome what came of it
     * @param by who answers for it, at least one
     * @param cleanRuns in a row; at least 1 where it passed
     * @param note may be empty
     */
    public record Said(Pass.Outcome outcome, List<String> by, int cleanRuns, String note) {
        public Said {
            by = List.copyOf(by);
        }
    }

    /** What became of it. */
    public sealed interface Outcome {

        /**
         * @param pass as it was written
         * @param needed clean runs that make a pass
         */
        record Written(Pass pass, int needed) implements Outcome {}

        /**
         * A closed card is not passed; what went wrong on it can be written down all the same.
         *
         * @param reasons why it is closed
         */
        record Refused(List<Gate.Reason> reasons) implements Outcome {
            public Refused {
                reasons = List.copyOf(reasons);
            }
        }
    }

    /**
     * Writes it.
     *
     * @param id a card of the programme
     * @throws IOException when the disk does not take it; then nothing half is there
     * @throws IllegalArgumentException where this rig has no such card, or nobody signs
     */
    public Outcome write(CardId id, Said said) throws IOException {
        Planned planned =
                trials.programme()
                        .card(id)
                        .orElseThrow(
                                () -> new IllegalArgumentException("this rig has no card " + id));
        if (said.outcome() == Pass.Outcome.PASSED
                && trials.gate(planned) instanceof Gate.Closed(var reasons)) {
            return new Outcome.Refused(reasons);
        }
        Pass pass =
                new Pass(
                        1, // the folder gives it the next free one
                        id,
                        about.today(),
                        said.outcome(),
                        said.by(),
                        said.cleanRuns(),
                        about.rigDigest(),
                        about.rig().revision(),
                        proof(planned),
                        said.note(),
                        trials.inputs().restingOn(planned.basis()));
        return new Outcome.Written(record.folder().add(pass), planned.repeats());
    }

    private Optional<String> proof(Planned planned) {
        return planned.killProof()
                ? about.proof().map(proof -> proof.date() + " " + proof.logDigest())
                : Optional.empty();
    }
}

package liftwright.trials.ask;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import liftwright.answer.Section;
import liftwright.answer.Sentence;
import liftwright.numerics.Work;
import liftwright.review.Settings;
import liftwright.trials.CardKind;
import liftwright.trials.Planned;
import liftwright.trials.TestCard;
import liftwright.trials.evidence.Standing.State;
import liftwright.trials.evidence.StateWords;
import liftwright.trials.measure.Measured;
import liftwright.trials.measure.Measuring;
import liftwright.trials.predict.Conditions;
import liftwright.trials.predict.Predictions;
import liftwright.trials.predict.StepReadings;
import liftwright.trials.words.CardFacts;
import liftwright.trials.words.CardText;

/** Computes what stands on a card. */
record CardMaker(TrialsCase about, Settings settings) {

    /** What the table of a thrust card tells of a fan without the wires of the rig. */
    private static final Set<String> IN_THE_TABLE =
            Set.of("card-thrust", "card-mount-thrust", "card-fan-speed", "card-pack-current");

    /**
     * @param card with all its blocks
     * @param draws its bands rest on
     */
    record Made(TestCard card, int draws) {}

    Optional<Made> make(CardStanding card, Work work) {
        Planned planned = card.planned();
        boolean told = planned.id().kind() == CardKind.THRUST;
        Optional<Predictions> predicted =
                Predictions.of(
                                about.rig(),
                                planned,
                                Conditions.DECLARED,
                                settings.seed(),
                                settings.threads(),
                                work)
                        .map(all -> told ? all.withoutReadings(IN_THE_TABLE) : all);
        if (predicted.isEmpty()) {
            return Optional.empty();
        }
        Optional<Measured> measured =
                Measuring.of(
                        about.rig(),
                        planned,
                        about.stand(),
                        settings.seed(),
                        settings.threads(),
                        work);
        if (work.stopped()) {
            return Optional.empty();
        }
        var readings = predicted.get().steps().stream().map(StepReadings::readings).toList();
        List<Section.Card.Block> blocks =
                CardText.of(
                        new CardFacts(
                                about.rig(),
                                about.rigDigest(),
                                planned,
                                changed(card.state()),
                                StateWords.day(card.state()).map(Object::toString),
                                about.settings().isEmpty()
                                        ? Optional.empty()
                                        : Optional.of(settingsInWords()),
                                predicted.get(),
                                measured.map(Measured::blocks).orElse(List.of())));
        return Optional.of(
                new Made(
                        new TestCard(planned, readings, predicted.get().aborts(), blocks),
                        Math.max(
                                predicted.get().draws(),
                                measured.map(CardMaker::draws).orElse(0))));
    }

    /** Draws behind the bands of a card on which nothing runs. */
    private static int draws(Measured measured) {
        return measured.readings().stream()
                .mapToInt(reading -> reading.band().draws())
                .max()
                .orElse(0);
    }

    private String settingsInWords() {
        return about.settings().entrySet().stream()
                .sorted(java.util.Map.Entry.comparingByKey())
                .map(entry -> entry.getKey() + " " + entry.getValue())
                .collect(java.util.stream.Collectors.joining(", "));
    }

    private static List<CardFacts.Changed> changed(State state) {
        return state instanceof State.Voided(var _, var differences)
                ? differences.stream()
                        .map(one -> new CardFacts.Changed(one.path(), one.from(), one.to()))
                        .toList()
                : List.of();
    }

    static Section.Card section(CardStanding card, TestCard made) {
        Planned planned = card.planned();
        return new Section.Card(
                planned.id().text(),
                planned.id().kind().title()
                        + (planned.id().subject().isEmpty() ? "" : ", " + planned.id().subject()),
                card.word(),
                Sentence.words(planned.purpose()),
                made.blocks());
    }
}

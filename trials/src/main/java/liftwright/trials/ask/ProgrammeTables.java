package liftwright.trials.ask;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import liftwright.answer.Section;
import liftwright.answer.Value;
import liftwright.trials.CardId;
import liftwright.trials.evidence.Inputs.Difference;
import liftwright.trials.evidence.Reproof;
import liftwright.trials.evidence.Standing.State;
import liftwright.trials.evidence.StateWords;

/** The programme of a rig as tables. */
final class ProgrammeTables {

    private ProgrammeTables() {}

    /** Every card, in an order in which they can be done. */
    static Section.Table programme(List<CardStanding> cards) {
        return new Section.Table(
                "programme",
                "The cards of this rig",
                List.of(
                        "card",
                        "card-title",
                        "rung",
                        "card-state",
                        "card-why",
                        "passed-on",
                        "passed-until",
                        "card-minutes"),
                cards.stream().map(ProgrammeTables::row).toList());
    }

    private static List<Value> row(CardStanding card) {
        CardId id = card.planned().id();
        return List.of(
                Value.words("card", id.text()),
                Value.words("card-title", id.kind().title()),
                Value.words("rung", id.kind().rung().words()),
                Value.words("card-state", card.word()),
                Value.words("card-why", card.why()),
                Value.words("passed-on", day(StateWords.day(card.state()))),
                Value.words("passed-until", day(card.until())),
                Value.of("card-minutes", card.planned().minutes()));
    }

    private static String day(Optional<LocalDate> day) {
        return day.map(LocalDate::toString).orElse("");
    }

    /** What changed since cards were passed; empty where every pass stands. */
    static Optional<Section.Table> voided(List<CardStanding> cards) {
        List<List<Value>> rows = new ArrayList<>();
        for (CardStanding card : cards) {
            if (card.state() instanceof State.Voided(var _, var differences)) {
                differences.forEach(one -> rows.add(changed(card.planned().id(), one)));
            }
        }
        return rows.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        new Section.Table(
                                "voided",
                                "What changed since cards were passed",
                                List.of("card", "input", "input-was", "input-is"),
                                rows));
    }

    private static List<Value> changed(CardId id, Difference one) {
        return List.of(
                Value.words("card", id.text()),
                Value.words("input", one.path()),
                Value.words("input-was", one.from()),
                Value.words("input-is", one.to()));
    }

    /** The cards to do again, in their order. */
    static Section.Table reproof(List<CardStanding> cards, CardId goal, Reproof cheapest) {
        return new Section.Table(
                "reproof",
                "The shortest way to " + goal.text(),
                List.of("card", "card-title", "card-state", "card-minutes"),
                cheapest.order().stream()
                        .flatMap(
                                id -> cards.stream().filter(card -> card.planned().id().equals(id)))
                        .map(
                                card ->
                                        List.of(
                                                Value.words("card", card.planned().id().text()),
                                                Value.words(
                                                        "card-title",
                                                        card.planned().id().kind().title()),
                                                Value.words("card-state", card.word()),
                                                Value.of("card-minutes", card.planned().minutes())))
                        .toList());
    }
}

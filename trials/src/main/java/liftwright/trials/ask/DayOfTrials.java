package liftwright.trials.ask;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import liftwright.answer.Answer;
import liftwright.numerics.Work;
import liftwright.plant.Plant;
import liftwright.review.Settings;
import liftwright.trials.Abort;
import liftwright.trials.CardId;
import liftwright.trials.Planned;
import liftwright.trials.day.Day;
import liftwright.trials.day.DayCard;
import liftwright.trials.day.HeatWait;
import liftwright.trials.day.RunCharge;
import liftwright.trials.day.TodaysPlan;
import liftwright.trials.evidence.Gate;
import liftwright.trials.evidence.KillsToday;
import liftwright.trials.evidence.Standing;
import liftwright.trials.predict.Conditions;
import liftwright.trials.predict.Predictions;
import liftwright.trials.programme.Missing;
import liftwright.trials.programme.Programme;

/**
 * Plans one day. What the review says and where to stop is computed only for cards that nothing
 * else forbids, since it costs most.
 */
final class DayOfTrials {

    private static final String HEAT = "heat";

    private final TrialsCase about;
    private final Settings settings;
    private final Programme programme;
    private final Standing standing;
    private final Function<String, Answer> review;
    private final Day day;
    private final Map<CardId, Map<String, Double>> charges = new HashMap<>();

    DayOfTrials(
            TrialsCase about,
            Settings settings,
            Programme programme,
            Standing standing,
            Function<String, Answer> review,
            Day day) {
        this.about = about;
        this.settings = settings;
        this.programme = programme;
        this.standing = standing;
        this.review = review;
        this.day = day;
    }

    /** The plan; empty when it was stopped. */
    Optional<TodaysPlan> plan(Work work) {
        var charge = new RunCharge(Plant.assemble(about.rig()));
        work.stage("runs of the day", programme.cards().size());
        for (Planned card : programme.cards()) {
            if (work.stopped()) {
                return Optional.empty();
            }
            charges.put(card.id(), charge.of(card));
            work.done(1);
        }
        TodaysPlan cheap = plan(Set.of(), Map.of(), OptionalDouble.empty());
        Set<String> asked = new TreeSet<>();
        cheap.allowed().forEach(one -> asked.addAll(one.card().planned().questions()));
        OptionalDouble wait =
                asked.contains(HEAT) ? HeatWait.of(review.apply(HEAT)) : OptionalDouble.empty();
        TodaysPlan judged = plan(asked, Map.of(), wait);
        Map<CardId, List<Abort>> aborts = new HashMap<>();
        for (TodaysPlan.Allowed one : judged.allowed()) {
            Planned card = one.card().planned();
            Optional<Predictions> told =
                    Predictions.of(
                            about.rig(),
                            card,
                            conditions(),
                            settings.seed(),
                            settings.threads(),
                            work);
            if (told.isEmpty() || work.stopped()) {
                return Optional.empty();
            }
            aborts.put(card.id(), told.get().aborts());
        }
        return Optional.of(plan(asked, aborts, wait));
    }

    private TodaysPlan plan(
            Set<String> asked, Map<CardId, List<Abort>> aborts, OptionalDouble wait) {
        return TodaysPlan.of(
                about.rig(),
                day,
                programme.cards().stream().map(card -> card(card, asked, aborts)).toList(),
                about.proof(),
                about.rigDigest(),
                wait);
    }

    private DayCard card(Planned card, Set<String> asked, Map<CardId, List<Abort>> aborts) {
        List<String> closed = new ArrayList<>(about.unread());
        Missing.of(about.rig(), card).forEach(missing -> closed.add(missing.words()));
        if (closed.isEmpty() && asked.containsAll(card.questions())) {
            Gate gate =
                    Gate.of(
                            card,
                            everythingPassed(),
                            new Gate.Conditions(
                                    _ -> List.of(),
                                    new KillsToday(Set.of("any"), Set.of("any"), List.of()),
                                    List.of(),
                                    review));
            if (gate instanceof Gate.Closed(var reasons)) {
                reasons.forEach(reason -> closed.add(reason.words()));
            }
        }
        return new DayCard(
                card,
                standing.isPassed(card.id()),
                closed,
                charges.getOrDefault(card.id(), Map.of()),
                aborts.getOrDefault(card.id(), List.of()));
    }

    /** So that only the review can close a card: its needs are looked at by the plan of the day. */
    private Standing everythingPassed() {
        var states = new java.util.TreeMap<CardId, Standing.State>();
        programme
                .cards()
                .forEach(
                        card ->
                                states.put(
                                        card.id(),
                                        new Standing.State.Passed(
                                                about.today(), Optional.empty(), card.repeats())));
        return new Standing(about.today(), states);
    }

    /** Air and packs as they were found. */
    private Conditions conditions() {
        Map<String, Conditions.Found> packs = new HashMap<>();
        day.packs()
                .forEach(
                        (id, pack) ->
                                packs.put(
                                        id,
                                        new Conditions.Found(
                                                OptionalDouble.of(pack.charge()),
                                                OptionalDouble.of(pack.kelvin()))));
        return new Conditions(OptionalDouble.of(day.airK()), packs);
    }
}

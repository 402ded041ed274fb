package liftwright.trials.day;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import liftwright.rig.Rig;
import liftwright.trials.CardId;
import liftwright.trials.CardKind;
import liftwright.trials.Planned;
import liftwright.trials.Run;
import liftwright.trials.day.Reason.Rule;
import liftwright.trials.day.TodaysPlan.Allowed;
import liftwright.trials.day.TodaysPlan.Refused;

/**
 * Asks the cards one after the other, each rung after the one below it, whether the day allows them
 * after all that was allowed before. The proof of the kills comes first.
 */
final class Planner {

    /** So many aborted runs end the day; common practice. */
    static final int MOST_ABORTS = 2;

    private static final double DAY_S = 86_400;

    private final Rig rig;
    private final Day day;
    private final List<DayCard> cards;
    private final double waitS;
    private final PackRules packs;
    private final Set<CardId> passed = new HashSet<>();
    private final List<Allowed> allowed = new ArrayList<>();
    private final List<Refused> refused = new ArrayList<>();
    private boolean killsProved;
    private double clockS;
    private double coolFromS = Double.NEGATIVE_INFINITY;

    Planner(Rig rig, Day day, List<DayCard> cards, boolean killsProved, double waitS) {
        this.rig = rig;
        this.day = day;
        this.cards = cards;
        this.killsProved = killsProved;
        this.waitS = waitS;
        packs = new PackRules(rig, day);
        clockS = day.start().toSecondOfDay();
        cards.stream().filter(DayCard::passed).forEach(card -> passed.add(card.planned().id()));
    }

    List<Allowed> allowed() {
        return allowed;
    }

    List<Refused> refused() {
        return refused;
    }

    void plan() {
        Optional<DayCard> first = killsProved ? Optional.empty() : dailyProof();
        first.ifPresent(this::ask);
        cards.stream()
                .sorted(Comparator.comparing((DayCard card) -> card.planned().id().kind().rung()))
                .filter(card -> !card.passed())
                .filter(card -> first.isEmpty() || !card.equals(first.get()))
                .forEach(this::ask);
    }

    /** The kill card that stops most of what its passes let turn: the last that can be done now. */
    private Optional<DayCard> dailyProof() {
        return cards.stream()
                .filter(card -> card.planned().id().kind() == CardKind.KILL)
                .filter(card -> unmet(card.planned()).isEmpty())
                .reduce((before, after) -> after);
    }

    private void ask(DayCard card) {
        Planned planned = card.planned();
        List<Reason> reasons = new ArrayList<>();
        standing(card, reasons);
        weather(planned, reasons);
        List<String> roles = Crewing.needed(rig, planned);
        Optional<Map<String, String>> people = people(roles, reasons);
        int runs = packs.runs(card, reasons);
        double pauseS = isHot(planned) ? Math.max(0, coolFromS + waitS - clockS) : 0;
        double beginS = clockS + pauseS;
        double endS = beginS + lengthS(planned, Math.max(1, runs));
        time(card, endS, reasons);
        if (!reasons.isEmpty()) {
            refused.add(new Refused(card, reasons));
            return;
        }
        packs.take(card, runs);
        clockS = endS;
        coolFromS = isHot(planned) ? endS : coolFromS;
        Allowed one = new Allowed(card, pauseS, beginS, endS, runs, people.orElseThrow());
        allowed.add(one);
        if (one.passes()) {
            passed.add(planned.id());
            killsProved |= planned.id().kind() == CardKind.KILL;
        }
    }

    private void standing(DayCard card, List<Reason> reasons) {
        if (card.turns() && (day.aborts() >= MOST_ABORTS || day.unexplained())) {
            reasons.add(
                    new Reason(
                            Rule.STOPPED,
                            day.unexplained()
                                    ? "something happened today that nobody can explain"
                                    : day.aborts() + " runs were aborted today"));
        }
        card.closedBy().forEach(why -> reasons.add(new Reason(Rule.CLOSED, why)));
        for (Set<CardId> group : unmet(card.planned())) {
            reasons.add(
                    new Reason(
                            Rule.NEEDS,
                            "needs "
                                    + group.stream()
                                            .sorted()
                                            .map(CardId::text)
                                            .collect(Collectors.joining(" or "))));
        }
        if (card.planned().killProof() && !killsProved) {
            reasons.add(new Reason(Rule.KILLS, "the kills are not proved today"));
        }
    }

    private List<Set<CardId>> unmet(Planned card) {
        return card.needs().stream()
                .filter(group -> group.stream().noneMatch(passed::contains))
                .toList();
    }

    private void weather(Planned card, List<Reason> reasons) {
        if (!Weather.matters(card)) {
            return;
        }
        if (day.windMps() > Weather.MOST_WIND_MPS) {
            reasons.add(
                    new Reason(
                            Rule.WIND,
                            String.format(
                                    Locale.ROOT,
                                    "wind %.1f m/s, at first at most %.0f m/s",
                                    day.windMps(),
                                    Weather.MOST_WIND_MPS)));
        }
        if (day.gustMps() > Weather.MOST_GUST_MPS) {
            reasons.add(
                    new Reason(
                            Rule.WIND,
                            String.format(
                                    Locale.ROOT,
                                    "gusts of %.1f m/s, at first at most %.0f m/s",
                                    day.gustMps(),
                                    Weather.MOST_GUST_MPS)));
        }
    }

    private Optional<Map<String, String>> people(List<String> roles, List<Reason> reasons) {
        if (day.people().isEmpty()) {
            reasons.add(new Reason(Rule.PEOPLE, "nobody is there"));
            return Optional.empty();
        }
        List<String> missing = Crewing.missing(roles, day.people());
        Optional<Map<String, String>> given = Crewing.assign(roles, day.people());
        if (!missing.isEmpty()) {
            reasons.add(new Reason(Rule.PEOPLE, "nobody there for: " + String.join(", ", missing)));
        } else if (given.isEmpty()) {
            reasons.add(
                    new Reason(
                            Rule.PEOPLE,
                            "too few people: each of "
                                    + String.join(", ", roles)
                                    + " is a person's only task"));
        }
        return given;
    }

    private void time(DayCard card, double endS, List<Reason> reasons) {
        double homeS = Math.min(DAY_S, day.start().toSecondOfDay() + day.hoursS());
        if (endS > homeS) {
            reasons.add(
                    new Reason(
                            Rule.HOURS,
                            "would end at " + clock(endS) + ", the crew at " + clock(homeS)));
        }
        if (card.turns() && endS > day.lightUntil().toSecondOfDay()) {
            reasons.add(
                    new Reason(
                            Rule.LIGHT,
                            "would end at "
                                    + clock(endS)
                                    + ", the light at "
                                    + clock(day.lightUntil().toSecondOfDay())));
        }
    }

    /** Setting up and running as usual, or as long as runs with their pauses take. */
    private double lengthS(Planned card, int runs) {
        double runS =
                card.run().stream()
                        .flatMap(run -> run.steps().stream())
                        .mapToDouble(step -> step.riseS() + step.holdS())
                        .sum();
        double between = isHot(card) ? waitS : 0;
        return Math.max(60 * card.minutes(), runs * runS + (runs - 1) * between);
    }

    /** Whether a run warms parts so much that the next has to wait: half throttle or a lift. */
    static boolean isHot(Planned card) {
        return card.run().stream()
                .flatMap(run -> run.steps().stream())
                .anyMatch(
                        step ->
                                switch (step.level()) {
                                    case Run.Level.Throttle(double share) -> share >= 0.5;
                                    case Run.Level.OfWeight _ -> true;
                                });
    }

    /** A time of the day; beyond midnight it begins again. */
    static String clock(double s) {
        long minutes = Math.round(s / 60) % (24 * 60);
        return String.format(Locale.ROOT, "%02d:%02d", minutes / 60, minutes % 60);
    }
}

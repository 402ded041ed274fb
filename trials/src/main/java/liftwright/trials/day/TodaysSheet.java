package liftwright.trials.day;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import liftwright.answer.Fields;
import liftwright.answer.Section;
import liftwright.answer.Section.Card.Block;
import liftwright.answer.Section.Card.Style;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.quantity.Measure;
import liftwright.trials.Abort;
import liftwright.trials.CardId;
import liftwright.trials.day.TodaysPlan.Allowed;
import liftwright.trials.day.TodaysPlan.Refused;
import liftwright.trials.proof.Heights;

/** The sheet of a day: one page to print, to sign and to work by. */
public final class TodaysSheet {

    /** Of a card no more abort values are repeated; the card has all of them. */
    private static final int MOST_ABORTS_EACH = 3;

    /** Lines of abort values, and of what is not allowed: the page is one. */
    private static final int MOST_ABORT_LINES = 3;

    private static final int MOST_REFUSED_LINES = 3;

    /** So many cards are named where many are refused for one reason. */
    private static final int MOST_NAMED = 4;

    private TodaysSheet() {}

    /**
     * The sheet.
     *
     * @param heights what the measured kills allow; empty where none stand
     */
    public static Section.Card of(TodaysPlan plan, Optional<Heights> heights) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Lines("The day", Style.PLAIN, day(plan, heights)));
        if (plan.allowed().isEmpty()) {
            blocks.add(
                    new Block.Lines(
                            "In this order",
                            Style.PLAIN,
                            List.of(Sentence.words("No card is allowed today."))));
        } else {
            blocks.add(new Block.Rows(order(plan)));
        }
        List<Sentence> aborts = aborts(plan);
        if (!aborts.isEmpty()) {
            blocks.add(new Block.Lines("Abort at the latest, in today's air", Style.PLAIN, aborts));
        }
        if (!plan.refused().isEmpty()) {
            blocks.add(new Block.Lines("Not today", Style.PLAIN, refused(plan)));
        }
        blocks.add(new Block.Lines("Stop for the day when", Style.PLAIN, stops(plan)));
        blocks.add(new Block.Lines("Signed before anything runs", Style.WRITE, signed()));
        return new Section.Card(
                "today",
                "Today's sheet, " + plan.day().date(),
                plan.allowed().isEmpty() ? "closed" : "open",
                Sentence.words("What the rules of the day allow, in order. Anyone may stop."),
                blocks);
    }

    private static List<Sentence> day(TodaysPlan plan, Optional<Heights> heights) {
        Day day = plan.day();
        List<Sentence> lines = new ArrayList<>();
        lines.add(
                Sentence.words("Air ")
                        .then(Measure.TEMPERATURE, day.airK())
                        .then(", wind ")
                        .then(Measure.SPEED, day.windMps())
                        .then(", gusts ")
                        .then(Measure.SPEED, day.gustMps())
                        .then(
                                "; crew from "
                                        + day.start()
                                        + " to "
                                        + Planner.clock(day.start().toSecondOfDay() + day.hoursS())
                                        + ", light until "
                                        + day.lightUntil()
                                        + "; "
                                        + day.packs().size()
                                        + " of "
                                        + plan.rig().packs().size()
                                        + " packs ready."));
        lines.add(kills(plan));
        heights.ifPresent(told -> lines.add(heights(told)));
        lines.add(
                Sentence.words("Between hot runs wait ")
                        .then(Measure.TIME, plan.cooling().s())
                        .then(": " + plan.cooling().origin() + "."));
        watched(day).ifPresent(lines::add);
        return lines;
    }

    private static Sentence kills(TodaysPlan plan) {
        if (plan.killDoubts().isEmpty()) {
            return Sentence.words("The kills are proved today.");
        }
        int more = plan.killDoubts().size() - 1;
        return Sentence.words(
                "Prove the kills first: "
                        + plan.killDoubts().getFirst()
                        + (more > 0 ? "; and " + more + " more" : "")
                        + ".");
    }

    private static Sentence heights(Heights heights) {
        Sentence keepOut =
                heights.keepOutM()
                        .map(
                                metres ->
                                        Sentence.words(" Nobody but the crew nearer than ")
                                                .then(Measure.LENGTH, metres)
                                                .then("."))
                        .orElse(Sentence.start());
        Sentence height =
                heights.allowedM()
                        .map(
                                most ->
                                        Sentence.words("Untied no higher than ")
                                                .then(
                                                        Measure.LENGTH,
                                                        Math.min(most, heights.demandedM()))
                                                .then("."))
                        .orElse(
                                Sentence.words(
                                        "Untied no height: a runaway ends harder than the limit"
                                                + " before a kill has acted."));
        return height.then(keepOut);
    }

    private static Optional<Sentence> watched(Day day) {
        List<String> watch =
                day.packs().entrySet().stream()
                        .filter(
                                pack ->
                                        pack.getValue()
                                                .spreadV()
                                                .filter(v -> v > PackRules.WATCHED_SPREAD_V)
                                                .filter(v -> v <= PackRules.MOST_SPREAD_V)
                                                .isPresent())
                        .map(Map.Entry::getKey)
                        .toList();
        return watch.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        Sentence.words(
                                        "Watch the cells of "
                                                + named(watch)
                                                + ": they differ by more than ")
                                .then(Measure.VOLTAGE, PackRules.WATCHED_SPREAD_V)
                                .then(" at rest."));
    }

    /** What is done, in order. */
    private static Section.Table order(TodaysPlan plan) {
        List<List<Value>> rows = new ArrayList<>();
        for (Allowed one : plan.allowed()) {
            rows.add(
                    List.of(
                            Value.words("day-begin", Planner.clock(one.beginS())),
                            Value.words("card", one.card().planned().id().text()),
                            Value.words("day-runs", runs(one)),
                            Value.of("pause-before", one.pauseS()),
                            Value.words("day-people", people(one))));
        }
        return new Section.Table(
                "today-order",
                "In this order",
                List.of("day-begin", "card", "day-runs", "pause-before", "day-people"),
                rows);
    }

    private static String runs(Allowed one) {
        int repeats = one.card().planned().repeats();
        return one.passes() ? Integer.toString(repeats) : one.runs() + " of " + repeats;
    }

    private static String people(Allowed one) {
        return String.join(
                ", ",
                new TreeMap<>(one.people())
                        .entrySet().stream()
                                .map(each -> each.getKey() + " " + each.getValue())
                                .toList());
    }

    private static List<Sentence> aborts(TodaysPlan plan) {
        List<Sentence> lines = new ArrayList<>();
        for (Allowed one : plan.allowed()) {
            List<Abort> known =
                    one.card().aborts().stream()
                            .filter(abort -> abort.value() instanceof Abort.Worth.At)
                            .sorted((a, b) -> Double.compare(secondsToLimit(a), secondsToLimit(b)))
                            .limit(MOST_ABORTS_EACH)
                            .toList();
            if (known.isEmpty()) {
                continue;
            }
            if (lines.size() == MOST_ABORT_LINES) {
                lines.add(Sentence.words("Those of the other cards stand on the cards."));
                return lines;
            }
            Sentence line = Sentence.words(one.card().planned().id().text() + ": ");
            for (int k = 0; k < known.size(); k++) {
                line = line.then(k > 0 ? ", " : "").then(abort(known.get(k)));
            }
            lines.add(line.then("."));
        }
        return lines;
    }

    private static double secondsToLimit(Abort abort) {
        return switch (abort.value()) {
            case Abort.Worth.At(var _, double s) -> s;
            case Abort.Worth.None _ -> Double.MAX_VALUE;
        };
    }

    private static Sentence abort(Abort abort) {
        return switch (abort.value()) {
            case Abort.Worth.At(double si, var _) ->
                    Sentence.words(
                                    label(abort)
                                            + abort.channel().part()
                                            + (abort.side() == Abort.Side.ABOVE
                                                    ? " above "
                                                    : " below "))
                            .then(abort.channel().measure(), si);
            case Abort.Worth.None(String reason) -> Sentence.words(reason);
        };
    }

    private static String label(Abort abort) {
        return Fields.find(abort.channel().field()).map(field -> field.label() + " ").orElse("");
    }

    /** Cards by what keeps them from today: the reason that most of them share stands first. */
    private static List<Sentence> refused(TodaysPlan plan) {
        Map<String, List<String>> byReason = new LinkedHashMap<>();
        for (Refused one : plan.refused()) {
            CardId id = one.card().planned().id();
            String first = one.reasons().getFirst().words();
            byReason.computeIfAbsent(first, _ -> new ArrayList<>()).add(id.text());
        }
        List<Sentence> lines = new ArrayList<>();
        int left = plan.refused().size();
        for (Map.Entry<String, List<String>> each :
                byReason.entrySet().stream()
                        .sorted((a, b) -> b.getValue().size() - a.getValue().size())
                        .limit(MOST_REFUSED_LINES)
                        .toList()) {
            left -= each.getValue().size();
            lines.add(Sentence.words(named(each.getValue()) + ": " + each.getKey() + "."));
        }
        if (left > 0) {
            lines.add(Sentence.words("And " + left + " more: the programme says why of each."));
        }
        return lines;
    }

    private static String named(List<String> names) {
        return names.size() <= MOST_NAMED
                ? String.join(", ", names)
                : String.join(", ", names.subList(0, MOST_NAMED - 1))
                        + " and "
                        + (names.size() - MOST_NAMED + 1)
                        + " more";
    }

    private static List<Sentence> stops(TodaysPlan plan) {
        Day day = plan.day();
        return List.of(
                Sentence.words(
                        Planner.MOST_ABORTS
                                + " runs were aborted ("
                                + day.aborts()
                                + " so far), one thing happened that nobody can explain"
                                + (day.unexplained() ? ", as it has" : "")
                                + ", or a kill did not act as proved."),
                Sentence.words(
                                "It is "
                                        + Planner.clock(day.start().toSecondOfDay() + day.hoursS())
                                        + ", the light goes, anyone is tired or hurried; or, for"
                                        + " flights, wind beyond ")
                        .then(Measure.SPEED, Weather.MOST_WIND_MPS)
                        .then(" or gusts beyond ")
                        .then(Measure.SPEED, Weather.MOST_GUST_MPS)
                        .then(". Changed anything? Make this sheet again."));
    }

    private static List<Sentence> signed() {
        return List.of(
                Sentence.words("Who leads the day"),
                Sentence.words("All with a role"),
                Sentence.words("Ended at, and why"));
    }

    /** Each card that was asked, with what was answered, for the page and for scripts. */
    public static Section.Table table(TodaysPlan plan) {
        List<List<Value>> rows = new ArrayList<>();
        for (Allowed one : plan.allowed()) {
            rows.add(
                    row(
                            one.card(),
                            "yes",
                            allowedWhy(one),
                            Value.of("pause-before", one.pauseS())));
        }
        for (Refused one : plan.refused()) {
            rows.add(
                    row(
                            one.card(),
                            "no",
                            String.join("; ", one.reasons().stream().map(Reason::words).toList()),
                            new Value(
                                    "pause-before", new Value.Figure.NotComputed("not allowed"))));
        }
        return new Section.Table(
                "today",
                "What is allowed today",
                List.of("card", "card-title", "allowed", "card-why", "pause-before"),
                rows);
    }

    private static String allowedWhy(Allowed one) {
        return one.passes() ? "" : "the packs give " + runs(one) + " runs: it does not pass today";
    }

    private static List<Value> row(DayCard card, String allowed, String why, Value pause) {
        return List.of(
                Value.words("card", card.planned().id().text()),
                Value.words("card-title", card.planned().id().kind().title()),
                Value.words("allowed", allowed),
                Value.words("card-why", why),
                pause);
    }
}

package liftwright.learning.explain;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import liftwright.learning.explain.Explained.Weighed;

/**
 * What to do next: for each experiment that could be made, what it is expected to tell of the
 * causes still possible, for its time and risk. An experiment is taken as readings that each answer
 * to some of the causes by so many of their own standard deviations; how many, how long it takes
 * and how risky it is are from memory.
 */
final class NextTests {

    /** So many causes are told apart. */
    private static final int CAUSES = 6;

    /** Less than this is not worth a test, nats. */
    private static final double WORTH = 0.02;

    private static final int MOST = 5;

    /** A reading that answers to a cause by this many deviations tells it well. */
    private static final double CLEAR = 4;

    private NextTests() {}

    /** Something that could be done. */
    private record Idea(String words, double costMin, double risk, Answers answers) {}

    /** By how many deviations a reading answers to a cause; by part where {@code part} is set. */
    @FunctionalInterface
    private interface Answers {
        double to(Cause cause);
    }

    /** The tests most worth their time and risk, from what is still possible. */
    static List<NextTest> of(List<Weighed> ranked) {
        List<Weighed> open =
                ranked.stream()
                        .filter(one -> one.cause().kind() != CauseKind.AS_DECLARED)
                        .limit(CAUSES)
                        .toList();
        if (open.isEmpty()) {
            return List.of();
        }
        double sum = 0;
        for (Weighed one : ranked.stream().limit(CAUSES + 1).toList()) {
            sum += one.share();
        }
        double all = Math.max(1, sum);
        double[][] covariance =
                Information.ofShares(open.stream().mapToDouble(one -> one.share() / all).toArray());
        List<NextTest> tests = new ArrayList<>();
        for (Idea idea : ideas(open)) {
            double[][] effects = new double[open.size()][1];
            Set<String> told = new LinkedHashSet<>();
            for (int k = 0; k < effects.length; k++) {
                effects[k][0] = idea.answers.to(open.get(k).cause());
                if (effects[k][0] >= CLEAR / 2) {
                    told.add(open.get(k).cause().words());
                }
            }
            double nats = Information.nats(covariance, effects);
            if (nats > WORTH) {
                tests.add(
                        new NextTest(
                                idea.words,
                                nats,
                                idea.costMin,
                                idea.risk,
                                told.isEmpty() ? "" : String.join("; ", told)));
            }
        }
        tests.sort(Comparator.comparingDouble((NextTest test) -> -test.worth()));
        return tests.stream().limit(MOST).toList();
    }

    private static List<Idea> ideas(List<Weighed> open) {
        List<Idea> ideas = new ArrayList<>();
        Set<String> done = new LinkedHashSet<>();
        for (Weighed one : open) {
            Cause cause = one.cause();
            if (done.add(cause.kind() + cause.part())) {
                ofPart(cause, ideas);
            }
        }
        ideas.add(
                new Idea(
                        "run the fans one by one, each at the same two throttles",
                        15,
                        1.5,
                        cause ->
                                switch (cause.kind()) {
                                    case WEAK_FAN, HUNGRY_FAN, MOTOR, STOPPED_FAN, REVERSED_FAN ->
                                            CLEAR;
                                    case LIMITED_FAN, BLOCKED_INTAKE, LEANING_FAN -> CLEAR / 2;
                                    default -> 0;
                                }));
        ideas.add(
                new Idea(
                        "repeat with the throttle in another order, cold and then hot",
                        20,
                        2,
                        cause ->
                                switch (cause.kind()) {
                                    case CELL_RESISTANCE, CAPACITY, CHARGE, MOTOR, WIRING, JOINT ->
                                            CLEAR / 2;
                                    case NONE_OF_THESE, THROTTLE, LIMITED_FAN -> CLEAR / 2;
                                    default -> 0;
                                }));
        return ideas;
    }

    private static void ofPart(Cause cause, List<Idea> into) {
        String part = cause.part();
        switch (cause.kind()) {
            case WEAK_FAN, HUNGRY_FAN, MOTOR, BLOCKED_INTAKE, LIMITED_FAN -> {
                add(
                        into,
                        "exchange fan " + part + " and another of its type and spin",
                        25,
                        1.5,
                        CLEAR,
                        part,
                        CauseKind.WEAK_FAN,
                        CauseKind.HUNGRY_FAN,
                        CauseKind.MOTOR);
                add(
                        into,
                        "look into the intake of " + part + " and run it bare",
                        10,
                        1,
                        CLEAR,
                        part,
                        CauseKind.BLOCKED_INTAKE,
                        CauseKind.WEAK_FAN);
                add(
                        into,
                        "read the settings of the controller of " + part,
                        8,
                        1,
                        CLEAR,
                        part,
                        CauseKind.LIMITED_FAN);
            }
            case STOPPED_FAN, REVERSED_FAN ->
                    add(
                            into,
                            "turn " + part + " by hand with all packs out, then run it alone",
                            8,
                            1.5,
                            CLEAR,
                            part,
                            CauseKind.STOPPED_FAN,
                            CauseKind.REVERSED_FAN);
            case LEANING_FAN ->
                    add(
                            into,
                            "turn " + part + " by half a turn in its seat",
                            15,
                            1.5,
                            CLEAR,
                            part,
                            CauseKind.LEANING_FAN);
            case JOINT, WIRING ->
                    add(
                            into,
                            "measure " + part + " with four wires, packs out",
                            6,
                            1,
                            2 * CLEAR,
                            part,
                            CauseKind.JOINT,
                            CauseKind.WIRING);
            case CELL_RESISTANCE, CAPACITY ->
                    add(
                            into,
                            "pulse " + part + " on the bench and read its sag",
                            10,
                            1.5,
                            2 * CLEAR,
                            part,
                            CauseKind.CELL_RESISTANCE,
                            CauseKind.CAPACITY);
            case CHARGE ->
                    add(
                            into,
                            "read the rest voltage of "
                                    + part
                                    + " after an hour, or repeat with fresh packs",
                            10,
                            1.5,
                            CLEAR,
                            part,
                            CauseKind.CHARGE);
            case SCALE, HEAVIER ->
                    add(
                            into,
                            "hang a known mass on " + (part.isEmpty() ? "the scale" : part),
                            10,
                            1,
                            2 * CLEAR,
                            part,
                            CauseKind.SCALE,
                            CauseKind.HEAVIER);
            case AIR ->
                    add(
                            into,
                            "read temperature, pressure and humidity beside the intakes",
                            4,
                            1,
                            CLEAR,
                            part,
                            CauseKind.AIR);
            case THROTTLE ->
                    add(
                            into,
                            "read the throttle that arrives at a controller at full stick",
                            6,
                            1,
                            CLEAR,
                            part,
                            CauseKind.THROTTLE);
            case INSTALLATION, WEAK_TYPE ->
                    add(
                            into,
                            "run one fan bare on the thrust stand and compare",
                            30,
                            1.5,
                            CLEAR,
                            part,
                            CauseKind.INSTALLATION,
                            CauseKind.WEAK_TYPE);
            case AS_DECLARED, NONE_OF_THESE -> {}
        }
    }

    private static void add(
            List<Idea> into,
            String words,
            double costMin,
            double risk,
            double deviations,
            String part,
            CauseKind... kinds) {
        if (into.stream().anyMatch(idea -> idea.words.equals(words))) {
            return;
        }
        Set<CauseKind> of = Set.of(kinds);
        into.add(
                new Idea(
                        words,
                        costMin,
                        risk,
                        cause ->
                                cause.part().equals(part) && of.contains(cause.kind())
                                        ? deviations
                                        : 0));
    }
}

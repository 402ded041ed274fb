package liftwright.flight.ask;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import liftwright.answer.Outcome;
import liftwright.answer.Sentence;
import liftwright.answer.Verdict;
import liftwright.flight.loops.LoopDesign;
import liftwright.flight.pilot.Person;
import liftwright.flight.profile.Profile;
import liftwright.flight.run.FlightOutcome;
import liftwright.flight.run.Untold;
import liftwright.quantity.Measure;

/** The first line of the answer. */
final class FlightVerdict {

    private FlightVerdict() {}

    static Verdict refused(LoopDesign.Refused refused) {
        return new Verdict(
                Outcome.DOES_NOT_HOLD,
                Sentence.words("no loops: " + refused.words()),
                Optional.empty(),
                List.of());
    }

    /**
     * Without a computer nobody can say what a person will do: that one cannot hold it is told,
     * that one will is not.
     *
     * @param holds whether a person can close the loops; empty where no hover was found
     */
    static Verdict person(Optional<Person.Holds> holds) {
        boolean not = holds.map(Person.Holds.NOT::equals).orElse(false);
        String steered =
                holds.map(
                                can ->
                                        "it rests on the person who steers by leaning and arms: it "
                                                + can.words())
                        .orElse("no hover was found that a person could hold");
        return new Verdict(
                not ? Outcome.DOES_NOT_HOLD : Outcome.CANNOT_BE_TOLD,
                Sentence.words(
                        "no flight computer is declared: "
                                + steered
                                + "; the profile was not flown"),
                Optional.empty(),
                List.of());
    }

    static Verdict blind(String why) {
        return new Verdict(Outcome.DOES_NOT_HOLD, Sentence.words(why), Optional.empty(), List.of());
    }

    static Verdict loopsAlone() {
        return new Verdict(
                Outcome.NOT_JUDGED,
                Sentence.words("loops are granted; nothing is flown yet"),
                Optional.empty(),
                List.of());
    }

    /**
     * @param number of the flight shown
     * @param whole whether drawn flights are part of it
     */
    static Verdict flown(
            Profile profile,
            FlightOutcome shown,
            List<FlightOutcome> drawn,
            int number,
            boolean whole) {
        long well = drawn.stream().filter(one -> one.isWell(profile.limits())).count();
        List<String> downgrades = new ArrayList<>();
        boolean kept = shown.isWell(profile.limits());
        boolean computed = shown.converged() && drawn.stream().allMatch(FlightOutcome::converged);
        if (!computed) {
            downgrades.add(Untold.NOT_FOUND.words());
        }
        beyondLaws(shown, drawn).ifPresent(downgrades::add);
        if (whole && drawn.size() < FlightQuestion.DRAWN) {
            downgrades.add("some drawn flights cannot be told: " + Untold.NOT_DRAWN.words());
        }
        Optional<String> near =
                drawn.size() == FlightQuestion.DRAWN && well == drawn.size()
                        ? Clearance.near(profile.limits(), drawn)
                        : Optional.empty();
        Sentence sentence = sentence(shown, kept, well, drawn.size(), number, near);
        return new Verdict(
                outcome(kept, well, drawn.size(), whole, number, downgrades.isEmpty(), near),
                sentence,
                Optional.empty(),
                downgrades);
    }

    private static Optional<String> beyondLaws(FlightOutcome shown, List<FlightOutcome> drawn) {
        List<FlightOutcome> all = Stream.concat(Stream.of(shown), drawn.stream()).toList();
        long beyond = all.stream().filter(one -> !one.figures().isWithinLaws()).count();
        double most =
                all.stream().mapToDouble(one -> one.figures().beyondLawShare()).max().orElse(0);
        return beyond == 0
                ? Optional.empty()
                : Optional.of(
                        String.format(
                                Locale.ROOT,
                                "in %d of %d flights %s, up to %.0f %%: sinking into their own"
                                        + " jet, or so fast across it that the lip stalls; air"
                                        + " blown across a fan on a bench would tell",
                                beyond,
                                all.size(),
                                Untold.BEYOND_LAWS.words(),
                                100 * most));
    }

    /** A single flight proves nothing of the next: only drawn ones can say that it holds. */
    private static Outcome outcome(
            boolean kept,
            long well,
            int drawn,
            boolean whole,
            int number,
            boolean sound,
            Optional<String> near) {
        if (!whole && number == 0) {
            return Outcome.NOT_JUDGED;
        }
        if (!sound) {
            return Outcome.CANNOT_BE_TOLD;
        }
        if (!kept || 2 * well < drawn) {
            return Outcome.DOES_NOT_HOLD;
        }
        return well == drawn && near.isEmpty() ? Outcome.HOLDS : Outcome.CANNOT_BE_TOLD;
    }

    private static Sentence sentence(
            FlightOutcome shown,
            boolean kept,
            long well,
            int drawn,
            int number,
            Optional<String> near) {
        Sentence first =
                Sentence.words(
                                number == 0
                                        ? "flown as declared, "
                                        : "flight " + number + " flown alone, ")
                        .then(
                                kept
                                        ? "every step within every limit, "
                                        : shown.end().words() + ", not within every limit, ")
                        .then(Measure.LENGTH, shown.figures().missM())
                        .then(" beside the last held point");
        return drawn == 0
                ? first
                : first.then(
                        "; "
                                + well
                                + " of "
                                + drawn
                                + " flights with every tolerance drawn are well flown"
                                + (well == drawn ? "" : ", many more would tell")
                                + near.map(
                                                what ->
                                                        ", but "
                                                                + what
                                                                + " comes too near its limit to be told from so few")
                                        .orElse(""));
    }
}

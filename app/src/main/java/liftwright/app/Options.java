package liftwright.app;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.Set;
import liftwright.quantity.UnitSystem;
import liftwright.report.Look;
import liftwright.review.Search;
import liftwright.review.Settings;
import picocli.CommandLine.ParseResult;

/** What was asked of one verb, read and judged. */
final class Options {

    private final ParseResult parsed;
    private final Surroundings around;

    Options(ParseResult parsed, Surroundings around) {
        this.parsed = parsed;
        this.around = around;
    }

    List<String> names() {
        return parsed.matchedPositionalValue(0, List.of());
    }

    /** The question named before the rigs; empty where all of them are asked. */
    Optional<String> question() {
        return Optional.of(names().getFirst()).filter(Grammar.QUESTIONS::contains);
    }

    /** The single name of a verb that takes one; empty without. */
    String name() {
        return parsed.matchedPositionalValue(0, "");
    }

    boolean json() {
        return has(Grammar.JSON);
    }

    boolean has(String option) {
        return parsed.hasMatchedOption(option);
    }

    Look look() {
        boolean ascii = has(Grammar.ASCII) || !around.utf8();
        boolean colour = around.outIsTerminal() && !around.noColour() && !has(Grammar.NO_COLOUR);
        return new Look(around.columns(), ascii, colour, units());
    }

    private UnitSystem units() {
        String word = parsed.matchedOptionValue(Grammar.UNITS, "si");
        return switch (word.toLowerCase(Locale.ROOT)) {
            case "si" -> UnitSystem.SI;
            case "us" -> UnitSystem.US;
            default -> throw new UsageException(Grammar.UNITS + " is si or us, not " + word);
        };
    }

    OptionalLong seed() {
        String text = parsed.matchedOptionValue(Grammar.SEED, "");
        if (text.isEmpty()) {
            return OptionalLong.empty();
        }
        try {
            return OptionalLong.of(Long.parseLong(text));
        } catch (NumberFormatException e) {
            throw new UsageException(Grammar.SEED + " is a whole number, not " + text);
        }
    }

    OptionalInt threads() {
        return count(Grammar.THREADS, 1024);
    }

    /** Those settings with the seed and the threads that were asked for. */
    Settings settings(Settings usual) {
        Settings seeded = seed().isPresent() ? usual.withSeed(seed().getAsLong()) : usual;
        return threads().isPresent() ? seeded.withThreads(threads().getAsInt()) : seeded;
    }

    /** 0 where a free one is to be found. */
    int port() {
        return count(Grammar.PORT, 65_535).orElse(0);
    }

    OptionalInt keep() {
        return count(Grammar.KEEP, 10_000);
    }

    /** Runs in a row of a card. */
    OptionalInt cleanRuns() {
        return count(CardGrammar.RUNS, 1000);
    }

    OptionalInt pairs() {
        return count(Grammar.PAIRS, 10_000);
    }

    /** What to search for beside the question of balance. */
    Set<Search> searches() {
        Set<Search> searches = EnumSet.noneOf(Search.class);
        for (String word : text(Grammar.SEARCH).map(t -> t.split(",", -1)).orElse(new String[0])) {
            searches.add(
                    Arrays.stream(Search.values())
                            .filter(search -> search.word().equals(word.strip()))
                            .findFirst()
                            .orElseThrow(
                                    () ->
                                            new UsageException(
                                                    Grammar.SEARCH
                                                            + " is "
                                                            + Search.words()
                                                            + ", several with commas, not "
                                                            + word)));
        }
        return searches;
    }

    OptionalInt hops() {
        OptionalInt hops = count(Grammar.HOPS, 1000);
        if (hops.isEmpty() && text(Grammar.PAUSE).isPresent()) {
            throw new UsageException(
                    Grammar.PAUSE + " stands between hops: say how many with " + Grammar.HOPS);
        }
        if (hops.isPresent() && text(Grammar.TRACE).isPresent()) {
            throw new UsageException(
                    Grammar.HOPS + " and " + Grammar.TRACE + " are two tasks; name one");
        }
        boolean other = hops.isPresent() || text(Grammar.TRACE).isPresent();
        if (other && has(Grammar.FULL_THROTTLE)) {
            throw new UsageException(
                    Grammar.FULL_THROTTLE + " is a task of its own; name one task");
        }
        return hops;
    }

    /** Value of an option; empty where it does not stand. */
    Optional<String> text(String option) {
        String text = parsed.matchedOptionValue(option, "");
        return text.isEmpty() ? Optional.empty() : Optional.of(text);
    }

    /** Values of an option that takes several; none where it does not stand. */
    List<String> texts(String option) {
        return parsed.matchedOptionValue(option, List.of());
    }

    /** A whole number from 1 on; empty where the option does not stand. */
    OptionalInt counted(String option, int most) {
        return count(option, most);
    }

    private OptionalInt count(String option, int most) {
        String text = parsed.matchedOptionValue(option, "");
        if (text.isEmpty()) {
            return OptionalInt.empty();
        }
        if (!text.matches("[0-9]{1,5}")
                || Integer.parseInt(text) < 1
                || Integer.parseInt(text) > most) {
            throw new UsageException(
                    option + " is a whole number from 1 to " + most + ", not " + text);
        }
        return OptionalInt.of(Integer.parseInt(text));
    }
}

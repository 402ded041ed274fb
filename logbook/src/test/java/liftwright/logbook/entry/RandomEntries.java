package liftwright.logbook.entry;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.random.RandomGenerator;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import liftwright.logbook.entry.SampleTable.Channel;
import liftwright.logbook.entry.SampleTable.Clock;
import liftwright.logbook.entry.TestEntry.Media;
import liftwright.logbook.entry.TestEntry.Person;
import liftwright.logbook.entry.TestEntry.Snapshot;
import liftwright.logbook.entry.TestEntry.Weather;
import liftwright.plant.recording.Signal;
import liftwright.quantity.Dimension;
import liftwright.quantity.Dimensions;
import liftwright.quantity.Quantity;
import liftwright.quantity.Tolerance;
import liftwright.trials.CardId;
import liftwright.trials.CardKind;

/** Entries as anybody might make them, words of every script among them. */
public final class RandomEntries {

    private static final List<String> WORDS =
            List.of(
                    "gusty",
                    "links ½ lauter",
                    "yes",
                    "no: not # so",
                    "\"quoted\"",
                    "a\\b",
                    "{[&*!|>'%@`",
                    "двигатель",
                    "風",
                    "two\nlines",
                    "- 1e3",
                    "null",
                    "tab\there",
                    "   ends");

    private final RandomGenerator random;

    public RandomEntries(RandomGenerator random) {
        this.random = random;
    }

    String words() {
        return WORDS.get(random.nextInt(WORDS.size())) + " " + random.nextInt(1000);
    }

    private <T> Optional<T> maybe(Supplier<T> of) {
        return random.nextBoolean() ? Optional.of(of.get()) : Optional.empty();
    }

    private <T> List<T> some(int most, Supplier<T> of) {
        return IntStream.range(0, random.nextInt(most + 1)).mapToObj(_ -> of.get()).toList();
    }

    Quantity amount(double low, double high, Dimension dimension) {
        double si = random.nextDouble(low, high);
        return random.nextBoolean()
                ? Quantity.exact(si, dimension)
                : new Quantity(
                        si,
                        dimension,
                        new Tolerance(
                                0.01 * si,
                                0.01 * si,
                                Tolerance.Form.NORMAL,
                                Tolerance.Scope.SHARED));
    }

    public LocalDate date() {
        return LocalDate.of(
                2020 + random.nextInt(10), 1 + random.nextInt(12), 1 + random.nextInt(28));
    }

    String digest() {
        var text = new StringBuilder("sha256:");
        for (int k = 0; k < 64; k++) {
            text.append("0123456789abcdef".charAt(random.nextInt(16)));
        }
        return text.toString();
    }

    private Weather weather() {
        return new Weather(
                maybe(() -> amount(250, 310, Dimensions.TEMPERATURE)),
                maybe(() -> amount(90_000, 105_000, Dimensions.PRESSURE)),
                maybe(() -> amount(0.1, 0.9, Dimension.NONE)),
                maybe(() -> amount(0, 9, Dimensions.SPEED)),
                maybe(() -> amount(0, 9, Dimensions.SPEED)));
    }

    /** Tables whose channels differ; their files are called as {@code Logbook} would have it. */
    List<SampleTable> tables() {
        Set<String> names = new LinkedHashSet<>();
        var tables = new ArrayList<SampleTable>();
        int number = 1 + random.nextInt(3);
        for (int k = 1; k <= number; k++) {
            List<Channel> channels =
                    Stream.concat(Stream.of(channel()), some(8, this::channel).stream())
                            .filter(channel -> names.add(channel.name()))
                            .toList();
            if (!channels.isEmpty()) {
                tables.add(table(k, channels));
            }
        }
        return tables;
    }

    private SampleTable table(int k, List<Channel> channels) {
        long setAside = random.nextInt(3);
        double from = random.nextDouble(-10, 10);
        return new SampleTable(
                "samples-" + k + ".parquet",
                "source/" + k + ".csv",
                setAside > 0 ? Optional.of("rejected-" + k + ".csv") : Optional.empty(),
                random.nextInt(1_000_000),
                setAside,
                from,
                from + random.nextDouble(1000),
                random.nextBoolean()
                        ? Clock.OWN
                        : new Clock(
                                random.nextDouble(-9, 9),
                                maybe(random::nextDouble),
                                "by " + words()),
                channels,
                some(2, this::words));
    }

    private Channel channel() {
        List<Signal> signals = List.of(Signal.values());
        Signal signal = signals.get(random.nextInt(signals.size()));
        return new Channel(
                signal,
                random.nextInt(3) == 0 ? "all" : "left." + random.nextInt(9),
                random.nextInt(4) == 0 ? 0 : random.nextDouble(3),
                random.nextInt(3) == 0 ? random.nextDouble() : 0);
    }

    /** About the rig of that digest. */
    public TestEntry test(Snapshot rig) {
        return new TestEntry(
                maybe(() -> CardId.of(CardKind.HOP)),
                date(),
                some(3, () -> new Person(words(), random.nextBoolean() ? words() : "")),
                weather(),
                random.nextBoolean() ? words() : "",
                random.nextBoolean() ? "12.50 EUR" : "",
                maybe(() -> amount(60, 90_000, Dimensions.TIME)),
                some(2, () -> new Media(words(), digest(), random.nextBoolean() ? words() : "")),
                some(2, this::words),
                rig,
                tables());
    }

    TestEntry test() {
        return test(new Snapshot("rig.yaml", digest(), random.nextInt(9)));
    }

    /** A row of a life sheet. */
    public PackSheet.Row row() {
        boolean measured = random.nextBoolean();
        boolean stored = random.nextBoolean();
        return new PackSheet.Row(
                date(),
                measured
                        ? Optional.of(amount(0.01, 0.05, Dimensions.RESISTANCE))
                        : Optional.empty(),
                measured ? Optional.of(amount(280, 310, Dimensions.TEMPERATURE)) : Optional.empty(),
                maybe(() -> amount(10_000, 90_000, Dimensions.CHARGE)),
                maybe(() -> amount(0.01, 0.2, Dimension.NONE)),
                stored ? Optional.of(random.nextInt(99)) : Optional.empty(),
                stored ? Optional.of(amount(0.3, 0.8, Dimension.NONE)) : Optional.empty(),
                random.nextInt(3) == 0 ? words() : "",
                random.nextBoolean() ? words() : "",
                random.nextBoolean() ? words() : "");
    }

    /** A sheet with at least one row. */
    public PackSheet pack() {
        return new PackSheet(
                "p.1",
                random.nextBoolean() ? words() : "",
                amount(1000, 3000, Dimensions.TEMPERATURE),
                maybe(() -> amount(0.01, 0.05, Dimensions.RESISTANCE)),
                maybe(() -> amount(10_000, 90_000, Dimensions.CHARGE)),
                random.nextBoolean()
                        ? PackSheet.Retire.USUAL
                        : new PackSheet.Retire(
                                random.nextDouble(1, 3),
                                random.nextDouble(),
                                random.nextDouble(),
                                random.nextInt(9),
                                true),
                Stream.concat(Stream.of(row()), some(4, this::row).stream()).toList());
    }

    /** An inspection. */
    public PartSheet.Inspection inspection() {
        return new PartSheet.Inspection(
                date(),
                random.nextBoolean() ? words() : "",
                random.nextBoolean(),
                words(),
                some(
                        3,
                        () ->
                                new PartSheet.Measured(
                                        words(),
                                        amount(1, 2, Dimensions.MASS),
                                        maybe(() -> amount(1, 2, Dimensions.MASS)))),
                random.nextBoolean() ? words() : "");
    }

    PartSheet part() {
        return new PartSheet(
                "left.1",
                Stream.concat(Stream.of(inspection()), some(3, this::inspection).stream())
                        .toList());
    }

    /** A draft: nothing is frozen. */
    public Incident incident() {
        List<Incident.OtherClock> clocks =
                random.nextBoolean()
                        ? List.of()
                        : List.of(
                                new Incident.OtherClock("film", random.nextDouble(-9, 9), words()));
        return new Incident(
                date(),
                words(),
                random.nextBoolean() ? words() : "",
                List.of(),
                clocks,
                some(
                        4,
                        () ->
                                new Incident.Event(
                                        random.nextDouble(-5, 50),
                                        clocks.isEmpty() || random.nextBoolean() ? "" : "film",
                                        words())),
                some(
                        3,
                        () ->
                                new Incident.Cause(
                                        words(), some(2, this::words), some(2, this::words))),
                maybe(() -> CardId.of(CardKind.HOP)),
                random.nextBoolean() ? words() : "");
    }

    /** A note on something. */
    public Note note(EntryId about) {
        return new Note(about, date(), random.nextBoolean() ? words() : "", words());
    }
}

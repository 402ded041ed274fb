package liftwright.logbook.entry;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import liftwright.logbook.entry.SampleTable.Channel;
import liftwright.logbook.entry.SampleTable.Clock;
import liftwright.logbook.entry.TestEntry.Media;
import liftwright.logbook.entry.TestEntry.Person;
import liftwright.logbook.entry.TestEntry.Snapshot;
import liftwright.logbook.entry.TestEntry.Weather;
import liftwright.plant.recording.Signal;
import liftwright.quantity.Quantity;
import liftwright.rig.Problem.Code;
import liftwright.rig.shape.kind.Amount;
import liftwright.rig.shape.kind.Fields;
import liftwright.rig.shape.kind.Problems;
import liftwright.rig.shape.kind.Spot;
import liftwright.rig.shape.kind.Stated;
import liftwright.rig.text.Node;
import liftwright.trials.CardId;

/** Makes a test of the tree of its file, or tells everything that is wrong with it. */
final class TestBinder {

    private final Problems problems;
    private final Stating stating;
    private final Set<String> channels = new HashSet<>();

    TestBinder(Problems problems) {
        this.problems = problems;
        this.stating = new Stating(problems);
    }

    Optional<TestEntry> read(Node root) {
        return TestKeys.SECTION.read(root, Spot.top(root.span()), problems).flatMap(this::test);
    }

    private Optional<TestEntry> test(Fields fields) {
        Optional<CardId> card = stating.card(fields, TestKeys.CARD);
        Optional<LocalDate> date = stating.date(fields, TestKeys.DATE);
        List<Person> people =
                Stating.sections(fields, TestKeys.PEOPLE).stream()
                        .flatMap(one -> person(one).stream())
                        .toList();
        List<Media> media =
                Stating.sections(fields, TestKeys.MEDIA).stream()
                        .flatMap(one -> medium(one).stream())
                        .toList();
        Optional<Snapshot> rig = fields.get(TestKeys.RIG).flatMap(this::snapshot);
        List<SampleTable> tables =
                Stating.sections(fields, TestKeys.TABLES).stream()
                        .flatMap(one -> table(one).stream())
                        .toList();
        if (problems.hasErrors() || date.isEmpty() || rig.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                new TestEntry(
                        card,
                        date.get(),
                        people,
                        fields.get(TestKeys.WEATHER)
                                .map(TestBinder::weather)
                                .orElse(Weather.UNKNOWN),
                        fields.get(TestKeys.NOTE).orElse(""),
                        fields.get(TestKeys.COST).orElse(""),
                        fields.get(TestKeys.HOURS),
                        media,
                        Stating.texts(fields, TestKeys.INSTRUMENTS),
                        rig.get(),
                        tables));
    }

    private Optional<Person> person(Fields fields) {
        return stating.words(fields, TestKeys.NAME)
                .map(name -> new Person(name, fields.get(TestKeys.ROLE).orElse("")));
    }

    static Weather weather(Fields fields) {
        return new Weather(
                fields.get(TestKeys.AIR),
                fields.get(TestKeys.PRESSURE),
                fields.get(TestKeys.HUMIDITY),
                fields.get(TestKeys.WIND),
                fields.get(TestKeys.GUST));
    }

    private Optional<Media> medium(Fields fields) {
        Optional<String> file = stating.words(fields, TestKeys.FILE);
        Optional<String> digest = stating.digest(fields, TestKeys.DIGEST);
        return file.isEmpty() || digest.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        new Media(file.get(), digest.get(), fields.get(TestKeys.WHAT).orElse("")));
    }

    private Optional<Snapshot> snapshot(Fields fields) {
        Optional<String> file = stating.file(fields, TestKeys.FILE);
        Optional<String> digest = stating.digest(fields, TestKeys.DIGEST);
        Optional<Integer> revision = fields.get(TestKeys.REVISION);
        return file.isEmpty() || digest.isEmpty() || revision.isEmpty()
                ? Optional.empty()
                : Optional.of(new Snapshot(file.get(), digest.get(), revision.get()));
    }

    private Optional<SampleTable> table(Fields fields) {
        Optional<String> file = stating.file(fields, TestKeys.FILE);
        Optional<String> source = stating.file(fields, TestKeys.SOURCE);
        Optional<String> rejected = stating.file(fields, TestKeys.REJECTED_FILE);
        Optional<Clock> clock = fields.get(TestKeys.CLOCK).flatMap(TestBinder::clock);
        List<Channel> read =
                fields.get(TestKeys.CHANNELS).orElse(List.of()).stream()
                        .flatMap(one -> channel(one).stream())
                        .toList();
        Optional<Quantity> from = fields.get(TestKeys.FROM);
        Optional<Quantity> to = fields.get(TestKeys.TO);
        if (from.isPresent() && to.isPresent() && from.get().si() > to.get().si()) {
            problems.add(
                    Code.CONTRADICTION,
                    fields.spotOf(TestKeys.TO),
                    "a last row before the first",
                    "“from” no later than “to”",
                    "");
        }
        Optional<Integer> setAside = fields.get(TestKeys.ROWS_REJECTED);
        if (setAside.isPresent() && setAside.get() > 0 != fields.has(TestKeys.REJECTED_FILE)) {
            problems.add(
                    Code.CONTRADICTION,
                    fields.spotOf(TestKeys.ROWS_REJECTED),
                    setAside.get()
                            + " rows set aside "
                            + (setAside.get() > 0 ? "without" : "with")
                            + " a file of them",
                    "“rejected” where rows were set aside, and only there",
                    "");
        }
        if (problems.hasErrors()) {
            return Optional.empty();
        }
        return Optional.of(
                new SampleTable(
                        file.orElseThrow(),
                        source.orElseThrow(),
                        rejected,
                        fields.get(TestKeys.ROWS).orElseThrow(),
                        setAside.orElseThrow(),
                        from.orElseThrow().si(),
                        to.orElseThrow().si(),
                        clock.orElseThrow(),
                        read,
                        Stating.texts(fields, TestKeys.NOTES)));
    }

    private static Optional<Clock> clock(Fields fields) {
        Optional<Quantity> shift = fields.get(TestKeys.SHIFT);
        Optional<String> how = fields.get(TestKeys.HOW);
        return shift.isEmpty() || how.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        new Clock(
                                shift.get().si(),
                                fields.get(TestKeys.CONFIDENCE).map(Quantity::si),
                                how.get()));
    }

    private Optional<Channel> channel(Stated<Fields> stated) {
        Fields fields = stated.value();
        Optional<Signal> signal = fields.get(TestKeys.SIGNAL);
        Optional<String> of = stating.words(fields, TestKeys.OF);
        Optional<Stated<String>> error = fields.stated(TestKeys.ERROR);
        if (signal.isEmpty() || of.isEmpty() || error.isEmpty()) {
            return Optional.empty();
        }
        Optional<Quantity> errorSi =
                Amount.notNegative(ChannelUnits.errorOf(signal.get()))
                        .read(
                                new Node.Scalar(
                                        error.get().value(), true, error.get().spot().span()),
                                error.get().spot(),
                                problems);
        if (errorSi.isEmpty()) {
            return Optional.empty();
        }
        var channel =
                new Channel(
                        signal.get(),
                        of.get(),
                        errorSi.get().si(),
                        fields.get(TestKeys.SHARE).map(Quantity::si).orElse(0.0));
        if (!channels.add(channel.name())) {
            problems.add(
                    Code.DUPLICATE_ID,
                    stated.spot(),
                    "the channel " + Problems.quote(channel.name()) + " again",
                    "every channel once",
                    "");
            return Optional.empty();
        }
        return Optional.of(channel);
    }
}

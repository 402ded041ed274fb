package liftwright.trials.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.random.RandomGenerator;
import liftwright.answer.Cautions;
import liftwright.answer.Field;
import liftwright.answer.Fields;
import liftwright.answer.Section;
import liftwright.answer.Section.Card.Block;
import liftwright.answer.Value;
import liftwright.quantity.Band;
import liftwright.quantity.Measure;
import liftwright.rig.CrewMember;
import liftwright.rig.Kill;
import liftwright.rig.Rig;
import liftwright.testkit.Seeded;
import liftwright.trials.Abort;
import liftwright.trials.CardId;
import liftwright.trials.CardKind;
import liftwright.trials.Channel;
import liftwright.trials.Planned;
import liftwright.trials.RandomTrialRig;
import liftwright.trials.Reading;
import liftwright.trials.Run;
import liftwright.trials.TrialExamples;
import liftwright.trials.predict.Predictions;
import liftwright.trials.predict.StepReadings;
import liftwright.trials.predict.Stopping;
import liftwright.trials.programme.Missing;
import liftwright.trials.programme.Programme;
import org.junit.jupiter.api.Test;

final class CardTextTest {

    private static final List<String> CHANNELS =
            List.of("fan-thrust", "stored-energy", "noise-level", "hold-force", "person-distance");

    private static Channel channel(RandomGenerator random, int number) {
        Field field = Fields.of(CHANNELS.get(random.nextInt(CHANNELS.size())));
        return new Channel(
                field.id(),
                "part " + number,
                field.measure(),
                new Channel.Instrument(
                        "instrument " + random.nextInt(4), random.nextDouble(), 0.01, "invented"));
    }

    private static Band band(double about, RandomGenerator random) {
        return new Band(
                about - 1 - random.nextDouble(), about + 1 + random.nextDouble(), 0.95, "", 1, 0);
    }

    @Test
    void everyReadingAndAbortIsPrintedOnce() {
        Rig rig = TrialExamples.rig("curlew");
        Planned planned = Programme.of(rig).card(CardId.of(CardKind.HANGING)).orElseThrow();
        Seeded.check(
                20,
                random -> {
                    List<List<Reading>> predicted = new ArrayList<>();
                    int number = 0;
                    for (int k = 0; k < planned.run().orElseThrow().steps().size(); k++) {
                        List<Reading> step = new ArrayList<>();
                        for (int i = random.nextInt(1, 6); i > 0; i--) {
                            double about = random.nextDouble(1, 1000);
                            step.add(
                                    new Reading(
                                            channel(random, number++), about, band(about, random)));
                        }
                        predicted.add(step);
                    }
                    List<Abort> aborts = aborts(random);
                    Printed printed =
                            new Printed(
                                    CardText.of(
                                            new CardFacts(
                                                    rig,
                                                    "d",
                                                    planned,
                                                    List.of(),
                                                    Optional.empty(),
                                                    Optional.empty(),
                                                    predictions(planned, predicted, aborts),
                                                    List.of())));
                    for (int k = 0; k < predicted.size(); k++) {
                        for (Reading reading : predicted.get(k)) {
                            isPrintedOnce(printed, k + 1, reading);
                        }
                    }
                    assertThat(printed.table("readings").orElseThrow().rows()).hasSize(number);
                    aborts.forEach(abort -> isPrintedOnce(printed, abort));
                    assertThat(printed.table("aborts").orElseThrow().rows()).hasSameSizeAs(aborts);
                });
    }

    private static Predictions predictions(
            Planned planned, List<List<Reading>> readings, List<Abort> aborts) {
        List<StepReadings> steps = new ArrayList<>();
        for (int k = 0; k < readings.size(); k++) {
            steps.add(
                    new StepReadings(
                            planned.run().orElseThrow().steps().get(k),
                            10 * k,
                            readings.get(k),
                            List.of(),
                            Optional.empty(),
                            List.of()));
        }
        return new Predictions(steps, aborts, new Stopping(1.5, 0.1, "by hand"), List.of(), 100);
    }

    @Test
    void aStepThatIsCutIsNotAmongThoseToRun() {
        Rig rig = TrialExamples.rig("curlew");
        Planned planned = Programme.of(rig).card(CardId.of(CardKind.HANGING)).orElseThrow();
        List<Run.Step> run = planned.run().orElseThrow().steps();
        for (int from = 0; from < run.size(); from++) {
            List<StepReadings> steps = new ArrayList<>();
            for (int k = 0; k < run.size(); k++) {
                steps.add(
                        new StepReadings(
                                run.get(k),
                                10 * k,
                                List.of(),
                                List.of(),
                                k < from ? Optional.empty() : Optional.of("a fuse opens " + k),
                                k == 0 ? List.of("of the first") : List.of()));
            }
            Printed printed =
                    new Printed(
                            CardText.of(
                                    new CardFacts(
                                            rig,
                                            "d",
                                            planned,
                                            List.of(),
                                            Optional.empty(),
                                            Optional.empty(),
                                            new Predictions(
                                                    steps,
                                                    List.of(),
                                                    new Stopping(1.5, 0.25, "by hand"),
                                                    List.of("of all"),
                                                    100),
                                            List.of())));
            assertThat(printed.table("steps").map(table -> table.rows().size()).orElse(0))
                    .isEqualTo(from);
            assertThat(printed.lines(Steps.NOT_RUN))
                    .hasSize(run.size() - from)
                    .allMatch(line -> line.contains("a fuse opens"));
            assertThat(printed.lines("What these numbers rest on"))
                    .anyMatch(line -> line.contains("1.75") && line.contains("by hand"))
                    .contains("of all", "Step 1: of the first");
        }
    }

    private static List<Abort> aborts(RandomGenerator random) {
        List<Abort> aborts = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            double limit = random.nextDouble(100, 200);
            aborts.add(
                    new Abort(
                            channel(random, 100 + i),
                            random.nextBoolean() ? Abort.Side.ABOVE : Abort.Side.BELOW,
                            limit,
                            "origin " + i,
                            limit - 50,
                            i == 3
                                    ? new Abort.Worth.None("too near " + i)
                                    : new Abort.Worth.At(limit - 20, 1.5 + i)));
        }
        return aborts;
    }

    private static void isPrintedOnce(Printed printed, int step, Reading reading) {
        assertThat(printed.table("readings").orElseThrow().rows())
                .filteredOn(
                        row ->
                                Printed.words(row.get(1)).contains(reading.channel().part())
                                        && !Printed.words(row.get(1))
                                                .contains(reading.channel().part() + "0"))
                .filteredOn(row -> row.get(2).figure() instanceof Value.Figure.Amount)
                .filteredOn(
                        row ->
                                ((Value.Figure.Amount) row.get(2).figure()).si()
                                        == reading.expectedSi())
                .singleElement()
                .satisfies(
                        row -> {
                            assertThat(row.get(0).figure())
                                    .isEqualTo(Value.of("card-step", step).figure());
                            assertThat(row.get(2).band()).contains(reading.band());
                            assertThat(Fields.of(row.get(2).field()).measure())
                                    .isEqualTo(reading.channel().measure());
                        });
    }

    private static void isPrintedOnce(Printed printed, Abort abort) {
        assertThat(printed.table("aborts").orElseThrow().rows())
                .filteredOn(row -> Printed.words(row.getFirst()).endsWith(abort.channel().part()))
                .singleElement()
                .satisfies(
                        row -> {
                            switch (abort.value()) {
                                case Abort.Worth.At(double si, double leftS) -> {
                                    assertThat(row.get(2))
                                            .isEqualTo(Value.of(abort.channel().field(), si));
                                    assertThat(row.get(3)).isEqualTo(Value.of("abort-time", leftS));
                                }
                                case Abort.Worth.None(var reason) ->
                                        assertThat(row.get(2).figure())
                                                .isEqualTo(new Value.Figure.NotComputed(reason));
                            }
                            assertThat(row.get(5))
                                    .isEqualTo(Value.of(abort.channel().field(), abort.limitSi()));
                            assertThat(Printed.words(row.get(6))).isEqualTo(abort.limitOrigin());
                            assertThat(Printed.words(row.get(1)).contains("above"))
                                    .isEqualTo(abort.side() == Abort.Side.ABOVE);
                        });
    }

    @Test
    void theErrorOfATemperatureIsADifference() {
        Rig rig = TrialExamples.rig("curlew");
        Planned planned = Programme.of(rig).card(CardId.of(CardKind.HANGING)).orElseThrow();
        Field hot =
                Fields.all().stream()
                        .filter(field -> field.measure() == Measure.TEMPERATURE)
                        .findFirst()
                        .orElseThrow();
        Channel channel =
                new Channel(
                        hot.id(),
                        "joint",
                        hot.measure(),
                        new Channel.Instrument("sensor", 3, 0, "invented"));
        Reading reading = new Reading(channel, 350, new Band(340, 360, 0.95, "", 1, 0));
        Printed printed =
                new Printed(
                        CardText.of(
                                new CardFacts(
                                        rig,
                                        "d",
                                        planned,
                                        List.of(),
                                        Optional.empty(),
                                        Optional.empty(),
                                        predictions(planned, List.of(List.of(reading)), List.of()),
                                        List.of())));
        assertThat(printed.column("instruments", "instrument-error"))
                .containsExactly(Value.of("instrument-kelvin", 3));
        assertThat(Fields.of("instrument-kelvin").measure())
                .isEqualTo(Measure.TEMPERATURE_DIFFERENCE);
    }

    @Test
    void theStepsPrintedAreThoseOfTheRun() {
        for (String name : TrialExamples.NAMES) {
            Rig rig = TrialExamples.rig(name);
            for (Planned card : Programme.of(rig).cards()) {
                if (card.run().isEmpty()) {
                    continue;
                }
                List<Run.Step> steps = card.run().get().steps();
                Section.Table table = Printed.of(rig, card.id()).table("steps").orElseThrow();
                assertThat(table.rows()).hasSameSizeAs(steps);
                for (int k = 0; k < steps.size(); k++) {
                    List<Value> row = table.rows().get(k);
                    assertThat(row.get(1))
                            .isEqualTo(
                                    switch (steps.get(k).level()) {
                                        case Run.Level.Throttle(double share) ->
                                                Value.of("ordered-throttle", share);
                                        case Run.Level.OfWeight(double share) ->
                                                Value.of("ordered-weight", share);
                                    });
                    assertThat(row.get(2)).isEqualTo(Value.of("step-rise", steps.get(k).riseS()));
                    assertThat(row.get(3)).isEqualTo(Value.of("step-hold", steps.get(k).holdS()));
                }
            }
        }
    }

    @Test
    void whatChangedIsPrinted() {
        Rig rig = TrialExamples.rig("curlew");
        Planned planned = Programme.of(rig).card(CardId.of(CardKind.MASS)).orElseThrow();
        CardFacts changed =
                new CardFacts(
                        rig,
                        "d",
                        planned,
                        List.of(
                                new CardFacts.Changed("packs/p/extra mass", "0.25 kg", "0.3 kg"),
                                new CardFacts.Changed("other parts/box/mass", "", "1 kg")),
                        Optional.of("3 May 2026"),
                        Optional.of("abc"),
                        predictions(planned, List.of(), List.of()),
                        List.of());
        Printed printed = new Printed(CardText.of(changed));
        assertThat(printed.column("changed", "input").map(Printed::words))
                .containsExactly("packs/p/extra mass", "other parts/box/mass");
        assertThat(printed.column("changed", "card-was").map(Printed::words))
                .containsExactly("0.25 kg", "not declared");
        assertThat(printed.column("changed", "card-is").map(Printed::words))
                .containsExactly("0.3 kg", "1 kg");
        assertThat(printed.lines("Configuration")).anyMatch(line -> line.endsWith("hash: abc"));
    }

    @Test
    void everybodyDeclaredHasAPlace() {
        Seeded.check(
                40,
                random -> {
                    Rig rig = RandomTrialRig.rig(random);
                    Planned card = anyTurning(rig, random);
                    Printed printed = Printed.of(rig, card.id());
                    List<String> who =
                            printed.column("people", "person").map(Printed::words).toList();
                    List<Value> far = printed.column("people", "person-distance").toList();
                    List<String> holds =
                            printed.column("people", "holds-kill").map(Printed::words).toList();
                    for (CrewMember member : rig.crew()) {
                        int at = who.indexOf(member.name());
                        assertThat(at).isNotNegative();
                        member.distance()
                                .ifPresent(
                                        distance ->
                                                assertThat(far.get(at))
                                                        .isEqualTo(
                                                                Value.of(
                                                                        "person-distance",
                                                                        distance.si())));
                        for (Kill kill : rig.wiring().kills()) {
                            boolean his = kill.heldBy().filter(member.name()::equals).isPresent();
                            assertThat(List.of(holds.get(at).split(", ")).contains(kill.id()))
                                    .isEqualTo(his);
                        }
                    }
                });
    }

    private static Planned anyTurning(Rig rig, RandomGenerator random) {
        List<Planned> turning =
                Programme.of(rig).cards().stream().filter(card -> card.run().isPresent()).toList();
        return turning.get(random.nextInt(turning.size()));
    }

    @Test
    void everythingPrintedHasAFieldAndANameOfItsOwn() {
        int[] cards = {0};
        Seeded.check(
                14,
                random -> {
                    Rig rig = RandomTrialRig.rig(random);
                    Set<String> names = new HashSet<>();
                    for (Planned card : Programme.of(rig).cards()) {
                        cards[0]++;
                        Printed printed = Printed.of(rig, card.id());
                        printed.tables()
                                .forEach(
                                        table -> {
                                            assertThat(names.add(table.id()))
                                                    .as(table.id())
                                                    .isTrue();
                                            assertThat(table.id()).matches("[a-z0-9-]+");
                                            hasFields(table);
                                        });
                        assertThat(printed.lines("Cautions")).isEqualTo(Cautions.ALL);
                        assertThat(printed.has("Sign-off")).isTrue();
                        List<String> lacks =
                                Missing.of(rig, card).stream().map(Missing::words).toList();
                        assertThat(printed.lines("Not to be done before this is declared"))
                                .hasSameSizeAs(lacks);
                    }
                });
        assertThat(cards[0]).isGreaterThan(200);
    }

    private static void hasFields(Section.Table table) {
        assertThat(table.columns()).doesNotHaveDuplicates();
        table.columns().forEach(column -> assertThat(Fields.find(column)).as(column).isPresent());
        for (List<Value> row : table.rows()) {
            assertThat(row).hasSameSizeAs(table.columns());
            row.forEach(cell -> assertThat(Fields.find(cell.field())).as("%s", cell).isPresent());
        }
    }

    @Test
    void aHangingWearerIsGotDownAndNobodyElse() {
        String title = "The wearer hangs and does not come down";
        Rig rig = TrialExamples.rig("mudlark");
        for (Planned card : Programme.of(rig).cards()) {
            boolean hangs =
                    card.run()
                            .filter(run -> run.worn() && run.held() == Run.Held.TETHER)
                            .isPresent();
            Printed printed = Printed.of(rig, card.id());
            assertThat(printed.has(title)).as("%s", card.id()).isEqualTo(hangs);
            assertThat(printed.has("Fire or smoke"))
                    .isEqualTo(card.run().isPresent() || card.killProof());
            if (hangs) {
                assertThat(printed.lines(title))
                        .anyMatch(line -> line.contains("the second lets the winch out"));
            }
        }
    }

    @Test
    void questionsAreQuestionsAndNeverAdvice() {
        Rig rig = TrialExamples.rig("curlew");
        for (Planned card : Programme.of(rig).cards()) {
            List<Block> asked =
                    CardText.of(Printed.facts(rig, card.id())).stream()
                            .filter(block -> block.title().startsWith("To ask"))
                            .toList();
            boolean turns = card.run().isPresent() || card.killProof();
            assertThat(asked.isEmpty()).isEqualTo(!turns);
            boolean flies = card.id().kind().compareTo(CardKind.HOP) >= 0;
            assertThat(asked.stream().anyMatch(block -> block.title().contains("aviation")))
                    .isEqualTo(flies);
            for (Block block : asked) {
                assertThat(new Printed(List.of(block)).lines(block.title()))
                        .isNotEmpty()
                        .allMatch(line -> line.endsWith("?"));
            }
        }
    }

    /**
     * NIST/SEMATECH e-Handbook 7.2.4.1 and any table of Clopper and Pearson: none of 29, 0.9019.
     */
    @Test
    void noFailureOfTwentyNineShowsNinetyPerCent() {
        assertThat(Repeats.shownShare(29)).isGreaterThan(0.9).isLessThan(0.905);
        assertThat(Repeats.shownShare(28)).isLessThan(0.9);
        // By adding up the distribution: with that share none of n fails one time in twenty.
        for (int n : new int[] {1, 3, 10, 29}) {
            double allGood = 1;
            for (int k = 0; k < n; k++) {
                allGood *= Repeats.shownShare(n);
            }
            assertThat(allGood).isBetween(0.0499999, 0.0500001);
        }
    }

    @Test
    void everyKillIsProvedByItself() {
        Seeded.check(
                20,
                random -> {
                    Rig rig = RandomTrialRig.rig(random);
                    for (String subject : List.of("", Programme.ALL)) {
                        Printed printed = Printed.of(rig, new CardId(CardKind.KILL, subject));
                        List<String> ways = printed.lines("How it is proved");
                        for (Kill kill : rig.wiring().kills()) {
                            assertThat(ways)
                                    .filteredOn(way -> way.startsWith("“" + kill.id() + "”"))
                                    .hasSize(1);
                            assertThat(ways)
                                    .filteredOn(
                                            way ->
                                                    way.startsWith(
                                                            "“" + kill.id() + " without power”"))
                                    .hasSize(kill.opensOnLoss() ? 1 : 0);
                        }
                        if (!rig.wiring().kills().isEmpty()) {
                            assertThat(printed.column("kills", "kill").map(Printed::words))
                                    .containsExactlyInAnyOrderElementsOf(
                                            rig.wiring().kills().stream().map(Kill::id).toList());
                        }
                    }
                });
    }

    @Test
    void theDrawnKeepOutIsTheOneOfTheTable() {
        int drawn = 0;
        for (String name : TrialExamples.NAMES) {
            Rig rig = TrialExamples.rig(name);
            for (Planned card : Programme.of(rig).cards()) {
                Printed printed = Printed.of(rig, card.id());
                for (Block block : printed.blocks()) {
                    if (block instanceof Block.View(var elevation)) {
                        drawn++;
                        double keepM =
                                printed.number(
                                        "distances", value -> value.field().equals("keep-out"));
                        assertThat(elevation.shapes())
                                .filteredOn(shape -> shape.label().startsWith("nobody within"))
                                .singleElement()
                                .extracting(Section.Elevation.Shape::label)
                                .asString()
                                .contains(" " + (long) Math.ceil(keepM) + " m");
                    }
                }
            }
        }
        assertThat(drawn).isGreaterThan(5);
    }

    @Test
    void deadMassHangsOnTheCardsThatSaySo() {
        Rig rig = TrialExamples.rig("mudlark");
        for (Planned card : Programme.of(rig).cards()) {
            assertThat(
                            Printed.of(rig, card.id()).lines("Configuration").stream()
                                    .anyMatch(line -> line.contains("dead mass")))
                    .isEqualTo(card.id().subject().equals(Programme.DUMMY));
        }
    }

    @Test
    void measuresOfChannelsAreKnown() {
        assertThat(CHANNELS).allMatch(id -> Fields.of(id).measure() != Measure.COUNT);
    }
}

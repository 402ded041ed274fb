package liftwright.trials.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import liftwright.answer.Fields;
import liftwright.answer.Section;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.numerics.Work;
import liftwright.rig.Rig;
import liftwright.rig.stand.StandReading;
import liftwright.testkit.Seeded;
import liftwright.trials.CardKind;
import liftwright.trials.RandomTrialRig;
import liftwright.trials.Reading;
import liftwright.trials.TrialExamples;
import org.junit.jupiter.api.Test;

/** All cards for measuring, as they are printed. */
class MeasuringTest {

    private static final Set<CardKind> MEASURING =
            EnumSet.of(
                    CardKind.MASS,
                    CardKind.CENTRE,
                    CardKind.INERTIA,
                    CardKind.CELLS,
                    CardKind.FRAME,
                    CardKind.THROTTLE,
                    CardKind.PROOF_SPIN,
                    CardKind.THRUST,
                    CardKind.LAG);

    @Test
    void everyCardIsWhole() {
        TrialExamples.NAMES.forEach(name -> whole(TrialExamples.rig(name)));
        whole(TrialExamples.rig("fitted")); // fan and cells found from tables
        Seeded.check(40, random -> whole(RandomTrialRig.rig(random)));
    }

    private static void whole(Rig rig) {
        for (CardKind kind : CardKind.values()) {
            Optional<Measured> card = Measuring.of(rig, Made.planned(kind), 1, 2, Work.quiet());
            assertThat(card.isPresent()).as(kind.id()).isEqualTo(MEASURING.contains(kind));
            card.ifPresent(made -> whole(made, kind));
        }
    }

    private static void whole(Measured card, CardKind kind) {
        List<String> titles = card.blocks().stream().map(Section.Card.Block::title).toList();
        assertThat(titles)
                .contains("How to measure", "What counts as good", "To write into the rig file")
                .doesNotHaveDuplicates();
        if (kind != CardKind.FRAME) {
            assertThat(card.readings()).isNotEmpty();
            assertThat(titles).contains("Instruments", "What should be read");
        }
        for (Reading reading : card.readings()) {
            assertThat(reading.band().low()).isLessThanOrEqualTo(reading.expectedSi());
            assertThat(reading.band().high()).isGreaterThanOrEqualTo(reading.expectedSi());
            assertThat(Fields.of(reading.channel().field()).measure())
                    .isEqualTo(reading.channel().measure());
            assertThat(reading.channel().instrument().origin()).isNotEmpty();
        }
        for (Section.Card.Block block : card.blocks()) {
            switch (block) {
                case Section.Card.Block.Lines lines -> lines.lines().forEach(MeasuringTest::said);
                case Section.Card.Block.Rows rows -> shown(rows.table());
                case Section.Card.Block.View _ -> throw new AssertionError("nothing is drawn");
            }
        }
    }

    private static void said(Sentence sentence) {
        for (Sentence.Part part : sentence.parts()) {
            if (part instanceof Sentence.Part.Amount amount) {
                assertThat(amount.si()).isFinite();
            }
        }
    }

    private static void shown(Section.Table table) {
        table.columns().forEach(Fields::of);
        assertThat(table.rows()).isNotEmpty();
        for (List<Value> row : table.rows()) {
            assertThat(row).hasSameSizeAs(table.columns());
            row.forEach(value -> Fields.of(value.field()));
        }
    }

    @Test
    void theSameOnAnyNumberOfThreads() {
        Rig rig = TrialExamples.rig("curlew");
        for (CardKind kind : MEASURING) {
            assertThat(Measuring.of(rig, Made.planned(kind), 5, 3, Work.quiet()))
                    .isEqualTo(Measuring.of(rig, Made.planned(kind), 5, 1, Work.quiet()));
        }
    }

    @Test
    void stoppedWorkMakesNoCard() {
        AtomicInteger asked = new AtomicInteger();
        Work impatient =
                new Work() {
                    @Override
                    public void stage(String name, long total) {}

                    @Override
                    public void done(long units) {}

                    @Override
                    public boolean stopped() {
                        return asked.incrementAndGet() > 50;
                    }
                };
        assertThat(
                        Measuring.of(
                                TrialExamples.rig("mudlark"),
                                Made.planned(CardKind.MASS),
                                1,
                                1,
                                impatient))
                .isEmpty();
    }

    @Test
    void aPlannedStandNarrowsOrWidensThrust() {
        Rig rig = TrialExamples.rig("curlew");
        String good =
                """
                stand: 1
                thrust: 120 N
                cell: {rating: 200 N, class: 0.02 %, calibration: ± 0.05 %}
                clearance: {measured: ± 0.1 %}
                repeats: {runs: 10, scatter: 0.1 %}
                """;
        var stand = StandReading.read("stand.yaml", good.getBytes(StandardCharsets.UTF_8));
        Measured planned =
                Measuring.of(rig, Made.planned(CardKind.THRUST), stand.stand(), 1, 1, Work.quiet())
                        .orElseThrow();
        Measured guessed = Made.card(rig, CardKind.THRUST);
        Reading better = Made.of(Made.readings(planned), "F140 at 100 % throttle, thrust");
        Reading worse = Made.of(Made.readings(guessed), "F140 at 100 % throttle, thrust");
        assertThat(better.expectedSi()).isEqualTo(worse.expectedSi());
        assertThat(better.band().width()).isLessThan(worse.band().width());
        assertThat(better.channel().instrument().origin()).isEqualTo("budget of the stand file");
    }
}

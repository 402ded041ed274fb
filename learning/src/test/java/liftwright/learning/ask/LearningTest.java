package liftwright.learning.ask;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;
import liftwright.answer.AnswerJson;
import liftwright.answer.Outcome;
import liftwright.answer.Section;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.learning.LearningAnswer;
import liftwright.learning.truth.SimulatedTest;
import liftwright.numerics.Kept;
import liftwright.numerics.Work;
import liftwright.review.Settings;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/** Answers about recordings of a simulator that shares no line with the product. */
class LearningTest {

    private static final Settings SETTINGS = new Settings(7, 64, 64, 2, false);

    private static LearningAnswer ask(SimulatedTest test) {
        return ask(test, Work.quiet()).orElseThrow();
    }

    private static Optional<LearningAnswer> ask(SimulatedTest test, Work work) {
        return Learning.ask(
                new LearningCase(
                        test.rig(), "", "of a simulator", test.recording(), Optional.empty()),
                SETTINGS,
                work);
    }

    private static String words(Sentence sentence) {
        StringBuilder told = new StringBuilder();
        for (Sentence.Part part : sentence.parts()) {
            told.append(
                    switch (part) {
                        case Sentence.Part.Words words -> words.text();
                        case Sentence.Part.Amount amount -> amount.si();
                    });
        }
        return told.toString();
    }

    private static double si(Value value) {
        return value.figure() instanceof Value.Figure.Amount(double si, var _) ? si : Double.NaN;
    }

    @Test
    void saysWhatIsMissingAndWhere() {
        int seen = 0;
        int near = 0;
        for (long seed = 400; seed < (Seeded.deep() ? 420 : 405); seed++) {
            SimulatedTest test = SimulatedTest.draw(seed, SimulatedTest.Sort.ONE, 4);
            LearningAnswer answer = ask(test);
            assertThat(answer.sections())
                    .extracting(Section::id)
                    .containsSubsequence("causes", "strips", "channels");
            for (Section section : answer.sections()) {
                if (section instanceof Section.Waterfall fall) {
                    double sum = si(fall.start().value());
                    for (Section.Waterfall.Step step : fall.steps()) {
                        sum += si(step.value());
                    }
                    assertThat(sum)
                            .isCloseTo(
                                    si(fall.end().value()),
                                    org.assertj.core.data.Offset.offset(1e-6 * Math.abs(sum)));
                }
            }
            if (answer.verdict().outcome() == Outcome.DOES_NOT_HOLD) {
                seen++;
                String told = words(answer.verdict().sentence());
                near += told.contains("missing") || told.contains("more than") ? 1 : 0;
            }
            String json = AnswerJson.write(answer, "Random", "0");
            assertThat(json).contains("\"strips\"").doesNotContain("NaN");
        }
        assertThat(seen).as("logs with a cause that are not met").isPositive();
        assertThat(near).isEqualTo(seen);
    }

    /** Keeps parts, and stops after so many that are made. */
    private static final class Patience implements Work, Kept {
        private final Map<String, double[]> all;
        private final int most;
        private final AtomicInteger made = new AtomicInteger();
        private final AtomicInteger before = new AtomicInteger();
        private int batches;

        Patience(Map<String, double[]> all, int most) {
            this.all = all;
            this.most = most;
        }

        @Override
        public Batch batch(int parts) {
            String batch = batches++ + " of " + parts + ", ";
            return new Batch() {
                @Override
                public Optional<double[]> of(int part) {
                    return Optional.ofNullable(all.get(batch + part));
                }

                @Override
                public void keep(int part, double[] numbers) {
                    all.put(batch + part, numbers);
                }
            };
        }

        @Override
        public void stage(String name, long total) {}

        @Override
        public void done(long units) {
            made.addAndGet((int) units);
        }

        @Override
        public void already(long units) {
            before.addAndGet((int) units);
        }

        @Override
        public boolean stopped() {
            return made.get() >= most;
        }

        @Override
        public Kept kept() {
            return this;
        }
    }

    /** Bit for bit: the answer's JSON has every digit of every number. */
    @Test
    void whatIsStoppedTwiceAndTakenUpComesToTheSameAndMakesNothingTwice() {
        SimulatedTest test = SimulatedTest.draw(403, SimulatedTest.Sort.ONE, 4);
        Map<String, double[]> none = new ConcurrentHashMap<>();
        var whole = new Patience(none, Integer.MAX_VALUE);
        String unbroken = AnswerJson.write(ask(test, whole).orElseThrow(), "Random", "0");
        int all = whole.made.get();
        assertThat(all).isGreaterThan(300);
        Map<String, double[]> kept = new ConcurrentHashMap<>();
        int made = 0;
        for (int most : new int[] {all / 4, all / 3}) {
            var part = new Patience(kept, most);
            assertThat(ask(test, part)).isEmpty();
            assertThat(part.before.get()).isEqualTo(made);
            made += part.made.get();
            assertThat(kept).hasSize(made);
        }
        var rest = new Patience(kept, Integer.MAX_VALUE);
        assertThat(AnswerJson.write(ask(test, rest).orElseThrow(), "Random", "0"))
                .isEqualTo(unbroken);
        assertThat(rest.made.get()).isEqualTo(all - made);
    }
}

package liftwright.trials.day;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import liftwright.answer.Fields;
import liftwright.answer.Section;
import liftwright.answer.Section.Card.Block;
import liftwright.answer.Section.Card.Style;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.plant.Plant;
import liftwright.rig.Rig;
import liftwright.testkit.Seeded;
import liftwright.trials.Planned;
import liftwright.trials.RandomTrialRig;
import liftwright.trials.Run;
import liftwright.trials.TrialExamples;
import liftwright.trials.programme.Programme;
import org.junit.jupiter.api.Test;

/** What the sheet of a day says is what its plan decided, and it is no longer than a page. */
class TodaysSheetTest {

    /** Characters in a line of the printed page at its size of letters, and lines on a page. */
    private static final int LINE = 84;

    private static final int PAGE = 62;

    private record Case(TodaysPlan plan, Section.Card card) {}

    private static Case draw(java.util.random.RandomGenerator random) {
        Rig rig = RandomTrialRig.rig(random);
        Day day = RandomDay.day(random, rig);
        TodaysPlan plan =
                TodaysPlan.of(
                        rig,
                        day,
                        RandomDay.cards(random, Programme.of(rig)),
                        RandomDay.proof(random, rig, day.date()),
                        RandomDay.DIGEST,
                        OptionalDouble.of(600));
        return new Case(plan, TodaysSheet.of(plan, Optional.empty()));
    }

    @Test
    void theSheetSaysWhatThePlanDecided() {
        Seeded.check(
                150,
                random -> {
                    Case one = draw(random);
                    List<String> order =
                            one.card().tables().stream()
                                    .filter(table -> table.id().equals("today-order"))
                                    .flatMap(table -> table.rows().stream())
                                    .map(row -> words(row.get(1)))
                                    .toList();
                    assertThat(order)
                            .isEqualTo(
                                    one.plan().allowed().stream()
                                            .map(each -> each.card().planned().id().text())
                                            .toList());
                    assertThat(one.card().state()).isEqualTo(order.isEmpty() ? "closed" : "open");
                    assertThat(text(one.card()))
                            .contains(
                                    one.plan().killDoubts().isEmpty()
                                            ? "The kills are proved today."
                                            : one.plan().killDoubts().getFirst());
                    Section.Table table = TodaysSheet.table(one.plan());
                    assertThat(table.rows())
                            .hasSize(one.plan().allowed().size() + one.plan().refused().size());
                    for (List<Value> row : table.rows()) {
                        assertThat(words(row.get(3)).isEmpty() && words(row.get(2)).equals("no"))
                                .isFalse();
                    }
                    assertThat(
                                    one.card().blocks().stream()
                                            .filter(
                                                    block ->
                                                            block instanceof Block.Lines lines
                                                                    && lines.style() == Style.WRITE)
                                            .count())
                            .isOne();
                    one.card().tables().stream()
                            .flatMap(each -> each.rows().stream())
                            .flatMap(List::stream)
                            .filter(value -> !value.field().equals("card"))
                            .forEach(value -> assertThat(Fields.find(value.field())).isPresent());
                });
    }

    @Test
    void itFitsAPage() {
        Seeded.check(300, random -> assertThat(lines(draw(random).card())).isLessThan(PAGE));
    }

    private static int lines(Section.Card card) {
        int lines = 4 + rows(words(card.purpose()), LINE);
        for (Block block : card.blocks()) {
            lines += 2;
            lines +=
                    switch (block) {
                        case Block.Lines own ->
                                own.lines().stream().mapToInt(line -> rows(words(line), LINE)).sum()
                                        + (own.style() == Style.WRITE ? own.lines().size() / 2 : 0);
                        case Block.Rows own ->
                                2
                                        + own.table().rows().stream()
                                                .mapToInt(
                                                        row -> rows(words(row.getLast()), LINE / 2))
                                                .sum();
                        case Block.View _ -> throw new AssertionError("no picture on a sheet");
                    };
        }
        return lines;
    }

    private static int rows(String text, int width) {
        return Math.max(1, (text.length() + width - 1) / width);
    }

    private static String text(Section.Card card) {
        var all = new ArrayList<String>();
        for (Block block : card.blocks()) {
            if (block instanceof Block.Lines own) {
                own.lines().forEach(line -> all.add(words(line)));
            }
        }
        return String.join("\n", all);
    }

    private static String words(Sentence sentence) {
        return sentence.parts().stream()
                .map(
                        part ->
                                switch (part) {
                                    case Sentence.Part.Words(String said) -> said;
                                    case Sentence.Part.Amount _ -> "00.0 m/s";
                                })
                .collect(Collectors.joining());
    }

    private static String words(Value value) {
        return value.figure() instanceof Value.Figure.Words(String said) ? said : "";
    }

    /** Throttle at twice the time takes more; packs that feed no running fan give nothing. */
    @Test
    void aRunTakesChargeOfThePacksThatFeedIt() {
        for (String name : List.of("mudlark", "curlew")) {
            Rig rig = TrialExamples.rig(name);
            RunCharge charge = new RunCharge(Plant.assemble(rig));
            int ran = 0;
            for (Planned card : Programme.of(rig).cards()) {
                Map<String, Double> taken = charge.of(card);
                if (card.run().isEmpty()) {
                    assertThat(taken).isEmpty();
                    continue;
                }
                ran++;
                assertThat(taken).hasSameSizeAs(rig.packs());
                assertThat(taken.values()).allMatch(share -> share >= 0 && share <= 1);
                assertThat(taken.values().stream().mapToDouble(share -> share).sum())
                        .as(card.id().text())
                        .isPositive();
                if (card.run().get().fans().size() == rig.fans().size()
                        && card.run().get().steps().stream()
                                .allMatch(
                                        step ->
                                                step.level() instanceof Run.Level.Throttle(var s)
                                                        && s < 0.4)) {
                    assertThat(taken.values()).allMatch(share -> share < 0.5);
                }
            }
            assertThat(ran).as(name).isGreaterThan(5);
        }
    }
}

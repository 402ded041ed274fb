package liftwright.report;

import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import java.util.stream.IntStream;
import liftwright.answer.Section;
import liftwright.answer.Section.Card;
import liftwright.answer.Section.Card.Block;
import liftwright.answer.Section.Card.Style;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.quantity.Band;
import liftwright.quantity.Measure;

/** Cards of any make, with texts such as a hostile or careless rig file could hold. */
public final class RandomCard {

    private static final List<String> WORDS =
            List.of(
                    "fan",
                    "pod",
                    "the",
                    "stand",
                    "of",
                    "and",
                    "holds",
                    "left.3",
                    "throttle",
                    "stop",
                    "below",
                    "nobody",
                    "within",
                    "left-hand",
                    "module",
                    "12 V",
                    "a",
                    "watchdog",
                    "disconnect",
                    "rotor’s");

    private static final List<String> HOSTILE =
            List.of(
                    "</script><script>alert(1)</script>",
                    "</style><b onload=x>",
                    "]]>&amp;\"'",
                    "\u202egnol\u202c",
                    "\u05e9\u05dc\u05d5\u05dd left",
                    "\u0645\u0631\u062d\u0628\u0627",
                    "e\u0301te\u0301 Mu\u0308hle",
                    "Z\u0351\u0352\u0353\u0354algo",
                    "風扇 \ud83d\ude80",
                    "tab\tand\nline\r\u0007end",
                    "@page { size: a5 }",
                    "\\22 ; } * { display: none }",
                    "ﬁre ﬂag Ωµ°²³ ≤≥±−",
                    "W".repeat(71),
                    "m".repeat(400),
                    "left pod/outboard-fan-of-the-second-ring.3/controller-temperature-sensor-2",
                    "\ufeff\u00ad\u200bhidden");

    private static final List<String> FIELDS =
            List.of(
                    "time",
                    "fan-thrust",
                    "pack-current",
                    "least-cell-voltage",
                    "fan-speed",
                    "temperature",
                    "mass",
                    "electrical-power",
                    "charge-left",
                    "thrust-to-weight",
                    "winding-current",
                    "lift-usable");

    private static final List<Style> STYLES = List.of(Style.values());

    private final RandomGenerator random;

    public RandomCard(RandomGenerator random) {
        this.random = random;
    }

    public Card next() {
        List<Block> blocks = new ArrayList<>();
        int count = random.nextInt(1, 9);
        for (int k = 0; k < count; k++) {
            blocks.add(block(k));
        }
        return new Card(
                random.nextInt(4) == 0 ? "kind." + text(3) : "first-spin.F" + random.nextInt(100),
                title(),
                random.nextBoolean() ? "closed" : "open",
                sentence(20),
                blocks);
    }

    public CardHead head() {
        return new CardHead(
                random.nextInt(3) == 0 ? "" : title(),
                "rig.yaml",
                "revision " + random.nextInt(100),
                "sha256:" + Long.toHexString(random.nextLong()).repeat(4),
                "0.1.0");
    }

    private Block block(int number) {
        return switch (random.nextInt(7)) {
            case 0, 1 -> new Block.Rows(table("t" + number));
            case 2 -> new Block.Rows(table("t" + number + "-aborts"));
            case 3 -> new Block.View(Sample.elevation(title()));
            default ->
                    new Block.Lines(
                            random.nextInt(5) == 0 ? "" : title(),
                            STYLES.get(random.nextInt(STYLES.size())),
                            IntStream.range(0, random.nextInt(1, 14))
                                    .mapToObj(_ -> sentence(30))
                                    .toList());
        };
    }

    private Section.Table table(String id) {
        List<String> columns = new ArrayList<>();
        boolean named = random.nextInt(5) > 0;
        if (named) {
            columns.add("part");
        }
        int numbers = random.nextInt(1, 10);
        for (int k = 0; k < numbers; k++) {
            columns.add(FIELDS.get(random.nextInt(FIELDS.size())));
        }
        boolean ticked = random.nextInt(3) == 0;
        if (ticked) {
            columns.add("done");
        }
        int rows = random.nextInt(6) == 0 ? 60 : random.nextInt(1, 12);
        List<List<Value>> cells = new ArrayList<>();
        for (int k = 0; k < rows; k++) {
            List<Value> row = new ArrayList<>();
            for (String column : columns) {
                row.add(
                        switch (column) {
                            case "part" -> Value.words(column, text(4));
                            case "done" -> Value.words(column, "");
                            default -> value(column);
                        });
            }
            cells.add(row);
        }
        return new Section.Table(id, title(), columns, cells);
    }

    private Value value(String field) {
        double si = Math.exp(random.nextDouble(-7, 12));
        return switch (random.nextInt(10)) {
            case 0 -> Value.words(field, text(5));
            case 1 -> new Value(field, new Value.Figure.Never());
            case 2 -> new Value(field, new Value.Figure.NotComputed(text(6)));
            case 3, 4, 5 -> Value.of(field, si);
            default ->
                    Value.of(
                            field,
                            si,
                            new Band(
                                    si * random.nextDouble(0.5, 1),
                                    si * random.nextDouble(1, 1.6),
                                    0.95,
                                    "sampled",
                                    1024,
                                    0));
        };
    }

    private Sentence sentence(int most) {
        Sentence said = Sentence.words(text(most));
        return random.nextBoolean()
                ? said.then(" ").then(Measure.LENGTH, random.nextDouble(0.1, 30)).then(".")
                : said;
    }

    private String title() {
        return text(6);
    }

    private String text(int most) {
        int count = random.nextInt(1, most + 1);
        StringBuilder text = new StringBuilder();
        for (int k = 0; k < count; k++) {
            boolean hostile = random.nextInt(14) == 0;
            List<String> from = hostile ? HOSTILE : WORDS;
            text.append(k == 0 ? "" : " ").append(from.get(random.nextInt(from.size())));
        }
        return text.toString();
    }
}

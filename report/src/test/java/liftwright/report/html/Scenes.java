package liftwright.report.html;

import java.util.ArrayList;
import java.util.List;
import liftwright.answer.Section;
import liftwright.answer.Value;

/** Drawings to try. */
final class Scenes {

    private static final List<String> PLACE = List.of("place-forward", "place-right", "place-up");
    private static final List<String> PUSH = List.of("push-forward", "push-right", "push-up");

    private Scenes() {}

    /** One fan of each spin, a wearer of one limb, a pack, centre and lift. */
    static Section.Drawing drawing(String part) {
        return new Section.Drawing(
                "rig-drawn",
                "The rig at lift-off",
                List.of(
                        fans(
                                List.of(
                                        fan(part, "right-hand", 0.2, 0.3, 0.1, 50, 0, 0, 1),
                                        fan(
                                                "other.1",
                                                "left-hand",
                                                0.2,
                                                -0.3,
                                                0.1,
                                                25,
                                                0.6,
                                                0,
                                                0.8))),
                        table(
                                "drawn-wearer",
                                List.of("segment"),
                                List.of(PLACE, List.of("end-forward", "end-right", "end-up")),
                                row(Value.words("segment", "trunk"), 0, 0, 0, 0, 0, -0.6)),
                        new Section.Table(
                                "drawn-parts",
                                "Parts",
                                List.of(
                                        "part",
                                        "part-kind",
                                        "part-mass",
                                        "place-forward",
                                        "place-right",
                                        "place-up"),
                                List.of(
                                        List.of(
                                                Value.words("part", part),
                                                Value.words("part-kind", "pack"),
                                                Value.of("part-mass", 2),
                                                Value.of("place-forward", -0.1),
                                                Value.of("place-right", 0),
                                                Value.of("place-up", 0)))),
                        table(
                                "drawn-centre",
                                List.of("mass"),
                                List.of(PLACE),
                                row(Value.of("mass", 100), 0, 0, -0.2)),
                        table(
                                "drawn-lift",
                                List.of("lift-at-lift-off"),
                                List.of(PLACE, PUSH),
                                row(Value.of("lift-at-lift-off", 981), 0, 0, -0.1, 0, 0, 1))));
    }

    static Section.Table fans(List<List<Value>> rows) {
        List<String> columns = new ArrayList<>(List.of("part", "spin"));
        columns.addAll(PLACE);
        columns.addAll(List.of("tip-diameter", "fan-thrust-at-lift-off"));
        columns.addAll(PUSH);
        return new Section.Table("drawn-fans", "Fans", columns, rows);
    }

    static List<Value> fan(
            String id,
            String spin,
            double forward,
            double right,
            double up,
            double thrustN,
            double pushForward,
            double pushRight,
            double pushUp) {
        return List.of(
                Value.words("part", id),
                Value.words("spin", spin),
                Value.of("place-forward", forward),
                Value.of("place-right", right),
                Value.of("place-up", up),
                Value.of("tip-diameter", 0.14),
                Value.of("fan-thrust-at-lift-off", thrustN),
                Value.of("push-forward", pushForward),
                Value.of("push-right", pushRight),
                Value.of("push-up", pushUp));
    }

    private static List<Object> row(Value first, double... numbers) {
        List<Object> row = new ArrayList<>(List.of(first));
        for (double number : numbers) {
            row.add(number);
        }
        return row;
    }

    private static Section.Table table(
            String id, List<String> first, List<List<String>> groups, List<Object> row) {
        List<String> columns = new ArrayList<>(first);
        groups.forEach(columns::addAll);
        List<Value> values = new ArrayList<>();
        for (int k = 0; k < row.size(); k++) {
            values.add(
                    switch (row.get(k)) {
                        case Value value -> value;
                        case Double number -> Value.of(columns.get(k), number);
                        default -> throw new IllegalArgumentException("neither value nor number");
                    });
        }
        return new Section.Table(id, id, columns, List.of(values));
    }
}

package liftwright.logbook.reading;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import liftwright.plant.recording.Signal;
import liftwright.quantity.Dimension;
import liftwright.quantity.Quantity;
import liftwright.quantity.QuantityParser;
import liftwright.quantity.Reading;
import liftwright.quantity.UnitExpression;
import liftwright.rig.Problem;
import liftwright.rig.Problem.Code;
import liftwright.rig.shape.kind.Fields;
import liftwright.rig.shape.kind.Key;
import liftwright.rig.shape.kind.Nearest;
import liftwright.rig.shape.kind.Problems;
import liftwright.rig.shape.kind.Spot;
import liftwright.rig.shape.kind.Stated;
import liftwright.rig.text.YamlText;

/**
 * The file of a map of logs and what it says.
 *
 * @param map empty when there is any problem
 * @param problems everything wrong with it, in the order of the file
 */
public record MapReading(Optional<LogMap> map, List<Problem> problems) {

    public MapReading {
        problems = List.copyOf(problems);
    }

    /**
     * Reads a file. Never throws, whatever stands in it.
     *
     * @param fileName as problems shall call it
     * @param bytes the file
     */
    public static MapReading read(String fileName, byte[] bytes) {
        var text = YamlText.read(fileName, bytes);
        if (!text.problems().isEmpty()) {
            return new MapReading(Optional.empty(), text.problems());
        }
        if (text.root().isEmpty()) {
            var nothing =
                    new Problem(
                            Code.MISSING_KEY,
                            new Problem.Place(fileName, 1, 1, ""),
                            "a file that says nothing",
                            "a map of a log",
                            "");
            return new MapReading(Optional.empty(), List.of(nothing));
        }
        var problems = new Problems(fileName);
        var root = text.root().get();
        Optional<LogMap> map =
                MapKeys.SECTION
                        .read(root, Spot.top(root.span()), problems)
                        .map(fields -> new Binder(problems).map(fields));
        return problems.hasErrors()
                ? new MapReading(Optional.empty(), problems.inOrder())
                : new MapReading(map, List.of());
    }

    /** Makes the map of its keys. */
    private record Binder(Problems problems) {

        LogMap map(Fields fields) {
            var columns = new ArrayList<LogMap.MappedColumn>();
            var heads = new HashSet<String>();
            for (Stated<Fields> stated : fields.get(MapKeys.COLUMNS).orElse(List.of())) {
                Fields column = stated.value();
                Optional<String> head = column.get(MapKeys.HEAD).map(String::strip);
                if (head.isPresent() && !heads.add(head.get())) {
                    problems.add(
                            Code.DUPLICATE_KEY,
                            column.spotOf(MapKeys.HEAD),
                            "the head " + Problems.quote(head.get()) + " again",
                            "each head once",
                            "");
                }
                column(column).ifPresent(columns::add);
            }
            Optional<TimeForm> form = fields.get(MapKeys.TIME_FORM);
            Optional<LogMap.TimeColumn> time =
                    fields.get(MapKeys.TIME).map(head -> new LogMap.TimeColumn(head.strip(), form));
            if (time.isEmpty() && form.isPresent()) {
                problems.add(
                        Code.MISSING_KEY,
                        fields.spotOf(MapKeys.TIME_FORM),
                        "a form of times without their column",
                        "“time” beside it",
                        "");
            }
            return new LogMap(
                    fields.get(MapKeys.SEPARATOR),
                    fields.get(MapKeys.DECIMAL),
                    fields.get(MapKeys.HEAD_LINE),
                    time,
                    columns,
                    fields.get(MapKeys.IGNORE).orElse(List.of()).stream()
                            .map(stated -> stated.value().strip())
                            .collect(Collectors.toSet()));
        }

        private Optional<LogMap.MappedColumn> column(Fields fields) {
            Optional<Stated<String>> is = fields.stated(MapKeys.IS);
            Optional<HeadNames.Named> named = is.flatMap(s -> HeadNames.split(s.value()));
            if (is.isPresent() && named.isEmpty()) {
                String given = is.get().value();
                var signals = Stream.of(Signal.values()).map(Signal::word).toList();
                String first = given.strip().replaceAll("\\s.*", "");
                problems.add(
                        Code.UNKNOWN_WORD,
                        is.get().spot(),
                        Problems.quote(given),
                        "a channel such as “current p.1”",
                        Nearest.to(given, signals)
                                .or(() -> Nearest.to(first, signals))
                                .map(near -> "Perhaps “" + near + "” is meant.")
                                .orElse(
                                        "Channels begin with: "
                                                + String.join(", ", signals)
                                                + "."));
            }
            Optional<Stated<String>> unit = fields.stated(MapKeys.UNIT);
            unit.ifPresent(stated -> named.ifPresent(n -> unit(stated, n.signal())));
            double factor = number(fields, MapKeys.FACTOR, 1);
            if (factor == 0) {
                problems.add(
                        Code.OUT_OF_RANGE,
                        fields.spotOf(MapKeys.FACTOR),
                        "0",
                        "a number other than 0",
                        "");
            }
            Optional<String> head = fields.get(MapKeys.HEAD);
            if (head.isEmpty() || named.isEmpty()) {
                return Optional.empty();
            }
            return Optional.of(
                    new LogMap.MappedColumn(
                            head.get().strip(),
                            is.orElseThrow().value(),
                            unit.map(Stated::value),
                            factor,
                            number(fields, MapKeys.OFFSET, 0),
                            notNegative(fields, MapKeys.ERROR, number(fields, MapKeys.ERROR, 0)),
                            notNegative(fields, MapKeys.ERROR_SHARE, share(fields))));
        }

        private void unit(Stated<String> stated, Signal signal) {
            boolean fits =
                    (stated.value().equals("1") && signal.dimension().equals(Dimension.NONE))
                            || (QuantityParser.parseUnit(stated.value())
                                            instanceof Reading.Parsed<UnitExpression>(var unit)
                                    && unit.dimension().equals(signal.dimension()));
            if (!fits) {
                problems.add(
                        Code.WRONG_UNIT,
                        stated.spot(),
                        "the unit " + Problems.quote(stated.value()),
                        "a unit of “" + signal.word() + "”, such as " + HeadNames.example(signal),
                        "");
            }
        }

        private double number(Fields fields, Key<String> key, double without) {
            Optional<Stated<String>> stated = fields.stated(key);
            if (stated.isEmpty()) {
                return without;
            }
            OptionalDouble number = plain(stated.get().value());
            if (number.isEmpty()) {
                problems.add(
                        Code.NOT_A_QUANTITY,
                        stated.get().spot(),
                        Problems.quote(stated.get().value()),
                        "a plain number such as 0.5",
                        "It is in the unit of the readings, which is not written again.");
            }
            return number.orElse(without);
        }

        private static OptionalDouble plain(String text) {
            return QuantityParser.parse(text, Dimension.NONE)
                                    instanceof Reading.Parsed<Quantity>(var quantity)
                            && text.indexOf('%') < 0
                    ? OptionalDouble.of(quantity.si())
                    : OptionalDouble.empty();
        }

        private double share(Fields fields) {
            Optional<Stated<String>> stated = fields.stated(MapKeys.ERROR_SHARE);
            if (stated.isEmpty()) {
                return 0;
            }
            if (QuantityParser.parse(stated.get().value(), Dimension.NONE)
                    instanceof Reading.Parsed<Quantity>(var quantity)) {
                return quantity.si();
            }
            problems.add(
                    Code.NOT_A_QUANTITY,
                    stated.get().spot(),
                    Problems.quote(stated.get().value()),
                    "a share such as 2 %",
                    "");
            return 0;
        }

        private double notNegative(Fields fields, Key<String> key, double value) {
            if (value < 0) {
                problems.add(
                        Code.OUT_OF_RANGE, fields.spotOf(key), "a number below 0", "0 or more", "");
            }
            return value;
        }
    }
}

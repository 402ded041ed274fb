package liftwright.rig.csv;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import liftwright.rig.Element;
import liftwright.rig.Problem.Code;
import liftwright.rig.Rig;
import liftwright.rig.shape.kind.Measure;
import liftwright.rig.shape.kind.Nearest;
import liftwright.rig.shape.kind.Problems;
import liftwright.rig.shape.kind.Range;
import liftwright.rig.table.StartState;
import liftwright.rig.table.StartState.Place;

/** States that a run begins with. */
final class StartRows {

    static final Column PART = Column.neededText("part");
    static final Column PLACE = Column.text("place");
    static final Column TEMPERATURE =
            Column.open("temperature", Measure.TEMPERATURE, Range.between(223.15, 673.15));
    static final Column CHARGE = Column.open("charge", Measure.SHARE, Range.SHARE);
    static final Column FUSE = Column.open("fuse", Measure.SHARE, Range.SHARE);
    static final Column NOTE = Column.text("note");

    static final Vocabulary WORDS =
            new Vocabulary(
                    List.of(PART, PLACE, TEMPERATURE, CHARGE, FUSE, NOTE),
                    Map.of(
                            "fan", "Write the name of the part under “part”.",
                            "pack", "Write the name of the part under “part”.",
                            "air temperature",
                                    "That of the air stands in the rig file: “site: temperature”."));

    /** Which places a part of each kind has, besides the whole. */
    private enum Kind {
        FAN(EnumSet.of(Place.JUNCTION, Place.SINK, Place.WINDING, Place.CASE)),
        PACK(EnumSet.of(Place.CORE, Place.SURFACE)),
        RUN(EnumSet.of(Place.COPPER, Place.INSULATION)),
        FUSE(EnumSet.noneOf(Place.class)),
        LUMP(EnumSet.noneOf(Place.class));

        private final Set<Place> places;

        Kind(Set<Place> places) {
            this.places = places;
        }

        private String words() {
            return places.stream().map(p -> "“" + p.word() + "”").collect(Collectors.joining(", "));
        }
    }

    private final Tabular table;
    private final Map<String, Kind> parts;
    private final Faults faults;
    private final Head head;
    private final Map<String, Integer> taken = new HashMap<>();

    private StartRows(Tabular table, Rig rig, Faults faults) {
        this.table = table;
        this.parts = parts(rig);
        this.faults = faults;
        this.head = Head.read(table, WORDS, faults);
    }

    private static Map<String, Kind> parts(Rig rig) {
        var parts = new LinkedHashMap<String, Kind>();
        rig.fans().forEach(fan -> parts.put(fan.id().text(), Kind.FAN));
        rig.packs().forEach(pack -> parts.put(pack.id().text(), Kind.PACK));
        rig.wiring()
                .chains()
                .forEach(chain -> chain.elements().forEach(e -> parts.put(e.id().text(), kind(e))));
        return parts;
    }

    private static Kind kind(Element element) {
        return switch (element) {
            case Element.Run _ -> Kind.RUN;
            case Element.Fuse _ -> Kind.FUSE;
            case Element.Joint _, Element.Pole _ -> Kind.LUMP;
        };
    }

    /** The table, if nothing is wrong with it. */
    static Optional<StartState> read(String file, Tabular table, Rig rig, Faults faults) {
        return new StartRows(table, rig, faults).read(file);
    }

    private Optional<StartState> read(String file) {
        head.require(WORDS, faults);
        if (faults.isEmpty()
                && head.find(TEMPERATURE).isEmpty()
                && head.find(CHARGE).isEmpty()
                && head.find(FUSE).isEmpty()) {
            faults.add(
                    Code.MISSING_KEY,
                    table.head().number(),
                    1,
                    TEMPERATURE.name(),
                    "no column of a state",
                    "“temperature [°C]”, “charge [%]” or “fuse [%]”",
                    "");
        }
        var numbers = new Numbers(table.separator(), faults);
        var rows = new ArrayList<StartState.Row>();
        for (Line line : table.rows()) {
            row(line, numbers).ifPresent(rows::add);
        }
        return faults.isEmpty() ? Optional.of(new StartState(file, rows)) : Optional.empty();
    }

    /** Empty after a problem. */
    private Optional<StartState.Row> row(Line line, Numbers numbers) {
        OptionalDouble temperature = open(TEMPERATURE, line, numbers);
        OptionalDouble charge = open(CHARGE, line, numbers);
        OptionalDouble fuse = open(FUSE, line, numbers);
        Head.Found named = head.find(PART).orElse(null);
        if (named == null) {
            return Optional.empty();
        }
        Cell cell = line.cells().get(named.index());
        Kind kind = parts.get(cell.text());
        if (kind == null) {
            noPart(cell);
            return Optional.empty();
        }
        Place place = head.find(PLACE).map(at -> place(line, at, kind)).orElse(Place.WHOLE);
        Integer before = taken.putIfAbsent(place + " " + cell.text(), line.number());
        if (before != null) {
            faults.add(
                    Code.DUPLICATE_ID,
                    cell,
                    PART.name(),
                    Problems.quote(cell.text()) + " again",
                    "each place of a part once",
                    "It stands in line " + before + " already.");
        }
        only(charge, CHARGE, kind == Kind.PACK, "a pack", line);
        only(fuse, FUSE, kind == Kind.FUSE, "a fuse", line);
        if (temperature.isEmpty() && charge.isEmpty() && fuse.isEmpty() && faults.isEmpty()) {
            faults.add(
                    Code.MISSING_KEY,
                    line.number(),
                    1,
                    TEMPERATURE.name(),
                    "a row that says nothing of its part",
                    "a temperature, a charge or the state of a fuse",
                    "Leave out such a row: the part is then as warm as the air.");
        }
        return faults.isEmpty()
                ? Optional.of(
                        new StartState.Row(
                                line.number(), cell.text(), place, temperature, charge, fuse))
                : Optional.empty();
    }

    private OptionalDouble open(Column column, Line line, Numbers numbers) {
        Optional<Head.Found> found = head.find(column);
        return found.isPresent() ? numbers.open(found.get(), line) : OptionalDouble.empty();
    }

    private void noPart(Cell cell) {
        boolean empty = cell.text().isEmpty();
        faults.add(
                empty ? Code.MISSING_KEY : Code.NO_SUCH_PART,
                cell,
                PART.name(),
                empty ? "an empty cell" : Problems.quote(cell.text()),
                "a fan, a pack or an element of the wiring",
                empty
                        ? ""
                        : Nearest.to(cell.text(), List.copyOf(parts.keySet()))
                                .map(near -> "Perhaps “" + near + "” is meant.")
                                .orElse(""));
    }

    private Place place(Line line, Head.Found at, Kind kind) {
        Cell cell = line.cells().get(at.index());
        String word = cell.text().toLowerCase(Locale.ROOT);
        for (Place place : Place.values()) {
            if (place.word().equals(word)
                    && (place == Place.WHOLE || kind.places.contains(place))) {
                return place;
            }
        }
        faults.add(
                Code.UNKNOWN_WORD,
                cell,
                PLACE.name(),
                Problems.quote(cell.text()),
                kind.places.isEmpty()
                        ? "nothing: such a part is equally warm"
                        : kind.words() + ", or nothing for the whole part",
                "");
        return Place.WHOLE;
    }

    private void only(OptionalDouble value, Column column, boolean fits, String what, Line line) {
        if (value.isPresent() && !fits) {
            Cell cell = line.cells().get(head.find(column).orElseThrow().index());
            faults.add(
                    Code.CONTRADICTION,
                    cell,
                    column.name(),
                    "“" + column.name() + "” of a part that is not " + what,
                    "“" + column.name() + "” only beside " + what,
                    "Leave the cell empty.");
        }
    }
}

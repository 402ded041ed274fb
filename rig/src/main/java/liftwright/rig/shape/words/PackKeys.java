package liftwright.rig.shape.words;

import static liftwright.rig.shape.kind.Key.computed;
import static liftwright.rig.shape.kind.Key.defaulted;
import static liftwright.rig.shape.kind.Key.later;
import static liftwright.rig.shape.kind.Key.open;
import static liftwright.rig.shape.kind.Key.required;

import java.util.List;
import java.util.Map;
import liftwright.quantity.Quantity;
import liftwright.rig.shape.kind.Amount;
import liftwright.rig.shape.kind.Either;
import liftwright.rig.shape.kind.Fields;
import liftwright.rig.shape.kind.Ident;
import liftwright.rig.shape.kind.Key;
import liftwright.rig.shape.kind.ListOf;
import liftwright.rig.shape.kind.MapOf;
import liftwright.rig.shape.kind.Measure;
import liftwright.rig.shape.kind.Range;
import liftwright.rig.shape.kind.Reference;
import liftwright.rig.shape.kind.Rule;
import liftwright.rig.shape.kind.Section;
import liftwright.rig.shape.kind.Stated;
import liftwright.rig.shape.kind.Text;
import liftwright.rig.shape.kind.Whole;

/** The section {@code packs}: one pack, or a group of equal packs. */
public final class PackKeys {

    public static final Key<String> ID =
            required(
                    "id",
                    new Ident(),
                    "Name of the group; its packs are id.1, id.2 and so on.",
                    "p");
    public static final Key<Integer> COUNT =
            defaulted(
                    "count",
                    new Whole("packs", 1, 200),
                    "1",
                    "one pack is declared",
                    "How many packs.",
                    "12");
    public static final Key<String> CELL =
            required("cell", new Reference(Reference.To.CELL_TYPE), "Cell type.", "C80");
    public static final Key<Integer> SERIES =
            required("series", new Whole("cells in series", 1, 200), "Cells in series.", "14");
    public static final Key<Integer> PARALLEL =
            defaulted(
                    "parallel",
                    new Whole("cells side by side", 1, 200),
                    "1",
                    "one string is declared",
                    "Strings side by side.",
                    "1");
    public static final Key<Quantity> MASS =
            open(
                    "mass",
                    Amount.positive(Measure.MASS),
                    "Whole pack, weighed.",
                    "2.56 kg ± 0.5 %",
                    "cells and extra mass are summed");
    public static final Key<Quantity> EXTRA_MASS =
            computed(
                    "extra mass",
                    Amount.notNegative(Measure.MASS),
                    "10 % ± 5 % bound of the cells' mass; common practice",
                    "Case, leads and links of one pack.",
                    "0.25 kg ± 5 %");
    public static final Key<Quantity> INTERCONNECT =
            computed(
                    "interconnect",
                    Amount.notNegative(Measure.RESISTANCE),
                    "0.1 mΩ ± 0.05 mΩ bound for each cell in series; from memory, measure yours",
                    "Resistance of links and leads inside one pack.",
                    "1.5 mΩ");
    public static final Key<Fields> AT =
            required(
                    "at",
                    PlaceKeys.CARRIED,
                    "Where; two ends spread the packs of a group evenly.",
                    "{mount: back, forward: -60 mm, up: -40…180 mm}");
    public static final Key<Quantity> CHARGE =
            defaulted(
                    "charge",
                    Amount.share(),
                    "100 %",
                    "a flight starts full",
                    "Share left at the start.",
                    "100 %");
    public static final Key<Quantity> TEMPERATURE =
            open(
                    "temperature",
                    Amount.of(Measure.TEMPERATURE, Range.between(223.15, 353.15)),
                    "Of the cells at the start.",
                    "25 °C",
                    "that of the air");
    public static final Key<List<Stated<Quantity>>> BOX =
            later(
                    "box",
                    new ListOf<>(
                            "edges: forward, right, up", Amount.positive(Measure.LENGTH), 3, 3),
                    "Edges of one pack.",
                    "[60 mm, 150 mm, 200 mm]");
    public static final Key<String> TWIN =
            open(
                    "twin",
                    new Ident(),
                    "Name of a mirrored group on the other side.",
                    "q",
                    "there is none");
    public static final Key<Either.Of<String, Map<String, Stated<String>>>> SERIALS =
            open(
                    "serials",
                    new Either<>(
                            new Text("the serial number of a single pack"),
                            new MapOf<>(
                                    "serial numbers by pack",
                                    new Text("a serial number"),
                                    MapOf.Names.OF_PARTS)),
                    "Serial numbers.",
                    "{p.1: 0417, p.2: 0418}",
                    "no serial numbers");
    public static final Key<Fields> EXCEPT_AT =
            open(
                    "at",
                    PlaceKeys.PLACE,
                    "Place of this pack, in the axes of what carries the group.",
                    "{back: 80 mm, up: 120 mm}",
                    "its place in the group");
    public static final Section EXCEPT_SECTION =
            Section.of(
                    "pack exception",
                    "What differs for one pack of a group.",
                    EXCEPT_AT,
                    CHARGE,
                    TEMPERATURE,
                    MASS);
    public static final Key<Map<String, Stated<Fields>>> EXCEPT =
            open(
                    "except",
                    new MapOf<>("exceptions by pack", EXCEPT_SECTION, MapOf.Names.OF_PARTS),
                    "What differs for single packs.",
                    "{p.3: {charge: 80 %}}",
                    "all are alike");
    public static final Key<String> NOTE =
            open("note", new Text("a note"), "For people only.", "bought in spring", "none");

    public static final Section SECTION =
            Section.of(
                            "pack group",
                            "One pack, or a group of equal packs.",
                            ID,
                            COUNT,
                            CELL,
                            SERIES,
                            PARALLEL,
                            MASS,
                            EXTRA_MASS,
                            INTERCONNECT,
                            AT,
                            CHARGE,
                            TEMPERATURE,
                            BOX,
                            TWIN,
                            SERIALS,
                            EXCEPT,
                            NOTE)
                    .with(Rule.atMostOne(MASS, EXTRA_MASS));

    private PackKeys() {}
}

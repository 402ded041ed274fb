package liftwright.rig.shape.words;

import static liftwright.rig.shape.kind.Key.defaulted;
import static liftwright.rig.shape.kind.Key.open;
import static liftwright.rig.shape.kind.Key.required;

import java.util.List;
import java.util.Map;
import liftwright.rig.shape.kind.Fields;
import liftwright.rig.shape.kind.Key;
import liftwright.rig.shape.kind.ListOf;
import liftwright.rig.shape.kind.MapOf;
import liftwright.rig.shape.kind.Section;
import liftwright.rig.shape.kind.Stated;
import liftwright.rig.shape.kind.Text;
import liftwright.rig.shape.kind.Whole;

/** The whole file: the sections of format 1 in their order. */
public final class RigKeys {

    /** The format that this program reads. */
    public static final int FORMAT = 1;

    public static final Key<Integer> LIFTWRIGHT =
            required(
                    "liftwright",
                    new Whole("the version of the format", 1, 1_000_000),
                    "Version of the format.",
                    "1");
    public static final Key<String> RIG =
            required("rig", new Text("the name of the rig"), "Name of the rig.", "Mudlark");
    public static final Key<Integer> REVISION =
            defaulted(
                    "revision",
                    new Whole("the number of the revision", 0, 1_000_000),
                    "0",
                    "no revision is declared",
                    "Counts the builder's own revisions.",
                    "3");
    public static final Key<String> NOTE =
            open(
                    "note",
                    new Text("a note"),
                    "What changed, for people.",
                    "second pod added",
                    "none");
    public static final Key<Fields> SITE =
            open(
                    "site",
                    SiteKeys.SECTION,
                    "The air and the ground.",
                    "{elevation: 4 m, temperature: 12 °C}",
                    "every value takes its default");
    public static final Key<Fields> DEMANDS =
            open(
                    "demands",
                    DemandKeys.SECTION,
                    "What is asked of the rig.",
                    "{hover: 60 s}",
                    "every value takes its default");
    public static final Key<Fields> LIMITS =
            open(
                    "limits",
                    LimitKeys.SECTION,
                    "Limits in place of the defaults.",
                    "{cell under load: 3.4 V}",
                    "the defaults hold");
    public static final Key<Fields> WEARER =
            open(
                    "wearer",
                    WearerKeys.SECTION,
                    "The person in the rig.",
                    "{mass: 62 kg, stature: 1.68 m, body: female}",
                    "nobody wears it");
    public static final Key<Map<String, Stated<Fields>>> CREW =
            open(
                            "crew",
                            new MapOf<>("people by name", CrewKeys.SECTION, MapOf.Names.NEW),
                            "People around the rig.",
                            "{watcher: {reaction: 1.5 s}}",
                            "nobody is near it")
                    .readBy(Key.Question.FAILURES);
    public static final Key<Map<String, Stated<Fields>>> MOUNTS =
            required(
                    "mounts",
                    new MapOf<>("mounts by name", MountKeys.SECTION, MapOf.Names.NEW),
                    "What carries the parts.",
                    "{back: {on: trunk}}");
    public static final Key<Map<String, Stated<Fields>>> FAN_TYPES =
            required(
                    "fan types",
                    new MapOf<>("fan types by name", FanTypeKeys.SECTION, MapOf.Names.NEW),
                    "Kinds of fan units.",
                    "{F140: {tip: 140 mm}}");
    public static final Key<List<Stated<Fields>>> FANS =
            required(
                    "fans",
                    new ListOf<>("fan groups", FanKeys.SECTION, 1, ListOf.LONGEST),
                    "The fans in their places.",
                    "[{id: left, type: F140, mount: left pod, rows: [4, 4], spacing: 150 mm}]");
    public static final Key<Map<String, Stated<Fields>>> CELLS =
            required(
                    "cells",
                    new MapOf<>("cell types by name", CellKeys.SECTION, MapOf.Names.NEW),
                    "Kinds of cells.",
                    "{C80: {capacity: 8 Ah}}");
    public static final Key<List<Stated<Fields>>> PACKS =
            required(
                    "packs",
                    new ListOf<>("pack groups", PackKeys.SECTION, 1, ListOf.LONGEST),
                    "The battery packs.",
                    "[{id: p, count: 12, cell: C80, series: 14, at: {mount: back}}]");
    public static final Key<Fields> WIRING =
            required(
                    "wiring",
                    WiringKeys.SECTION,
                    "How packs feed fans.",
                    "{feeds: [{id: feed, from: p, fans: {p.1: [left.1]}}]}");
    public static final Key<List<Stated<Fields>>> OTHER_PARTS =
            open(
                    "other parts",
                    ListOf.any("parts", OtherPartKeys.SECTION),
                    "Whatever else has mass.",
                    "[{id: frame, mass: 5.8 kg, at: {mount: back}}]",
                    "nothing else has mass");
    public static final Key<Fields> CONTROL =
            required(
                    "control",
                    ControlKeys.SECTION,
                    "How throttle reaches the fans.",
                    "{kind: shared throttle}");
    public static final Key<Fields> RESTRAINT =
            open(
                            "restraint",
                            RestraintKeys.SECTION,
                            "What holds the rig during tests.",
                            "{tether: {anchor height: 4 m, length: 2.5 m}}",
                            "nothing holds it")
                    .readBy(Key.Question.RESTRAINT);
    public static final Key<Fields> RATES =
            open(
                            "rates",
                            RateKeys.SECTION,
                            "How often parts fail, where you know it.",
                            "{fan: 2e-5 /h, pack: 1e-5 /h}",
                            "how likely failures are cannot be told")
                    .readBy(Key.Question.FAILURES);
    public static final Key<Fields> RISK_MATRIX =
            open(
                            "risk matrix",
                            RiskKeys.SECTION,
                            "Which risk a severity with a likelihood makes.",
                            "{source: rules of our club of 2025, frequent: [high, high, serious,"
                                    + " medium], probable: [high, high, serious, medium],"
                                    + " occasional: [high, serious, medium, low], remote: [serious,"
                                    + " medium, medium, low], improbable: [medium, medium, medium,"
                                    + " low]}",
                            "that of the parts book")
                    .readBy(Key.Question.FAILURES);
    public static final Key<Map<String, Stated<String>>> SERIALS =
            open(
                    "serials",
                    new MapOf<>(
                            "serial numbers by part",
                            new Text("a serial number"),
                            MapOf.Names.OF_PARTS),
                    "Serial numbers of fans and packs, all in one place.",
                    "{left.3: A17, p.7: 0417}",
                    "those of the groups");

    public static final Section SECTION =
            Section.of(
                    "rig file",
                    "A rig.",
                    LIFTWRIGHT,
                    RIG,
                    REVISION,
                    NOTE,
                    SITE,
                    DEMANDS,
                    LIMITS,
                    WEARER,
                    CREW,
                    MOUNTS,
                    FAN_TYPES,
                    FANS,
                    CELLS,
                    PACKS,
                    WIRING,
                    OTHER_PARTS,
                    CONTROL,
                    RESTRAINT,
                    RATES,
                    RISK_MATRIX,
                    SERIALS);

    private RigKeys() {}
}

package liftwright.rig.shape.words;

import static liftwright.rig.shape.kind.Key.computed;
import static liftwright.rig.shape.kind.Key.defaulted;
import static liftwright.rig.shape.kind.Key.later;
import static liftwright.rig.shape.kind.Key.open;

import liftwright.quantity.Quantity;
import liftwright.rig.shape.kind.Amount;
import liftwright.rig.shape.kind.Fields;
import liftwright.rig.shape.kind.Key;
import liftwright.rig.shape.kind.Measure;
import liftwright.rig.shape.kind.Range;
import liftwright.rig.shape.kind.Section;
import liftwright.rig.shape.kind.Word;

/** The section {@code site}: the air and the ground. */
public final class SiteKeys {

    public static final Key<Quantity> ELEVATION =
            defaulted(
                    "elevation",
                    Amount.of(Measure.HEIGHT, Range.between(-450, 6000)),
                    "0 m",
                    "common practice: sea level",
                    "Height of the ground above sea level.",
                    "4 m");
    public static final Key<Quantity> TEMPERATURE =
            computed(
                    "temperature",
                    Amount.of(Measure.TEMPERATURE, Range.between(223.15, 333.15)),
                    "that of the standard atmosphere (ISO 2533) at the elevation",
                    "Temperature of the air.",
                    "12 °C");
    public static final Key<Quantity> PRESSURE =
            computed(
                    "pressure",
                    Amount.of(Measure.PRESSURE, Range.between(40_000, 110_000)),
                    "that of the standard atmosphere (ISO 2533) at the elevation",
                    "Pressure of the air at the place itself, not reduced to sea level.",
                    "1009 hPa");
    public static final Key<Quantity> HUMIDITY =
            defaulted(
                    "humidity",
                    Amount.share(),
                    "60 %",
                    "from memory: a mild day",
                    "Relative humidity of the air.",
                    "80 %");
    public static final Key<Quantity> WIND =
            open(
                            "wind",
                            Amount.notNegative(Measure.SPEED),
                            "Mean wind at the height of the fans, for flights whose profile names"
                                    + " none.",
                            "3 m/s",
                            "still air, and said so")
                    .readBy(Key.Question.FLIGHT);
    public static final Key<Quantity> GUST =
            open(
                            "gust",
                            Amount.notNegative(Measure.SPEED),
                            "Highest speed of a gust.",
                            "5 m/s",
                            "no single gust")
                    .readBy(Key.Question.FLIGHT);
    public static final Key<Quantity> GUST_LENGTH =
            open(
                            "gust length",
                            Amount.positive(Measure.HEIGHT),
                            "Way over which a gust grows to its full speed.",
                            "30 m",
                            "30 m in a flight; from memory")
                    .readBy(Key.Question.FLIGHT);
    public static final Key<Quantity> WIND_FROM =
            open(
                            "wind from",
                            Amount.any(Measure.ANGLE),
                            "Where the wind comes from: 0° from the front, 90° from the right.",
                            "90°",
                            "from the front in a flight")
                    .readBy(Key.Question.FLIGHT);
    public static final Key<Quantity> TURBULENCE =
            later(
                    "turbulence",
                    Amount.notNegative(Measure.SPEED),
                    "Speed of the rig's own wash near the ground, root mean square.",
                    "1.5 m/s");
    public static final Key<String> SURFACE =
            later(
                    "surface",
                    Word.of(
                            "concrete",
                            "tarmac",
                            "gravel",
                            "grass",
                            "sand",
                            "mud",
                            "wood",
                            "mats",
                            "water",
                            "snow"),
                    "What the rig stands on.",
                    "mud");
    public static final Key<Quantity> FRICTION =
            defaulted(
                            "friction",
                            Amount.of(Measure.RATIO, Range.between(0, 2)),
                            "0.6",
                            "[SERWAY]: the low end of rubber or wood on a dry floor",
                            "Friction of soles or skids on the ground, force over force.",
                            "0.5 ± 0.1")
                    .readBy(Key.Question.FLIGHT);
    public static final Key<Quantity> SLOPE =
            defaulted(
                            "slope",
                            Amount.of(Measure.ANGLE, Range.between(0, 0.8)),
                            "0°",
                            "level ground",
                            "Slope of the ground.",
                            "3° ± 1°")
                    .readBy(Key.Question.FLIGHT);
    public static final Key<Quantity> SLOPE_TO =
            defaulted(
                            "slope to",
                            Amount.any(Measure.ANGLE),
                            "0°",
                            "the ground falls ahead",
                            "Which way the ground falls: 0° ahead of the start, 90° to the right.",
                            "180°")
                    .readBy(Key.Question.FLIGHT);

    public static final Key<Quantity> LENGTH =
            later("length", Amount.positive(Measure.HEIGHT), "Longer side of the floor.", "8 m");
    public static final Key<Quantity> WIDTH =
            later("width", Amount.positive(Measure.HEIGHT), "Shorter side of the floor.", "5 m");
    public static final Key<Quantity> HEIGHT =
            later("height", Amount.positive(Measure.HEIGHT), "Clear height.", "4 m");
    public static final Key<Quantity> OPENINGS =
            later(
                    "openings",
                    Amount.notNegative(Measure.AREA),
                    "Area of open doors and windows.",
                    "6 m²");
    public static final Section ROOM_SECTION =
            Section.of(
                    "room",
                    "The room around the rig, which warms and turns its own air over.",
                    LENGTH,
                    WIDTH,
                    HEIGHT,
                    OPENINGS);
    public static final Key<Fields> ROOM =
            later(
                    "room",
                    ROOM_SECTION,
                    "The room; without it the rig is outdoors.",
                    "{length: 8 m, width: 5 m, height: 4 m}");

    public static final Section SECTION =
            Section.of(
                    "site",
                    "The air and the ground of the place.",
                    ELEVATION,
                    TEMPERATURE,
                    PRESSURE,
                    HUMIDITY,
                    WIND,
                    GUST,
                    GUST_LENGTH,
                    WIND_FROM,
                    TURBULENCE,
                    SURFACE,
                    FRICTION,
                    SLOPE,
                    SLOPE_TO,
                    ROOM);

    private SiteKeys() {}
}

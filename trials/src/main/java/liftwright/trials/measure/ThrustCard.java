package liftwright.trials.measure;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import liftwright.answer.Section;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.quantity.Measure;
import liftwright.review.stand.StandQuestion;
import liftwright.rig.FanType;
import liftwright.rig.LimitName;
import liftwright.rig.RigPath;
import liftwright.trials.Channel.Instrument;
import liftwright.trials.Reading;

/** Thrust, current, speed and voltage of one bare fan over throttle. */
final class ThrustCard {

    /** Thrust of single fans about that of their lot; a fan beyond it goes back. */
    private static final double LOT_SHARE = 0.05;

    private static final Doubts.LeftOut THRUST =
            Doubts.LeftOut.even(
                    0.04,
                    "coefficients of a rotor drift by 3 to 10 % over speed (UIUC rotors), and throttle is"
                            + " not quite duty");
    private static final Doubts.LeftOut CURRENT =
            Doubts.LeftOut.even(
                    0.08,
                    "controllers lose more at part throttle than their declared losses; common"
                            + " practice");
    private static final Doubts.LeftOut SPEED =
            Doubts.LeftOut.even(0.02, "a motor that warms, throttle that is not quite duty");
    private static final Doubts.LeftOut VOLTAGE =
            Doubts.LeftOut.even(0.01, "leads of the bench, and cells that have not quite settled");

    private static final int PER_STEP = 4;

    private final Asked asked;
    private final Doubts doubts = new Doubts("thrust");
    private final Sheet sheet;
    private final List<OneFan> fans = new ArrayList<>();
    private final List<Double> throttles;
    private final List<Wanted> wanted = new ArrayList<>();

    ThrustCard(Asked asked) {
        this.asked = asked;
        sheet = new Sheet(asked);
        throttles = asked.throttles();
    }

    Optional<Measured> content() {
        for (FanType type : asked.fanTypes()) {
            OneFan.declare(asked, type, doubts)
                    .ifPresentOrElse(
                            this::fan,
                            () -> sheet.note("no pack feeds a fan of type " + type.name()));
        }
        words();
        sheet.leftOut(wanted);
        return Predicted.of(asked, doubts, wanted, Predicted.DRAWS, this::model)
                .map(predicted -> sheet.done(predicted, table(predicted.readings())));
    }

    private Predicted.Model model() {
        List<OneFan.Bench> benches = fans.stream().map(OneFan::bench).toList();
        return (p, out) -> {
            int at = 0;
            for (OneFan.Bench bench : benches) {
                bench.load(p);
                for (double throttle : throttles) {
                    bench.operate(throttle);
                    out[at++] = bench.thrustN();
                    out[at++] = bench.busA();
                    out[at++] = bench.speedRadps();
                    out[at++] = bench.terminalV();
                }
            }
        };
    }

    private void fan(OneFan fan) {
        fans.add(fan);
        OneFan.Bench bench = fan.bench();
        bench.load(doubts.rows().table().nominal());
        for (double throttle : throttles) {
            bench.operate(throttle);
            String words = fan.type().name() + " at " + percent(throttle) + " throttle";
            Instrument stand = stand(words, bench.thrustN());
            wanted.add(Wanted.of(words + ", thrust", Measure.THRUST, stand, THRUST));
            wanted.add(
                    Wanted.of(
                            words + ", current of the supply",
                            Measure.CURRENT,
                            Instruments.CLAMP,
                            CURRENT));
            wanted.add(
                    Wanted.of(words + ", speed", Measure.ROTATION, Instruments.TACHOMETER, SPEED));
            wanted.add(
                    Wanted.of(
                            words + ", voltage at the controller",
                            Measure.VOLTAGE,
                            Instruments.VOLTMETER,
                            VOLTAGE));
        }
        sheet.note(
                fan.type().name()
                        + " is fed by pack "
                        + asked.rig().packs().get(fan.pack()).id()
                        + ", full and settled, without wires of the rig; bare, with no grille, its"
                        + " label worth what the rig file says, its installation factor 1.");
        lot(fan.type(), bench);
    }

    private void lot(FanType type, OneFan.Bench bench) {
        bench.operate(throttles.getLast());
        sheet.good(
                Sentence.words(type.name() + " at " + percent(throttles.getLast()) + " throttle: ")
                        .then(Measure.THRUST, (1 - LOT_SHARE) * bench.thrustN())
                        .then(" to ")
                        .then(Measure.THRUST, (1 + LOT_SHARE) * bench.thrustN())
                        .then(", else it goes back (lot scatter ± ")
                        .then(Measure.PERCENT, LOT_SHARE)
                        .then(", common practice); above it the scale is asked first"));
        type.rotor()
                .topSpeed()
                .ifPresent(
                        top ->
                                sheet.good(
                                        Sentence.words("speed of " + type.name() + " below ")
                                                .then(Measure.ROTATION, share() * top.si())
                                                .then(
                                                        " ("
                                                                + asked.rig()
                                                                        .limits()
                                                                        .origin(
                                                                                LimitName
                                                                                        .ROTOR_SPEED_SHARE)
                                                                + ")")));
        RigPath at = RigPath.of("fan types", type.name());
        sheet.write(at.child("bench"), "bench: ________ (a file of the rows)");
        sheet.write(at.child("scatter"), "scatter: ± ________ % each");
    }

    private double share() {
        return asked.rig().limits().si(LimitName.ROTOR_SPEED_SHARE);
    }

    /** The error of the planned stand at this thrust, or that of one that nobody planned. */
    private Instrument stand(String words, double thrustN) {
        return asked.stand()
                .filter(_ -> thrustN > 0)
                .map(
                        stand ->
                                new Instrument(
                                        "thrust stand " + stand.name() + ", " + words,
                                        StandQuestion.expandedN(stand, thrustN),
                                        0,
                                        "budget of the stand file"
                                                + (thrustN > stand.thrustN()
                                                        ? ", beyond its greatest thrust"
                                                        : "")))
                .orElse(Instruments.STAND);
    }

    private Section.Table table(List<Reading> readings) {
        Map<String, List<Value>> rows = new LinkedHashMap<>();
        for (Reading reading : readings) {
            String part = reading.channel().part();
            String step = part.substring(0, part.lastIndexOf(','));
            rows.computeIfAbsent(
                            step,
                            _ -> new ArrayList<>(List.of(Value.words("measuring-what", step))))
                    .add(Value.of(reading.channel().field(), reading.expectedSi(), reading.band()));
        }
        rows.values().removeIf(row -> row.size() <= PER_STEP);
        return new Section.Table(
                sheet.id("readings"),
                "What should be read",
                List.of(
                        "measuring-what",
                        "reading-thrust",
                        "reading-current",
                        "reading-rotation",
                        "reading-voltage"),
                List.copyOf(rows.values()));
    }

    static String percent(double share) {
        return String.format(Locale.ROOT, "%.0f %%", 100 * share);
    }

    private void words() {
        sheet.step(
                "The stand holds what the card’s loads ask. Nobody in the plane of the rotor; a"
                        + " barrier there; the cut in the hand of the second person.");
        sheet.step(
                "Check the cell with a known mass where the thrust will pull. Write down air"
                        + " temperature and the station’s pressure. Tare, fan in place and still.");
        sheet.step(
                "Pack full and rested. Bare fan, free air before and behind it. Voltage is read at"
                        + " the controller, current in the supply lead.");
        sheet.step(
                "Up through the throttles of the table, five seconds each, reading all four; down"
                        + " again the same way; tare. Let the motor cool to the hand. Five times.");
        sheet.step(
                "Once more at full throttle with grille or guard in place: the difference is what"
                        + " they cost.");
        sheet.step("A second and a third fan of the lot at full throttle, by their serials.");
        sheet.good("up and down differ by less than the stand’s error");
        if (asked.stand().isEmpty()) {
            sheet.note(
                    "No stand is planned in a file: its error is a guess. “check --stand” tells how"
                            + " well yours will measure.");
        }
        if (asked.card().run().isPresent()) {
            sheet.note(
                    "What warms and where to stop is predicted on the rig’s wires; thrust, current and"
                            + " speed of this table are those straight on the pack, which a bench table"
                            + " is made of.");
        }
        sheet.note(
                "Throttle is taken as duty; that of a real controller is not. Compare thrust at the"
                        + " speed that is read, not at the throttle.");
    }
}

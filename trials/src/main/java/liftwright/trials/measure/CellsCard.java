package liftwright.trials.measure;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.plant.SiteAir;
import liftwright.plant.parameters.ParameterTable;
import liftwright.plant.supply.CellDraw;
import liftwright.plant.supply.Cells;
import liftwright.plant.supply.PackBank;
import liftwright.quantity.Measure;
import liftwright.rig.CellType;
import liftwright.rig.Pack;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;
import liftwright.trials.Channel;

/**
 * Rest voltage, sag under a pulse and recovery of each kind of pack ({@link Pulse}), and the
 * resistance that comes of it.
 */
final class CellsCard {

    /** Length of the pulse and of the rest after it, s. */
    static final double PULSE_S = 10;

    static final double REST_S = 60;

    /** Shortly after a step, when pairs have hardly begun, s. */
    static final double SHORTLY_S = 0.1;

    /** Current of the pulse over capacity, 1/h. */
    private static final double RATE = 5;

    private static final double SPREAD_NEW_V = 0.010;
    private static final double SPREAD_WATCH_V = 0.030;
    private static final double SPREAD_OUT_V = 0.050;
    private static final double RETIRE_RESISTANCE = 1.5;
    private static final double RETIRE_CAPACITY = 0.8;

    private static final Doubts.LeftOut LAW =
            Doubts.LeftOut.even(
                    0.006,
                    "curve of rest voltage from cell to cell, hysteresis; common practice, and what"
                            + " held-out discharges of two measured cells showed");
    private static final Doubts.LeftOut SAG =
            new Doubts.LeftOut(
                    0.15,
                    0.15,
                    "resistance that falls as current grows, and pairs that are not two; common"
                            + " practice");

    private static final Doubts.LeftOut FALL =
            Doubts.LeftOut.even(
                    0.25,
                    "slow resistances are known worse than that at once, and the curve of rest"
                            + " voltage is steep at its ends; common practice");

    private static final Doubts.LeftOut RISE =
            Doubts.LeftOut.even(
                    0.6,
                    "cells recover more slowly than one or two pairs do: on two measured cells half"
                            + " of the slow drop was still there when it should have gone");

    /** Readings of each. */
    private static final int PER_PACK = 7;

    /** A kind of pack on the bench. */
    private record Benched(Pack pack, int number, double pulseA) {}

    private final Asked asked;
    private final Rig rig;
    private final Doubts doubts = new Doubts("cells");
    private final SiteAir air;
    private final PackBank bank;
    private final Sheet sheet;
    private final List<Benched> benched = new ArrayList<>();
    private final List<Wanted> wanted = new ArrayList<>();

    CellsCard(Asked asked) {
        this.asked = asked;
        rig = asked.rig();
        air = SiteAir.declare(rig.site(), doubts.rows());
        bank = PackBank.declare(rig, doubts.rows());
        sheet = new Sheet(asked);
    }

    Optional<Measured> content() {
        Map<String, Integer> first = new LinkedHashMap<>();
        List<CellType> types = asked.cellTypes();
        for (int k = 0; k < rig.packs().size(); k++) {
            Pack pack = rig.packs().get(k);
            if (types.contains(pack.cell())) {
                first.putIfAbsent(pack.declaredAt().toString(), k);
            }
        }
        first.values().forEach(this::pack);
        words(types);
        sheet.leftOut(wanted);
        return Predicted.of(asked, doubts, wanted, Predicted.DRAWS, this::model).map(sheet::done);
    }

    private Predicted.Model model() {
        Cells cells = bank.newCells();
        ParameterTable table = doubts.rows().table();
        return (p, out) -> {
            double airK = air.temperatureK(p);
            bank.load(p, table, new CellDraw.Expected(), airK, cells);
            for (int k = 0; k < benched.size(); k++) {
                at(cells, benched.get(k), out, PER_PACK * k);
            }
        };
    }

    private void at(Cells cells, Benched one, double[] out, int at) {
        Pulse pulse = Pulse.of(cells, one.number, one.pack, one.pulseA);
        double rest = pulse.packV(0, false);
        double on = pulse.packV(SHORTLY_S, true);
        double end = pulse.packV(PULSE_S, true);
        double off = pulse.packAfterV(PULSE_S, SHORTLY_S);
        out[at] = rest;
        out[at + 1] = end;
        out[at + 2] = rest - on;
        out[at + 3] = on - end;
        out[at + 4] = off - end;
        out[at + 5] = pulse.packAfterV(PULSE_S, REST_S) - off;
        out[at + 6] = pulse.cellOhmAtReference();
    }

    private void pack(int number) {
        Pack pack = rig.packs().get(number);
        double[] nominal = doubts.rows().table().nominal();
        Cells cells = bank.newCells();
        bank.load(
                nominal,
                doubts.rows().table(),
                new CellDraw.Expected(),
                air.temperatureK(nominal),
                cells);
        double pulseA = pulseA(pack, cells.packCapacityAs(number));
        Benched one = new Benched(pack, number, pulseA);
        benched.add(one);
        long alike =
                rig.packs().stream()
                        .filter(other -> other.declaredAt().equals(pack.declaredAt()))
                        .count();
        String words =
                alike == 1
                        ? "pack " + pack.id()
                        : "each pack of " + pack.declaredAt().segments().getLast();
        volt(words + ", at rest before the pulse", Instruments.VOLTMETER, LAW);
        volt(words + ", at the end of the pulse", Instruments.VOLTMETER, LAW);
        volt(words + ", step when the current comes on", Instruments.STEP, SAG);
        volt(words + ", fall from there to the end of the pulse", Instruments.STEP, FALL);
        volt(words + ", step when the current goes off", Instruments.STEP, SAG);
        volt(words + ", rise in the minute after", Instruments.STEP, RISE);
        wanted.add(
                Wanted.of(
                        words + ": R0 of a cell at 25 °C, worked out",
                        Measure.RESISTANCE,
                        PulseResistance.instrument(pack, pulseA),
                        SAG));
        Pulse pulse = Pulse.of(cells, number, pack, pulseA);
        sheet.table(
                "pulse-" + benched.size(),
                "The pulse for " + words,
                List.of(
                        "measuring-what",
                        "pulse-current",
                        "pulse-time",
                        "pulse-sag",
                        "pulse-charge",
                        "pulse-retire"),
                List.of(
                        List.of(
                                Value.words("measuring-what", words),
                                Value.of("pulse-current", pulseA),
                                Value.of("pulse-time", PULSE_S),
                                Value.of(
                                        "pulse-sag",
                                        pulse.packV(0, false) - pulse.packV(PULSE_S, true)),
                                Value.of("pulse-charge", cells.startCharge(number)),
                                Value.of(
                                        "pulse-retire",
                                        RETIRE_RESISTANCE
                                                * pulse.cellOhmAtReference()
                                                / growth(pack.cell())))));
    }

    /** Declared resistance over that of a new cell. */
    private static double growth(CellType type) {
        return type.ageing().resistanceGrowth().map(one -> one.si()).orElse(1.0);
    }

    /** Five times what it gives in an hour, no more than its cells give for long; whole amperes. */
    private static double pulseA(Pack pack, double capacityAs) {
        double rated = RATE * capacityAs / 3600;
        double most =
                pack.cell()
                        .continuousCurrent()
                        .map(current -> current.si() * pack.parallel())
                        .orElse(rated);
        return Math.max(1, Math.floor(Math.min(rated, most)));
    }

    private void volt(String words, Channel.Instrument instrument, Doubts.LeftOut leftOut) {
        wanted.add(Wanted.of(words, Measure.VOLTAGE, instrument, leftOut));
    }

    private void words(List<CellType> types) {
        sheet.tool(Instruments.CELL_VOLTMETER, Measure.VOLTAGE);
        sheet.tool(Instruments.CLAMP, Measure.CURRENT);
        sheet.step(
                "Outdoors or on stone, sand and a way out at hand, one pack at a time, gloves on"
                        + " above 60 V. Write down its serial and the temperature of its cells.");
        sheet.step(
                "Let it rest an hour at the charge of the table. Read the pack and every cell at"
                        + " the balance lead.");
        sheet.step(
                "Load it with the current of the table for ten seconds: a bank of resistors, or a"
                        + " fan on a proved stand. Log voltage and current.");
        sheet.step(
                "Read just before, just after the current is on, at its end, just after it is off,"
                        + " and a minute later. Three pulses, five minutes between.");
        sheet.step(
                "R0 of a cell = (step of the pack’s voltage / step of current − interconnect) ×"
                        + " parallel / series, put to 25 °C by the temperature coefficient.");
        sheet.good(
                Sentence.words("cells at rest within ")
                        .then(Measure.VOLTAGE, SPREAD_NEW_V)
                        .then(" new; watch beyond ")
                        .then(Measure.VOLTAGE, SPREAD_WATCH_V)
                        .then("; out beyond ")
                        .then(Measure.VOLTAGE, SPREAD_OUT_V)
                        .then(" (common practice)"));
        sheet.good(
                Sentence.words("retired at ")
                        .then(Measure.PERCENT, RETIRE_RESISTANCE)
                        .then(" of the resistance when new, below ")
                        .then(Measure.PERCENT, RETIRE_CAPACITY)
                        .then(" of capacity, or swollen (common practice)"));
        sheet.good("no cell warmer than its neighbours after the pulses; none soft, none swollen");
        for (CellType type : types) {
            RigPath at = RigPath.of("cells", type.name());
            double ohm = type.resistance().map(one -> one.si()).orElse(0.0);
            sheet.write(
                    at.child("resistance"),
                    Measure.RESISTANCE,
                    ohm > 0 ? 0.1 * ohm : Instruments.CELL_VOLTMETER.errorSi() / RATE);
            sheet.write(at.child("measured"), "measured: ________ (a file of logged tests)");
        }
        sheet.note(
                "A pulse of ten seconds understates what a minute’s discharge sees: slow resistances"
                        + " need a logged discharge near the current of hover.");
        sheet.note(
                "Cells are taken as warm and as charged as the rig file says they start; where they"
                        + " are not, change it there and print again.");
    }
}

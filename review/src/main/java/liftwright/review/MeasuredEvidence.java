package liftwright.review;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import liftwright.answer.Evidence;
import liftwright.answer.Sentence;
import liftwright.plant.identify.CellFit;
import liftwright.plant.identify.CellUnknown;
import liftwright.plant.identify.FanFit;
import liftwright.plant.identify.FanFits;
import liftwright.plant.identify.FanUnknown.Channel;
import liftwright.quantity.Band;
import liftwright.quantity.Measure;
import liftwright.rig.CellType;
import liftwright.rig.FanType;
import liftwright.rig.Pack;
import liftwright.rig.Rig;
import liftwright.rig.table.BenchTable;

/**
 * What the tables beside a rig file told: values, what rows leave over, what was declared beside.
 */
final class MeasuredEvidence {

    private final List<Evidence.Told> told = new ArrayList<>();

    private MeasuredEvidence() {}

    static List<Evidence.Told> of(Rig rig) {
        var evidence = new MeasuredEvidence();
        for (FanType type : rig.fanTypes()) {
            if (type.performance() instanceof FanType.Performance.Measured measured) {
                evidence.fan(type, measured.table());
            }
        }
        Map<String, CellType> cells = new LinkedHashMap<>();
        rig.packs().stream().map(Pack::cell).forEach(cell -> cells.put(cell.name(), cell));
        cells.values().forEach(cell -> CellFit.of(cell).ifPresent(fit -> evidence.cell(cell, fit)));
        return evidence.told;
    }

    private void say(String part, Sentence sentence) {
        told.add(new Evidence.Told(part, sentence));
    }

    private void fan(FanType type, BenchTable table) {
        String part = "fan types/" + type.name();
        FanFit fit = FanFits.of(table, type);
        Sentence first =
                Sentence.words(table.rows().size() + " rows of " + table.file() + " from ")
                        .then(Measure.ROTATION, fit.leastRadps())
                        .then(" to ")
                        .then(Measure.ROTATION, fit.greatestRadps());
        String before = "; scatter of one row: ";
        for (Channel channel : Channel.values()) {
            if (fit.scatter(channel).isPresent()) {
                first =
                        first.then(before + word(channel) + " ")
                                .then(Measure.PERCENT, fit.scatter(channel).getAsDouble());
                before = ", ";
            }
        }
        say(part, first);
        if (!fit.outliers().isEmpty()) {
            say(
                    part,
                    Sentence.words(
                            lines(fit.outliers())
                                    + " of "
                                    + table.file()
                                    + " set aside: they follow no law of the others"));
        }
        for (FanFit.Difference one : fit.against(type)) {
            double ratio = one.declared() / one.found();
            double wide = Math.exp(1.96 * one.foundDeviation());
            say(
                    part,
                    Sentence.words("the declared " + one.label() + " over that of the rows: ")
                            .then(Measure.RATIO, ratio, band(ratio / wide, ratio * wide)));
        }
        fit.notes().forEach(note -> say(part, Sentence.words(note)));
    }

    private static String word(Channel channel) {
        return switch (channel) {
            case THRUST -> "thrust";
            case CURRENT -> "current";
            case TORQUE -> "torque";
            case VOLTAGE -> "driving voltage";
        };
    }

    private void cell(CellType cell, CellFit fit) {
        String part = "cells/" + cell.name();
        for (CellFit.Value value : fit.values()) {
            say(
                    part,
                    Sentence.words(value.unknown().words() + " ")
                            .then(
                                    measure(value.unknown()),
                                    value.value(),
                                    band(value.low(), value.high())));
        }
        long fitted = fit.judged().stream().filter(test -> !test.heldOut()).count();
        if (fit.isFound()) {
            say(
                    part,
                    Sentence.words(
                                    "found from "
                                            + fitted
                                            + (fitted == 1 ? " test" : " tests")
                                            + "; scatter of one row ")
                            .then(Measure.VOLTAGE, fit.scatterV()));
        }
        for (CellFit.Judged test : fit.judged()) {
            if (test.heldOut() || !fit.isFound()) {
                say(
                        part,
                        Sentence.words(
                                        test.file()
                                                + (test.heldOut() ? ", held out" : "")
                                                + ": off by ")
                                .then(Measure.VOLTAGE, test.rmsV())
                                .then(" rms, measured above computed by ")
                                .then(Measure.VOLTAGE, test.meanV())
                                .then(" in the mean"));
            }
        }
        String outOfStep =
                fit.judged().stream()
                        .filter(test -> !test.outOfStep().isEmpty())
                        .map(test -> test.file() + " " + lines(test.outOfStep()))
                        .collect(Collectors.joining("; "));
        if (!outOfStep.isEmpty()) {
            say(part, Sentence.words("set aside, current and voltage out of step: " + outOfStep));
        }
        fit.notes().forEach(note -> say(part, Sentence.words(note)));
    }

    private static Measure measure(CellUnknown unknown) {
        return switch (unknown) {
            case CAPACITY -> Measure.CHARGE;
            case RESISTANCE, FAST_RESISTANCE, SLOW_RESISTANCE -> Measure.RESISTANCE;
            case TEMPERATURE -> Measure.TEMPERATURE_DIFFERENCE;
            case FAST_TIME, SLOW_TIME -> Measure.TIME;
        };
    }

    private static Band band(double low, double high) {
        return new Band(low, high, 0.95, "covariance of the fit", 0, 0);
    }

    private static String lines(List<Integer> lines) {
        return (lines.size() == 1 ? "line " : "lines ")
                + lines.stream().map(String::valueOf).collect(Collectors.joining(", "));
    }
}

package liftwright.logbook.reading;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import liftwright.plant.recording.Signal;
import liftwright.plant.recording.Track;
import liftwright.quantity.QuantityParser;
import liftwright.quantity.Reading;
import liftwright.quantity.UnitExpression;
import liftwright.rig.Problem.Code;
import liftwright.rig.shape.kind.Nearest;
import liftwright.rig.shape.kind.Problems;

/** Understands heads of channels: {@code current p.1 [A]}. */
final class HeadNames {

    private static final Pattern WITH_UNIT = Pattern.compile("(.*?)\\s*\\[([^\\[\\]]*)\\]");
    private static final Pattern OTHERWISE =
            Pattern.compile("(.*?)(?:\\s*\\(([^()]*)\\)|\\s+in\\s+(\\S+)|[/,]\\s*(\\S+))");

    /** Longer words first, so that air temperature is no temperature of a part called air. */
    private static final List<Signal> BY_LENGTH =
            Stream.of(Signal.values())
                    .sorted(Comparator.comparingInt((Signal s) -> -s.word().length()))
                    .toList();

    /**
     * @param signal what is measured
     * @param of of what
     */
    record Named(Signal signal, String of) {}

    /** SI = value · slope + zero. */
    private record UnitOf(String text, double slope, double zero) {}

    private final PartNames parts;
    private final LogFaults faults;

    HeadNames(PartNames parts, LogFaults faults) {
        this.parts = parts;
        this.faults = faults;
    }

    /** The signal that a name begins with, and the rest; empty where it begins with none. */
    static Optional<Named> split(String name) {
        String plain = name.strip().replaceAll("\\s+", " ");
        String low = plain.toLowerCase(Locale.ROOT).replace('_', ' ');
        for (Signal signal : BY_LENGTH) {
            if (low.equals(signal.word())) {
                return Optional.of(new Named(signal, Track.ALL));
            }
            if (low.startsWith(signal.word() + " ")) {
                return Optional.of(new Named(signal, plain.substring(signal.word().length() + 1)));
            }
        }
        return Optional.empty();
    }

    /** A head of ours; empty after a fault, or where it is none at all. */
    Optional<LogColumn.Read> own(LogLine.Cell cell, int line) {
        Matcher matcher = WITH_UNIT.matcher(cell.text());
        boolean split = matcher.matches();
        String name = split ? matcher.group(1) : cell.text();
        Optional<Named> named = split(name);
        if (named.isEmpty()) {
            slip(cell, name, line);
            return Optional.empty();
        }
        if (!split) {
            unitElsewhere(cell, line);
            return Optional.empty();
        }
        int at = cell.column() + cell.text().codePointCount(0, matcher.start(2));
        Optional<UnitOf> unit =
                unit(named.get().signal(), matcher.group(2).strip(), line, at, name);
        return unit.flatMap(u -> read(cell, line, named.get(), u, 1, 0, 0, 0));
    }

    /** A head of which the map tells. */
    Optional<LogColumn.Read> mapped(LogMap.MappedColumn column, LogLine.Cell cell, int line) {
        Optional<Named> named = split(column.name());
        if (named.isEmpty()) {
            return Optional.empty(); // the map was refused for it
        }
        Matcher matcher = WITH_UNIT.matcher(cell.text());
        String unit =
                column.unit().orElseGet(() -> matcher.matches() ? matcher.group(2).strip() : "");
        if (unit.isEmpty() && !isShare(named.get().signal())) {
            faults.add(
                    Code.WRONG_UNIT,
                    line,
                    cell.column(),
                    column.name(),
                    "no unit of " + Problems.quote(cell.text()),
                    "a unit in the head or in the map",
                    "Write “unit” in the map.");
            return Optional.empty();
        }
        return unit(named.get().signal(), unit, line, cell.column(), column.name())
                .flatMap(
                        u ->
                                read(
                                        cell,
                                        line,
                                        named.get(),
                                        u,
                                        column.factor(),
                                        column.offset(),
                                        column.error(),
                                        column.errorShare()));
    }

    private static boolean isShare(Signal signal) {
        return signal == Signal.THROTTLE || signal == Signal.HUMIDITY;
    }

    private Optional<LogColumn.Read> read(
            LogLine.Cell cell,
            int line,
            Named named,
            UnitOf unit,
            double factor,
            double offset,
            double error,
            double errorShare) {
        Optional<PartNames.Wrong> wrong = parts.wrong(named.signal(), named.of());
        if (wrong.isPresent()) {
            faults.add(
                    Code.NO_SUCH_PART,
                    line,
                    cell.column(),
                    named.signal().word() + " " + named.of(),
                    wrong.get().found(),
                    wrong.get().expected(),
                    wrong.get().advice());
            return Optional.empty();
        }
        var channel =
                new Channel(
                        named.signal(),
                        named.of(),
                        Math.abs(error * unit.slope()),
                        errorShare,
                        cell.text());
        return Optional.of(
                new LogColumn.Read(
                        cell.text(),
                        cell.column(),
                        channel,
                        unit.text(),
                        offset,
                        factor * unit.slope(),
                        unit.zero()));
    }

    private Optional<UnitOf> unit(Signal signal, String text, int line, int at, String name) {
        if (text.isEmpty() || text.equals("1")) {
            if (isShare(signal)) {
                return Optional.of(new UnitOf("1", 1, 0));
            }
        }
        switch (QuantityParser.parseUnit(text)) {
            case Reading.Parsed<UnitExpression>(var unit) -> {
                if (unit.dimension().equals(signal.dimension())) {
                    return Optional.of(
                            new UnitOf(
                                    unit.text(),
                                    1 / unit.differenceFromSi(1),
                                    unit.hasOffset() ? unit.toSi(0) : 0));
                }
                faults.add(
                        Code.WRONG_UNIT,
                        line,
                        at,
                        name,
                        "the unit " + Problems.quote(text),
                        "a unit of “" + signal.word() + "”, such as " + example(signal),
                        "");
            }
            case Reading.Refused<UnitExpression>(var refusal) ->
                    faults.add(
                            Code.WRONG_UNIT,
                            line,
                            at,
                            name,
                            Problems.quote(text) + ": " + refusal.message(),
                            "a unit of “" + signal.word() + "”, such as " + example(signal),
                            refusal.suggestion()
                                    .map(s -> "Perhaps “" + s + "” is meant.")
                                    .orElse(""));
        }
        return Optional.empty();
    }

    private void unitElsewhere(LogLine.Cell cell, int line) {
        Matcher other = OTHERWISE.matcher(cell.text());
        String bare = other.matches() ? other.group(1).strip() : cell.text();
        Signal signal = split(bare).orElseThrow().signal();
        faults.add(
                Code.WRONG_UNIT,
                line,
                cell.column(),
                bare,
                Problems.quote(cell.text()),
                "the unit in square brackets",
                "Write it as in “" + bare + " [" + example(signal) + "]”.");
    }

    /** A name that was meant to be ours, and is not. */
    private void slip(LogLine.Cell cell, String name, int line) {
        List<String> words = Pattern.compile("\\s+").splitAsStream(name.strip()).toList();
        var signals = Stream.of(Signal.values()).map(Signal::word).toList();
        for (int n = Math.min(2, words.size()); n >= 1; n--) {
            var first = new ArrayList<>(words.subList(0, n));
            String begin = String.join(" ", first);
            Optional<String> near =
                    begin.length() < 4 ? Optional.empty() : Nearest.to(begin, signals);
            if (near.isPresent()) {
                first.clear();
                first.add(near.get());
                first.addAll(words.subList(n, words.size()));
                faults.add(
                        Code.UNKNOWN_WORD,
                        line,
                        cell.column(),
                        name,
                        Problems.quote(cell.text()),
                        "the name of a channel, or one that a map translates",
                        "Perhaps “" + String.join(" ", first) + "” is meant.");
                return;
            }
        }
    }

    static boolean isNear(String given, String wanted) {
        return Nearest.to(given, List.of(wanted)).isPresent()
                || given.toLowerCase(Locale.ROOT).startsWith(wanted.toLowerCase(Locale.ROOT));
    }

    static String example(Signal signal) {
        return switch (signal) {
            case THROTTLE, HUMIDITY -> "%";
            case THRUST, TETHER_LOAD -> "N";
            case SCALE -> "kg";
            case ROLL_MOMENT, PITCH_MOMENT, YAW_MOMENT -> "N·m";
            case CURRENT, WINDING_CURRENT -> "A";
            case VOLTAGE, CELL_VOLTAGE -> "V";
            case SPEED -> "rpm";
            case TEMPERATURE, AIR_TEMPERATURE -> "°C";
            case CHARGE_USED -> "Ah";
            case AIR_PRESSURE -> "hPa";
            case WIND -> "m/s";
        };
    }
}

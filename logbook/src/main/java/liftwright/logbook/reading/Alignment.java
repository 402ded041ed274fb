package liftwright.logbook.reading;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import liftwright.logbook.engine.Engine;
import liftwright.logbook.reading.Note.Kind;
import liftwright.plant.recording.Samples;
import liftwright.plant.recording.Signal;

/**
 * Brings the clocks of several logs of one test together, by channels that two of them share or
 * that move together. Where that is not plain it says so and leaves them apart.
 */
final class Alignment {

    /** Below this the clocks are left apart. */
    static final double CONFIDENT = 0.95;

    private static final int MOST_PAIRS = 8;
    private static final int SAMPLES = 40_000;

    /** Thrust, current and voltage follow a throttle within this, s. */
    static final double DELAY_S = 0.4;

    private final Engine engine;
    private final List<Clocked> done = new ArrayList<>();
    private final List<Note> notes;

    Alignment(Engine engine, List<Note> notes) {
        this.engine = engine;
        this.notes = notes;
    }

    /**
     * A pair of channels to compare.
     *
     * @param sign 1 where both rise together, −1 where one falls, 0 where it may be either
     * @param shared whether they measure the same
     */
    private record Pair(Channel first, Channel second, int sign, boolean shared) {}

    private record Match(Clocked to, Pair pair, Correlated.Peak peak) {}

    List<Clocked> align(List<Clocked> tables) throws IOException {
        for (Clocked table : tables) {
            done.add(done.isEmpty() ? table : one(table));
        }
        return done;
    }

    private Clocked one(Clocked table) throws IOException {
        Optional<Match> best = Optional.empty();
        int tried = 0;
        for (Clocked other : done) {
            if (other.shift() instanceof Shift.Unknown) {
                continue;
            }
            for (Pair pair : pairs(other, table)) {
                Optional<Match> match = match(other, table, pair);
                tried += match.isPresent() ? 1 : 0;
                if (match.isPresent() && (best.isEmpty() || rank(match.get()) > rank(best.get()))) {
                    best = match;
                }
            }
        }
        if (best.isEmpty()) {
            return apart(
                    table,
                    new Shift.Unknown(
                            "it shares no channel with another log, nor one that moves with it",
                            0,
                            0));
        }
        Match match = best.get();
        double shiftS = match.peak.shiftS() + match.to.shift().seconds();
        // The best of several is luck more often than one alone.
        double odds = match.peak.confidence() / Math.max(1e-12, 1 - match.peak.confidence());
        double confidence = odds / (odds + Math.max(1, tried));
        if (confidence < CONFIDENT) {
            return apart(
                    table,
                    new Shift.Unknown(
                            "its channels fit those of the others at no one shift plainly",
                            shiftS,
                            confidence));
        }
        String by =
                match.pair.shared
                        ? "“" + match.pair.first.name() + "” in both"
                        : "“"
                                + match.pair.second.name()
                                + "” beside “"
                                + match.pair.first.name()
                                + "” of "
                                + match.to.source();
        var found = new Shift.Found(shiftS, match.peak.toleranceS(), confidence, by);
        notes.add(
                new Note(
                        table.source(),
                        Kind.ALIGNED,
                        0,
                        String.format(
                                Locale.ROOT,
                                "Its clock is moved by %.3f s ± %.2g s, by %s; confidence %.1f %%.",
                                shiftS,
                                match.peak.toleranceS(),
                                by,
                                100 * Math.min(confidence, 0.999))));
        return table.on(found);
    }

    private static double rank(Match match) {
        return match.peak.confidence() * (match.pair.shared ? 2 : 1);
    }

    private Clocked apart(Clocked table, Shift.Unknown unknown) {
        notes.add(
                new Note(
                        table.source(),
                        Kind.NOT_ALIGNED,
                        0,
                        String.format(
                                Locale.ROOT,
                                "Its clock is left apart: %s (confidence %.0f %%). Record the"
                                        + " throttle in both logs, in steps of unlike length.",
                                unknown.why(),
                                100 * unknown.confidence())));
        return table.on(unknown);
    }

    private Optional<Match> match(Clocked other, Clocked table, Pair pair) throws IOException {
        Optional<Samples> first = samples(other, pair.first.name());
        Optional<Samples> second = samples(table, pair.second.name());
        if (first.isEmpty() || second.isEmpty()) {
            return Optional.empty();
        }
        double delayS = pair.shared ? 0 : DELAY_S;
        return Correlated.find(first.get(), second.get(), pair.sign, delayS)
                .map(peak -> new Match(other, pair, peak));
    }

    private Optional<Samples> samples(Clocked table, String column) throws IOException {
        Map<String, Samples> all = engine.samples(table.parquet(), List.of(column), SAMPLES);
        return Optional.ofNullable(all.get(column));
    }

    /** Those that measure the same first. */
    private static List<Pair> pairs(Clocked first, Clocked second) {
        var shared = new ArrayList<Pair>();
        var coupled = new ArrayList<Pair>();
        for (Channel a : first.channels()) {
            for (Channel b : second.channels()) {
                Move x = move(a.signal());
                Move y = move(b.signal());
                if (x == Move.BY_ITSELF || y == Move.BY_ITSELF) {
                    continue;
                }
                if (a.name().equals(b.name())) {
                    shared.add(new Pair(a, b, 1, true));
                } else {
                    coupled.add(new Pair(a, b, x.sign * y.sign, false));
                }
            }
        }
        shared.addAll(coupled);
        return List.copyOf(shared.subList(0, Math.min(MOST_PAIRS, shared.size())));
    }

    /** How a channel goes with the throttle. */
    private enum Move {
        UP(1),
        DOWN(-1),
        EITHER(0),
        BY_ITSELF(0);

        private final int sign;

        Move(int sign) {
            this.sign = sign;
        }
    }

    private static Move move(Signal signal) {
        return switch (signal) {
            case THROTTLE, THRUST, CURRENT, SPEED, WINDING_CURRENT -> Move.UP;
            case VOLTAGE, CELL_VOLTAGE -> Move.DOWN;
            case SCALE, TETHER_LOAD -> Move.EITHER;
            case ROLL_MOMENT,
                    PITCH_MOMENT,
                    YAW_MOMENT,
                    TEMPERATURE,
                    CHARGE_USED,
                    AIR_TEMPERATURE,
                    AIR_PRESSURE,
                    HUMIDITY,
                    WIND ->
                    Move.BY_ITSELF;
        };
    }
}

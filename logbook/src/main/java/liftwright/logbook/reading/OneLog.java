package liftwright.logbook.reading;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import liftwright.logbook.engine.Engine;
import liftwright.logbook.engine.Sql;
import liftwright.logbook.reading.Note.Kind;
import liftwright.rig.Problem.Code;
import liftwright.rig.shape.kind.Problems;

/** Reads one log in. */
final class OneLog {

    /** With more rows aside than this share, it is the file and not its rows. */
    private static final double MOST_ASIDE = 0.5;

    /** A clock that goes wrong more often than this, and in more rows than some, began anew. */
    private static final double MOST_BACK = 0.01;

    private static final int SOME = 10;

    private final Source source;
    private final int number;
    private final LogMap map;
    private final PartNames parts;
    private final Engine engine;
    private final LogFaults faults;
    private final List<Note> notes = new ArrayList<>();

    OneLog(Source source, int number, LogMap map, PartNames parts, Engine engine) {
        this.source = source;
        this.number = number;
        this.map = map;
        this.parts = parts;
        this.engine = engine;
        this.faults = new LogFaults(source.name());
    }

    /**
     * A log that was read in.
     *
     * @param table its columns
     * @param rejected its rows that were set aside
     */
    record Done(Clocked table, Optional<Rejected> rejected) {}

    LogFaults faults() {
        return faults;
    }

    List<Note> notes() {
        return notes;
    }

    /** Empty after a fault. */
    Optional<Done> read() throws IOException {
        Optional<LogText> text = LogText.open(source, number, engine, faults);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        Optional<LogHead> head =
                new HeadReader(source.name(), text.get(), map, parts, faults, notes).read();
        return head.isEmpty() ? Optional.empty() : convert(text.get(), head.get());
    }

    private Optional<Done> convert(LogText text, LogHead head) throws IOException {
        tellHow(text, head);
        double zeroS = new ClockZero(engine, text, head).findS();
        var converted = new Conversion(engine, text, head, number, zeroS).run();
        var aside = new AsideRows(text, head, converted.rejected());
        long rows = dataLines(text, head);
        if (converted.tooMany() || converted.rejected().size() > MOST_ASIDE * rows) {
            mostAside(head, aside, rows);
            return Optional.empty();
        }
        if (converted.kept() + converted.rejected().size() != rows) {
            throw new IOException(
                    source.name()
                            + ": "
                            + rows
                            + " rows, of which "
                            + converted.kept()
                            + " were read and "
                            + converted.rejected().size()
                            + " set aside");
        }
        var columns = head.channels().stream().map(read -> read.channel().name()).toList();
        var sampled = Sampled.of(engine, converted.parquet(), converted.kept(), columns);
        implausible(head, sampled);
        if (!faults.isEmpty()) {
            return Optional.empty();
        }
        return settle(head, converted, aside, sampled, zeroS);
    }

    private Optional<Done> settle(
            LogHead head,
            Conversion.Converted converted,
            AsideRows aside,
            Sampled sampled,
            double zeroS)
            throws IOException {
        Path read = converted.parquet();
        var channels = head.channels().stream().map(LogColumn.Read::channel).toList();
        var names = channels.stream().map(c -> Sql.name(c.name())).toList();
        var clocking = new Clocking(engine, read);
        Clocking.Clock clock = clocking.clock();
        if (head.clock() instanceof LogClock.OfDay && clock.notRising() > 0) {
            List<Long> midnights = clocking.midnights();
            if (!midnights.isEmpty()) {
                read = new Rewriting(engine, read, names).pastMidnight(midnights, out("day"));
                tell(Kind.CLOCK_JUMP, 0, "The clock goes past midnight; time goes on.");
                clocking = new Clocking(engine, read);
                clock = clocking.clock();
            }
        }
        List<Clocking.Aside> late =
                clock.rises() ? List.of() : clocking.asides(names, Conversion.MOST_REJECTED);
        if (isAnotherRecording(head, late, clock, aside)) {
            return Optional.empty();
        }
        var held = new ArrayList<Integer>();
        for (int c = 0; c < channels.size(); c++) {
            held.add(Repeats.rows(channels.get(c).signal(), sampled.values().get(c)));
        }
        if (!late.isEmpty() || held.stream().anyMatch(rows -> rows > 1)) {
            read = new Rewriting(engine, read, names).without(late, held, out("kept"));
            clock = new Clocking(engine, read).clock();
        }
        new LogNotes(this::tell, channels, sampled).tell(held, late, clock);
        Optional<Rejected> rejected = rejected(aside);
        var begin =
                zeroS == 0
                        ? Optional.<Instant>empty()
                        : Optional.of(Instant.ofEpochSecond((long) zeroS));
        var table =
                new Clocked(
                        source.name(),
                        read,
                        channels,
                        clock.rows(),
                        clock.firstS(),
                        clock.lastS(),
                        begin,
                        new Shift.Own());
        return Optional.of(new Done(table, rejected));
    }

    private Path out(String what) {
        return engine.scratch().resolve(what + "-" + number + ".parquet");
    }

    private Optional<Rejected> rejected(AsideRows aside) throws IOException {
        if (aside.byLine().isEmpty()) {
            return Optional.empty();
        }
        Rejected kept =
                aside.keep(source.name(), engine.scratch().resolve("rejected-" + number + ".csv"));
        Rejected.Row first = kept.first().getFirst();
        tell(
                Kind.ROWS_ASIDE,
                first.line(),
                kept.count()
                        + (kept.count() == 1 ? " row is" : " rows are")
                        + " set aside; the first in line "
                        + first.line()
                        + ": "
                        + first.reason()
                        + ".");
        return Optional.of(kept);
    }

    private void tell(Kind kind, long line, String sentence) {
        notes.add(new Note(source.name(), kind, line, sentence));
    }

    private void tellHow(LogText text, LogHead head) {
        String separator =
                switch (head.separator()) {
                    case '\t' -> "tabs";
                    case ';' -> "semicolons";
                    case '|' -> "bars";
                    default -> "commas";
                };
        tell(
                Kind.READ_AS,
                head.line(),
                "Read as "
                        + text.encoding().told()
                        + ", cells between "
                        + separator
                        + ", decimal "
                        + (head.decimal() == ',' ? "comma" : "point")
                        + ", heads in line "
                        + head.line()
                        + ", times as "
                        + head.clock().told()
                        + ".");
    }

    private static long dataLines(LogText text, LogHead head) {
        long skipped = 0;
        for (int k = 0; k < text.facts().skippedCount; k++) {
            skipped += text.facts().skipped[k] > head.line() ? 1 : 0;
        }
        return text.facts().lines - head.line() - skipped;
    }

    private void mostAside(LogHead head, AsideRows aside, long rows) {
        int told = 0;
        for (Rejected.Row row : aside.byLine().values()) {
            if (told++ == 3) {
                break;
            }
            faults.add(
                    row.reason().startsWith("no number") ? Code.NOT_A_QUANTITY : Code.SYNTAX,
                    row.line(),
                    1,
                    "",
                    row.reason() + "; so are most of the " + rows + " rows",
                    "a number in each cell, as many cells as line " + head.line() + " has names",
                    head.separator() == ','
                            ? "A decimal comma needs semicolons or tabs between the cells."
                            : "A map of the log can say which columns are not to be read.");
        }
    }

    private void implausible(LogHead head, Sampled sampled) {
        List<LogColumn.Read> channels = head.channels();
        for (int c = 0; c < channels.size(); c++) {
            LogColumn.Read read = channels.get(c);
            Plausible plausible = Plausible.of(read.channel().signal());
            double outside = plausible.outside(sampled.values().get(c));
            if (outside > MOST_ASIDE) {
                faults.add(
                        Code.OUT_OF_RANGE,
                        head.line(),
                        read.column(),
                        read.channel().name(),
                        Math.round(100 * outside)
                                + " % of the values under "
                                + Problems.quote(read.head())
                                + " beyond all that can be",
                        plausible.words(),
                        "Is the unit right, and do the columns stand under their own heads?");
            }
        }
    }

    /** Whether the clock begins anew for good; told as a fault. */
    private boolean isAnotherRecording(
            LogHead head, List<Clocking.Aside> late, Clocking.Clock clock, AsideRows aside)
            throws IOException {
        aside.add(late);
        long back = late.stream().filter(a -> a.why() == 3).count();
        long none = late.stream().filter(a -> a.why() == 0).count();
        boolean anew = back > Math.max(SOME, MOST_BACK * clock.rows());
        boolean timeless = none > MOST_ASIDE * clock.rows();
        if (!anew && !timeless) {
            return false;
        }
        String sign = anew ? "time does not rise" : "no time";
        var first =
                aside.byLine().values().stream()
                        .filter(row -> row.reason().startsWith(sign))
                        .findFirst()
                        .orElse(new Rejected.Row(head.line(), sign, ""));
        faults.add(
                anew ? Code.CONTRADICTION : Code.NOT_A_QUANTITY,
                first.line(),
                1,
                "time",
                first.reason(),
                anew ? "times that rise" : "a time in each row",
                anew
                        ? "Where the clock began anew, cut the file and read in both."
                        : "A map of the log can say how its times are written.");
        return true;
    }
}

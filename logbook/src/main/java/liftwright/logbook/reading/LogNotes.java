package liftwright.logbook.reading;

import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import liftwright.logbook.reading.Note.Kind;
import liftwright.plant.recording.Signal;

/** Tells what was found in a log. */
final class LogNotes {

    /** Takes a note. */
    interface Teller {
        void tell(Kind kind, long line, String sentence);
    }

    /** A step of time that is so many times the usual one is a gap. */
    private static final double GAP = 10;

    private final Teller teller;
    private final List<Channel> channels;
    private final Sampled sampled;

    LogNotes(Teller teller, List<Channel> channels, Sampled sampled) {
        this.teller = teller;
        this.channels = channels;
        this.sampled = sampled;
    }

    void tell(List<Integer> held, List<Clocking.Aside> late, Clocking.Clock clock) {
        double stepS = sampled.usualStepS();
        repeated(held, stepS);
        outOfStep(held, stepS);
        long again = late.stream().filter(a -> a.why() == 2).count();
        long wrong = late.stream().filter(a -> a.why() == 1 || a.why() == 3).count();
        if (again > 0) {
            teller.tell(
                    Kind.DUPLICATE,
                    0,
                    again + (again == 1 ? " row came" : " rows came") + " twice; once is kept.");
        }
        if (wrong > 0) {
            teller.tell(
                    Kind.CLOCK_JUMP,
                    0,
                    "The clock went wrong in "
                            + wrong
                            + (wrong == 1 ? " row" : " rows")
                            + ", which are set aside.");
        }
        if (stepS > 0 && clock.greatestStepS() > GAP * stepS) {
            teller.tell(
                    Kind.GAP,
                    0,
                    String.format(
                            Locale.ROOT,
                            "Once nothing was recorded for %.3g s, where %.3g s is usual: a gap,"
                                    + " or the clock leapt.",
                            clock.greatestStepS(),
                            stepS));
        }
    }

    private void repeated(List<Integer> held, double stepS) {
        for (int c = 0; c < channels.size(); c++) {
            if (held.get(c) > 1) {
                teller.tell(
                        Kind.REPEATED,
                        0,
                        String.format(
                                Locale.ROOT,
                                "“%s” repeats each value in about %d rows, so it is new every"
                                        + " %.3g s; the repetitions are left out.",
                                channels.get(c).name(),
                                held.get(c),
                                held.get(c) * stepS));
            }
        }
    }

    private void outOfStep(List<Integer> held, double stepS) {
        for (int i = 0; i < channels.size(); i++) {
            for (int v = 0; v < channels.size(); v++) {
                boolean pair =
                        channels.get(i).signal() == Signal.CURRENT
                                && channels.get(v).signal() == Signal.VOLTAGE
                                && channels.get(i).of().equals(channels.get(v).of())
                                && held.get(i) == 1
                                && held.get(v) == 1;
                OptionalInt rows =
                        pair
                                ? OutOfStep.rows(sampled.values().get(i), sampled.values().get(v))
                                : OptionalInt.empty();
                if (rows.isPresent()) {
                    int n = rows.getAsInt();
                    teller.tell(
                            Kind.OUT_OF_STEP,
                            0,
                            String.format(
                                    Locale.ROOT,
                                    "“%s” stands %d %s (%.3g s) %s “%s”: the sag does not stand"
                                            + " beside its current. Nothing was moved.",
                                    channels.get(v).name(),
                                    Math.abs(n),
                                    Math.abs(n) == 1 ? "row" : "rows",
                                    Math.abs(n) * stepS,
                                    n > 0 ? "behind" : "ahead of",
                                    channels.get(i).name()));
                }
            }
        }
    }
}

package liftwright.app;

import java.util.Locale;
import java.util.concurrent.atomic.AtomicLong;
import liftwright.numerics.Work;

/**
 * Tells a watcher how far a long computation is, from its third second on, on one line that is
 * wiped before the answer.
 */
final class Progress implements Work {

    private static final long QUIET_NS = 2_000_000_000L;
    private static final long PAUSE_NS = 250_000_000L;

    private final Voice voice;
    private final boolean watched;
    private final Interrupt interrupt;
    private final long startNs = System.nanoTime();
    private final AtomicLong done = new AtomicLong();
    private final AtomicLong nextNs = new AtomicLong(startNs + QUIET_NS);
    private volatile Stage stage = new Stage("", 1, startNs);
    private volatile boolean shown;

    private record Stage(String name, long total, long startNs) {}

    Progress(Voice voice, boolean watched, Interrupt interrupt) {
        this.voice = voice;
        this.watched = watched;
        this.interrupt = interrupt;
    }

    @Override
    public void stage(String name, long total) {
        done.set(0);
        stage = new Stage(name, Math.max(1, total), System.nanoTime());
    }

    @Override
    public void done(long units) {
        long now = done.addAndGet(units);
        if (watched) {
            long time = System.nanoTime();
            long next = nextNs.get();
            if (time >= next && nextNs.compareAndSet(next, time + PAUSE_NS)) {
                show(stage, now, time);
            }
        }
    }

    @Override
    public boolean stopped() {
        return interrupt.asked();
    }

    void wipe() {
        if (shown) {
            voice.aside("\r\u001b[K");
        }
    }

    private void show(Stage now, long units, long time) {
        double share = Math.min(1.0, (double) units / now.total);
        double spentS = (time - now.startNs) * 1e-9;
        String left =
                share > 0.02
                        ? String.format(Locale.ROOT, ", %.0f s left", spentS * (1 - share) / share)
                        : "";
        shown = true;
        voice.aside(
                String.format(
                        Locale.ROOT,
                        "\r\u001b[Kliftwright: %s, %.0f %%%s (Ctrl-C stops)",
                        now.name,
                        100 * share,
                        left));
    }
}

package liftwright.app.job;

import java.io.IOException;
import java.time.Clock;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import liftwright.app.flights.NotKeptException;
import liftwright.plant.identify.NotToldException;
import liftwright.plant.parameters.ImpossibleValueException;
import liftwright.quantity.UnitSystem;
import org.jspecify.annotations.Nullable;

/**
 * The jobs of one opened folder. One runs at a time, the others wait for their turn; each is
 * written down before it begins and whenever it stands otherwise.
 */
public final class Jobs {

    /** Kept until the reader lets some go. */
    public static final int MOST = 40;

    private static final long QUIET_NS = 400_000_000L;

    private final JobFolder folder;
    private final JobTask.Maker maker;
    private final Consumer<Throwable> faults;
    private final Clock clock;
    private final Map<Integer, JobNote> notes = new TreeMap<>();
    private final List<Integer> waiting = new ArrayList<>();
    private final AtomicLong version = new AtomicLong();
    private final AtomicLong moved = new AtomicLong(System.nanoTime());
    private @Nullable Running running;
    private boolean ended;

    private static final class Running {
        private final int id;
        private final JobWork work;
        private final CountDownLatch over = new CountDownLatch(1);
        private volatile @Nullable JobTask task;

        Running(int id, JobWork work) {
            this.id = id;
            this.work = work;
        }
    }

    /**
     * Finds what was written down; what ran when the program before this one ended stands still.
     *
     * @param maker makes what does a job
     * @param faults is told what went wrong by a mistake of ours
     * @throws IOException where the folder cannot be read
     */
    public Jobs(JobFolder folder, JobTask.Maker maker, Clock clock, Consumer<Throwable> faults)
            throws IOException {
        this.folder = folder;
        this.maker = maker;
        this.clock = clock;
        this.faults = faults;
        for (JobNote note : folder.read()) {
            notes.put(
                    note.id(),
                    note.state().isGoing()
                            ? note.in(
                                    JobState.STOPPED,
                                    note.state() == JobState.RUNNING
                                            ? "The program ended while this ran."
                                            : "The program ended before its turn came.")
                            : note);
        }
    }

    /** Grows whenever a list of jobs would read otherwise. */
    public long version() {
        return version.get();
    }

    /** All, the newest first. */
    public synchronized List<Job> all() {
        return notes.values().stream().map(this::job).toList().reversed();
    }

    /**
     * One of them.
     *
     * @throws RefusedException where there is none
     */
    public synchronized Job of(int id) {
        return job(note(id));
    }

    private Job job(JobNote note) {
        Running now = running;
        return new Job(
                note,
                now != null && now.id == note.id()
                        ? now.work.far()
                        : new Job.Far("", note.done(), Math.max(1, note.total()), -1));
    }

    private JobNote note(int id) {
        JobNote note = notes.get(id);
        if (note == null) {
            throw new RefusedException(
                    RefusedException.Why.MISSING, "There is no such job any more.");
        }
        return note;
    }

    /**
     * Begins a job. The same work is not begun twice: it goes on, with more flights where more are
     * asked for.
     *
     * @throws RefusedException where there are too many, or the disk does not take it
     */
    public synchronized Job begin(JobSpec spec) {
        Optional<JobNote> same =
                notes.values().stream().filter(n -> n.spec().isSameWork(spec)).findFirst();
        if (same.isPresent()) {
            return again(same.get(), spec);
        }
        if (notes.size() >= MOST) {
            throw new RefusedException(
                    RefusedException.Why.TOO_MANY,
                    "There are " + MOST + " jobs: let go of some that are no longer needed.");
        }
        try {
            var fresh =
                    new JobNote(
                            folder.free(),
                            spec,
                            clock.instant().truncatedTo(ChronoUnit.SECONDS),
                            JobState.WAITING,
                            "",
                            0,
                            total(spec));
            folder.write(fresh);
            return queue(fresh);
        } catch (IOException e) {
            throw disk(e);
        }
    }

    private Job again(JobNote note, JobSpec spec) {
        JobSpec joined = note.spec().joined(spec);
        if (note.state().isGoing()
                || (note.state() == JobState.DONE && joined.equals(note.spec()))) {
            return job(note);
        }
        return taken(note.of(joined).after(note.done(), total(joined)));
    }

    private static long total(JobSpec spec) {
        return spec.what() instanceof JobSpec.Flights flights ? flights.flights() : 1;
    }

    /**
     * Takes one up again that stands still.
     *
     * @throws RefusedException where it does not, or the disk does not take it
     */
    public synchronized Job resume(int id) {
        JobNote note = note(id);
        if (note.state().isGoing()) {
            return job(note);
        }
        if (note.state() == JobState.DONE) {
            throw new RefusedException(RefusedException.Why.REFUSED, "It is done already.");
        }
        return taken(note);
    }

    private Job taken(JobNote note) {
        try {
            JobNote next = note.in(JobState.WAITING, "");
            folder.write(next);
            folder.dropAnswers(note.id());
            return queue(next);
        } catch (IOException e) {
            throw disk(e);
        }
    }

    private Job queue(JobNote note) {
        notes.put(note.id(), note);
        waiting.add(note.id());
        next();
        version.incrementAndGet();
        return job(note(note.id()));
    }

    /**
     * Stops one; what is done stays. It may take a moment until it stands.
     *
     * @throws RefusedException where there is none
     */
    public synchronized Job stop(int id) {
        JobNote note = note(id);
        Running now = running;
        if (now != null && now.id == id) {
            now.work.stop();
        } else if (note.state() == JobState.WAITING) {
            waiting.remove(Integer.valueOf(id));
            stand(note.in(JobState.STOPPED, "Stopped before its turn came."));
        }
        return job(note(id));
    }

    /**
     * Takes one away with all that came of it.
     *
     * @throws RefusedException while it runs, and where the disk does not let go of it
     */
    public synchronized void forget(int id) {
        if (note(id).state().isGoing()) {
            throw new RefusedException(RefusedException.Why.REFUSED, "Stop it first.");
        }
        try {
            folder.remove(id);
        } catch (IOException e) {
            throw disk(e);
        }
        notes.remove(id);
        version.incrementAndGet();
    }

    /**
     * What is known of it by now, as a document.
     *
     * @throws RefusedException where nothing is, with the reason
     */
    public String document(int id, UnitSystem units) {
        JobNote note;
        JobTask task;
        synchronized (this) {
            note = note(id);
            Running now = running;
            task = now != null && now.id == id ? now.task : null;
        }
        try {
            Optional<String> kept =
                    task == null ? folder.answer(id, units) : Optional.<String>empty();
            if (kept.isPresent()) {
                return kept.get();
            }
            JobTask asked = task == null ? maker.make(note) : task;
            return asked.document(units).orElseThrow(Jobs::nothing);
        } catch (IOException e) {
            throw new RefusedException(
                    RefusedException.Why.DISK, "What came of it cannot be read: " + e.getMessage());
        } catch (NotKeptException
                | JobTask.NoAnswerException
                | NotToldException
                | ImpossibleValueException e) {
            throw new RefusedException(
                    RefusedException.Why.REFUSED, String.valueOf(e.getMessage()));
        }
    }

    private static RefusedException nothing() {
        return new RefusedException(
                RefusedException.Why.MISSING, "Nothing has come of it yet: wait until it is done.");
    }

    private static RefusedException disk(IOException e) {
        return new RefusedException(
                RefusedException.Why.DISK, "The disk does not take it: " + e.getMessage());
    }

    /** Begins the next that waits, where none runs. */
    private void next() {
        if (running != null || waiting.isEmpty() || ended) {
            return;
        }
        int id = waiting.removeFirst();
        var now = new Running(id, new JobWork(System::nanoTime, this::moved));
        running = now;
        stand(note(id).in(JobState.RUNNING, ""));
        Thread.ofPlatform().daemon().name("job-" + id).start(() -> run(now));
    }

    private void moved() {
        long time = System.nanoTime();
        long last = moved.get();
        if (time - last > QUIET_NS && moved.compareAndSet(last, time)) {
            version.incrementAndGet();
        }
    }

    private void run(Running now) {
        UnaryOperator<JobNote> outcome;
        try {
            outcome = worked(now);
        } catch (NotKeptException e) {
            outcome = stood(now, JobState.STOPPED, e.getMessage());
        } catch (JobTask.NoAnswerException | NotToldException | ImpossibleValueException e) {
            outcome = stood(now, JobState.FAILED, e.getMessage());
        } catch (IOException e) {
            outcome =
                    stood(
                            now,
                            JobState.STOPPED,
                            "What came of it could not be written: " + e.getMessage());
        } catch (RuntimeException | Error e) {
            faults.accept(e);
            outcome = stood(now, JobState.FAILED, "A fault of the program, not of your rig.");
        }
        end(now, outcome);
    }

    private UnaryOperator<JobNote> worked(Running now) throws IOException {
        JobNote note;
        synchronized (this) {
            note = note(now.id);
        }
        JobTask task = maker.make(note);
        now.task = task;
        boolean whole = task.run(now.work);
        for (UnitSystem units : UnitSystem.values()) {
            Optional<String> document = task.document(units);
            if (document.isPresent()) {
                folder.keepAnswer(now.id, units, document.get());
            }
        }
        return stood(now, whole ? JobState.DONE : JobState.STOPPED, task.told());
    }

    private static UnaryOperator<JobNote> stood(
            Running now, JobState state, @Nullable String told) {
        Job.Far far = now.work.far();
        return note ->
                note.in(state, oneLine(told == null ? "" : told)).after(far.done(), far.total());
    }

    private static String oneLine(String text) {
        return text.replaceAll("\\p{Cntrl}+", " ").strip();
    }

    private synchronized void end(Running now, UnaryOperator<JobNote> outcome) {
        running = null;
        JobNote note = outcome.apply(note(now.id));
        stand(note);
        if (note.state() == JobState.DONE) {
            letGoOfParts(note);
        }
        now.over.countDown();
        next();
    }

    /** Where the disk does not take it, what is written still lets it be taken up again. */
    private void stand(JobNote note) {
        notes.put(note.id(), note);
        version.incrementAndGet();
        try {
            folder.write(note);
        } catch (IOException e) {
            notes.put(
                    note.id(),
                    note.in(
                            note.state(),
                            oneLine(
                                    (note.told() + " This could not be written down: ")
                                            + e.getMessage())));
        }
    }

    /** Only now: until it is written down that it is done, they are what it goes on from. */
    private void letGoOfParts(JobNote note) {
        try {
            folder.dropParts(note.id());
        } catch (IOException e) {
            stand(note.in(note.state(), oneLine("Its parts stay: " + e.getMessage())));
        }
    }

    /** Stops what runs, and waits a moment until what is done of it is kept. */
    public void end() {
        Running now;
        synchronized (this) {
            ended = true;
            now = running;
        }
        if (now == null) {
            return;
        }
        now.work.stop();
        try {
            boolean over = now.over.await(900, TimeUnit.MILLISECONDS);
            if (!over) {
                return; // what was kept on the way stays; the next start finds it
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}

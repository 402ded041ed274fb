package liftwright.app.bay;

import java.nio.charset.StandardCharsets;
import java.util.Optional;
import liftwright.app.bay.FaultException.Kind;
import liftwright.app.flights.FlightsFile;
import liftwright.app.flights.ManyFlights;
import liftwright.app.job.JobFolder;
import liftwright.app.job.JobNote;
import liftwright.app.job.JobSpec;
import liftwright.app.job.JobTask;
import liftwright.app.job.JobTask.NoAnswerException;
import liftwright.app.job.KeptParts;
import liftwright.flight.disperse.FlightsOf;
import liftwright.review.Settings;
import liftwright.rig.Rig;
import liftwright.rig.file.Disk;
import liftwright.rig.file.RigReading;

/**
 * Makes what does a job, of the rig as it stands, which has to be the one that the job was begun
 * for.
 *
 * @param version of the program
 */
record JobTasks(Readings readings, OnRecord onRecord, String version, JobFolder folder, Disk disk)
        implements JobTask.Maker {

    /** One processor is left to the page. */
    static int threads() {
        return Math.max(1, Runtime.getRuntime().availableProcessors() - 1);
    }

    @Override
    public JobTask make(JobNote note) {
        try {
            return switch (note.spec().what()) {
                case JobSpec.Flights flights -> flights(note, flights);
                case JobSpec.Pairs() ->
                        new PairsTask(note.id(), rig(note.spec()), settings(), this);
                case JobSpec.Explain(String test) ->
                        new ExplainTask(note.id(), onRecord, note.spec(), test, this);
            };
        } catch (FaultException e) {
            throw new NoAnswerException(e.sentence());
        }
    }

    private static Settings settings() {
        return Settings.standard().withThreads(threads());
    }

    /**
     * Where a job keeps the parts that are finished. On another machine the last bits may differ.
     *
     * @param of what it is and of which rig or test
     */
    KeptParts parts(int job, String of, Settings settings) {
        String all =
                String.join(
                        "\n",
                        version,
                        of,
                        settings.withThreads(1).toString(),
                        System.getProperty("java.vm.version", ""),
                        System.getProperty("os.arch", ""));
        return KeptParts.open(
                folder.parts(job), RigReading.digest(all.getBytes(StandardCharsets.UTF_8)), disk);
    }

    /** A rig and the digest of what it was read from. */
    record Read(Rig rig, String digest) {}

    private Read rig(JobSpec spec) {
        RigReading reading = readings.of(spec.rig());
        if (!reading.digest().equals(spec.digest())) {
            throw new NoAnswerException(
                    "The rig is another than when this was begun: begin anew, or take the changes"
                            + " back.");
        }
        Rig rig =
                reading.rig()
                        .orElseThrow(
                                () ->
                                        new NoAnswerException(
                                                AnswerLines.harmless(
                                                        Answering.unreadable(reading.problems()))));
        return new Read(rig, reading.digest());
    }

    private JobTask flights(JobNote note, JobSpec.Flights what) {
        JobSpec spec = note.spec();
        Rig rig = rig(spec).rig();
        Profiles.Chosen profile = onRecord.profiles().chosen(spec.rig(), what.profile(), rig);
        if (!profile.digest().equals(what.profileDigest())) {
            throw new NoAnswerException(
                    "The profile is another than when this was begun: begin anew.");
        }
        var of = flightsOf(spec, what, rig);
        String command =
                "liftwright fly "
                        + quoted(spec.rig())
                        + profile.name()
                                .map(name -> " --profile " + quoted(beside(spec.rig(), name)))
                                .orElse("");
        var file = new FlightsFile(folder.flightsNamed(note.id()), folder.flights(note.id()), disk);
        return new FlightsTask(
                new ManyFlights(rig, profile.profile(), of, command),
                of,
                what.flights(),
                file,
                rig.name(),
                this);
    }

    FlightsOf flightsOf(JobSpec spec, JobSpec.Flights what, Rig rig) {
        return new FlightsOf(
                version,
                spec.digest(),
                rig.corrections().isEmpty() ? "none" : rig.corrections().digest(),
                what.profileDigest(),
                what.seed());
    }

    private static String beside(String rig, String profile) {
        return rig.substring(0, rig.lastIndexOf('/') + 1) + "profiles/" + profile;
    }

    private static String quoted(String name) {
        return name.matches("[A-Za-z0-9_./+-]+") ? name : "'" + name.replace("'", "'\\''") + "'";
    }

    /** What a job is to be, where things are as the page believes. */
    JobSpec spec(Json.Members body) {
        String rig = body.text("rig");
        return switch (body.text("kind")) {
            case "flights" -> {
                RigReading reading = readings.asked(body);
                yield new JobSpec(rig, reading.digest(), flights(body, rig, reading));
            }
            case "pairs" -> {
                RigReading reading = readings.asked(body);
                readable(reading);
                yield new JobSpec(rig, reading.digest(), new JobSpec.Pairs());
            }
            case "explain" -> {
                String test = body.text("test");
                yield new JobSpec(
                        rig,
                        onRecord.logbooks().test(rig, test).digest(),
                        new JobSpec.Explain(test));
            }
            default -> throw FaultException.badRequest("There is no such kind of job.");
        };
    }

    private JobSpec.What flights(Json.Members body, String rig, RigReading reading) {
        int flights = body.whole("flights");
        if (flights < 1 || flights > JobRoutes.MOST_FLIGHTS) {
            throw FaultException.badRequest(
                    "So many flights can be flown: 1 to " + JobRoutes.MOST_FLIGHTS + ".");
        }
        Profiles.Chosen profile =
                onRecord.profiles().chosen(rig, body.optionalText("profile"), readable(reading));
        return new JobSpec.Flights(
                profile.name(), profile.digest(), flights, seed(body.text("seed")));
    }

    /** As the command line reads one; a number of JSON could not hold them all. */
    static long seed(String text) {
        if (text.isEmpty()) {
            return Settings.standard().seed();
        }
        try {
            if (text.matches("-?[0-9]{1,19}")) {
                return Long.parseLong(text);
            }
        } catch (NumberFormatException e) {
            throw FaultException.badRequest("The seed is too long.");
        }
        throw FaultException.badRequest("A seed is a whole number.");
    }

    private static Rig readable(RigReading reading) {
        return reading.rig()
                .orElseThrow(
                        () ->
                                new FaultException(
                                        Kind.REFUSED,
                                        AnswerLines.harmless(
                                                Answering.unreadable(reading.problems()))));
    }

    /** Whether the rig is another than when a job was begun; a test never is. */
    boolean isStale(JobSpec spec) {
        if (spec.what() instanceof JobSpec.Explain) {
            return false;
        }
        try {
            return !readings.of(spec.rig()).digest().equals(spec.digest());
        } catch (FaultException e) {
            return true; // it is gone
        }
    }

    /** Empty where it lies open to no one: see {@link #isStale}. */
    Optional<String> whyStale(JobSpec spec) {
        return isStale(spec)
                ? Optional.of("This is of the rig as it was before it was changed.")
                : Optional.empty();
    }
}

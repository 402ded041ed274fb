package liftwright.app.bay;

import java.io.IOException;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import liftwright.answer.JsonText;
import liftwright.app.bay.FaultException.Kind;
import liftwright.app.job.Job;
import liftwright.app.job.JobFolder;
import liftwright.app.job.JobSpec;
import liftwright.app.job.Jobs;
import liftwright.app.job.RefusedException;
import liftwright.rig.file.Disk;

/**
 * Work that takes minutes: {@code jobs} lists it; {@code jobbegin}, {@code jobstop}, {@code
 * jobresume} and {@code jobforget} do what they say; {@code jobanswer} gives what has come of one
 * by now. Every tab is told how they stand down its stream of changes.
 */
final class JobRoutes {

    /** As the command line. */
    static final int MOST_FLIGHTS = 99_999;

    private final JobTasks tasks;
    private final Jobs jobs;

    JobRoutes(Bay bay, OnRecord onRecord) {
        this(bay, onRecord, new Disk());
    }

    JobRoutes(Bay bay, OnRecord onRecord, Disk disk) {
        var folder = new JobFolder(bay.folder().own().resolve("jobs"), disk);
        tasks =
                new JobTasks(
                        rig -> bay.drafts().of(rig).reading(),
                        onRecord,
                        bay.version(),
                        folder,
                        disk);
        try {
            jobs = new Jobs(folder, tasks, Clock.systemUTC(), bay::fault);
        } catch (IOException e) {
            throw new FaultException(
                    Kind.INTERNAL, "The jobs of this folder cannot be read: " + e.getMessage());
        }
        bay.hub()
                .tellToo(
                        new Hub.News() {
                            @Override
                            public long version() {
                                return jobs.version();
                            }

                            @Override
                            public boolean isEmpty() {
                                return jobs.all().isEmpty();
                            }

                            @Override
                            public void write(JsonText json) {
                                list(json);
                            }
                        });
        bay.atTheEnd(jobs::end);
    }

    List<Route> routes() {
        return List.of(
                Route.of("jobs", _ -> Reply.json(json -> json.object(() -> list(json)))),
                Route.of("jobbegin", call -> told(() -> begun(call.body()))),
                Route.of("jobstop", call -> told(() -> jobs.stop(id(call.body())))),
                Route.of("jobresume", call -> told(() -> resumed(id(call.body())))),
                Route.of("jobforget", this::forget),
                Route.of("jobanswer", this::answer));
    }

    private Job begun(Json.Members body) {
        try {
            return jobs.begin(tasks.spec(body));
        } catch (IllegalArgumentException e) {
            throw FaultException.badRequest("A name in this cannot be written down on a line.");
        }
    }

    private Job resumed(int id) {
        Job job = jobs.of(id);
        Optional<String> stale = tasks.whyStale(job.note().spec());
        if (stale.isPresent() && !job.note().state().isGoing()) {
            throw new FaultException(
                    Kind.STALE, stale.get() + " Begin anew, or take the changes back.");
        }
        return jobs.resume(id);
    }

    private Reply forget(Call call) {
        refusing(
                () -> {
                    jobs.forget(id(call.body()));
                    return true;
                });
        return Reply.json(json -> json.object(() -> list(json)));
    }

    private Reply answer(Call call) {
        var units = Asked.units(call.body().text("units"));
        int id = id(call.body());
        return new Reply.Document(refusing(() -> jobs.document(id, units)));
    }

    private static int id(Json.Members body) {
        return body.whole("job");
    }

    private Reply told(Supplier<Job> does) {
        Job job = refusing(does);
        return Reply.json(json -> json.object(() -> write(job, json.name("job"))));
    }

    private static <T> T refusing(Supplier<T> does) {
        try {
            return does.get();
        } catch (RefusedException e) {
            Kind kind =
                    switch (e.why()) {
                        case MISSING -> Kind.MISSING;
                        case TOO_MANY -> Kind.TOO_MANY;
                        case REFUSED -> Kind.REFUSED;
                        case DISK -> Kind.INTERNAL;
                    };
            throw new FaultException(kind, AnswerLines.harmless(String.valueOf(e.getMessage())));
        }
    }

    private void list(JsonText json) {
        json.each("jobs", jobs.all(), job -> write(job, json));
    }

    private void write(Job job, JsonText json) {
        JobSpec spec = job.note().spec();
        json.object(
                () -> {
                    json.name("job").whole(job.note().id());
                    json.member("rig", spec.rig());
                    json.member("title", title(spec.what()));
                    json.member("state", job.note().state().word());
                    json.member("told", AnswerLines.harmless(job.note().told()));
                    json.member("stage", job.far().stage());
                    json.member("far", job.far().words());
                    json.name("done").whole(job.far().done());
                    json.name("total").whole(job.far().total());
                    json.member("begun", job.note().begun().toString());
                    json.member("stale", tasks.whyStale(spec));
                    switch (spec.what()) {
                        case JobSpec.Flights flights -> {
                            json.member("kind", "flights");
                            json.member("profile", flights.profile());
                            json.name("flights").whole(flights.flights());
                            json.member("seed", Long.toString(flights.seed()));
                        }
                        case JobSpec.Pairs() -> json.member("kind", "pairs");
                        case JobSpec.Explain(String test) -> {
                            json.member("kind", "explain");
                            json.member("test", test);
                        }
                    }
                });
    }

    private static String title(JobSpec.What what) {
        return switch (what) {
            case JobSpec.Flights flights ->
                    (flights.flights() == 1 ? "1 flight" : flights.flights() + " flights")
                            + " of "
                            + flights.profile().orElse("the usual profile")
                            + ", seed "
                            + flights.seed();
            case JobSpec.Pairs() -> "two and three losses at once";
            case JobSpec.Explain(String test) -> "why test " + test + " went so";
        };
    }
}

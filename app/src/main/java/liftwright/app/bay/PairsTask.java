package liftwright.app.bay;

import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import liftwright.answer.Answer;
import liftwright.answer.AnswerJson;
import liftwright.app.job.JobTask;
import liftwright.app.job.KeepingWork;
import liftwright.app.job.KeptParts;
import liftwright.quantity.UnitSystem;
import liftwright.report.ReaderTexts;
import liftwright.review.FailureCase;
import liftwright.review.FailuresQuestion;
import liftwright.review.Settings;

/** Every two losses at once and every three fans, many of them told. */
final class PairsTask implements JobTask {

    /** Pairs that are told, the worst first: more than the question itself tells. */
    private static final int SHOWN = 60;

    private final JobTasks.Read of;
    private final Settings settings;
    private final JobTasks tasks;
    private final int job;
    private volatile String told = "";
    private final AtomicReference<Optional<? extends Answer>> found =
            new AtomicReference<>(Optional.empty());

    PairsTask(int job, JobTasks.Read of, Settings settings, JobTasks tasks) {
        this.job = job;
        this.of = of;
        this.settings = settings;
        this.tasks = tasks;
    }

    @Override
    public boolean run(Progress work) {
        String all = of.digest() + " every two and three, " + SHOWN + " shown";
        try (KeptParts parts = tasks.parts(job, all, settings)) {
            found.set(
                    FailuresQuestion.ask(
                            of.rig(),
                            of.digest(),
                            new FailureCase(SHOWN, true, true),
                            settings,
                            new KeepingWork(work, parts)));
            told = parts.told();
        }
        return found.get().isPresent();
    }

    @Override
    public String told() {
        return told;
    }

    @Override
    public Optional<String> document(UnitSystem units) {
        return found.get()
                .map(
                        answer ->
                                AnswerJson.write(
                                        answer,
                                        of.rig().name(),
                                        tasks.version(),
                                        new ReaderTexts(units)));
    }
}

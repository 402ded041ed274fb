package liftwright.app.bay;

import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import liftwright.answer.Answer;
import liftwright.answer.AnswerJson;
import liftwright.app.job.JobSpec;
import liftwright.app.job.JobTask;
import liftwright.app.job.KeepingWork;
import liftwright.app.job.KeptParts;
import liftwright.learning.replay.NotDrivenException;
import liftwright.logbook.store.StoredTest;
import liftwright.quantity.UnitSystem;
import liftwright.report.ReaderTexts;
import liftwright.review.Settings;
import liftwright.rig.Rig;

/** Why a test went as it did. */
final class ExplainTask implements JobTask {

    private final OnRecord onRecord;
    private final String rig;
    private final StoredTest test;
    private final Rig declared;
    private final JobTasks tasks;
    private final int job;
    private volatile String told = "";
    private final AtomicReference<Optional<? extends Answer>> found =
            new AtomicReference<>(Optional.empty());

    ExplainTask(int job, OnRecord onRecord, JobSpec spec, String named, JobTasks tasks) {
        this.job = job;
        this.onRecord = onRecord;
        this.tasks = tasks;
        rig = spec.rig();
        test = onRecord.logbooks().test(rig, named);
        if (!test.digest().equals(spec.digest())) {
            throw new NoAnswerException("The test is not the one that this was begun for.");
        }
        declared = onRecord.logbooks().declared(onRecord.logbooks().rigOf(rig, test));
    }

    @Override
    public boolean run(Progress work) {
        Optional<Answer> known = onRecord.learned().of(test.digest());
        try {
            found.set(known.isPresent() ? known : explained(work));
        } catch (NotDrivenException e) {
            throw new NoAnswerException(String.valueOf(e.getMessage()));
        } catch (FaultException e) {
            throw new NoAnswerException(e.sentence());
        }
        found.get().ifPresent(answer -> onRecord.learned().keep(test.digest(), answer));
        return found.get().isPresent();
    }

    private Optional<? extends Answer> explained(Progress work) {
        String all = test.digest() + " explained, made with " + test.entry().rig().digest();
        try (KeptParts parts = tasks.parts(job, all, Settings.standard())) {
            var answer =
                    TestAnswering.explained(
                            onRecord, rig, test, declared, new KeepingWork(work, parts));
            told = parts.told();
            return answer;
        }
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
                                        declared.name(),
                                        tasks.version(),
                                        new ReaderTexts(units)));
    }
}

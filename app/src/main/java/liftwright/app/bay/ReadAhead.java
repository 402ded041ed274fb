package liftwright.app.bay;

import java.time.Duration;
import liftwright.answer.Answer;
import liftwright.answer.AnswerJson;
import liftwright.numerics.Work;
import liftwright.quantity.UnitSystem;
import liftwright.report.ReaderTexts;
import liftwright.review.Settings;
import liftwright.review.Stage;
import liftwright.rig.Rig;
import liftwright.rig.draft.Draft;

/**
 * Does what the page will ask first while its browser still starts: reads the rig that was named
 * and works out what it lifts. Kept of it is the rig as read; what else is gained is that the code
 * is loaded when the page asks the same.
 */
final class ReadAhead {

    /** The longest that an end waits for it. */
    private static final Duration PATIENCE = Duration.ofSeconds(1);

    private final Bay bay;

    ReadAhead(Bay bay) {
        this.bay = bay;
    }

    /** Begins, and returns at once. */
    void start() {
        bay.open().ifPresent(this::start);
    }

    private void start(String name) {
        Thread reading =
                Thread.ofPlatform()
                        .daemon()
                        .name("reading ahead")
                        // Whoever asks the same is told what is amiss.
                        .uncaughtExceptionHandler((_, _) -> {})
                        .start(() -> read(name));
        bay.atTheEnd(() -> await(reading)); // before the draft that it opened is let go of
    }

    private void read(String name) {
        Draft draft = bay.drafts().of(name);
        Reply.json(json -> DocumentOut.write(name, draft.view(), json));
        draft.reading().rig().ifPresent(rig -> lift(rig, draft.reading().digest()));
    }

    private void lift(Rig rig, String digest) {
        Question.LIFT
                .staged(rig, digest, Settings.standard())
                .answer(Stage.NOMINAL, Work.quiet())
                .ifPresent(answer -> written(rig, answer));
    }

    private void written(Rig rig, Answer answer) {
        AnswerJson.write(answer, rig.name(), bay.version(), new ReaderTexts(UnitSystem.SI));
    }

    private static void await(Thread reading) {
        try {
            reading.join(PATIENCE.toMillis());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}

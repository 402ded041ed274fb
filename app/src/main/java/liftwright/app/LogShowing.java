package liftwright.app;

import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.stream.Collectors;
import liftwright.app.record.TrialsRecord;
import liftwright.logbook.ask.Compared;
import liftwright.logbook.ask.LogbookAnswer;
import liftwright.logbook.ask.LogbookAnswer.About;
import liftwright.logbook.ask.Shown;
import liftwright.logbook.engine.Engine;
import liftwright.logbook.store.Flaw;
import liftwright.logbook.store.Logbook;
import liftwright.logbook.store.SpoiltException;
import liftwright.logbook.store.StoredTest;
import liftwright.review.Settings;
import liftwright.rig.Rig;
import liftwright.trials.CardId;
import liftwright.trials.Planned;
import liftwright.trials.ask.Trials;
import liftwright.trials.evidence.Gate;
import liftwright.trials.evidence.Pass;

/**
 * {@code log show} and {@code log compare}.
 *
 * @param show prints an answer and tells the exit code
 */
record LogShowing(Options options, BiFunction<RigSource, LogbookAnswer, Exit> show) {

    /** Samples of a channel that two tests are compared by. */
    private static final int MOST_SAMPLES = 200_000;

    Exit show(
            About about,
            RigSource source,
            Logbook logbook,
            StoredTest test,
            List<Pass> passes,
            LocalDate today)
            throws IOException {
        var beside =
                new Shown.Beside(
                        test.entry().card().map(card -> standing(card, source, today)).orElse(""),
                        passes.stream()
                                .filter(p -> test.entry().card().equals(Optional.of(p.card())))
                                .filter(p -> p.on().equals(test.entry().date()))
                                .map(p -> p.outcome().word() + ", number " + p.number())
                                .collect(Collectors.joining("; ")),
                        logbook.records().notes(test.id()),
                        flaws(logbook, test));
        try (Engine engine = LogVerb.engine(logbook)) {
            return show.apply(source, Shown.of(about, logbook, test, beside, engine));
        }
    }

    private static List<Flaw> flaws(Logbook logbook, StoredTest test) throws IOException {
        try {
            logbook.digest(test.id());
            return List.of();
        } catch (SpoiltException e) {
            return e.flaws();
        }
    }

    /** Whether the card may be passed today, and how that is written down. */
    private String standing(CardId card, RigSource source, LocalDate today) {
        Optional<Rig> rig = source.read().rig();
        if (rig.isEmpty()) {
            return "cannot be told: the rig file does not read";
        }
        try {
            var trials =
                    new Trials(
                            new TrialsRecord(source.file().path())
                                    .read(rig.get(), source.digest(), today),
                            Settings.standard(),
                            question -> {
                                throw new IllegalStateException("not asked: " + question);
                            });
            Optional<Planned> planned = trials.programme().card(card);
            if (planned.isEmpty()) {
                return "this rig has no such card any more";
            }
            return trials.gate(planned.get()) instanceof Gate.Closed(var reasons)
                    ? "closed, so nothing done on it counts as passed: " + Gate.words(reasons)
                    : "open: liftwright card pass "
                            + source.file().named()
                            + " "
                            + card
                            + " writes its pass down";
        } catch (IOException e) {
            return "cannot be told: " + e.getMessage();
        }
    }

    Exit compare(
            About about, RigSource source, Logbook logbook, StoredTest first, StoredTest second)
            throws IOException {
        try (Engine engine = LogVerb.engine(logbook)) {
            return show.apply(
                    source,
                    Compared.of(
                            about,
                            Compared.Side.of(logbook, first, engine::samples, MOST_SAMPLES),
                            Compared.Side.of(logbook, second, engine::samples, MOST_SAMPLES)));
        }
    }
}

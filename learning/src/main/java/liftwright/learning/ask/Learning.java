package liftwright.learning.ask;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import liftwright.answer.Checks;
import liftwright.answer.Evidence;
import liftwright.answer.Finding;
import liftwright.answer.Section;
import liftwright.answer.Sentence;
import liftwright.learning.LearningAnswer;
import liftwright.learning.explain.Attribution;
import liftwright.learning.explain.Explain;
import liftwright.learning.explain.Explained;
import liftwright.learning.replay.Lag;
import liftwright.learning.replay.Replay;
import liftwright.learning.turning.TurningInLog;
import liftwright.numerics.Work;
import liftwright.plant.parameters.ImpossibleValueException;
import liftwright.plant.recording.Recording;
import liftwright.quantity.Measure;
import liftwright.review.MeasuredTurning;
import liftwright.review.Settings;

/** "Why did it not do what was promised?" */
public final class Learning {

    /** Lost draws that a band can stand. */
    private static final double FEW = 0.05;

    private Learning() {}

    /**
     * Answers it.
     *
     * @param about the test
     * @param settings seed and threads
     * @param work told of progress, asked whether to stop
     * @return empty when it was stopped
     * @throws liftwright.learning.replay.NotDrivenException where no throttle was recorded
     */
    public static Optional<LearningAnswer> ask(LearningCase about, Settings settings, Work work) {
        Optional<Replay> replayed =
                Replay.of(
                        about.rig(), about.recording(), settings.seed(), settings.threads(), work);
        if (replayed.isEmpty() || work.stopped()) {
            return Optional.empty();
        }
        Explained explained =
                explained(about, inStep(about.recording(), replayed.get()), settings, work);
        return work.stopped()
                ? Optional.empty()
                : Optional.of(
                        answer(
                                about,
                                settings,
                                replayed.get(),
                                explained,
                                turning(about, settings)));
    }

    /** Where a rig cannot be let go in the model, its turning is not explained. */
    private static Optional<liftwright.review.cause.Attribution> turning(
            LearningCase about, Settings settings) {
        try {
            return TurningInLog.explained(about.rig(), about.recording(), settings.seed());
        } catch (ImpossibleValueException e) {
            return Optional.empty();
        }
    }

    /**
     * What comes later than its throttle is put back: rotors that spool up and clocks that differ
     * would look like a pattern that no cause explains.
     */
    private static Recording inStep(Recording recording, Replay replay) {
        Map<String, Double> lagS =
                replay.lags().stream().collect(Collectors.toMap(Lag::channel, Lag::lagS));
        return new Recording(
                recording.tracks().stream()
                        .map(
                                track ->
                                        track.showing(
                                                track.samples()
                                                        .later(
                                                                -lagS.getOrDefault(
                                                                        track.name(), 0.0))))
                        .toList());
    }

    /** Where the causes cannot be computed, the replay alone is told, and why. */
    private static Explained explained(
            LearningCase about, Recording inStep, Settings settings, Work work) {
        try {
            return Explain.of(about.rig(), inStep, settings.threads(), work);
        } catch (IllegalArgumentException e) {
            return new Explained(
                    Explained.Finding.CANNOT_BE_TOLD,
                    List.of(),
                    List.of(),
                    0,
                    Attribution.NONE,
                    List.of(),
                    List.of("no cause was held against the readings: " + e.getMessage()));
        }
    }

    private static LearningAnswer answer(
            LearningCase about,
            Settings settings,
            Replay replay,
            Explained explained,
            Optional<liftwright.review.cause.Attribution> turning) {
        List<Section> sections = new ArrayList<>();
        replay.lift().ifPresent(lift -> sections.add(LearningTables.attribution(lift, explained)));
        sections.add(LearningTables.causes(explained));
        LearningTables.next(explained).ifPresent(sections::add);
        LearningTables.events(replay).ifPresent(sections::add);
        turning.ifPresent(told -> sections.addAll(MeasuredTurning.sections(told)));
        sections.add(LearningTables.strips(replay));
        sections.add(LearningTables.channels(replay));
        Evidence evidence = evidence(about, settings, replay, explained);
        List<Finding> findings = new ArrayList<>(LearningFindings.of(replay, explained));
        turning.ifPresent(told -> findings.addAll(MeasuredTurning.findings(told)));
        return new LearningAnswer(
                Checks.downgrade(LearningVerdict.of(replay, explained), evidence),
                findings,
                sections,
                evidence);
    }

    private static Evidence evidence(
            LearningCase about, Settings settings, Replay replay, Explained explained) {
        return new Evidence(
                about.rigDigest(),
                about.rig().corrections().digest(),
                settings.seed(),
                replay.draws(),
                Sentence.words("test " + about.test() + ", ")
                        .then(Measure.TIME, replay.driven().toS() - replay.driven().fromS())
                        .then(" of recorded throttle; ")
                        .then(String.join("; ", replay.driven().notes())),
                List.of(
                        new Evidence.Law(
                                "runs in which everything warms",
                                "the same stepper as for the question of heat",
                                "fans follow their throttle at once; still air",
                                true),
                        new Evidence.Law(
                                "what the model leaves out",
                                "docs/validation.md, else from memory; a share of how far a reading"
                                        + " has gone",
                                "one size for the whole recording",
                                true)),
                about.rig().defaults().stream()
                        .map(
                                used ->
                                        new Evidence.Assumption(
                                                used.at().toString(), used.value(), used.origin()))
                        .toList(),
                checks(replay, explained));
    }

    private static List<Evidence.Check> checks(Replay replay, Explained explained) {
        List<Evidence.Check> checks = new ArrayList<>();
        checks.add(
                new Evidence.Check(
                        "share of draws in which a value cannot be",
                        replay.lostDraws() / (double) Replay.DRAWS,
                        FEW));
        Attribution shares = explained.attribution();
        if (!shares.shares().isEmpty()) {
            double left = shares.predictedN() - shares.measuredN();
            for (Attribution.Share share : shares.shares()) {
                left -= share.missingN();
            }
            checks.add(
                    new Evidence.Check(
                            "shares of the missing lift add up to it",
                            Math.abs(left) / Math.max(1, Math.abs(shares.predictedN())),
                            1e-9));
        }
        return checks;
    }
}

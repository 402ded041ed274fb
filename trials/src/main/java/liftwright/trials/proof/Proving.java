package liftwright.trials.proof;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import liftwright.answer.Outcome;
import liftwright.plant.Plant;
import liftwright.rig.LimitName;
import liftwright.rig.table.KillLog;
import liftwright.rig.table.KillLog.Signal;
import liftwright.trials.proof.PressTimes.Outcome.Failed;
import liftwright.trials.proof.PressTimes.Outcome.Timed;
import liftwright.trials.proof.PressTimes.Outcome.Untold;

/**
 * Judges a log of presses against the limit, each way to stop by itself, the worst of its presses.
 */
public final class Proving {

    /** Of each way to stop; common practice. */
    public static final int LEAST_PRESSES = 3;

    private final KillLog log;
    private final double limitS;
    private final Optional<CoastTimes> coast;

    private Proving(Plant plant, KillLog log) {
        this.log = log;
        limitS = plant.rig().limits().si(LimitName.KILL_TIME);
        coast = log.signal() == Signal.CURRENT ? CoastTimes.of(plant) : Optional.empty();
    }

    /**
     * @param date on which the log was made
     * @param rigDigest of the build it was made with
     * @param logDigest of the file of the log
     */
    public static KillProof of(
            Plant plant, KillLog log, LocalDate date, String rigDigest, String logDigest) {
        Proving proving = new Proving(plant, log);
        List<PressTimes> presses = PressTimes.of(log);
        return new KillProof(
                date,
                rigDigest,
                log.file(),
                logDigest,
                log.signal(),
                proving.limitS,
                ProofPath.of(plant.rig()).stream()
                        .map(path -> proving.path(path.name(), presses))
                        .toList());
    }

    /** How times were read, for a reader. */
    public static String method(Signal signal) {
        return switch (signal) {
            case THRUST ->
                    "thrust as it was weighed, against its mean in the second before the press";
            case SPEED ->
                    "speed of one rotor; thrust goes with its square (affinity): half at 71 %, a tenth"
                            + " at 32 % of the speed";
            case CURRENT ->
                    "current until a tenth is left, which ends the drive; then the slowest rotor"
                            + " coasts as computed from its inertia";
        };
    }

    private PathProof path(String name, List<PressTimes> all) {
        List<PressTimes> presses = all.stream().filter(one -> one.path().equals(name)).toList();
        Set<String> reasons = new LinkedHashSet<>();
        Set<String> notes = new LinkedHashSet<>();
        Optional<Span> half = Optional.empty();
        Optional<Span> tenth = Optional.empty();
        int timed = 0;
        boolean failed = false;
        for (PressTimes press : presses) {
            notes.addAll(press.notes());
            switch (press.outcome()) {
                case Timed(var _, Span readHalf, Span readTenth) -> {
                    Optional<CoastTimes> own = thrust(readHalf, readTenth);
                    if (own.isPresent()) {
                        timed++;
                        half = worst(half, own.get().half());
                        tenth = worst(tenth, own.get().tenth());
                    } else {
                        reasons.add(
                                "no fan turns at full throttle: how long one coasts is not told");
                    }
                }
                case Failed(String reason) -> {
                    failed = true;
                    reasons.add("line " + press.line() + ": " + reason);
                }
                case Untold(String reason) ->
                        reasons.add("line " + press.line() + ": " + reason + "; not counted");
            }
        }
        Outcome outcome = outcome(presses.isEmpty(), failed, timed, tenth, reasons);
        List<String> told = new ArrayList<>(reasons);
        told.addAll(notes);
        return new PathProof(name, timed, half, tenth, outcome, told);
    }

    /** What the spans of a reading say of thrust. */
    private Optional<CoastTimes> thrust(Span half, Span tenth) {
        if (log.signal() != Signal.CURRENT) {
            return Optional.of(new CoastTimes(half, tenth));
        }
        // The drive may have ended at the press already, and has by the time of a tenth.
        Span drive = new Span(0, tenth.highS());
        return coast.map(
                after -> new CoastTimes(drive.plus(after.half()), drive.plus(after.tenth())));
    }

    private static Optional<Span> worst(Optional<Span> was, Span now) {
        return Optional.of(was.map(before -> before.worst(now)).orElse(now));
    }

    private Outcome outcome(
            boolean missing, boolean failed, int timed, Optional<Span> tenth, Set<String> reasons) {
        if (missing) {
            reasons.add("not pressed in this log");
            return Outcome.CANNOT_BE_TOLD;
        }
        if (failed) {
            return Outcome.DOES_NOT_HOLD;
        }
        if (tenth.isPresent() && tenth.get().lowS() > limitS) {
            reasons.add("takes longer than " + ms(limitS));
            return Outcome.DOES_NOT_HOLD;
        }
        if (tenth.isPresent() && tenth.get().highS() > limitS) {
            reasons.add(
                    "may take "
                            + ms(tenth.get().highS())
                            + ", more than "
                            + ms(limitS)
                            + ": log more rows a second, or with less noise");
            return Outcome.CANNOT_BE_TOLD;
        }
        if (timed < LEAST_PRESSES) {
            reasons.add(timed + " of at least " + LEAST_PRESSES + " presses could be timed");
            return Outcome.CANNOT_BE_TOLD;
        }
        return Outcome.HOLDS;
    }

    private static String ms(double s) {
        return String.format(Locale.ROOT, "%.0f ms", 1000 * s);
    }
}

package liftwright.app.bay;

import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Supplier;
import liftwright.flight.ask.FlightQuestion;
import liftwright.review.Settings;
import liftwright.review.Staged;
import liftwright.rig.Rig;
import liftwright.trials.ask.TrialsCase;
import liftwright.trials.day.Day;

/**
 * What the trials of a rig rest on besides its file.
 *
 * @param records beside the rig files
 * @param reviewed what was answered lately
 * @param today the day
 * @param logbooks beside the rig files
 * @param learned what their tests taught, of those asked about lately
 * @param profiles beside the rig files
 */
record OnRecord(
        Records records,
        Reviewed reviewed,
        Supplier<LocalDate> today,
        Logbooks logbooks,
        Learned learned,
        Profiles profiles) {

    /** Of the opened folder. */
    static OnRecord of(Bay bay) {
        Records records = Records.beside(bay.folder());
        return new OnRecord(
                records,
                new Reviewed(),
                LocalDate::now,
                new Logbooks(records, bay.folder().path()),
                new Learned(),
                new Profiles(records, bay.folder().path()));
    }

    /**
     * The trials of a rig.
     *
     * @param rig its path from the folder
     * @param declared the rig as it stands, saved or not
     * @param digest of what it was read from
     * @throws FaultException when what is on record cannot be read
     */
    StagedTrials trials(String rig, Rig declared, String digest) {
        TrialsCase about = records.read(rig, declared, digest, today);
        Optional<Day> day = records.day(rig, declared).filter(d -> d.date().equals(about.today()));
        return new StagedTrials(
                day.flatMap(Day::killProof)
                        .flatMap(named -> records.proof(rig, named))
                        .map(about::with)
                        .orElse(about),
                day,
                reviewed,
                Settings.standard());
    }

    /**
     * The flight of a rig.
     *
     * @param rig its path from the folder
     * @param declared the rig as it stands, saved or not
     * @param digest of what it was read from
     * @param profile the name of its file; empty for the first beside the rig
     * @throws FaultException when there is no such profile, or it does not read
     */
    Staged flight(String rig, Rig declared, String digest, Optional<String> profile) {
        return FlightQuestion.staged(
                declared, digest, profiles.of(rig, profile, declared), Settings.standard());
    }

    /**
     * What the tests of a rig taught.
     *
     * @param rig its path from the folder
     * @param digest of the rig as it stands
     */
    StagedLearning learning(String rig, String digest) {
        return new StagedLearning(logbooks.of(rig), records.passes(rig), learned, digest);
    }
}

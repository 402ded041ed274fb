package liftwright.review;

import java.util.Optional;
import liftwright.answer.Sentence;
import liftwright.answer.Verdict;
import liftwright.plant.HeldCorrections;
import liftwright.plant.Plant;
import liftwright.rig.correction.Correction;
import liftwright.rig.correction.Found;

/**
 * Why a verdict that only holds by corrections does not hold.
 *
 * @param reason as a downgrade says it
 * @param tells what would settle it
 */
record Unproven(String reason, Verdict.WouldTell tells) {

    private static final String ONLY = "only by what tests found does it hold, and ";

    /** The first thing that is missing; empty where nothing is, or nothing was corrected. */
    static Optional<Unproven> of(Plant plant) {
        HeldCorrections judged = plant.corrections();
        if (judged.held().isEmpty()) {
            return Optional.empty();
        }
        if (plant.rig().corrections().ofAnotherRevision()) {
            Correction first = judged.held().getFirst();
            return Optional.of(
                    new Unproven(
                            ONLY + "that was found on another revision of the rig file",
                            told(
                                    first,
                                    "fit "
                                            + test(first)
                                            + " to this revision of the rig file, with another"
                                            + " test held out")));
        }
        return judged.held().stream().flatMap(group -> lack(group).stream()).findFirst();
    }

    private static Optional<Unproven> lack(Correction group) {
        return switch (group.grounds().lack()) {
            case NOTHING -> Optional.empty();
            case NOT_HELD_OUT ->
                    Optional.of(
                            new Unproven(
                                    ONLY
                                            + "no test was held out when "
                                            + group.name()
                                            + " was found",
                                    told(
                                            group,
                                            "run the test "
                                                    + test(group)
                                                    + " again and fit with one of the two held"
                                                    + " out")));
            case MISSED ->
                    Optional.of(
                            new Unproven(
                                    ONLY
                                            + "the fit that found "
                                            + group.name()
                                            + " missed the test that was held out",
                                    told(
                                            group,
                                            "run the test "
                                                    + test(group)
                                                    + " again with one fan at a time: the fit leaves"
                                                    + " something out")));
            case TOO_FAR ->
                    Optional.of(
                            new Unproven(
                                    ONLY
                                            + group.name()
                                            + " was found farther from what is declared than its"
                                            + " doubt allows",
                                    told(
                                            group,
                                            "measure "
                                                    + farthest(group).label()
                                                    + " by itself, then run the test "
                                                    + test(group)
                                                    + " again")));
        };
    }

    private static String test(Correction group) {
        return group.grounds().tests().getLast().id();
    }

    /** What more tests would do to the band is not known: none of it is promised. */
    private static Verdict.WouldTell told(Correction group, String words) {
        return new Verdict.WouldTell(farthest(group).path(), Sentence.words(words), 1);
    }

    private static Found farthest(Correction group) {
        Found found = group.found().getFirst();
        for (Found other : group.found()) {
            found = CorrectionWords.far(other) > CorrectionWords.far(found) ? other : found;
        }
        return found;
    }
}

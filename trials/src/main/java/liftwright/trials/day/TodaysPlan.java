package liftwright.trials.day;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import liftwright.rig.Rig;
import liftwright.trials.proof.KillProof;

/**
 * What is allowed today, in the order in which it is done, and what is not.
 *
 * @param rig the build
 * @param day as it was found
 * @param killDoubts why no proof of the kills stands this morning, in words; empty where one does
 * @param cooling between the end of a hot run and the next
 * @param allowed in order
 * @param refused in the order in which they were asked
 */
public record TodaysPlan(
        Rig rig,
        Day day,
        List<String> killDoubts,
        Cooling cooling,
        List<Allowed> allowed,
        List<Refused> refused) {

    public TodaysPlan {
        killDoubts = List.copyOf(killDoubts);
        allowed = List.copyOf(allowed);
        refused = List.copyOf(refused);
    }

    /**
     * @param card what is done
     * @param pauseS wait before it, s
     * @param beginS when it begins, from midnight, s
     * @param endS when it ends
     * @param runs how many the packs give, at most as many as a pass needs
     * @param people who takes which role
     */
    public record Allowed(
            DayCard card,
            double pauseS,
            double beginS,
            double endS,
            int runs,
            Map<String, String> people) {

        public Allowed {
            people = Map.copyOf(people);
        }

        /** Whether it can pass today: with all of its runs. */
        public boolean passes() {
            return runs >= card.planned().repeats();
        }
    }

    /**
     * @param reasons at least one
     */
    public record Refused(DayCard card, List<Reason> reasons) {
        public Refused {
            reasons = List.copyOf(reasons);
            if (reasons.isEmpty()) {
                throw new IllegalArgumentException("refused without a reason: " + card.planned());
            }
        }
    }

    /**
     * A pause.
     *
     * @param s length, s
     * @param origin where it comes from, in words
     */
    public record Cooling(double s, String origin) {

        /** Where the review of heat tells none; from memory. */
        static final Cooling USUAL =
                new Cooling(1800, "from memory: the review of heat tells none");

        static Cooling of(OptionalDouble computedS) {
            return computedS.isPresent()
                    ? new Cooling(
                            computedS.getAsDouble(),
                            "the least after which another flight like the last stays within every"
                                    + " limit")
                    : USUAL;
        }
    }

    /**
     * Plans a day.
     *
     * @param cards of the programme, in its order
     * @param proof of the kills, where there is one
     * @param rigDigest of the build
     * @param waitS least pause after a flight, as the review of heat has it, s; empty where it
     *     tells none
     */
    public static TodaysPlan of(
            Rig rig,
            Day day,
            List<DayCard> cards,
            Optional<KillProof> proof,
            String rigDigest,
            OptionalDouble waitS) {
        List<String> doubts =
                proof.map(one -> one.doubts(day.date(), rigDigest))
                        .orElse(List.of("the kills are not proved today"));
        Cooling cooling = Cooling.of(waitS);
        Planner planner = new Planner(rig, day, cards, doubts.isEmpty(), cooling.s());
        planner.plan();
        return new TodaysPlan(rig, day, doubts, cooling, planner.allowed(), planner.refused());
    }
}

package liftwright.review;

import java.util.Arrays;
import java.util.OptionalDouble;

/** Which of alike parts is meant when one is told for all of them. */
final class HeatWorst {

    private HeatWorst() {}

    /** First at its limit in the flight onwards; if none is, the nearest to it. */
    static int inFlight(HeatParts parts, HeatParts.Group group, HeatRun run) {
        int worst = group.parts().getFirst();
        for (int part : group.parts()) {
            double at = or(run.reached(part));
            double before = or(run.reached(worst));
            double over = run.onwards().hottestK(part) - parts.part(part).limitK();
            double overBefore = run.onwards().hottestK(worst) - parts.part(worst).limitK();
            if (at < before || (at == before && over > overBefore)) {
                worst = part;
            }
        }
        return worst;
    }

    /** Nearest to its limit, or furthest beyond, in what is asked; the rest included. */
    static int inWhatIsAsked(HeatParts parts, HeatParts.Group group, HeatRun run) {
        int worst = group.parts().getFirst();
        for (int part : group.parts()) {
            double over = run.asked().hottestK(part) - parts.part(part).limitK();
            double overBefore = run.asked().hottestK(worst) - parts.part(worst).limitK();
            boolean unlimited = !parts.isLimited(part) && !parts.isLimited(worst);
            if (over > overBefore
                    || (unlimited && run.asked().hottestK(part) > run.asked().hottestK(worst))) {
                worst = part;
            }
        }
        return worst;
    }

    private static double or(OptionalDouble time) {
        return time.orElse(Double.POSITIVE_INFINITY);
    }

    /** When the first of the group is at its limit, in the draws that tell; infinite: never. */
    static double[] reachedS(HeatParts.Group group, HeatJudgement judgement) {
        double[] least = null;
        for (int part : group.parts()) {
            double[] one = judgement.sample().reachedS(part, judgement.draws());
            least = least == null ? one : folded(least, one, false);
        }
        return least == null ? new double[0] : least;
    }

    /** The hottest of the group in what is asked, in the draws that tell. */
    static double[] hottestK(HeatParts.Group group, HeatJudgement judgement) {
        double[] most = null;
        for (int part : group.parts()) {
            double[] one = judgement.sample().hottestK(part, judgement.draws());
            most = most == null ? one : folded(most, one, true);
        }
        return most == null ? new double[0] : most;
    }

    private static double[] folded(double[] a, double[] b, boolean greatest) {
        double[] out = Arrays.copyOf(a, Math.min(a.length, b.length));
        for (int i = 0; i < out.length; i++) {
            out[i] = greatest ? Math.max(out[i], b[i]) : Math.min(out[i], b[i]);
        }
        return out;
    }
}

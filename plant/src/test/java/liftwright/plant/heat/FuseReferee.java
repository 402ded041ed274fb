package liftwright.plant.heat;

import liftwright.rig.Element;

/** The law of a fuse, typed anew. */
final class FuseReferee {

    private FuseReferee() {}

    /**
     * 1 / (1 − exp(−t/τ)) with t by the published points in logarithms; beyond the last I² t stays;
     * below the first the square of I, without a jump, and never open at the rating.
     */
    static double gain(Element.Fuse fuse, double ampere) {
        var points = fuse.points();
        double doubt = fuse.timeDoubt().si();
        double tau = fuse.timeConstant().si();
        double current = Math.abs(ampere);
        double first = points.getFirst().current().si();
        if (current < first) {
            // The square of I, unless that opened it at its rating: it holds that for ever.
            double there = points.getFirst().time().si() * doubt;
            double share = 1 - Math.exp(-there / tau);
            double holds = fuse.rating().si();
            if (holds <= first * Math.sqrt(share) || holds >= first) {
                return current * current / (first * first) / share;
            }
            return current <= holds
                    ? current * current / (holds * holds)
                    : Math.pow(share, -Math.log(current / holds) / Math.log(first / holds));
        }
        double last = points.getLast().current().si();
        double time = points.getLast().time().si() * Math.pow(last / current, 2);
        for (int k = 1; k < points.size(); k++) {
            double low = points.get(k - 1).current().si();
            double high = points.get(k).current().si();
            if (current >= low && current <= high) {
                double share = Math.log(current / low) / Math.log(high / low);
                time =
                        Math.pow(points.get(k - 1).time().si(), 1 - share)
                                * Math.pow(points.get(k).time().si(), share);
            }
        }
        return 1 / (1 - Math.exp(-time * doubt / tau));
    }
}

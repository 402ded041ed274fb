package liftwright.review;

import java.util.ArrayList;
import java.util.List;
import liftwright.plant.Discharge;

/**
 * Temperatures of all parts at moments of a run, no more of them than can be shown: of a long run
 * the moments lie further apart. The first and the last are always among them.
 */
final class HeatMoments implements Discharge.Watcher {

    private final int parts;
    private final int most;
    private final List<Moment> kept = new ArrayList<>();
    private double apartS;
    private Moment last = new Moment(Double.NEGATIVE_INFINITY, List.of());

    /** Temperatures in the order of the parts, K. */
    record Moment(double timeS, List<Double> kelvin) {}

    /**
     * @param parts how many
     * @param most moments that are kept, ≥ 2
     */
    HeatMoments(int parts, int most) {
        this.parts = parts;
        this.most = most;
    }

    @Override
    public void at(Discharge run) {
        if (run.timeS() <= last.timeS) {
            return; // two orders meet in one moment
        }
        last = moment(run);
        if (!kept.isEmpty() && last.timeS < kept.getLast().timeS + apartS) {
            return;
        }
        kept.add(last);
        if (kept.size() >= 2 * most) {
            thin();
        }
    }

    private Moment moment(Discharge run) {
        List<Double> kelvin = new ArrayList<>(parts);
        for (int part = 0; part < parts; part++) {
            kelvin.add(run.nowK(part));
        }
        return new Moment(run.timeS(), kelvin);
    }

    private void thin() {
        List<Moment> half = new ArrayList<>();
        for (int k = 0; k < kept.size(); k += 2) {
            half.add(kept.get(k));
        }
        kept.clear();
        kept.addAll(half);
        apartS = kept.getLast().timeS / (kept.size() - 1) * 0.99;
    }

    /** In the order of time. */
    List<Moment> all() {
        List<Moment> all = new ArrayList<>();
        int every = Math.max(1, (kept.size() + most - 1) / most);
        for (int k = 0; k < kept.size(); k += every) {
            all.add(kept.get(k));
        }
        if (!all.isEmpty() && all.getLast().timeS < last.timeS) {
            all.add(last);
        }
        return all;
    }
}

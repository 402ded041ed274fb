package liftwright.learning.explain;

import java.util.List;
import liftwright.learning.fit.Compared;
import liftwright.learning.fit.Scatter;
import liftwright.learning.truth.SimulatedTest;
import liftwright.numerics.Work;

/** By hand: residuals of one simulated log. */
public final class TryOne {
    public static void main(String[] args) {
        SimulatedTest test = SimulatedTest.draw(Long.parseLong(args[0]));
        System.out.println(test + " " + test.hidden() + " " + test.profile().lengthS());
        Bench bench = new Bench(test.rig(), test.recording());
        Scatter usual = Scatter.of(bench.channels(), bench.base().channels(), Scatter.Assumed.usual(bench.channels()));
        List<Doubts.Doubt> doubts = new Doubts(bench, usual, 1).of(Work.quiet());
        System.out.println(doubts.stream().map(Doubts.Doubt::name).toList());
        double[][] outl = liftwright.learning.fit.Outliers.of(bench.channels(), bench.base().channels());
        for (int c = 0; c < bench.channels().size(); c++) {
            Compared ch = bench.channels().get(c);
            System.out.printf("%s err %.3g share %.3g left %.3g %.3g start %.4g%n", ch.name(), ch.errorSi(), ch.errorShare(), ch.leftOutShare(), ch.leftOutSi(), ch.startSi());
            for (int k = 0; k < ch.size(); k += Math.max(1, ch.size() / 24)) {
                System.out.printf("   t %.1f meas %.4g pred %.4g diff %.3g noise %.2g sd %.2g out %.1f%n", ch.timesS()[k], ch.measuredSi()[k], bench.base().channels()[c][k], ch.measuredSi()[k] - bench.base().channels()[c][k], ch.noiseSi()[k], Math.sqrt(usual.varianceSi(c, k)), outl[c][k]);
            }
        }
        Computed.Result computed = new Computed(bench, usual, 1).of(Suspects.of(bench), Work.quiet());
        Judged judged = Weighing.of(bench.channels(), bench.base().channels(), doubts.stream().map(Doubts.Doubt::column).toList(), computed.hypotheses());
        for (int k = 0; k < Math.min(12, judged.weights().size()); k++) {
            Weigher.Weight w = judged.weights().get(k);
            System.out.printf("%s + %s log %.1f%n", computed.hypotheses().get(w.first()).cause(), w.isPair() ? computed.hypotheses().get(w.second()).cause() : "", w.log());
        }
        System.out.println("nothing " + judged.nothing() + " other " + judged.other());
    }
}

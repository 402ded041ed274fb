package liftwright.trials.predict;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import liftwright.rig.Fan;
import liftwright.rig.OtherPart;
import liftwright.rig.Pack;
import liftwright.rig.Rig;
import liftwright.rig.Wiring;

/**
 * A whole rig as it truly is. Packs feed trees: from pack to fans without a loop. Solved by going
 * up the tree with currents and down it with voltages until both agree.
 */
public final class TrueRig {

    /** A chain from a node nearer to the pack to one farther from it. */
    public static final class Branch {
        public final Wiring.Chain chain;
        public final List<TrueElement> elements = new ArrayList<>();
        public final List<Branch> next = new ArrayList<>();
        public int fan = -1;
        public double amp;
        public double farV;

        Branch(Wiring.Chain chain) {
            this.chain = chain;
        }

        double ohm() {
            double sum = 0;
            for (TrueElement element : elements) {
                sum += element.ohm();
            }
            return sum;
        }
    }

    public final Rig rig;
    public final TrueNumbers draw;
    public final List<TrueFan> fans = new ArrayList<>();
    public final List<TruePack> packs = new ArrayList<>();
    public final List<List<Branch>> trees = new ArrayList<>();
    public final List<Branch> branches = new ArrayList<>();
    public final Map<String, TrueElement> elements = new HashMap<>();
    public final double massKg;
    public final double airK;
    public final double pressurePa;

    public TrueRig(Rig rig, long seed) {
        this.rig = rig;
        draw = new TrueNumbers(seed);
        airK = draw.of(rig.site().temperature().orElseThrow(), "air") + 0.7 * draw.normal();
        double heightM = draw.of(rig.site().elevation(), "elevation");
        pressurePa = 101_325 * Math.pow(1 - 2.25577e-5 * heightM, 5.25588);
        double density = pressurePa / (287.05 * airK) * (1 - 0.005 * draw.random.nextDouble());
        // The floor, the walls and the jets' own return: up to two per cent either way.
        double room = 1 + draw.between(-0.015, 0.015);
        for (int k = 0; k < rig.fans().size(); k++) {
            Fan fan = rig.fans().get(k);
            double uneven = 0.5 * draw.normal();
            fans.add(
                    new TrueFan(
                            fan,
                            k,
                            draw,
                            density / 1.225 * room * airK / (airK + uneven),
                            airK + uneven));
        }
        for (Pack pack : rig.packs()) {
            TruePack made = new TruePack(pack, draw, airK);
            packs.add(made);
            List<Branch> tree = new ArrayList<>();
            grow(pack.id().text(), tree, airK);
            trees.add(tree);
            double volt = made.emfV();
            for (Branch branch : branches) {
                branch.farV = branch.farV == 0 ? volt : branch.farV;
            }
        }
        for (TrueFan fan : fans) {
            double volt = packs.getFirst().emfV();
            fan.atDuty(volt, 1);
            fan.fullRadps = fan.speedRadps;
            fan.atDuty(volt, 0);
        }
        massKg = mass();
    }

    private void grow(String node, List<Branch> into, double airK) {
        for (Wiring.Chain chain : rig.wiring().chains()) {
            if (chain.from().equals(node)) {
                Branch branch = new Branch(chain);
                chain.elements()
                        .forEach(
                                one -> {
                                    TrueElement made = new TrueElement(one, draw, airK);
                                    branch.elements.add(made);
                                    elements.put(one.id().text(), made);
                                });
                for (int k = 0; k < fans.size(); k++) {
                    if (rig.fans().get(k).id().text().equals(chain.to())) {
                        branch.fan = k;
                    }
                }
                into.add(branch);
                branches.add(branch);
                grow(chain.to(), branch.next, airK);
            }
        }
    }

    private double mass() {
        double sum = 0;
        for (TrueFan fan : fans) {
            sum += draw.of(fan.type.mass(), fan.type.name() + "/mass");
            sum += draw.of(fan.type.controller().mass(), fan.type.name() + "/controller mass");
        }
        for (TruePack pack : packs) {
            Pack declared = pack.declared;
            int cells = declared.series() * declared.parallel();
            sum += cells * draw.mean(declared.cell().mass(), "cell mass", cells);
            sum += draw.of(declared.extraMass(), "extra");
        }
        for (OtherPart part : rig.otherParts()) {
            sum += draw.of(part.mass(), part.declaredAt() + "/mass");
        }
        return sum;
    }

    /** What a fan is told at a voltage. */
    @FunctionalInterface
    public interface Told {
        void at(TrueFan fan, double volt);
    }

    /** Finds what flows. */
    public void solve(Told told) {
        for (int round = 0; round < 6; round++) {
            for (int pack = 0; pack < packs.size(); pack++) {
                double amp = 0;
                for (Branch branch : trees.get(pack)) {
                    amp += up(branch, told);
                }
                TruePack of = packs.get(pack);
                of.amp = amp;
                double volt = of.emfV() - amp * of.ohm();
                for (Branch branch : trees.get(pack)) {
                    down(branch, volt);
                }
            }
        }
    }

    private double up(Branch branch, Told told) {
        double amp = 0;
        if (branch.fan >= 0) {
            TrueFan fan = fans.get(branch.fan);
            told.at(fan, branch.farV);
            amp += fan.busA;
        }
        for (Branch next : branch.next) {
            amp += up(next, told);
        }
        branch.amp = amp;
        return amp;
    }

    private static void down(Branch branch, double nearV) {
        branch.farV = nearV - branch.amp * branch.ohm();
        for (Branch next : branch.next) {
            down(next, branch.farV);
        }
    }

    /** Everything warms and empties for a short time. */
    public void step(double forS) {
        for (Branch branch : branches) {
            for (TrueElement element : branch.elements) {
                element.warm(branch.amp, forS);
            }
            if (branch.fan >= 0) {
                fans.get(branch.fan).warm(branch.farV, forS);
            }
        }
        packs.forEach(pack -> pack.step(forS));
    }
}

package liftwright.review;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import liftwright.answer.Section;
import liftwright.answer.Value;
import liftwright.numerics.Draws;
import liftwright.numerics.Kept;
import liftwright.numerics.Work;
import liftwright.plant.Cause;
import liftwright.plant.Discharge;
import liftwright.plant.LossPoint;
import liftwright.plant.Order;
import liftwright.plant.Plant;
import liftwright.plant.fault.Effect;

/**
 * What reaches a limit next once something failed, by a heated run: the hover that is asked for on
 * full packs, the fault halfway through it, then the rest of it on what is left, at the declared
 * values. A rig that is not held in the air is not followed.
 */
final class GoesNext {

    /**
     * The run after one fault.
     *
     * @param fails what fails
     * @param how it fails
     * @param atS when it fails, s
     * @param next first limit after it; empty where the rest of the hover passes without
     * @param restS how long the rest is, s
     */
    record Next(String fails, String how, double atS, Optional<Discharge.End> next, double restS) {

        /** From the fault to the limit, s; infinite without one. */
        double afterS() {
            return next.map(end -> end.timeS() - atS).orElse(Double.POSITIVE_INFINITY);
        }
    }

    /** What is followed: an effect with its names. */
    record Followed(String fails, String how, Effect effect, LossPoint point) {}

    private static final List<Cause> CAUSES = List.of(Cause.values());

    private final HeatParts parts;
    private final Plant plant;
    private final List<Next> found;

    private GoesNext(Plant plant, List<Next> found) {
        this.plant = plant;
        this.found = found;
        parts = HeatParts.of(plant);
    }

    /**
     * Follows them; those followed so far when stopped.
     *
     * @param plant heated
     * @param threads worker threads
     */
    static GoesNext of(Plant plant, List<Followed> followed, int threads, Work work) {
        Next[] next = new Next[followed.size()];
        int done = 0;
        if (!followed.isEmpty()) {
            work.stage("what goes next", followed.size());
            done =
                    Draws.forEachKept(
                            work,
                            threads,
                            0,
                            followed.size(),
                            () -> HeatJudge.declared(plant, true),
                            (run, number) -> next[number] = follow(plant, run, followed, number),
                            form(followed, next));
        }
        return new GoesNext(plant, Arrays.asList(next).subList(0, done));
    }

    /** What comes next as numbers; what fails is known. */
    private static Kept.Form form(List<Followed> followed, Next[] next) {
        return new Kept.Form() {
            @Override
            public double[] numbers(int number) {
                Next one = next[number];
                double[] times = {one.atS(), one.restS()};
                return one.next()
                        .map(
                                end ->
                                        Kept.flat(
                                                times,
                                                new double[] {
                                                    CAUSES.indexOf(end.cause()),
                                                    end.timeS(),
                                                    end.part().orElse(-1)
                                                }))
                        .orElseGet(() -> Kept.flat(times));
            }

            @Override
            public void putBack(int number, double[] numbers) {
                double[][] rows = Kept.rows(numbers);
                Optional<Discharge.End> end =
                        rows.length < 2 ? Optional.empty() : Optional.of(end(rows[1]));
                Followed one = followed.get(number);
                next[number] = new Next(one.fails(), one.how(), rows[0][0], end, rows[0][1]);
            }
        };
    }

    private static Discharge.End end(double[] told) {
        int part = (int) told[2];
        return new Discharge.End(
                CAUSES.get((int) told[0]),
                told[1],
                part < 0 ? Optional.empty() : Optional.of(part));
    }

    private static Next follow(Plant plant, Discharge run, List<Followed> followed, int number) {
        Followed one = followed.get(number);
        double weightN = plant.weightN(plant.parameters().nominal());
        double halfS = plant.rig().demands().hover().si() / 2;
        run.start();
        run.stopAtFirst(true);
        boolean whole = run.follow(new Order.Lift(weightN), halfS, moment -> {});
        double atS = run.timeS();
        if (whole) {
            run.fail(one.effect());
            run.follow(order(plant, one.point(), weightN), halfS, moment -> {});
        }
        return new Next(one.fails(), one.how(), atS, run.ended(), halfS);
    }

    /** A computer trims with what is left; one throttle goes up until lift is weight. */
    private static Order order(Plant plant, LossPoint point, double weightN) {
        return switch (plant.rig().control().kind()) {
            case SHARED_THROTTLE -> new Order.Lift(weightN);
            case FLIGHT_COMPUTER ->
                    new Order.Thrusts(
                            point.flow().thrustN().stream()
                                    .mapToDouble(n -> Math.max(0, n))
                                    .toArray());
        };
    }

    /** Soonest first. */
    List<Next> soonest() {
        return found.stream()
                .filter(next -> next.next().isPresent())
                .sorted(java.util.Comparator.comparingDouble(Next::afterS))
                .toList();
    }

    /** What it is, in words. */
    String words(Next next) {
        return next.next()
                .map(end -> CauseWords.told(plant.rig(), parts, end))
                .orElse("nothing before it lands");
    }

    Section table() {
        List<List<Value>> rows = new ArrayList<>();
        for (Next next : found) {
            rows.add(
                    List.of(
                            Value.words("fails", next.fails()),
                            Value.words("fails-how", next.how()),
                            Value.words("goes-next", words(next)),
                            next.next().isPresent()
                                    ? Value.of("goes-next-after", next.afterS())
                                    : new Value("goes-next-after", new Value.Figure.Never())));
        }
        return new Section.Table(
                "goes-next",
                "What goes next after a failure halfway through the hover",
                List.of("fails", "fails-how", "goes-next", "goes-next-after"),
                rows);
    }
}

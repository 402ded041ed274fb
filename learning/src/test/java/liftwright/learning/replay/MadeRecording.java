package liftwright.learning.replay;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.random.RandomGenerator;
import java.util.stream.Stream;
import liftwright.plant.Discharge;
import liftwright.plant.Order;
import liftwright.plant.Plant;
import liftwright.plant.fault.Effect;
import liftwright.plant.heat.HeatPart;
import liftwright.plant.recording.Recording;
import liftwright.plant.recording.Samples;
import liftwright.plant.recording.Signal;
import liftwright.plant.recording.Track;
import liftwright.plant.supply.CellDraw;
import liftwright.rig.Rig;

/** A recording that the plant itself makes, without noise, at the declared values. */
final class MadeRecording {

    final double[] timesS;
    final double[] throttle;
    final Map<String, double[]> values = new LinkedHashMap<>();
    private final List<Track> tracks = new ArrayList<>();

    /**
     * A random throttle: rest, rises and holds; whole twentieths, so that thinning loses nothing.
     */
    static double[][] course(RandomGenerator random, double everyS, double forS) {
        int count = (int) Math.round(forS / everyS) + 1;
        double[] times = new double[count];
        double[] shares = new double[count];
        double level = 0;
        double target = 0;
        double until = 3;
        for (int k = 0; k < count; k++) {
            times[k] = k * everyS;
            if (times[k] >= until) {
                target = 0.05 * (random.nextInt(6) == 0 ? 0 : 4 + random.nextInt(14));
                until = times[k] + 4 + 10 * random.nextDouble();
            }
            level += Math.clamp(target - level, -0.1 * everyS, 0.1 * everyS);
            shares[k] = level;
        }
        return new double[][] {times, shares};
    }

    MadeRecording(Rig rig, double[][] course, boolean quietly) {
        timesS = course[0];
        throttle = course[1];
        Plant plant = Plant.assembleHeated(rig);
        Discharge run = plant.discharge();
        run.load(plant.parameters().nominal(), new CellDraw.Expected());
        int fans = rig.fans().size();
        double[][] shares = new double[throttle.length][fans];
        for (int k = 0; k < throttle.length; k++) {
            Arrays.fill(shares[k], throttle[k]);
        }
        Order order = new Order.Course(timesS, shares);
        run.start();
        run.allowError(0.5);
        run.fail(Effect.NONE);
        int went = 0;
        for (int k = 0; k < timesS.length; k++) {
            if (k > 0 && !run.follow(order, timesS[k] - run.timeS(), moment -> {})) {
                break;
            }
            if (k == 0) {
                run.follow(order, 0, moment -> {});
            }
            read(plant, rig, run, k);
            went = k + 1;
        }
        make(went, quietly);
    }

    private void read(Plant plant, Rig rig, Discharge run, int k) {
        double sum = 0;
        for (int fan = 0; fan < rig.fans().size(); fan++) {
            String id = rig.fans().get(fan).id().text();
            double thrustN = run.fans().units().thrustAtPointN(fan);
            sum += thrustN;
            put("thrust " + id, k, thrustN);
            put("speed " + id, k, run.fans().units().speedRadps(fan));
            put("current " + id, k, run.fans().units().currentA(fan));
            put("winding current " + id, k, run.fans().units().windingA(fan));
        }
        put("thrust", k, sum);
        for (int pack = 0; pack < rig.packs().size(); pack++) {
            String id = rig.packs().get(pack).id().text();
            put("current " + id, k, run.packA(pack));
            put("voltage " + id, k, run.network().packTerminalV(pack));
            put("cell voltage " + id, k, run.leastCellV(pack));
            put("charge used " + id, k, run.state().passedAs(pack));
        }
        for (int part = 0; part < plant.heatParts().size(); part++) {
            HeatPart heat = plant.heatParts().get(part);
            if (heat.kind() == HeatPart.Kind.JOINT || heat.kind() == HeatPart.Kind.CELLS) {
                put("temperature " + heat.id().text(), k, run.nowK(part));
            }
        }
    }

    private void put(String name, int k, double si) {
        values.computeIfAbsent(name, any -> new double[timesS.length])[k] = si;
    }

    private void make(int went, boolean quietly) {
        double[] times = Arrays.copyOf(timesS, went);
        tracks.add(
                new Track(
                        Signal.THROTTLE,
                        Track.ALL,
                        0,
                        0,
                        new Samples(times, Arrays.copyOf(throttle, went))));
        values.forEach(
                (name, of) -> {
                    // What a rig shows at rest sets its start: left out, it starts as declared.
                    boolean rests = name.contains("voltage") || name.startsWith("temperature");
                    int from = quietly && rests ? Math.min(wakes(), went - 1) : 0;
                    tracks.add(
                            track(
                                    name,
                                    new Samples(
                                            Arrays.copyOfRange(timesS, from, went),
                                            Arrays.copyOfRange(of, from, went))));
                });
    }

    private int wakes() {
        int k = 0;
        while (k < throttle.length - 1 && throttle[k] <= 0.02) {
            k++;
        }
        return k;
    }

    /** By the longest word of a signal that the name begins with. */
    static Track track(String name, Samples samples) {
        Signal found =
                Stream.of(Signal.values())
                        .filter(signal -> (name + " ").startsWith(signal.word() + " "))
                        .max(Comparator.comparingInt(signal -> signal.word().length()))
                        .orElseThrow();
        String of = name.substring(found.word().length()).strip();
        return new Track(found, of.isEmpty() ? Track.ALL : of, 0, 0, samples);
    }

    Recording recording() {
        return new Recording(tracks);
    }
}

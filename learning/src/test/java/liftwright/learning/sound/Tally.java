package liftwright.learning.sound;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Locale;

/** Counts what was told against what was true, over many scenes. */
final class Tally {

    private final List<Double> errors = new ArrayList<>();
    private int held;
    private int sharedPoints;
    private int sharedHeld;
    private int fans;
    private int claimed;
    private int wrong;
    private int scenes;
    private int counted;
    private double heardS;
    private double ranS;

    void add(Scene scene, Heard heard) {
        scenes++;
        fans += scene.fans.size();
        ranS += scene.ranS() * scene.fans.size();
        counted += Math.abs(heard.separable() - separable(scene, heard.resolution())) <= 2 ? 1 : 0;
        for (FanSpeed fan : heard.fans()) {
            int number = scene.voices.indexOf(fan.voice());
            if (fan.alone()) {
                claimed++;
                wrong += nearest(scene, fan) == number ? 0 : 1;
                heardS += fan.timesS()[fan.size() - 1] - fan.timesS()[0];
            }
            for (int k = 0; k < fan.size(); k++) {
                double off = Math.abs(fan.speedRadS()[k] - scene.truth(number, fan.timesS()[k]));
                boolean in = off <= fan.errorRadS()[k];
                if (fan.alone()) {
                    held += in ? 1 : 0;
                    errors.add(off / fan.speedRadS()[k]);
                } else {
                    sharedPoints++;
                    sharedHeld += in ? 1 : 0;
                }
            }
        }
    }

    /** The fan whose true speed is most often nearest to what was told. */
    private static int nearest(Scene scene, FanSpeed told) {
        int[] times = new int[scene.fans.size()];
        for (int k = 0; k < told.size(); k++) {
            int nearest = 0;
            double least = Double.MAX_VALUE;
            for (int f = 0; f < times.length; f++) {
                double off = Math.abs(told.speedRadS()[k] - scene.truth(f, told.timesS()[k]));
                if (off < least) {
                    least = off;
                    nearest = f;
                }
            }
            times[nearest]++;
        }
        int most = 0;
        for (int f = 1; f < times.length; f++) {
            most = times[f] > times[most] ? f : most;
        }
        return most;
    }

    /** Groups of true speeds with gaps above the resolution, median over the highest throttle. */
    private static int separable(Scene scene, double resolution) {
        int[] counts = new int[41];
        for (int q = 0; q < counts.length; q++) {
            double t = scene.fullFromS() + (scene.fullToS() - scene.fullFromS()) * q / 40;
            double[] speeds = new double[scene.fans.size()];
            for (int f = 0; f < speeds.length; f++) {
                speeds[f] = scene.truth(f, t);
            }
            Arrays.sort(speeds);
            counts[q] = 1;
            for (int f = 1; f < speeds.length; f++) {
                counts[q] += speeds[f] / speeds[f - 1] - 1 > resolution ? 1 : 0;
            }
        }
        Arrays.sort(counts);
        return counts[20];
    }

    int claimed() {
        return claimed;
    }

    double wrongShare() {
        return wrong / (double) Math.max(1, claimed);
    }

    double countedShare() {
        return counted / (double) scenes;
    }

    double heldShare() {
        return held / (double) errors.size();
    }

    double sharedHeldShare() {
        return sharedHeld / (double) Math.max(1, sharedPoints);
    }

    double heardShare() {
        return heardS / ranS;
    }

    double medianError() {
        Collections.sort(errors);
        return errors.get(errors.size() / 2);
    }

    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "%d scenes, %d fans, %d claimed, %d wrong, count right in %d; intervals hold %.3f,"
                        + " of groups %.3f; median error %.5f",
                scenes,
                fans,
                claimed,
                wrong,
                counted,
                heldShare(),
                sharedHeldShare(),
                errors.isEmpty() ? 0 : medianError());
    }
}

package liftwright.learning.sound;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Counts what was told against what was true, over many scenes. */
final class Tally {

    private final List<Double> errors = new ArrayList<>();
    private int held;
    private double heardS;
    private double ranS;

    /** Every point of every fan that has a line of its own. */
    void add(Scene scene, Heard heard) {
        ranS += scene.ranS() * scene.fans.size();
        for (FanSpeed fan : heard.fans()) {
            if (fan.alone()) {
                int number = scene.voices.indexOf(fan.voice());
                heardS += fan.timesS()[fan.size() - 1] - fan.timesS()[0];
                for (int k = 0; k < fan.size(); k++) {
                    double off =
                            Math.abs(fan.speedRadS()[k] - scene.truth(number, fan.timesS()[k]));
                    held += off <= fan.errorRadS()[k] ? 1 : 0;
                    errors.add(off / fan.speedRadS()[k]);
                }
            }
        }
    }

    int points() {
        return errors.size();
    }

    double heldShare() {
        return held / (double) errors.size();
    }

    double heardShare() {
        return heardS / ranS;
    }

    double medianError() {
        Collections.sort(errors);
        return errors.get(errors.size() / 2);
    }
}

package liftwright.trials.predict;

import java.util.HashMap;
import java.util.Map;
import java.util.SplittableRandom;
import liftwright.quantity.Quantity;
import liftwright.quantity.Tolerance;

/**
 * Truth drawn from what is declared, by code of its own: what is shared is drawn once for all that
 * name it, what is each for every part.
 */
public final class TrueNumbers {

    public final SplittableRandom random;
    private final Map<String, Double> shared = new HashMap<>();

    public TrueNumbers(long seed) {
        random = new SplittableRandom(seed);
    }

    public double normal() {
        return random.nextGaussian();
    }

    public double between(double least, double most) {
        return least + (most - least) * random.nextDouble();
    }

    /** Tails heavier than normal ones, 95 % within 2: Student's t with five degrees of freedom. */
    public double tailed() {
        double square = 0;
        for (int k = 0; k < 5; k++) {
            double z = normal();
            square += z * z;
        }
        return normal() / Math.sqrt(square / 5) * 2 / 2.571;
    }

    /** One value of a part. */
    public double of(Quantity declared, String name) {
        return declared.tolerance().scope() == Tolerance.Scope.EACH
                ? drawn(declared)
                : shared.computeIfAbsent(name, any -> drawn(declared));
    }

    /** The mean of so many units. */
    public double mean(Quantity declared, String name, int units) {
        if (declared.tolerance().scope() == Tolerance.Scope.SHARED) {
            return of(declared, name);
        }
        return declared.si() + (drawn(declared) - declared.si()) / Math.sqrt(units);
    }

    private double drawn(Quantity declared) {
        Tolerance doubt = declared.tolerance();
        if (doubt.form() == Tolerance.Form.BOUND) {
            return declared.si() + between(-doubt.minus(), doubt.plus());
        }
        double sum = doubt.plus() + doubt.minus();
        boolean above = sum > 0 && random.nextDouble() * sum < doubt.plus();
        double size = Math.abs(normal()) / 2;
        return declared.si() + (above ? size * doubt.plus() : -size * doubt.minus());
    }
}

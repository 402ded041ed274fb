package liftwright.numerics;

import java.util.Optional;

/** Of work that is not worth keeping. */
enum KeepsNothing implements Kept, Kept.Batch {
    NOTHING;

    @Override
    public Batch batch(int parts) {
        return this;
    }

    @Override
    public Optional<double[]> of(int part) {
        return Optional.empty();
    }

    @Override
    public void keep(int part, double[] numbers) {}
}

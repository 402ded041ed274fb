package liftwright.learning.fit;

import java.util.ArrayList;
import java.util.List;
import liftwright.learning.replay.Driven;
import liftwright.plant.parameters.ParameterTable;
import liftwright.plant.supply.CellDraw;

/** A replay as a fit sees it. */
public final class DrivenModel implements Model {

    private static final CellDraw EXPECTED = new CellDraw.Expected();
    private static final double RAN = 0.98;

    private final Driven driven;
    private final List<Compared> channels;

    private DrivenModel(Driven driven, List<Compared> channels) {
        this.driven = driven;
        this.channels = channels;
    }

    /**
     * @throws IllegalArgumentException where the rig as declared does not run to the end
     */
    public static DrivenModel of(Driven driven) {
        double[][] out = driven.blocks();
        if (!ran(driven, driven.predict(driven.parameters().nominal(), EXPECTED, out))) {
            throw new IllegalArgumentException(
                    "as declared, the rig would not have run to the end of this recording");
        }
        List<Compared> channels = new ArrayList<>();
        for (int k = 0; k < out.length; k++) {
            channels.add(ComparedChannels.of(driven.watched().get(k), out[k], driven.atStart(k)));
        }
        return new DrivenModel(driven, List.copyOf(channels));
    }

    private static boolean ran(Driven driven, double wentS) {
        return wentS >= driven.fromS() + RAN * (driven.toS() - driven.fromS());
    }

    @Override
    public List<Compared> channels() {
        return channels;
    }

    @Override
    public ParameterTable parameters() {
        return driven.parameters();
    }

    @Override
    public Predictor predictor() {
        Driven own = driven.another();
        return (p, out) -> ran(own, own.predict(p, EXPECTED, out));
    }
}

package liftwright.trials.predict;

import java.util.HashMap;
import java.util.Map;
import liftwright.trials.Channel;

/** Instruments with a bias, a drift and noise of their own, and a flicker of the thrust. */
final class TrueReader {

    private final TrueNumbers draw;
    private final Map<Channel, double[]> own = new HashMap<>();

    TrueReader(TrueNumbers draw) {
        this.draw = draw;
    }

    /**
     * What is read.
     *
     * @param part of the run that is over, 0 to 1
     */
    double reads(Channel channel, double truth, double part) {
        double[] errors =
                own.computeIfAbsent(channel, any -> new double[] {draw.normal(), draw.normal()});
        var with = channel.instrument();
        double error = Math.hypot(with.errorSi(), with.errorShare() * truth);
        double flicker =
                channel.field().contains("thrust") || channel.field().contains("tether")
                        ? 0.007 * draw.normal()
                        : 0;
        double read =
                truth * (1 + flicker)
                        + error * (0.4 * errors[0] + 0.2 * part * errors[1] + 0.2 * draw.normal());
        return channel.field().equals("card-charge-left") ? Math.min(1, read) : read;
    }
}

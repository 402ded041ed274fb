package liftwright.learning.turning;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.Predicate;
import liftwright.plant.Balancing;
import liftwright.plant.HoverPoint;
import liftwright.plant.balance.FanAtWork;
import liftwright.plant.recording.Recording;
import liftwright.plant.recording.Samples;
import liftwright.plant.recording.Signal;
import liftwright.plant.recording.Track;
import liftwright.review.cause.Attribution;
import liftwright.review.cause.Blame;
import liftwright.rig.Rig;
import liftwright.rig.Vec3;
import liftwright.trials.RandomTrialRig;
import org.junit.jupiter.api.Test;

/**
 * Logs of a stand that measures moments, with something planted: a thrust line that leans, a centre
 * of mass that is off, a fan that spins the wrong way. What is planted changes moments by statics
 * written here; how well causes are told apart at all is judged with a mechanics of its own in the
 * tests of the room of review. Instruments have noise and an error that lasts, and the packs are
 * fuller than the ledger takes them for, so that thrust is another.
 */
class TurningInLogTest {

    private static final double[] LEVELS = {0.4, 0.6, 0.75};
    private static final double HELD_S = 6;
    private static final double STEP_S = 0.1;
    private static final double FULLER = 1.08;

    /** What is planted. */
    private enum Planted {
        LEAN,
        CENTRE,
        SPIN,
        NOTHING
    }

    private static Rig rig(String name) throws IOException {
        return RandomTrialRig.rig(Files.readString(Path.of("..", "examples", name, "rig.yaml")));
    }

    private record Log(Recording recording, String fan) {}

    private static Log log(Rig rig, Planted planted, SplittableRandom random) {
        Balancing balancing = Balancing.of(rig);
        Balancing.Worker worker = balancing.worker();
        double[] p = balancing.parameters().nominal();
        int fan = random.nextInt(rig.fans().size());
        double angle = random.nextDouble(2 * Math.PI);
        double lean = Math.toRadians(8 + 6 * random.nextDouble());
        double offM = 0.04 + 0.03 * random.nextDouble();
        List<double[]> rows = new ArrayList<>();
        double timeS = 0;
        for (double level : LEVELS) {
            HoverPoint point = worker.atThrottle(p, level);
            double[] there = there(point, planted, fan, lean, offM, angle);
            for (int k = 0; k < HELD_S / STEP_S; k++) {
                rows.add(new double[] {timeS, level, there[0], there[1], there[2], there[3]});
                timeS += STEP_S;
            }
        }
        List<Track> tracks = new ArrayList<>();
        Signal[] signals = {
            Signal.THROTTLE,
            Signal.ROLL_MOMENT,
            Signal.PITCH_MOMENT,
            Signal.YAW_MOMENT,
            Signal.THRUST
        };
        for (int s = 0; s < signals.length; s++) {
            double error = s == 0 ? 0 : s == 4 ? 2 : 0.3;
            double off = error / 2 * random.nextGaussian();
            double[] times = new double[rows.size()];
            double[] values = new double[rows.size()];
            for (int k = 0; k < times.length; k++) {
                times[k] = rows.get(k)[0];
                values[k] = rows.get(k)[s + 1] + off + error * random.nextGaussian();
            }
            tracks.add(new Track(signals[s], Track.ALL, error, 0, new Samples(times, values)));
        }
        return new Log(new Recording(tracks), rig.fans().get(fan).id().text());
    }

    /** Roll, pitch and yaw moment about the true centre and thrust of all, N m and N. */
    private static double[] there(
            HoverPoint point, Planted planted, int fan, double leanRad, double offM, double angle) {
        Vec3 moment = point.ledger().moment();
        FanAtWork one = point.ledger().fans().get(fan);
        double thrust = point.ledger().fans().stream().mapToDouble(FanAtWork::thrustN).sum();
        switch (planted) {
            case LEAN -> {
                Vec3 axis = one.actual();
                Vec3 any = Math.abs(axis.x()) < 0.9 ? new Vec3(1, 0, 0) : new Vec3(0, 1, 0);
                Vec3 across = axis.cross(any).times(1 / axis.cross(any).length());
                Vec3 other = axis.cross(across);
                Vec3 to = across.times(Math.cos(angle)).plus(other.times(Math.sin(angle)));
                Vec3 leaned = axis.times(Math.cos(leanRad)).plus(to.times(Math.sin(leanRad)));
                Vec3 change = leaned.plus(axis.times(-1));
                moment =
                        moment.plus(one.arm().cross(change).times(one.thrustN()))
                                .plus(change.times(one.swirlNm()));
            }
            case CENTRE -> {
                Vec3 off = new Vec3(offM * Math.cos(angle), offM * Math.sin(angle), 0);
                moment = moment.plus(off.times(-1).cross(point.ledger().force()));
            }
            case SPIN -> moment = moment.plus(one.actual().times(-2 * one.swirlNm()));
            case NOTHING -> {}
        }
        return new double[] {
            FULLER * moment.x(), FULLER * moment.y(), FULLER * moment.z(), FULLER * thrust
        };
    }

    /**
     * Whether a ranked cause is the one that was planted; a place that is not sure may be another.
     */
    private static boolean isTrue(Planted planted, Log log, Attribution.Ranked one) {
        return switch (planted) {
            case LEAN ->
                    (one.blame() == Blame.TURNED_SEAT || one.blame() == Blame.CROOKED_FAN)
                            && (one.place().contains(log.fan()) || one.placeShare() < 0.95);
            case CENTRE -> one.blame() == Blame.CENTRE;
            case SPIN -> one.blame() == Blame.SPIN;
            case NOTHING -> one.blame() == Blame.AS_DECLARED;
        };
    }

    private static double probability(Attribution told, Predicate<Attribution.Ranked> of) {
        return told.ranked().stream().filter(of).mapToDouble(Attribution.Ranked::probability).sum();
    }

    /** What is named clearly beyond what was declared. */
    private static boolean names(Attribution told) {
        Attribution.Ranked first = told.ranked().getFirst();
        return first.blame() != Blame.AS_DECLARED
                && first.probability()
                        > Attribution.STRONG
                                * probability(told, one -> one.blame() == Blame.AS_DECLARED);
    }

    /** What came of all logs. */
    private static final class Count {
        int named;
        int first;
        int open;
        int accused;
        final List<String> told = new ArrayList<>();

        void add(Rig rig, Planted planted, Log log, Attribution found) {
            Attribution.Ranked likeliest = found.ranked().getFirst();
            double truth = probability(found, one -> isTrue(planted, log, one));
            if (names(found) && planted == Planted.NOTHING) {
                accused++;
            } else if (names(found)) {
                named++;
                first += isTrue(planted, log, likeliest) ? 1 : 0;
                open += truth * Attribution.STRONG > likeliest.probability() ? 1 : 0;
            }
            told.add(rig.name() + " " + planted + " " + log.fan() + ": " + likeliest);
        }
    }

    @Test
    void namesWhatIsPlanted() throws IOException {
        SplittableRandom random = new SplittableRandom(20261127);
        Count count = new Count();
        List<Rig> rigs = new ArrayList<>(List.of(rig("curlew"), rig("sandpiper")));
        while (rigs.size() < 5) {
            Rig drawn = RandomTrialRig.rig(random);
            Balancing balancing = Balancing.of(drawn);
            if (drawn.fans().size() >= 2
                    && balancing.worker().liftOff(balancing.parameters().nominal()).lifts()) {
                rigs.add(drawn);
            }
        }
        for (Rig rig : rigs) {
            for (Planted planted : Planted.values()) {
                for (int k = 0; k < 2; k++) {
                    Log log = log(rig, planted, random);
                    count.add(
                            rig,
                            planted,
                            log,
                            TurningInLog.explained(rig, log.recording(), 1).orElseThrow());
                }
            }
        }
        String as =
                count.named
                        + " named, "
                        + count.first
                        + " of them right, in "
                        + count.open
                        + " the truth is not excluded, "
                        + count.accused
                        + " accused\n"
                        + String.join("\n", count.told);
        assertThat(count.accused).as(as).isZero();
        assertThat(count.named).as(as).isGreaterThanOrEqualTo(12);
        assertThat(count.first).as(as).isGreaterThanOrEqualTo(count.named * 3 / 4);
        assertThat(count.open).as(as).isGreaterThanOrEqualTo(count.named * 9 / 10);
    }

    @Test
    void sayNothingWhereNoMomentWasMeasured() throws IOException {
        Rig rig = rig("sandpiper");
        Recording recording = log(rig, Planted.NOTHING, new SplittableRandom(1)).recording();
        var without =
                new Recording(
                        recording.tracks().stream()
                                .filter(
                                        track ->
                                                track.signal() == Signal.THROTTLE
                                                        || track.signal() == Signal.THRUST)
                                .toList());
        assertThat(TurningInLog.explained(rig, without, 1)).isEmpty();
    }
}

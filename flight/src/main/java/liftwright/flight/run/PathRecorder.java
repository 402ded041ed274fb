package liftwright.flight.run;

import java.util.Arrays;
import java.util.List;
import liftwright.flight.motion.BodyState;
import liftwright.flight.motion.Motion;
import liftwright.plant.Drive;

/** Keeps the path of a flight. Allocates nothing once it is made. */
final class PathRecorder {

    private static final double EVERY_S = 1.0 / FlightPath.PER_S;

    private final Scene scene;
    private final List<String> lines;
    private final int fans;
    private final double[] timesS;
    private final double[] placeM;
    private final double[] turned;
    private final double[] thrustN;
    private final double[] pullN;
    private final double[] turn = new double[9];
    private int kept;

    /**
     * @param lastsS how long the flight may last
     */
    PathRecorder(Scene scene, int fans, double lastsS) {
        this.scene = scene;
        this.fans = fans;
        lines = scene.frame().lines().stream().map(line -> line.name()).toList();
        int room = (int) Math.ceil(lastsS / EVERY_S) + 3;
        timesS = new double[room];
        placeM = new double[3 * room];
        turned = new double[4 * room];
        thrustN = new double[fans * room];
        pullN = new double[lines.size() * room];
    }

    /** Keeps this moment where the next is due. */
    void look(double timeS, BodyState state, Motion motion, Drive drive) {
        if (kept == timesS.length || timeS < kept * EVERY_S - 1e-9) {
            return;
        }
        timesS[kept] = timeS;
        System.arraycopy(state.y, BodyState.QW, turned, 4 * kept, 4);
        scene.origin(state, turn, placeM, 3 * kept);
        for (int fan = 0; fan < fans; fan++) {
            thrustN[fans * kept + fan] = drive.thrustN(fan);
        }
        for (int line = 0; line < lines.size(); line++) {
            pullN[lines.size() * kept + line] = motion.lineN(line);
        }
        kept++;
    }

    FlightPath path() {
        return new FlightPath(
                Arrays.copyOf(timesS, kept),
                Arrays.copyOf(placeM, 3 * kept),
                Arrays.copyOf(turned, 4 * kept),
                fans,
                Arrays.copyOf(thrustN, fans * kept),
                lines,
                Arrays.copyOf(pullN, lines.size() * kept));
    }
}

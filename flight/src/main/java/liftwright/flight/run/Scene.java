package liftwright.flight.run;

import java.util.ArrayList;
import java.util.List;
import liftwright.flight.motion.Air;
import liftwright.flight.motion.Airframe;
import liftwright.flight.motion.Airframes;
import liftwright.flight.motion.BodyState;
import liftwright.flight.motion.Give;
import liftwright.flight.motion.GustShare;
import liftwright.flight.motion.Motion;
import liftwright.flight.motion.Wind;
import liftwright.flight.profile.Blowing;
import liftwright.flight.profile.Profile;
import liftwright.physics.Rotation;
import liftwright.plant.Drive;
import liftwright.rig.Vec3;

/**
 * The body of one flight in the air of one flight, with what is drawn of both.
 *
 * @param frame its numbers
 * @param motion what moves it
 * @param soleM depth of its lowest part below the centre of mass
 * @param centre of mass in the axes of the rig file, m
 */
record Scene(Airframe frame, Motion motion, double soleM, Vec3 centre) {

    /** Height at which the own wash has faded, over the span of the rig; from memory. */
    private static final double WASH_REACH = 2;

    static Scene of(FlightCase flight, Airframes frames) {
        return of(flight, frames, flight.seed(), GustShare.alone(flight.seed()));
    }

    /**
     * Of one of several in one air.
     *
     * @param airSeed of the wind that all of them share
     */
    static Scene of(FlightCase flight, Airframes frames, long airSeed, GustShare share) {
        long seed = flight.seed();
        int number = flight.number();
        Give give =
                Give.USUAL.times(
                        1 + Deviate.HARNESS_FREQUENCY.of(seed, number),
                        1 + Deviate.HARNESS_DAMPING.of(seed, number),
                        1 + Deviate.LEGS_FREQUENCY.of(seed, number));
        Airframe whole = frames.of(flight.p(), give);
        Vec3 centre = frames.centre();
        boolean tethered = flight.profile().start().tethered();
        Airframe free = tethered ? whole : whole.withLines(List.of());
        Airframe frame = stood(turned(free, seed, number), flight.profile().start().on());
        double sole = free.soleDepthM().orElse(0.0);
        // The air moves from the first tick on, which lies before the flight where a rig is held.
        Wind wind =
                wind(flight, airSeed)
                        .onClock(Flying.heldS(flight.profile()))
                        .withWash(Wind.USUAL_WASH_MPS, sole + WASH_REACH * span(free));
        return new Scene(
                frame, new Motion(frame, new Air(wind, seed, number, share)), sole, centre);
    }

    /**
     * Where the origin of the rig file's axes is.
     *
     * @param turn scratch, nine numbers
     * @param out takes x, y, z in scene axes from a place on, m
     */
    void origin(BodyState state, double[] turn, double[] out, int at) {
        Rotation.matrix(state.y, BodyState.QW, turn);
        for (int k = 0; k < 3; k++) {
            out[at + k] =
                    state.y[BodyState.PX + k]
                            - turn[3 * k] * centre.x()
                            - turn[3 * k + 1] * centre.y()
                            - turn[3 * k + 2] * centre.z();
        }
    }

    /** Upward part of all thrusts along the body's own upright, N. */
    double upN(Drive drive) {
        double sum = 0;
        for (int fan = 0; fan < frame.fans().size(); fan++) {
            sum -= drive.thrustN(fan) * frame.fans().get(fan).axis().z();
        }
        return sum;
    }

    /** With inertia as it is drawn. */
    private static Airframe turned(Airframe frame, long seed, int number) {
        return frame.withInertia(
                1 + Deviate.INERTIA_ROLL.of(seed, number),
                1 + Deviate.INERTIA_PITCH.of(seed, number),
                1 + Deviate.INERTIA_YAW.of(seed, number));
    }

    /** On one foot it has no other: those on the right. */
    private static Airframe stood(Airframe frame, Profile.Stand on) {
        if (on != Profile.Stand.ONE_FOOT) {
            return frame;
        }
        List<Airframe.Foot> right = new ArrayList<>();
        for (Airframe.Foot foot : frame.feet()) {
            if (foot.at().y() > 0) {
                right.add(foot);
            }
        }
        return new Airframe(
                frame.massKg(),
                frame.inertia(),
                frame.fans(),
                frame.loose(),
                right,
                frame.ground(),
                frame.drag(),
                frame.lines(),
                frame.densityKgpm3());
    }

    private static double span(Airframe frame) {
        double far = 0.1;
        for (Airframe.FanLine fan : frame.fans()) {
            far = Math.max(far, Math.hypot(fan.at().x(), fan.at().y()));
        }
        return 2 * far;
    }

    private static Wind wind(FlightCase flight, long seed) {
        int number = flight.number();
        return Blowing.of(flight.profile(), flight.plant().rig().site())
                .map(
                        told -> {
                            double mean =
                                    told.meanMps() * (1 + Deviate.WIND_SPEED.of(seed, number));
                            double from = told.fromRad() + Deviate.WIND_FROM.of(seed, number);
                            Wind wind = Wind.of(mean, from);
                            if (told.gustMps() > 0) {
                                double gust =
                                        told.gustMps() * (1 + Deviate.GUST_SIZE.of(seed, number));
                                wind =
                                        wind.with(
                                                new Wind.Gust(
                                                        told.gustAtS(),
                                                        gust,
                                                        told.gustLengthM(),
                                                        from));
                            }
                            return told.turbulent() ? wind : wind.smooth();
                        })
                .orElse(Wind.NONE);
    }
}

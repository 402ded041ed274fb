package liftwright.flight.ask;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import liftwright.answer.Evidence;
import liftwright.answer.Sentence;
import liftwright.flight.profile.Blowing;
import liftwright.flight.profile.Profile;
import liftwright.flight.run.FlightOutcome;
import liftwright.review.Settings;
import liftwright.rig.DefaultUsed;
import liftwright.rig.Rig;

/** On what the answer rests. */
final class FlightEvidence {

    /** What a figure may owe to the step, over its limit. */
    private static final double ALLOWED = 0.1;

    private FlightEvidence() {}

    static Evidence of(
            Rig rig,
            String rigDigest,
            Profile profile,
            Settings settings,
            List<DefaultUsed> usual,
            int drawn,
            List<Evidence.Check> checks) {
        return new Evidence(
                rigDigest,
                rig.corrections().digest(),
                settings.seed(),
                drawn,
                Sentence.words(
                        "profile: "
                                + (profile.name().isEmpty() ? "without a name" : profile.name())),
                List.of(
                        new Evidence.Law(
                                "rigid frame with a wearer on springs",
                                "Newton and Euler, Runge–Kutta of fourth order",
                                "nothing breaks or bends",
                                true),
                        new Evidence.Law(
                                "turbulence and gust",
                                "MIL-F-8785C, low altitude",
                                "below 1000 ft; own wash on the floor 1.5 m/s, from memory",
                                true)),
                assumptions(rig, profile, usual),
                checks);
    }

    private static Evidence.Assumption wind(Rig rig, Profile profile) {
        return Blowing.of(profile, rig.site())
                .map(
                        wind ->
                                new Evidence.Assumption(
                                        "wind",
                                        String.format(
                                                Locale.ROOT,
                                                "mean %.3g m/s from %.0f°, and %.3g m/s more from"
                                                        + " %.1f s on, rough",
                                                wind.meanMps(),
                                                Math.toDegrees(wind.fromRad()),
                                                wind.gustMps(),
                                                wind.gustAtS()),
                                        "site of the rig file; the moment of the gust is ours"))
                .orElse(
                        new Evidence.Assumption(
                                "wind", "still air", "neither profile nor site names any"));
    }

    private static List<Evidence.Assumption> assumptions(
            Rig rig, Profile profile, List<DefaultUsed> usual) {
        List<DefaultUsed> all = new ArrayList<>(profile.defaults());
        all.addAll(usual);
        List<Evidence.Assumption> told = new ArrayList<>();
        for (DefaultUsed one : all) {
            told.add(new Evidence.Assumption(one.at().toString(), one.value(), one.origin()));
        }
        if (profile.wind().isEmpty()) {
            told.add(wind(rig, profile));
        }
        told.add(
                new Evidence.Assumption(
                        "control",
                        "a lost fan is known after 0.1 s",
                        "from memory: controllers report their speeds"));
        if (rig.control().rate().isEmpty()) {
            told.add(new Evidence.Assumption("control/rate", "500 Hz", "common practice"));
        }
        if (rig.control().delay().isEmpty()) {
            told.add(new Evidence.Assumption("control/delay", "4 ms", "common practice"));
        }
        return told;
    }

    static List<Evidence.Check> halved(
            FlightOutcome first, FlightOutcome finer, Profile.Limits limits) {
        FlightOutcome.Figures one = first.figures();
        FlightOutcome.Figures other = finer.figures();
        double off =
                max(
                        (one.tiltRad() - other.tiltRad()) / limits.tiltRad(),
                        (one.driftM() - other.driftM()) / limits.driftM(),
                        (one.heightLostM() - other.heightLostM()) / limits.heightLostM(),
                        (one.missM() - other.missM()) / limits.missM(),
                        (one.landingMps() - other.landingMps()) / limits.landingMps());
        return List.of(
                new Evidence.Check("the flight at half the step, change over limit", off, ALLOWED));
    }

    private static double max(double... parts) {
        double most = 0;
        for (double part : parts) {
            most = Math.max(most, Math.abs(part));
        }
        return most;
    }
}

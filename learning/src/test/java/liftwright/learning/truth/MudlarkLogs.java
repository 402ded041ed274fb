package liftwright.learning.truth;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import liftwright.learning.truth.Hidden.Kind;
import liftwright.learning.truth.Instruments.Instrument;
import liftwright.plant.recording.Recording;
import liftwright.plant.recording.Signal;
import liftwright.plant.recording.Track;
import liftwright.rig.Rig;
import liftwright.trials.RandomTrialRig;

/**
 * Mudlark's invented logbook: its tests as files, made by the simulator and never by the model. One
 * joint is dying from test to test until it is made anew; packs that were stored are not full; the
 * days differ.
 */
final class MudlarkLogs {

    /** Another seed, another Mudlark; this one has no fan far from its share. */
    private static final long SEED = 20_260_307L;

    /** Screens before the intakes, by a law of its own: the truth has none. */
    private static final double SCREENS = 0.055;

    static final String JOINT = "feed.p.5.trunk.joint";

    private final String yaml;
    private final Map<String, String> files = new LinkedHashMap<>();

    /** Instruments of one file. */
    private record Logger(String file, double offsetS, double everyS, List<Instrument> with) {}

    MudlarkLogs(Path rigFile) throws IOException {
        yaml = Files.readString(rigFile, StandardCharsets.UTF_8);
        List<List<Integer>> pairs = pairs(rigOn(12));
        bench();
        Profile each = Profile.lots(pairs, 0.7, 3.5);
        write("2026-03-14-pairs", 9, each, 0.0002, 0, feeds(), List.of());
        write("2026-03-14-stairs", 9, stairs(0.3, 0.5), 0.0003, 0, feeds(), List.of());
        write("2026-03-21-pairs", 11, each, 0.003, 0, feeds(), List.of());
        write("2026-03-21-stairs", 11, stairs(0.4, 0.6, 0.7), 0.004, 0, feeds(), List.of());
        write("2026-03-28-stairs", 16, stairs(0.5, 0.7, 0.8), 0.010, 0, feeds(), List.of());
        write("2026-04-11-stairs", 21, stairs(0.5, 0.7, 0.8), 0.022, 0.12, feeds(), speeds());
        write("2026-04-12-pairs", 18, each, 0.024, 0.02, feeds(), speeds());
        write("2026-04-18-pairs", 14, each, 0, 0, feeds(), List.of());
        write("2026-04-18-stairs", 14, stairs(0.5, 0.7, 0.8), 0, 0.01, feeds(), speeds());
        tether();
        files.put("stand.yaml", map());
    }

    /** What the builder says of the stand's instruments: heads are ours, errors are told. */
    private String map() {
        StringBuilder text =
                new StringBuilder(
                        """
                        # Instruments of Mudlark's stand, and what they are off by. Invented.
                        liftwright log map: 1
                        columns:
                          - {head: "thrust [N]", is: thrust, unit: N, error: 1.5, error share: 0.4 %}
                          - {head: "air temperature [°C]", is: air temperature, unit: °C, error: 1}
                        """);
        for (int k = 1; k <= 12; k++) {
            text.append(
                    String.format(
                            Locale.ROOT,
                            "  - {head: \"current p.%1$d [A]\", is: current p.%1$d, unit: A, error:"
                                    + " 0.5, error share: 1 %%}%n"
                                    + "  - {head: \"voltage p.%1$d [V]\", is: voltage p.%1$d, unit:"
                                    + " V, error: 0.05, error share: 0.1 %%}%n",
                            k));
        }
        return text.toString();
    }

    /** Text of each file by its name. */
    Map<String, String> files() {
        return files;
    }

    private static Profile stairs(double... levels) {
        return Profile.stairs(6, levels);
    }

    /** The rig on a day. */
    private Rig rigOn(double celsius) {
        String day = "temperature: %.0f °C".formatted(celsius);
        return RandomTrialRig.rig(yaml.replaceFirst("temperature: 12 °C", day));
    }

    /** Fans that hang on one pack. */
    private static List<List<Integer>> pairs(Rig rig) {
        TrueLog any = new TrueLog(rig, SEED, Profile.stairs(1, 0.1), List.of(), 0.1);
        return any.fed();
    }

    private static Instrument scale() {
        return new Instrument(Signal.THRUST, Track.ALL, 1.5, 0.004, 0.2, 0.2, 0.2, 0.05);
    }

    private static Instrument air() {
        return new Instrument(Signal.AIR_TEMPERATURE, Track.ALL, 1, 0, 2, 0.2, 0.1, 0);
    }

    private static List<Instrument> feeds() {
        List<Instrument> made = new ArrayList<>(List.of(scale(), air()));
        for (int k = 1; k <= 12; k++) {
            made.add(new Instrument(Signal.CURRENT, "p." + k, 0.5, 0.01, 0.2, 0.2, 0.1, 0.05));
        }
        for (int k = 1; k <= 12; k++) {
            made.add(new Instrument(Signal.VOLTAGE, "p." + k, 0.05, 0.001, 0.2, 0.2, 0.01, 0.05));
        }
        return made;
    }

    private List<Instrument> speeds() {
        List<Instrument> made = new ArrayList<>();
        rigOn(12)
                .fans()
                .forEach(
                        fan ->
                                made.add(
                                        new Instrument(
                                                Signal.SPEED,
                                                fan.id().text(),
                                                4,
                                                0.003,
                                                0.25,
                                                0.25,
                                                0.10472,
                                                0.05)));
        return made;
    }

    private void write(
            String name,
            double celsius,
            Profile profile,
            double jointOhm,
            double missing,
            List<Instrument> first,
            List<Instrument> second) {
        Rig rig = rigOn(celsius);
        TrueLog log = log(rig, profile, jointOhm, missing, celsius);
        files.put(name + ".csv", csv(rig, profile, log, new Logger(name, 0, 0.2, first), celsius));
        if (!second.isEmpty()) {
            // The telemetry has a clock of its own.
            files.put(
                    name + "-speeds.csv",
                    csv(rig, profile, log, new Logger(name + "-s", -3.4, 0.25, second), celsius));
        }
    }

    private static TrueLog log(
            Rig rig, Profile profile, double jointOhm, double missing, double day) {
        List<Hidden> hidden = new ArrayList<>();
        hidden.add(new Hidden(Kind.INSTALLATION, Track.ALL, SCREENS, 0));
        if (jointOhm > 0) {
            hidden.add(new Hidden(Kind.BAD_JOINT, JOINT, jointOhm, 0));
        }
        for (int k = 1; k <= 12 && missing > 0; k++) {
            // One was lent out and not charged since.
            double more = k == 9 && missing > 0.1 ? 0.1 : 0.003 * (k % 4);
            hidden.add(new Hidden(Kind.LOW_PACK, "p." + k, missing + more, 0));
        }
        return new TrueLog(rig, SEED, profile, hidden, profile.lengthS() + 0.01 * day);
    }

    private static String csv(Rig rig, Profile profile, TrueLog log, Logger logger, double day) {
        long seed = SEED + Math.round(day) + logger.file().hashCode();
        Recording shown = new Instruments(logger.with(), rig, profile, seed).read(log);
        List<Track> tracks =
                shown.tracks().stream().filter(one -> keeps(one, profile, logger)).toList();
        StringBuilder text = new StringBuilder("time [s]");
        tracks.forEach(one -> text.append(',').append(head(one)));
        text.append('\n');
        int rows = (int) (log.endS() / logger.everyS()) - 1;
        for (int k = 1; k < rows; k++) {
            double timeS = k * logger.everyS();
            text.append(number(timeS - logger.offsetS(), 2));
            for (Track track : tracks) {
                int at = Math.max(0, track.samples().upTo(timeS));
                text.append(',')
                        .append(number(inUnit(track, track.samples().si(at)), places(track)));
            }
            text.append('\n');
        }
        return text.toString();
    }

    /** The speeds' own file has no throttle. */
    private static boolean keeps(Track track, Profile profile, Logger logger) {
        boolean throttle = track.signal() == Signal.THROTTLE;
        boolean ofSpeeds = logger.with().getFirst().signal() == Signal.SPEED;
        return !(throttle && ofSpeeds) && (!throttle || !profile.single() || !ofSpeeds);
    }

    private static String head(Track track) {
        return track.name() + " [" + unit(track.signal()) + "]";
    }

    private static String unit(Signal signal) {
        return switch (signal) {
            case THROTTLE -> "%";
            case THRUST, TETHER_LOAD -> "N";
            case CURRENT -> "A";
            case VOLTAGE -> "V";
            case SPEED -> "rpm";
            case AIR_TEMPERATURE -> "°C";
            default -> throw new IllegalArgumentException(signal.word());
        };
    }

    private static double inUnit(Track track, double si) {
        return switch (track.signal()) {
            case THROTTLE -> 100 * si;
            case SPEED -> si * 30 / Math.PI;
            case AIR_TEMPERATURE -> si - 273.15;
            default -> si;
        };
    }

    private static int places(Track track) {
        return switch (track.signal()) {
            case SPEED -> 0;
            case VOLTAGE -> 2;
            default -> 1;
        };
    }

    private static String number(double value, int places) {
        String text = String.format(Locale.ROOT, "%." + places + "f", value);
        if (text.contains(".")) {
            text = text.replaceAll("\\.?0+$", "");
        }
        return text.equals("-0") ? "0" : text;
    }

    /** One fan on the bench, written down by hand: a table with a decimal comma. */
    private void bench() {
        Rig rig = rigOn(12);
        Profile profile = Profile.one(0, 8, 0.2, 0.4, 0.6, 0.8);
        TrueLog log = log(rig, profile, 0.0002, 0, 12);
        List<Instrument> with =
                List.of(
                        scale(),
                        new Instrument(
                                Signal.CURRENT, "back-top.1", 0.5, 0.01, 0.2, 0.2, 0.1, 0.05),
                        new Instrument(
                                Signal.VOLTAGE, "back-top.1", 0.1, 0.002, 0.2, 0.2, 0.01, 0.05),
                        new Instrument(Signal.SPEED, "back-top.1", 4, 0.003, 0.2, 0.2, 0.1, 0.05));
        Recording shown = new Instruments(with, rig, profile, SEED).read(log);
        StringBuilder text = new StringBuilder("time [s];throttle back-top.1 [%]");
        List<Track> tracks =
                shown.tracks().stream().filter(one -> one.signal() != Signal.THROTTLE).toList();
        tracks.forEach(one -> text.append(';').append(head(one)));
        text.append('\n');
        for (double timeS = 0.5; timeS < log.endS() - 0.5; timeS += 1) {
            text.append(comma(number(timeS, 1)))
                    .append(';')
                    .append(comma(number(100 * profile.at(0, timeS), 0)));
            for (Track track : tracks) {
                double si = track.samples().si(Math.max(0, track.samples().upTo(timeS)));
                text.append(';').append(comma(number(inUnit(track, si), places(track))));
            }
            text.append('\n');
        }
        files.put("2026-03-07-bench.csv", text.toString());
    }

    private static String comma(String number) {
        return number.replace('.', ',');
    }

    /** A hop that is held: the line keeps what the fans do not carry. */
    private void tether() {
        List<Instrument> with = new ArrayList<>(feeds());
        with.set(0, new Instrument(Signal.TETHER_LOAD, Track.ALL, 3, 0.005, 0.2, 0.2, 0.5, 0.05));
        write("2026-04-25-tether", 13, stairs(0.3, 0.5, 0.6), 0, 0.01, with, List.of());
    }
}

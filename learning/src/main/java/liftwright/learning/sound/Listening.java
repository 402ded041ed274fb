package liftwright.learning.sound;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Listens to fans that run together. */
public final class Listening {

    static final double WINDOW_S = 0.4;
    private static final double ALONE_S = 0.2;
    private static final double SPREAD = 0.02;

    private final Waveform sound;
    private final List<Voice> voices;
    private final Optional<OneByOne> card;
    private final Doubt doubt;
    private final List<String> notes = new ArrayList<>();

    private Listening(Waveform sound, List<Voice> voices, Optional<OneByOne> card, Doubt doubt) {
        this.sound = sound;
        this.voices = List.copyOf(voices);
        this.card = card;
        this.doubt = doubt;
    }

    /**
     * Without a recording of them one by one, lines of several fans are nobody's in particular.
     *
     * @param voices the fans that ran
     */
    public static Heard to(Waveform sound, List<Voice> voices, Doubt doubt) {
        return new Listening(sound, voices, Optional.empty(), doubt).heard();
    }

    /**
     * @param oneByOne every one of the fans by itself
     * @param order in which they ran there
     */
    public static Heard to(
            Waveform sound, List<Voice> voices, Waveform oneByOne, List<Voice> order, Doubt doubt) {
        return new Listening(sound, voices, Optional.of(OneByOne.of(oneByOne, order)), doubt)
                .heard();
    }

    private Heard heard() {
        recorder();
        card.flatMap(OneByOne::trouble)
                .ifPresent(
                        why ->
                                notes.add(
                                        "The recording one by one tells nobody's line: "
                                                + why
                                                + "."));
        Map<String, Kind> kinds = kinds();
        if (kinds.size() > 1 && aloneOf(voices.getFirst()).isEmpty()) {
            notes.add(
                    "Fans of several types run, and only a recording of them one by one could tell"
                            + " which lines are of which: nothing is claimed.");
            return nothing();
        }
        List<Double> fullHz = new ArrayList<>();
        kinds.values().forEach(kind -> fullHz.add(kind.fullHz()));
        double highest = kinds.values().stream().mapToDouble(Kind::highest).min().orElseThrow();
        Spectrogram spectra = Spectrogram.of(sound);
        CommonCurve curve =
                CommonCurve.of(
                        spectra, fullHz, highest * 0.02, highest, voices.size() == 1 ? 0 : SPREAD);
        Stretches.Found found = Stretches.of(curve);
        if (!found.refused().isEmpty()) {
            notes.add(
                    found.refused().size()
                            + " stretch(es) with lines do not glide as a rotor with inertia does, and"
                            + " were left out.");
        }
        if (found.heard().isEmpty()) {
            notes.add("No fan is heard to spin up or down: no speed is claimed.");
            return nothing();
        }
        return follow(kinds, aligned(curve, spectra), found.heard());
    }

    /** What the recorder did to the sound. */
    private void recorder() {
        Clipping.of(sound).ifPresent(cut -> notes.add(cut.words()));
        Levels levels = Levels.of(sound);
        AutomaticGain.of(levels).ifPresent(gain -> notes.add(gain.words()));
        BandEdge.of(levels).ifPresent(edge -> notes.add(edge.words()));
    }

    /** The curve through the pattern of all fans, where they are known one by one. */
    private CommonCurve aligned(CommonCurve curve, Spectrogram spectra) {
        double[] hz =
                voices.stream()
                        .flatMap(voice -> aloneOf(voice).stream())
                        .mapToDouble(OneByOne.Alone::hz)
                        .toArray();
        return voices.size() == 1 || hz.length < voices.size()
                ? curve
                : Aligned.of(curve, spectra, hz);
    }

    private Heard nothing() {
        return new Heard(List.of(), 0, 0, 0, List.of(), notes);
    }

    /** Fans of one type, and what their lines are measured against. */
    @SuppressWarnings("ArrayRecordComponent") // never compared, never shown
    private record Kind(
            List<Voice> voices, double perRatioRadS, double[] ratios, double[] sd, double highest) {
        double fullHz() {
            return voices.getFirst().blades() * perRatioRadS / (2 * Math.PI);
        }
    }

    private Map<String, Kind> kinds() {
        Map<String, List<Voice>> byType = new LinkedHashMap<>();
        voices.forEach(
                voice -> byType.computeIfAbsent(voice.type(), t -> new ArrayList<>()).add(voice));
        Map<String, Kind> kinds = new LinkedHashMap<>();
        byType.forEach((type, of) -> kinds.put(type, kind(of)));
        return kinds;
    }

    private Kind kind(List<Voice> of) {
        double top = of.stream().mapToDouble(Voice::topRadS).max().orElseThrow();
        if (of.stream().anyMatch(voice -> aloneOf(voice).isEmpty())) {
            return new Kind(of, 1, new double[0], new double[0], 1.1 * top);
        }
        List<OneByOne.Alone> alone =
                of.stream().map(voice -> aloneOf(voice).orElseThrow()).toList();
        double mean = alone.stream().mapToDouble(OneByOne.Alone::speedRadS).average().orElseThrow();
        double[] ratios = new double[of.size()];
        double[] sd = new double[of.size()];
        for (int i = 0; i < ratios.length; i++) {
            ratios[i] = alone.get(i).speedRadS() / mean;
            sd[i] = Math.hypot(doubt.returns(), alone.get(i).sdRadS() / mean);
        }
        return new Kind(of, mean, ratios, sd, 1.1 * top / mean);
    }

    private Optional<OneByOne.Alone> aloneOf(Voice voice) {
        return card.stream()
                .flatMap(one -> one.fans().stream())
                .filter(alone -> alone.voice().fan().equals(voice.fan()))
                .findFirst();
    }

    private Heard follow(
            Map<String, Kind> kinds, CommonCurve curve, List<Stretches.Stretch> stretches) {
        List<FanSpeed> speeds = new ArrayList<>();
        List<Event> events = new ArrayList<>();
        int separable = 0;
        int unclaimed = 0;
        double resolution = 0;
        for (Kind kind : kinds.values()) {
            List<Trace> lines = new ArrayList<>();
            List<Tracker> trackers = new ArrayList<>();
            int apart = 0;
            for (Stretches.Stretch stretch : stretches) {
                var tracker =
                        new Tracker(
                                sound,
                                Reference.of(curve, stretch.from(), stretch.to(), 6),
                                kind.fullHz(),
                                kind.perRatioRadS(),
                                kind.voices().size() == 1 ? ALONE_S : WINDOW_S);
                trackers.add(tracker);
                lines.addAll(tracker.follow(kind.voices().size()));
                apart = Math.max(apart, tracker.apart());
                resolution = Math.max(resolution, tracker.resolution());
            }
            separable += apart;
            double centre = trackers.stream().mapToDouble(Tracker::centre).average().orElseThrow();
            List<FanSpeed> of = new ArrayList<>();
            unclaimed += claim(kind, centre, lines, of);
            if (kind.voices().size() > 1) {
                events.addAll(Endings.of(of, kind.voices(), trackers, doubt.delayS()));
            }
            speeds.addAll(of);
        }
        return new Heard(speeds, separable, resolution, unclaimed, events, notes);
    }

    /** How many lines are nobody's. */
    private int claim(Kind kind, double centre, List<Trace> lines, List<FanSpeed> speeds) {
        Owners found = Owners.of(kind.voices().size(), kind.ratios(), kind.sd(), centre, lines);
        double[] expected = kind.ratios().clone();
        for (int i = 0; i < expected.length; i++) {
            expected[i] += found.shift();
        }
        var made = new FanSpeeds(kind.voices(), doubt, expected, kind.sd());
        List<List<Integer>> owners = found.of();
        int nobodys = 0;
        for (List<Integer> fans : owners) {
            if (fans.isEmpty()) {
                nobodys++;
            } else {
                made.group(fans);
            }
        }
        for (int k = 0; k < lines.size(); k++) {
            if (!owners.get(k).isEmpty()) {
                made.add(lines.get(k), owners.get(k));
            }
        }
        speeds.addAll(made.all());
        return nobodys;
    }
}

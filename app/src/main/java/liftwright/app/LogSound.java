package liftwright.app;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import liftwright.answer.AnswerJson;
import liftwright.answer.Evidence;
import liftwright.answer.Outcome;
import liftwright.learning.sound.Doubt;
import liftwright.learning.sound.Heard;
import liftwright.learning.sound.Listening;
import liftwright.learning.sound.SoundAnswer;
import liftwright.learning.sound.SoundReport;
import liftwright.learning.sound.SpeedLog;
import liftwright.learning.sound.StartUp;
import liftwright.learning.sound.Voice;
import liftwright.learning.sound.Waveform;
import liftwright.logbook.engine.Engine;
import liftwright.logbook.sound.BadWaveException;
import liftwright.logbook.sound.Wave;
import liftwright.logbook.sound.WaveReader;
import liftwright.logbook.store.Logbook;
import liftwright.plant.recording.Recording;
import liftwright.plant.recording.Samples;
import liftwright.plant.recording.Signal;
import liftwright.plant.recording.Track;
import liftwright.quantity.Dimension;
import liftwright.quantity.Dimensions;
import liftwright.quantity.Quantity;
import liftwright.quantity.QuantityParser;
import liftwright.quantity.Reading;
import liftwright.report.TextReport;
import liftwright.rig.Fan;
import liftwright.rig.Rig;

/** {@code log sound}: speed of every fan over time from a recording of the test. */
final class LogSound {

    private static final double UNKNOWN_TOP_RAD_S = 60_000 * Math.PI / 30;

    private static final int MOST_SAMPLES = 100_000;

    private final liftwright.app.Voice voice;
    private final Surroundings around;
    private final Options options;
    private final List<String> notes = new ArrayList<>();
    private final List<Evidence.Assumption> assumptions = new ArrayList<>();
    private double lengthS;

    LogSound(liftwright.app.Voice voice, Surroundings around, Options options) {
        this.voice = voice;
        this.around = around;
        this.options = options;
    }

    /**
     * @param names rig and recording
     */
    Exit run(List<String> names) {
        options.look(); // a wrong option shall not wait for the answer
        if (names.size() != 2) {
            throw new UsageException(
                    "log sound takes a rig and a recording: log sound RIG RECORDING");
        }
        RigSource source = RigSource.of(UserFile.of(names.getFirst(), around.folder()));
        Rig rig =
                source.read()
                        .rig()
                        .orElseThrow(
                                () ->
                                        new UsageException(
                                                names.getFirst()
                                                        + " does not read as a rig. See: liftwright"
                                                        + " check "
                                                        + names.getFirst()));
        List<Voice> voices = voices(rig, LogSoundGrammar.FANS);
        Doubt doubt = doubt();
        Heard heard = onLog(source, heard(names.get(1), voices, rig, doubt), voices);
        options.text(LogSoundGrammar.SPEEDS).ifPresent(file -> write(file, heard));
        SoundAnswer answer =
                SoundReport.of(heard.with(notes), voices, source.digest(), assumptions);
        voice.answer(
                options.json()
                        ? AnswerJson.write(answer, names.get(1), Program.VERSION) + "\n"
                        : TextReport.write(answer, rig.name(), names.get(1), options.look()));
        return answer.verdict().outcome() == Outcome.HOLDS ? Exit.CLEAR : Exit.STOPS;
    }

    private Heard heard(String recording, List<Voice> voices, Rig rig, Doubt doubt) {
        Waveform sound = sound(recording);
        lengthS = sound.lengthS();
        Optional<String> alone = options.text(LogSoundGrammar.ONE_BY_ONE);
        if (alone.isEmpty()) {
            if (options.text(LogSoundGrammar.ORDER).isPresent()) {
                throw new UsageException(
                        LogSoundGrammar.ORDER
                                + " is of a recording one by one: name it with "
                                + LogSoundGrammar.ONE_BY_ONE);
            }
            return Listening.to(sound, voices, doubt);
        }
        List<Voice> order =
                options.text(LogSoundGrammar.ORDER).isPresent()
                        ? voices(rig, LogSoundGrammar.ORDER)
                        : voices;
        return Listening.to(sound, voices, sound(alone.get()), order, doubt);
    }

    /** Times by the clock of the log of a test, where one is named and its start-up is heard. */
    private Heard onLog(RigSource source, Heard heard, List<Voice> voices) {
        Optional<String> test = options.text(LogSoundGrammar.OF_TEST);
        if (test.isEmpty()) {
            return heard;
        }
        Recording log = log(Logbook.at(source.file().path()), test.get());
        boolean commanded = !log.all(Signal.THROTTLE).isEmpty();
        List<Samples> told = told(log, commanded ? Signal.THROTTLE : Signal.CURRENT, voices);
        if (told.isEmpty()) {
            throw new UsageException(
                    "test "
                            + test.get()
                            + " has neither throttle nor current: its clock cannot be found from"
                            + " sound");
        }
        StartUp.Told as = commanded ? StartUp.Told.THROTTLE : StartUp.Told.CURRENT;
        return switch (StartUp.of(heard.fans(), lengthS, told, as)) {
            case StartUp.Aligned aligned -> {
                notes.add(aligned.words());
                yield heard.later(aligned.offsetS());
            }
            case StartUp.Apart(String why) -> {
                notes.add(why + " Times are those of the recording.");
                yield heard;
            }
        };
    }

    private static Recording log(Logbook logbook, String named) {
        try (Engine engine = LogVerb.engine(logbook)) {
            return logbook.recording(LogVerb.test(logbook, named), engine::samples, MOST_SAMPLES);
        } catch (IOException e) {
            throw new UsageException("the logbook cannot be read: " + e.getMessage());
        }
    }

    /** Of the fans that ran by themselves, or of all that there is. */
    private static List<Samples> told(Recording log, Signal signal, List<Voice> voices) {
        List<Track> own =
                log.all(signal).stream()
                        .filter(
                                track ->
                                        voices.stream()
                                                .anyMatch(fan -> fan.fan().equals(track.of())))
                        .toList();
        return (own.isEmpty() ? log.all(signal) : own).stream().map(Track::samples).toList();
    }

    private void write(String file, Heard heard) {
        if (heard.fans().isEmpty()) {
            notes.add("No speed is claimed, so nothing was written to " + file + ".");
            return;
        }
        new UserFile(file, UserFile.path(file, around.folder()))
                .create(SpeedLog.write(heard.fans()).getBytes(UTF_8));
    }

    private Waveform sound(String named) {
        Path path = UserFile.path(named, around.folder());
        try {
            Wave wave = WaveReader.read(path);
            wave.notes().forEach(note -> notes.add(named + ": " + note));
            if (wave.channels().size() > 1) {
                notes.add(
                        named
                                + ": channel "
                                + (wave.best() + 1)
                                + " of "
                                + wave.channels().size()
                                + " was heard, the one with the fewest samples at full scale.");
            }
            return new Waveform(wave.channels().get(wave.best()), wave.rateHz());
        } catch (BadWaveException e) {
            throw new UsageException("cannot listen to " + named + ": " + e.getMessage());
        } catch (NoSuchFileException e) {
            throw new UsageException("no file or folder " + named);
        } catch (IOException e) {
            throw new UsageException("cannot read " + named + ": " + e.getMessage());
        }
    }

    private List<Voice> voices(Rig rig, String option) {
        Optional<List<String>> named =
                options.text(option)
                        .map(
                                text ->
                                        Arrays.stream(text.split(",", -1))
                                                .map(String::strip)
                                                .toList());
        List<Fan> fans =
                named.map(ids -> ids.stream().map(id -> fan(rig, id)).toList()).orElse(rig.fans());
        if (fans.stream().distinct().count() != fans.size()) {
            throw new UsageException(option + " names a fan twice");
        }
        return fans.stream().map(this::voice).toList();
    }

    private static Fan fan(Rig rig, String id) {
        return rig.fans().stream()
                .filter(fan -> fan.id().toString().equals(id))
                .findFirst()
                .orElseThrow(() -> new UsageException("no fan " + id + " in the rig"));
    }

    private Voice voice(Fan fan) {
        String type = fan.type().name();
        int blades =
                fan.type()
                        .rotor()
                        .blades()
                        .orElseThrow(
                                () ->
                                        new UsageException(
                                                "how many blades a "
                                                        + type
                                                        + " has is not declared, and its sound tells"
                                                        + " only how often they pass: write rotor:"
                                                        + " {blades: …} in fan types/"
                                                        + type));
        Optional<Quantity> top = fan.type().rotor().topSpeed();
        if (top.isEmpty() && assumptions.stream().noneMatch(a -> a.path().contains(type))) {
            assumptions.add(
                    new Evidence.Assumption(
                            "fan types/" + type + "/rotor/top speed",
                            "60000 rpm",
                            "from memory: small ducted fans stay below"));
        }
        return new Voice(
                fan.id().toString(), type, blades, top.map(Quantity::si).orElse(UNKNOWN_TOP_RAD_S));
    }

    private Doubt doubt() {
        double distanceM = quantity(LogSoundGrammar.DISTANCE, Dimensions.LENGTH, "5 m");
        double movingMS = quantity(LogSoundGrammar.MOVING, Dimensions.SPEED, "0.5 m/s");
        Doubt standing = Doubt.standing(distanceM);
        assumptions.add(
                new Evidence.Assumption(
                        "the recorder's clock", "within ± 100 ppm", "from memory of crystals"));
        assumptions.add(
                new Evidence.Assumption(
                        "ratio of fans from run to run", "± 0.4 %", "an assumption of ours"));
        return standing.moving(movingMS);
    }

    private double quantity(String option, Dimension needed, String example) {
        return options.text(option)
                .map(
                        text ->
                                switch (QuantityParser.parse(text, needed)) {
                                    case Reading.Parsed<Quantity>(var quantity)
                                            when quantity.si() >= 0 ->
                                            quantity.si();
                                    case Reading.Parsed<Quantity> _, Reading.Refused<Quantity> _ ->
                                            throw new UsageException(
                                                    option
                                                            + " is not below 0 and has its unit, such as \""
                                                            + example
                                                            + "\", not "
                                                            + text);
                                })
                .orElse(0.0);
    }
}

package liftwright.learning.truth;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import liftwright.answer.Section;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.learning.LearningAnswer;
import liftwright.learning.ask.Learning;
import liftwright.learning.ask.LearningCase;
import liftwright.numerics.Work;
import liftwright.plant.recording.Recording;
import liftwright.plant.recording.Samples;
import liftwright.plant.recording.Signal;
import liftwright.plant.recording.Track;
import liftwright.review.Settings;
import liftwright.rig.Rig;
import liftwright.rig.file.Folder;
import liftwright.rig.file.RigReading;
import org.junit.jupiter.api.Test;

/**
 * The story of the tutorial, held against what the simulator was told: 22 mΩ in a joint, and one
 * pack with a tenth less of its charge. The logs are read by a reader of this test's own.
 */
class MudlarkExplainedTest {

    private static final Path MUDLARK = Path.of("..", "examples", "mudlark");

    /** The clock of the telemetry began so much earlier. */
    private static final double TELEMETRY_S = 3.4;

    @Test
    void theDyingJointAndThePackThatNobodyChargedAreNamed() throws IOException {
        List<Track> tracks = new ArrayList<>(read("2026-04-11-stairs.csv", 0));
        tracks.addAll(read("2026-04-11-stairs-speeds.csv", TELEMETRY_S));
        LearningAnswer answer =
                Learning.ask(
                                new LearningCase(
                                        rig(),
                                        "",
                                        "stairs",
                                        new Recording(tracks),
                                        Optional.empty()),
                                new Settings(7, 64, 64, 2, false),
                                Work.quiet())
                        .orElseThrow();
        assertThat(words(answer.verdict().sentence())).contains(MudlarkLogs.JOINT).contains("p.9");
        List<Value> joint = causes(answer).rows().getFirst();
        assertThat(text(joint.get(1))).isEqualTo(MudlarkLogs.JOINT);
        // Declared are 0.2 mΩ and their doubt, beside 22 mΩ in truth.
        assertThat(text(joint.get(4))).containsPattern("(19|2[0-4])[.\\d]* mΩ more");
    }

    private static Rig rig() throws IOException {
        return RigReading.read(
                        "rig.yaml",
                        Files.readAllBytes(MUDLARK.resolve("rig.yaml")),
                        new Folder(MUDLARK))
                .rig()
                .orElseThrow();
    }

    private static Section.Table causes(LearningAnswer answer) {
        return answer.sections().stream()
                .filter(section -> section.id().equals("causes"))
                .map(Section.Table.class::cast)
                .findFirst()
                .orElseThrow();
    }

    private static String text(Value value) {
        return switch (value.figure()) {
            case Value.Figure.Words words -> words.text();
            default -> "";
        };
    }

    private static String words(Sentence sentence) {
        StringBuilder told = new StringBuilder();
        for (Sentence.Part part : sentence.parts()) {
            if (part instanceof Sentence.Part.Words words) {
                told.append(words.text());
            }
        }
        return told.toString();
    }

    private static List<Track> read(String file, double beganEarlierS) throws IOException {
        List<String[]> rows =
                Files.readAllLines(MUDLARK.resolve("logs").resolve(file)).stream()
                        .map(line -> line.split(",", -1))
                        .toList();
        String[] heads = rows.getFirst();
        List<String[]> values = rows.subList(1, rows.size());
        double[] timesS =
                values.stream()
                        .mapToDouble(row -> Double.parseDouble(row[0]) - beganEarlierS)
                        .toArray();
        List<Track> tracks = new ArrayList<>();
        for (int column = 1; column < heads.length; column++) {
            int at = column;
            String head = heads[column].replaceAll(" \\[.*", "");
            Signal signal =
                    Arrays.stream(Signal.values())
                            .filter(
                                    one ->
                                            head.equals(one.word())
                                                    || head.startsWith(one.word() + " "))
                            .findFirst()
                            .orElseThrow();
            String of =
                    head.equals(signal.word())
                            ? Track.ALL
                            : head.substring(signal.word().length() + 1);
            double[] si = values.stream().mapToDouble(row -> si(signal, row[at])).toArray();
            tracks.add(track(signal, of, new Samples(timesS, si)));
        }
        return tracks;
    }

    private static double si(Signal signal, String cell) {
        double value = Double.parseDouble(cell);
        return switch (signal) {
            case THROTTLE -> value / 100;
            case SPEED -> value * Math.PI / 30;
            case AIR_TEMPERATURE -> value + 273.15;
            default -> value;
        };
    }

    /** What stand.yaml says of the instruments; of the telemetry it says nothing. */
    private static Track track(Signal signal, String of, Samples samples) {
        return switch (signal) {
            case THRUST -> new Track(signal, of, 1.5, 0.004, samples);
            case CURRENT -> new Track(signal, of, 0.5, 0.01, samples);
            case VOLTAGE -> new Track(signal, of, 0.05, 0.001, samples);
            case AIR_TEMPERATURE -> new Track(signal, of, 1, 0, samples);
            default -> new Track(signal, of, 0, 0, samples);
        };
    }
}

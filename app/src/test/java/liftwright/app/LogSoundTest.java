package liftwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import javax.sound.sampled.AudioFileFormat;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioInputStream;
import javax.sound.sampled.AudioSystem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The fans of Curlew have eleven blades; what is heard here was made from speeds told beside it.
 */
class LogSoundTest {

    private static final double RATE_HZ = 24_000;

    @TempDir private Path folder;

    private static String curlew() {
        return CommandLineTest.example("curlew");
    }

    private Shell shell() {
        return new Shell(folder);
    }

    @Test
    void theSpeedOfAFanComesOutOfItsSound() throws IOException {
        fan("test.wav", 20_000);
        var ran =
                shell().run(
                                "log",
                                "sound",
                                curlew(),
                                "test.wav",
                                "--fans",
                                "fan.3",
                                "--speeds",
                                "speeds.csv",
                                "--distance",
                                "3.4 m");
        assertThat(ran.err()).isEmpty();
        assertThat(ran.code()).isZero();
        assertThat(ran.lines().getFirst()).startsWith("met: ");
        var lines = Files.readAllLines(folder.resolve("speeds.csv"));
        assertThat(lines.getFirst()).isEqualTo("time [s],speed fan.3 [rpm]");
        assertThat(lines.stream().skip(1).map(line -> line.split(",", -1)))
                .filteredOn(cells -> Double.parseDouble(cells[0]) > 2.5)
                .filteredOn(cells -> Double.parseDouble(cells[0]) < 4.5)
                .hasSizeGreaterThan(20)
                .allSatisfy(
                        cells ->
                                assertThat(Double.parseDouble(cells[1]))
                                        .isBetween(20_000 * 0.998, 20_000 * 1.002));
        var again =
                shell().run(
                                "log",
                                "sound",
                                curlew(),
                                "test.wav",
                                "--fans",
                                "fan.3",
                                "--speeds",
                                "speeds.csv");
        assertThat(again.code()).isEqualTo(2);
        assertThat(again.err()).contains("not overwritten");
    }

    @Test
    void jsonIsOneAnswerOfItsSchema() throws IOException {
        fan("test.wav", 20_000);
        var ran = shell().run("log", "sound", curlew(), "test.wav", "--fans", "fan.3", "--json");
        assertThat(ran.lines()).hasSize(1);
        assertThat(ran.out()).startsWith("{\"schema\":\"liftwright/answer-sound/1.0\"");
    }

    @Test
    void silenceGivesNoSpeed() throws IOException {
        write("hiss.wav", new Random(1).doubles(120_000, -0.01, 0.01).toArray());
        var ran = shell().run("log", "sound", curlew(), "hiss.wav", "--speeds", "speeds.csv");
        assertThat(ran.code()).isEqualTo(1);
        assertThat(ran.lines().getFirst()).startsWith("cannot be told: ");
        assertThat(ran.out()).contains("no speed is claimed").contains("nothing was written");
        assertThat(folder.resolve("speeds.csv")).doesNotExist();
    }

    @Test
    void whatIsWrongIsSaid() throws IOException {
        Files.writeString(folder.resolve("a.mp3"), "ID3 and so on, some more of it");
        assertThat(shell().run("log", "sound", curlew(), "a.mp3").err())
                .contains("cannot listen to a.mp3: it is no WAV file");
        assertThat(shell().run("log", "sound", curlew(), "b.wav").err())
                .contains("no file or folder b.wav");
        assertThat(shell().run("log", "sound", curlew()).err()).contains("a rig and a recording");
        assertThat(shell().run("log", "sound", curlew(), "b.wav", "--fans", "fan.99").err())
                .contains("no fan fan.99");
        assertThat(shell().run("log", "sound", curlew(), "b.wav", "--distance", "3").err())
                .contains("has its unit");
        fan("c.wav", 20_000);
        assertThat(shell().run("log", "sound", curlew(), "c.wav", "--order", "fan.1").err())
                .contains("--one-by-one");
    }

    /** The throttle rises at 1 s of the recording and at 41.3 s of the log. */
    @Test
    void theStartUpPutsTheSoundOnTheClockOfALog() throws IOException {
        Files.copy(Path.of(curlew()).resolve("rig.yaml"), folder.resolve("rig.yaml"));
        var text = new StringBuilder("time [s],throttle [%]\n");
        for (int k = 0; k < 600; k++) {
            double t = k / 10.0;
            text.append(t).append(t < 41.3 || t >= 45.3 ? ",0\n" : ",80\n");
        }
        Files.writeString(folder.resolve("log.csv"), text);
        var added = shell().run("log", "add", "rig.yaml", "log.csv", "--date", "2026-03-14");
        assertThat(added.err() + added.out()).contains("2026-03-14-1");
        fan("test.wav", 20_000);
        var ran =
                shell().run(
                                "log",
                                "sound",
                                "rig.yaml",
                                "test.wav",
                                "--fans",
                                "fan.3",
                                "--of-test",
                                "2026-03-14-1",
                                "--speeds",
                                "speeds.csv");
        assertThat(ran.out()).contains("start-up");
        var lines = Files.readAllLines(folder.resolve("speeds.csv"));
        assertThat(Double.parseDouble(lines.get(1).split(",", -1)[0])).isBetween(41.1, 41.9);

        fan("none.wav", 0);
        var none =
                shell().run(
                                "log",
                                "sound",
                                "rig.yaml",
                                "none.wav",
                                "--fans",
                                "fan.3",
                                "--of-test",
                                "2026-03-14-1");
        assertThat(none.out()).contains("Times are those of the recording");
    }

    /** Up within half a second after 1 s, down after 5 s. */
    private void fan(String name, double rpm) throws IOException {
        double[] sound = new double[(int) (7 * RATE_HZ)];
        double angle = 0;
        var random = new Random(7);
        for (int n = 0; n < sound.length; n++) {
            double t = n / RATE_HZ;
            double share =
                    t < 1 ? 0 : t < 5 ? 1 - Math.exp(-(t - 1) / 0.15) : Math.exp(-(t - 5) / 0.3);
            angle += 2 * Math.PI * 11 * rpm / 60 * share / RATE_HZ;
            sound[n] =
                    0.1 * share * share * (Math.sin(angle) + 0.4 * Math.sin(2 * angle + 1))
                            + 0.005 * random.nextGaussian();
        }
        write(name, sound);
    }

    private void write(String name, double[] sound) throws IOException {
        byte[] bytes = new byte[2 * sound.length];
        for (int n = 0; n < sound.length; n++) {
            int value = (int) Math.round(sound[n] * 32_767);
            bytes[2 * n] = (byte) value;
            bytes[2 * n + 1] = (byte) (value >> 8);
        }
        var format = new AudioFormat((float) RATE_HZ, 16, 1, true, false);
        AudioSystem.write(
                new AudioInputStream(new ByteArrayInputStream(bytes), format, sound.length),
                AudioFileFormat.Type.WAVE,
                folder.resolve(name).toFile());
    }
}

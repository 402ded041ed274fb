package liftwright.logbook.sound;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.sound.sampled.AudioFileFormat;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioInputStream;
import javax.sound.sampled.AudioSystem;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Files are laid down here byte by byte, or by Java's own writer, which is the referee. */
class WaveReaderTest {

    @Test
    void whatJavasOwnWriterWroteReadsBack() {
        Seeded.check(
                60,
                random -> {
                    int bits = new int[] {8, 16, 24, 32}[random.nextInt(4)];
                    int channels = random.nextInt(1, 5);
                    int moments = random.nextInt(1, 400);
                    int bytes = bits / 8;
                    byte[] sound = new byte[moments * channels * bytes];
                    random.nextBytes(sound);
                    var format = new AudioFormat(44_100, bits, channels, bits > 8, false);
                    var out = new ByteArrayOutputStream();
                    try {
                        AudioSystem.write(
                                new AudioInputStream(
                                        new ByteArrayInputStream(sound), format, moments),
                                AudioFileFormat.Type.WAVE,
                                out);
                    } catch (IOException e) {
                        throw new AssertionError(e);
                    }
                    Wave wave = read(out.toByteArray());
                    assertThat(wave.notes()).isEmpty();
                    assertThat(wave.rateHz()).isEqualTo(44_100);
                    assertThat(wave.channels()).hasSize(channels);
                    assertThat(wave.samples()).isEqualTo(moments);
                    for (int k = 0; k < moments * channels; k++) {
                        double wanted =
                                bits == 8 ? (sound[k] & 0xFF) - 128 : whole(sound, k, bytes);
                        assertThat((double) wave.channels().get(k % channels)[k / channels])
                                .isCloseTo(wanted / Math.pow(2, bits - 1.0), within(1e-7));
                    }
                });
    }

    private static double whole(byte[] sound, int sample, int bytes) {
        double value = sound[sample * bytes + bytes - 1];
        for (int b = bytes - 2; b >= 0; b--) {
            value = value * 256 + (sound[sample * bytes + b] & 0xFF);
        }
        return value;
    }

    @Test
    void floatingPointAndTheExtensibleHeaderAreRead() {
        byte[] reals = bytes(8).putFloat(0.25f).putFloat(-1.5f).array();
        assertThat(read(file(form(3, 1, 48_000, 32), chunk("data", reals))).channels().getFirst())
                .containsExactly(0.25f, -1.5f);
        byte[] doubles = bytes(16).putDouble(0.125).putDouble(-0.5).array();
        assertThat(read(file(form(3, 2, 48_000, 64), chunk("data", doubles))).channels())
                .hasSize(2)
                .element(1)
                .isEqualTo(new float[] {-0.5f});
        byte[] shorts = bytes(4).putShort((short) 16_384).putShort((short) -32_768).array();
        Wave wide =
                read(
                        file(
                                extensible(1, 2, 48_000, 16, 16, 0x719B3800AA000080L),
                                chunk("data", shorts)));
        assertThat(wide.channels().get(0)).containsExactly(0.5f);
        assertThat(wide.channels().get(1)).containsExactly(-1f);
    }

    @Test
    void chunksBetweenAndOddLengthsDoNoHarm() {
        byte[] wave =
                file(
                        chunk("LIST", new byte[] {1, 2, 3}),
                        form(1, 1, 22_050, 16),
                        chunk("cue ", new byte[6]),
                        chunk("data", new byte[] {0, 64, 0, -64}),
                        chunk("tail", new byte[3]));
        assertThat(read(wave).channels().getFirst()).containsExactly(0.5f, -0.5f);
    }

    @Test
    void aRecordingThatWasCutOffSaysSo() {
        for (int claimed : new int[] {0, 1_000_000, -1}) {
            Wave cut = read(file(form(1, 1, 8_000, 16), chunk("data", claimed, new byte[10])));
            assertThat(cut.samples()).isEqualTo(5);
            assertThat(cut.notes())
                    .containsExactly(
                            "Its header promises "
                                    + Integer.toUnsignedLong(claimed)
                                    + " bytes of sound and 10 are there: the recording was cut off,"
                                    + " or never closed. What is there was read.");
        }
        Wave odd = read(file(form(1, 2, 8_000, 16), chunk("data", new byte[10])));
        assertThat(odd.samples()).isEqualTo(2);
        assertThat(odd.notes()).containsExactly("Its last moment is not whole, and was left out.");
    }

    @Test
    void theChannelWithLessAtFullScaleIsHeard() {
        byte[] sound =
                bytes(8).putShort((short) 32_767)
                        .putShort((short) 5)
                        .putShort((short) 1)
                        .putShort((short) 6)
                        .array();
        assertThat(read(file(form(1, 2, 8_000, 16), chunk("data", sound))).best()).isEqualTo(1);
    }

    /** Bytes of a file and what is said of it. */
    static final class Bad {
        private final String message;
        private final byte[] file;

        Bad(String message, byte[] file) {
            this.message = message;
            this.file = file;
        }

        @Override
        public String toString() {
            return message;
        }
    }

    static Bad[] bad() {
        byte[] good = file(form(1, 1, 8_000, 16), chunk("data", new byte[4]));
        long tail = 0x719B3800AA000080L;
        return new Bad[] {
            new Bad("it is empty", new byte[0]),
            new Bad("it is no WAV file: it does not begin with RIFF", text("RI")),
            new Bad("it is no WAV file: it does not begin with RIFF", text("ID3 and so on....")),
            new Bad("it is no WAV file: it does not begin with RIFF", new byte[100]),
            new Bad("it ends within its first twelve bytes", text("RIFF1234WA")),
            new Bad("it is a RIFF file of another kind, not WAVE: \"AVI \"", text("RIFF1234AVI ")),
            new Bad("it is a WAV of 64-bit sizes; cut it to less than 4 GB", text("RF641234WAVE")),
            new Bad("it is a WAV of 64-bit sizes; cut it to less than 4 GB", text("BW641234WAVE")),
            new Bad("it is a big-endian WAV (RIFX); write it as RIFF", text("RIFX1234WAVE")),
            new Bad(
                    "it has no fmt chunk, which says how its samples are written",
                    text("RIFF1234WAVE")),
            new Bad("it has no data chunk, and so no sound", cut(good, 36)),
            new Bad("it has no data chunk, and so no sound", cut(good, 40)),
            new Bad("it ends within its fmt chunk", cut(good, 30)),
            new Bad("its data stands before its fmt chunk", file(chunk("data", new byte[4]))),
            new Bad(
                    "it has two fmt chunks",
                    file(form(1, 1, 8_000, 16), form(1, 1, 8_000, 16), chunk("data", new byte[4]))),
            new Bad(
                    "its fmt chunk has 14 bytes; the least is 16",
                    file(chunk("fmt ", new byte[14]), chunk("data", new byte[4]))),
            new Bad(
                    "its fmt chunk claims 4294967295 bytes; more than 4096 is odd",
                    file(chunk("fmt ", -1, new byte[16]))),
            new Bad(
                    "its extensible fmt chunk has 16 bytes; the least is 40",
                    file(form(0xFFFE, 1, 8_000, 16), chunk("data", new byte[4]))),
            new Bad(
                    "its header contradicts itself: 24 valid bits in samples of 16",
                    file(extensible(1, 1, 8_000, 16, 24, tail), chunk("data", new byte[4]))),
            new Bad(
                    "its subformat is no format that is read",
                    file(extensible(1, 1, 8_000, 16, 16, tail + 1), chunk("data", new byte[4]))),
            new Bad(
                    "its sound is packed as MPEG; record as WAV without packing (PCM)",
                    file(form(0x55, 1, 8_000, 16), chunk("data", new byte[4]))),
            new Bad(
                    "its sound is packed as ADPCM; record as WAV without packing (PCM)",
                    file(form(2, 1, 8_000, 4), chunk("data", new byte[4]))),
            new Bad(
                    "its sound is packed as A-law; record as WAV without packing (PCM)",
                    file(form(6, 1, 8_000, 8), chunk("data", new byte[4]))),
            new Bad(
                    "its sound is packed as µ-law; record as WAV without packing (PCM)",
                    file(extensible(7, 1, 8_000, 8, 8, tail), chunk("data", new byte[4]))),
            new Bad(
                    "its format has the code 4711; 1 (PCM) and 3 (floating point) are read",
                    file(form(4711, 1, 8_000, 16), chunk("data", new byte[4]))),
            new Bad(
                    "its samples have 12 bit; 8, 16, 24 and 32 are read",
                    file(form(1, 1, 8_000, 12), chunk("data", new byte[4]))),
            new Bad(
                    "its samples have 0 bit; 8, 16, 24 and 32 are read",
                    file(form(1, 1, 8_000, 0), chunk("data", new byte[4]))),
            new Bad(
                    "its samples have 16 bit; 32 and 64 are read of floating point",
                    file(form(3, 1, 8_000, 16), chunk("data", new byte[4]))),
            new Bad(
                    "it says it has 0 channels; 1 to 32 are read",
                    file(form(1, 0, 8_000, 16), chunk("data", new byte[4]))),
            new Bad(
                    "it says it has 65535 channels; 1 to 32 are read",
                    file(form(1, 65_535, 8_000, 16), chunk("data", new byte[4]))),
            new Bad(
                    "it says it has 0 samples a second; 4000 to 768000 are read",
                    file(form(1, 1, 0, 16), chunk("data", new byte[4]))),
            new Bad(
                    "it says it has 4294967295 samples a second; 4000 to 768000 are read",
                    file(form(1, 1, -1, 16), chunk("data", new byte[4]))),
            new Bad(
                    "its header contradicts itself: 1 channel of 16 bit are 2 bytes, not 8",
                    file(form(1, 1, 8_000, 16, 8), chunk("data", new byte[4]))),
            new Bad(
                    "its header contradicts itself: 2 channels of 24 bit are 6 bytes, not 0",
                    file(form(1, 2, 8_000, 24, 0), chunk("data", new byte[4]))),
            new Bad("it holds no sample", file(form(1, 1, 8_000, 16), chunk("data", new byte[0]))),
            new Bad("it holds no sample", file(form(1, 2, 8_000, 32), chunk("data", new byte[7]))),
            new Bad(
                    "its chunk \"LIST\" claims 4294967295 bytes, and 2 are left",
                    file(form(1, 1, 8_000, 16), chunk("LIST", -1, new byte[2]))),
            new Bad(
                    "its chunk \"..[2\" claims 99 bytes, and 0 are left",
                    file(form(1, 1, 8_000, 16), chunk("\u0007\u001b[2", 99, new byte[0]))),
            new Bad(
                    "more than 1000 chunks stand before its sound",
                    file(chunk("junk", new byte[8 * 1000]), many(1001))),
            new Bad(
                    "sample 2 of channel 1 is no sound: NaN",
                    file(
                            form(3, 1, 8_000, 32),
                            chunk("data", bytes(8).putFloat(0).putFloat(Float.NaN).array()))),
            new Bad(
                    "sample 1 of channel 2 is no sound: Infinity",
                    file(
                            form(3, 2, 8_000, 64),
                            chunk("data", bytes(16).putDouble(0).putDouble(1e300).array()))),
        };
    }

    @ParameterizedTest
    @MethodSource("bad")
    void whatIsWrongIsSaid(Bad bad) {
        assertThatThrownBy(() -> tryToRead(bad.file))
                .isInstanceOf(BadWaveException.class)
                .hasMessage(bad.message);
    }

    @Test
    void aClaimOfManySamplesTakesNoMemory() {
        // The stream would go on for 4 GB; what is refused is refused before a sample is read.
        byte[] head = file(form(1, 1, 8_000, 8), chunk("data", -2, new byte[0]));
        assertThatThrownBy(() -> WaveReader.read(new ByteArrayInputStream(head), 4_000_000_000L))
                .isInstanceOf(BadWaveException.class)
                .hasMessage(
                        "it holds 3999999956 samples; up to 120000000 are read: cut it to the test");
    }

    @Test
    void aFileThatShrinksMeanwhileIsRefused() {
        byte[] wave = file(form(1, 1, 8_000, 16), chunk("data", 100, new byte[10]));
        assertThatThrownBy(() -> WaveReader.read(new ByteArrayInputStream(wave), 144))
                .hasMessage("it became shorter while it was read");
    }

    @Test
    void randomDamageIsReadOrRefusedAndNothingElse() {
        byte[] good =
                file(
                        form(1, 2, 8_000, 16),
                        chunk("LIST", new byte[9]),
                        chunk("data", new byte[64]));
        Seeded.check(
                5_000,
                random -> {
                    byte[] hurt = good.clone();
                    for (int k = random.nextInt(1, 6); k > 0; k--) {
                        hurt[random.nextInt(hurt.length)] = (byte) random.nextInt();
                    }
                    hurt = cut(hurt, random.nextInt(hurt.length + 1));
                    try {
                        assertThat(tryToRead(hurt).samples()).isBetween(1, hurt.length);
                    } catch (BadWaveException e) {
                        assertThat(e.getMessage()).isNotBlank();
                    } catch (IOException e) {
                        throw new AssertionError(e);
                    }
                });
    }

    @Test
    void aFileIsReadFromItsPlace(@TempDir Path folder) throws Exception {
        Path file = folder.resolve("a.wav");
        Files.write(file, file(form(1, 1, 8_000, 8), chunk("data", new byte[] {(byte) 192})));
        assertThat(WaveReader.read(file).channels().getFirst()).containsExactly(0.5f);
    }

    private static Wave read(byte[] file) {
        try {
            return tryToRead(file);
        } catch (IOException | BadWaveException e) {
            throw new AssertionError(e);
        }
    }

    private static Wave tryToRead(byte[] file) throws IOException, BadWaveException {
        return WaveReader.read(new ByteArrayInputStream(file), file.length);
    }

    private static ByteBuffer bytes(int count) {
        return ByteBuffer.allocate(count).order(ByteOrder.LITTLE_ENDIAN);
    }

    private static byte[] form(int code, int channels, int rate, int bits) {
        return form(code, channels, rate, bits, channels * bits / 8);
    }

    private static byte[] form(int code, int channels, int rate, int bits, int block) {
        return chunk(
                "fmt ",
                bytes(16)
                        .putShort((short) code)
                        .putShort((short) channels)
                        .putInt(rate)
                        .putInt(rate * block)
                        .putShort((short) block)
                        .putShort((short) bits)
                        .array());
    }

    private static byte[] extensible(
            int code, int channels, int rate, int bits, int valid, long tail) {
        return chunk(
                "fmt ",
                bytes(40)
                        .put(form(0xFFFE, channels, rate, bits), 8, 16)
                        .putShort((short) 22)
                        .putShort((short) valid)
                        .putInt(3)
                        .putInt(code)
                        .putInt(0x00100000)
                        .putLong(tail)
                        .array());
    }

    private static byte[] chunk(String name, byte[] content) {
        return chunk(name, content.length, content);
    }

    private static byte[] chunk(String name, int claimed, byte[] content) {
        return bytes(8 + content.length + content.length % 2)
                .put(name.getBytes(StandardCharsets.ISO_8859_1))
                .putInt(claimed)
                .put(content)
                .array();
    }

    private static byte[] many(int count) {
        var out = new ByteArrayOutputStream();
        for (int k = 0; k < count; k++) {
            out.writeBytes(chunk("junk", new byte[0]));
        }
        return out.toByteArray();
    }

    private static byte[] file(byte[]... chunks) {
        var out = new ByteArrayOutputStream();
        for (byte[] chunk : chunks) {
            out.writeBytes(chunk);
        }
        byte[] all = out.toByteArray();
        return bytes(12 + all.length)
                .put(text("RIFF"))
                .putInt(4 + all.length)
                .put(text("WAVE"))
                .put(all)
                .array();
    }

    private static byte[] text(String words) {
        return words.getBytes(StandardCharsets.ISO_8859_1);
    }

    private static byte[] cut(byte[] file, int length) {
        return java.util.Arrays.copyOf(file, length);
    }
}

package liftwright.logbook.sound;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Reads a WAV file [RIFF91]: whole numbers of 8 to 32 bit and floating point, any number of
 * channels, the extensible header. The file is untrusted: no size that it claims is believed, and
 * memory is taken for what is there, within a limit.
 */
public final class WaveReader {

    /** Samples over all channels: twenty minutes in stereo at 48 kHz are 115 million. */
    static final long MOST_SAMPLES = 120_000_000;

    private static final int MOST_CHUNKS = 1_000;
    private static final int LONGEST_FORM = 4_096;

    private final InputStream in;
    private final List<String> notes = new ArrayList<>();

    private WaveReader(InputStream in) {
        this.in = in;
    }

    /**
     * @throws BadWaveException when it is no recording that can be read
     */
    public static Wave read(Path file) throws IOException, BadWaveException {
        try (InputStream in = new BufferedInputStream(Files.newInputStream(file), 1 << 16)) {
            return read(in, Files.size(file));
        }
    }

    /**
     * @param length bytes that {@code in} has
     * @throws BadWaveException when it is no recording that can be read
     */
    static Wave read(InputStream in, long length) throws IOException, BadWaveException {
        return new WaveReader(in).wave(length);
    }

    private Wave wave(long length) throws IOException, BadWaveException {
        byte[] head = in.readNBytes(12);
        opening(head);
        long left = length - 12;
        Optional<WaveForm> form = Optional.empty();
        for (int k = 0; k < MOST_CHUNKS; k++) {
            byte[] name = in.readNBytes(8);
            left -= name.length;
            if (name.length < 8) {
                throw new BadWaveException(
                        form.isEmpty()
                                ? "it has no fmt chunk, which says how its samples are written"
                                : "it has no data chunk, and so no sound");
            }
            ByteBuffer words = ByteBuffer.wrap(name).order(ByteOrder.LITTLE_ENDIAN);
            long size = Integer.toUnsignedLong(words.getInt(4));
            switch (new String(name, 0, 4, StandardCharsets.ISO_8859_1)) {
                case "fmt " -> {
                    form = Optional.of(form(size, form.isPresent()));
                    left -= size + size % 2;
                }
                case "data" -> {
                    return sound(
                            form.orElseThrow(
                                    () ->
                                            new BadWaveException(
                                                    "its data stands before its fmt chunk")),
                            size,
                            left);
                }
                default -> {
                    if (size > left) {
                        throw new BadWaveException(
                                "its chunk "
                                        + printable(name)
                                        + " claims "
                                        + size
                                        + " bytes, and "
                                        + left
                                        + " are left");
                    }
                    in.skipNBytes(Math.min(left, size + size % 2));
                    left -= size + size % 2;
                }
            }
        }
        throw new BadWaveException("more than " + MOST_CHUNKS + " chunks stand before its sound");
    }

    private static void opening(byte[] head) throws BadWaveException {
        if (head.length == 0) {
            throw new BadWaveException("it is empty");
        }
        String riff = new String(head, 0, Math.min(4, head.length), StandardCharsets.ISO_8859_1);
        if (riff.equals("RF64") || riff.equals("BW64")) {
            throw new BadWaveException("it is a WAV of 64-bit sizes; cut it to less than 4 GB");
        }
        if (riff.equals("RIFX")) {
            throw new BadWaveException("it is a big-endian WAV (RIFX); write it as RIFF");
        }
        if (!riff.equals("RIFF")) {
            throw new BadWaveException("it is no WAV file: it does not begin with RIFF");
        }
        if (head.length < 12) {
            throw new BadWaveException("it ends within its first twelve bytes");
        }
        if (!new String(head, 8, 4, StandardCharsets.ISO_8859_1).equals("WAVE")) {
            throw new BadWaveException(
                    "it is a RIFF file of another kind, not WAVE: " + printable(head, 8));
        }
    }

    private WaveForm form(long size, boolean second) throws IOException, BadWaveException {
        if (second) {
            throw new BadWaveException("it has two fmt chunks");
        }
        if (size > LONGEST_FORM) {
            throw new BadWaveException(
                    "its fmt chunk claims "
                            + size
                            + " bytes; more than "
                            + LONGEST_FORM
                            + " is odd");
        }
        byte[] bytes = in.readNBytes((int) (size + size % 2));
        if (bytes.length < size) {
            throw new BadWaveException("it ends within its fmt chunk");
        }
        return WaveForm.of(ByteBuffer.wrap(bytes, 0, (int) size).order(ByteOrder.LITTLE_ENDIAN));
    }

    private Wave sound(WaveForm form, long claimed, long left)
            throws IOException, BadWaveException {
        long there = Math.max(0, Math.min(claimed, left));
        // Recorders write 0 or all ones while they do not know yet, and are then cut off.
        if ((claimed == 0 || claimed > left) && left > 0) {
            there = left;
            notes.add(
                    String.format(
                            Locale.ROOT,
                            "Its header promises %d bytes of sound and %d are there: the recording was"
                                    + " cut off, or never closed. What is there was read.",
                            claimed,
                            left));
        }
        long moments = there / form.block();
        if (moments == 0) {
            throw new BadWaveException("it holds no sample");
        }
        if (moments * form.channels() > MOST_SAMPLES) {
            throw new BadWaveException(
                    "it holds "
                            + moments * form.channels()
                            + " samples; up to "
                            + MOST_SAMPLES
                            + " are read: cut it to the test");
        }
        if (there % form.block() != 0) {
            notes.add("Its last moment is not whole, and was left out.");
        }
        return new Wave(samples(form, (int) moments), form.rateHz(), form.words(), notes);
    }

    private List<float[]> samples(WaveForm form, int moments) throws IOException, BadWaveException {
        List<float[]> channels = new ArrayList<>();
        for (int c = 0; c < form.channels(); c++) {
            channels.add(new float[moments]);
        }
        int step = Math.max(1, (1 << 16) / form.block());
        for (int from = 0; from < moments; from += step) {
            int count = Math.min(step, moments - from);
            byte[] bytes = in.readNBytes(count * form.block());
            if (bytes.length < count * form.block()) {
                throw new BadWaveException("it became shorter while it was read");
            }
            ByteBuffer block = ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN);
            for (int k = 0; k < count; k++) {
                for (int c = 0; c < form.channels(); c++) {
                    float sample = form.sample(block, (k * form.channels() + c) * form.bytes());
                    if (!Float.isFinite(sample) || Math.abs(sample) > 1e6f) {
                        throw new BadWaveException(
                                "sample "
                                        + (from + k + 1)
                                        + " of channel "
                                        + (c + 1)
                                        + " is no sound: "
                                        + sample);
                    }
                    channels.get(c)[from + k] = sample;
                }
            }
        }
        return channels;
    }

    private static String printable(byte[] name) {
        return printable(name, 0);
    }

    private static String printable(byte[] name, int from) {
        var text = new StringBuilder("\"");
        for (int k = from; k < from + 4; k++) {
            text.append(name[k] >= 32 && name[k] < 127 ? (char) name[k] : '.');
        }
        return text.append('"').toString();
    }
}

package liftwright.logbook.sound;

import java.nio.ByteBuffer;

/**
 * What the {@code fmt} chunk says [RIFF91]; its extensible form [WAVEX].
 *
 * @param real floating point, not whole numbers
 * @param channels 1 to {@value #MOST_CHANNELS}
 * @param rateHz samples of a channel in a second
 * @param bytes of one sample
 */
record WaveForm(boolean real, int channels, int rateHz, int bytes) {

    static final int MOST_CHANNELS = 32;
    private static final int LEAST_RATE = 4_000;
    private static final int MOST_RATE = 768_000;

    private static final int PCM = 1;
    private static final int REAL = 3;
    private static final int EXTENSIBLE = 0xFFFE;

    /** What follows an ordinary format code in a subformat: 0000-0010-8000-00AA00389B71. */
    private static final int TAIL_1 = 0x0010_0000;

    private static final long TAIL_2 = 0x719B_3800_AA00_0080L;

    /** Bytes of one moment: a sample of each channel. */
    int block() {
        return channels * bytes;
    }

    String words() {
        return bytes * 8 + " bit" + (real ? " floating point" : "");
    }

    /**
     * @param chunk its bytes, little-endian
     */
    static WaveForm of(ByteBuffer chunk) throws BadWaveException {
        if (chunk.remaining() < 16) {
            throw new BadWaveException(
                    "its fmt chunk has " + chunk.remaining() + " bytes; the least is 16");
        }
        int code = Short.toUnsignedInt(chunk.getShort(0));
        int channels = Short.toUnsignedInt(chunk.getShort(2));
        long rate = Integer.toUnsignedLong(chunk.getInt(4));
        int block = Short.toUnsignedInt(chunk.getShort(12));
        int bits = Short.toUnsignedInt(chunk.getShort(14));
        if (code == EXTENSIBLE) {
            code = inside(chunk, bits);
        }
        judge(code, bits);
        if (channels < 1 || channels > MOST_CHANNELS) {
            throw new BadWaveException(
                    "it says it has "
                            + channels
                            + " channels; 1 to "
                            + MOST_CHANNELS
                            + " are read");
        }
        if (rate < LEAST_RATE || rate > MOST_RATE) {
            throw new BadWaveException(
                    "it says it has "
                            + rate
                            + " samples a second; "
                            + LEAST_RATE
                            + " to "
                            + MOST_RATE
                            + " are read");
        }
        var form = new WaveForm(code == REAL, channels, (int) rate, bits / 8);
        if (block != form.block()) {
            throw new BadWaveException(
                    "its header contradicts itself: "
                            + channels
                            + (channels == 1 ? " channel" : " channels")
                            + " of "
                            + bits
                            + " bit are "
                            + form.block()
                            + " bytes, not "
                            + block);
        }
        return form;
    }

    private static int inside(ByteBuffer chunk, int bits) throws BadWaveException {
        if (chunk.remaining() < 40) {
            throw new BadWaveException(
                    "its extensible fmt chunk has "
                            + chunk.remaining()
                            + " bytes; the least is 40");
        }
        int valid = Short.toUnsignedInt(chunk.getShort(18));
        if (valid > bits) {
            throw new BadWaveException(
                    "its header contradicts itself: "
                            + valid
                            + " valid bits in samples of "
                            + bits);
        }
        int code = chunk.getShort(24);
        boolean ordinary =
                code >= 0
                        && chunk.getShort(26) == 0
                        && chunk.getInt(28) == TAIL_1
                        && chunk.getLong(32) == TAIL_2;
        if (!ordinary) {
            throw new BadWaveException("its subformat is no format that is read");
        }
        return code;
    }

    private static void judge(int code, int bits) throws BadWaveException {
        String packed =
                switch (code) {
                    case 2, 17 -> "ADPCM";
                    case 6 -> "A-law";
                    case 7 -> "µ-law";
                    case 0x50, 0x55 -> "MPEG";
                    case 0xFF -> "AAC";
                    default -> "";
                };
        if (!packed.isEmpty()) {
            throw new BadWaveException(
                    "its sound is packed as " + packed + "; record as WAV without packing (PCM)");
        }
        if (code != PCM && code != REAL) {
            throw new BadWaveException(
                    "its format has the code "
                            + code
                            + "; 1 (PCM) and 3 (floating point) are read");
        }
        boolean known =
                code == PCM
                        ? bits == 8 || bits == 16 || bits == 24 || bits == 32
                        : bits == 32 || bits == 64;
        if (!known) {
            throw new BadWaveException(
                    "its samples have "
                            + bits
                            + " bit; "
                            + (code == PCM ? "8, 16, 24 and 32" : "32 and 64")
                            + " are read"
                            + (code == PCM ? "" : " of floating point"));
        }
    }

    /** One sample, full scale ±1 (of floating point as it stands). */
    float sample(ByteBuffer from, int at) {
        if (real) {
            return bytes == 4 ? from.getFloat(at) : (float) from.getDouble(at);
        }
        return switch (bytes) {
            case 1 -> (Byte.toUnsignedInt(from.get(at)) - 128) / 128f;
            case 2 -> from.getShort(at) / 32_768f;
            case 3 ->
                    (from.get(at + 2) << 16
                                    | Byte.toUnsignedInt(from.get(at + 1)) << 8
                                    | Byte.toUnsignedInt(from.get(at)))
                            / 8_388_608f;
            default -> from.getInt(at) / 0x1p31f;
        };
    }
}

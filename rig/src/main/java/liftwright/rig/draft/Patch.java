package liftwright.rig.draft;

import java.util.Arrays;

/**
 * What turns one text into another, byte by byte, and back: a stretch is replaced, the rest stays.
 *
 * @param from where the stretch begins
 * @param removed what stood there
 * @param inserted what stands there instead
 */
@SuppressWarnings("ArrayRecordComponent") // never compared, never shown; nobody else holds them
record Patch(int from, byte[] removed, byte[] inserted) {

    static Patch between(byte[] before, byte[] after) {
        int mismatch = Arrays.mismatch(before, after);
        if (mismatch < 0) {
            return new Patch(before.length, new byte[0], new byte[0]);
        }
        int tail = 0;
        int most = Math.min(before.length, after.length) - mismatch;
        while (tail < most && before[before.length - 1 - tail] == after[after.length - 1 - tail]) {
            tail++;
        }
        return new Patch(
                mismatch,
                Arrays.copyOfRange(before, mismatch, before.length - tail),
                Arrays.copyOfRange(after, mismatch, after.length - tail));
    }

    /**
     * @throws IllegalArgumentException if {@code before} is not what this was made for
     */
    byte[] on(byte[] before) {
        int end = from + removed.length;
        if (from < 0
                || end > before.length
                || !Arrays.equals(before, from, end, removed, 0, removed.length)) {
            throw new IllegalArgumentException("a patch for another text");
        }
        byte[] after = new byte[before.length - removed.length + inserted.length];
        System.arraycopy(before, 0, after, 0, from);
        System.arraycopy(inserted, 0, after, from, inserted.length);
        System.arraycopy(before, end, after, from + inserted.length, before.length - end);
        return after;
    }

    Patch back() {
        return new Patch(from, /* removed= */ inserted, /* inserted= */ removed);
    }

    /** Whether the other one does the same. */
    boolean isLike(Patch other) {
        return from == other.from
                && Arrays.equals(removed, other.removed)
                && Arrays.equals(inserted, other.inserted);
    }

    int size() {
        return removed.length + inserted.length;
    }
}

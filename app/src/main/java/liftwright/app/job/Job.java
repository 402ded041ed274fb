package liftwright.app.job;

import java.util.Locale;

/**
 * A job as it stands at a moment.
 *
 * @param note what is written down of it
 * @param far how far the stage is that it is in; of one that does not run, how far it came
 */
public record Job(JobNote note, Far far) {

    /**
     * How far it is.
     *
     * @param stage in words; empty where none has begun
     * @param leftS how long the stage lasts still, s; negative where that cannot be told yet
     */
    public record Far(String stage, long done, long total, double leftS) {

        /** "12 of 200, 6 %; about 3 min left". */
        public String words() {
            String far =
                    String.format(
                            Locale.ROOT,
                            "%d of %d, %.0f %%",
                            done,
                            total,
                            Math.floor(100.0 * done / total));
            return leftS < 0 || done == total ? far : far + "; " + left(leftS);
        }

        private static String left(double seconds) {
            if (seconds < 60) {
                return "less than a minute left";
            }
            long minutes = Math.round(seconds / 60);
            return minutes < 90
                    ? "about " + minutes + " min left"
                    : String.format(Locale.ROOT, "about %.1f h left", seconds / 3600);
        }
    }
}

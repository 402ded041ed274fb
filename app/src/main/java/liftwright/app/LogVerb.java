package liftwright.app;

import java.util.List;

/** {@code log}: what tests measured. */
final class LogVerb {

    private final Voice voice;
    private final Surroundings around;
    private final Options options;

    LogVerb(Voice voice, Surroundings around, Options options) {
        this.voice = voice;
        this.around = around;
        this.options = options;
    }

    Exit run() {
        List<String> words = options.names();
        if (words.getFirst().equals(LogSoundGrammar.SOUND)) {
            return new LogSound(voice, around, options).run(words.subList(1, words.size()));
        }
        throw new UsageException(
                "log does not " + words.getFirst() + ". See: liftwright log --help");
    }
}

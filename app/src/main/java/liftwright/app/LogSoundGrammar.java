package liftwright.app;

import picocli.CommandLine.Model.CommandSpec;

/** What {@code log sound} takes. */
final class LogSoundGrammar {

    /** Speeds of the fans from a recording of their sound. */
    static final String SOUND = "sound";

    static final String FANS = "--fans";
    static final String ONE_BY_ONE = "--one-by-one";
    static final String ORDER = "--order";
    static final String DISTANCE = "--distance";
    static final String MOVING = "--moving";
    static final String SPEEDS = "--speeds";
    static final String OF_TEST = "--of-test";

    private LogSoundGrammar() {}

    static void options(CommandSpec spec) {
        spec.addOption(
                Grammar.value(
                        FANS, "IDS", "With sound: the fans that ran, with commas; else all."));
        spec.addOption(
                Grammar.value(
                        ONE_BY_ONE,
                        "FILE",
                        "With sound: a recording in which each of the fans ran by itself at one"
                                + " throttle; it tells whose line is whose."));
        spec.addOption(
                Grammar.value(
                        ORDER,
                        "IDS",
                        "With --one-by-one: in which order they ran, with commas; else that of the"
                                + " rig file."));
        spec.addOption(
                Grammar.value(
                        DISTANCE,
                        "LENGTH",
                        "With sound: from the fans to the microphone, such as \"5 m\"; else 0."));
        spec.addOption(
                Grammar.value(
                        MOVING,
                        "SPEED",
                        "With sound: how fast the rig moved at most, such as \"0.5 m/s\"; else it"
                                + " stood."));
        spec.addOption(
                Grammar.value(
                        SPEEDS,
                        "FILE",
                        "With sound: write the speeds as a log (CSV). Never overwrites."));
        spec.addOption(
                Grammar.value(
                        OF_TEST,
                        "TEST",
                        "With sound: the test of the logbook that was recorded; times are put on"
                                + " the clock of its log by the start-up of the fans, where that is"
                                + " plain."));
    }
}

package liftwright.app;

import java.util.List;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** What {@code log} takes. */
final class LogGrammar {

    /** Speeds of the fans from a recording of their sound. */
    static final String SOUND = "sound";

    static final String FANS = "--fans";
    static final String ONE_BY_ONE = "--one-by-one";
    static final String ORDER = "--order";
    static final String DISTANCE = "--distance";
    static final String MOVING = "--moving";
    static final String SPEEDS = "--speeds";

    private LogGrammar() {}

    static CommandSpec spec() {
        CommandSpec spec =
                Grammar.verb(
                        Grammar.LOG,
                        "What tests measured. sound: speed of every fan over time from a recording"
                                + " (WAV) of the test.");
        spec.addPositional(
                PositionalParamSpec.builder()
                        .paramLabel("sound RIG RECORDING")
                        .hideParamSyntax(true)
                        .index("0..*")
                        .arity("1..*")
                        .required(true)
                        .type(List.class)
                        .auxiliaryTypes(String.class)
                        .description(
                                "What to do, a rig file or a folder with a rig.yaml in it, files.")
                        .build());
        sound(spec);
        spec.addOption(Grammar.flag(Grammar.JSON, "One line of JSON instead of words."));
        spec.addOption(Grammar.value(Grammar.UNITS, "si|us", "Units: si (the default) or us."));
        Grammar.look(spec);
        return Grammar.example(
                spec, "liftwright log sound examples/curlew test.wav --speeds speeds.csv");
    }

    private static void sound(CommandSpec spec) {
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
    }
}

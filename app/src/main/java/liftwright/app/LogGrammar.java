package liftwright.app;

import java.util.List;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** What {@code log} takes. */
final class LogGrammar {

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
        LogSoundGrammar.options(spec);
        spec.addOption(Grammar.flag(Grammar.JSON, "One line of JSON instead of words."));
        spec.addOption(Grammar.value(Grammar.UNITS, "si|us", "Units: si (the default) or us."));
        Grammar.look(spec);
        return Grammar.example(
                spec, "liftwright log sound examples/curlew test.wav --speeds speeds.csv");
    }
}

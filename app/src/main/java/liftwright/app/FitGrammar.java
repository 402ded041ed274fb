package liftwright.app;

import java.util.List;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** The verb {@code fit} and its options. */
final class FitGrammar {

    static final String WRITE = "--write";

    private FitGrammar() {}

    static CommandSpec spec() {
        CommandSpec spec =
                Grammar.verb(
                        Grammar.FIT,
                        "Fit the numbers of a rig to tests of its logbook: what they find in place"
                                + " of what is declared, what they cannot tell, and how well they"
                                + " tell a test that is held out.");
        spec.addPositional(
                PositionalParamSpec.builder()
                        .paramLabel("RIG [TEST]...")
                        .hideParamSyntax(true)
                        .index("0..*")
                        .arity("1..*")
                        .required(true)
                        .type(List.class)
                        .auxiliaryTypes(String.class)
                        .description(
                                "A rig file, or a folder with a rig.yaml in it; then the tests."
                                        + " Without any: all of its logbook.")
                        .build());
        spec.addOption(
                Grammar.flag(
                        WRITE,
                        "Write what was found into rig.corrections.yaml beside the rig file, which"
                                + " every verb then reads. What it held before is kept as a"
                                + " numbered copy."));
        Grammar.computing(spec);
        Grammar.look(spec);
        return Grammar.example(spec, "liftwright fit examples/mudlark 2026-03-14-1 --write");
    }
}

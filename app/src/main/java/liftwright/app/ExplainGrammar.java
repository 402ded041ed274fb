package liftwright.app;

import java.util.List;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** What {@code explain} takes. */
final class ExplainGrammar {

    private ExplainGrammar() {}

    static CommandSpec spec() {
        CommandSpec spec =
                Grammar.verb(
                        Grammar.EXPLAIN,
                        "Why a test did not give what was promised: its recording beside what the"
                                + " rig gives under the same throttle, what happened in it, how much"
                                + " lift is missing, which causes explain it, and which test would"
                                + " tell more.");
        spec.addPositional(
                PositionalParamSpec.builder()
                        .paramLabel("RIG [TEST|FILE...]")
                        .hideParamSyntax(true)
                        .index("0..*")
                        .arity("1..*")
                        .required(true)
                        .type(List.class)
                        .auxiliaryTypes(String.class)
                        .description(
                                "A rig file, or a folder with a rig.yaml in it; then a test of its"
                                        + " logbook, or logs of one test that are in no logbook."
                                        + " Without any: the latest test.")
                        .build());
        spec.addOption(
                Grammar.value(
                        LogGrammar.MAP,
                        "FILE",
                        "With logs that are files: what their heads are called here."));
        Grammar.answering(spec);
        return Grammar.example(spec, "liftwright explain examples/mudlark 2026-03-14-1");
    }
}

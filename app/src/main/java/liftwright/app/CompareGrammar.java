package liftwright.app;

import java.util.List;
import liftwright.review.compare.Puts;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** What {@code compare} takes. */
final class CompareGrammar {

    static final String QUESTION = "--question";
    static final String TEST = "--test";

    private CompareGrammar() {}

    static CommandSpec spec() {
        CommandSpec spec =
                Grammar.verb(
                        Grammar.COMPARE,
                        "Two revisions of a rig: what changed in the file, which verdicts change,"
                                + " and how much every number of every answer changes, with a band"
                                + " in which what both share cancels.");
        spec.addPositional(
                PositionalParamSpec.builder()
                        .paramLabel("RIG [OTHER]")
                        .hideParamSyntax(true)
                        .index("0..*")
                        .arity("1..2")
                        .required(true)
                        .type(List.class)
                        .auxiliaryTypes(String.class)
                        .description(
                                "The first and the second revision: rig files, or folders with a"
                                        + " rig.yaml in them.")
                        .build());
        spec.addOption(
                Grammar.value(
                        TEST,
                        "TEST",
                        "In place of OTHER: the rig as it was when this test of the logbook beside"
                                + " RIG was made. It is the first of the two, since it came"
                                + " before."));
        spec.addOption(
                Grammar.value(
                        QUESTION,
                        "QUESTION",
                        "Only this: "
                                + String.join(", ", Puts.QUESTIONS)
                                + "; several with commas. Left out: all of them, which takes"
                                + " minutes."));
        Grammar.answering(spec);
        return Grammar.example(
                spec, "liftwright compare --question lift examples/mudlark examples/curlew");
    }
}

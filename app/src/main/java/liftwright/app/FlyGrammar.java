package liftwright.app;

import java.util.List;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** What {@code fly} takes. */
final class FlyGrammar {

    static final String PROFILE = "--profile";
    static final String FLIGHT = "--flight";
    static final String CSV = "--csv";
    static final String LOOPS = "--loops";
    static final String ALLOCATION = "--allocation";

    private FlyGrammar() {}

    static CommandSpec spec() {
        CommandSpec spec =
                Grammar.verb(
                        Grammar.FLY,
                        "Will the flight computer hold it: fly a profile, with its wind, its limits"
                                + " and what goes wrong in it, and tell the loops, what came of the"
                                + " flight, and what happened.");
        spec.addPositional(
                PositionalParamSpec.builder()
                        .paramLabel("RIG")
                        .index("0..*")
                        .arity("1..*")
                        .required(true)
                        .type(List.class)
                        .auxiliaryTypes(String.class)
                        .description("A rig file, or a folder with a rig.yaml in it.")
                        .build());
        spec.addOption(
                Grammar.value(
                        PROFILE,
                        "FILE",
                        "The profile. Left out: up half a metre, ten seconds in one place, down."));
        spec.addOption(
                Grammar.value(
                        FLIGHT,
                        "N",
                        "Fly the Nth drawn flight alone and show it: every tolerance, the air and"
                                + " the noise as its number and the seed draw them."));
        spec.addOption(
                Grammar.value(
                        CSV,
                        "FILE",
                        "Also write the flight as a table with units in its head. Never"
                                + " overwrites."));
        spec.addOption(
                Grammar.value(
                        LOOPS,
                        "FILE",
                        "Also write the gains of the loops with their margins as a table; with a"
                                + " name in .json gains and allocation as JSON. Never overwrites."));
        spec.addOption(
                Grammar.value(
                        ALLOCATION,
                        "FILE",
                        "Also write how lift and moments are shared out among the fans, as a table."
                                + " Never overwrites."));
        Grammar.answering(spec);
        return Grammar.example(
                spec,
                "liftwright fly examples/curlew --profile"
                        + " examples/curlew/profiles/to-the-wearer.yaml");
    }
}

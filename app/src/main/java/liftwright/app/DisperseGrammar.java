package liftwright.app;

import java.util.List;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** The verb {@code disperse} and its options. */
final class DisperseGrammar {

    static final String PROFILE = "--profile";
    static final String FLIGHTS = "--flights";
    static final String FROM = "--from";
    static final String TO = "--to";
    static final String MERGE = "--merge";
    static final String INTO = "--into";
    static final String SHARE = "--share";

    private DisperseGrammar() {}

    static CommandSpec spec() {
        CommandSpec spec =
                Grammar.verb(
                        Grammar.DISPERSE,
                        "Fly a profile many times, each time with every tolerance drawn: how often"
                                + " it keeps its limits, how far it misses, what drives that, and"
                                + " which flights to look at. What is flown is kept in a file, and"
                                + " the same command goes on where it was stopped.");
        spec.addPositional(
                PositionalParamSpec.builder()
                        .paramLabel("RIG")
                        .index("0")
                        .arity("1")
                        .required(true)
                        .type(List.class)
                        .auxiliaryTypes(String.class)
                        .description("A rig file, or a folder with a rig.yaml in it.")
                        .build());
        spec.addOption(Grammar.value(PROFILE, "FILE", "The profile that is flown."));
        spec.addOption(
                Grammar.value(
                        FLIGHTS, "N", "Fly flights 1 to N; left out, 200. Flight 0 is fly's own."));
        spec.addOption(
                Grammar.value(
                        Grammar.SEED, "S", "Seed of everything that is drawn in the flights."));
        spec.addOption(Grammar.value(FROM, "A", "Fly from flight A on: a part of them."));
        spec.addOption(Grammar.value(TO, "B", "Fly up to flight B, B with it."));
        spec.addOption(
                OptionSpec.builder(MERGE)
                        .paramLabel("FILE")
                        .type(List.class)
                        .auxiliaryTypes(String.class)
                        .arity("1..*")
                        .description(
                                "Put in the flights that other runs kept in these files. Without"
                                        + " --flights, --from or --to nothing more is flown.")
                        .build());
        spec.addOption(
                Grammar.value(
                        INTO,
                        "FILE",
                        "Keep the flights in this file; left out, in the folder flights beside the"
                                + " rig file. What it holds is added to."));
        spec.addOption(
                Grammar.value(
                        SHARE,
                        "SHARE",
                        "Share of the flights that shall keep every limit, such as 99%; left out,"
                                + " 95%."));
        spec.addOption(Grammar.flag(Grammar.JSON, "One line of JSON instead of words."));
        spec.addOption(
                Grammar.value(
                        Grammar.UNITS, "si|us", "Units of the answer: si (the default) or us."));
        Grammar.computing(spec);
        Grammar.corrections(spec);
        Grammar.look(spec);
        return Grammar.example(
                spec,
                "liftwright disperse examples/curlew --profile"
                        + " examples/curlew/profiles/hold.yaml --flights 200 --seed 7");
    }
}

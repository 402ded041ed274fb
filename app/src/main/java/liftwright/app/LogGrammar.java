package liftwright.app;

import java.util.List;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** What {@code log} takes. */
final class LogGrammar {

    /** Reads logs of a test in. */
    static final String ADD = "add";

    /** Lists the tests. */
    static final String LIST = "list";

    /** Tells all of one test. */
    static final String SHOW = "show";

    /** Tells in what two tests differ. */
    static final String COMPARE = "compare";

    /** Tells which parts change from test to test. */
    static final String TRENDS = "trends";

    /** Holds every file against its digest. */
    static final String CHECK = "check";

    /** Asks all tests in SQL. */
    static final String QUERY = "query";

    /** Writes down what was learned later. */
    static final String NOTE_ON = "note";

    /** Inspects a part. */
    static final String PART = "part";

    /** Keeps the life sheet of a pack. */
    static final String PACK = "pack";

    /** Holds fast what went wrong. */
    static final String INCIDENT = "incident";

    static final List<String> ACTIONS =
            List.of(
                    ADD,
                    LIST,
                    SHOW,
                    COMPARE,
                    TRENDS,
                    CHECK,
                    QUERY,
                    NOTE_ON,
                    PART,
                    PACK,
                    INCIDENT,
                    LogSoundGrammar.SOUND);

    static final String MAP = "--map";
    static final String CARD = "--card";
    static final String DATE = "--date";
    static final String BY = CardGrammar.BY;
    static final String NOTE = CardGrammar.NOTE;
    static final String WEATHER = "--weather";
    static final String COST = "--cost";
    static final String HOURS = "--hours";
    static final String INSTRUMENTS = "--instruments";
    static final String MEDIA = "--media";

    /** Lists without computing. */
    static final String NO_LIFT = "--no-lift";

    private LogGrammar() {}

    static CommandSpec spec() {
        CommandSpec spec =
                Grammar.verb(
                        Grammar.LOG,
                        "The logbook of a rig: what was measured, kept as it was. add: read the logs"
                                + " of a test in. list, show: what there is. compare: in what two"
                                + " tests differ, step by step. trends: which parts get worse from test to test, and when they"
                                + " meet a limit. check: whether every file is as it"
                                + " was written. query: ask all tests in SQL (views tests, tracks,"
                                + " samples). note: what was learned later. part: how a part was"
                                + " found. pack: the life of a pack, and whether it is retired."
                                + " incident: hold fast what went wrong. sound: speed of every fan over"
                                + " time from a recording (WAV) of the test.");
        spec.addPositional(
                PositionalParamSpec.builder()
                        .paramLabel("ACTION RIG [FILE|TEST|PART|SQL|KEY=VALUE]...")
                        .hideParamSyntax(true)
                        .index("0..*")
                        .arity("1..*")
                        .required(true)
                        .type(List.class)
                        .auxiliaryTypes(String.class)
                        .description(
                                "One of "
                                        + String.join(", ", ACTIONS)
                                        + "; a rig file, or a folder with a rig.yaml in it; then"
                                        + " what the action is about.")
                        .build());
        spec.addOption(
                Grammar.value(
                        MAP, "FILE", "With add: what the heads of the files are called here."));
        spec.addOption(Grammar.value(CARD, "CARD", "With add: the card that was run."));
        spec.addOption(
                Grammar.value(DATE, "DATE", "The day, such as 2026-03-14; left out: today."));
        spec.addOption(
                Grammar.value(
                        BY,
                        "NAME=ROLE",
                        "Who was there, and as what; several with commas. Elsewhere than with add:"
                                + " who writes it down."));
        spec.addOption(Grammar.value(NOTE, "TEXT", "What should be remembered."));
        spec.addOption(
                Grammar.value(
                        WEATHER,
                        "TEXT",
                        "With add: air, pressure, humidity, wind, gust, such as"
                                + " \"air=9 °C, wind=2 m/s\"."));
        spec.addOption(Grammar.value(COST, "TEXT", "With add: such as \"12.50 EUR\"."));
        spec.addOption(Grammar.value(HOURS, "TIME", "With add: work, such as \"3 h\"."));
        spec.addOption(Grammar.value(INSTRUMENTS, "TEXT", "With add: what measured; with commas."));
        spec.addOption(
                Grammar.value(
                        MEDIA,
                        "FILE",
                        "With add: pictures and films; with commas. They stay where they are."));
        spec.addOption(
                Grammar.flag(
                        NO_LIFT,
                        "With list: do not compute the lift that each test lacks, which takes a"
                                + " second or a few for each."));
        LogSoundGrammar.options(spec);
        spec.addOption(Grammar.flag(Grammar.JSON, "One line of JSON instead of words."));
        spec.addOption(Grammar.value(Grammar.UNITS, "si|us", "Units: si (the default) or us."));
        spec.addOption(Grammar.value(Grammar.SEED, "N", "Seed of the draws."));
        spec.addOption(
                Grammar.flag(
                        Grammar.PROGRESS,
                        "Say on standard error how far it is, also when that is no terminal."));
        Grammar.look(spec);
        return Grammar.example(
                spec, "liftwright log add rig.yaml scale.csv telemetry.csv --card first-spin.F140");
    }
}

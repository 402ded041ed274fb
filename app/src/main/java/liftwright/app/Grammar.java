package liftwright.app;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import liftwright.review.Search;
import liftwright.rig.shape.kind.Nearest;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParseResult;

/**
 * Verbs and their options. Built by hand and not from annotations: reading those costs a start more
 * than all the rest of {@code check}.
 */
final class Grammar {

    static final String JSON = "--json";
    static final String UNITS = "--units";
    static final String SEED = "--seed";
    static final String THREADS = "--threads";
    static final String KEEP = "--keep";
    static final String MEASURED = "--measured";
    static final String TRACE = "--trace";
    static final String HOPS = "--hops";
    static final String RUNS = "--runs";
    static final String PAUSE = "--pause";
    static final String FULL_THROTTLE = "--full-throttle";
    static final String START_STATE = "--start-state";
    static final String END_STATE = "--end-state";
    static final String SOLDERING = "--soldering";
    static final String CHARGE = "--charge";
    static final String CELL_TEMPERATURE = "--cell-temperature";
    static final String SEARCH = "--search";
    static final String TRIPLES = "--triples";
    static final String SENSITIVITIES = "--sensitivities";
    static final String PAIRS = "--pairs";
    static final String STAND = "--stand";
    static final String FAN = "--fan";
    static final String RIG = "--rig";
    static final String TYPE = "--type";
    static final String EXIT_AREA = "--exit-area";
    static final String TIP = "--tip";
    static final String HUB = "--hub";
    static final String PLOT = "--plot";

    /** What only {@code check --fan} knows what to do with. */
    static final List<String> OF_A_FAN = List.of(RIG, TYPE, EXIT_AREA, TIP, HUB, PLOT);

    /** What {@code review heat} alone knows what to do with. */
    static final List<String> OF_HEAT = List.of(FULL_THROTTLE, START_STATE, END_STATE, SOLDERING);

    /** What {@code review failures} alone knows what to do with. */
    static final List<String> OF_FAILURES = List.of(TRIPLES, PAIRS);

    /** Files that {@code review heat} writes, and never over another. */
    static final List<String> WRITTEN_BY_HEAT = List.of(END_STATE, SOLDERING);

    static final String AS_DECLARED = "--as-declared";

    static final String NO_COLOUR = "--no-color";
    static final String ASCII = "--ascii";
    static final String HTML = "--html";
    static final String PROGRESS = "--progress";

    static final String CHECK = "check";
    static final String NEW = "new";
    static final String REVIEW = "review";
    static final String OPEN = "open";
    static final String CARD = "card";
    static final String FIT = "fit";
    static final String EXPLAIN = "explain";
    static final String FLY = "fly";
    static final String LOG = "log";
    static final String DISPERSE = "disperse";
    static final String COMPARE = "compare";

    static final String NO_BROWSER = "--no-browser";
    static final String PORT = "--port";

    /** The questions that {@code review} asks when none is named. */
    static final List<String> QUESTIONS =
            List.of(
                    Asking.LIFT,
                    Asking.ENDURANCE,
                    Asking.HEAT,
                    Asking.BALANCE,
                    Asking.FAILURES,
                    Asking.RESTRAINT);

    private static final String RIG_WORDS = "A rig file, or a folder with a rig.yaml in it.";

    private final CommandLine root;

    Grammar() {
        CommandSpec spec = CommandSpec.create().name("liftwright");
        spec.usageMessage()
                .description(
                        "Computes from a rig file of an electric multi-fan lift rig whether it"
                                + " lifts, how long it flies, which way it turns, what gives out first, what a"
                                + " failure does, what must hold it down and what would mend it, and"
                                + " makes the cards by which it is tested and keeps the logs of its tests. A"
                                + " calculation, not a"
                                + " certificate.")
                .synopsisSubcommandLabel("VERB")
                .commandListHeading("Verbs:%n")
                .footer(
                        "",
                        "Exit codes: 0 clear; 1 a finding stops, or undecided; 2 bad input or usage;",
                        "3 stopped early; 70 a fault of the program.",
                        "",
                        "Example: liftwright review examples/mudlark");
        spec.addOption(help());
        spec.addOption(flag("--version", "Print the version and exit.", "-V"));
        spec.addSubcommand(CHECK, line(check()));
        spec.addSubcommand(NEW, line(fresh()));
        spec.addSubcommand(REVIEW, line(review()));
        spec.addSubcommand(COMPARE, line(CompareGrammar.spec()));
        spec.addSubcommand(CARD, line(CardGrammar.spec()));
        spec.addSubcommand(FIT, line(FitGrammar.spec()));
        spec.addSubcommand(EXPLAIN, line(ExplainGrammar.spec()));
        spec.addSubcommand(FLY, line(FlyGrammar.spec()));
        spec.addSubcommand(LOG, line(LogGrammar.spec()));
        spec.addSubcommand(DISPERSE, line(DisperseGrammar.spec()));
        spec.addSubcommand(OPEN, line(open()));
        root = line(spec);
    }

    /**
     * @throws UsageException naming the nearest verb or option
     */
    ParseResult parse(String... args) {
        if (args.length == 0) {
            throw new UsageException("a verb is missing. " + verbs() + see(""));
        }
        if (!args[0].startsWith("-") && !root.getSubcommands().containsKey(args[0])) {
            throw new UsageException(
                    "no verb "
                            + args[0]
                            + meant(args[0], root.getSubcommands().keySet())
                            + ". "
                            + verbs()
                            + see(""));
        }
        try {
            return root.parseArgs(args);
        } catch (CommandLine.UnmatchedArgumentException e) {
            String first = e.getUnmatched().getFirst();
            var known = e.getCommandLine().getCommandSpec();
            String what = first.startsWith("-") ? "no option " : "nothing is done with ";
            throw new UsageException(
                    what
                            + first
                            + (first.startsWith("-")
                                    ? meant(first, new TreeSet<>(known.optionsMap().keySet()))
                                    : "")
                            + "."
                            + see(verb(e)));
        } catch (CommandLine.ParameterException e) {
            throw new UsageException(e.getMessage() + "." + see(verb(e)));
        }
    }

    /** The help of a verb, or of all. */
    String help(ParseResult parsed) {
        return parsed.commandSpec().commandLine().getUsageMessage(CommandLine.Help.Ansi.OFF);
    }

    private static String verb(CommandLine.ParameterException e) {
        CommandSpec spec = e.getCommandLine().getCommandSpec();
        return spec.parent() == null ? "" : " " + spec.name();
    }

    private static String see(String verb) {
        return " See: liftwright" + verb + " --help";
    }

    private String verbs() {
        return "Verbs: " + String.join(", ", root.getSubcommands().keySet()) + ".";
    }

    private static String meant(String word, Set<String> known) {
        return Nearest.to(word, known).map(k -> ": perhaps " + k + " was meant").orElse("");
    }

    private static CommandLine line(CommandSpec spec) {
        var line = new CommandLine(spec);
        line.setUsageHelpWidth(liftwright.report.Look.WIDEST);
        return line;
    }

    private static CommandSpec check() {
        CommandSpec spec =
                verb(CHECK, "Read rig files and say what is wrong with them, and where.");
        spec.addPositional(rigs());
        spec.addOption(flag(JSON, "One line of JSON for each rig."));
        spec.addOption(
                flag(
                        STAND,
                        "The files are plans of thrust stands: how well each will measure, and what"
                                + " to improve first."));
        spec.addOption(
                flag(
                        FAN,
                        "The files are bench tables of one kind of fan each: which fan the rows make,"
                                + " which row follows no law, and which cannot be true."));
        spec.addOption(
                value(
                        RIG,
                        "RIG",
                        "With --fan: a rig file whose fan type is held against the rows."));
        spec.addOption(value(TYPE, "NAME", "With --rig: which of its fan types."));
        spec.addOption(
                value(
                        EXIT_AREA,
                        "AREA",
                        "With --fan: area of the jet, such as \"128 cm²\"; rows are held against the"
                                + " least power that it allows."));
        spec.addOption(
                value(
                        TIP,
                        "LENGTH",
                        "With --fan: rotor diameter; with --hub in place of the area."));
        spec.addOption(value(HUB, "LENGTH", "With --fan: hub diameter."));
        spec.addOption(
                value(
                        PLOT,
                        "FILE",
                        "With --fan: draw the rows and the fit as SVG. Never overwrites."));
        corrections(spec);
        look(spec);
        return example(spec, "liftwright check examples/mudlark");
    }

    private static CommandSpec fresh() {
        CommandSpec spec =
                verb(NEW, "Write a commented rig file to change into yours. Never overwrites.");
        spec.addPositional(
                PositionalParamSpec.builder()
                        .paramLabel("NAME")
                        .index("0")
                        .arity("0..1")
                        .type(String.class)
                        .description(
                                "Of a folder to make with a rig.yaml in it, or of the file when it"
                                        + " ends in .yaml. Left out: writes rig.yaml here.")
                        .build());
        return example(spec, "liftwright new heron");
    }

    private static CommandSpec review() {
        CommandSpec spec =
                verb(
                        REVIEW,
                        "Answer questions about rigs. Questions: "
                                + String.join(", ", QUESTIONS)
                                + ". Without one, all of them.");
        spec.addPositional(
                PositionalParamSpec.builder()
                        .paramLabel("[QUESTION] RIG")
                        .hideParamSyntax(true)
                        .index("0..*")
                        .arity("1..*")
                        .required(true)
                        .type(List.class)
                        .auxiliaryTypes(String.class)
                        .description(RIG_WORDS + " Several are answered in order.")
                        .build());
        spec.addOption(flag(JSON, "One line of JSON for each rig instead of words."));
        spec.addOption(value(UNITS, "si|us", "Units of the answer: si (the default) or us."));
        spec.addOption(value(SEED, "N", "Seed of the draws; the same seed gives the same answer."));
        computing(spec);
        spec.addOption(
                value(
                        HTML,
                        "FILE",
                        "Also write the answers as one sheet of HTML, to read, print or send. Replaces"
                                + " a sheet that it wrote itself and nothing else."));
        spec.addOption(
                value(
                        KEEP,
                        "N",
                        "Write remedy N of the answer into the rig file, comments kept, and ask"
                                + " again."));
        spec.addOption(
                value(
                        MEASURED,
                        "FILE",
                        "Balance held against a table of measured turning: which cause explains it."));
        spec.addOption(
                value(
                        TRACE,
                        "FILE",
                        "Endurance or heat over a table of throttle or lift in place of a hover."));
        spec.addOption(
                value(
                        HOPS,
                        "N",
                        "Endurance or heat of N hops, each as long as demands/hover, with pauses.",
                        RUNS));
        spec.addOption(
                value(
                        PAUSE,
                        "TIME",
                        "Pause between two hops; when left out 60 s, for heat demands/pause."));
        spec.addOption(flag(FULL_THROTTLE, "Heat at full throttle in place of a hover."));
        spec.addOption(
                value(
                        START_STATE,
                        "FILE",
                        "Heat from the temperatures, charge and fuses in this table, such as an earlier"
                                + " run left with --end-state."));
        spec.addOption(
                value(
                        END_STATE,
                        "FILE",
                        "Write what the flight of heat leaves the parts with, as a table to start the"
                                + " next one from. Never overwrites."));
        spec.addOption(
                value(
                        SOLDERING,
                        "FILE",
                        "Write heat's soldering list as CSV: every run, joint, fuse and pole. Never"
                                + " overwrites."));
        spec.addOption(
                value(
                        CHARGE,
                        "SHARE",
                        "Start every pack at this charge, such as 80%; the file stays."));
        spec.addOption(
                value(
                        CELL_TEMPERATURE,
                        "TEMPERATURE",
                        "Start every pack at this temperature, such as 5°C; the file stays."));
        spec.addOption(
                value(
                        SEARCH,
                        "WHAT",
                        "Balance also searches for a better arrangement: "
                                + Search.words()
                                + "; several with commas."));
        spec.addOption(
                flag(
                        SENSITIVITIES,
                        "Also tell the five declared values that move the verdict most. Takes longer."));
        spec.addOption(flag(TRIPLES, "Failures also of every three fans that stop. Takes longer."));
        spec.addOption(
                value(
                        PAIRS,
                        "N",
                        "Failures: tell the N worst pairs of faults, 12 when left out. All are counted."));
        corrections(spec);
        look(spec);
        return example(spec, "liftwright review lift examples/sandpiper --units us");
    }

    private static CommandSpec open() {
        CommandSpec spec =
                verb(
                        OPEN,
                        "Open the bay: a page in your browser to see, ask and change rigs. It is"
                                + " served from this machine to this machine alone, until Ctrl-C.");
        spec.addPositional(
                PositionalParamSpec.builder()
                        .paramLabel("FOLDER|RIG")
                        .index("0")
                        .arity("0..1")
                        .type(String.class)
                        .description(
                                "A folder with rig files in it, or the rig file to show first. Left"
                                        + " out: this folder. Nothing outside it is read or"
                                        + " written.")
                        .build());
        spec.addOption(flag(NO_BROWSER, "Print the link and start no browser."));
        spec.addOption(
                value(
                        PORT,
                        "N",
                        "Listen on this port; when left out on the one of the last time, or any"
                                + " free one."));
        return example(spec, "liftwright open examples");
    }

    static CommandSpec verb(String name, String description) {
        CommandSpec spec = CommandSpec.create().name(name);
        spec.usageMessage().description(description);
        spec.addOption(help());
        return spec;
    }

    static CommandSpec example(CommandSpec spec, String example) {
        spec.usageMessage().footer("", "Example: " + example);
        return spec;
    }

    static void look(CommandSpec spec) {
        spec.addOption(
                flag(
                        NO_COLOUR,
                        "No colour, even on a terminal; NO_COLOR=1 in the environment does the same."));
        spec.addOption(
                flag(ASCII, "Only ASCII. Chosen by itself where the terminal has no UTF-8."));
    }

    /** For verbs that compute from a rig. */
    static void corrections(CommandSpec spec) {
        spec.addOption(
                flag(
                        AS_DECLARED,
                        "Compute from what the rig file declares alone: leave out of account what"
                                + " tests found (rig.corrections.yaml beside it)."));
    }

    /** For verbs that answer one question of one rig. */
    static void answering(CommandSpec spec) {
        spec.addOption(flag(JSON, "One line of JSON instead of words."));
        spec.addOption(value(HTML, "FILE", "Also write a sheet of HTML to print."));
        spec.addOption(value(UNITS, "si|us", "Units: si (the default) or us."));
        spec.addOption(value(SEED, "N", "Seed of the draws."));
        computing(spec);
        corrections(spec);
        look(spec);
    }

    /** For verbs that compute for long. */
    static void computing(CommandSpec spec) {
        spec.addOption(
                value(THREADS, "N", "Threads to compute with; the answer does not depend on it."));
        spec.addOption(
                flag(
                        PROGRESS,
                        "Say on standard error how far it is, also when that is no terminal."));
    }

    private static PositionalParamSpec rigs() {
        return PositionalParamSpec.builder()
                .paramLabel("RIG")
                .index("0..*")
                .arity("1..*")
                .required(true)
                .type(List.class)
                .auxiliaryTypes(String.class)
                .description(RIG_WORDS)
                .build();
    }

    private static OptionSpec help() {
        return OptionSpec.builder("-h", "--help")
                .usageHelp(true)
                .description("Print this and exit.")
                .build();
    }

    static OptionSpec flag(String name, String description, String... more) {
        var names = new String[more.length + 1];
        System.arraycopy(more, 0, names, 0, more.length);
        names[more.length] = name;
        return OptionSpec.builder(names)
                .type(boolean.class)
                .arity("0")
                .description(description)
                .build();
    }

    static OptionSpec value(String name, String label, String description, String... more) {
        var names = new String[more.length + 1];
        System.arraycopy(more, 0, names, 0, more.length);
        names[more.length] = name;
        return OptionSpec.builder(names)
                .paramLabel(label)
                .type(String.class)
                .arity("1")
                .description(description.replace("%", "%%")) // it is a format there
                .build();
    }
}

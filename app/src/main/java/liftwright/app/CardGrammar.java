package liftwright.app;

import java.util.List;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** What {@code card} takes. */
final class CardGrammar {

    /** What is still proved, and what would prove the rest. */
    static final String STATUS = "status";

    /** Writes down what came of a card. */
    static final String PASS = "pass";

    /** Reads a log of the kills. */
    static final String PROOF = "proof";

    /** What may be done today. */
    static final String TODAY = "today";

    static final List<String> ACTIONS = List.of(STATUS, PASS, PROOF, TODAY);

    static final String ALL = "--all";
    static final String FOR = "--for";
    static final String PDF = "--pdf";
    static final String PAPER = "--paper";
    static final String BY = "--by";
    static final String OUTCOME = "--outcome";
    static final String RUNS = "--clean-runs";
    static final String ON = "--on";
    static final String NOTE = "--note";

    private CardGrammar() {}

    static CommandSpec spec() {
        CommandSpec spec =
                Grammar.verb(
                        Grammar.CARD,
                        "The cards by which a rig is tested, from the first spin to free flight."
                                + " Without a card: the programme, what stands and what keeps the"
                                + " others closed. With cards: each with loads, distances, readings"
                                + " to expect and abort values. status: what is still proved, and"
                                + " the cheapest way to prove --for. pass: write down what came of"
                                + " a card. proof: read a log of the kills. today: what a day file"
                                + " allows.");
        spec.addPositional(
                PositionalParamSpec.builder()
                        .paramLabel("[status|pass|proof|today] RIG [CARD|FILE]...")
                        .hideParamSyntax(true)
                        .index("0..*")
                        .arity("1..*")
                        .required(true)
                        .type(List.class)
                        .auxiliaryTypes(String.class)
                        .description(
                                "A rig file, or a folder with a rig.yaml in it; then the names of"
                                        + " cards, the log of the kills, or the day file.")
                        .build());
        spec.addOption(Grammar.flag(ALL, "Every card of the programme."));
        spec.addOption(Grammar.value(FOR, "CARD", "With status: the card that shall open again."));
        spec.addOption(Grammar.flag(Grammar.JSON, "One line of JSON instead of words."));
        spec.addOption(
                Grammar.value(Grammar.HTML, "FILE", "Also write the cards as HTML to print."));
        spec.addOption(Grammar.value(PDF, "FILE", "Also write the cards as PDF."));
        spec.addOption(
                Grammar.value(PAPER, "a4|letter", "Paper of --html and --pdf: a4 when left out."));
        spec.addOption(Grammar.value(Grammar.UNITS, "si|us", "Units: si (the default) or us."));
        spec.addOption(Grammar.value(ON, "DATE", "As if it were that day, such as 2026-03-14."));
        spec.addOption(
                Grammar.value(BY, "NAME", "With pass: who answers for it; names with commas."));
        spec.addOption(
                Grammar.value(
                        OUTCOME,
                        "WORD",
                        "With pass: passed (when left out), aborted, failed or unexplained."));
        spec.addOption(Grammar.value(RUNS, "N", "With pass: clean runs in a row."));
        spec.addOption(Grammar.value(NOTE, "TEXT", "With pass: what should be remembered."));
        spec.addOption(Grammar.value(Grammar.SEED, "N", "Seed of the draws."));
        spec.addOption(Grammar.value(Grammar.THREADS, "N", "Threads to compute with."));
        spec.addOption(
                Grammar.flag(
                        Grammar.PROGRESS,
                        "Say on standard error how far it is, also when that is no terminal."));
        Grammar.corrections(spec);
        Grammar.look(spec);
        return Grammar.example(
                spec, "liftwright card examples/curlew first-spin.F140 --pdf card.pdf");
    }
}

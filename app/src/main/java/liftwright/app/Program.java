package liftwright.app;

import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import liftwright.report.PlainText;
import picocli.CommandLine.ParseResult;

/** One run of the command line, from its words to its exit code. */
final class Program {

    static final String VERSION = "0.1.0";

    private final Voice voice;
    private final Surroundings around;
    private final Interrupt interrupt;

    Program(OutputStream out, OutputStream err, Surroundings around, Interrupt interrupt) {
        this.voice = new Voice(out, err);
        this.around = around;
        this.interrupt = interrupt;
    }

    /** Never throws: whatever happens becomes a sentence and an exit code. */
    Exit run(String... args) {
        try {
            return obey(new Grammar(), args);
        } catch (UsageException e) {
            // Problems of a file have lines of their own.
            voice.aside(PlainText.ofHelp("liftwright: " + e.words(), !around.utf8()));
            return Exit.BAD_INPUT;
        } catch (Voice.NobodyReadsException e) {
            if (!e.readerLeft()) {
                say("the answer could not be written: " + e.getMessage());
            }
            return Exit.STOPPED_EARLY;
        } catch (OutOfMemoryError e) {
            say("memory ran out. Give Java more: LIFTWRIGHT_JAVA_OPTS=-Xmx4g liftwright …");
            return Exit.FAULT;
        } catch (RuntimeException | Error e) {
            fault(e, args);
            return Exit.FAULT;
        }
    }

    private Exit obey(Grammar grammar, String... args) {
        ParseResult all = grammar.parse(args);
        ParseResult parsed = all.hasSubcommand() ? all.subcommand() : all;
        if (parsed.isUsageHelpRequested()) {
            voice.answer(PlainText.ofHelp(grammar.help(parsed), !around.utf8()));
            return Exit.CLEAR;
        }
        if (parsed.hasMatchedOption("--version")) {
            voice.answer("liftwright " + VERSION + "\n");
            return Exit.CLEAR;
        }
        var options = new Options(parsed, around);
        return switch (parsed.commandSpec().name()) {
            case Grammar.CHECK -> new CheckVerb(voice, around, options).run();
            case Grammar.NEW -> new NewVerb(voice, around).run(options.name());
            case Grammar.REVIEW -> new ReviewVerb(voice, around, options, interrupt).run();
            case Grammar.COMPARE -> new CompareVerb(voice, around, options, interrupt).run();
            case Grammar.CARD -> new CardVerb(voice, around, options, interrupt).run();
            case Grammar.FIT -> new FitVerb(voice, around, options, interrupt).run();
            case Grammar.EXPLAIN -> new ExplainVerb(voice, around, options, interrupt).run();
            case Grammar.FLY -> new FlyVerb(voice, around, options, interrupt).run();
            case Grammar.LOG -> new LogVerb(voice, around, options, interrupt).run();
            case Grammar.DISPERSE -> new DisperseVerb(voice, around, options, interrupt).run();
            case Grammar.OPEN ->
                    new OpenVerb(voice, around, options, interrupt, e -> fault(e, args)).run();
            default -> throw new UsageException("a verb is missing. See: liftwright --help");
        };
    }

    private void say(String sentence) {
        voice.aside(PlainText.of("liftwright: " + sentence, !around.utf8()));
    }

    /** A fault of ours: a kind sentence for the user, the trace in a file for whoever mends it. */
    private void fault(Throwable cause, String... args) {
        var trace = new StringWriter();
        trace.write("liftwright " + VERSION + " " + List.of(args) + "\n");
        cause.printStackTrace(new PrintWriter(trace, true));
        String where;
        try {
            Path file = Files.createTempFile(around.faultFolder(), "liftwright-fault-", ".txt");
            Files.write(file, trace.toString().getBytes(StandardCharsets.UTF_8));
            where = "What happened is in " + file + ": please send it with your rig file.";
        } catch (IOException e) {
            where = "It was " + cause.getClass().getSimpleName() + ".";
        }
        say(
                "a fault of the program, not of your rig. No answer was given and no file was"
                        + " changed by it. "
                        + where);
    }
}

package liftwright.app;

import java.util.stream.Collectors;
import liftwright.answer.ProblemsJson;
import liftwright.report.ProblemReport;
import liftwright.review.Lots;
import liftwright.rig.Rig;

/** {@code check}: what is wrong with a rig file, and where. */
final class CheckVerb {

    private final Voice voice;
    private final Surroundings around;
    private final Options options;

    CheckVerb(Voice voice, Surroundings around, Options options) {
        this.voice = voice;
        this.around = around;
        this.options = options;
    }

    Exit run() {
        if (options.has(Grammar.FAN) && options.has(Grammar.STAND)) {
            throw new UsageException(
                    Grammar.FAN + " and " + Grammar.STAND + " read different files; name one");
        }
        if (options.has(Grammar.FAN)) {
            return new FanCheck(voice, around, options).run();
        }
        for (String one : Grammar.OF_A_FAN) {
            if (options.has(one)) {
                throw new UsageException(one + " belongs to " + Grammar.FAN);
            }
        }
        if (options.has(Grammar.STAND)) {
            return new StandCheck(voice, around, options).run();
        }
        var exit = Exit.CLEAR;
        for (String name : options.names()) {
            exit = exit.worse(EachRig.run(voice, around, options, name, this::check));
        }
        return exit;
    }

    private Exit check(RigSource source) {
        voice.answer(text(source, options));
        return source.read().rig().isPresent() ? Exit.CLEAR : Exit.BAD_INPUT;
    }

    /** What {@code check} says of a file. */
    static String text(RigSource source, Options options) {
        var read = source.read();
        return options.json()
                ? ProblemsJson.write(
                                source.file().named(),
                                source.digest(),
                                read.rig().isPresent(),
                                read.problems(),
                                Program.VERSION)
                        + "\n"
                : ProblemReport.write(
                        source.file().named(),
                        read.rig().map(CheckVerb::summary).orElse(""),
                        read.problems(),
                        options.look());
    }

    private static String summary(Rig rig) {
        return (rig.name().isBlank() ? "" : rig.name() + ", ")
                + counted(rig.fans().size(), "fan")
                + ", "
                + counted(rig.packs().size(), "pack")
                + (rig.wearer().isPresent() ? ", worn" : "")
                + Lots.of(rig).stream().map(words -> "; " + words).collect(Collectors.joining());
    }

    private static String counted(int count, String word) {
        return count + " " + word + (count == 1 ? "" : "s");
    }
}

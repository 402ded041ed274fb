package liftwright.app;

import java.util.function.Function;
import liftwright.report.PlainText;

/** One rig after the other: what is wrong with one file is no reason to leave out the next. */
final class EachRig {

    private EachRig() {}

    static Exit run(
            Voice voice,
            Surroundings around,
            Options options,
            String name,
            Function<RigSource, Exit> each) {
        RigSource source;
        try {
            source =
                    RigSource.of(UserFile.of(name, around.folder()))
                            .asDeclared(options.has(Grammar.AS_DECLARED));
        } catch (UsageException e) {
            voice.aside(PlainText.of("liftwright: " + e.words(), !around.utf8()));
            return Exit.BAD_INPUT;
        }
        return each.apply(source);
    }
}

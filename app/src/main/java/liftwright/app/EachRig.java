package liftwright.app;

import java.util.function.Function;
import liftwright.report.PlainText;

/** One rig after the other: what is wrong with one file is no reason to leave out the next. */
final class EachRig {

    private EachRig() {}

    static Exit run(Voice voice, Surroundings around, String name, Function<RigSource, Exit> each) {
        RigSource source;
        try {
            source = RigSource.of(UserFile.of(name, around.folder()));
        } catch (UsageException e) {
            voice.aside(PlainText.of("liftwright: " + e.words(), !around.utf8()));
            return Exit.BAD_INPUT;
        }
        return each.apply(source);
    }
}

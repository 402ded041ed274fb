package liftwright.bench;

import java.util.List;
import java.util.concurrent.TimeUnit;
import liftwright.answer.Answer;
import liftwright.answer.AnswerJson;
import liftwright.answer.Texts;
import liftwright.numerics.Work;
import liftwright.quantity.UnitSystem;
import liftwright.report.ReaderTexts;
import liftwright.review.BalanceQuestion;
import liftwright.review.EnduranceQuestion;
import liftwright.review.LiftQuestion;
import liftwright.review.Settings;
import liftwright.review.Stage;
import liftwright.review.Staged;
import liftwright.review.Task;
import liftwright.rig.Change;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;
import liftwright.rig.file.RigReading;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/** What the page waits for: answers at the declared values, written with their texts. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class PageOfMudlark {

    private static final Settings SETTINGS = Settings.standard();
    private static final List<Change> DRAGGED =
            List.of(new Change.Set(RigPath.parse("mounts/left pod/at/along"), "55 %"));

    private final RigReading reading = RigReading.read("rig.yaml", Examples.bytes("mudlark"));
    private final Texts texts = new ReaderTexts(UnitSystem.SI);

    private int written(Staged staged) {
        Answer answer = staged.answer(Stage.NOMINAL, Work.quiet()).orElseThrow();
        return AnswerJson.write(answer, "Mudlark", "0", texts).length();
    }

    private int balance(Rig rig) {
        return written(BalanceQuestion.staged(rig, "none", SETTINGS));
    }

    private int lift(Rig rig) {
        return written(LiftQuestion.staged(rig, "none", SETTINGS));
    }

    /** Lift, endurance and balance without any draw. */
    @Benchmark
    public int nominal() {
        Rig rig = reading.rig().orElseThrow();
        return lift(rig)
                + written(EnduranceQuestion.staged(rig, "none", new Task.Hover(), SETTINGS))
                + balance(rig);
    }

    /** One step of a drag: the text changed and read, lift and balance of what it declares. */
    @Benchmark
    public int tried() {
        if (reading.with(DRAGGED) instanceof RigReading.Edit.Changed(var changed, var _)) {
            Rig rig = changed.rig().orElseThrow();
            return lift(rig) + balance(rig);
        }
        throw new IllegalStateException("the drag was refused: nothing to measure");
    }
}

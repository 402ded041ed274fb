package liftwright.review;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import liftwright.rig.Change;
import liftwright.rig.FanType;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;
import liftwright.rig.csv.Beside;
import liftwright.rig.file.RigReading;
import org.junit.jupiter.api.Test;

/** A rig with a remedy in it is made in memory, without the folder it came from. */
class RevisedTest {

    private static final String TABLE =
            """
            voltage [V],bus current [A],thrust [N]
            48.9,55.2,57.2
            48.1,98.0,85.5
            """;

    @Test
    void aChangedRigKeepsTheTablesItWasReadWith() throws IOException {
        String rig = Files.readString(Path.of("..", "examples", "mudlark", "rig.yaml"));
        String named = rig.replaceFirst("\n    at speed:", "\n    bench: fan.csv\n    at speed:");
        assertThat(named).isNotEqualTo(rig);
        Beside beside =
                path ->
                        path.equals("fan.csv")
                                ? new Beside.Fetched.Bytes(TABLE.getBytes(UTF_8))
                                : Beside.NOTHING.fetch(path);
        Rig read = RigReading.read("rig.yaml", named.getBytes(UTF_8), beside).rig().orElseThrow();
        FanType type = measured(read);
        var change = new Change.Set(RigPath.of("fan types", type.name(), "mass"), "0.9 kg");
        Rig revised = Revised.with(read, List.of(change)).orElseThrow();
        assertThat(measured(revised).mass().si()).isEqualTo(0.9);
        assertThat(measured(revised).performance()).isEqualTo(type.performance());
    }

    private static FanType measured(Rig rig) {
        return rig.fanTypes().stream()
                .filter(type -> type.performance() instanceof FanType.Performance.Measured)
                .findFirst()
                .orElseThrow();
    }
}

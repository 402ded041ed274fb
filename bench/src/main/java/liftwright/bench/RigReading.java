package liftwright.bench;

import java.nio.charset.StandardCharsets;
import java.util.concurrent.TimeUnit;
import liftwright.rig.Rig;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Compose;

/**
 * Bytes of a 300-line rig file to a rig with its problems, and what the YAML library alone takes.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class RigReading {

    private byte[] bytes = {};
    private String text = "";

    @Setup
    public void load() {
        bytes = Examples.threeHundredLines();
        text = new String(bytes, StandardCharsets.UTF_8);
        Examples.rig(bytes);
    }

    @Benchmark
    public Rig read() {
        return Examples.rig(bytes);
    }

    @Benchmark
    public Object yamlTreeAlone() {
        return new Compose(LoadSettings.builder().setUseMarks(true).build())
                .composeString(text)
                .orElseThrow();
    }
}

package liftwright.rig.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class YamlTextTest {

    private static Reading read(String text) {
        return YamlText.read("rig.yaml", text.getBytes(StandardCharsets.UTF_8));
    }

    @ParameterizedTest
    @ValueSource(strings = {"mudlark", "curlew", "sandpiper"})
    void readsTheExamples(String name) throws Exception {
        byte[] bytes = Files.readAllBytes(Path.of("../examples", name, "rig.yaml"));
        var reading = YamlText.read("rig.yaml", bytes);
        assertThat(reading.problems()).isEmpty();
        assertThat(reading.text().getBytes(StandardCharsets.UTF_8)).isEqualTo(bytes);
    }

    @Test
    void aBlockEndsAtItsLastScalar() {
        var reading = read("\uFEFFa:\r\n  😀 b: c d   # trailing\r\n\r\n# of e\r\ne: {x: 1}\r\n");
        var root = (Node.Entries) reading.root().orElseThrow();
        assertThat(reading.problems()).isEmpty();
        assertThat(root.value("a").orElseThrow().span().of(reading.text())).isEqualTo("😀 b: c d");
        assertThat(root.value("a").orElseThrow().span().line()).isEqualTo(2);
        assertThat(root.value("e").orElseThrow().span().of(reading.text())).isEqualTo("{x: 1}");
        assertThat(root.span().column()).isEqualTo(1);
    }
}

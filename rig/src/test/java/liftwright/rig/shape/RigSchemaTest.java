package liftwright.rig.shape;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import liftwright.rig.text.Node;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The published schema, asked by somebody else's validator as an editor would. */
class RigSchemaTest {

    private static final Schema SCHEMA =
            SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                    .getSchema(RigSchema.text());

    @ParameterizedTest
    @ValueSource(strings = {"mudlark", "curlew", "sandpiper"})
    void everyExamplePasses(String name) throws IOException {
        Path file = Path.of("..", "examples", name, "rig.yaml");
        assertThat(errors(Files.readString(file))).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "v1-every-key",
                "v1-wearable",
                "v1-module",
                "v1-carrier",
                "v1-failures",
                "v1-flight"
            })
    void everySavedFilePasses(String name) {
        assertThat(errors(Good.resource("/format/" + name + ".yaml"))).isEmpty();
    }

    @Test
    void theStarterPasses() {
        assertThat(errors(Starter.text())).isEmpty();
    }

    @Test
    void theGoodFilePasses() {
        assertThat(errors(Good.text())).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    revision: 2            | revison: 2             | additionalProperties
                    revision: 2            | revision: two          | type
                    body: female           | body: woman            | enum
                    series: 14             | series: 0              | minimum
                    hover: 60 s            | hover: soon            | pattern
                    tip: 140 mm            | tip: 140               | type
                    scatter: ± 2 % each    | scatter: 2 % each      | pattern
                    {run: 12 AWG, length   | {run: 4 mm², length    | pattern
                    id: shell              | id: she.ll             | pattern
                    [420 mm, 90 mm, 520 mm]| [420 mm, 90 mm]        | minItems
                    {fuse: 250 A}          | {rating: 250 A}        | required
                    spacing: 150 mm        | ring: 4                | not
                    """)
    void brokenFilesFail(String right, String wrong, String keyword) {
        assertThat(Good.text()).contains(right);
        assertThat(errors(Good.text().replace(right, wrong)))
                .extracting(Error::getKeyword)
                .contains(keyword);
    }

    @Test
    void aMissingKeyFails() {
        assertThat(errors(Good.text().replace("  stature: 1.68 m\n", "")))
                .extracting(Error::getKeyword)
                .containsExactly("required");
    }

    private static List<Error> errors(String yaml) {
        return SCHEMA.validate(json(Texts.node(yaml)), InputFormat.JSON);
    }

    /** As editors read YAML: plain scalars that look like numbers are numbers (core schema). */
    private static String json(Node node) {
        return switch (node) {
            case Node.Entries(var entries, var _) ->
                    entries.stream()
                            .map(e -> JsonText.quoted(e.key()) + ":" + json(e.value()))
                            .collect(Collectors.joining(",", "{", "}"));
            case Node.Items(var items, var _) ->
                    items.stream()
                            .map(RigSchemaTest::json)
                            .collect(Collectors.joining(",", "[", "]"));
            case Node.Scalar(var value, var quoted, var _) ->
                    !quoted && value.matches("-?(0|[1-9][0-9]*)(\\.[0-9]+)?")
                            ? value
                            : JsonText.quoted(value);
        };
    }
}

package liftwright.answer;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/**
 * Pages of docs/reference that are made from the program. {@code -Dliftwright.write} writes them.
 */
class ReferencePagesTest {

    private static final Path REFERENCE = Path.of("..", "docs", "reference");

    @Test
    void thePageOfFieldsIsTheTable() throws IOException {
        upToDate("fields.md", fieldsPage());
    }

    @Test
    void thePublishedSchemasAreTheProgramsOwn() throws IOException {
        for (String question : AnswerSchema.QUESTIONS) {
            upToDate("answer-" + question + ".schema.json", AnswerSchema.text(question));
        }
        upToDate("check.schema.json", ProblemsJson.schema());
    }

    @Test
    void everyFieldExplainsItself() {
        assertThat(Fields.all()).isNotEmpty();
        for (Field field : Fields.all()) {
            assertThat(field.id()).matches("[a-z0-9]+(-[a-z0-9]+)*");
            assertThat(field.test()).matches("[A-Z]\\w+\\.\\w+");
            assertThat(
                            new String[] {
                                field.label(), field.meaning(), field.formula(), field.source()
                            })
                    .as(field.id())
                    .doesNotContain("", " ");
        }
    }

    private static void upToDate(String name, String text) throws IOException {
        Path page = REFERENCE.resolve(name);
        if (System.getProperty("liftwright.write") != null) {
            Files.writeString(page, text);
        }
        assertThat(Files.readString(page))
                .as("docs/reference/%s; write it anew with -Dliftwright.write", name)
                .isEqualTo(text);
    }

    private static String fieldsPage() {
        var page =
                new StringBuilder(
                        """
                        # Fields: what every shown number means

                        Made from the table of fields; a number without a row here cannot be shown. The id is what
                        `--json` calls it, the unit is that of JSON. The named test checks the number or the law behind it.

                        | Field | Id | Unit | Means | Formula | Source | Test |
                        |---|---|---|---|---|---|---|
                        """);
        for (Field field : Fields.all()) {
            page.append("| ")
                    .append(
                            String.join(
                                    " | ",
                                    field.label(),
                                    "`" + field.id() + "`",
                                    SiUnit.of(field.measure()),
                                    field.meaning(),
                                    field.formula(),
                                    field.source(),
                                    "`" + field.test() + "`"))
                    .append(" |\n");
        }
        return page.toString();
    }
}

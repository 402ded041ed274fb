package liftwright.logbook.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import liftwright.logbook.engine.EngineException.Kind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a user's statement must not do, each way in which it could be tried. */
class HostileStatementsTest {

    private static final String SECRET = "the-secret-of-another-folder";

    @TempDir private Path around = Path.of("");

    /** {@code OUT}, {@code IN}: a file outside and one inside; {@code FOLDER}: the logbook. */
    private static final List<String> STATEMENTS =
            List.of(
                    // other files
                    "SELECT * FROM 'OUT'",
                    "SELECT * FROM read_csv('OUT')",
                    "SELECT * FROM read_csv_auto('OUT')",
                    "SELECT * FROM read_text('OUT')",
                    "select content from READ_TEXT('OUT')",
                    "SELECT * FROM read_blob('OUT')",
                    "SELECT * FROM read_json('OUT')",
                    "SELECT * FROM read_json_objects('OUT')",
                    "SELECT * FROM read_parquet('OUT')",
                    "SELECT * FROM parquet_scan('OUT')",
                    "SELECT * FROM parquet_metadata('OUT')",
                    "SELECT * FROM sniff_csv('OUT')",
                    "SELECT * FROM glob('/etc/*')",
                    "SELECT * FROM glob('FOLDER/*')",
                    "SELECT * FROM read_text('FOLDER/../other/secret.csv')",
                    "SELECT * FROM 'FOLDER/../other/secret.csv'",
                    "SELECT * FROM read_text('FOLDER/link.csv')",
                    "SELECT * FROM 'FOLDER/link.csv'",
                    "SELECT * FROM 'IN'",
                    "SELECT * FROM \"IN\"",
                    "SELECT * FROM read_csv('IN')",
                    "SELECT * FROM read_text('file://OUT')",
                    "SELECT * FROM read_text('/dev/stdin')",
                    "SELECT * FROM read_text('/proc/self/environ')",
                    "SELECT * FROM 'https://example.org/a.parquet'",
                    "SELECT * FROM read_csv('http://127.0.0.1:1/a.csv')",
                    "SELECT * FROM read_parquet('s3://bucket/a.parquet')",
                    "SELECT * FROM query('SELECT * FROM read_text(''OUT'')')",
                    "SELECT * FROM query_table('OUT')",
                    "SELECT (SELECT content FROM read_text('OUT'))",
                    "SELECT * FROM tests WHERE id IN (SELECT content FROM read_text('OUT'))",
                    "SELECT * FROM tests, LATERAL (SELECT * FROM read_text('OUT'))",
                    "WITH a AS (SELECT * FROM read_text('OUT')) SELECT * FROM a",
                    "WITH \"OUT\" AS (SELECT 1) SELECT * FROM \"OUT\"",
                    "WITH RECURSIVE a AS (SELECT 1 UNION ALL SELECT size FROM read_blob('OUT'))"
                            + " SELECT * FROM a",
                    "SELECT /* harmless */ * FROM -- really\n read_text /**/ ('OUT')",
                    "SELECT * FROM tests UNION ALL SELECT content FROM read_text('OUT')",
                    "SUMMARIZE 'OUT'",
                    "DESCRIBE 'OUT'",
                    "DESCRIBE SELECT * FROM read_csv('OUT')",
                    "FROM 'OUT'",
                    "TABLE \"OUT\"",
                    "PIVOT 'OUT' ON a",
                    // writing
                    "COPY tests TO 'FOLDER/new.csv'",
                    "COPY tests TO 'OUT'",
                    "COPY (SELECT 1) TO 'FOLDER/new.parquet'",
                    "copy tests from 'IN'",
                    "EXPORT DATABASE 'FOLDER/new'",
                    "IMPORT DATABASE 'FOLDER'",
                    "CREATE TABLE t(a INT)",
                    "CREATE TEMP TABLE t AS SELECT 1",
                    "CREATE OR REPLACE VIEW tests AS SELECT 1",
                    "CREATE MACRO m(a) AS a",
                    "CREATE MACRO m() AS TABLE SELECT * FROM read_text('OUT')",
                    "CREATE SECRET s (TYPE s3)",
                    "CREATE SEQUENCE s",
                    "INSERT INTO tests VALUES ('x')",
                    "UPDATE tests SET id = 'x'",
                    "DELETE FROM tests",
                    "DROP VIEW tests",
                    "ALTER VIEW tests RENAME TO t",
                    "TRUNCATE tests",
                    "WITH a AS (INSERT INTO tests VALUES ('x') RETURNING 1) SELECT * FROM a",
                    "WITH a AS (DELETE FROM tests RETURNING 1) SELECT * FROM a",
                    "MERGE INTO tests USING tests AS b ON true WHEN MATCHED THEN DELETE",
                    // attach, install, load
                    "ATTACH 'FOLDER/new.db'",
                    "ATTACH ':memory:' AS other",
                    "DETACH memory",
                    "USE memory",
                    "INSTALL httpfs",
                    "FORCE INSTALL httpfs FROM community",
                    "LOAD httpfs",
                    "LOAD 'OUT'",
                    "UPDATE EXTENSIONS",
                    // settings
                    "SET enable_external_access = true",
                    "SET lock_configuration = false",
                    "RESET lock_configuration",
                    "SET GLOBAL memory_limit = '8GB'",
                    "SET allowed_directories = ['/']",
                    "SET allowed_configs = ['threads']",
                    "SET VARIABLE a = 1",
                    "SET schema = 'main'",
                    "PRAGMA threads = 8",
                    "PRAGMA enable_profiling",
                    "pragma database_list",
                    "CALL enable_logging()",
                    "CALL pragma_version()",
                    "SELECT current_setting('allowed_directories')",
                    "SELECT * FROM duckdb_settings()",
                    "SELECT * FROM duckdb_secrets()",
                    "SELECT * FROM duckdb_views()",
                    "SELECT * FROM information_schema.tables",
                    "SELECT * FROM pg_catalog.pg_class",
                    "SELECT * FROM sqlite_master",
                    "SHOW TABLES",
                    "SHOW ALL TABLES",
                    "SELECT getenv('HOME')",
                    "SELECT getvariable('a')",
                    "SELECT nextval('s')",
                    "SELECT json_execute_serialized_sql(json_serialize_sql('SELECT 1'))",
                    "SELECT * FROM json_execute_serialized_sql('{}')",
                    // more than one, and what is none
                    "SELECT 1; SELECT 2",
                    "SELECT 1; COPY tests TO 'FOLDER/new.csv'",
                    "SELECT 1;\n--\nDROP VIEW tests",
                    "BEGIN TRANSACTION",
                    "COMMIT",
                    "CHECKPOINT",
                    "VACUUM",
                    "ANALYZE",
                    "PREPARE p AS SELECT 1",
                    "EXECUTE p",
                    "EXPLAIN ANALYZE SELECT * FROM read_text('OUT')",
                    "EXPLAIN COPY tests TO 'FOLDER/new.csv'",
                    "COMMENT ON VIEW tests IS 'x'");

    @Test
    void everyOneIsRefusedAndNothingChanges() throws IOException {
        Path other = Files.createDirectories(around.resolve("other"));
        Path secret = Files.writeString(other.resolve("secret.csv"), SECRET + "\n1\n");
        Path folder = Files.createDirectories(around.resolve("logbook"));
        Path inside = Files.writeString(folder.resolve("inside.csv"), "a\n1\n");
        Files.createSymbolicLink(folder.resolve("link.csv"), secret);
        try (var engine = Engine.start(folder)) {
            engine.define("tests", "SELECT 'one' AS id");
            var before = contents(around);

            assertThat(STATEMENTS).hasSizeGreaterThan(100);
            var let = new ArrayList<String>();
            for (String statement : STATEMENTS) {
                String sql =
                        statement
                                .replace("OUT", secret.toString())
                                .replace("IN'", inside + "'")
                                .replace("\"IN\"", "\"" + inside + "\"")
                                .replace("FOLDER", folder.toString());
                EngineException refusal =
                        catchThrowableOfType(
                                EngineException.class, () -> engine.ask(sql, Limits.OF_A_QUESTION));
                if (refusal == null) {
                    let.add(statement);
                    continue;
                }
                assertThat(refusal.kind())
                        .as(sql + ": " + refusal.sentence())
                        .isIn(Kind.NOT_ALLOWED, Kind.STATEMENT);
                assertThat(refusal.sentence())
                        .doesNotContain(SECRET, "\n", "Exception")
                        .endsWith(".");
            }
            assertThat(let).as("statements that were let through").isEmpty();
            assertThat(contents(around)).isEqualTo(before);
            assertThat(engine.ask("SELECT id FROM tests", Limits.OF_A_QUESTION).rows())
                    .containsExactly(List.of(new Value.Text("one")));
        }
    }

    /** The lock holds by itself: statements of the program cannot get out either. */
    @Test
    void theLockHoldsWithoutTheGate() throws IOException {
        Path other = Files.createDirectories(around.resolve("logbook-of-another"));
        Path secret = Files.writeString(other.resolve("secret.csv"), SECRET + "\n1\n");
        Path folder = Files.createDirectories(around.resolve("logbook"));
        Files.createSymbolicLink(folder.resolve("link.csv"), secret);
        Files.createSymbolicLink(folder.resolve("way"), other);
        try (var engine = Engine.start(folder)) {
            var tried =
                    List.of(
                            "SELECT * FROM read_text('" + secret + "')",
                            "SELECT * FROM read_text('" + folder + "/link.csv')",
                            "SELECT * FROM read_text('" + folder + "/way/secret.csv')",
                            "SELECT * FROM read_text('"
                                    + folder
                                    + "/../logbook-of-another/secret.csv')",
                            "SELECT * FROM glob('" + around + "/*')",
                            "COPY (SELECT 1) TO '" + other + "/new.csv'",
                            "COPY (SELECT 1) TO '" + folder + "/way/new.csv'",
                            "ATTACH '" + other + "/new.db'",
                            "INSTALL httpfs",
                            "LOAD httpfs",
                            "SET lock_configuration = false",
                            "SET enable_external_access = true",
                            "SET allowed_directories = ['/']",
                            "SET memory_limit = '8GB'",
                            "RESET memory_limit",
                            "PRAGMA threads = 8",
                            "SELECT * FROM read_text('http://127.0.0.1:1/a')");
            var let = new ArrayList<String>();
            for (String sql : tried) {
                if (catchThrowableOfType(EngineException.class, () -> engine.run(sql)) == null) {
                    let.add(sql);
                }
            }
            assertThat(let).isEmpty();
            try (var files = Files.list(other)) {
                assertThat(files).containsExactly(secret);
            }
        }
    }

    @Test
    void aHugeValueDoesNotEndTheProgram() throws IOException {
        try (var engine = Engine.start(around)) {
            for (String sql :
                    List.of(
                            "SELECT repeat('x', 2000000000)",
                            "SELECT list(range) FROM range(1000000000)",
                            "SELECT string_agg(repeat('x', 100000), '') FROM range(100000)")) {
                EngineException refusal =
                        catchThrowableOfType(
                                EngineException.class,
                                () ->
                                        engine.ask(
                                                sql,
                                                Limits.OF_A_QUESTION.within(
                                                        Duration.ofSeconds(4))));
                if (refusal != null && refusal.kind() == Kind.DIED) {
                    return; // the process may go; the program stays and says so
                }
            }
            assertThat(engine.ask("SELECT 1", Limits.OF_A_QUESTION).rows()).hasSize(1);
        }
    }

    private static Map<String, String> contents(Path folder) throws IOException {
        var all = new TreeMap<String, String>();
        try (var files = Files.walk(folder)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                all.put(
                        file.toString(),
                        new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1));
            }
        }
        return all;
    }
}

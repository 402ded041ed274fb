package liftwright.logbook.engine;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import liftwright.logbook.engine.EngineException.Kind;

/**
 * What a statement of the user may be: one question to the views of the logbook. The engine's own
 * parser takes it apart; what is not on these lists is refused. The lock of the engine ({@link
 * Confines}) holds without this gate; the gate also keeps what lies in the folder as it is.
 */
final class Gate {

    /** Longest statement, characters. */
    private static final int LONGEST = 20_000;

    private static final Set<String> VIEWS = Set.of("tests", "tracks", "samples");
    private static final Set<String> TABLE_FUNCTIONS = Set.of("range", "generate_series", "unnest");

    /** They tell of the machine or the engine, run text as a statement, or leave traces. */
    private static final Pattern REFUSED =
            Pattern.compile(
                    "(?:get|set)?_?(?:env|variable|seed)|getenv|setseed|current_setting|set_config"
                            + "|query|query_table|json_(?:de)?serialize_.*|json_execute_.*"
                            + "|read_.*|parquet_.*|sniff_.*|glob|write_log|.*_?log_message"
                            + "|pragma_.*|duckdb_.*|pg_.*|has_.*_privilege|which_secret|nextval"
                            + "|currval|txid_current|current_(?:database|schema|schemas|user|role"
                            + "|query|connection_id|transaction_id)|session_user|user|version"
                            + "|in_search_path|sleep.*|.*external_resource.*|import_database"
                            + "|checkpoint|add_parquet_key|getvariable|create_sort_key|make_type"
                            + "|get_type|encrypt|decrypt|http.*|load_.*|install_.*|from_substrait.*");

    private static final Pattern PLAIN = Pattern.compile("[A-Za-z_][A-Za-z0-9_ ]{0,60}");

    /** Ways to ask that contain others; whatever else the parser calls a node is refused. */
    private static final Set<String> NODES =
            Set.of("SELECT_NODE", "SET_OPERATION_NODE", "CTE_NODE", "RECURSIVE_CTE_NODE");

    private final Connection connection;

    Gate(Connection connection) {
        this.connection = connection;
    }

    /** Throws what is not a single question, with the reason. */
    void check(String sql) throws SQLException, EngineException {
        if (sql.length() > LONGEST) {
            throw no("A statement may have " + LONGEST + " characters.");
        }
        if (sql.isBlank()) {
            throw new EngineException(Kind.STATEMENT, "There is no statement.");
        }
        new Walk(leaves(sql)).check();
    }

    private static EngineException no(String sentence) {
        return new EngineException(Kind.NOT_ALLOWED, sentence);
    }

    /**
     * A value in the tree of a statement.
     *
     * @param path where, without numbers of list entries
     * @param object where the object is that holds it
     * @param key its name in there
     * @param value as a text
     */
    private record Leaf(String path, String object, String key, String value) {}

    private List<Leaf> leaves(String sql) throws SQLException, EngineException {
        var leaves = new ArrayList<Leaf>();
        try (PreparedStatement tree =
                connection.prepareStatement(
                        "SELECT path, key, atom ->> '$', type FROM json_tree(json_serialize_sql(?))"
                                + " WHERE type NOT IN ('OBJECT', 'ARRAY')")) {
            tree.setString(1, sql);
            try (ResultSet rows = tree.executeQuery()) {
                while (rows.next()) {
                    String path = String.valueOf(rows.getString(1));
                    String value = rows.getString(3);
                    leaves.add(
                            new Leaf(
                                    path.replaceAll("\\[\\d+]", ""),
                                    path,
                                    String.valueOf(rows.getString(2)),
                                    value == null ? "" : value));
                }
            }
        }
        for (Leaf leaf : leaves) {
            if (leaf.path.equals("$") && leaf.key.equals("error") && leaf.value.equals("true")) {
                throw unread(leaves);
            }
        }
        return leaves;
    }

    private static EngineException unread(List<Leaf> leaves) {
        String kind = top(leaves, "error_type");
        String said = top(leaves, "error_message");
        return kind.equals("parser")
                ? new EngineException(Kind.STATEMENT, "This cannot be understood: " + said + ".")
                : no(
                        "Only a question (SELECT … FROM tests, tracks or samples) may be asked:"
                                + " nothing is written, set, attached or installed.");
    }

    private static String top(List<Leaf> leaves, String key) {
        return leaves.stream()
                .filter(leaf -> leaf.path.equals("$") && leaf.key.equals(key))
                .map(Leaf::value)
                .findFirst()
                .orElse("");
    }

    /** Looks at every table, function and node of one statement. */
    private static final class Walk {

        private final Map<String, Map<String, String>> objects = new HashMap<>();
        private final Set<String> named = new HashSet<>();

        Walk(List<Leaf> leaves) {
            for (Leaf leaf : leaves) {
                objects.computeIfAbsent(leaf.object, _ -> new HashMap<>())
                        .put(leaf.key, leaf.value);
                if ((leaf.path.endsWith(".cte_map.map") && leaf.key.equals("key"))
                        || leaf.key.equals("cte_name")
                        || leaf.key.equals("ctename")) {
                    named.add(leaf.value.toLowerCase(Locale.ROOT));
                }
            }
        }

        void check() throws EngineException {
            long statements =
                    objects.keySet().stream()
                            .filter(o -> o.startsWith("$.statements["))
                            .map(o -> o.substring(0, o.indexOf(']') + 1))
                            .distinct()
                            .count();
            if (statements != 1) {
                throw no("One statement at a time, please.");
            }
            for (String name : named) {
                if (!PLAIN.matcher(name).matches()) {
                    throw no("A WITH may name its parts by letters, digits and _.");
                }
            }
            for (var entry : objects.entrySet()) {
                Map<String, String> object = entry.getValue();
                node(object);
                table(object);
                function(object);
                if (object.getOrDefault("type", "").equals("TABLE_FUNCTION")) {
                    tableFunction(entry.getKey());
                }
            }
        }

        /** Functions that stand for a table: they are how files are read. */
        private void tableFunction(String object) throws EngineException {
            String name =
                    objects.getOrDefault(object + ".function", Map.of())
                            .getOrDefault("function_name", "")
                            .toLowerCase(Locale.ROOT);
            if (!TABLE_FUNCTIONS.contains(name)) {
                throw no(
                        "Only tests, tracks and samples can be asked; “"
                                + name
                                + "” reads something else.");
            }
        }

        private static void node(Map<String, String> object) throws EngineException {
            String type = object.getOrDefault("type", "");
            if (type.endsWith("_NODE") && !NODES.contains(type)) {
                throw no("Only questions may be asked: nothing is written.");
            }
            if (type.equals("SHOW_REF") && !object.getOrDefault("table_name", "").isEmpty()) {
                throw no(
                        "The tables are tests, tracks and samples; DESCRIBE tests tells of their"
                                + " columns.");
            }
        }

        private void table(Map<String, String> object) throws EngineException {
            if (!object.getOrDefault("type", "").equals("BASE_TABLE")) {
                return;
            }
            String name = object.getOrDefault("table_name", "").toLowerCase(Locale.ROOT);
            boolean elsewhere =
                    !object.getOrDefault("schema_name", "").isEmpty()
                            || !object.getOrDefault("catalog_name", "").isEmpty();
            if (elsewhere || !(VIEWS.contains(name) || named.contains(name))) {
                throw no("Only tests, tracks and samples can be asked; no other table or file.");
            }
        }

        private static void function(Map<String, String> object) throws EngineException {
            String name = object.getOrDefault("function_name", "").toLowerCase(Locale.ROOT);
            if (name.isEmpty()) {
                return;
            }
            if (REFUSED.matcher(name).matches()) {
                throw no("The function “" + name + "” is not for questions to a logbook.");
            }
        }
    }
}

package liftwright.logbook.engine;

import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;

/**
 * What the engine may touch. Once {@link #close closed} nothing opens it again: not a statement of
 * ours, nor of the user.
 *
 * @param scratch a folder for what does not fit into memory
 * @param folders all in them may be read, and written by statements of ours
 * @param files single files besides
 */
record Confines(String scratch, List<String> folders, List<String> files) {

    /** Memory of the library, beside which Java takes its own: together below 512 MB. */
    private static final String MEMORY = "256MB";

    /** Most it may lay down in its scratch folder. */
    private static final String SPILL = "4GB";

    static Confines of(String[] args) {
        int folders = Integer.parseInt(args[2]);
        var rest = List.of(args).subList(3, args.length);
        return new Confines(
                args[1],
                List.copyOf(rest.subList(0, folders)),
                List.copyOf(rest.subList(folders, rest.size())));
    }

    /** As arguments of the process. */
    List<String> arguments() {
        var all = new ArrayList<String>();
        all.add(scratch);
        all.add(Integer.toString(folders.size()));
        all.addAll(folders);
        all.addAll(files);
        return all;
    }

    void close(Connection connection) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            for (String setting : settings()) {
                statement.execute(setting);
            }
        }
    }

    private List<String> settings() {
        int threads = Math.clamp(Runtime.getRuntime().availableProcessors(), 1, 4);
        return List.of(
                "SET threads = " + threads,
                "SET memory_limit = '" + MEMORY + "'",
                "SET temp_directory = " + Sql.text(scratch),
                "SET max_temp_directory_size = '" + SPILL + "'",
                "SET autoload_known_extensions = false",
                "SET autoinstall_known_extensions = false",
                "SET allow_community_extensions = false",
                "SET allow_extension_repositories = 'forbidden'",
                "SET allow_persistent_secrets = false",
                "SET enable_external_file_cache = false",
                "SET TimeZone = 'UTC'",
                "SET allowed_directories = " + Sql.list(folders.stream().map(Confines::inside)),
                "SET allowed_paths = " + Sql.list(files.stream()),
                "SET enable_external_access = false",
                "SET lock_configuration = true");
    }

    /** With its separator, so that {@code logbook} does not open {@code logbook-of-another}. */
    private static String inside(String folder) {
        return folder.endsWith("/") || folder.endsWith("\\") ? folder : folder + "/";
    }
}

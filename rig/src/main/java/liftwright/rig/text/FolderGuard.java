package liftwright.rig.text;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;

/**
 * Keeps what a rig file refers to inside the rig's folder: a file that a stranger sends must not
 * make the tool read another file of the builder's.
 */
public final class FolderGuard {

    private final Path folder;

    /**
     * @param folder the folder that holds the rig file
     */
    public FolderGuard(Path folder) {
        this.folder = folder.toAbsolutePath().normalize();
    }

    /** What a reference leads to. */
    public sealed interface Target {

        /** A place inside the folder, where a file may or may not be. */
        record Inside(Path path) implements Target {}

        /**
         * @param reason what is wrong, to follow "found"
         */
        record Outside(String reason) implements Target {}
    }

    /**
     * What is wrong with a reference by its letters alone; empty if it is a plain relative path,
     * parts joined by {@code /}, that leads nowhere but down.
     */
    public static Optional<String> objection(String reference) {
        if (reference.isBlank()) {
            return Optional.of("no file name");
        }
        if (FlowValue.barred(reference)) {
            return Optional.of("a file name with invisible characters");
        }
        if (reference.startsWith("/") || reference.matches("[A-Za-z]:.*")) {
            return Optional.of("an absolute path");
        }
        if (reference.indexOf('\\') >= 0) {
            return Optional.of("a path with backslashes");
        }
        var parts = Arrays.asList(reference.split("/", -1));
        if (parts.contains("..")) {
            return Optional.of("a path that leads upwards");
        }
        return parts.contains("") ? Optional.of("a path with an empty part") : Optional.empty();
    }

    /** Where {@code reference} leads, links followed. */
    public Target resolve(String reference) {
        var objection = objection(reference);
        if (objection.isPresent()) {
            return new Target.Outside(objection.get());
        }
        try {
            Path path = folder.resolve(reference).normalize();
            Path standing = folder;
            for (Path name : folder.relativize(path)) {
                if (!Files.exists(standing.resolve(name), LinkOption.NOFOLLOW_LINKS)) {
                    break;
                }
                standing = standing.resolve(name);
            }
            if (!standing.toRealPath().startsWith(folder.toRealPath())) {
                return new Target.Outside("a link that leads out of the rig's folder");
            }
            if (Files.exists(path) && !Files.isRegularFile(path)) {
                return new Target.Outside("something that is no file");
            }
            return new Target.Inside(path);
        } catch (InvalidPathException | IOException e) {
            return new Target.Outside("a path that cannot be followed");
        }
    }
}

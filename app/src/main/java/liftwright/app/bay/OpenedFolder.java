package liftwright.app.bay;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Locale;
import liftwright.app.bay.FaultException.Kind;
import liftwright.rig.text.FolderGuard;

/**
 * The folder that was opened. A name that the page sends leads to a rig file inside it or nowhere;
 * links are followed and judged anew at each call, since they may have changed.
 */
final class OpenedFolder {

    /** Where the server keeps its lock and journals: inside the folder, hidden. */
    static final String OWN = ".liftwright";

    private final Path real;
    private final FolderGuard guard;

    /**
     * @throws IOException when it is not there
     */
    OpenedFolder(Path folder) throws IOException {
        real = folder.toRealPath();
        guard = new FolderGuard(real);
    }

    /** Where it really is. */
    Path path() {
        return real;
    }

    /** A rig's path from a folder around this one, as the page of that one names it. */
    String from(Path above, String rig) {
        var parts = new ArrayList<String>();
        above.relativize(real).forEach(part -> parts.add(part.toString()));
        parts.add(rig);
        return String.join("/", parts);
    }

    /** Its own name, for the reader. */
    String name() {
        Path name = real.getFileName();
        return name == null ? real.toString() : name.toString();
    }

    /** Where the server's own files go. */
    Path own() {
        return real.resolve(OWN);
    }

    /**
     * The rig file of that name, where it really is.
     *
     * @param rig its path from the folder, parts joined by {@code /}
     * @throws FaultException when there is none, or the name leads elsewhere
     */
    Path rig(String rig) {
        Path path = place(rig);
        try {
            Path file = path.toRealPath();
            if (!file.startsWith(real) || !Files.isRegularFile(file)) {
                throw missing(rig);
            }
            return file;
        } catch (IOException e) {
            throw missing(rig);
        }
    }

    /**
     * Where a rig file of that name is or would be: inside the folder, links judged.
     *
     * @throws FaultException when the name leads elsewhere
     */
    Path place(String rig) {
        if (!isRigName(rig) || Arrays.stream(rig.split("/", -1)).anyMatch(p -> p.startsWith("."))) {
            throw new FaultException(
                    Kind.MISSING, "A rig file ends in .yaml and is in no hidden folder.");
        }
        return switch (guard.resolve(rig)) {
            case FolderGuard.Target.Inside(var path) -> path;
            case FolderGuard.Target.Outside(var reason) ->
                    throw new FaultException(
                            Kind.MISSING,
                            "Only what is inside the opened folder can be read; this is "
                                    + reason
                                    + ".");
        };
    }

    /** Whether a file of that name can be a rig file. */
    static boolean isRigName(String name) {
        String lower = name.toLowerCase(Locale.ROOT);
        return lower.endsWith(".yaml") || lower.endsWith(".yml");
    }

    private static FaultException missing(String rig) {
        return new FaultException(Kind.MISSING, "There is no rig file " + rig + " in the folder.");
    }
}

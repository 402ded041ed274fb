package liftwright.rig.file;

import java.io.IOException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import liftwright.rig.Problem.Code;
import liftwright.rig.csv.Beside;
import liftwright.rig.csv.TableReader;
import liftwright.rig.text.FolderGuard;

/** The folder that holds a rig file and its tables. Nothing outside it is read. */
public final class Folder implements Beside {

    /** What is found of a file that is there and cannot be read. */
    static final String UNREADABLE = "a file that cannot be read";

    private final FolderGuard guard;

    /**
     * @param folder that holds the rig file
     */
    public Folder(Path folder) {
        guard = new FolderGuard(folder);
    }

    @Override
    public Fetched fetch(String path) {
        return switch (guard.resolve(path)) {
            case FolderGuard.Target.Outside(var reason) ->
                    new Fetched.Not(
                            Code.OUTSIDE_FOLDER,
                            reason,
                            "Copy the file beside the rig file and write its name.");
            case FolderGuard.Target.Inside(var file) -> bytes(file);
        };
    }

    private static Fetched bytes(Path file) {
        try {
            return new Fetched.Bytes(RigFiles.read(file, TableReader.MOST_BYTES + 1));
        } catch (NoSuchFileException e) {
            return new Fetched.Not(
                    Code.NO_SUCH_PART,
                    "no such file",
                    "A path begins at the folder of the rig file; letters count as large or"
                            + " small.");
        } catch (IOException e) {
            return new Fetched.Not(Code.NO_SUCH_PART, UNREADABLE, "May you read it?");
        }
    }
}

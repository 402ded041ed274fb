package liftwright.logbook.store;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import liftwright.logbook.entry.TestEntry.Snapshot;
import liftwright.rig.csv.Beside;
import liftwright.rig.file.RigReading;

/** The rig file and its tables as files of a test. */
final class Snapshots {

    private Snapshots() {}

    static List<NewFile> of(Snapshot named, RigReading rig) throws IOException {
        if (!rig.digest().equals(named.digest())) {
            throw new IOException("the entry names another rig than " + rig.digest());
        }
        var files = new ArrayList<NewFile>();
        files.add(NewFile.Said.of(Logbook.RIG + "/" + named.file(), rig.text().bytes()));
        for (var table : rig.tables().entrySet()) {
            if (!(rig.beside().fetch(table.getKey()) instanceof Beside.Fetched.Bytes(var bytes))
                    || !RigReading.digest(bytes).equals("sha256:" + table.getValue())) {
                throw new IOException(
                        table.getKey() + " changed while the test was added; add it again");
            }
            files.add(NewFile.Said.of(Logbook.RIG + "/" + table.getKey(), bytes));
        }
        return files;
    }
}

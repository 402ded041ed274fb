package liftwright.app.bay;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.CopyOnWriteArraySet;
import liftwright.app.bay.FaultException.Kind;
import liftwright.rig.draft.Draft;
import liftwright.rig.draft.Draft.Standing;

/** The working copies of the folder's rig files: one for each file, whatever it is called by. */
final class Drafts {

    /** Nobody works on more at a time. */
    private static final int MOST = 64;

    private static final Duration LOOK_EVERY = Duration.ofSeconds(1);

    private final OpenedFolder folder;
    private final Hub hub;
    private final Map<Path, Opened> opened = new HashMap<>();

    /**
     * @param names that the page calls it by: a link and what it leads to are one file
     */
    private record Opened(Draft draft, Set<String> names) {}

    Drafts(OpenedFolder folder, Hub hub) {
        this.folder = folder;
        this.hub = hub;
    }

    /**
     * The working copy of a rig file; opened when it is first asked for.
     *
     * @throws FaultException when there is no such file, or it cannot be read
     */
    Draft of(String rig) {
        return opened(rig).draft();
    }

    private synchronized Opened opened(String rig) {
        Path place = real(rig);
        Opened there = opened.get(place);
        if (there == null) {
            if (opened.size() >= MOST) {
                throw new FaultException(
                        Kind.TOO_MANY, "Too many rig files are open: close the program once.");
            }
            there = open(place);
            opened.put(place, there);
        }
        there.names().add(rig);
        return there;
    }

    /** A file that was opened and taken away is still worked on. */
    private Path real(String rig) {
        try {
            return folder.rig(rig);
        } catch (FaultException e) {
            Path place = folder.place(rig);
            if (opened.containsKey(place)) {
                return place;
            }
            throw e;
        }
    }

    private Opened open(Path file) {
        var parts = new ArrayList<String>();
        folder.path().relativize(file).forEach(part -> parts.add(part.toString()));
        try {
            var draft = Draft.open(folder.path(), String.join("/", parts));
            var names = new CopyOnWriteArraySet<String>();
            draft.watch(() -> publish(names, draft.standing()));
            return new Opened(draft, names);
        } catch (IOException e) {
            throw new FaultException(
                    Kind.INTERNAL,
                    "The rig file cannot be opened, or what was not saved the last time cannot be"
                            + " read.");
        }
    }

    private void publish(Set<String> names, Standing now) {
        names.forEach(name -> hub.publish(new Hub.Changed(name, now.revision(), now.saved())));
    }

    /** Looks at the disk about once a second until the reader of {@code lines} leaves. */
    void lookWhileWatched(String rig, Lines lines) {
        Draft draft = of(rig);
        Thread looking =
                Thread.ofVirtual()
                        .start(
                                () -> {
                                    try {
                                        while (!lines.gone()) {
                                            Thread.sleep(LOOK_EVERY);
                                            look(draft);
                                        }
                                    } catch (InterruptedException e) {
                                        return; // the reader left
                                    }
                                });
        lines.onGone(looking::interrupt);
    }

    private static void look(Draft draft) {
        try {
            draft.look();
        } catch (IOException e) {
            return; // the journal cannot be written now: the next look tries again
        }
    }

    /** Lets go of all; what is unsaved stays in their journals. */
    synchronized void close() {
        List.copyOf(opened.values()).forEach(each -> each.draft().close());
        opened.clear();
    }
}

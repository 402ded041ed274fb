package liftwright.app.bay;

import java.util.List;
import liftwright.rig.Change;
import liftwright.rig.RigPath;

/** Changes as the page sends them. */
final class ChangesIn {

    private ChangesIn() {}

    /**
     * The changes that a body carries under {@code changes}.
     *
     * @throws FaultException when one of them is none
     */
    static List<Change> of(Json.Members body) {
        return body.items("changes").stream()
                .map(item -> change(item.asMembers("changes")))
                .toList();
    }

    private static Change change(Json.Members change) {
        var at = RigPath.parse(change.text("at"));
        String kind = change.text("kind");
        return switch (kind) {
            case "set" -> new Change.Set(at, change.text("value"));
            case "add" -> new Change.Add(at, change.text("key"), change.text("value"));
            case "remove" -> new Change.Remove(at);
            case "replace" -> new Change.Replace(at, change.text("value"));
            case "move" -> new Change.Move(at, change.whole("index"));
            default ->
                    throw FaultException.badRequest(
                            "A change is set, add, remove, replace or move.");
        };
    }
}

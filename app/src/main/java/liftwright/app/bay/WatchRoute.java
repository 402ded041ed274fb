package liftwright.app.bay;

import java.util.List;
import liftwright.app.bay.FaultException.Kind;

/** {@code watch}: a line whenever a document changed elsewhere. */
final class WatchRoute {

    private final Bay bay;

    WatchRoute(Bay bay) {
        this.bay = bay;
    }

    List<Route> routes() {
        return List.of(Route.of("watch", this::watch));
    }

    private Reply watch(Call call) {
        String rig = call.body().text("rig");
        bay.folder().rig(rig);
        if (bay.hub().full()) {
            throw new FaultException(
                    Kind.TOO_MANY,
                    "The page is open in "
                            + Hub.MOST_WATCHERS
                            + " other tabs: here it will not tell of changes made there.");
        }
        return new Reply.Stream(
                lines -> {
                    bay.drafts().lookWhileWatched(rig, lines);
                    bay.hub().watch(rig, lines);
                },
                "{}");
    }
}

package liftwright.app.bay;

import java.util.List;
import java.util.Optional;

/** {@code folder}: what can be opened. */
final class FolderRoutes {

    private final Bay bay;

    FolderRoutes(Bay bay) {
        this.bay = bay;
    }

    List<Route> routes() {
        return List.of(Route.of("folder", this::folder));
    }

    private Reply folder(Call call) {
        List<RigList.Found> rigs = RigList.of(bay.folder());
        Optional<String> first = first(call.session(), rigs);
        return Reply.json(
                json ->
                        json.object(
                                () ->
                                        json.member("name", bay.folder().name())
                                                .member("version", bay.version())
                                                .member("open", first)
                                                .each(
                                                        "rigs",
                                                        rigs,
                                                        rig ->
                                                                json.object(
                                                                        () ->
                                                                                json.member(
                                                                                                "path",
                                                                                                rig
                                                                                                        .path())
                                                                                        .member(
                                                                                                "name",
                                                                                                rig
                                                                                                        .name())))));
    }

    /** The one that was named, or the only one, or the folder's own. */
    private Optional<String> first(Session session, List<RigList.Found> rigs) {
        return session.open()
                .or(bay::open)
                .or(() -> rigs.size() == 1 ? Optional.of(rigs.getFirst().path()) : Optional.empty())
                .or(
                        () ->
                                rigs.stream()
                                        .map(RigList.Found::path)
                                        .filter("rig.yaml"::equals)
                                        .findFirst());
    }
}

package liftwright.app.bay;

import java.util.List;

/** {@code profiles}: which profiles lie beside a rig. */
final class ProfileRoutes {

    private final Profiles profiles;

    ProfileRoutes(OnRecord onRecord) {
        profiles = onRecord.profiles();
    }

    List<Route> routes() {
        return List.of(Route.of("profiles", this::profiles));
    }

    private Reply profiles(Call call) {
        List<String> names = profiles.names(call.body().text("rig"));
        return Reply.json(json -> json.object(() -> json.texts("profiles", names)));
    }
}

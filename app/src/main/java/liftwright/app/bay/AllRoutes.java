package liftwright.app.bay;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Everything that the page can ask. */
final class AllRoutes {

    private AllRoutes() {}

    /** By name; each class of routes has its line here. */
    static Map<String, Route> of(Bay bay) {
        OnRecord onRecord = OnRecord.of(bay);
        return Stream.of(
                        new FolderRoutes(bay).routes(), //
                        new DocumentRoutes(bay).routes(),
                        new WatchRoute(bay).routes(),
                        new ReportRoute(rig -> bay.drafts().of(rig).reading(), bay.version())
                                .routes(),
                        new AskRoutes(
                                        rig -> bay.drafts().of(rig).reading(),
                                        onRecord,
                                        bay.version(),
                                        AskRoutes.PROGRESS,
                                        bay::fault)
                                .routes(),
                        new CompareRoutes(bay, onRecord).routes(),
                        new ProfileRoutes(onRecord).routes(),
                        new JobRoutes(bay, onRecord).routes(),
                        new FlownRoute(bay, onRecord).routes(),
                        new CardRoutes(bay, onRecord).routes(),
                        new TestRoutes(bay, onRecord).routes(),
                        new ReadingRoutes(bay, onRecord).routes(),
                        new GuideRoutes(bay).routes(),
                        new MoveRoute(bay).routes())
                .flatMap(List::stream)
                .collect(Collectors.toUnmodifiableMap(Route::name, Function.identity()));
    }
}

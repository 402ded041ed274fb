package liftwright.app.bay;

import java.util.List;
import liftwright.answer.ChangeJson;
import liftwright.answer.JsonText;
import liftwright.app.bay.FaultException.Kind;
import liftwright.plant.move.Mover;
import liftwright.plant.move.Outcome;
import liftwright.plant.move.Wish;
import liftwright.rig.Vec3;
import liftwright.rig.draft.Draft;
import liftwright.rig.file.RigReading;

/**
 * {@code move}: what a part that is dragged or nudged makes of the file; nothing is changed yet.
 */
final class MoveRoute {

    /** Nothing is further from the wearer than this, m. */
    private static final double FAR_M = 100;

    private final Bay bay;

    MoveRoute(Bay bay) {
        this.bay = bay;
    }

    List<Route> routes() {
        return List.of(Route.of("move", this::move));
    }

    private Reply move(Call call) {
        Json.Members body = call.body();
        Draft draft = bay.drafts().of(body.text("rig"));
        RigReading reading = draft.readingAt(body.text("base")).orElseGet(draft::reading);
        Mover mover =
                Mover.of(reading)
                        .orElseThrow(
                                () ->
                                        new FaultException(
                                                Kind.REFUSED,
                                                "Parts can be moved when the file has no errors."));
        Json.Members to = body.members("to");
        var wish =
                new Wish(
                        body.text("part"),
                        new Vec3(near(to, "forwardM"), near(to, "rightM"), 0.0 - near(to, "upM")),
                        body.truth("snap"),
                        body.truth("twin"),
                        body.optional("whole").isPresent() && body.truth("whole"));
        return switch (mover.move(wish)) {
            case Outcome.Moved moved -> Reply.json(json -> write(moved, json));
            case Outcome.Stays(var why) -> throw new FaultException(Kind.REFUSED, why);
        };
    }

    private static double near(Json.Members place, String name) {
        double metres = place.number(name);
        if (Math.abs(metres) > FAR_M) {
            throw FaultException.badRequest("No place is " + (int) FAR_M + " m away.");
        }
        return metres;
    }

    private static void write(Outcome.Moved moved, JsonText json) {
        json.object(
                () -> {
                    json.each("changes", moved.changes(), change -> ChangeJson.write(change, json));
                    json.name("place")
                            .object(
                                    () ->
                                            json.name("forwardM")
                                                    .number(moved.place().x())
                                                    .name("rightM")
                                                    .number(moved.place().y())
                                                    .name("upM")
                                                    .number(0.0 - moved.place().z()));
                    json.member("sentence", moved.sentence())
                            .each("moves", moved.parts(), json::text);
                });
    }
}

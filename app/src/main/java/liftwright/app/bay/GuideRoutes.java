package liftwright.app.bay;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import liftwright.answer.JsonText;
import liftwright.app.bay.FaultException.Kind;
import liftwright.quantity.UnitSystem;
import liftwright.rig.draft.Draft;
import liftwright.rig.file.RigFiles;
import liftwright.rig.guide.Guide;
import liftwright.rig.guide.GuideField;
import liftwright.rig.guide.GuideStep;

/** {@code guide} asks what a new rig needs, {@code begin} writes its file. */
final class GuideRoutes {

    private final Bay bay;

    GuideRoutes(Bay bay) {
        this.bay = bay;
    }

    List<Route> routes() {
        return List.of(Route.of("guide", this::guide), Route.of("begin", this::begin));
    }

    private Reply guide(Call call) {
        Guide guide = of(call.body());
        return Reply.json(json -> write(guide, json));
    }

    private static Guide of(Json.Members body) {
        Map<String, String> answers = new HashMap<>();
        body.members("answers")
                .values()
                .forEach((key, value) -> answers.put(key, value.asText(key)));
        return Guide.of(answers, units(body.optionalText("units")));
    }

    private static UnitSystem units(Optional<String> word) {
        return switch (word.orElse("si")) {
            case "si" -> UnitSystem.SI;
            case "us" -> UnitSystem.US;
            default -> throw FaultException.badRequest("Units are si or us.");
        };
    }

    private Reply begin(Call call) {
        String text =
                of(call.body())
                        .text()
                        .orElseThrow(
                                () ->
                                        new FaultException(
                                                Kind.REFUSED,
                                                "Some answers are wrong: the guide says which."));
        String rig = file(call.body().text("name").strip());
        Path path = bay.folder().place(rig);
        try {
            RigFiles.create(path, text.getBytes(StandardCharsets.UTF_8));
        } catch (FileAlreadyExistsException e) {
            throw new FaultException(
                    Kind.REFUSED,
                    rig + " exists, and what exists is not written over: give another name.");
        } catch (IOException e) {
            throw new FaultException(
                    Kind.REFUSED, rig + " cannot be written there: give another name.");
        }
        Draft draft = bay.drafts().of(rig);
        return Reply.json(json -> DocumentOut.write(rig, draft.view(), json));
    }

    /** A name without the ending of a rig file is that of a folder for it. */
    private static String file(String name) {
        if (name.isEmpty()) {
            throw new FaultException(Kind.REFUSED, "Give the file a name.");
        }
        return OpenedFolder.isRigName(name) ? name : name + "/rig.yaml";
    }

    private static void write(Guide guide, JsonText json) {
        json.object(
                () ->
                        json.each("steps", guide.steps(), step -> step(step, json))
                                .member("text", guide.text()));
    }

    private static void step(GuideStep step, JsonText json) {
        json.object(
                () ->
                        json.member("id", step.id())
                                .member("title", step.title())
                                .member("why", step.why())
                                .each("fields", step.fields(), field -> field(field, json)));
    }

    private static void field(GuideField field, JsonText json) {
        json.object(
                () -> {
                    json.member("key", field.key())
                            .member("label", field.label())
                            .member("help", field.help())
                            .member("kind", field.kind().name().toLowerCase(Locale.ROOT));
                    if (!field.choices().isEmpty()) {
                        json.each("choices", field.choices(), choice -> choice(choice, json));
                    }
                    json.member("value", field.value()).member("problem", field.problem());
                });
    }

    private static void choice(GuideField.Choice choice, JsonText json) {
        json.object(() -> json.member("value", choice.value()).member("label", choice.label()));
    }
}

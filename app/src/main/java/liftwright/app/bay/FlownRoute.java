package liftwright.app.bay;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import liftwright.answer.Answer;
import liftwright.answer.JsonText;
import liftwright.app.bay.FaultException.Kind;
import liftwright.flight.ask.FlightQuestion;
import liftwright.flight.disperse.FlightRange;
import liftwright.flight.run.FlightOutcome;
import liftwright.flight.run.FlightPath;
import liftwright.plant.identify.NotToldException;
import liftwright.plant.parameters.ImpossibleValueException;
import liftwright.review.Settings;
import liftwright.review.Stage;
import liftwright.rig.Rig;
import liftwright.rig.file.RigReading;

/**
 * {@code flown}: one flight of a profile by its number and seed, as an answer and as a path to be
 * played: where the rig was, how it was turned, what each fan and line gave.
 */
final class FlownRoute {

    /** Digits that a picture shows, and more. */
    private static final double PER_METRE = 1e4;

    private static final double PER_ONE = 1e6;
    private static final double PER_NEWTON = 1e2;

    private final Readings readings;
    private final Bay bay;
    private final OnRecord onRecord;
    private final Lanes lanes = new Lanes();

    /**
     * @param onRecord has the profiles
     */
    FlownRoute(Bay bay, OnRecord onRecord) {
        this.bay = bay;
        this.onRecord = onRecord;
        readings = rig -> bay.drafts().of(rig).reading();
    }

    List<Route> routes() {
        return List.of(Route.of("flown", this::flown));
    }

    private Reply flown(Call call) {
        Json.Members body = call.body();
        RigReading reading = readings.asked(body);
        int number = body.whole("number");
        if (number > FlightRange.MOST) {
            throw FaultException.badRequest("There is no flight of such a number.");
        }
        Settings settings =
                Settings.standard().withoutRemedies().withSeed(JobTasks.seed(body.text("seed")));
        Rig rig =
                reading.rig()
                        .orElseThrow(
                                () ->
                                        new FaultException(
                                                Kind.REFUSED,
                                                AnswerLines.harmless(
                                                        Answering.unreadable(reading.problems()))));
        var profile = onRecord.profiles().of(body.text("rig"), body.optionalText("profile"), rig);
        var units = Asked.units(body.text("units"));
        OptionalDouble turn = Asked.turn(body);
        return Reply.lines(
                lines -> {
                    var work = new AskedWork(() -> {});
                    lines.onGone(work::stop);
                    var told = AnswerLines.of(lines, bay.version(), units);
                    lanes.run(
                            call.session(),
                            turn,
                            work,
                            () ->
                                    new Computing(AskRoutes.PROGRESS)
                                            .run(
                                                    work,
                                                    () ->
                                                            fly(
                                                                    () ->
                                                                            FlightQuestion.ofNumber(
                                                                                    rig,
                                                                                    reading
                                                                                            .digest(),
                                                                                    profile,
                                                                                    settings,
                                                                                    number),
                                                                    rig.name(),
                                                                    work,
                                                                    told),
                                                    () -> {}));
                });
    }

    /** Makes the question, which fails where the rig lacks what a flight needs. */
    @FunctionalInterface
    private interface Making {
        FlightQuestion question();
    }

    private void fly(Making making, String rigName, AskedWork work, AnswerLines told) {
        try {
            FlightQuestion question = making.question();
            // Banded is this flight and no other, whatever its number.
            Optional<? extends Answer> answer = question.answer(Stage.BANDED, work);
            answer.ifPresent(found -> told.tell(Stage.WHOLE, Question.FLIGHT, rigName, found));
            question.shown().map(FlightOutcome::path).ifPresent(path -> tell(path, told));
        } catch (NotToldException | ImpossibleValueException e) {
            told.refuse(Optional.of(Question.FLIGHT), String.valueOf(e.getMessage()));
        } catch (Lines.GoneException e) {
            throw e;
        } catch (RuntimeException e) {
            bay.fault(e);
            told.refuse(Optional.of(Question.FLIGHT), "A fault of the program, not of your rig.");
        }
        told.end(work.stopped());
    }

    private static void tell(FlightPath path, AnswerLines told) {
        told.lines().tell(json -> json.object(() -> write(path, json.name("path"))));
    }

    private static void write(FlightPath path, JsonText json) {
        json.object(
                () -> {
                    numbers("times", path.timesS(), PER_METRE, json);
                    numbers("places", path.placeM(), PER_METRE, json);
                    numbers("turns", path.turned(), PER_ONE, json);
                    json.name("fans").whole(path.fans());
                    numbers("thrusts", path.thrustN(), PER_NEWTON, json);
                    json.texts("lines", path.lines());
                    numbers("pulls", path.pullN(), PER_NEWTON, json);
                });
    }

    private static void numbers(String name, double[] values, double perUnit, JsonText json) {
        json.name(name)
                .array(
                        () -> {
                            for (double value : values) {
                                json.number(Math.rint(value * perUnit) / perUnit);
                            }
                        });
    }
}

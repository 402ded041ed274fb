package liftwright.review.people;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import liftwright.answer.Finding;
import liftwright.answer.Finding.Severity;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.physics.RoomAir;
import liftwright.plant.Plant;
import liftwright.quantity.Measure;
import liftwright.quantity.Quantity;
import liftwright.review.people.FullThrottle.Moment;
import liftwright.rig.Restraint;
import liftwright.rig.Rig;

/** What a rig does to the air of the room it is tested in. */
final class Indoors {

    private Indoors() {}

    /** Empty outdoors: where no room is declared. */
    static Optional<Finding> finding(Plant plant, FullThrottle full) {
        return plant.rig().restraint().room().map(room -> finding(plant, full, room));
    }

    private static Finding finding(Plant plant, FullThrottle full, Restraint.Room room) {
        List<String> missing = new ArrayList<>();
        double volumeM3 =
                size(room.length(), "“length”", missing)
                        * size(room.width(), "“width”", missing)
                        * size(room.ceiling(), "“ceiling”", missing);
        if (!missing.isEmpty()) {
            return finding(
                    room,
                    "room-cannot-be-told",
                    Sentence.words(
                            "how the room warms is not told: declare its "
                                    + String.join(", ", missing)),
                    Optional.empty(),
                    "indoors the fans breathe what they blew");
        }
        Rig rig = plant.rig();
        Moment at = full.declared();
        double flow = 0;
        double power = at.sourceW;
        for (int k = 0; k < at.thrustN.length; k++) {
            double exitM2 = rig.fans().get(k).type().exitArea().si();
            flow += Math.sqrt(at.thrustN[k] * exitM2 / at.densityKgpm3);
        }
        double asked = rig.demands().hover().si() * rig.demands().runs();
        double rise =
                RoomAir.riseK(
                        power * asked,
                        volumeM3,
                        at.densityKgpm3,
                        plant.siteTemperatureK(plant.parameters().nominal()));
        Sentence warms =
                Sentence.words("the room warms by ")
                        .then(Measure.TEMPERATURE_DIFFERENCE, rise)
                        .then(" at most in the ")
                        .then(Measure.TIME, asked)
                        .then(" that are asked for");
        return finding(
                room,
                "room-warms",
                flow > 0
                        ? warms.then("; the fans move all of its air every ")
                                .then(Measure.TIME, RoomAir.turnoverS(volumeM3, flow))
                        : warms,
                Optional.of(Value.of("room-rise", rise)),
                "full throttle all the time, nothing taken by walls and doors; warm air that has been"
                        + " through a fan lifts less than the air of the site, with which all else is"
                        + " computed");
    }

    private static double size(Optional<Quantity> size, String words, List<String> missing) {
        if (size.isEmpty()) {
            missing.add(words);
        }
        return size.map(Quantity::si).orElse(0.0);
    }

    private static Finding finding(
            Restraint.Room room,
            String code,
            Sentence sentence,
            Optional<Value> value,
            String cause) {
        return Finding.of(Severity.NOTES, code, sentence, cause)
                .at(room.declaredAt().toString())
                .judging(value);
    }
}

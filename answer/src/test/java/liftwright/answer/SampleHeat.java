package liftwright.answer;

import java.util.List;
import liftwright.answer.Section.Playback;
import liftwright.answer.Section.Shares;
import liftwright.answer.Section.Timeline;

/** Sections about time and heat. The numbers mean nothing. */
final class SampleHeat {

    private SampleHeat() {}

    static List<Section> all(String name) {
        return List.of(timeline(name), shares(name), playback(name));
    }

    static Timeline timeline(String name) {
        return new Timeline(
                "first-limits",
                "What gives out first",
                List.of(
                        new Timeline.Bar(
                                name,
                                "insulation",
                                Value.of("time-to-limit", 143),
                                Value.of("temperature", 361.5),
                                Value.of("temperature", 323.15),
                                "at the lug"),
                        new Timeline.Bar(
                                "back.1",
                                "charge",
                                new Value("time-to-limit", new Value.Figure.Never()),
                                Value.of("charge-left", 0.45),
                                Value.of("charge-left", 0.2),
                                "")),
                180);
    }

    static Shares shares(String name) {
        return new Shares(
                "losses",
                "Where the watts go",
                Value.of("electrical-power", 4000),
                List.of(
                        new Shares.Share("fans", Value.of("electrical-power", 3000)),
                        new Shares.Share(name, Value.of("electrical-power", 1000))));
    }

    static Playback playback(String name) {
        return new Playback(
                "heat-playback",
                "The rig as it warms",
                List.of(0.0, 0.5, 143.0),
                "temperature",
                List.of(
                        new Playback.Track(
                                name,
                                "wire",
                                new Playback.Place(-0.1, 0, 0.2),
                                new Playback.Place(0.1, -0.4, -0.3),
                                323.15,
                                List.of(288.15, 289.0, 361.5)),
                        new Playback.Track(
                                "back.1",
                                "cells",
                                new Playback.Place(-0.1, 0, 0.2),
                                new Playback.Place(-0.1, 0, 0.2),
                                333.15,
                                List.of(288.15, 288.2, 301.0))));
    }
}

package liftwright.app.bay;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import liftwright.answer.JsonText;
import liftwright.logbook.entry.SampleTable;
import liftwright.logbook.store.StoredTest;
import liftwright.plant.recording.Samples;
import liftwright.plant.recording.Thinned;
import liftwright.quantity.UnitSystem;

/**
 * {@code test}: what one test of the logbook taught, in stages; {@code samples}: what it recorded,
 * thinned to the pixels of a picture.
 */
final class TestRoutes {

    /** More than a screen has. */
    private static final int MOST_PIXELS = 4_000;

    /** More than a rig has that is drawn at once. */
    private static final int MOST_CHANNELS = 64;

    /** Of each pixel the engine gives two stretches, and of each stretch two samples. */
    private static final int SAMPLES_A_PIXEL = 4;

    private final Bay bay;
    private final OnRecord onRecord;
    private final Lanes lanes = new Lanes();

    /**
     * @param onRecord has the logbooks, and keeps what was learned
     */
    TestRoutes(Bay bay, OnRecord onRecord) {
        this.bay = bay;
        this.onRecord = onRecord;
        bay.atTheEnd(onRecord.logbooks()::end);
    }

    List<Route> routes() {
        return List.of(Route.of("test", this::test), Route.of("samples", this::samples));
    }

    private Reply test(Call call) {
        Json.Members body = call.body();
        String rig = body.text("rig");
        StoredTest test = onRecord.logbooks().test(rig, body.text("test"));
        UnitSystem units = Asked.units(body.text("units"));
        OptionalDouble turn = Asked.turn(body);
        return Reply.lines(
                told -> {
                    var work = new AskedWork(() -> {});
                    told.onGone(work::stop);
                    var answering =
                            new TestAnswering(
                                    onRecord,
                                    rig,
                                    test,
                                    work,
                                    AnswerLines.of(told, bay.version(), units),
                                    bay::fault);
                    lanes.run(
                            call.session(),
                            turn,
                            work,
                            () ->
                                    new Computing(AskRoutes.PROGRESS)
                                            .run(work, answering::run, answering::tellProgress));
                });
    }

    private Reply samples(Call call) {
        Json.Members body = call.body();
        String rig = body.text("rig");
        StoredTest test = onRecord.logbooks().test(rig, body.text("test"));
        List<String> channels = body.texts("channels");
        double fromS = body.number("from");
        double toS = body.number("to");
        int pixels = body.whole("pixels");
        if (channels.size() > MOST_CHANNELS || pixels < 1 || pixels > MOST_PIXELS) {
            throw FaultException.badRequest("So much is not drawn at once.");
        }
        if (!(toS > fromS)) {
            throw FaultException.badRequest("The second time has to be the later one.");
        }
        Map<String, Thinned> all = thinned(rig, test, channels, fromS, toS, pixels);
        return Reply.json(
                json ->
                        json.object(
                                () ->
                                        json.each(
                                                "channels",
                                                List.copyOf(all.entrySet()),
                                                one ->
                                                        stretches(
                                                                one.getKey(),
                                                                one.getValue(),
                                                                json))));
    }

    private Map<String, Thinned> thinned(
            String rig,
            StoredTest test,
            List<String> channels,
            double fromS,
            double toS,
            int pixels) {
        double longS = toS - fromS; // as much again on each side, for the lines that leave
        var all = new LinkedHashMap<String, Thinned>();
        for (SampleTable table : test.entry().tables()) {
            List<String> here =
                    table.channels().stream()
                            .map(SampleTable.Channel::name)
                            .filter(channels::contains)
                            .toList();
            if (here.isEmpty()) {
                continue;
            }
            double shiftS = table.clock().shiftS();
            Map<String, Samples> samples =
                    onRecord.logbooks()
                            .samples(
                                    rig,
                                    test,
                                    table,
                                    here,
                                    fromS - longS - shiftS,
                                    toS + longS - shiftS,
                                    3 * SAMPLES_A_PIXEL * pixels);
            samples.forEach(
                    (channel, s) ->
                            all.putIfAbsent(
                                    channel, Thinned.of(s.later(shiftS), fromS, toS, pixels)));
        }
        return all;
    }

    private static void stretches(String channel, Thinned thinned, JsonText json) {
        json.object(
                () -> {
                    json.member("channel", channel);
                    json.name("times").array(() -> each(thinned, json, Thinned::timeS));
                    json.name("low").array(() -> each(thinned, json, Thinned::lowSi));
                    json.name("high").array(() -> each(thinned, json, Thinned::highSi));
                });
    }

    private interface Of {
        double value(Thinned thinned, int k);
    }

    private static void each(Thinned thinned, JsonText json, Of of) {
        for (int k = 0; k < thinned.size(); k++) {
            json.number(of.value(thinned, k));
        }
    }
}

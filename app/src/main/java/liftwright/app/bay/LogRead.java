package liftwright.app.bay;

import liftwright.answer.JsonText;
import liftwright.answer.SiUnit;
import liftwright.logbook.reading.Channel;
import liftwright.logbook.reading.Clocked;
import liftwright.logbook.reading.Imported;
import liftwright.logbook.reading.Note;
import liftwright.logbook.reading.Rejected;
import liftwright.logbook.reading.Shift;
import liftwright.plant.recording.Signal;
import liftwright.quantity.Measure;
import liftwright.rig.Problem;

/**
 * What the reader of logs understood, for the page.
 *
 * @param json takes it
 */
record LogRead(JsonText json) {

    /**
     * @param id of the reading, to keep it
     */
    void understood(String id, Imported imported) {
        json.object(
                () ->
                        json.name("read")
                                .object(
                                        () ->
                                                json.member("reading", id)
                                                        .each(
                                                                "files",
                                                                imported.tables(),
                                                                this::file)
                                                        .each(
                                                                "rejected",
                                                                imported.rejected(),
                                                                this::rejected)
                                                        .each(
                                                                "notes",
                                                                imported.notes(),
                                                                this::note)));
    }

    private void file(Clocked table) {
        json.object(
                () -> {
                    json.member("source", table.source());
                    json.name("rows").whole(table.rows());
                    json.name("first").number(table.firstS());
                    json.name("last").number(table.lastS());
                    json.member("begin", table.begin().map(Object::toString));
                    json.member("clock", clock(table.shift()));
                    json.each("channels", table.channels(), this::channel);
                });
    }

    private static String clock(Shift shift) {
        return switch (shift) {
            case Shift.Own() -> "its own clock";
            case Shift.Found found ->
                    String.format(
                            java.util.Locale.ROOT,
                            "shifted by %+.3f s, within %.3f s, by %s; confidence %.0f %%",
                            found.byS(),
                            found.toleranceS(),
                            found.by(),
                            100 * found.confidence());
            case Shift.Unknown unknown -> "not brought together: " + unknown.why();
        };
    }

    private void channel(Channel channel) {
        json.object(
                () ->
                        json.member("head", channel.head())
                                .member("name", channel.name())
                                .member("unit", SiUnit.of(measure(channel.signal()))));
    }

    private static Measure measure(Signal signal) {
        return switch (signal) {
            case THROTTLE, HUMIDITY -> Measure.PERCENT;
            case THRUST, TETHER_LOAD -> Measure.THRUST;
            case SCALE -> Measure.MASS;
            case ROLL_MOMENT, PITCH_MOMENT, YAW_MOMENT -> Measure.MOMENT;
            case CURRENT, WINDING_CURRENT -> Measure.CURRENT;
            case VOLTAGE, CELL_VOLTAGE -> Measure.VOLTAGE;
            case SPEED -> Measure.ROTATION;
            case TEMPERATURE, AIR_TEMPERATURE -> Measure.TEMPERATURE;
            case CHARGE_USED -> Measure.CHARGE;
            case AIR_PRESSURE -> Measure.PRESSURE;
            case WIND -> Measure.SPEED;
        };
    }

    private void rejected(Rejected rows) {
        json.object(
                () -> {
                    json.member("source", rows.source());
                    json.name("count").whole(rows.count());
                    json.each("first", rows.first(), this::row);
                });
    }

    private void row(Rejected.Row row) {
        json.object(
                () -> {
                    json.name("line").whole(row.line());
                    json.member("reason", row.reason());
                    json.member("text", row.text());
                });
    }

    private void note(Note note) {
        json.object(
                () -> {
                    json.member("source", note.source());
                    json.name("line").whole(note.line());
                    json.member("text", note.text());
                });
    }

    /** Why nothing was read in. */
    void problems(Iterable<Problem> problems) {
        json.object(() -> json.name("problems").array(() -> problems.forEach(this::problem)));
    }

    private void problem(Problem problem) {
        json.object(
                () -> {
                    json.member("source", problem.at().file());
                    json.name("line").whole(problem.at().line());
                    json.member("column", problem.at().path());
                    json.member("found", problem.found());
                    json.member("expected", problem.expected());
                    json.member("advice", problem.advice());
                });
    }
}

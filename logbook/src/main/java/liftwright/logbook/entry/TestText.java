package liftwright.logbook.entry;

import java.util.List;
import liftwright.logbook.entry.SampleTable.Channel;
import liftwright.logbook.entry.TestEntry.Media;
import liftwright.logbook.entry.TestEntry.Person;
import liftwright.logbook.entry.TestEntry.Weather;

/** A test as the text of its file. */
final class TestText {

    private final Writing out = new Writing();

    private TestText() {}

    static String of(TestEntry test) {
        TestText text = new TestText();
        text.head(test);
        text.tables(test.tables());
        return text.out.toString();
    }

    private void head(TestEntry test) {
        out.comment("What was measured in a test. Never edit it: what is learned later is a note.");
        out.line(TestKeys.HEAD.name(), "1");
        test.card().ifPresent(card -> out.text(TestKeys.CARD.name(), card.text()));
        out.line(TestKeys.DATE.name(), test.date().toString());
        out.list(TestKeys.PEOPLE.name(), test.people(), this::person);
        weather(test.weather());
        out.textIfAny(TestKeys.NOTE.name(), test.note());
        out.textIfAny(TestKeys.COST.name(), test.cost());
        out.amountIfAny(TestKeys.HOURS.name(), test.hours());
        out.list(TestKeys.MEDIA.name(), test.media(), this::medium);
        out.texts(TestKeys.INSTRUMENTS.name(), test.instruments());
        out.open(TestKeys.RIG.name())
                .text(TestKeys.FILE.name(), test.rig().file())
                .text(TestKeys.DIGEST.name(), test.rig().digest())
                .line(TestKeys.REVISION.name(), String.valueOf(test.rig().revision()))
                .close();
    }

    private void person(Person person) {
        out.text(TestKeys.NAME.name(), person.name())
                .textIfAny(TestKeys.ROLE.name(), person.role());
    }

    private void medium(Media medium) {
        out.text(TestKeys.FILE.name(), medium.file())
                .text(TestKeys.DIGEST.name(), medium.digest())
                .textIfAny(TestKeys.WHAT.name(), medium.what());
    }

    private void weather(Weather weather) {
        if (weather.equals(Weather.UNKNOWN)) {
            return;
        }
        out.open(TestKeys.WEATHER.name())
                .amountIfAny(TestKeys.AIR.name(), weather.air())
                .amountIfAny(TestKeys.PRESSURE.name(), weather.pressure())
                .amountIfAny(TestKeys.HUMIDITY.name(), weather.humidity())
                .amountIfAny(TestKeys.WIND.name(), weather.wind())
                .amountIfAny(TestKeys.GUST.name(), weather.gust())
                .close();
    }

    private void tables(List<SampleTable> tables) {
        if (tables.isEmpty()) {
            out.line(TestKeys.TABLES.name(), "[]");
            return;
        }
        out.list(TestKeys.TABLES.name(), tables, this::table);
    }

    private void table(SampleTable table) {
        out.text(TestKeys.FILE.name(), table.file())
                .text(TestKeys.SOURCE.name(), table.source())
                .textIfAny(TestKeys.REJECTED_FILE.name(), table.rejected())
                .line(TestKeys.ROWS.name(), String.valueOf(table.rows()))
                .line(TestKeys.ROWS_REJECTED.name(), String.valueOf(table.rowsRejected()))
                .seconds(TestKeys.FROM.name(), table.firstS())
                .seconds(TestKeys.TO.name(), table.lastS());
        out.open(TestKeys.CLOCK.name()).seconds(TestKeys.SHIFT.name(), table.clock().shiftS());
        table.clock().confidence().ifPresent(share -> out.share(TestKeys.CONFIDENCE.name(), share));
        out.text(TestKeys.HOW.name(), table.clock().how()).close();
        out.list(TestKeys.CHANNELS.name(), table.channels(), this::channel);
        out.texts(TestKeys.NOTES.name(), table.notes());
    }

    private void channel(Channel channel) {
        out.line(TestKeys.SIGNAL.name(), channel.signal().word())
                .text(TestKeys.OF.name(), channel.of())
                .text(
                        TestKeys.ERROR.name(),
                        ChannelUnits.text(channel.signal(), channel.errorSi()));
        if (channel.errorShare() > 0) {
            out.share(TestKeys.SHARE.name(), channel.errorShare());
        }
    }
}

package liftwright.rig.csv;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.random.RandomGenerator;
import liftwright.rig.Problem;
import liftwright.rig.Problem.Code;
import liftwright.rig.Rig;
import liftwright.rig.file.RigReading;
import liftwright.rig.table.StartState;
import liftwright.rig.table.StartState.Place;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * States that a run begins with: what they mean, how they are written, and what is wrong with them.
 */
class StartStateTest {

    private static final Rig RIG = small();

    /** The small rig of the tests of the format: fans top and left, packs p, one fuse a trunk. */
    static Rig small() {
        try (var in = StartStateTest.class.getResourceAsStream("/format/small.yaml")) {
            byte[] bytes = java.util.Objects.requireNonNull(in).readAllBytes();
            return RigReading.read("small.yaml", bytes).rig().orElseThrow();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static TableReading<StartState> read(String text) {
        return TableReader.startState("t.csv", text.getBytes(UTF_8), RIG);
    }

    private static StartState whole(String text) {
        return switch (read(text)) {
            case TableReading.Whole<StartState>(var state) -> state;
            case TableReading.Broken<StartState>(var problems) ->
                    throw new AssertionError(problems.toString());
        };
    }

    @Test
    void rowsMeanWhatTheirHeadsSay() {
        StartState state =
                whole(
                        """
                        temperature [K];part;fuse [1];Charge [%];place;note
                        310;p.1;;62,5;Core;warm to the hand
                        ;feed.p.1.trunk.fuse;0,35;;;
                        350;left.1;;;winding;
                        """);
        assertThat(state.file()).isEqualTo("t.csv");
        StartState.Row pack = state.rows().getFirst();
        assertThat(pack.line()).isEqualTo(2);
        assertThat(pack.part()).isEqualTo("p.1");
        assertThat(pack.place()).isEqualTo(Place.CORE);
        assertThat(pack.temperatureK().orElseThrow()).isEqualTo(310);
        assertThat(pack.charge().orElseThrow()).isCloseTo(0.625, within(1e-15));
        assertThat(pack.fuse()).isEmpty();
        StartState.Row fuse = state.rows().get(1);
        assertThat(fuse.place()).isEqualTo(Place.WHOLE);
        assertThat(fuse.temperatureK()).isEmpty();
        assertThat(fuse.fuse().orElseThrow()).isEqualTo(0.35);
        assertThat(state.rows().get(2).place()).isEqualTo(Place.WINDING);
    }

    /** Written and read again, a state is the same to the last bit. */
    @Test
    void whatIsWrittenIsReadAsTheSame() {
        Seeded.check(
                200,
                random -> {
                    StartState state = random(random);
                    StartState again = whole(StartText.write(state));
                    assertThat(again.rows()).hasSameSizeAs(state.rows());
                    for (int k = 0; k < state.rows().size(); k++) {
                        StartState.Row was = state.rows().get(k);
                        StartState.Row is = again.rows().get(k);
                        assertThat(is.part()).isEqualTo(was.part());
                        assertThat(is.place()).isEqualTo(was.place());
                        assertThat(is.temperatureK()).isEqualTo(was.temperatureK());
                        assertThat(is.charge()).isEqualTo(was.charge());
                        assertThat(is.fuse()).isEqualTo(was.fuse());
                    }
                });
    }

    private static StartState random(RandomGenerator random) {
        var rows = new ArrayList<StartState.Row>();
        RIG.packs()
                .forEach(
                        pack ->
                                rows.add(
                                        row(
                                                pack.id().text(),
                                                random.nextBoolean() ? Place.CORE : Place.WHOLE,
                                                temperature(random),
                                                OptionalDouble.of(random.nextDouble()),
                                                OptionalDouble.empty())));
        RIG.fans()
                .forEach(
                        fan -> {
                            for (Place place :
                                    List.of(
                                            Place.JUNCTION,
                                            Place.SINK,
                                            Place.WINDING,
                                            Place.CASE)) {
                                rows.add(
                                        row(
                                                fan.id().text(),
                                                place,
                                                temperature(random),
                                                OptionalDouble.empty(),
                                                OptionalDouble.empty()));
                            }
                        });
        for (int p = 1; p <= RIG.packs().size(); p++) {
            rows.add(
                    row(
                            String.format(Locale.ROOT, "feed.p.%d.trunk.fuse", p),
                            Place.WHOLE,
                            temperature(random),
                            OptionalDouble.empty(),
                            OptionalDouble.of(random.nextInt(5) == 0 ? 1 : random.nextDouble())));
        }
        return new StartState("", rows);
    }

    private static OptionalDouble temperature(RandomGenerator random) {
        return OptionalDouble.of(random.nextInt(6) == 0 ? 273.15 : random.nextDouble(230, 600));
    }

    private static StartState.Row row(
            String part,
            Place place,
            OptionalDouble temperatureK,
            OptionalDouble charge,
            OptionalDouble fuse) {
        return new StartState.Row(0, part, place, temperatureK, charge, fuse);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "temperature [°C];20 | MISSING_KEY | 1 | 1",
                "part,note;p.1,x | MISSING_KEY | 1 | 1",
                "part,temperature [°C];p.1, | MISSING_KEY | 2 | 1",
                "part,temperature [°C];,20 | MISSING_KEY | 2 | 1",
                "part,temperature [°C];p.9,20 | NO_SUCH_PART | 2 | 1",
                "part,temperature [°C];left,20 | NO_SUCH_PART | 2 | 1",
                "part,temperature [°C];feed.p.1.trunk.run,20 | NO_SUCH_PART | 2 | 1",
                "part,temperature [°C];p.1,20;p.2,20;p.1,30 | DUPLICATE_ID | 4 | 1",
                "part,place,temperature [°C];p.1,core,20;p.1,core,21 | DUPLICATE_ID | 3 | 1",
                "part,place,temperature [°C];p.1,winding,20 | UNKNOWN_WORD | 2 | 5",
                "part,place,temperature [°C];left.1,whole,20 | UNKNOWN_WORD | 2 | 8",
                "part,place,temperature [°C];feed.p.1.trunk.fuse,core,20 | UNKNOWN_WORD | 2 | 21",
                "part,temperature [°C];p.1,-90 | OUT_OF_RANGE | 2 | 5",
                "part,temperature [°C];p.1,900 | OUT_OF_RANGE | 2 | 5",
                "part,temperature [°C];p.1,warm | NOT_A_QUANTITY | 2 | 5",
                "part,temperature [°C];p.1,20 °C | NOT_A_QUANTITY | 2 | 5",
                "part,temperature [%];p.1,20 | WRONG_UNIT | 1 | 19",
                "part,temperature;p.1,20 | WRONG_UNIT | 1 | 6",
                "part,charge [%];p.1,120 | OUT_OF_RANGE | 2 | 5",
                "part,charge [%];left.1,20 | CONTRADICTION | 2 | 8",
                "part,fuse [%];p.1,20 | CONTRADICTION | 2 | 5",
                "part,fuse [%];feed.p.1.trunk.fuse,-1 | OUT_OF_RANGE | 2 | 21",
                "part,soc [%];p.1,20 | UNKNOWN_KEY | 1 | 6",
                "part,temperature [°C],part;p.1,20,p.1 | DUPLICATE_KEY | 1 | 23",
                "part,temperature [°C];p.1 | SYNTAX | 2 | 4"
            })
    void whatIsWrongIsToldAtItsPlace(String text, Code code, int line, int column) {
        switch (read(text.replace(";", "\n") + "\n")) {
            case TableReading.Whole<StartState> _ -> throw new AssertionError("read " + text);
            case TableReading.Broken<StartState>(var problems) -> {
                assertThat(problems).as(problems.toString()).hasSize(1);
                Problem problem = problems.getFirst();
                assertThat(problem.code()).as(problems.toString()).isEqualTo(code);
                assertThat(problem.at().line()).as(problems.toString()).isEqualTo(line);
                assertThat(problem.at().column()).as(problems.toString()).isEqualTo(column);
            }
        }
    }
}

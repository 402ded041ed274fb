package liftwright.trials.day;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalTime;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.regex.Pattern;
import liftwright.rig.Problem;
import liftwright.rig.Problem.Code;
import liftwright.rig.Rig;
import liftwright.trials.TrialExamples;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** One mistake in a good day file gives one problem at its place. */
class DayReadingTest {

    private static final Rig CURLEW = TrialExamples.rig("curlew");
    private static final String PACK = CURLEW.packs().getFirst().id().text();

    private static final String GOOD =
            """
            liftwright day: 1
            date: 2026-05-02
            start: 09:00
            crew hours: 5 h
            light until: 20:40
            air: 18 °C
            wind: 2 m/s
            gust: 4 m/s
            packs:
              PACK: {charge: 98 %, temperature: 24 °C, spread: 8 mV}
            people:
              Ann: [throttle]
              Ben: [watcher, fire]
            kill proof: kills.yaml
            aborts: 1
            unexplained: no
            """
                    .replace("PACK", PACK);

    private static DayReading read(String text) {
        return DayReading.read("day.yaml", text.getBytes(UTF_8), CURLEW);
    }

    @Test
    void aGoodFileIsRead() {
        DayReading reading = read(GOOD);
        assertThat(reading.problems()).isEmpty();
        Day day = reading.day().orElseThrow();
        assertThat(day.date()).hasToString("2026-05-02");
        assertThat(day.start()).isEqualTo(LocalTime.of(9, 0));
        assertThat(day.hoursS()).isEqualTo(18_000);
        assertThat(day.airK()).isEqualTo(291.15);
        assertThat(Objects.requireNonNull(day.packs().get(PACK)).spreadV()).contains(0.008);
        assertThat(day.people().get("Ben")).isEqualTo(Set.of("watcher", "fire"));
        assertThat(day.killProof()).contains("kills.yaml");
        assertThat(day.aborts()).isOne();
        assertThat(day.unexplained()).isFalse();
        assertThat(day.defaults()).isEmpty();
    }

    @Test
    void whatIsLeftOpenIsTold() {
        Day day =
                read(GOOD.replace("crew hours: 5 h\n", "").replaceAll("(?s)kill proof.*", ""))
                        .day()
                        .orElseThrow();
        assertThat(day.hoursS()).isEqualTo(21_600);
        assertThat(day.defaults().stream().map(one -> one.at().toString()).toList())
                .containsExactlyInAnyOrder("crew hours", "kill proof", "aborts", "unexplained");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '"',
            value = {
                "day: 1 | day: ¦2 | OUT_OF_RANGE | liftwright day",
                "liftwright day: 1; | ¦ | MISSING_KEY | liftwright day",
                "2026-05-02 | ¦2026-5-2 | WRONG_KIND | date",
                "2026-05-02 | ¦today | WRONG_KIND | date",
                "start: 09:00 | start: ¦9:00 | WRONG_KIND | start",
                "start: 09:00 | start: ¦25:00 | WRONG_KIND | start",
                "start: 09:00 | start: ¦[9] | WRONG_KIND | start",
                "until: 20:40 | until: ¦08:40 | CONTRADICTION | light until",
                "until: 20:40 | until: ¦dusk | WRONG_KIND | light until",
                "hours: 5 h | hours: ¦5 | WRONG_UNIT | crew hours",
                "hours: 5 h | hours: ¦30 h | OUT_OF_RANGE | crew hours",
                "air: 18 °C | air: ¦18 | WRONG_UNIT | air",
                "air: 18 °C | air: ¦180 °C | OUT_OF_RANGE | air",
                "air: 18 °C | air: ¦warm | NOT_A_QUANTITY | air",
                "wind: 2 m/s | wind: ¦-2 m/s | OUT_OF_RANGE | wind",
                "wind: 2 m/s; | ¦ | MISSING_KEY | wind",
                "gust: 4 m/s | gust: ¦1 m/s | CONTRADICTION | gust",
                "gust: 4 m/s | gust: ¦4 kg | WRONG_UNIT | gust",
                "charge: 98 % | charge: ¦120 % | OUT_OF_RANGE | packs/PACK/charge",
                "charge: 98 %, | ¦ | MISSING_KEY | packs/PACK/charge",
                "temperature: 24 °C | temperature: ¦24 K | OUT_OF_RANGE | packs/PACK/temperature",
                "spread: 8 mV | spread: ¦8 | WRONG_UNIT | packs/PACK/spread",
                "spread: 8 mV | ¦spred: 8 mV | UNKNOWN_KEY | packs/PACK/spred",
                "  PACK: | ¦  z.9: | NO_SUCH_PART | packs/z.9",
                "Ann: [throttle] | Ann: ¦throttle | WRONG_KIND | people/Ann",
                "Ann: [throttle] | Ann: [¦throtle] | NO_SUCH_PART | people/Ann/1",
                "watcher, fire | watcher, ¦chief | NO_SUCH_PART | people/Ben/2",
                "aborts: 1 | aborts: ¦-1 | OUT_OF_RANGE | aborts",
                "aborts: 1 | aborts: ¦one | WRONG_KIND | aborts",
                "unexplained: no | unexplained: ¦perhaps | UNKNOWN_WORD | unexplained",
                "aborts: 1 | ¦aborted: 1 | UNKNOWN_KEY | aborted",
                "Ann: [throttle] | Ann: ¦&a [throttle] | NOT_ALLOWED_IN_RIG_FILES | people/Ann"
            })
    void whatIsWrongIsToldAtItsPlace(String right, String wrong, Code code, String path) {
        String from = right.replace(";", "\n").replace("PACK", PACK).stripLeading();
        assertThat(GOOD).contains(from);
        int at = GOOD.indexOf(from);
        String marked =
                GOOD.substring(0, at)
                        + wrong.replace(";", "\n").replace("PACK", PACK).stripLeading()
                        + GOOD.substring(at + from.length());
        DayReading reading = read(marked.replace("¦", ""));
        assertThat(reading.day()).isEmpty();
        List<Problem> problems = reading.problems();
        assertThat(problems).as(problems.toString()).hasSize(1);
        Problem problem = problems.getFirst();
        assertThat(problem.code()).as(problems.toString()).isEqualTo(code);
        if (code != Code.NOT_ALLOWED_IN_RIG_FILES) {
            assertThat(problem.at().path()).isEqualTo(path.replace("PACK", PACK));
        }
        if (code != Code.MISSING_KEY) {
            int mark = marked.indexOf('¦');
            int line = (int) marked.substring(0, mark).chars().filter(c -> c == '\n').count() + 1;
            assertThat(problem.at().line()).isEqualTo(line);
        }
    }

    /** The files that the pages show can be read, but for the parts of another rig. */
    @Test
    void theExampleOfThePageIsRead() throws IOException {
        String page = Files.readString(Path.of("..", "docs", "how-to", "plan-a-day.md"));
        var blocks = Pattern.compile("```yaml\n(.*?)```", Pattern.DOTALL).matcher(page).results();
        List<String> files = blocks.map(block -> block.group(1)).toList();
        assertThat(files).hasSize(1);
        DayReading reading = read(files.getFirst());
        assertThat(reading.problems().stream().map(Problem::code).distinct().toList())
                .as(reading.problems().toString())
                .isSubsetOf(Code.NO_SUCH_PART);
    }

    /** Each key of the format has its row on the page. */
    @Test
    void everyKeyHasItsRow() throws IOException {
        String page = Files.readString(Path.of("..", "docs", "reference", "day-file.md"));
        var keys = new java.util.ArrayList<>(DayKeys.SECTION.byName().keySet());
        keys.addAll(DayKeys.PACK.byName().keySet());
        assertThat(keys).hasSizeGreaterThan(14);
        assertThat(keys).allSatisfy(key -> assertThat(page).contains("\n| `" + key + "` | "));
    }
}

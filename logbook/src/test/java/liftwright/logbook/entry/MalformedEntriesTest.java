package liftwright.logbook.entry;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import liftwright.rig.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is wrong with a file of the logbook, word for word. */
class MalformedEntriesTest {

    private static final String TEST =
            """
            liftwright test: 1
            card: "hop"
            date: 2026-03-14
            people:
              - {name: "Ann", role: "watcher"}
            weather: {air: "9 °C", wind: "2 m/s"}
            hours: 3 h
            media:
              - {file: "a.jpg", digest: "DIGEST"}
            rig: {file: "rig.yaml", digest: "DIGEST", revision: 1}
            tables:
              - file: "samples-1.parquet"
                source: "source/1.csv"
                rejected: "rejected-1.csv"
                rows: 10
                rows rejected: 2
                from: 0 s
                to: 9 s
                clock: {shift: 0 s, how: "own"}
                channels:
                  - {signal: thrust, of: "all", error: "0.5 N"}
                  - {signal: temperature, of: "left.1", error: "1 K"}
            """
                    .replace(
                            "DIGEST",
                            "sha256:00112233445566778899aabbccddeeff00112233445566778899aabbccddeeff");

    private static final String PACK =
            """
            liftwright pack: 1
            pack: "p.1"
            temperature coefficient: 2000 K
            new resistance: 20 mΩ
            retire at: {resistance: 150 %, capacity: 80 %}
            rows:
              - date: 2026-01-01
                resistance: 21 mΩ
                at: 20 °C
                capacity: 16 Ah
                stored days: 3
                charge: 55 %
            """;

    private static final String PART =
            """
            liftwright part: 1
            part: "left.1"
            inspections:
              - date: 2026-01-01
                accepted: yes
                by: "Ann"
                measured:
                  - {what: "mass", found: "0.418 kg", declared: "0.412 kg"}
            """;

    private static final String INCIDENT =
            """
            liftwright incident: 1
            date: 2026-03-14
            what: "it stopped"
            logs: [{test: 2026-03-14-1}]
            clocks: [{name: "film", shift: 2 s, how: "clap"}]
            timeline: [{time: 1 s, clock: "film", seen: "smoke"}]
            causes: [{cause: "a joint", for: ["soot"]}]
            card: "hop"
            """;

    private static final String NOTE =
            """
            liftwright note: 1
            about: 2026-03-14-1
            date: 2026-03-15
            note: "dry"
            """;

    private static List<Problem> problems(String kind, String text) {
        byte[] bytes = text.getBytes(UTF_8);
        return switch (kind) {
            case "test" -> EntryReading.test("f", bytes).problems();
            case "pack" -> EntryReading.pack("f", bytes).problems();
            case "part" -> EntryReading.part("f", bytes).problems();
            case "incident" -> EntryReading.incident("f", bytes).problems();
            default -> EntryReading.note("f", bytes).problems();
        };
    }

    private static String good(String kind) {
        return switch (kind) {
            case "test" -> TEST;
            case "pack" -> PACK;
            case "part" -> PART;
            case "incident" -> INCIDENT;
            default -> NOTE;
        };
    }

    @ParameterizedTest
    @CsvSource({"test", "pack", "part", "incident", "note"})
    void theFilesThatAreSpoiltHereReadAsTheyStand(String kind) {
        assertThat(problems(kind, good(kind))).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "test|liftwright test: 1|liftwright test: 2|1:18 format 2; format 1",
                "test|date: 2026-03-14|date: 14.3.2026|3:7 “14.3.2026”; a day of the calendar as in 2026-03-14",
                "test|date: 2026-03-14|date: 2026-02-30|3:7 “2026-02-30”; a day of the calendar as in 2026-03-14",
                "test|date: 2026-03-14|day: 2026-03-14|1:1 no “date”; date: a day of the calendar as in 2026-03-14",
                "test|card: \"hop\"|card: \"hopp\"|2:7 “hopp”; the name of a card such as “hop” or “pod.left pod”",
                "test|name: \"Ann\"|name: \" \"|5:12 nothing; a name",
                "test|air: \"9 °C\"|air: \"9\"|6:16 “9”: 9 has no unit, and a temperature is needed; a temperature (°C) from −73.15 °C to 66.85 °C",
                "test|wind: \"2 m/s\"|wind: \"2 kg\"|6:30 “2 kg”: 2 kg is a mass, and a speed is needed; a speed (m/s) from 0 m/s to 100 m/s",
                "test|wind: \"2 m/s\"|wind: \"-2 m/s\"|6:30 “-2 m/s”; a speed (m/s) from 0 m/s to 100 m/s",
                "test|hours: 3 h|hours: three|7:8 “three”: this does not start with a number; a time (s) of at least 0 s",
                "test|digest: \"sha256:0|digest: \"sha256:x|9:29 ANY; sha256: and 64 digits from 0 to f",
                "test|file: \"rig.yaml\"|file: \"../rig.yaml\"|10:13 “../rig.yaml”, a path that leads upwards; the name of a file in the folder of the entry",
                "test|file: \"rig.yaml\"|file: \"/rig.yaml\"|10:13 “/rig.yaml”, an absolute path; the name of a file in the folder of the entry",
                "test|source: \"source/1.csv\"|source: \"a\\\\\\\\b\"|13:13 “a\\\\b”, a path with backslashes; the name of a file in the folder of the entry",
                "test|revision: 1|revision: one|10:ANY “one”; a revision, a whole number from 0 to 1000000",
                "test|rows: 10|rows: -1|15:11 -1; how many rows, a whole number from 0 to 1000000000",
                "test|rows rejected: 2|rows rejected: 0|16:20 0 rows set aside with a file of them; “rejected” where rows were set aside, and only there",
                "test|to: 9 s|to: -9 s|18:9 a last row before the first; “from” no later than “to”",
                "test|signal: thrust|signal: trust|21:18 “trust”; ANY",
                "test|error: \"0.5 N\"|error: \"0.5 V\"|21:44 “0.5 V”: ANY; a force (N) of at least 0 N",
                "test|signal: temperature, of: \"left.1\", error: \"1 K\"|signal: thrust, of: \"all\", error: \"1 N\"|22:9 the channel “thrust” again; every channel once",
                "test|clock: {shift: 0 s, how: \"own\"}|clock: own|19:12 “own”; a map with the keys of clock",
                "pack|pack: \"p.1\"|pack: \"\"|2:7 nothing; the id of a pack",
                "pack|temperature coefficient: 2000 K|temperature coefficient: 2000|3:26 “2000”: 2000 has no unit, and a temperature is needed; a temperature difference (K)",
                "pack|resistance: 150 %|resistance: 50 %|5:25 “50 %”; a share (%) from 100 % to 1000 %",
                "pack|'    at: 20 °C\\n'||7:5 “resistance” without “at”; both, or neither",
                "pack|'    charge: 55 %\\n'||7:5 “stored days” without “charge”; both, or neither",
                "pack|stored days: 3|stored days: 3 d|11:18 “3 d”; days, a whole number from 0 to 10000",
                "pack|capacity: 16 Ah|capacity: 0 Ah|10:15 “0 Ah”; a charge (Ah) above 0 Ah",
                "part|accepted: yes|accepted: maybe|5:15 “maybe”; yes or no",
                "part|by: \"Ann\"|by: \"\"|6:9 nothing; a name",
                "part|found: \"0.418 kg\"|found: \"heavy\"|8:31 “heavy”: ANY; an amount with its unit such as 0.418 kg ± 1 g",
                "part|declared: \"0.412 kg\"|declared: \"0.412 m\"|8:53 another kind of quantity than was found; two amounts of one kind",
                "incident|test: 2026-03-14-1|test: yesterday|4:15 “yesterday”; the name of a test such as 2026-03-14-1",
                "incident|clock: \"film\"|clock: \"radio\"|6:31 the clock “radio”; a clock of the list “clocks”",
                "incident|time: 1 s|time: noon|6:19 “noon”: ANY; a time (s)",
                "incident|what: \"it stopped\"|what: [\"it\"]|3:7 a list; a sentence",
                "incident|card: \"hop\"|card: \"none\"|8:7 “none”; the name of a card such as “hop” or “pod.left pod”",
                "note|about: 2026-03-14-1|about: 2026-03-14|2:8 “2026-03-14”; the name of a test such as 2026-03-14-1",
                "note|note: \"dry\"|text: \"dry\"|1:1 no “note”; note: a note",
            })
    void aSlipIsToldAtItsPlaceWordForWord(String kind, String from, String to, String told) {
        String was = from.replace("\\n", "\n");
        assertThat(good(kind)).contains(was);
        String text = good(kind).replace(was, to == null ? "" : to);
        List<String> said =
                problems(kind, text).stream()
                        .map(
                                p ->
                                        p.at().line()
                                                + ":"
                                                + p.at().column()
                                                + " "
                                                + p.found()
                                                + "; "
                                                + p.expected())
                        .toList();
        String pattern = java.util.regex.Pattern.quote(told).replace("ANY", "\\E.*\\Q");
        assertThat(said).as(text).anyMatch(one -> one.matches(pattern));
        assertThat(said.size()).isLessThanOrEqualTo(2);
    }

    @Test
    void whatIsNoFileOfOursIsToldAndNeverThrows() {
        for (String kind : List.of("test", "pack", "part", "incident", "note")) {
            assertThat(problems(kind, "")).hasSize(1);
            assertThat(problems(kind, "# nothing\n")).hasSize(1);
            assertThat(problems(kind, "- a\n- b\n")).isNotEmpty();
            assertThat(problems(kind, "\u0000\u0001")).isNotEmpty();
            assertThat(problems(kind, "a: &x 1\nb: *x\n")).isNotEmpty();
            assertThat(problems(kind, good(kind) + good(kind))).isNotEmpty();
            assertThat(problems(kind, good(kind) + "colour: red\n")).hasSize(1);
        }
    }
}

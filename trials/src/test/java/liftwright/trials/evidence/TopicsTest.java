package liftwright.trials.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import liftwright.rig.Change;
import liftwright.rig.RigPath;
import liftwright.rig.file.RigReading;
import liftwright.trials.Topic;
import liftwright.trials.TrialExamples;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What a builder would say that a change is about, against what the rules say. */
class TopicsTest {

    private static final RigReading MUDLARK = TrialExamples.reading("mudlark");

    /**
     * @param change of Mudlark's file
     * @param about topics that it has to touch
     * @param not topics that it must not touch
     * @param parts what it belongs to; empty where it belongs to no part that a card means
     */
    record Row(Change change, Set<Topic> about, Set<Topic> not, Set<String> parts) {}

    private static Change set(String path, String value) {
        return new Change.Set(RigPath.parse(path), value);
    }

    private static Row row(Change change, Topic about, Set<Topic> not, String... parts) {
        return new Row(change, Set.of(about), not, Set.of(parts));
    }

    static Stream<Row> rows() {
        var all = EnumSet.allOf(Topic.class);
        return Stream.of(
                row(set("site/temperature", "15 °C"), Topic.SITE, but(all, Topic.SITE)),
                row(set("site/elevation", "9 m"), Topic.SITE, but(all, Topic.SITE)),
                row(set("demands/hover", "70 s"), Topic.DEMAND, but(all, Topic.DEMAND)),
                row(set("demands/reserve", "25 %"), Topic.LIMIT, Set.of(Topic.MASS, Topic.FAN)),
                row(
                        new Change.Add(RigPath.parse(""), "limits", "{kill time: 0.4 s}"),
                        Topic.LIMIT,
                        but(all, Topic.LIMIT)),
                row(set("rates/fan", "3e-5 /h"), Topic.LIMIT, but(all, Topic.LIMIT)),
                row(set("wearer/mass", "63 kg ± 0.4 kg"), Topic.MASS, Set.of(Topic.FAN)),
                row(
                        set("wearer/posture/both elbows/flexion", "9°"),
                        Topic.PLACE,
                        Set.of(Topic.MASS, Topic.FAN, Topic.PACK)),
                row(
                        set("mounts/left pod/at/along", "55 %"),
                        Topic.PLACE,
                        but(all, Topic.PLACE),
                        "left pod",
                        "right pod"),
                row(
                        set("fan types/F140/mass", "0.75 kg ± 2 %"),
                        Topic.MASS,
                        but(all, Topic.MASS),
                        "F140"),
                row(
                        set("fan types/F140/at speed/thrust", "93 N ± 3 %"),
                        Topic.FAN,
                        Set.of(Topic.MASS, Topic.PLACE, Topic.PACK),
                        "F140"),
                row(
                        set("fan types/F140/motor/case to air", "5 W/K ± 30 %"),
                        Topic.HEAT,
                        Set.of(Topic.MASS, Topic.PLACE, Topic.FAN),
                        "F140"),
                row(
                        set("fan types/F140/controller/signal loss", "hold"),
                        Topic.CONTROL,
                        Set.of(Topic.MASS, Topic.PLACE),
                        "F140"),
                row(
                        set("cells/C80/capacity", "8.2 Ah ± 2 % each"),
                        Topic.PACK,
                        Set.of(Topic.PLACE, Topic.FAN, Topic.WIRING),
                        "C80"),
                row(
                        set("wiring/feeds/feed/branch/1/length", "600 mm ± 50 mm"),
                        Topic.WIRING,
                        Set.of(Topic.MASS, Topic.PLACE, Topic.FAN)),
                row(
                        set("wiring/contactors/main/opens in", "25 ms"),
                        Topic.KILL,
                        Set.of(Topic.MASS, Topic.PLACE, Topic.FAN),
                        "main"),
                row(set("wiring/kills/remote/delay", "90 ms"), Topic.KILL, but(all, Topic.KILL)),
                row(
                        set("other parts/harness/mass", "2 kg ± 5 %"),
                        Topic.MASS,
                        but(all, Topic.MASS)),
                row(
                        set("control/loss time", "0.3 s"),
                        Topic.KILL,
                        Set.of(Topic.MASS, Topic.PLACE, Topic.FAN)),
                row(set("control/rise", "60 %/s"), Topic.CONTROL, but(all, Topic.CONTROL)),
                row(
                        set("crew/watcher/reaction", "1.4 s"),
                        Topic.REACTION,
                        Set.of(Topic.MASS, Topic.PLACE, Topic.FAN, Topic.KILL)),
                row(set("crew/watcher/distance", "9 m"), Topic.PEOPLE, but(all, Topic.PEOPLE)),
                row(set("restraint/tether/length", "1.7 m"), Topic.HOLD, but(all, Topic.HOLD)),
                row(set("restraint/mats", "200 mm"), Topic.HOLD, but(all, Topic.HOLD)),
                row(
                        new Change.Add(RigPath.of("packs", "p"), "serials", "{p.4: B7}"),
                        Topic.SERIAL,
                        but(all, Topic.SERIAL),
                        "p.4"),
                row(
                        new Change.Add(
                                RigPath.of("fan types", "F140", "controller"), "slew", "300 %/s"),
                        Topic.CONTROL,
                        Set.of(Topic.MASS, Topic.PLACE),
                        "F140"));
    }

    private static Set<Topic> but(EnumSet<Topic> all, Topic one) {
        return EnumSet.complementOf(EnumSet.of(one)).stream()
                .filter(all::contains)
                .collect(Collectors.toSet());
    }

    @ParameterizedTest
    @MethodSource("rows")
    void aChangeIsAboutWhatABuilderWouldSay(Row row) {
        assertThat(MUDLARK.with(List.of(row.change()))).isInstanceOf(RigReading.Edit.Changed.class);
        var after = ((RigReading.Edit.Changed) MUDLARK.with(List.of(row.change()))).reading();
        Inputs was = Inputs.of(MUDLARK.rig().orElseThrow());
        Inputs is = Inputs.of(after.rig().orElseThrow());
        var paths = is.since(was, is).stream().map(Inputs.Difference::path).toList();
        assertThat(paths).isNotEmpty();
        Set<Topic> about =
                paths.stream().flatMap(p -> Topics.of(p).stream()).collect(Collectors.toSet());
        assertThat(about).as(paths.toString()).containsAll(row.about());
        assertThat(about).as(paths.toString()).doesNotContainAnyElementsOf(row.not());
        Set<String> parts =
                paths.stream().flatMap(p -> Topics.parts(p).stream()).collect(Collectors.toSet());
        if (!parts.stream().allMatch(part -> part.startsWith("feed."))) {
            assertThat(parts).as(paths.toString()).isEqualTo(row.parts());
        } else {
            assertThat(row.parts()).isEmpty();
        }
    }
}

package liftwright.answer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import liftwright.answer.Section.Playback;
import liftwright.answer.Section.Shares;
import liftwright.answer.Section.Timeline;
import org.junit.jupiter.api.Test;

class SectionsTest {

    private static final Value NEVER = new Value("time-to-limit", new Value.Figure.Never());

    @Test
    void aTimelineIsATableToo() {
        Section.Table table = SampleHeat.timeline("left.main").table();
        assertThat(table.columns()).hasSize(6);
        assertThat(table.rows())
                .containsExactly(
                        List.of(
                                Value.words("part", "left.main"),
                                Value.words("limit-kind", "insulation"),
                                Value.of("time-to-limit", 143),
                                Value.of("temperature", 361.5),
                                Value.of("temperature", 323.15),
                                Value.words("where", "at the lug")),
                        List.of(
                                Value.words("part", "back.1"),
                                Value.words("limit-kind", "charge"),
                                NEVER,
                                Value.of("charge-left", 0.45),
                                Value.of("charge-left", 0.2),
                                Value.words("where", "")));
    }

    @Test
    void aTimelineHasALength() {
        assertThatThrownBy(() -> new Timeline("t", "T", List.of(), 0))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Timeline("t", "T", List.of(), Double.NaN))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void sharesAreThoseOfTheWhole() {
        Shares shares = SampleHeat.shares("left.main");
        assertThat(shares.table().rows().stream().map(List::getLast))
                .containsExactly(
                        Value.of("share-of-whole", 0.75),
                        Value.of("share-of-whole", 0.25),
                        Value.of("share-of-whole", 1));
    }

    @Test
    void ofNothingThereIsNoShare() {
        var value = Value.of("electrical-power", 0);
        var shares = new Shares("s", "S", value, List.of(new Shares.Share("fans", value)));
        assertThat(shares.share(value).figure()).isInstanceOf(Value.Figure.NotComputed.class);
    }

    @Test
    void whatIsPlayedHasAValueAMoment() {
        var place = new Playback.Place(0, 0, 0);
        var short1 = List.of(new Playback.Track("a", "wire", place, place, 363.15, List.of(300.0)));
        assertThatThrownBy(() -> new Playback("p", "P", List.of(0.0, 1.0), "temperature", short1))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("one value a moment: a");
        assertThatThrownBy(
                        () -> new Playback("p", "P", List.of(1.0, 1.0), "temperature", List.of()))
                .hasMessageContaining("rise");
        assertThatThrownBy(
                        () ->
                                new Playback.Track(
                                        "a", "wire", place, place, 363.15, List.of(Double.NaN)))
                .hasMessageContaining("finite");
    }

    @Test
    void numbersComeBackFromJsonAsTheSame() {
        var json = AnswerJsonTest.read(AnswerJsonTest.sample("left.main")).at("/answer/sections");
        assertThat(json.at("/2/horizon/si").doubleValue()).isEqualTo(180);
        assertThat(json.at("/2/bars/0/at/si").doubleValue()).isEqualTo(143);
        assertThat(json.at("/2/bars/1/at/kind").stringValue()).isEqualTo("never");
        assertThat(json.at("/3/whole/si").doubleValue()).isEqualTo(4000);
        assertThat(json.at("/3/shares/0/share/si").doubleValue()).isEqualTo(0.75);
        assertThat(json.at("/4/y/unit").stringValue()).isEqualTo("K");
        assertThat(json.at("/4/times/1").doubleValue()).isEqualTo(0.5);
        assertThat(json.at("/4/tracks/0/to/2").doubleValue()).isEqualTo(-0.3);
        assertThat(json.at("/4/tracks/0/values/2").doubleValue()).isEqualTo(361.5);
        assertThat(json.at("/4/tracks/0/limit").doubleValue()).isEqualTo(323.15);
    }
}

package liftwright.plant.fault;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class EffectTest {

    @Test
    void equalHoweverPutTogether() {
        Effect one = Effect.dead(3, 1, 3).and(Effect.lost(2)).and(Effect.exchanged(5, 4));
        Effect other =
                Effect.exchanged(4, 5)
                        .and(Effect.lost(2, 2))
                        .and(Effect.dead(1).and(Effect.dead(3)));
        assertThat(one).isEqualTo(other).hasSameHashCodeAs(other);
        assertThat(one.deadFans()).containsExactly(1, 3);
        assertThat(one.and(one)).isEqualTo(one);
        assertThat(one.and(Effect.NONE)).isEqualTo(one);
        assertThat(one).isNotEqualTo(Effect.dead(1, 3));
    }

    @Test
    void aDeadFanIsNothingElse() {
        Effect both =
                Effect.dead(2)
                        .and(Effect.stuck(2, 1))
                        .and(Effect.reversed(2))
                        .and(Effect.noMore(2, 0.5));
        assertThat(both).isEqualTo(Effect.dead(2));
    }

    @Test
    void ofTwoDutiesTheWorseStays() {
        Effect stuck = Effect.stuck(1, 0.2).and(Effect.stuck(1, 1)).and(Effect.noMore(1, 0.4));
        assertThat(stuck).isEqualTo(Effect.stuck(1, 1));
        assertThat(Effect.noMore(1, 0.4).and(Effect.noMore(1, 0.7)).mostDuty())
                .containsEntry(1, 0.4);
    }

    @Test
    void nothingIsNothing() {
        assertThat(Effect.NONE.isNone()).isTrue();
        assertThat(Effect.dead().isNone()).isTrue();
        assertThat(Effect.exchanged(3, 3).isNone()).isTrue();
        assertThat(Effect.dead(0).isNone()).isFalse();
    }

    /** What is handed out is the caller's to change. */
    @Test
    void staysAsItIs() {
        Effect effect = Effect.dead(1, 2);
        effect.deadFans()[0] = 7;
        assertThat(effect.deadFans()).containsExactly(1, 2);
    }

    @Test
    void aDutyBeyondFullIsRefused() {
        assertThatThrownBy(() -> Effect.stuck(0, 1.1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Effect.noMore(0, Double.NaN))
                .isInstanceOf(IllegalArgumentException.class);
    }
}

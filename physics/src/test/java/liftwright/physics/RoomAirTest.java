package liftwright.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Air of 1.2 kg/m³ and 1006 J/(kg·K), worked by hand. */
class RoomAirTest {

    @Test
    void aRoomTakesHeat() {
        // 100 m³ are 120 kg; 1.2072 MJ warm them by 10 K.
        assertThat(RoomAir.riseK(1.2072e6, 100, 1.2, 293.15)).isCloseTo(10, within(0.03));
        assertThat(RoomAir.riseK(2.4144e6, 100, 1.2, 293.15)).isCloseTo(20, within(0.06));
    }

    @Test
    void aRoomIsMovedThrough() {
        assertThat(RoomAir.turnoverS(300, 15)).isCloseTo(20, within(1e-12));
    }
}

package rinsebell.app.door;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class CrowdTest {
    private static final CrowdLimits LIMITS = new CrowdLimits(4, 5, 3, 10, 2);

    private long nanos = 1;
    private final Crowd crowd = new Crowd(LIMITS, () -> nanos);

    private long paid(String from, int times, int price) {
        return IntStream.range(0, times).filter(i -> crowd.pays(from, price)).count();
    }

    @Test
    void oneAddressGetsItsBurstAndThenSoMuchASecond() {
        assertThat(paid("a", 30, 1)).isEqualTo(10);
        nanos += Duration.ofSeconds(3).toNanos();
        assertThat(paid("a", 30, 1)).isEqualTo(6);
        nanos += Duration.ofHours(1).toNanos();
        assertThat(paid("a", 30, 4)).isEqualTo(2);
    }

    @Test
    void whatOneAddressSpendsNoOtherMisses() {
        paid("a", 30, 1);
        assertThat(paid("b", 30, 1)).isEqualTo(10);
    }

    /** More addresses than are remembered: the one that asks all the time is not forgotten for others that came once. */
    @Test
    void manyAddressesForgiveNobody() {
        paid("a", 30, 1);
        for (int i = 0; i < 20_000; i++) {
            assertThat(crowd.pays("one of many " + i, 1)).isTrue();
            assertThat(crowd.pays("a", 1)).as("after %d others", i).isFalse();
        }
    }

    @Test
    void whoeverTurnsOutToBeKnownGetsItBack() {
        paid("a", 10, 1);
        crowd.refund("a", 4);
        assertThat(paid("a", 30, 1)).isEqualTo(4);
        crowd.refund("b", 4);
        assertThat(paid("b", 30, 1)).as("never more than the burst").isEqualTo(10);
    }

    @Test
    void roomIsBoundedForOneAddressAndForAll() {
        assertThat(IntStream.range(0, 5).filter(i -> crowd.enters("a")).count()).isEqualTo(3);
        assertThat(IntStream.range(0, 5).filter(i -> crowd.enters("b")).count()).isEqualTo(2);
        assertThat(crowd.enters("c")).isFalse();
        crowd.leaves("a");
        assertThat(crowd.enters("c")).isTrue();
        crowd.leaves("b");
        assertThat(crowd.enters("b")).isTrue();
        assertThat(crowd.enters("b")).isFalse();
    }
}

package rinsebell.floor.report;

import static org.assertj.core.api.Assertions.assertThat;
import static rinsebell.floor.testing.Saturday.at;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rinsebell.floor.bell.BellKey;
import rinsebell.floor.bell.BellKind;

/** Sounded, against the latest of: due, recorded what made it due then, the device started or woke. */
class BellLatenessTest {
    private static final BellKey RINSE = new BellKey(BellKind.RINSE, 7, 9);
    private static final Turned TURN = new Turned(RINSE, at("10:00"));

    private static Sounded sounded(Turned turn, String at, String awake) {
        return new Sounded(turn, "tablet", "chair-3", at(at), at(awake));
    }

    /** Known is when the turn was due, or when the fact that moved it there was recorded, whichever is later. */
    @ParameterizedTest
    @CsvSource({
        "10:00,    09:00,    10:00:00.400, 400",
        "10:00,    10:00,    10:00:00.400, 400",
        "10:00,    10:02,    10:02:01,     1000",
        "10:05,    09:00,    10:05:00.700, 700",
        "10:05,    10:02,    10:05:02,     2000",
        "10:05,    10:06,    10:06:00.500, 500",
        "10:00,    09:00,    09:59:59.900, 0",
    })
    void againstWhatTheDeviceCouldKnow(String known, String awake, String sounded, long lateMillis) {
        var late = BellLateness.of(List.of(sounded(TURN, sounded, awake)), Map.of(TURN, at(known)));
        assertThat(late).extracting(BellLateness::late).containsExactly(Duration.ofMillis(lateMillis));
    }

    @Test
    void whatNeverRangIsNotBelieved() {
        var other = new Turned(RINSE, at("10:01"));
        assertThat(BellLateness.of(List.of(sounded(other, "10:02", "09:00")), Map.of(TURN, at("10:00"))))
                .isEmpty();
    }
}

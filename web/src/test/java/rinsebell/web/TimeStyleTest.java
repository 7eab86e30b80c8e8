package rinsebell.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.ZoneId;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class TimeStyleTest {
    /** The browser's clock is checked with the same rows. */
    @ParameterizedTest
    @CsvFileSource(resources = "/rinsebell/web/left.csv", numLinesToSkip = 1)
    void countsDownToAndPast(long millisLeft, String text) {
        var now = Instant.parse("2026-11-21T14:22:48Z");
        assertThat(new TimeStyle(ZoneId.of("UTC"), false).left(now.plusMillis(millisLeft), now))
                .isEqualTo(text);
    }

    /** Zone rules as in tz's europe and northamerica files (eggert/tz at b9bc7a8): the clocks change at these instants. */
    @ParameterizedTest
    @CsvSource({
        "Europe/Berlin,    2026-03-29T00:59:59Z, 01:59",
        "Europe/Berlin,    2026-03-29T01:00:00Z, 03:00",
        "Europe/London,    2026-10-25T00:59:59Z, 01:59",
        "Europe/London,    2026-10-25T01:00:00Z, 01:00",
        "America/New_York, 2026-03-08T06:59:59Z, 01:59",
        "America/New_York, 2026-03-08T07:00:00Z, 03:00",
        "Asia/Kathmandu,   2026-11-21T12:00:00Z, 17:45",
    })
    void writesTheSalonsOwnClock(ZoneId zone, Instant instant, String text) {
        assertThat(new TimeStyle(zone, false).clock(instant)).isEqualTo(text);
    }

    @Test
    void writesTwelveHoursWherePeopleReadThem() {
        var style = new TimeStyle(ZoneId.of("UTC"), true);
        assertThat(style.clock(Instant.parse("2026-11-21T14:22:48Z"))).isEqualTo("2:22 pm");
        assertThat(style.clock(Instant.parse("2026-11-21T00:05:00Z"))).isEqualTo("12:05 am");
    }
}

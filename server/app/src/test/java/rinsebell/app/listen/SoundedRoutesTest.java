package rinsebell.app.listen;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import rinsebell.app.http.ServerUnderTest;
import rinsebell.floor.bell.BellKey;
import rinsebell.floor.bell.BellKind;
import rinsebell.floor.report.Sounded;
import rinsebell.floor.report.Turned;

/** Anybody may post what a device sounded; what can't be read or can't be true goes no further. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class SoundedRoutesTest {
    private static final Instant NOW = Instant.parse("2026-05-16T08:00:00Z");
    private static final String DEVICE = "0123456789abcdef0123456789abcdef";
    private static final String GOOD =
            "bell-strand_check-73--88 " + millis(-2_000) + " chair-3 " + millis(-1_500) + " " + millis(-60_000);

    private final List<Sounded> taken = new CopyOnWriteArrayList<>();
    private final ServerUnderTest server = new ServerUnderTest(List.of(new SoundedRoutes(taken::add, () -> NOW)));

    @AfterAll
    void close() {
        server.close();
    }

    @BeforeEach
    void forget() {
        taken.clear();
    }

    private static long millis(long fromNow) {
        return NOW.toEpochMilli() + fromNow;
    }

    private int posts(Stream<String> lines) {
        var request = given(server.request())
                .contentType("application/x-www-form-urlencoded; charset=utf-8")
                .header("Origin", server.url(""))
                .cookie("browser", DEVICE);
        lines.forEach(line -> request.formParam("sounded", line));
        return request.post("/sounded").statusCode();
    }

    @Test
    void aLineIsReadWhole() {
        assertThat(posts(Stream.of(GOOD))).isEqualTo(204);
        var turn = new Turned(new BellKey(BellKind.STRAND_CHECK, 73, -88), NOW.minusSeconds(2));
        assertThat(taken)
                .containsExactly(new Sounded(turn, DEVICE, "chair-3", NOW.minusMillis(1_500), NOW.minusSeconds(60)));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "x",
                "bell-nothing-1-1 1 all 1 1",
                "bell-rinse-1-1 1 nobody 1 1",
                "bell-rinse-1-1 1 all 1",
                "bell-rinse-x-1 1 all 1 1",
                "bell-rinse-1-1 9999999999999999 all 1 1",
                "bell-rinse-1-1 1 all 1 1 1",
                "bell-rinse-9999999999999999999-1 1 all 1 1",
            })
    void whatCannotBeReadIsRefusedWhole(String line) {
        assertThat(posts(Stream.of(GOOD, line))).isEqualTo(400);
        assertThat(taken).isEmpty();
    }

    @Test
    void fiftyAtOnceAreTheMost() {
        assertThat(posts(Stream.generate(() -> GOOD).limit(50))).isEqualTo(204);
        assertThat(taken).hasSize(50);
        assertThat(posts(Stream.generate(() -> GOOD).limit(51))).isEqualTo(400);
        assertThat(posts(Stream.empty())).isEqualTo(400);
        assertThat(taken).hasSize(50);
    }

    /** A day old is too old; ten seconds ahead may be a clock that is not measured yet. */
    @ParameterizedTest
    @CsvSource({
        "-86400000, 0",
        "-86399999, 1",
        "0, 1",
        "10000, 1",
        "10001, 0",
    })
    void onlyWhatCanBeTrueIsTaken(long at, int takes) {
        var line = "bell-rinse-1-1 " + millis(at) + " all " + millis(at) + " " + millis(at);
        assertThat(posts(Stream.of(line))).isEqualTo(204);
        assertThat(taken).hasSize(takes);
    }

    /** Before its turn, or before the device was awake, nothing sounds. */
    @ParameterizedTest
    @CsvSource({
        "10000, 0, 1",
        "10001, 0, 0",
        "0, 0, 1",
        "0, 1, 0",
    })
    void nothingSoundsBeforeItCan(long turn, long awake, int takes) {
        var at = -Duration.ofMinutes(1).toMillis();
        var line = "bell-rinse-1-1 " + millis(at + turn) + " all " + millis(at) + " " + millis(at + awake);
        assertThat(posts(Stream.of(line))).isEqualTo(204);
        assertThat(taken).hasSize(takes);
    }
}

package rinsebell.demo.browser;

import static java.time.Duration.ofHours;
import static java.time.Duration.ofMillis;
import static java.time.Duration.ofMinutes;
import static java.time.Duration.ofSeconds;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.awaitility.Awaitility.await;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rinsebell.demo.browser.BellBoard.Beat;
import rinsebell.floor.Ledger;

/** The real program while somebody sets the clock of its machine, or stops it, and bell after bell falls due. */
@Tag("measures")
class ClockStepsIT {
    private static final int HEADS = 80;
    private static final String SET = ">The computer’s clock was set. Check the time.</a>";
    private static final String BEHIND = ">The computer started without knowing the time. Check the time.</a>";
    private static final DateTimeFormatter CLOCK =
            DateTimeFormatter.ofPattern("HH:mm").withZone(ZoneOffset.UTC);

    /** Besides what two round trips say themselves. */
    private static final double UNSURE_MILLIS = 50;

    private static final double LATEST_BEAT_MILLIS = 1_000;

    @TempDir
    private Path folder = Path.of("");

    @Test
    void noBellIsLostOrDoubledOrLateWhenTheClockIsSet() throws Exception {
        var wall = new WallClock(folder);
        try (var demo = RunningDemo.under(wall.environment(), busy());
                var board = BellBoard.at(demo.url())) {
            var asking = new Asking(demo.url());
            var expected = ExpectedRings.by(asking);
            assertThat(asking.page("/")).doesNotContain(SET);
            for (var ahead :
                    List.of(ofSeconds(1), ofSeconds(-1), ofMinutes(1), ofMinutes(-1), ofHours(-2), ofHours(2))) {
                wall.isAhead(ahead);
                if (ahead.abs().compareTo(ofSeconds(1)) > 0) {
                    assertIsDoubted(asking, board, ahead);
                }
                someRing(board);
            }
            assertBeatsCountOn(board, expected.time());
            assertIsConfirmed(asking, board, ofHours(2));
            someRing(board);
            wall.isAhead(Duration.ZERO);
            assertIsDoubted(asking, board, ofHours(-2));
            assertIsConfirmed(asking, board, ofHours(-2));
            someRing(board);
            expected.assertCame(board.listed());
        }
    }

    /** What falls due while the machine, as far as a process can tell, stands still. */
    @Test
    void whatFellDueMeanwhileRingsAtTheWake() throws Exception {
        try (var demo = RunningDemo.in(busy());
                var board = BellBoard.at(demo.url())) {
            var asking = new Asking(demo.url());
            var expected = ExpectedRings.by(asking);
            someRing(board);
            // It stops somewhere in between: to send a signal takes a while.
            var stopping = SalonTime.steadyMillis();
            demo.signal("STOP");
            var stopped = SalonTime.steadyMillis();
            await().pollInterval(ofMillis(50)).until(() -> SalonTime.steadyMillis() - stopped > 3_000);
            assertThat(board.listed().stream().filter(list -> list.millis() > stopped + 500))
                    .as("it stands still")
                    .isEmpty();
            demo.signal("CONT");
            expected.nobodyRangBetween(stopping, SalonTime.steadyMillis());
            // What fell due meanwhile need not come in one list.
            ring(board, ExpectedRings.FEWEST + 1);
            expected.assertCame(board.listed());
            assertBeatsCountOn(board, expected.time());
            assertThat(board.clock()).isEqualTo("agrees");
        }
    }

    /** The machine's clock is a day behind when it starts, as one without a battery is after a power cut. */
    @Test
    void everyScreenSaysThatTheMachineStartedWithoutTheTime() throws Exception {
        var wall = new WallClock(folder);
        try (var demo = RunningDemo.under(wall.environment(), busy())) {
            demo.kill();
            ofAnotherStart(folder.resolve("data").resolve("alive"));
            wall.isAhead(ofHours(-24));
            demo.startAgain();
            var asking = new Asking(demo.url());
            var bells = asking.page("/bells");
            assertThat(screens(bells))
                    .hasSizeGreaterThan(8)
                    .allSatisfy(path -> assertThat(asking.page(path)).as(path).contains(BEHIND));
            assertThat(asking.page("/day/clock")).contains("behind what is already recorded");
            assertThat(BellTimes.on(bells)).as("no bell is lost").hasSizeGreaterThanOrEqualTo(HEADS);
        }
    }

    private Path busy() throws IOException, Ledger.NotSaved {
        return BusySalon.in(folder.resolve("data"), HEADS, ofSeconds(2), ofMillis(600));
    }

    private static void ofAnotherStart(Path mark) throws IOException {
        var lines = Files.readAllLines(mark);
        lines.set(0, "another start of the machine");
        Files.write(mark, lines);
    }

    private static Stream<String> screens(String bells) {
        var head = bells.substring(bells.indexOf("\"/visits/") + 1);
        return Stream.of(
                "/",
                "/basins",
                "/desk",
                "/bells",
                "/pocket",
                "/device",
                "/bowls",
                "/day",
                "/lead",
                "/chairs/1",
                head.substring(0, head.indexOf('"')));
    }

    private static void someRing(BellBoard board) {
        ring(board, 1);
    }

    private static void ring(BellBoard board, int more) {
        var before = board.ringing();
        await().pollInterval(ofMillis(50)).until(() -> board.ringing() >= before + more);
    }

    private static void assertIsDoubted(Asking asking, BellBoard board, Duration ahead) {
        await("libfaketime sets the clock of the server; is it there?")
                .pollInterval(ofMillis(50))
                .until(() -> board.clock().equals("set"));
        assertThat(asking.page("/")).contains(SET);
        var before = SalonTime.of(asking);
        var page = asking.page("/day/clock");
        assertThat(List.of(told(before, ahead), told(SalonTime.of(asking), ahead)))
                .as("the minute can turn in between")
                .anyMatch(page::contains);
    }

    private static String told(SalonTime time, Duration ahead) {
        var salon = Instant.ofEpochMilli((long) time.at(SalonTime.steadyMillis()));
        return "Rinsebell says " + CLOCK.format(salon) + ", the computer " + CLOCK.format(salon.plus(ahead)) + ".";
    }

    /** Every bell moves as the clock does, so none rings sooner or later for it. */
    private static void assertIsConfirmed(Asking asking, BellBoard board, Duration step) {
        var timeBefore = SalonTime.of(asking);
        var before = BellTimes.on(asking.page("/bells"));
        asking.press("/api/day/clock", UUID.randomUUID().toString(), "{}");
        var after = BellTimes.on(asking.page("/bells"));
        var moved = SalonTime.of(asking).ahead() - timeBefore.ahead();
        assertThat(moved).isCloseTo(step.toMillis(), within(UNSURE_MILLIS + 1_000));
        assertThat(after.keySet()).isEqualTo(before.keySet());
        assertThat(after)
                .allSatisfy((bell, at) -> assertThat((double) at - before.getOrDefault(bell, 0L))
                        .as(bell)
                        .isCloseTo(moved, within(UNSURE_MILLIS)));
        await().pollInterval(ofMillis(50)).until(() -> board.clock().equals("agrees"));
        assertThat(asking.page("/")).doesNotContain(SET);
    }

    /** By the clock that nobody sets. */
    private static void assertBeatsCountOn(BellBoard board, SalonTime time) {
        assertThat(board.beats().stream().map(beat -> late(beat, time)))
                .allSatisfy(late -> assertThat(late).isBetween(-UNSURE_MILLIS - time.unsure(), LATEST_BEAT_MILLIS));
    }

    private static double late(Beat beat, SalonTime time) {
        return time.at(beat.millis()) - beat.now();
    }
}

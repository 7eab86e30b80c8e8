package rinsebell.app.api;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;
import static org.hamcrest.Matchers.allOf;
import static org.hamcrest.Matchers.endsWith;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.greaterThan;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.lessThan;
import static org.hamcrest.Matchers.startsWith;

import io.restassured.response.ValidatableResponse;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rinsebell.app.RunningSalon;
import rinsebell.app.time.MachineTime;
import rinsebell.app.time.SalonClock;

/**
 * Local times in the nights in which the clocks are changed, over HTTP.
 *
 * <p>Source: IANA time zone database, Europe/Berlin: in 2027 summer time begins on 28 March at 01:00 UTC and ends on 31
 * October at 01:00 UTC.
 */
class ClockChangeTest {

    private static final SalonClock WALL = SalonClock.startingAtTheWall(new MachineTime(), 1);

    @TempDir
    private Path folder = Path.of("");

    /**
     * From 02:00 the clocks go on to 03:00: 02:30 was never shown that day, but the day before, and that is longer ago
     * than the twelve hours in which something can be told.
     */
    @Test
    void aTimeThatWasLeftOutIsTheDayBefores() throws IOException {
        try (RunningSalon salon = salonAt("2027-03-28T01:10:00Z")) {
            assertRefused(salon, "02:30", "TOO_EARLY");
            assertArrived(salon, "01:59", "2027-03-28T00:59:00Z");
            assertArrived(salon, "03:05", "2027-03-28T01:05:00Z");
            assertRefused(salon, "2027-03-28T02:30:00+01:00", "IN_THE_FUTURE");
        }
    }

    /** From 03:00 the clocks go back to 02:00: of two 02:30 the later one that has been. */
    @Test
    void aTimeThatWasShownTwiceIsTheLaterOne() throws IOException {
        try (RunningSalon salon = salonAt("2027-10-31T01:15:00Z")) {
            assertArrived(salon, "02:30", "2027-10-31T00:30:00Z");
            assertArrived(salon, "02:10", "2027-10-31T01:10:00Z");
            assertArrived(salon, "2027-10-31T02:10:00+02:00", "2027-10-31T00:10:00Z");
        }
    }

    /** The same salon knows that its machine shows another time, until somebody confirms that. */
    @Test
    void aClockThatWasSetIsConfirmedOnce() throws IOException {
        try (RunningSalon salon = salonAt("2027-10-31T01:15:00Z")) {
            Program program = new Program(salon);
            assertArrived(salon, "02:10", "2027-10-31T01:10:00Z");
            program.read("/api/floor").body("clock", equalTo("behind"));
            String id = Program.freshId();
            List<Integer> first = confirm(program, id).statusCode(201).extract().path("facts");
            program.read("/api/floor").body("clock", equalTo("agrees")).body("now", startsWith("202"));
            confirm(program, id).statusCode(201).body("facts", equalTo(first));
            confirm(program, Program.freshId()).statusCode(409).body("code", equalTo("clock-agrees"));
        }
    }

    /**
     * The machine started, so its boot id says, before the mark of another start was made: time passed uncounted. What
     * was recorded before stands where it was.
     */
    @Test
    void afterAPowerCutTheTimeThatWasNotCountedHasPassed() throws IOException {
        try (RunningSalon salon = salonAt(WALL.now().minusSeconds(60).toString())) {
            Program program = new Program(salon);
            long visit = program.press("/api/visits", welcome(""));
            String arrived = program.read("/api/visits/" + visit).extract().path("arrivedAt");
            program.read("/api/floor").body("clock", equalTo("behind"));
            assertThat(page(salon, "/day/clock")).contains("behind what is already recorded");
            assertThat(page(salon, "/basins")).contains("started without knowing the time");
            confirm(program, Program.freshId()).statusCode(201);
            program.read("/api/log").body("findAll { it.kind == 'time-missed' }", hasSize(1));
            program.read("/api/log").body("findAll { it.kind == 'clock-shifted' }", hasSize(0));
            program.read("/api/visits/" + visit).body("arrivedAt", equalTo(arrived));
            program.read("/api/floor").body("clock", equalTo("agrees"));
            assertThat(page(salon, "/basins")).doesNotContain(">The computer");
            confirm(program, Program.freshId()).statusCode(409).body("code", equalTo("clock-agrees"));
        }
    }

    private static String page(RunningSalon salon, String path) {
        return given(salon.request())
                .header("Accept", "text/html")
                .get(path)
                .then()
                .statusCode(200)
                .extract()
                .asString();
    }

    /** A mark of the clock before, which is written every few seconds, would bring that clock back. */
    @Test
    void aClockThatWasConfirmedIsTheClockOfTheNextStartWhenThisOneIsKilledAtOnce() throws IOException {
        try (RunningSalon salon = salonAt("2027-10-31T01:15:00Z")) {
            assertArrived(salon, "02:10", "2027-10-31T01:10:00Z");
            confirm(new Program(salon), Program.freshId()).statusCode(201);
            assertThat(Files.readAllLines(folder.resolve("alive")).get(2)).isLessThan("2027-10-31T01:15:00Z");
        }
    }

    /**
     * The press that put the clock right is on disk, and the server dies before its mark is: facts and clock must have
     * moved alike at the next start, and nobody is asked again.
     */
    @Test
    void aClockThatWasConfirmedIsSoEvenWhenTheMarkWasNeverWritten() throws IOException {
        long visit;
        try (RunningSalon salon = salonAt(WALL.now().plus(Duration.ofHours(2)).toString())) {
            Program program = new Program(salon);
            visit = program.press("/api/visits", welcome(""));
            await().until(() -> Files.readAllLines(folder.resolve("alive")).contains("confirmed 0"));
            Path inTheWay = Files.createDirectory(folder.resolve("alive.next"));
            confirm(program, Program.freshId()).statusCode(201);
            salon.stop();
            Files.delete(inTheWay);
            assertThat(Files.readAllLines(folder.resolve("alive")).get(2)).isGreaterThan(inMinutes(100));
            salon.start();
            program.read("/api/floor")
                    .body("clock", equalTo("agrees"))
                    .body("now", allOf(greaterThan(inMinutes(-1)), lessThan(inMinutes(1))));
            program.read("/api/visits/" + visit)
                    .body("arrivedAt", allOf(greaterThan(inMinutes(-1)), lessThan(inMinutes(1))));
            program.read("/api/log").body("findAll { it.kind == 'clock-shifted' }", hasSize(1));
        }
    }

    private static String inMinutes(long minutes) {
        return WALL.wall().plus(Duration.ofMinutes(minutes)).toString();
    }

    /** What tells of the time then is the floor itself. */
    @Test
    void aMarkThatCannotBeTrueIsPassedOver() throws IOException {
        long visit;
        try (RunningSalon salon = new RunningSalon(folder)) {
            Program program = new Program(salon);
            program.press("/api/salon", ApiDayTest.house());
            visit = program.press("/api/visits", Map.of("label", "M. A.", "place", "bench"));
        }
        for (String instant : List.of("+1000000000-12-31T23:59:59Z", "2199-01-01T00:00:00Z", "2099-01-01T00:00:00Z")) {
            Files.writeString(folder.resolve("alive"), "another start of the machine\n0\n" + instant + "\n");
            try (RunningSalon salon = new RunningSalon(folder)) {
                Program program = new Program(salon);
                program.read("/api/visits/" + visit).body("label", equalTo("M. A."));
                program.read("/api/floor").body("now", startsWith("202")).body("clock", equalTo("agrees"));
            }
        }
    }

    /** By a page: back to the floor, whether it was confirmed just now, before, or there is nothing to confirm. */
    @Test
    void aPageConfirmsAClockToo() throws IOException {
        try (RunningSalon salon = salonAt("2027-10-31T01:15:00Z")) {
            Program program = new Program(salon);
            String press = Program.freshId();
            for (String id : List.of(press, press, Program.freshId(), "")) {
                given(salon.request())
                        .contentType("application/x-www-form-urlencoded")
                        .header("Origin", salon.url())
                        .redirects()
                        .follow(false)
                        .body("press=" + id)
                        .post("/day/clock")
                        .then()
                        .statusCode(303)
                        .header("Location", endsWith("/"));
                program.read("/api/floor").body("clock", equalTo("agrees"));
            }
            program.read("/api/log").body("findAll { it.kind == 'clock-shifted' }", hasSize(1));
        }
    }

    private static ValidatableResponse confirm(Program program, String id) {
        return program.ask()
                .header("Idempotency-Key", id)
                .post("/api/day/clock")
                .then();
    }

    /** A salon whose last server stopped at that instant, on a machine whose clock shows an earlier one. */
    private RunningSalon salonAt(String instant) throws IOException {
        Files.writeString(folder.resolve("alive"), "another start of the machine\n0\n" + instant + "\n");
        RunningSalon salon = new RunningSalon(folder);
        new Program(salon).press("/api/salon", ApiDayTest.house());
        return salon;
    }

    private static void assertArrived(RunningSalon salon, String at, String expected) {
        Program program = new Program(salon);
        long visit = program.press("/api/visits", welcome(at));
        program.read("/api/visits/" + visit).body("arrivedAt", equalTo(expected));
    }

    private static void assertRefused(RunningSalon salon, String at, String code) {
        new Program(salon).send("/api/visits", welcome(at)).statusCode(409).body("code", equalTo(code));
    }

    private static Map<String, String> welcome(String at) {
        return at.isEmpty()
                ? Map.of("label", "M. A.", "place", "bench")
                : Map.of("label", "M. A.", "place", "bench", "at", at);
    }
}

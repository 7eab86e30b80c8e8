package rinsebell.app.time;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class AliveMarkerTest {

    private static final ClockMark MARK =
            new ClockMark("3f6c0b1e-boot", 70_123, Instant.parse("2026-05-16T08:00:00.123Z"), false, 0);

    private static final ClockProof NOTHING = proof(null, MARK.salon());

    @TempDir
    private Path folder = Path.of("");

    @Test
    void theLastMarkIsRead() {
        AliveMarker marker = new AliveMarker(folder);
        assertThat(marker.last(NOTHING)).isEmpty();
        marker.write(MARK);
        marker.write(new ClockMark("3f6c0b1e-boot", 75_123, MARK.salon().plusSeconds(5), false, 0));
        assertThat(new AliveMarker(folder).last(NOTHING))
                .contains(new ClockMark("3f6c0b1e-boot", 75_123, MARK.salon().plusSeconds(5), false, 0));
    }

    @Test
    void thatTheMachineStartedBehindIsKept() throws IOException {
        ClockMark behind = new ClockMark("3f6c0b1e-boot", 70_123, MARK.salon(), true, 0);
        AliveMarker marker = new AliveMarker(folder);
        marker.write(behind);
        assertThat(new AliveMarker(folder).last(NOTHING)).contains(behind);
        marker.write(MARK);
        assertThat(Files.readAllLines(folder.resolve("alive"))).hasSize(4);
    }

    @Test
    void aSystemThatTellsNothingLeavesABlankId() {
        AliveMarker marker = new AliveMarker(folder);
        marker.write(new ClockMark("", 0, MARK.salon(), false, 0));
        assertThat(marker.last(NOTHING)).contains(new ClockMark("", 0, MARK.salon(), false, 0));
    }

    /** A mark is replaced whole: what a killed server had begun to write beside it is never read. */
    @Test
    void halfAMarkIsNoMark() throws IOException {
        AliveMarker marker = new AliveMarker(folder);
        marker.write(MARK);
        Files.writeString(folder.resolve("alive.next"), "3f6c0b1e-bo");
        assertThat(marker.last(NOTHING)).contains(MARK);
        marker.write(MARK);
        try (var files = Files.list(folder)) {
            assertThat(files).containsExactly(folder.resolve("alive"));
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "boot",
                "boot\n70123\n",
                "boot\nx\n2026-05-16T08:00:00Z\n",
                "boot\n70123\nyesterday\n",
                "boot\n70123\n2026-05-16T08:00:00Z\nmore\n",
                "boot\n70123\n2026-05-16T08:00:00Z\nconfirmed\n",
                "boot\n70123\n2026-05-16T08:00:00Z\nconfirmed x\n",
                "boot\n99999999999999999999\n2026-05-16T08:00:00Z\n",
                "boot\n70123\n+1000000000-12-31T23:59:59Z\n",
                "boot\n70123\n-1000000000-01-01T00:00:00Z\n",
                "boot\n70123\n2100-01-01T00:00:00Z\n",
                "boot\n70123\n2019-12-31T23:59:59Z\n"
            })
    void whatIsNoMarkIsPassedOver(String text) throws IOException {
        Files.writeString(folder.resolve("alive"), text);
        assertThat(new AliveMarker(folder).last(NOTHING)).isEmpty();
    }

    @Test
    void whatCannotBeTrueIsSetAside() throws IOException {
        Files.writeString(folder.resolve("alive"), "yesterday");
        assertThat(new AliveMarker(folder).last(NOTHING)).isEmpty();
        assertThat(folder.resolve("alive")).doesNotExist();
        assertThat(folder.resolve("alive.set-aside")).hasContent("yesterday");
    }

    /** The newest fact is an hour older than the mark, and the machine's clock a day. */
    @ParameterizedTest
    @CsvSource({"P31DT-1H,true", "P31DT-1H0.001S,false"})
    void aMarkLongAfterEverythingElseIsNotBelieved(Duration after, boolean isBelieved) {
        Instant newest = MARK.salon();
        ClockMark late = new ClockMark("boot", 0, newest.plus(after).plusSeconds(3600), false, 0);
        AliveMarker marker = new AliveMarker(folder);
        marker.write(late);
        assertThat(marker.last(proof(newest, newest.minusSeconds(86_400))))
                .contains(isBelieved ? late : new ClockMark("", 0, newest, false, 0));
    }

    @Test
    void aMarkThatTheMachinesClockBearsOutNeedsNoFacts() {
        ClockMark late = new ClockMark("boot", 0, MARK.salon().plus(Duration.ofDays(400)), false, 0);
        AliveMarker marker = new AliveMarker(folder);
        marker.write(late);
        assertThat(marker.last(proof(MARK.salon(), late.salon()))).contains(late);
    }

    /** A mark is written every few seconds, so facts are not much newer but by a clock that was put right. */
    @ParameterizedTest
    @CsvSource({"PT60S,false", "PT60.001S,true"})
    void factsAfterTheMarkDecide(Duration after, boolean decide) {
        AliveMarker marker = new AliveMarker(folder);
        marker.write(MARK);
        Instant newest = MARK.salon().plus(after);
        assertThat(marker.last(proof(newest, MARK.salon())))
                .contains(decide ? new ClockMark("", 0, newest, false, 0) : MARK);
    }

    /**
     * The clock was put right by facts 7, an hour forward, and 9, half an hour back; a server that died before it wrote
     * its next mark has left one that follows neither, or the first alone.
     */
    @ParameterizedTest
    @CsvSource({
        "confirmed 0, PT30M",
        "confirmed 6, PT30M",
        "confirmed 7, PT-30M",
        "confirmed 8, PT-30M",
        "confirmed 9, PT0S",
        "confirmed 12, PT0S",
        "'', PT0S"
    })
    void whatPutTheClockRightAfterTheMarkIsMadeUpFor(String followed, Duration by) throws IOException {
        String line = followed.isEmpty() ? "" : followed + "\n";
        Files.writeString(folder.resolve("alive"), "boot\n70123\n" + MARK.salon() + "\n" + line);
        Instant now = MARK.salon().plus(by);
        ClockProof proof =
                new ClockProof(now, new TreeMap<>(Map.of(7L, Duration.ofHours(1), 9L, Duration.ofMinutes(-30))), now);
        assertThat(new AliveMarker(folder).last(proof))
                .contains(new ClockMark("boot", 70_123, now, false, followed.equals("confirmed 12") ? 12 : 9));
    }

    /** Whoever put it right has said what the time is. */
    @Test
    void aClockThatWasPutRightAfterTheMarkIsNotBehind() {
        AliveMarker marker = new AliveMarker(folder);
        marker.write(new ClockMark("boot", 0, MARK.salon(), true, 3));
        ClockProof missed = new ClockProof(MARK.salon(), new TreeMap<>(Map.of(4L, Duration.ZERO)), MARK.salon());
        assertThat(marker.last(missed)).contains(new ClockMark("boot", 0, MARK.salon(), false, 4));
    }

    /** By a mark two hours ahead, facts alone would tell; two hours behind, it would itself be taken for true. */
    @ParameterizedTest
    @ValueSource(strings = {"PT2H", "PT-2H", "P400D", "P-400D"})
    void theMarkCountsOnThroughAStepHoweverFar(Duration by) {
        AliveMarker marker = new AliveMarker(folder);
        marker.write(new ClockMark("boot", 70_123, MARK.salon().plusSeconds(3), false, 0));
        Instant newest = MARK.salon().plus(by);
        ClockProof proof = new ClockProof(newest, new TreeMap<>(Map.of(5L, by)), newest.plusSeconds(9));
        assertThat(marker.last(proof)).contains(new ClockMark("boot", 70_123, newest.plusSeconds(3), false, 5));
    }

    @Test
    void bytesThatAreNoTextArePassedOver() throws IOException {
        Files.write(folder.resolve("alive"), new byte[] {(byte) 0xff, (byte) 0xfe, 0, 10, 10});
        assertThat(new AliveMarker(folder).last(NOTHING)).isEmpty();
    }

    /** A full or vanished disk must not stop the bells. */
    @Test
    void aMarkThatCannotBeWrittenStopsNothing() {
        AliveMarker marker = new AliveMarker(folder.resolve("gone"));
        marker.write(MARK);
        assertThat(marker.last(NOTHING)).isEmpty();
    }

    private static ClockProof proof(@Nullable Instant newest, Instant wall) {
        return new ClockProof(newest, new TreeMap<>(), wall);
    }
}

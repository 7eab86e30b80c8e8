package rinsebell.app.time;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class AliveMarkerTest {

    private static final ClockMark MARK =
            new ClockMark("3f6c0b1e-boot", 70_123, Instant.parse("2026-05-16T08:00:00.123Z"));

    @TempDir
    private Path folder = Path.of("");

    @Test
    void theLastMarkIsRead() {
        AliveMarker marker = new AliveMarker(folder);
        assertThat(marker.last()).isEmpty();
        marker.write(MARK);
        marker.write(new ClockMark("3f6c0b1e-boot", 75_123, MARK.salon().plusSeconds(5)));
        assertThat(new AliveMarker(folder).last())
                .contains(new ClockMark("3f6c0b1e-boot", 75_123, MARK.salon().plusSeconds(5)));
    }

    @Test
    void aSystemThatTellsNothingLeavesABlankId() {
        AliveMarker marker = new AliveMarker(folder);
        marker.write(new ClockMark("", 0, MARK.salon()));
        assertThat(marker.last()).contains(new ClockMark("", 0, MARK.salon()));
    }

    /** A mark is replaced whole: what a killed server had begun to write beside it is never read. */
    @Test
    void halfAMarkIsNoMark() throws IOException {
        AliveMarker marker = new AliveMarker(folder);
        marker.write(MARK);
        Files.writeString(folder.resolve("alive.next"), "3f6c0b1e-bo");
        assertThat(marker.last()).contains(MARK);
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
                "boot\n99999999999999999999\n2026-05-16T08:00:00Z\n"
            })
    void whatIsNoMarkIsPassedOver(String text) throws IOException {
        Files.writeString(folder.resolve("alive"), text);
        assertThat(new AliveMarker(folder).last()).isEmpty();
    }

    @Test
    void bytesThatAreNoTextArePassedOver() throws IOException {
        Files.write(folder.resolve("alive"), new byte[] {(byte) 0xff, (byte) 0xfe, 0, 10, 10});
        assertThat(new AliveMarker(folder).last()).isEmpty();
    }

    /** A full or vanished disk must not stop the bells. */
    @Test
    void aMarkThatCannotBeWrittenStopsNothing() {
        AliveMarker marker = new AliveMarker(folder.resolve("gone"));
        marker.write(MARK);
        assertThat(marker.last()).isEmpty();
    }
}

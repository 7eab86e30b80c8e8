package rinsebell.db.journal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static rinsebell.db.journal.JournalSample.onlyFile;
import static rinsebell.db.journal.JournalSample.press;
import static rinsebell.db.journal.JournalSample.reopened;
import static rinsebell.db.journal.JournalSample.write;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class JournalTest {

    private static final long NEVER_FULL = Long.MAX_VALUE;
    private static final long FULL_AT_ONCE = 1;

    @TempDir
    Path folder;

    @Test
    void aNewJournalIsEmpty() throws Exception {
        assertThat(reopened(folder)).isEmpty();
        assertThat(Journal.verify(folder).end()).isEqualTo(JournalMark.START);
    }

    @Test
    void whatWasWrittenIsReadBackInOrder() throws Exception {
        write(folder, NEVER_FULL, List.of(press("a", 1), press("b", 3)), List.of(press("c", 2)));

        assertThat(reopened(folder)).containsExactly(press("a", 1), press("b", 3), press("c", 2));
    }

    @Test
    void aReopenedJournalGoesOnWhereItEnded() throws Exception {
        write(folder, NEVER_FULL, List.of(press("a", 2)));
        write(folder, NEVER_FULL, List.of(press("b", 1)));

        assertThat(reopened(folder)).containsExactly(press("a", 2), press("b", 1));
        assertThat(Journal.verify(folder).end().lines()).isEqualTo(3);
    }

    @Test
    void eachPressIsHandedOverWithThePlaceBehindIt() throws Exception {
        write(folder, NEVER_FULL, List.of(press("a", 2)), List.of(press("b", 3)));

        List<Long> lines = new ArrayList<>();
        Journal.open(folder, (press, after) -> lines.add(after.lines())).close();
        assertThat(lines).containsExactly(2L, 5L);
    }

    @Test
    void aFullFileIsFollowedByOneNamedAfterItsFirstLine() throws Exception {
        write(folder, FULL_AT_ONCE, List.of(press("a", 2)), List.of(press("b", 1)), List.of(press("c", 1)));

        assertThat(Segment.in(folder)).extracting(Segment::firstLine).containsExactly(1L, 3L, 4L);
        assertThat(folder.resolve("journal-000000000003.txt")).exists();
        assertThat(reopened(folder)).containsExactly(press("a", 2), press("b", 1), press("c", 1));
    }

    @Test
    void otherFilesInTheFolderAreLeftAlone() throws Exception {
        write(folder, NEVER_FULL, List.of(press("a", 1)));
        Files.writeString(folder.resolve("journal-note.txt"), "copied on Saturday");

        assertThat(reopened(folder)).containsExactly(press("a", 1));
    }

    /** The form on disk is a promise to later versions; the sums were worked out by another program (hashlib and a bitwise CRC). */
    @Test
    void aLineStandsOnDiskAsDescribed() throws Exception {
        write(folder, NEVER_FULL, List.of(new JournalPress(List.of("{\"a\":1}"))));
        write(folder, NEVER_FULL, List.of(new JournalPress(List.of("{\"b\":\"ü\"}"))));

        assertThat(Files.readAllLines(onlyFile(folder)))
                .containsExactly(
                        "j1 c3f13e1f 1 1 1/1 " + "0".repeat(64) + " {\"a\":1}",
                        "j1 ef36c6fa 2 2 1/1 7513f4594fe56e06bc0103e1dcdc9fc83fe53d2fe4ae9bb580c3584416646fa1 {\"b\":\"ü\"}");
    }

    @Test
    void aPayloadOfTwoLinesIsABug() {
        assertThatThrownBy(() -> new JournalPress(List.of("{\n}")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("one line");
    }

    @Test
    void aPressWithoutFactsIsABug() {
        assertThatThrownBy(() -> new JournalPress(List.of())).isInstanceOf(IllegalArgumentException.class);
    }
}

package rinsebell.db.journal;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static rinsebell.db.journal.JournalSample.onlyFile;
import static rinsebell.db.journal.JournalSample.press;
import static rinsebell.db.journal.JournalSample.reopened;
import static rinsebell.db.journal.JournalSample.write;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a start makes of a journal that did not end well. */
final class JournalRecoveryTest {

    private static final long NEVER_FULL = Long.MAX_VALUE;
    private static final long FULL_AT_ONCE = 1;
    private static final JournalPress A = press("a", 2);
    private static final JournalPress B = press("b", 1);
    private static final JournalPress C = press("c", 3);
    private static final JournalPress D = press("d", 2);

    @TempDir
    Path folder;

    private Path file;
    private byte[] whole;
    private final List<Integer> lineEnds = new ArrayList<>();

    /** Lines 1-2 are A, 3 is B, both in one batch; 4-6 are C, 7-8 are D, in the last batch. */
    @BeforeEach
    void fourPressesInTwoBatches() throws Exception {
        write(folder, NEVER_FULL, List.of(A, B), List.of(C, D));
        file = onlyFile(folder);
        whole = Files.readAllBytes(file);
        for (int at = 0; at < whole.length; at++) {
            if (whole[at] == '\n') {
                lineEnds.add(at + 1);
            }
        }
    }

    @Test
    void cutAtEveryByteItKeepsExactlyTheWholePressesBefore() throws Exception {
        for (int length = 0; length <= whole.length; length++) {
            Files.write(file, Arrays.copyOf(whole, length));

            assertThat(reopened(folder)).as("cut at byte %d", length).isEqualTo(wholeUpTo(length));
            assertThat(Files.size(file)).isEqualTo(endOfWholeUpTo(length));
            assertThat(reopened(folder)).as("opened twice").isEqualTo(wholeUpTo(length));
        }
    }

    @Test
    void aCutJournalGoesOnBehindItsLastWholePress() throws Exception {
        Files.write(file, Arrays.copyOf(whole, whole.length - 1));
        write(folder, NEVER_FULL, List.of(press("next", 2)));

        assertThat(reopened(folder)).containsExactly(A, B, C, press("next", 2));
    }

    @Test
    void aFlippedBitBeforeTheLastBatchIsFoundWhereverItIs() throws Exception {
        for (int at = 0; at < lineEnds.get(2); at++) {
            Files.write(file, flipped(at));

            assertThatThrownBy(() -> reopened(folder))
                    .as("byte %d", at)
                    .isInstanceOf(JournalDamaged.class)
                    .hasMessageContaining(file.toString())
                    .hasMessageContaining("line " + lineAt(at) + ": ");
            assertThat(Files.readAllBytes(file)).as("left as it was").isEqualTo(flipped(at));
        }
    }

    /** Where a write was torn a line lacks its end; a whole line that does not fit was written, and changed since. */
    @Test
    void aFlippedBitInTheLastBatchIsFoundToo() throws Exception {
        for (int at = lineEnds.get(2); at < whole.length - 1; at++) {
            Files.write(file, flipped(at));

            assertThatThrownBy(() -> reopened(folder)).as("byte %d", at).isInstanceOf(JournalDamaged.class);
            assertThat(Files.readAllBytes(file)).as("left as it was").isEqualTo(flipped(at));
        }
    }

    @Test
    void aLastLineWithoutItsEndIsTornOff() throws Exception {
        Files.write(file, flipped(whole.length - 1));

        assertThat(reopened(folder)).containsExactly(A, B, C);
    }

    /** A copy in text mode may do that to every line. */
    @Test
    void linesThatAllEndOtherwiseAreDamageAndStay() throws Exception {
        byte[] other = new String(whole, UTF_8).replace("\n", "\r\n").getBytes(UTF_8);
        assertDamagedAndLeft(other);
        assertDamagedAndLeft(new String(other, UTF_8).replace("\r\n", "\r").getBytes(UTF_8));
    }

    @Test
    void whatHoldsNoLineAtAllIsNoTornTail() throws Exception {
        assertDamagedAndLeft(new byte[whole.length]);
        assertDamagedAndLeft("this is no journal".getBytes(UTF_8));
        assertDamagedAndLeft("j".repeat(5000).getBytes(UTF_8));
    }

    private void assertDamagedAndLeft(byte[] bytes) throws IOException {
        Files.write(file, bytes);

        assertThatThrownBy(() -> reopened(folder))
                .isInstanceOf(JournalDamaged.class)
                .hasMessageContaining("line 1: ");
        assertThat(Files.readAllBytes(file)).isEqualTo(bytes);
    }

    @Test
    void whatIsCutOffIsKeptBesideTheFile() throws Exception {
        for (int cut : List.of(5, 7)) {
            Files.write(file, Arrays.copyOf(whole, whole.length - cut));
            reopened(folder);
        }

        assertThat(Files.readAllBytes(folder.resolve(file.getFileName() + ".cut-1")))
                .isEqualTo(Arrays.copyOfRange(whole, lineEnds.get(5), whole.length - 5));
        assertThat(Files.readAllBytes(folder.resolve(file.getFileName() + ".cut-2")))
                .isEqualTo(Arrays.copyOfRange(whole, lineEnds.get(5), whole.length - 7));
    }

    @Test
    void aReaderThatRefusesWhatItReadKeepsEverythingAsItWas() throws Exception {
        byte[] torn = Arrays.copyOf(whole, whole.length - 5);
        Files.write(file, torn);
        JournalReader refusing = new JournalReader() {
            @Override
            public void press(JournalPress press, JournalMark after) {}

            @Override
            public void end(Recovered found) {
                throw new IllegalArgumentException("only " + found.presses());
            }
        };

        assertThatThrownBy(() -> Journal.open(folder, refusing)).hasMessage("only 3");
        assertThat(Files.readAllBytes(file)).isEqualTo(torn);
    }

    /** A disk may write the end of an unforced batch before its beginning. */
    @Test
    void aHoleInTheLastBatchIsATornTailThoughLinesFollow() throws Exception {
        byte[] holed = whole.clone();
        Arrays.fill(holed, lineEnds.get(2), lineEnds.get(4) - 20, (byte) 0);
        Files.write(file, holed);

        assertThat(reopened(folder)).containsExactly(A, B);
    }

    @Test
    void aLineTakenOutOfTheMiddleIsFound() throws Exception {
        Files.write(file, without(2));

        assertThatThrownBy(() -> reopened(folder))
                .isInstanceOf(JournalDamaged.class)
                .hasMessageContaining("line 3: it says it is line 4");
    }

    @Test
    void aLineOfAnotherJournalIsFound() throws Exception {
        Path other = folder.resolve("other");
        write(other, NEVER_FULL, List.of(A, press("x", 1)), List.of(C, D));
        byte[] foreign = Files.readAllBytes(onlyFile(other));
        System.arraycopy(foreign, lineEnds.get(2), whole, lineEnds.get(2), whole.length - lineEnds.get(2));
        Files.write(file, whole);

        assertThatThrownBy(() -> reopened(folder))
                .isInstanceOf(JournalDamaged.class)
                .hasMessageContaining("line 4: it follows on another line");
    }

    @Test
    void aFactInTheWrongPlaceOfItsPressIsFound() throws Exception {
        List<String> lines = Files.readAllLines(file);
        JournalLine second =
                new JournalLine(2, 1, 1, 2, JournalLine.hash(lines.get(0).getBytes(UTF_8)), "{}");
        Files.writeString(file, lines.get(0) + "\n" + new String(second.bytes(), UTF_8) + "\n");

        assertThatThrownBy(() -> reopened(folder))
                .isInstanceOf(JournalDamaged.class)
                .hasMessageContaining("fact 1 of 2 of its press, but fact 2 comes next");
    }

    @Test
    void aMissingFileIsFoundAtTheStartAndInTheMiddle() throws Exception {
        Path split = folder.resolve("split");
        write(split, FULL_AT_ONCE, List.of(A), List.of(B), List.of(C));
        Files.delete(split.resolve("journal-000000000003.txt"));
        assertThatThrownBy(() -> reopened(split))
                .isInstanceOf(JournalDamaged.class)
                .hasMessageContaining("journal-000000000004.txt, line 3: the file begins with line 4")
                .hasMessageContaining("a file of the journal is missing");

        Files.delete(split.resolve("journal-000000000001.txt"));
        assertThatThrownBy(() -> reopened(split)).isInstanceOf(JournalDamaged.class);
    }

    @Test
    void aTornTailInAnyButTheLastFileIsDamage() throws Exception {
        Path split = folder.resolve("split");
        write(split, FULL_AT_ONCE, List.of(A), List.of(B));
        Path first = split.resolve("journal-000000000001.txt");
        byte[] full = Files.readAllBytes(first);
        Files.write(first, Arrays.copyOf(full, full.length - 1));

        assertThatThrownBy(() -> reopened(split))
                .isInstanceOf(JournalDamaged.class)
                .hasMessageContaining("journal-000000000001.txt, line 2: the line has no end");
    }

    @Test
    void aFileThatWasBegunAndNeverWrittenIsNoHarm() throws Exception {
        Files.createFile(folder.resolve("journal-000000000009.txt"));
        write(folder, NEVER_FULL, List.of(press("next", 1)));

        assertThat(reopened(folder)).containsExactly(A, B, C, D, press("next", 1));
    }

    @Test
    void verifyingSaysWhatIsTornAndLeavesIt() throws Exception {
        byte[] torn = Arrays.copyOf(whole, whole.length - 5);
        Files.write(file, torn);

        Recovered found = Journal.verify(folder);
        assertThat(found.presses()).isEqualTo(3);
        assertThat(found.end().lines()).isEqualTo(6);
        assertThat(found.tornBytes()).isEqualTo(torn.length - lineEnds.get(5));
        assertThat(found.tornBecause()).isEqualTo("the line has no end");
        assertThat(Files.readAllBytes(file)).isEqualTo(torn);
    }

    private List<JournalPress> wholeUpTo(int length) {
        return List.of(A, B, C, D).subList(0, (int)
                pressEnds().stream().filter(end -> end <= length).count());
    }

    private long endOfWholeUpTo(int length) {
        return pressEnds().stream().filter(end -> end <= length).reduce(0, Math::max);
    }

    private List<Integer> pressEnds() {
        return List.of(lineEnds.get(1), lineEnds.get(2), lineEnds.get(5), lineEnds.get(7));
    }

    private byte[] flipped(int at) {
        byte[] bytes = whole.clone();
        bytes[at] ^= 0x01;
        return bytes;
    }

    private long lineAt(int at) {
        return 1 + lineEnds.stream().filter(end -> end <= at).count();
    }

    private byte[] without(int line) throws IOException {
        List<String> lines = new ArrayList<>(Files.readAllLines(file));
        lines.remove(line);
        return (String.join("\n", lines) + "\n").getBytes(UTF_8);
    }
}

package rinsebell.db.journal;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static rinsebell.db.journal.JournalSample.onlyFile;
import static rinsebell.db.journal.JournalSample.press;
import static rinsebell.db.journal.JournalSample.reopened;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rinsebell.floor.Ledger.NotSaved;

/** What the journal does when the disk says no. */
final class JournalDiskTest {

    private static final JournalPress SAVED = press("saved", 2);
    private static final JournalPress LOST = press("lost", 2);
    private static final JournalPress LATER = press("later", 1);

    @TempDir
    Path folder;

    private final FailingDisk disk = new FailingDisk();
    private Journal journal;

    @BeforeEach
    void onePressIsSaved() throws Exception {
        journal = Journal.open(folder, JournalReader.NONE, new Journal.Rules(disk, 800));
        journal.append(List.of(SAVED));
    }

    @AfterEach
    void close() throws IOException {
        journal.close();
    }

    @Test
    void severalPressesShareOneForce() throws Exception {
        int before = disk.forces;
        journal.append(List.of(press("b", 1), press("c", 3), press("d", 2)));

        assertThat(disk.forces).isEqualTo(before + 1);
    }

    @Test
    void aForceThatFailsLeavesTheOldState() throws Exception {
        byte[] before = Files.readAllBytes(onlyFile(folder));
        JournalMark end = journal.end();
        disk.forcesToFail = 1;

        assertThatThrownBy(() -> journal.append(List.of(LOST)))
                .isInstanceOf(NotSaved.class)
                .hasMessageContaining("the disk did not answer");
        assertThat(Files.readAllBytes(onlyFile(folder))).isEqualTo(before);
        assertThat(journal.end()).isEqualTo(end);
    }

    @Test
    void afterAWriteThatStoppedHalfwayTheNextBatchIsSaved() throws Exception {
        disk.writeFailsHalfway = true;
        assertThatThrownBy(() -> journal.append(List.of(LOST))).isInstanceOf(NotSaved.class);
        disk.writeFailsHalfway = false;
        journal.append(List.of(LATER));

        journal.close();
        assertThat(reopened(folder)).containsExactly(SAVED, LATER);
    }

    @Test
    void aFileThatCannotBeBegunLeavesTheOldState() throws Exception {
        journal.append(List.of(press("fills the file", 4)));
        disk.openFails = true;
        assertThatThrownBy(() -> journal.append(List.of(LOST))).isInstanceOf(NotSaved.class);
        disk.openFails = false;
        journal.append(List.of(LATER));

        journal.close();
        assertThat(Segment.in(folder)).hasSize(2);
        assertThat(reopened(folder)).containsExactly(SAVED, press("fills the file", 4), LATER);
    }

    @Test
    void aFirstBatchOfAFileThatFailsIsWrittenThereLater() throws Exception {
        journal.append(List.of(press("fills the file", 4)));
        disk.writeFailsHalfway = true;
        assertThatThrownBy(() -> journal.append(List.of(LOST))).isInstanceOf(NotSaved.class);
        disk.writeFailsHalfway = false;
        journal.append(List.of(LATER));

        journal.close();
        assertThat(reopened(folder)).containsExactly(SAVED, press("fills the file", 4), LATER);
    }

    @Test
    void aThreadThatIsInterruptedSavesNothingAndBreaksNothing() throws Exception {
        Thread.currentThread().interrupt();
        assertThatThrownBy(() -> journal.append(List.of(LOST))).isInstanceOf(NotSaved.class);
        assertThat(Thread.interrupted()).isTrue();

        journal.append(List.of(LATER));
        journal.close();
        assertThat(reopened(folder)).containsExactly(SAVED, LATER);
    }

    /** What is written to a deleted file is read back as long as it is open, and never again. */
    @Test
    void nothingIsSavedInAFileThatWasDeletedOrMoved() throws Exception {
        Path file = onlyFile(folder);
        Path away = Files.move(file, folder.resolve("away"));
        assertThatThrownBy(() -> journal.append(List.of(LOST)))
                .isInstanceOf(NotSaved.class)
                .hasMessageContaining("was deleted, moved or replaced");
        Files.copy(away, file);
        assertThatThrownBy(() -> journal.append(List.of(LOST))).isInstanceOf(NotSaved.class);

        Files.move(away, file, StandardCopyOption.REPLACE_EXISTING);
        journal.append(List.of(LATER));
        journal.close();
        assertThat(reopened(folder)).containsExactly(SAVED, LATER);
    }

    @Test
    void whatCanNeitherBeSavedNorTakenBackStopsTheProcess() {
        disk.writeFailsHalfway = true;
        disk.cutFails = true;
        assertThatThrownBy(() -> journal.append(List.of(LOST)))
                .isInstanceOf(MustStop.class)
                .hasMessageContaining("the disk is gone");
    }

    @Test
    void aCutThatMayNotBeOnDiskStopsTheProcessToo() {
        disk.forcesToFail = 2;
        assertThatThrownBy(() -> journal.append(List.of(LOST))).isInstanceOf(MustStop.class);
    }

    @Test
    void onceStoppedNothingIsWrittenAnyMore() throws Exception {
        disk.forcesToFail = 2;
        assertThatThrownBy(() -> journal.append(List.of(LOST))).isInstanceOf(MustStop.class);

        assertThatThrownBy(() -> journal.append(List.of(LATER))).isInstanceOf(MustStop.class);
        journal.close();
        assertThat(reopened(folder)).containsExactly(SAVED);
    }

    /** A shell's limit on the length of files makes the operating system refuse the rest of a write, as a full disk. */
    @Test
    void aFileThatTheSystemWillNotLetGrowKeepsWhatItHad() throws Exception {
        Path small = folder.resolve("small");
        Process writer = new ProcessBuilder(
                        "/bin/sh",
                        "-c",
                        "ulimit -f 16; exec \"$0\" -cp \"$1\" " + JournalFiller.class.getName() + " \"$2\"",
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        System.getProperty("java.class.path"),
                        small.toString())
                .redirectErrorStream(true)
                .start();
        String said = new String(writer.getInputStream().readAllBytes(), UTF_8);

        assertThat(writer.waitFor(30, TimeUnit.SECONDS)).isTrue();
        assertThat(said).contains("not saved: the journal could not be written");
        assertThat(reopened(small)).hasSize(Integer.parseInt(said.substring(0, said.indexOf(' '))));
        assertThat(Journal.verify(small).tornBytes()).isZero();
    }
}

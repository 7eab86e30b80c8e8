package rinsebell.db;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static rinsebell.floor.testing.Saturday.TEN;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rinsebell.floor.salon.StaffId;

/** The devices that are in, and PINs, as they outlast a restart. */
class KeyringTest {
    private static final StaffId MARA = new StaffId(4);
    private static final StaffId JO = new StaffId(5);

    @TempDir
    private Path folder = Path.of("");

    private Path file() {
        return folder.resolve("keyring.json");
    }

    private Keyring open() throws IOException {
        return Keyring.open(file());
    }

    @Test
    void devicesStayInUntilTheyAreThrownOut() throws IOException {
        var tablet = open().letIn(new Keyring.Fresh("tablet \"3\" 👩‍🦰", "chair-3", "a".repeat(64), false), TEN);
        var phone = open().letIn(new Keyring.Fresh("phone", "pocket", "b".repeat(64), false), TEN);
        assertThat(open().devices()).containsExactly(tablet, phone);
        assertThat(open().device("a".repeat(64))).contains(tablet);
        open().throwOut(tablet.id(), TEN.plusSeconds(60));
        assertThat(open().device("a".repeat(64))).isEmpty();
        assertThat(open().device("")).isEmpty();
        assertThat(open().device("b".repeat(64))).contains(phone);
        assertThat(open().devices().get(0).thrownOut()).isEqualTo(TEN.plusSeconds(60));
        assertThat(Files.readString(file())).doesNotContain("a".repeat(64));
    }

    @Test
    void noNumberIsGivenTwice() throws IOException {
        var first = open().letIn(new Keyring.Fresh("one", "desk", "a".repeat(64), false), TEN);
        open().throwOut(first.id(), TEN);
        assertThat(open().letIn(new Keyring.Fresh("two", "desk", "b".repeat(64), false), TEN)
                        .id())
                .isGreaterThan(first.id());
    }

    @Test
    void pinsWithTheDevicesThatKnowThem() throws IOException {
        open().setPin(MARA, "hash");
        open().noteKnown(MARA, 7);
        open().noteKnown(MARA, 7);
        assertThat(open().pin(MARA))
                .hasValueSatisfying(pin -> assertThat(pin.knownOn()).containsExactly(7L));
        open().setPin(MARA, "other");
        assertThat(open().pin(MARA)).as("another PIN was right nowhere yet").hasValueSatisfying(pin -> {
            assertThat(pin.hash()).isEqualTo("other");
            assertThat(pin.knownOn()).isEmpty();
        });
        open().forgetPins(List.of(MARA));
        assertThat(open().pin(MARA)).isEmpty();
    }

    @Test
    void plainHttpIsAllowedByNobodyButTheManager() throws IOException {
        assertThat(open().allowsPlain()).isFalse();
        open().allowPlain(true);
        open().setPin(MARA, "hash");
        assertThat(open().allowsPlain()).isTrue();
        open().allowPlain(false);
        assertThat(open().allowsPlain()).isFalse();
    }

    @Test
    void pinsAreTakenAwayAtTheConsoleWhileTheServerRuns() throws IOException {
        var keyring = open();
        keyring.setPin(MARA, "hash");
        keyring.setPin(JO, "hash");
        assertThat(keyring.resetIfAsked(List.of(MARA))).isFalse();
        Keyring.askForReset(folder);
        assertThat(keyring.resetIfAsked(List.of(MARA))).isTrue();
        assertThat(keyring.pins()).extracting(Keyring.Pin::person).containsExactly(JO);
        assertThat(keyring.resetIfAsked(List.of(MARA))).as("once").isFalse();
        assertThat(open().pins()).extracting(Keyring.Pin::person).containsExactly(JO);
    }

    @Test
    void nobodyElseMayReadTheFile() throws IOException {
        open().setPin(MARA, "hash");
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file())))
                .isEqualTo("rw-------");
        assertThat(Files.list(folder)).containsExactly(file());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "{", "{}", "[]", "{\"version\":2,\"lastDevice\":0,\"devices\":[],\"pins\":[]}"})
    void whatIsDamagedIsSaidAndLeftAsItIs(String text) throws IOException {
        Files.writeString(file(), text);
        assertThatThrownBy(this::open).isInstanceOf(IOException.class).hasMessageContaining("keyring.json");
        assertThat(Files.readString(file())).isEqualTo(text);
    }

    @Test
    void whatCantBeWrittenDoesNotCount() throws IOException {
        var keyring = open();
        keyring.setPin(MARA, "hash");
        Files.delete(file());
        Files.createDirectories(file().resolve("in-the-way"));
        assertThatThrownBy(() -> keyring.setPin(MARA, "other")).isInstanceOf(DatabaseAway.class);
        assertThat(keyring.pin(MARA))
                .hasValueSatisfying(pin -> assertThat(pin.hash()).isEqualTo("hash"));
    }
}

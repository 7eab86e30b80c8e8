package rinsebell.app.trust;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import ch.qos.logback.classic.Logger;
import ch.qos.logback.classic.spi.ILoggingEvent;
import ch.qos.logback.core.read.ListAppender;
import java.net.InetAddress;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.slf4j.LoggerFactory;
import rinsebell.app.door.Certificate;
import rinsebell.app.door.CertificateUnfit;
import rinsebell.app.http.TestCertificate;
import rinsebell.app.time.MachineTime;
import rinsebell.app.time.TimeByHand;

/** A certificate of the salon's own, made by the JDK's keytool, while a server shows it. */
class SalonFilesTest {

    private static final Logger LOG = (Logger) LoggerFactory.getLogger("rinsebell.app.trust");

    private final TimeByHand time = new TimeByHand(new MachineTime().wall());
    private final ListAppender<ILoggingEvent> said = new ListAppender<>();

    @TempDir
    private Path folder = Path.of("");

    @BeforeEach
    void listen() {
        said.start();
        LOG.addAppender(said);
    }

    @AfterEach
    void deafen() {
        LOG.detachAppender(said);
    }

    private TestCertificate made(String name, int days) throws Exception {
        return new TestCertificate(Files.createDirectory(folder.resolve(name)), "EC", "-1d", days);
    }

    private SecureDoor showing(TestCertificate made) throws CertificateUnfit {
        return SecureDoor.byFiles(
                made.certificate(), made.key(), new Whereabouts(Set.of(), InetAddress.getLoopbackAddress()), time);
    }

    private List<String> said() {
        return said.list.stream().map(ILoggingEvent::getFormattedMessage).toList();
    }

    @Test
    void newFilesAreTakenUpAndBrokenOnesLeftAside() throws Exception {
        TestCertificate first = made("first", 30);
        TestCertificate second = made("second", 60);
        try (SecureDoor door = showing(first)) {
            Certificate before = door.shown().certificate();
            door.round();
            assertThat(door.shown().certificate()).isSameAs(before);
            replace(first.certificate(), second.certificate());
            door.round();
            door.round();
            assertThat(door.shown().certificate()).isSameAs(before);
            assertThat(said()).singleElement().asString().contains("is not that of the certificate");
            replace(first.key(), second.key());
            door.round();
            assertThat(door.shown().certificate().chain())
                    .isEqualTo(Certificate.read(second.certificate(), second.key(), time.wall())
                            .chain());
            assertThat(door.authority()).isEmpty();
        }
    }

    private static void replace(Path file, Path by) throws Exception {
        Files.copy(by, file, StandardCopyOption.REPLACE_EXISTING);
    }

    @Test
    void fourteenDaysBeforeItsEndItIsAskedForEachDay() throws Exception {
        try (SecureDoor door = showing(made("ending", 30))) {
            Instant ends = door.shown().certificate().ends();
            time.setWall(Duration.between(time.wall(), ends.minus(Duration.ofDays(14))));
            door.round();
            assertThat(said()).isEmpty();
            time.sleep(Duration.ofMillis(1));
            door.round();
            door.round();
            assertThat(said()).singleElement().asString().contains("ends at " + ends);
            time.sleep(Duration.ofDays(1));
            door.round();
            assertThat(said()).hasSize(2);
        }
    }

    @Test
    void filesThatAreNotThereAreToldOfAtTheStart() throws Exception {
        TestCertificate made = made("half", 30);
        Files.delete(made.key());
        assertThatThrownBy(() -> showing(made))
                .isInstanceOf(CertificateUnfit.class)
                .hasMessageContaining("is not there");
    }
}

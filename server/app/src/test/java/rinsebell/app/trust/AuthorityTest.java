package rinsebell.app.trust;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.KeyPair;
import java.security.cert.CertPathValidatorException;
import java.security.cert.X509Certificate;
import java.security.interfaces.ECPublicKey;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.stream.Stream;
import javax.security.auth.x500.X500Principal;
import org.bouncycastle.asn1.x509.BasicConstraints;
import org.bouncycastle.asn1.x509.Extension;
import org.bouncycastle.asn1.x509.GeneralName;
import org.bouncycastle.asn1.x509.GeneralNames;
import org.bouncycastle.asn1.x509.KeyUsage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rinsebell.app.door.Certificate;

/** What the authority can vouch for, by two validators from outside: that of the JDK and OpenSSL, both after RFC 5280. */
class AuthorityTest {

    private static final Instant NOW = Instant.parse("2026-11-28T10:00:00Z");
    private static final Instant SOON = NOW.plus(Duration.ofDays(40));

    private final Authority authority = Authority.make(Reaches.of("localhost", "rinsebell.local", "colour.test"), NOW);
    private final Validating device = new Validating(authority.root());

    @TempDir
    private Path folder = Path.of("");

    @Test
    void whatItVouchesForIsBelieved() throws Exception {
        Certificate server = authority.vouch(
                Reaches.of("localhost", "rinsebell.local", "colour.test", "192.168.1.7", "10.2.3.4", "fd12::7"), NOW);
        device.validate(server.chain(), SOON);
        for (String name : List.of("localhost", "rinsebell.local", "colour.test")) {
            assertThat(openssl(server.chain(), "-verify_hostname", name)).isEmpty();
        }
        for (String address : List.of("127.0.0.1", "::1", "192.168.1.7", "10.2.3.4", "fd12::7")) {
            assertThat(openssl(server.chain(), "-verify_ip", address)).isEmpty();
        }
        assertThat(openssl(server.chain(), "-verify_hostname", "other.test")).contains("hostname mismatch");
    }

    /** RFC 5280, section 4.2.1.10. The first two are anybody's, the last two lie just outside a private range (RFC 1918). */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "example.org",
                "8.8.8.8",
                "2001:db8::1",
                "colour.test.example.org",
                "other.local",
                "local",
                "172.32.0.1",
                "192.169.0.1"
            })
    void nobodyBelievesWhatWasSignedForAnotherName(String name) throws Exception {
        List<X509Certificate> forged = forged(name);
        assertThatThrownBy(() -> device.validate(forged, SOON))
                .isInstanceOfSatisfying(
                        CertPathValidatorException.class,
                        refused ->
                                assertThat(refused.getReason()).isEqualTo(java.security.cert.PKIXReason.INVALID_NAME));
        assertThat(openssl(forged)).contains("permitted subtree violation");
    }

    /** So the refusals above are for the name alone. */
    @ParameterizedTest
    @ValueSource(strings = {"rinsebell.local", "172.31.255.255", "192.168.0.0", "169.254.1.1", "fe80::1", "10.255.0.1"})
    void theSameForTheSalonsNamesIsBelieved(String name) throws Exception {
        device.validate(forged(name), SOON);
        assertThat(openssl(forged(name))).isEmpty();
    }

    @Test
    void itMakesNoOtherAuthority() throws Exception {
        KeyPair key = Issue.key();
        X509Certificate below = issued(key, "CN=below")
                .with(Extension.basicConstraints, true, new BasicConstraints(0))
                .with(Extension.keyUsage, true, new KeyUsage(KeyUsage.keyCertSign))
                .signed(authority.kept().key());
        X509Certificate server = new Issue(
                        below.getSubjectX500Principal(),
                        key.getPublic(),
                        new X500Principal("CN=server"),
                        Issue.key().getPublic(),
                        NOW,
                        NOW.plus(Authority.VOUCHES))
                .with(Extension.subjectAlternativeName, false, new GeneralNames(named("rinsebell.local")))
                .signed(key.getPrivate());
        List<X509Certificate> chain = List.of(server, below, signer());
        assertThatThrownBy(() -> device.validate(chain, SOON))
                .isInstanceOfSatisfying(
                        CertPathValidatorException.class,
                        refused ->
                                assertThat(refused.getReason()).isEqualTo(java.security.cert.PKIXReason.PATH_TOO_LONG));
        assertThat(openssl(chain)).contains("path length constraint exceeded");
    }

    /** RFC 5280, sections 4.1.2.2, 4.2.1.3, 4.2.1.9 and 4.2.1.10; the key of the root is on no disk. */
    @Test
    void itsCertificatesSayWhatTheyAreFor() {
        X509Certificate server =
                authority.vouch(Reaches.of("rinsebell.local"), NOW).chain().get(0);
        assertThat(authority.root().getBasicConstraints()).isEqualTo(1);
        assertThat(signer().getBasicConstraints()).isZero();
        assertThat(server.getBasicConstraints()).isEqualTo(-1);
        for (X509Certificate one : List.of(authority.root(), signer())) {
            assertThat(one.getCriticalExtensionOIDs()).containsExactlyInAnyOrder("2.5.29.15", "2.5.29.19", "2.5.29.30");
            assertThat(one.getKeyUsage()).containsExactly(false, false, false, false, false, true, true, false, false);
        }
        for (X509Certificate one : List.of(authority.root(), signer(), server)) {
            assertThat(one.getSerialNumber().signum()).isPositive();
            assertThat(one.getSerialNumber().bitLength()).isEqualTo(128);
            assertThat(one.getSigAlgName()).isEqualTo("SHA256withECDSA");
            assertThat(((ECPublicKey) one.getPublicKey()).getParams().getOrder().bitLength())
                    .isEqualTo(256);
        }
        assertThat(Certificate.belongTogether(authority.root(), authority.kept().key()))
                .isFalse();
        assertThat(Certificate.belongTogether(signer(), authority.kept().key())).isTrue();
    }

    /** Apple asks for no more than 825 days and for the use as a server (support article 103769, from memory). */
    @Test
    void whatItVouchesForIsForServersAndHoldsForNinetyDays() throws Exception {
        X509Certificate server =
                authority.vouch(Reaches.of("rinsebell.local"), NOW).chain().get(0);
        assertThat(server.getExtendedKeyUsage()).containsExactly("1.3.6.1.5.5.7.3.1");
        assertThat(Duration.between(
                        server.getNotBefore().toInstant(), server.getNotAfter().toInstant()))
                .isEqualTo(Duration.ofDays(90));
        device.validate(List.of(server, signer()), NOW.minus(Duration.ofHours(23)));
        assertThatThrownBy(() -> device.validate(List.of(server, signer()), NOW.plus(Duration.ofDays(90))))
                .isInstanceOf(CertPathValidatorException.class);
    }

    /** A name that it may not vouch for would make the whole certificate worthless. */
    @Test
    void aNameThatCameLaterIsLeftOutAndTold() throws Exception {
        Reach more = Reaches.of("rinsebell.local", "later.test", "8.8.8.8", "192.168.1.7");
        device.validate(authority.vouch(more, NOW).chain(), SOON);
        assertThat(authority.outside(more)).map(Reach::told).containsExactly("later.test", "8.8.8.8");
    }

    @Test
    void anAddressThatAPersonGaveIsOneOfItsNames() throws Exception {
        Authority wider = Authority.make(Reaches.of("localhost", "203.0.113.9"), NOW);
        Certificate server = wider.vouch(Reaches.of("203.0.113.9"), NOW);
        new Validating(wider.root()).validate(server.chain(), SOON);
        assertThat(wider.outside(Reaches.of("203.0.113.9", "203.0.113.8")))
                .map(Reach::told)
                .containsExactly("203.0.113.8");
    }

    @Test
    void nothingThatItVouchesForOutlivesIt() throws Exception {
        Instant late = NOW.plus(Authority.HOLDS).minus(Duration.ofDays(20));
        Certificate server = authority.vouch(Reaches.of("rinsebell.local"), late);
        assertThat(server.ends()).isEqualTo(authority.ends());
        Instant early = NOW.minus(Duration.ofDays(1_000));
        assertThat(authority
                        .vouch(Reaches.of("rinsebell.local"), early)
                        .chain()
                        .get(0)
                        .getNotBefore())
                .isEqualTo(authority.root().getNotBefore());
    }

    private X509Certificate signer() {
        return authority.kept().chain().get(0);
    }

    private Issue issued(KeyPair key, String whom) {
        return new Issue(
                signer().getSubjectX500Principal(),
                signer().getPublicKey(),
                new X500Principal(whom),
                key.getPublic(),
                NOW,
                NOW.plus(Authority.VOUCHES));
    }

    /** What whoever has stolen the key could make; the JDK would take a common name without a space for another name. */
    private List<X509Certificate> forged(String name) {
        return List.of(
                issued(Issue.key(), "CN=a thief")
                        .with(Extension.subjectAlternativeName, false, new GeneralNames(named(name)))
                        .signed(authority.kept().key()),
                signer());
    }

    private static GeneralName[] named(String name) {
        return Numbers.read(name).isPresent()
                ? new GeneralName[] {new GeneralName(GeneralName.iPAddress, name)}
                : new GeneralName[] {new GeneralName(GeneralName.dNSName, name)};
    }

    /** What OpenSSL says against the chain; nothing when it believes it. */
    private String openssl(List<X509Certificate> chain, String... more) throws Exception {
        List<String> command = new ArrayList<>(List.of(
                "openssl",
                "verify",
                "-x509_strict",
                "-purpose",
                "sslserver",
                "-attime",
                String.valueOf(SOON.getEpochSecond()),
                "-CAfile",
                pem("root", Stream.of(authority.root())).toString(),
                "-untrusted",
                pem("between", chain.stream().skip(1)).toString()));
        command.addAll(List.of(more));
        command.add(pem("server", chain.stream().limit(1)).toString());
        Process verify = new ProcessBuilder(command).redirectErrorStream(true).start();
        String said = new String(verify.getInputStream().readAllBytes());
        return verify.waitFor() == 0 ? "" : said;
    }

    private Path pem(String name, Stream<X509Certificate> certificates) throws Exception {
        StringBuilder text = new StringBuilder();
        for (X509Certificate one : certificates.toList()) {
            text.append("-----BEGIN CERTIFICATE-----\n")
                    .append(Base64.getMimeEncoder().encodeToString(one.getEncoded()))
                    .append("\n-----END CERTIFICATE-----\n");
        }
        return write(folder.resolve(name + ".pem"), text.toString());
    }

    private static Path write(Path file, String text) throws IOException {
        return Files.writeString(file, text);
    }
}

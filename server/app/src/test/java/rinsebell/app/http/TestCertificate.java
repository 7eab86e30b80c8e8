package rinsebell.app.http;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyStore;
import java.util.Base64;
import java.util.List;
import javax.net.ssl.SSLContext;
import javax.net.ssl.TrustManagerFactory;

/** A certificate for this machine that vouches for itself, made by the JDK's own keytool, and its key; as PEM files. */
public final class TestCertificate {

    private static final char[] PASSWORD = "password".toCharArray();

    private final Path folder;
    private final KeyStore store;

    /**
     * Makes one.
     *
     * @param folder an empty one for its files
     * @param kind EC, RSA or Ed25519
     * @param from since when it holds, as keytool takes it, such as {@code -1d}
     * @param days for how long
     */
    public TestCertificate(Path folder, String kind, String from, int days) throws Exception {
        this.folder = folder;
        Path file = folder.resolve("keys.p12");
        make(file, kind, from, days);
        this.store = KeyStore.getInstance("PKCS12");
        try (InputStream in = Files.newInputStream(file)) {
            store.load(in, PASSWORD);
        }
        write(certificate(), "CERTIFICATE", store.getCertificate("it").getEncoded());
        write(key(), "PRIVATE KEY", store.getKey("it", PASSWORD).getEncoded());
    }

    private static void make(Path file, String kind, String from, int days) throws Exception {
        Process keytool = new ProcessBuilder(List.of(
                        Path.of(System.getProperty("java.home"), "bin", "keytool")
                                .toString(),
                        "-J-XX:TieredStopAtLevel=1",
                        "-J-XX:+UseSerialGC",
                        "-J-Dkeystore.pkcs12.keyPbeIterationCount=1",
                        "-J-Dkeystore.pkcs12.certPbeIterationCount=1",
                        "-J-Dkeystore.pkcs12.macIterationCount=1",
                        "-genkeypair",
                        "-alias",
                        "it",
                        "-keyalg",
                        kind,
                        "-dname",
                        "CN=localhost",
                        "-ext",
                        "SAN=dns:localhost,ip:127.0.0.1",
                        "-startdate",
                        from,
                        "-validity",
                        Integer.toString(days),
                        "-storetype",
                        "PKCS12",
                        "-keystore",
                        file.toString(),
                        "-storepass",
                        new String(PASSWORD)))
                .redirectErrorStream(true)
                .start();
        String said = new String(keytool.getInputStream().readAllBytes());
        if (keytool.waitFor() != 0) {
            throw new IOException(said);
        }
    }

    private static void write(Path file, String label, byte[] der) throws IOException {
        String base64 = Base64.getMimeEncoder().encodeToString(der);
        Files.writeString(file, "-----BEGIN " + label + "-----\n" + base64 + "\n-----END " + label + "-----\n");
    }

    public Path certificate() {
        return folder.resolve("certificate.pem");
    }

    public Path key() {
        return folder.resolve("key.pem");
    }

    /** What a client that trusts it connects with. */
    public SSLContext trust() throws GeneralSecurityException, IOException {
        KeyStore trusted = KeyStore.getInstance("PKCS12");
        trusted.load(null, null);
        trusted.setCertificateEntry("it", store.getCertificate("it"));
        TrustManagerFactory managers = TrustManagerFactory.getInstance(TrustManagerFactory.getDefaultAlgorithm());
        managers.init(trusted);
        SSLContext context = SSLContext.getInstance("TLS");
        context.init(null, managers.getTrustManagers(), null);
        return context;
    }
}

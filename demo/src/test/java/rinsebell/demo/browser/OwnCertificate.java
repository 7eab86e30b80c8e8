package rinsebell.demo.browser;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyStore;
import java.util.Base64;
import java.util.List;

/** A certificate for this machine that only vouches for itself, made by the JDK's own keytool. */
record OwnCertificate(Path certificate, Path key) {
    private static final String PASSWORD = "password";

    static OwnCertificate in(Path folder) throws IOException, InterruptedException, GeneralSecurityException {
        var file = folder.resolve("keys.p12");
        make(file);
        var store = KeyStore.getInstance(file.toFile(), PASSWORD.toCharArray());
        return new OwnCertificate(
                written(folder, "CERTIFICATE", store.getCertificate("it").getEncoded()),
                written(
                        folder,
                        "PRIVATE KEY",
                        store.getKey("it", PASSWORD.toCharArray()).getEncoded()));
    }

    private static void make(Path file) throws IOException, InterruptedException {
        var keytool = Path.of(System.getProperty("java.home"), "bin", "keytool").toString();
        var command = "-genkeypair -alias it -keyalg EC -dname CN=localhost -ext SAN=dns:localhost -validity 30"
                + " -storetype PKCS12 -storepass " + PASSWORD;
        var words = new java.util.ArrayList<>(List.of(keytool));
        words.addAll(List.of(command.split(" ")));
        words.addAll(List.of("-keystore", file.toString()));
        var made = new ProcessBuilder(words).redirectErrorStream(true).start();
        var said = new String(made.getInputStream().readAllBytes());
        if (made.waitFor() != 0) {
            throw new IOException(said);
        }
    }

    /** PEM (RFC 7468). */
    private static Path written(Path folder, String label, byte[] der) throws IOException {
        var text = Base64.getMimeEncoder().encodeToString(der);
        return Files.writeString(
                folder.resolve(label.replace(' ', '-') + ".pem"),
                "-----BEGIN " + label + "-----\n" + text + "\n-----END " + label + "-----\n");
    }
}

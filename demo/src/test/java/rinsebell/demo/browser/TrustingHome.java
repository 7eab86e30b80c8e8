package rinsebell.demo.browser;

import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** The home of somebody who told their browser to trust an authority: Chromium on Linux reads it from an NSS database. */
record TrustingHome(Path folder) {

    /** Takes the certificate from where a person takes it. */
    static TrustingHome in(Path folder, String welcome) throws IOException, InterruptedException {
        var certificate = folder.resolve("authority.crt");
        try (InputStream in = URI.create(welcome + "/authority.crt").toURL().openStream()) {
            Files.copy(in, certificate);
        }
        var trusted = Files.createDirectories(folder.resolve(".pki/nssdb"));
        certutil("-d", "sql:" + trusted, "-N", "--empty-password");
        certutil("-d", "sql:" + trusted, "-A", "-t", "C,,", "-n", "it", "-i", certificate.toString());
        return new TrustingHome(folder);
    }

    private static void certutil(String... arguments) throws IOException, InterruptedException {
        var command = new java.util.ArrayList<>(List.of("certutil"));
        command.addAll(List.of(arguments));
        var process = new ProcessBuilder(command).redirectErrorStream(true).start();
        var said = new String(process.getInputStream().readAllBytes());
        if (process.waitFor() != 0) {
            throw new IOException(said);
        }
    }
}

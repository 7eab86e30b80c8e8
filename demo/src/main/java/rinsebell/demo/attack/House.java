package rinsebell.demo.attack;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyStore;
import java.security.cert.CertificateFactory;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.net.ssl.SSLContext;
import javax.net.ssl.TrustManagerFactory;
import rinsebell.app.door.Key;
import rinsebell.app.time.MachineTime;
import rinsebell.db.DataFolder;
import rinsebell.db.Keyring;
import rinsebell.db.SalonStore;
import rinsebell.demo.BusyDay;
import rinsebell.floor.Ledger;

/**
 * A salon in a process of its own, with every chair taken and one device that is in.
 *
 * @param key by which the device shows that it is in
 * @param visits who is here
 */
record House(Process process, int port, int securePort, SSLContext trust, Key key, List<Long> visits)
        implements AutoCloseable {
    /** By which other machines call it. */
    static final String NAME = "salon.test";

    private static final int CHAIRS = 8;

    private static final Pattern TOLD =
            Pattern.compile("ready on http://localhost:(\\d+).*?https://[^ :]+:(\\d+)", Pattern.DOTALL);

    /** @param core of the machine on which alone it runs, as taskset(1) names it */
    static House open(Path data, String core) throws IOException, GeneralSecurityException, Ledger.NotSaved {
        var now = Instant.ofEpochMilli(new MachineTime().wallMillis());
        var day = BusyDay.of(CHAIRS, now, ZoneOffset.UTC);
        var key = Key.fresh();
        try (var folder = DataFolder.open(data);
                var store = SalonStore.open(folder, now)) {
            store.append(day.entries());
            Keyring.open(folder).letIn(new Keyring.Fresh("Tablet", "chair-1", key.hash(), false), now);
        }
        var process = java(
                core,
                "rinsebell.app.Main",
                List.of(
                        "--port",
                        "0",
                        "--secure-port",
                        "0",
                        "--open-to-network",
                        "--host",
                        "127.0.0.1",
                        "--name",
                        NAME,
                        "--data",
                        data.toString()));
        var told = told(process.inputReader(StandardCharsets.UTF_8));
        int port = Integer.parseInt(told.group(1));
        return new House(
                process,
                port,
                Integer.parseInt(told.group(2)),
                trust(port),
                key,
                day.floor().openVisits().stream()
                        .map(visit -> visit.id().value())
                        .toList());
    }

    private static Matcher told(BufferedReader out) throws IOException {
        var said = new StringBuilder();
        for (var line = out.readLine(); line != null; line = out.readLine()) {
            var told = TOLD.matcher(said.append(line).append('\n'));
            if (told.find()) {
                return told;
            }
        }
        throw new IOException("the server did not start: " + said);
    }

    /** A program of ours on one core. */
    static Process java(String core, String main, List<String> arguments) throws IOException {
        var command = new ArrayList<>(List.of("taskset", "-c", core));
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(List.of("-XX:+UseSerialGC", "-Xms32m", "-Xmx256m"));
        command.addAll(List.of("-cp", System.getProperty("java.class.path"), main));
        command.addAll(arguments);
        return new ProcessBuilder(command)
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
    }

    /** As a device is told to trust it. */
    static SSLContext trust(int port) throws IOException, GeneralSecurityException {
        var known = KeyStore.getInstance(KeyStore.getDefaultType());
        known.load(null, null);
        var address = URI.create("http://localhost:" + port + "/trust/authority.crt");
        try (InputStream in = address.toURL().openStream()) {
            known.setCertificateEntry(
                    "house", CertificateFactory.getInstance("X.509").generateCertificate(in));
        }
        var managers = TrustManagerFactory.getInstance(TrustManagerFactory.getDefaultAlgorithm());
        managers.init(known);
        var context = SSLContext.getInstance("TLS");
        context.init(null, managers.getTrustManagers(), null);
        return context;
    }

    @Override
    public void close() {
        process.destroy();
        process.onExit().join();
    }
}

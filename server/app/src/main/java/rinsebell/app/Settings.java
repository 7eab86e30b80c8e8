package rinsebell.app;

import java.net.InetAddress;
import java.net.UnknownHostException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import rinsebell.app.door.Certificate;
import rinsebell.app.door.CertificateUnfit;

/** What a person can choose when starting the server. */
public final class Settings {

    private static final int LAST_PORT = 65_535;

    @Spec(Spec.Target.MIXEE)
    private CommandSpec command = CommandSpec.create();

    private int port;
    private InetAddress address = InetAddress.getLoopbackAddress();
    private String host = "localhost";

    @Option(
            names = "--data",
            paramLabel = "DIR",
            // A script that starts the server may know a better place.
            defaultValue = "${sys:rinsebell.data:-rinsebell-data}",
            description = "The folder that keeps everything. Default: ${DEFAULT-VALUE}")
    private Path data = Path.of("rinsebell-data");

    @Option(
            names = "--name",
            paramLabel = "NAME",
            description = "Another name or address by which browsers reach this server, with or without :port. "
                    + "Can be given more than once.")
    private Set<String> names = new LinkedHashSet<>();

    @Option(
            names = "--certificate",
            paramLabel = "FILE",
            description = "Serve HTTPS and HTTP/2 with this certificate and those that vouch for it (PEM).")
    private @Nullable Path certificate;

    @Option(names = "--key", paramLabel = "FILE", description = "The private key of the certificate (PEM, PKCS #8).")
    private @Nullable Path key;

    @Option(
            names = "--open-to-network",
            description = "Allow an address that other machines can reach. Devices come in by invitation; without a "
                    + "certificate others on the network can read along.")
    private boolean openToNetwork;

    /** The port; 0 lets the system choose a free one. */
    @Option(
            names = "--port",
            paramLabel = "N",
            defaultValue = "8460",
            description = "The port to serve on; 0 takes any free one. Default: ${DEFAULT-VALUE}")
    void setPort(int port) {
        if (port < 0 || port > LAST_PORT) {
            throw wrong("--port must be between 0 and " + LAST_PORT + ", but it is " + port + ".");
        }
        this.port = port;
    }

    @Option(
            names = "--host",
            paramLabel = "ADDRESS",
            defaultValue = "localhost",
            description = "The address to serve on. Default: this machine only.")
    void setHost(String host) {
        try {
            this.address = InetAddress.getByName(host);
            this.host = host;
        } catch (UnknownHostException e) {
            throw wrong("--host " + host + " is not an address of this machine.");
        }
    }

    /**
     * Refuses choices that do not go together.
     *
     * @throws ParameterException with the sentence that the person reads
     */
    public void check() {
        if (data.toString().isBlank()) {
            throw wrong("--data needs the name of a folder.");
        }
        if ((certificate == null) != (key == null)) {
            throw wrong("--certificate and --key go together: HTTPS needs both, HTTP neither.");
        }
        if (reachesNetwork() && !openToNetwork) {
            throw wrong("--host " + host
                    + " can be reached from other machines. If that is what you want, add --open-to-network.");
        }
    }

    public int port() {
        return port;
    }

    /** The address to listen on, as the system takes it. */
    public String bindAddress() {
        return address.getHostAddress();
    }

    public Path data() {
        return data;
    }

    /**
     * What HTTPS is served with; empty for HTTP.
     *
     * @param now when it must hold
     * @throws CertificateUnfit if the files that were named can't be used
     */
    Optional<Certificate> certificate(Instant now) throws CertificateUnfit {
        return certificate == null || key == null
                ? Optional.empty()
                : Optional.of(Certificate.read(certificate, key, now));
    }

    /** Whether other machines can reach the server. */
    public boolean reachesNetwork() {
        return !address.isLoopbackAddress();
    }

    /** How the address is written in a link. */
    public String shownHost() {
        boolean everywhere = address.isAnyLocalAddress() || address.isLoopbackAddress();
        return everywhere ? "localhost" : inLink(address);
    }

    /** The names, besides those of the machine for itself, under which browsers may call the server. */
    public Set<String> names() {
        Set<String> all = new LinkedHashSet<>(names);
        if (!address.isAnyLocalAddress()) {
            all.add(inLink(address));
        }
        return all;
    }

    private static String inLink(InetAddress address) {
        String text = address.getHostAddress();
        return text.contains(":") ? "[" + text + "]" : text;
    }

    private ParameterException wrong(String sentence) {
        return new ParameterException(command.commandLine(), sentence);
    }
}

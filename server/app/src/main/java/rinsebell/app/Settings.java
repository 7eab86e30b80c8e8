package rinsebell.app;

import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.UnknownHostException;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import rinsebell.app.door.CertificateUnfit;
import rinsebell.app.time.TimeSources;
import rinsebell.app.trust.SecureDoor;
import rinsebell.app.trust.Whereabouts;

/** What a person can choose when starting the server. */
public final class Settings {

    private static final int LAST_PORT = 65_535;

    private static final Pattern NAME = Pattern.compile("([A-Za-z0-9._-]+|\\[[0-9A-Fa-f:.]+])(:[0-9]{1,5})?");

    @Spec(Spec.Target.MIXEE)
    private CommandSpec command = CommandSpec.create();

    private int port;
    private int securePort;
    private @Nullable InetAddress address;
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
            description = "Serve HTTPS and HTTP/2 with this certificate and those that vouch for it (PEM), "
                    + "rather than with what the server makes itself.")
    private @Nullable Path certificate;

    @Option(names = "--key", paramLabel = "FILE", description = "The private key of the certificate (PEM, PKCS #8).")
    private @Nullable Path key;

    @Option(
            names = "--open-to-network",
            description = "Let other machines reach the server, over HTTPS as well, for which it makes what it needs. "
                    + "Devices come in by invitation.")
    private boolean openToNetwork;

    @Option(
            names = "--behind-proxy",
            description = "Another program on this machine passes requests on to the server: then a request from this "
                    + "machine is not taken for one from the server's own screen.")
    private boolean behindProxy;

    /** The port for HTTP; 0 lets the system choose a free one. */
    @Option(
            names = "--port",
            paramLabel = "N",
            defaultValue = "8460",
            description = "The port to serve on; 0 takes any free one. Default: ${DEFAULT-VALUE}")
    void setPort(int port) {
        this.port = checked("--port", port);
    }

    /** The port for HTTPS; 0 lets the system choose a free one. */
    @Option(
            names = "--secure-port",
            paramLabel = "N",
            defaultValue = "8461",
            description = "The port for HTTPS, where that is served; 0 takes any free one. Default: ${DEFAULT-VALUE}")
    void setSecurePort(int port) {
        this.securePort = checked("--secure-port", port);
    }

    private int checked(String option, int port) {
        if (port < 0 || port > LAST_PORT) {
            throw wrong(option + " must be between 0 and " + LAST_PORT + ", but it is " + port + ".");
        }
        return port;
    }

    @Option(
            names = "--host",
            paramLabel = "ADDRESS",
            description = "The address to serve on. Default: this machine only; with --open-to-network, every address.")
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
        if (!names.stream().allMatch(name -> NAME.matcher(name).matches())) {
            throw wrong("--name takes a name or an address as a browser writes it, with or without :port.");
        }
        if (reachesNetwork() && !openToNetwork) {
            throw wrong("--host " + host
                    + " can be reached from other machines. If that is what you want, add --open-to-network.");
        }
    }

    public int port() {
        return port;
    }

    /** The port for HTTPS, where that is served. */
    public int securePort() {
        return securePort;
    }

    /** The address to listen on, as the system takes it. */
    public String bindAddress() {
        return address().getHostAddress();
    }

    private InetAddress address() {
        if (address != null) {
            return address;
        }
        return openToNetwork ? new InetSocketAddress(0).getAddress() : InetAddress.getLoopbackAddress();
    }

    public Path data() {
        return data;
    }

    /**
     * The way in over TLS; empty where there is none but HTTP.
     *
     * @throws CertificateUnfit if the files that were named, or those in the data folder, can't be used
     */
    Optional<SecureDoor> secureDoor(TimeSources time) throws CertificateUnfit {
        Whereabouts whereabouts = new Whereabouts(names, address());
        if (certificate != null && key != null) {
            return Optional.of(SecureDoor.byFiles(certificate, key, whereabouts, time));
        }
        return openToNetwork
                ? Optional.of(SecureDoor.byOwnAuthority(data.resolve("tls"), whereabouts, time))
                : Optional.empty();
    }

    /** Whether other machines can reach the server. */
    public boolean reachesNetwork() {
        return !address().isLoopbackAddress();
    }

    /** Whether what comes from this machine may come from another. */
    public boolean isBehindProxy() {
        return behindProxy;
    }

    /** How a browser on this machine writes the address in a link. */
    public String shownHost() {
        boolean everywhere = address().isAnyLocalAddress() || address().isLoopbackAddress();
        return everywhere ? "localhost" : Whereabouts.inLink(address());
    }

    /** The names that a person gave, under which browsers may call the server besides those of the machine for itself. */
    public Set<String> names() {
        return Set.copyOf(names);
    }

    private ParameterException wrong(String sentence) {
        return new ParameterException(command.commandLine(), sentence);
    }
}

package rinsebell.app;

import java.net.InetAddress;
import java.net.UnknownHostException;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.Set;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

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
            names = "--open-to-network",
            description = "Allow an address that other machines can reach. "
                    + "Devices and staff cannot sign in yet, so everybody on that network can read and press.")
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
        if (reachesNetwork() && !openToNetwork) {
            throw wrong("--host " + host + " can be reached from other machines, and devices and staff cannot sign in "
                    + "yet. If that is what you want, add --open-to-network.");
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

package rinsebell.demo;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import rinsebell.app.CannotStart;
import rinsebell.app.RunningServer;
import rinsebell.app.Settings;
import rinsebell.app.time.MachineTime;
import rinsebell.app.time.SalonClock;

/**
 * The demo in the process of the tests, for those that neither kill nor halt it: what it reads and compiles is there for
 * the next one.
 */
public final class DemoHere implements AutoCloseable {
    private final RunningServer server;
    private final int port;
    private final int securePort;

    @Command
    private static final class Chosen {
        @Mixin
        private final Settings settings = new Settings();
    }

    private DemoHere(RunningServer server, int port, int securePort) {
        this.server = server;
        this.port = port;
        this.securePort = securePort;
    }

    /**
     * Starts it; when this returns the floor is up.
     *
     * @param more further arguments, as at the command line
     */
    public static DemoHere in(Path data, String... more) throws IOException {
        try (var one = new ServerSocket(0, 1, InetAddress.getLoopbackAddress());
                var other = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            var port = one.getLocalPort();
            var securePort = other.getLocalPort();
            var arguments = new ArrayList<>(
                    List.of("--port", "" + port, "--secure-port", "" + securePort, "--data", data.toString()));
            arguments.addAll(List.of(more));
            var chosen = new Chosen();
            new CommandLine(chosen).parseArgs(arguments.toArray(String[]::new));
            var now = SalonClock.startingAtTheWall(new MachineTime(), 1).now();
            FirstDay.tellIn(data, now, ZoneId.systemDefault());
            one.close();
            other.close();
            return new DemoHere(RunningServer.start(chosen.settings, 1), port, securePort);
        } catch (CannotStart e) {
            throw new IllegalStateException(e);
        }
    }

    public String url() {
        return "http://localhost:" + port;
    }

    /** Over HTTPS, where it was told to serve that. */
    public String secureUrl() {
        return "https://localhost:" + securePort;
    }

    @Override
    public void close() {
        server.close();
    }
}

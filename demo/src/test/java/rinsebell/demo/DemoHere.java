package rinsebell.demo;

import java.io.IOException;
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
    private final Ports ports;

    @Command
    private static final class Chosen {
        @Mixin
        private final Settings settings = new Settings();
    }

    private DemoHere(RunningServer server, Ports ports) {
        this.server = server;
        this.ports = ports;
    }

    /**
     * Starts it; when this returns the floor is up.
     *
     * @param more further arguments, as at the command line
     */
    public static DemoHere in(Path data, String... more) throws IOException {
        var ports = Ports.free();
        var arguments = new ArrayList<>(
                List.of("--port", "" + ports.plain(), "--secure-port", "" + ports.secure(), "--data", data.toString()));
        arguments.addAll(List.of(more));
        var chosen = new Chosen();
        new CommandLine(chosen).parseArgs(arguments.toArray(String[]::new));
        var now = SalonClock.startingAtTheWall(new MachineTime(), 1).now();
        FirstDay.tellIn(data, now, ZoneId.systemDefault());
        try {
            return new DemoHere(RunningServer.start(chosen.settings, 1), ports);
        } catch (CannotStart e) {
            throw new IllegalStateException(e);
        }
    }

    public String url() {
        return ports.url();
    }

    /** Over HTTPS, where it was told to serve that. */
    public String secureUrl() {
        return ports.secureUrl();
    }

    @Override
    public void close() {
        server.close();
    }
}

package rinsebell.app;

import java.io.PrintStream;
import picocli.CommandLine.ExitCode;
import rinsebell.app.trust.WayIn;
import rinsebell.db.Rebuild;

/** Starts a server for a person at a command line, and says how that went. */
public final class Start {

    private final PrintStream out;
    private final PrintStream err;

    Start(PrintStream out, PrintStream err) {
        this.out = out;
        this.err = err;
    }

    /**
     * Starts the server and leaves it running until the process is told to stop.
     *
     * @param speed salon seconds in a real one: 1, but for a demo
     * @return the exit code: 0 when it runs, 1 when it could not start
     */
    public static int serve(Settings settings, int speed) {
        return new Start(System.out, System.err).run(settings, speed);
    }

    int run(Settings settings, int speed) {
        settings.check();
        try {
            RunningServer server = RunningServer.start(settings, speed);
            Runtime.getRuntime().addShutdownHook(new Thread(server::close, "stop"));
            warn(settings);
            server.rebuilt().ifPresent(this::warn);
            out.println("ready on " + server.url());
            server.wayIn().ifPresent(this::tell);
            tellFirstCode(settings, server);
            out.flush();
            return ExitCode.OK;
        } catch (CannotStart e) {
            err.println(e.getMessage());
            return ExitCode.SOFTWARE;
        }
    }

    /** Where nobody can stand at the server, whoever reads its console is the first. */
    private void tellFirstCode(Settings settings, RunningServer server) {
        if (settings.reachesNetwork()) {
            server.firstCode()
                    .ifPresent(
                            code -> out.println("No device is in yet. To let the first one in, open /join on it within "
                                    + "an hour, over HTTPS, and type: " + code));
        }
    }

    private void tell(WayIn way) {
        out.println("also on " + String.join(" ", way.secure()));
        way.fingerprint().ifPresent(authority -> {
            out.println("other devices begin at " + way.welcome());
            out.println("SHA-256 fingerprint of what they trust: " + String.join(" ", authority.groups()));
        });
    }

    private void warn(Rebuild made) {
        err.println("Warning: " + told(made)
                + (made.lacking() == 0
                        ? ""
                        : " A copy holds " + made.lacking() + " facts more than the journal: if it is of this salon, "
                                + "the journal has lost its end."));
    }

    private static String told(Rebuild made) {
        String kept =
                "; bowls, clocks and bells are not. The old file, if there was one, lies in the data folder under "
                        + "set-aside.";
        return switch (made.source()) {
            case JOURNAL ->
                "at " + made.at() + " the database had to be made again from the journal. Labels, notes and "
                        + "client records from before may be missing" + kept;
            case COPY_AND_JOURNAL ->
                "at " + made.at() + " the database had to be made again from the journal and the "
                        + "copy of " + made.copied()
                        + ". Labels, notes and client records that came after that copy may "
                        + "be missing" + kept;
            case COPY_ALONE ->
                "at " + made.at() + " this folder was restored from a copy that goes up to " + made.copied()
                        + ". Nothing that was recorded later is in it.";
        };
    }

    private void warn(Settings settings) {
        if (settings.reachesNetwork()) {
            err.println(
                    "Warning: other machines can reach this server. Devices come in by invitation only, but over plain "
                            + "HTTP others on the network can read along.");
        }
    }
}

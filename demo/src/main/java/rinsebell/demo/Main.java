package rinsebell.demo;

import java.io.IOException;
import java.time.Instant;
import java.time.ZoneId;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.ExitCode;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import rinsebell.app.Settings;
import rinsebell.app.Start;
import rinsebell.app.time.MachineTime;
import rinsebell.app.time.SalonClock;

/** Starts the server with the invented salon's Saturday. */
@Command(
        name = "demo/run",
        mixinStandardHelpOptions = true,
        description = "Serves an invented salon in the middle of its Saturday.")
public final class Main implements Callable<Integer> {
    /** An hour in a minute; faster than that nobody sees a bell. */
    private static final int FASTEST = 60;

    @Spec
    private CommandSpec command = CommandSpec.create();

    @Mixin
    private Settings settings = new Settings();

    private int speed = 1;

    @Option(
            names = "--speed",
            paramLabel = "N",
            defaultValue = "1",
            description = "Salon seconds in each real one. Default: ${DEFAULT-VALUE}")
    void setSpeed(int speed) {
        if (speed < 1 || speed > FASTEST) {
            throw new ParameterException(
                    command.commandLine(), "--speed must be between 1 and " + FASTEST + ", but it is " + speed + ".");
        }
        this.speed = speed;
    }

    public static void main(String... arguments) {
        int code = new CommandLine(new Main()).execute(arguments);
        if (code != 0) {
            System.exit(code);
        }
    }

    @Override
    public Integer call() {
        settings.check();
        try {
            FirstDay.tellIn(settings.data(), rightNow(), ZoneId.systemDefault());
        } catch (IOException e) {
            command.commandLine()
                    .getErr()
                    .println("The demo's day can't be written into " + settings.data()
                            + ". Give that folder to this user, or choose another with --data. (" + e + ")");
            return ExitCode.SOFTWARE;
        }
        return Start.serve(settings, speed);
    }

    private static Instant rightNow() {
        return SalonClock.startingAtTheWall(new MachineTime(), 1).now();
    }
}

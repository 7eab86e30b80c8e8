package rinsebell.app;

import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Starts the server from the command line. */
@Command(
        name = "rinsebell",
        mixinStandardHelpOptions = true,
        version = "Rinsebell 0.1.0",
        subcommands = {
            RestoreCommand.class,
            CheckCommand.class,
            VerifyCommand.class,
            ResetPinsCommand.class,
            LicencesCommand.class
        },
        description = "The bell of a colour station: serves one salon's floor to its browsers.")
public final class Main implements Callable<Integer> {

    @Mixin
    private Settings settings = new Settings();

    public static void main(String... arguments) {
        int code = new CommandLine(new Main()).execute(arguments);
        if (code != 0) {
            System.exit(code);
        }
    }

    @Override
    public Integer call() {
        return Start.serve(settings, 1);
    }
}

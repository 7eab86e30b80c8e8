package rinsebell.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.ExitCode;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import rinsebell.db.Keyring;

/** For a manager who has forgotten their PIN: whoever may write into the data folder takes the managers' PINs away. */
@Command(
        name = "reset-pins",
        mixinStandardHelpOptions = true,
        description = "Takes the PINs of all managers away, also while the server works in the folder. "
                + "They choose new ones on the server's own screen.")
final class ResetPinsCommand implements Callable<Integer> {

    @Spec
    private CommandSpec command = CommandSpec.create();

    @Option(names = "--data", paramLabel = "DIR", required = true, description = "The salon's data folder.")
    private Path data = Path.of("");

    @Override
    public Integer call() {
        if (!Files.isDirectory(data)) {
            command.commandLine().getErr().println("There is no folder " + data + ".");
            return ExitCode.SOFTWARE;
        }
        try {
            Keyring.askForReset(data);
            command.commandLine()
                    .getOut()
                    .println("The managers have no PIN any more. Choose new ones on the server's own screen, under "
                            + "\"PINs\": until then that screen opens everything.");
            return ExitCode.OK;
        } catch (IOException e) {
            command.commandLine().getErr().println("Nothing was changed: this user may not write into " + data + ".");
            return ExitCode.SOFTWARE;
        }
    }
}

package rinsebell.app;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.ExitCode;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import rinsebell.app.time.MachineTime;
import rinsebell.db.CopyUnreadable;
import rinsebell.db.FolderInUse;
import rinsebell.db.NotRestored;
import rinsebell.db.Restore;
import rinsebell.db.StoreBroken;
import rinsebell.db.journal.JournalDamaged;

/** Makes a new data folder from a copy or another data folder. */
@Command(
        name = "restore",
        mixinStandardHelpOptions = true,
        description = "Makes a new data folder from a copy, or from another data folder in which no server works.")
final class RestoreCommand implements Callable<Integer> {

    @Spec
    private CommandSpec command = CommandSpec.create();

    @Option(
            names = "--data",
            paramLabel = "DIR",
            required = true,
            description = "The new folder; empty or not there yet.")
    private Path data = Path.of("");

    @Option(
            names = "--from",
            paramLabel = "COPY_OR_DIR",
            required = true,
            description = "A file from a folder of copies, or a whole data folder. Only one of your own: a copy is a "
                    + "script that the database carries out.")
    private Path from = Path.of("");

    @Override
    public Integer call() {
        try {
            var contents = Restore.restore(from, data, Instant.ofEpochMilli(new MachineTime().wallMillis()));
            command.commandLine().getOut().println("restored into " + data + ": " + CheckCommand.told(contents));
            return ExitCode.OK;
        } catch (NotRestored | FolderInUse e) {
            return failed(String.valueOf(e.getMessage()));
        } catch (CopyUnreadable | IOException | StoreBroken | JournalDamaged e) {
            return failed("Nothing was restored from " + from + ": " + e.getMessage());
        }
    }

    private int failed(String why) {
        command.commandLine().getErr().println(why);
        return ExitCode.SOFTWARE;
    }
}

package rinsebell.app;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.ExitCode;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import rinsebell.db.DataFolder;
import rinsebell.db.FolderInUse;
import rinsebell.db.Verified;
import rinsebell.db.Verifying;

/** Finds what was changed by hand in a data folder. */
@Command(
        name = "verify",
        mixinStandardHelpOptions = true,
        description = "Finds what was changed by hand: reads journal, database and copies from end to end, while no "
                + "server works in the folder, and changes none of them. Labels, notes and records of clients are not "
                + "looked at, since they can be erased.")
final class VerifyCommand implements Callable<Integer> {

    @Spec
    private CommandSpec command = CommandSpec.create();

    @Option(names = "--data", paramLabel = "DIR", required = true, description = "The salon's data folder.")
    private Path data = Path.of("");

    @Override
    public Integer call() {
        if (!Files.isDirectory(data)) {
            return failed("There is no folder " + data + ".");
        }
        try (DataFolder folder = DataFolder.open(data)) {
            return told(Verifying.of(folder));
        } catch (FolderInUse e) {
            return failed("A server works in " + data + ". Stop it first.");
        } catch (IOException e) {
            return failed("Nothing could be verified: " + e.getMessage());
        }
    }

    private int told(Verified found) {
        PrintWriter out = command.commandLine().getOut();
        out.println("%d facts of %d presses, %d rows of the trail, %d copies"
                .formatted(found.end().lines(), found.presses(), found.steps(), found.copies()));
        if (found.behind() > 0) {
            out.println(found.behind() + " facts are not in the database yet; the next start brings them in");
        }
        if (found.isSound()) {
            out.println("all as it was written; the newest fact's hash is "
                    + found.end().hash());
            return ExitCode.OK;
        }
        found.faults().forEach(fault -> command.commandLine().getErr().println(fault));
        return ExitCode.SOFTWARE;
    }

    private int failed(String why) {
        command.commandLine().getErr().println(why);
        return ExitCode.SOFTWARE;
    }
}

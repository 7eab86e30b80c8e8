package rinsebell.app;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.ExitCode;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import rinsebell.db.Contents;
import rinsebell.db.CopyUnreadable;

/** Reads a copy from end to end, in memory alone, and says what is in it. */
@Command(
        name = "check",
        mixinStandardHelpOptions = true,
        description = "Reads a copy from end to end, says what is in it, and changes nothing.")
final class CheckCommand implements Callable<Integer> {

    @Spec
    private CommandSpec command = CommandSpec.create();

    @Parameters(paramLabel = "COPY", description = "A file from a folder of copies; only one of your own.")
    private Path copy = Path.of("");

    @Override
    public Integer call() {
        try {
            command.commandLine().getOut().println("a whole copy: " + told(Contents.of(copy)));
            return ExitCode.OK;
        } catch (CopyUnreadable | IOException e) {
            command.commandLine().getErr().println(copy + " can't be used: " + e.getMessage());
            return ExitCode.SOFTWARE;
        }
    }

    static String told(Contents contents) {
        return "%d facts, the newest of %s; %d labels and notes; %d client records"
                .formatted(
                        contents.facts(),
                        contents.newest() == null ? "no time" : contents.newest(),
                        contents.texts(),
                        contents.clients());
    }
}

package rinsebell.app;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.ExitCode;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Says which parts of others the program is made of, and under which licences they are. */
@Command(
        name = "licences",
        mixinStandardHelpOptions = true,
        description = "Lists the parts of others in this program, and their licences.")
final class LicencesCommand implements Callable<Integer> {

    /** Made when the program is packed. */
    private static final String LIST = "/META-INF/THIRD-PARTY.txt";

    @Spec
    private CommandSpec command = CommandSpec.create();

    @Override
    public Integer call() throws IOException {
        try (InputStream list = LicencesCommand.class.getResourceAsStream(LIST)) {
            if (list == null) {
                command.commandLine().getErr().println("The list is made when the program is packed.");
                return ExitCode.SOFTWARE;
            }
            command.commandLine().getOut().print(new String(list.readAllBytes(), StandardCharsets.UTF_8));
            command.commandLine().getOut().flush();
            return ExitCode.OK;
        }
    }
}

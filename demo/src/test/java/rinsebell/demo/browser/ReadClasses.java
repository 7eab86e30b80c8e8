package rinsebell.demo.browser;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;

/**
 * The classes of a program as a JVM keeps them once it has read and verified them (JEP 350), beside its jar. A test that
 * starts the program costs half as much with them; without them, or with those of another JVM, it starts all the same.
 */
final class ReadClasses {
    private static final List<String> SILENT = List.of("-Xlog:disable", "-Xlog:all=error:stderr");

    private ReadClasses() {}

    /**
     * What the JVM is told; made by whichever test process comes first, while the others wait.
     *
     * @param jar as the program is started with it
     */
    static List<String> of(String jar) {
        var file = Path.of(jar + ".jsa");
        var options = new ArrayList<>(SILENT);
        options.add("-XX:SharedArchiveFile=" + file);
        try (var one = FileChannel.open(Path.of(jar + ".lock"), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
                var alone = one.lock()) {
            if (alone.isValid() && isOlder(file, Path.of(jar))) {
                make(jar, file);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return options;
    }

    private static boolean isOlder(Path file, Path jar) throws IOException {
        return !Files.exists(file) || Files.getLastModifiedTime(file).compareTo(Files.getLastModifiedTime(jar)) < 0;
    }

    /** The JVM writes them when the program that read them ends by itself. */
    private static void make(String jar, Path file) throws IOException {
        var next = Path.of(file + ".next");
        var data = Files.createTempDirectory("rinsebell-classes");
        var command = new ArrayList<>(
                List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-XX:+UseSerialGC"));
        command.addAll(SILENT);
        command.addAll(List.of("-XX:ArchiveClassesAtExit=" + next, "-jar", jar));
        command.addAll(List.of("--port", "0", "--secure-port", "0", "--data", data.toString()));
        var program = new ProcessBuilder(command)
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        try (var out = program.inputReader(UTF_8)) {
            var first = out.readLine();
            program.destroy();
            program.onExit().join();
            if (first == null || !Files.exists(next)) {
                throw new IOException("the program says this instead of being ready: " + first);
            }
        }
        Files.move(next, file, StandardCopyOption.ATOMIC_MOVE);
    }
}

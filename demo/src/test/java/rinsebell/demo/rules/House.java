package rinsebell.demo.rules;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** The compiled classes of every module, as Maven left them. */
final class House {
    static final Path TOP = top();
    private static final List<String> MODULES =
            List.of("server/floor", "server/planner", "db", "web", "server/app", "demo");

    /** What is shipped. */
    static final JavaClasses PROGRAM = classes(MODULES.stream().map(module -> module + "/target/classes"));

    /** What checks it. */
    static final JavaClasses TESTS = classes(MODULES.stream().map(module -> module + "/target/test-classes"));

    private House() {}

    private static Path top() {
        var here = Path.of("").toAbsolutePath();
        return Files.exists(here.resolve("server/floor")) ? here : here.resolveSibling("");
    }

    private static JavaClasses classes(Stream<String> folders) {
        var paths = folders.map(TOP::resolve).toList();
        var missing = paths.stream().filter(path -> !Files.isDirectory(path)).toList();
        if (!missing.isEmpty()) {
            throw new IllegalStateException("not compiled yet: " + missing + "; run Maven with -am");
        }
        return new ClassFileImporter().importPaths(paths);
    }
}

package rinsebell.demo.rules;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;

/** The compiled classes of every module, as Maven left them. */
final class House {
    static final Path TOP = top();

    /** What is shipped. */
    static final JavaClasses PROGRAM =
            classes("classes", "server/floor", "server/planner", "db", "web/main", "server/app/main", "demo/main");

    /** What checks it. */
    static final JavaClasses TESTS =
            classes("test-classes", "server/floor", "server/planner", "db", "web", "server/app", "demo", "demo/rules");

    private House() {}

    private static Path top() {
        return Stream.iterate(Path.of("").toAbsolutePath(), Path::getParent)
                .filter(folder -> Files.exists(folder.resolve("server/floor")))
                .findFirst()
                .orElseThrow();
    }

    private static JavaClasses classes(String folder, String... modules) {
        var paths = Stream.of(modules)
                .map(module -> TOP.resolve(module).resolve("target").resolve(folder))
                .toList();
        var missing = paths.stream().filter(path -> !Files.isDirectory(path)).toList();
        if (!missing.isEmpty()) {
            throw new IllegalStateException("not compiled yet: " + missing + "; run Maven with -am");
        }
        return new ClassFileImporter().importPaths(paths);
    }
}

package rinsebell.demo.rules;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The notes for those who work in the house (DEVELOPERS.md): their sections, and the tables in them. */
final class Notes {
    private static final List<String> MAINS = List.of("server/floor", "server/planner", "db", "web", "server/app");

    private static final String TEXT = text(House.TOP.resolve("DEVELOPERS.md"));

    private Notes() {}

    /** What stands under a heading, up to the next; empty where there is none. */
    static String section(String heading) {
        var found = Pattern.compile("(?ms)^#{2,3} " + Pattern.quote(heading) + "$(.*?)(?=^#{2,3} |\\z)")
                .matcher(TEXT);
        return found.find() ? found.group(1).strip() : "";
    }

    /** The cells of each row of a section's table, but for its head. */
    static List<List<String>> rows(String heading) {
        return cells(section(heading)).skip(2).toList();
    }

    /** The cells of every row of every table. */
    static Stream<List<String>> rows() {
        return cells(TEXT);
    }

    private static Stream<List<String>> cells(String text) {
        return text.lines()
                .filter(line -> line.startsWith("| "))
                .map(line -> Arrays.stream(line.substring(1, line.length() - 1).split("\\|"))
                        .map(String::strip)
                        .toList());
    }

    /** Names in code letters, such as {@code Key}. */
    static List<String> names(String cell) {
        return Pattern.compile("`([^`]+)`")
                .matcher(cell)
                .results()
                .map(found -> found.group(1))
                .toList();
    }

    /** What is shipped to salons, as it is written. */
    static Stream<Path> sources(String ending) {
        return MAINS.stream().flatMap(module -> files(House.TOP.resolve(module + "/src/main"), ending));
    }

    static Stream<Path> files(Path folder, String ending) {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(file -> file.toString().endsWith(ending)).toList().stream();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}

package rinsebell.db.journal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * One file of the journal.
 *
 * @param firstLine the number of its first line, which is also its name
 */
record Segment(Path file, long firstLine) {

    private static final Pattern NAME = Pattern.compile("journal-(\\d{12})\\.txt");

    static Segment startingAt(Path folder, long firstLine) {
        return new Segment(folder.resolve("journal-%012d.txt".formatted(firstLine)), firstLine);
    }

    /** The files of a journal, oldest first; other files in the folder are left alone, and it need not be there. */
    static List<Segment> in(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.sorted().flatMap(Segment::named).toList();
        }
    }

    private static Stream<Segment> named(Path file) {
        Matcher name = NAME.matcher(file.getFileName().toString());
        return name.matches() ? Stream.of(new Segment(file, Long.parseLong(name.group(1)))) : Stream.empty();
    }
}

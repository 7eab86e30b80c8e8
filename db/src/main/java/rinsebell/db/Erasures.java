package rinsebell.db;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Collection;
import java.util.List;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import rinsebell.db.journal.Forced;
import rinsebell.floor.TextId;
import rinsebell.floor.visit.ClientId;

/**
 * What was erased, by its numbers alone, in a small file beside the database: a copy from before still has it, and must
 * not bring it back.
 */
final class Erasures {

    private static final Pattern LINE = Pattern.compile("(?:client (\\d{1,18}) )?texts((?: \\d{1,18})*) end");

    private final Path file;

    Erasures(Path file) {
        this.file = file;
    }

    /**
     * One erasure.
     *
     * @param client whose record; null where texts of no record were erased
     * @param texts that are gone
     */
    record Erasure(@Nullable ClientId client, List<TextId> texts) {

        private String line() {
            String whose = client == null ? "" : "client " + client.value() + " ";
            String numbers = texts.stream().map(text -> " " + text.seq()).collect(Collectors.joining());
            return whose + "texts" + numbers + " end\n";
        }

        private static Stream<Erasure> read(String line) {
            Matcher parts = LINE.matcher(line);
            return parts.matches() ? Stream.of(of(parts)) : Stream.empty();
        }

        private static Erasure of(Matcher parts) {
            List<TextId> texts = Stream.of(parts.group(2).split(" "))
                    .filter(number -> !number.isEmpty())
                    .map(number -> new TextId(Long.parseLong(number)))
                    .toList();
            String client = parts.group(1);
            return new Erasure(client == null ? null : new ClientId(Long.parseLong(client)), texts);
        }
    }

    /** Notes one; it is on disk when this returns. */
    synchronized void add(@Nullable ClientId client, Collection<TextId> texts) throws IOException {
        boolean isNew = !Files.exists(file);
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.APPEND)) {
            // A line that was torn when the power went must not swallow this one.
            ByteBuffer rest = ByteBuffer.wrap(("\n" + new Erasure(client, List.copyOf(texts)).line()).getBytes(UTF_8));
            while (rest.hasRemaining()) {
                channel.write(rest);
            }
            channel.force(true);
        }
        if (isNew) {
            Forced.folder(Objects.requireNonNull(file.getParent(), "the file lies in the data folder"));
        }
    }

    /** All that is known; a line that was not wholly written is of an erasure that nobody was told had happened. */
    List<Erasure> all() throws IOException {
        return Files.exists(file)
                ? Files.readAllLines(file).stream().flatMap(Erasure::read).toList()
                : List.of();
    }
}

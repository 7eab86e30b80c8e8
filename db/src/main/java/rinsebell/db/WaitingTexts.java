package rinsebell.db;

import static java.nio.charset.StandardCharsets.UTF_8;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rinsebell.floor.Ledger.Entry;

/**
 * Texts on their way into the database: a small file that is forced to disk before the journal and emptied as soon as
 * the database has been forced to disk too. The journal can't take texts, since it can't forget; without this file a
 * power cut could lose the label of a client who is sitting in a chair.
 */
final class WaitingTexts implements AutoCloseable {

    private static final ObjectMapper JSON = new ObjectMapper();

    private final Path path;
    private FileChannel file;

    private WaitingTexts(Path path) throws IOException {
        this.path = path;
        this.file = opened(path);
    }

    /**
     * A text and where it belongs.
     *
     * @param press the press it came with: a number may have been given to a press that was not saved, and again
     * @param seq the number of its fact
     */
    record Line(String press, long seq, String body) {}

    static WaitingTexts open(Path path) throws IOException {
        return new WaitingTexts(path);
    }

    private static FileChannel opened(Path path) throws IOException {
        return FileChannel.open(path, StandardOpenOption.CREATE, StandardOpenOption.APPEND);
    }

    /** What waits in a file; a line that was not wholly written is of a press that was not saved. */
    static List<Line> read(Path path) throws IOException {
        if (!Files.exists(path)) {
            return List.of();
        }
        return new String(Files.readAllBytes(path), UTF_8)
                .lines()
                .map(WaitingTexts::parse)
                .flatMap(Optional::stream)
                .toList();
    }

    /** Keeps the texts of these presses; when this returns they are on disk. */
    void keep(List<Entry> entries) throws IOException {
        String lines =
                String.join("", entries.stream().flatMap(WaitingTexts::lines).toList());
        if (!lines.isEmpty()) {
            reopenIfInterrupted();
            write(ByteBuffer.wrap(("\n" + lines).getBytes(UTF_8)));
        }
    }

    private void write(ByteBuffer rest) throws IOException {
        while (rest.hasRemaining()) {
            file.write(rest);
        }
        file.force(false);
    }

    /** A thread that was interrupted in the middle of a write left the file closed. */
    private void reopenIfInterrupted() throws IOException {
        if (!file.isOpen()) {
            file = opened(path);
        }
    }

    long length() throws IOException {
        return file.size();
    }

    /** Forgets them all. */
    void empty() throws IOException {
        file.truncate(0);
        file.force(false);
    }

    @Override
    public void close() throws IOException {
        file.close();
    }

    private static Stream<String> lines(Entry entry) {
        return entry.texts().entrySet().stream()
                .map(text -> JSON.createObjectNode()
                                .put("press", entry.id())
                                .put("seq", text.getKey())
                                .put("body", text.getValue())
                        + "\n");
    }

    private static Optional<Line> parse(String line) {
        try {
            return JSON.readTree(line) instanceof ObjectNode object ? whole(object) : Optional.empty();
        } catch (JsonProcessingException e) {
            return Optional.empty();
        }
    }

    private static Optional<Line> whole(JsonNode line) {
        return line.hasNonNull("press") && line.hasNonNull("seq") && line.hasNonNull("body")
                ? Optional.of(new Line(
                        line.get("press").asText(),
                        line.get("seq").asLong(),
                        line.get("body").asText()))
                : Optional.empty();
    }
}

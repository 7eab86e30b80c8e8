package rinsebell.demo.browser;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse.BodyHandlers;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** A screen with all bells: what the feed brings to it, and when, on a clock that nobody sets. */
final class BellBoard implements AutoCloseable {
    private static final ObjectMapper JSON = new ObjectMapper();

    /** A bell that rings can be heard, at an address that names it. */
    private static final Pattern RINGS = Pattern.compile("action=\"(/bells/acknowledge[^\"]*)\"");

    private final List<Listed> listed = new CopyOnWriteArrayList<>();
    private final List<Beat> beats = new CopyOnWriteArrayList<>();
    private final Stream<String> lines;
    private String event = "";

    /**
     * The list has come.
     *
     * @param ringing an address for each bell in it that rings
     * @param millis when it came
     */
    record Listed(List<String> ringing, double millis) {}

    /**
     * A beat has come.
     *
     * @param now the salon's time, in milliseconds since 1970
     * @param clock whether it can be believed
     * @param millis when it came
     */
    record Beat(long now, String clock, double millis) {}

    private BellBoard(Stream<String> lines) {
        this.lines = lines;
    }

    /** A screen that listens from now on. */
    static BellBoard at(String url) throws IOException, InterruptedException {
        var asked = HttpRequest.newBuilder(URI.create(url + "/feed?board=all-bells"))
                .build();
        var board = new BellBoard(
                HttpClient.newHttpClient().send(asked, BodyHandlers.ofLines()).body());
        var thread = new Thread(board::listen, "bell-board");
        thread.setDaemon(true);
        thread.start();
        return board;
    }

    private void listen() {
        try {
            lines.forEach(this::take);
        } catch (UncheckedIOException serverGone) {
            // What came until then counts.
        }
    }

    private void take(String line) {
        var came = SalonTime.steadyMillis();
        if (line.startsWith("event: ")) {
            event = line.substring("event: ".length());
        } else if (line.startsWith("data: ")) {
            take(read(line.substring("data: ".length())), came);
        }
    }

    private void take(JsonNode data, double came) {
        if (event.equals("beat")) {
            beats.add(new Beat(data.path("now").asLong(), data.path("clock").asText(), came));
        } else if (data.path("id").asText().equals("bell-list")) {
            var ringing = RINGS.matcher(data.path("html").asText()).results();
            listed.add(new Listed(ringing.map(found -> found.group(1)).toList(), came));
        }
    }

    private static JsonNode read(String json) {
        try {
            return JSON.readTree(json);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("no JSON: " + json, e);
        }
    }

    /** Every list, in the order in which they came. */
    List<Listed> listed() {
        return List.copyOf(listed);
    }

    List<Beat> beats() {
        return List.copyOf(beats);
    }

    /** How many bells ring. */
    int ringing() {
        return listed.isEmpty() ? 0 : listed.get(listed.size() - 1).ringing().size();
    }

    /** What the last beat said of the clock. */
    String clock() {
        return beats.isEmpty() ? "" : beats.get(beats.size() - 1).clock();
    }

    @Override
    public void close() {
        lines.close();
    }
}

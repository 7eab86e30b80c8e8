package rinsebell.demo.kill;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.List;
import java.util.stream.StreamSupport;

/**
 * A press and its answer, as they went over the wire.
 *
 * @param status of HTTP
 * @param text the answer's body
 */
record Answered(Asked asked, int status, String text) {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final int ACCEPTED = 201;
    private static final int REFUSED = 409;

    /**
     * A press as it is sent.
     *
     * @param id the press id
     * @param path where it goes, such as {@code /api/visits}
     * @param body a JSON object
     * @param pressedMillis when it was pressed, in milliseconds since 1970, where the queue of a browser sends it later;
     *     0 where it is sent at once
     */
    record Asked(String id, String path, String body, long pressedMillis) {
        boolean isQueued() {
            return pressedMillis > 0;
        }
    }

    boolean isAccepted() {
        return status == ACCEPTED;
    }

    /** Whether the server has decided it, so that the same press must be answered the same for ever. */
    boolean isDecided() {
        return isAccepted() || status == REFUSED;
    }

    /** The numbers of the facts that it wrote. */
    List<Long> facts() {
        return StreamSupport.stream(tree().path("facts").spliterator(), false)
                .map(JsonNode::asLong)
                .toList();
    }

    private JsonNode tree() {
        try {
            return JSON.readTree(text);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("no JSON came in answer to " + asked + ": " + text, e);
        }
    }
}

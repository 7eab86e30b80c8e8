package rinsebell.app.feed;

import static java.nio.charset.StandardCharsets.UTF_8;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.Map;

/**
 * Writes events in the text format of event streams (WHATWG HTML, section 9.2 "Server-sent events"). Data is always one
 * line of JSON, which escapes every line end, so no text of a person can end an event early.
 */
final class Events {

    private static final ObjectMapper JSON = new ObjectMapper();

    /** Asks the browser to try again a second after a broken connection; its own wait is several seconds. */
    static final byte[] RETRY = "retry: 1000\n\n".getBytes(UTF_8);

    private Events() {}

    static byte[] fragment(String run, long number, Fragment fragment) {
        return event(
                "fragment",
                run,
                number,
                new FragmentData(fragment.id(), number, fragment.html().get()));
    }

    static byte[] beat(Beat beat) {
        return event("beat", beat.run(), beat.n(), beat);
    }

    /** The board has other pieces than before: the page must be loaded anew. */
    static byte[] redraw(String run, long number) {
        return event("redraw", run, number, Map.of("n", number));
    }

    private static byte[] event(String name, String run, long number, Object data) {
        return ("event: " + name + "\nid: " + run + "-" + number + "\ndata: " + json(data) + "\n\n").getBytes(UTF_8);
    }

    private static String json(Object data) {
        try {
            return JSON.writeValueAsString(data);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("feed data must always be JSON: " + data, e);
        }
    }

    private record FragmentData(String id, long n, String html) {}
}

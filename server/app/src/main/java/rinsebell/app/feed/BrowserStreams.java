package rinsebell.app.feed;

import java.util.HashMap;
import java.util.Map;

/**
 * How many streams each browser has open on HTTP/1.1. There it opens six connections to one server at most, for all its
 * tabs together (common practice of browsers), and each stream takes one: a press must always find one free.
 */
final class BrowserStreams {

    static final int MOST = 4;

    private final Map<String, Integer> open = new HashMap<>();

    /** Whether there was room for one more; whoever got it must give it back. */
    synchronized boolean take(String device) {
        int before = open.getOrDefault(device, 0);
        if (before >= MOST) {
            return false;
        }
        open.put(device, before + 1);
        return true;
    }

    synchronized void giveBack(String device) {
        open.computeIfPresent(device, (id, count) -> count == 1 ? null : count - 1);
    }
}

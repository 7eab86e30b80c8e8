package rinsebell.app.feed;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import rinsebell.app.door.Wire;

/**
 * The streams that each browser has open on HTTP/1.1. There it opens six connections to one server at most, for all its
 * tabs together (common practice of browsers), and each stream takes one: a press must always find one free.
 */
final class BrowserStreams {

    static final int MOST = 4;

    private final Map<String, List<Wire>> open = new HashMap<>();

    /**
     * Whether there was room for one more; whoever got it must give it back. A page that was left just now has hung up,
     * but its stream would find out only at the next beats.
     */
    synchronized boolean take(String device, Wire wire) {
        List<Wire> wires = open.computeIfAbsent(device, id -> new ArrayList<>());
        if (wires.size() >= MOST) {
            wires.removeIf(Wire::isGone);
        }
        return wires.size() < MOST && wires.add(wire);
    }

    synchronized void giveBack(String device, Wire wire) {
        open.computeIfPresent(device, (id, wires) -> wires.remove(wire) && wires.isEmpty() ? null : wires);
    }
}

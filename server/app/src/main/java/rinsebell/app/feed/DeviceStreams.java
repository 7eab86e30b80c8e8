package rinsebell.app.feed;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import rinsebell.app.door.Wire;

/** Which device each open stream belongs to, so that one that is thrown out hears nothing any more. */
final class DeviceStreams {

    private final Map<Wire, Long> open = new ConcurrentHashMap<>();
    private final Set<Long> out = ConcurrentHashMap.newKeySet();

    /** One that was thrown out while it asked for the stream does not get it; no number is given twice. */
    void add(long device, Wire wire) {
        open.put(wire, device);
        if (out.contains(device)) {
            wire.cutOff();
        }
    }

    void remove(Wire wire) {
        open.remove(wire);
    }

    void cutOff(long device) {
        out.add(device);
        List<Wire> theirs = open.entrySet().stream()
                .filter(entry -> entry.getValue() == device)
                .map(Map.Entry::getKey)
                .toList();
        theirs.forEach(Wire::cutOff);
    }
}

package rinsebell.app.door;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * The open connections of strangers. When there are too many, the one of the address that has most of them gives way, the
 * oldest first: so whoever opens a thousand loses their own, and whoever has just come can still say who they are.
 *
 * @param <C> a connection
 */
final class Lobby<C> {
    private final int most;
    private final Map<C, String> open = new LinkedHashMap<>();
    private final Map<String, Integer> fromEach = new HashMap<>();

    Lobby(int most) {
        this.most = most;
    }

    /** Takes one in; answers which has to go for it. */
    synchronized Optional<C> take(C connection, String from) {
        open.put(connection, from);
        fromEach.merge(from, 1, Integer::sum);
        return open.size() > most ? Optional.of(givesWay()) : Optional.empty();
    }

    private C givesWay() {
        int crowd = fromEach.values().stream().mapToInt(Integer::intValue).max().orElseThrow();
        C oldest = open.entrySet().stream()
                .filter(one -> fromEach.getOrDefault(one.getValue(), 0) == crowd)
                .map(Map.Entry::getKey)
                .findFirst()
                .orElseThrow();
        leave(oldest);
        return oldest;
    }

    /** Forgets one that is closed, or turned out to be no stranger's; answers whether it was a stranger's until now. */
    synchronized boolean leave(C connection) {
        String from = open.remove(connection);
        if (from == null) {
            return false;
        }
        fromEach.computeIfPresent(from, (same, many) -> many == 1 ? null : many - 1);
        return true;
    }

    synchronized int size() {
        return open.size();
    }
}

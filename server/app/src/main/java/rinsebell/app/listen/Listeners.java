package rinsebell.app.listen;

import java.time.Duration;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import rinsebell.app.time.TimeSources;
import rinsebell.web.board.Listening;

/**
 * Devices that said not long ago that they listen. Nothing of it is kept: a device that is there says so again within
 * seconds of a start.
 */
public final class Listeners {
    /** A device says so every 10 s; it may fail once. */
    static final Duration GONE_AFTER = Duration.ofSeconds(25);

    private static final int MOST = 500;

    private final TimeSources time;
    private final Map<String, Heard> byPage = new HashMap<>();

    private record Heard(Listening listening, long atNanos) {}

    public Listeners(TimeSources time) {
        this.time = time;
    }

    /**
     * A page says that it listens.
     *
     * @param page an id of its own making
     * @return whether that is news
     */
    public synchronized boolean heard(String page, Listening listening) {
        if (isFull(page)) {
            forgetGone();
        }
        if (isFull(page)) {
            return false;
        }
        var before = byPage.put(page, new Heard(listening, time.monotonicNanos()));
        return before == null || isGone(before) || !before.listening().equals(listening);
    }

    private boolean isFull(String page) {
        return byPage.size() >= MOST && !byPage.containsKey(page);
    }

    /** Forgets those that are gone. */
    public synchronized void forgetGone() {
        byPage.values().removeIf(this::isGone);
    }

    /** All that are there, in an order that does not hang on who came first. */
    public synchronized List<Listening> all() {
        return byPage.values().stream()
                .filter(heard -> !isGone(heard))
                .map(Heard::listening)
                .sorted(Comparator.comparing(Listening::toString))
                .toList();
    }

    private boolean isGone(Heard heard) {
        return time.monotonicNanos() - heard.atNanos >= GONE_AFTER.toNanos();
    }
}

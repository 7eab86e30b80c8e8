package rinsebell.app.door;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.LongSupplier;

/**
 * What strangers ask for, counted for each address: how much in a while, and how much at once. Whoever asks for too much
 * waits; whoever comes from elsewhere does not notice.
 */
final class Crowd {
    /** A handshake of TLS costs about so many pages. */
    static final int CONNECTION = 16;

    static final int REQUEST = 1;

    /** Addresses that are counted at once; the one that asked longest ago is forgotten. */
    private static final int MOST = 4_096;

    private static final double NANOS = 1e9;

    private final CrowdLimits limits;
    private final LongSupplier nanos;
    private final Map<String, Purse> purses = new LinkedHashMap<>(16, 0.75f, true);
    private final Map<String, Integer> inside = new LinkedHashMap<>();
    private int together;

    private record Purse(double left, long atNanos) {}

    /** @param nanos a clock that nobody can set */
    Crowd(CrowdLimits limits, LongSupplier nanos) {
        this.limits = limits;
        this.nanos = nanos;
    }

    /** Whether there is still something for that address; it is taken. */
    synchronized boolean pays(String from, int price) {
        double left = left(from) - price;
        if (left < 0) {
            return false;
        }
        keep(from, left);
        return true;
    }

    /** Gives back what was taken from somebody who is no stranger. */
    synchronized void refund(String from, int price) {
        keep(from, Math.min(limits.burst(), left(from) + price));
    }

    private double left(String from) {
        Purse purse = purses.get(from);
        return purse == null
                ? limits.burst()
                : Math.min(
                        limits.burst(), purse.left + (nanos.getAsLong() - purse.atNanos) / NANOS * limits.perSecond());
    }

    private void keep(String from, double left) {
        purses.put(from, new Purse(left, nanos.getAsLong()));
        if (purses.size() > MOST) {
            purses.remove(purses.keySet().iterator().next());
        }
    }

    /** Whether there is room for one more request; whoever got it must leave again. */
    synchronized boolean enters(String from) {
        int theirs = inside.getOrDefault(from, 0);
        if (together >= limits.atOnce() || theirs >= limits.atOnceFromOne()) {
            return false;
        }
        together++;
        inside.put(from, theirs + 1);
        return true;
    }

    synchronized void leaves(String from) {
        together--;
        inside.computeIfPresent(from, (same, theirs) -> theirs == 1 ? null : theirs - 1);
    }
}

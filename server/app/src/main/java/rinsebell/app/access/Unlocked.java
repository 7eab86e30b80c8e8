package rinsebell.app.access;

import java.time.Duration;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.LongSupplier;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import rinsebell.app.door.Key;
import rinsebell.floor.salon.StaffId;

/**
 * Which browser was unlocked by whom. Each time a key is made anew, known to that browser alone and good on the device it
 * was made for; it lasts while it is used, for a working day at most, and no restart outlives it.
 */
final class Unlocked {
    /** Locked again when nothing private was asked for as long. */
    static final Duration IDLE = Duration.ofMinutes(2);

    static final Duration LONGEST = Duration.ofHours(10);

    /** More than a salon has browsers; whoever was idle longest gives way. */
    private static final int MOST = 200;

    private final LongSupplier nanos;
    private final Map<String, Use> uses = new HashMap<>();

    private record Use(long device, StaffId person, long sinceNanos, long lastNanos) {
        boolean isOver(long now) {
            return now - lastNanos >= IDLE.toNanos() || now - sinceNanos >= LONGEST.toNanos();
        }

        Use at(long now) {
            return new Use(device, person, sinceNanos, now);
        }
    }

    /** @param nanos a clock that nobody can set */
    Unlocked(LongSupplier nanos) {
        this.nanos = nanos;
    }

    /** A fresh key for somebody whose PIN was right. */
    synchronized Key unlock(long device, StaffId person) {
        long now = nanos.getAsLong();
        uses.values().removeIf(use -> use.isOver(now));
        while (uses.size() >= MOST) {
            uses.entrySet().stream()
                    .min(Map.Entry.comparingByValue((a, b) -> Long.signum(a.lastNanos - b.lastNanos)))
                    .ifPresent(oldest -> uses.remove(oldest.getKey()));
        }
        Key key = Key.fresh();
        uses.put(key.hash(), new Use(device, person, now, now));
        return key;
    }

    /** Whose key this is, if it is still good on that device; it was used now. */
    synchronized Optional<StaffId> use(Key key, long device) {
        return look(key, device).map(use -> {
            uses.put(key.hash(), use.at(nanos.getAsLong()));
            return use.person;
        });
    }

    /** The same without using it, so that what a page asks by itself keeps nothing unlocked. */
    synchronized Optional<StaffId> person(Key key, long device) {
        return look(key, device).map(Use::person);
    }

    private Optional<Use> look(Key key, long device) {
        long now = nanos.getAsLong();
        return Optional.ofNullable(uses.get(key.hash())).filter(use -> use.device == device && !use.isOver(now));
    }

    /** The devices on which somebody has given a PIN that is still good. */
    synchronized Set<Long> devices(StaffId person) {
        long now = nanos.getAsLong();
        return uses.values().stream()
                .filter(use -> use.person.equals(person) && !use.isOver(now))
                .map(Use::device)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    synchronized void lock(Key key) {
        uses.remove(key.hash());
    }

    /** Locks wherever somebody has unlocked, such as when their PIN is another. */
    synchronized void lockAll(Predicate<StaffId> whose) {
        uses.values().removeIf(use -> whose.test(use.person));
    }

    synchronized void lockDevice(long device) {
        uses.values().removeIf(use -> use.device == device);
    }
}

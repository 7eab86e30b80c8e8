package rinsebell.planner;

import java.util.ArrayList;
import java.util.List;

/**
 * Where an activity can be stopped by others. In some best schedule nobody can be moved by one unit towards where it had
 * best be with everybody else left where they are: so each that is not there touches something that stands in its way.
 * That holds for any objective that only grows with the distance, and lets a search leap.
 */
final class Contacts {
    /** By activity: what can stop it when it is moved to earlier starts. */
    private final List<List<Contact>> towardsEarlier = new ArrayList<>();

    private final List<List<Contact>> towardsLater = new ArrayList<>();

    /**
     * A start at which something is touched.
     *
     * @param other who is touched; null for what never moves
     * @param distance from the other's start, or from 0
     */
    private record Contact(
            @org.jspecify.annotations.Nullable Activity other, int distance) {
        int least() {
            return other == null ? distance : other.start.getLB() + distance;
        }

        int most() {
            return other == null ? distance : other.start.getUB() + distance;
        }
    }

    private final int grain;

    /** @param grain whoever touches something starts at a multiple of it; 1 where nothing is known */
    Contacts(int activities, int grain) {
        this.grain = grain;
        for (var i = 0; i < activities; i++) {
            towardsEarlier.add(new ArrayList<>());
            towardsLater.add(new ArrayList<>());
        }
    }

    void add(Resource resource) {
        for (var use : resource.uses) {
            for (var other : resource.uses) {
                if (other.activity() != use.activity()) {
                    earlier(use.activity(), other.activity(), other.until() - use.from());
                    later(use.activity(), other.activity(), other.from() - use.until());
                }
            }
            for (var block : resource.blocks) {
                earlier(use.activity(), null, block.until() - use.from());
                later(use.activity(), null, block.from() - use.until());
            }
        }
    }

    /** The second may start no sooner than so long after the first has. */
    void addGap(Activity first, Activity second, int gap) {
        earlier(second, first, gap);
        later(first, second, -gap);
    }

    private void earlier(Activity activity, @org.jspecify.annotations.Nullable Activity other, int distance) {
        towardsEarlier.get(activity.index).add(new Contact(other, distance));
    }

    private void later(Activity activity, @org.jspecify.annotations.Nullable Activity other, int distance) {
        towardsLater.get(activity.index).add(new Contact(other, distance));
    }

    /** The least start after one at which it can be stopped from going earlier; greater than any where there is none. */
    int after(Activity activity, int start) {
        var next = Integer.MAX_VALUE / 2;
        var soonest = Math.floorDiv(start, grain) * grain + grain;
        for (var contact : towardsEarlier.get(activity.index)) {
            if (contact.most() > start) {
                next = Math.min(next, Math.max(contact.least(), soonest));
            }
        }
        return next;
    }

    /** The greatest start before one at which it can be stopped from going later. */
    int before(Activity activity, int start) {
        var next = Integer.MIN_VALUE / 2;
        var last = Math.floorDiv(start - 1, grain) * grain;
        for (var contact : towardsLater.get(activity.index)) {
            if (contact.least() < start) {
                next = Math.max(next, Math.min(contact.most(), last));
            }
        }
        return next;
    }
}

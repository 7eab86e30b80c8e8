package rinsebell.floor.bell;

import java.util.EnumSet;
import java.util.HashSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.salon.Place;
import rinsebell.floor.salon.StaffId;

/**
 * Whom a bell rings for.
 *
 * @param people whose devices
 * @param crowds whose shared screens
 * @param place where the client is; null when it is about no client
 * @param everyone whether every device of the salon
 */
public record Reach(
        Set<StaffId> people, Set<Crowd> crowds, @Nullable Place place, boolean everyone) {
    public static final Reach NOBODY = new Reach(Set.of(), Set.of(), null, false);
    public static final Reach EVERYONE = new Reach(Set.of(), Set.of(), null, true);

    public Reach {
        people = Set.copyOf(people);
        crowds = Set.copyOf(crowds);
    }

    /** Whether a device that listens so rings. */
    public boolean reaches(Ear ear) {
        if (everyone) {
            return true;
        }
        if (ear instanceof Ear.Of one) {
            return people.contains(one.person());
        }
        if (ear instanceof Ear.At at) {
            return at.place().equals(place);
        }
        return ear instanceof Ear.Shared shared ? crowds.contains(shared.crowd()) : !isNobody();
    }

    public boolean isNobody() {
        return equals(NOBODY);
    }

    Reach and(Reach other) {
        if (everyone || other.everyone) {
            return EVERYONE;
        }
        var both = new HashSet<>(people);
        both.addAll(other.people);
        var shared = EnumSet.noneOf(Crowd.class);
        shared.addAll(crowds);
        shared.addAll(other.crowds);
        return new Reach(both, shared, place == null ? other.place : place, false);
    }
}

package rinsebell.floor.bell;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.Fact;
import rinsebell.floor.Floor;
import rinsebell.floor.salon.Place;
import rinsebell.floor.salon.Role;
import rinsebell.floor.salon.StaffId;
import rinsebell.floor.salon.StaffMember;
import rinsebell.floor.visit.Stay;

/**
 * Whom a bell calls, and whom next while nobody answers: who it is for, wherever the client is now; then the helper and the
 * assistants; then the other stylists; then everyone. Whoever is on a break, or works here no more, is passed over at once.
 */
final class Callers {
    private final Floor floor;
    private final Map<Role, Set<StaffId>> here;
    private final Reach stylists;

    Callers(Floor floor) {
        this.floor = floor;
        this.here = floor.salon().working().stream()
                .filter(member -> !floor.day().onBreak().contains(member.id()))
                .collect(Collectors.groupingBy(
                        StaffMember::role, Collectors.mapping(StaffMember::id, Collectors.toUnmodifiableSet())));
        this.stylists = shared(Crowd.STYLISTS, members(Role.STYLIST));
    }

    /** Who is there to be called. */
    Map<Role, Set<StaffId>> here() {
        return here;
    }

    /** Wider and wider; never empty. The last is everyone. */
    List<Reach> of(Bell bell, Audience audience) {
        var stay = Optional.ofNullable(bell.visit()).flatMap(floor::visit).map(visit -> visit.stay());
        var own = own(bell, stay.orElse(null));
        var basins = basins(stay.orElse(null));
        var steps = switch (audience) {
            case STYLIST -> Stream.of(own, basins, stylists);
            case BASINS -> Stream.of(own.and(basins).and(shared(Crowd.WALL, Set.of())), stylists);
            case DESK -> Stream.of(shared(Crowd.DESK, members(Role.DESK)).and(stylists));
            case EVERYONE -> Stream.<Reach>empty();
        };
        return widening(steps.toList());
    }

    private static List<Reach> widening(List<Reach> steps) {
        var wider = new ArrayList<Reach>();
        var reach = Reach.NOBODY;
        for (var step : steps) {
            reach = reach.and(step);
            if (!reach.people().isEmpty()
                    && (wider.isEmpty() || !wider.get(wider.size() - 1).equals(reach))) {
                wider.add(reach);
            }
        }
        wider.add(Reach.EVERYONE);
        return wider;
    }

    /** The stylist of the client; of a bowl for nobody yet, whoever mixed it. */
    private Reach own(Bell bell, @Nullable Stay stay) {
        var whose = stay == null ? floor.fact(bell.key().subject()).map(Fact::by) : Optional.ofNullable(stay.stylist());
        return new Reach(whose.filter(this::isHere).map(Set::of).orElse(Set.of()), Set.of(), place(stay), false);
    }

    private static @Nullable Place place(@Nullable Stay stay) {
        return stay == null ? null : stay.place();
    }

    private Reach basins(@Nullable Stay stay) {
        var people = Stream.concat(
                        Optional.ofNullable(stay).map(Stay::helper).filter(this::isHere).stream(),
                        members(Role.ASSISTANT).stream())
                .collect(Collectors.toSet());
        return shared(Crowd.ASSISTANTS, people);
    }

    private static Reach shared(Crowd crowd, Set<StaffId> people) {
        return new Reach(people, Set.of(crowd), null, false);
    }

    private Set<StaffId> members(Role role) {
        return here.getOrDefault(role, Set.of());
    }

    private boolean isHere(StaffId person) {
        return here.values().stream().anyMatch(members -> members.contains(person));
    }
}

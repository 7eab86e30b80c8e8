package rinsebell.floor.bell;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.Floor;
import rinsebell.floor.salon.Policy;
import rinsebell.floor.salon.Role;
import rinsebell.floor.salon.StaffId;
import rinsebell.floor.visit.ClientId;
import rinsebell.floor.visit.Stay;
import rinsebell.floor.visit.Visit;
import rinsebell.floor.visit.VisitId;

/**
 * Every bell of a floor: computed, never stored. It remembers what each was reckoned from, so that of the next floor only
 * the heads that changed are reckoned anew; whichever way it came about, the same floor has the same bells.
 */
public final class Peal {
    /** Of a floor on which nothing is. */
    public static final Peal NONE = new Peal(Map.of(), Map.of(), Policy.DEFAULT.ringing(), Map.of(), List.of());

    private final Map<VisitId, OwnBells> heads;
    private final Map<BellKey, Planned> planned;
    private final Policy.Ringing house;
    private final Map<Role, Set<StaffId>> here;
    private final List<Bell> bells;

    /**
     * A bell with its plan, and what that came from besides the house and who is here.
     *
     * @param plain before anything that people did about it was told
     * @param stay of the client, who is where and looked after by whom; null when it is about nobody who is here
     */
    private record Planned(Bell plain, @Nullable Stay stay, Bell bell) {}

    private Peal(
            Map<VisitId, OwnBells> heads,
            Map<BellKey, Planned> planned,
            Policy.Ringing house,
            Map<Role, Set<StaffId>> here,
            List<Bell> bells) {
        this.heads = heads;
        this.planned = planned;
        this.house = house;
        this.here = here;
        this.bells = bells;
    }

    /** The bells of a floor, reckoned from nothing. */
    public static Peal of(Floor floor) {
        return NONE.on(floor);
    }

    /** The bells of another floor: the same as {@link #of} it, and soon reckoned where it differs little from this one. */
    public Peal on(Floor floor) {
        return new Reckoning(floor).peal();
    }

    public List<Bell> bells() {
        return bells;
    }

    private final class Reckoning {
        private final Floor floor;
        private final Answers answers;
        private final Callers callers;
        private final Policy.Ringing houseNow;
        private final boolean sameCall;
        private final Map<ClientId, List<Visit>> ofClient = new HashMap<>();

        Reckoning(Floor floor) {
            this.floor = floor;
            this.answers = new Answers(floor);
            this.callers = new Callers(floor);
            this.houseNow = floor.salon().policy().ringing();
            this.sameCall = callers.here().equals(here) && houseNow.equals(house);
            floor.visits()
                    .forEach(visit -> Optional.ofNullable(visit.stay().client())
                            .ifPresent(client -> ofClient.computeIfAbsent(client, id -> new ArrayList<>())
                                    .add(visit)));
        }

        Peal peal() {
            var own = new HashMap<VisitId, OwnBells>();
            var found = new ArrayList<Bell>();
            BowlBells.addTo(found, floor);
            var looks = new ArrayList<CheckBells.Look>();
            var ofHeads = new ArrayList<Bell>();
            for (var visit : floor.openVisits()) {
                var head = own(visit);
                own.put(visit.id(), head);
                looks.addAll(head.looks());
                ofHeads.addAll(head.bells());
            }
            CheckBells.addTo(found, floor, looks);
            found.addAll(ofHeads);
            BasinBells.addTo(
                    found,
                    floor,
                    visit -> Objects.requireNonNull(own.get(visit.id())).head().timing());
            return planned(own, found);
        }

        private OwnBells own(Visit visit) {
            var grounds = OwnBells.Grounds.of(
                    floor, visits(visit), answers.seenOf(visit.id().value()));
            var before = heads.get(visit.id());
            return before != null && before.grounds().equals(grounds) ? before : OwnBells.of(floor, grounds);
        }

        private List<Visit> visits(Visit visit) {
            var all = new ArrayList<>(List.of(visit));
            var client = visit.stay().client();
            if (client != null) {
                ofClient.getOrDefault(client, List.of()).stream()
                        .filter(other -> !other.id().equals(visit.id()))
                        .forEach(all::add);
            }
            return all;
        }

        private Peal planned(Map<VisitId, OwnBells> own, List<Bell> found) {
            var plans = new HashMap<BellKey, Planned>();
            var all = new ArrayList<Bell>();
            for (var plain : found) {
                var plan = plan(plain);
                plans.put(plain.key(), plan);
                all.add(plan.bell());
            }
            return new Peal(own, plans, houseNow, callers.here(), List.copyOf(all));
        }

        private Planned plan(Bell plain) {
            var stay = Optional.ofNullable(plain.visit())
                    .flatMap(floor::visit)
                    .map(Visit::stay)
                    .orElse(null);
            var seen = answers.seen(plain.key());
            var shelved = answers.shelved(plain.key());
            var before = sameCall ? planned.get(plain.key()) : null;
            return before != null && isAs(before, plain, stay, seen, shelved)
                    ? before
                    : new Planned(plain, stay, plain.answered(seen, shelved, houseNow, callers));
        }

        private static boolean isAs(
                Planned before, Bell plain, @Nullable Stay stay, Set<Seen> seen, Set<Shelved> shelved) {
            return before.plain().equals(plain)
                    && Objects.equals(before.stay(), stay)
                    && before.bell().seen().equals(seen)
                    && before.bell().shelved().equals(shelved);
        }
    }
}

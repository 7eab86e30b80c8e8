package rinsebell.floor.bowl;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.Event;
import rinsebell.floor.Fact;
import rinsebell.floor.Floor;
import rinsebell.floor.Reason;
import rinsebell.floor.ReasonCode;
import rinsebell.floor.salon.Place;
import rinsebell.floor.salon.StaffId;
import rinsebell.floor.visit.Visit;
import rinsebell.floor.visit.VisitId;

/** Something of a salon day that is not on one head. */
public sealed interface DayEvent extends Event {
    /** The day after this. An event about something unknown changes nothing. */
    Day applyTo(Day day, Fact fact);

    /** What makes this impossible on this floor; empty when nothing does. */
    default List<Reason> objections(Floor floor) {
        return List.of();
    }

    /**
     * A bowl was mixed.
     *
     * @param portions what is in it; empty when the recipe is not known yet
     * @param reason why
     * @param forVisit whom for; null for nobody yet
     */
    record Mixed(
            List<Portion> portions,
            BowlReason reason,
            @Nullable VisitId forVisit) implements DayEvent {
        public Mixed {
            portions = List.copyOf(portions);
        }

        @Override
        public Day applyTo(Day day, Fact fact) {
            var id = new BowlId(fact.seq());
            return day.with(new Bowl(id, id, fact.happened(), portions, reason, forVisit, false, null, null));
        }
    }

    /** What is in a bowl was found out, or put right: it counts for every part divided from it too. */
    record RecipeFilled(BowlId bowl, List<Portion> portions) implements DayEvent {
        public RecipeFilled {
            portions = List.copyOf(portions);
        }

        @Override
        public Day applyTo(Day day, Fact fact) {
            return day.bowl(bowl)
                    .map(filled -> day.filled(filled.root(), portions))
                    .orElse(day);
        }

        @Override
        public Set<Long> hangsOn() {
            return Set.of(bowl.value());
        }
    }

    /** A bowl was divided before a brush touched it: this fact names the new one, with the same mixing time. */
    record Divided(BowlId bowl, BowlReason reason, @Nullable VisitId forVisit) implements DayEvent {
        @Override
        public Day applyTo(Day day, Fact fact) {
            return day.bowl(bowl)
                    .map(from -> day.with(from.dividedFrom()).with(from.part(new BowlId(fact.seq()), reason, forVisit)))
                    .orElse(day);
        }

        @Override
        public Set<Long> hangsOn() {
            return Set.of(bowl.value());
        }
    }

    /** @param left what was left in it; null when nobody said */
    record ThrownAway(BowlId bowl, @Nullable Left left) implements DayEvent {
        public ThrownAway(BowlId bowl) {
            this(bowl, null);
        }

        @Override
        public Day applyTo(Day day, Fact fact) {
            return day.bowl(bowl)
                    .map(gone -> day.with(gone.thrownAway(fact.happened(), left)))
                    .orElse(day);
        }

        @Override
        public Set<Long> hangsOn() {
            return Set.of(bowl.value());
        }
    }

    /** What was left in a bowl that is thrown away already was said, or put right. */
    record LeftTold(BowlId bowl, Left left) implements DayEvent {
        @Override
        public Day applyTo(Day day, Fact fact) {
            return day.bowl(bowl).map(told -> day.with(told.left(left))).orElse(day);
        }

        @Override
        public Set<Long> hangsOn() {
            return Set.of(bowl.value());
        }
    }

    record BreakBegan(StaffId staff) implements DayEvent {
        @Override
        public List<Reason> objections(Floor floor) {
            return Reason.unless(floor.salon().staffMember(staff).isPresent(), ReasonCode.NOT_KNOWN);
        }

        @Override
        public Day applyTo(Day day, Fact fact) {
            return day.onBreak(staff, true);
        }
    }

    record BreakEnded(StaffId staff) implements DayEvent {
        @Override
        public Day applyTo(Day day, Fact fact) {
            return day.onBreak(staff, false);
        }
    }

    /** @param basin number, from 1 */
    record BasinClosed(int basin) implements DayEvent {
        @Override
        public List<Reason> objections(Floor floor) {
            var place = Place.basin(basin);
            return Reason.unless(floor.salon().rooms().has(place), ReasonCode.NO_SUCH_PLACE, place);
        }

        @Override
        public Day applyTo(Day day, Fact fact) {
            return day.basinClosed(basin, fact.happened());
        }
    }

    /** @param basin number, from 1 */
    record BasinOpened(int basin) implements DayEvent {
        @Override
        public Day applyTo(Day day, Fact fact) {
            return day.basinOpened(basin);
        }
    }

    /**
     * Somebody decided about a head's next turn at a basin; what was decided about it before counts no more.
     *
     * @param basin at which, from 1; null for any
     * @param before the head that it goes before; null for none
     */
    record TurnPinned(
            VisitId visit,
            @Nullable Integer basin,
            @Nullable VisitId before) implements DayEvent {
        @Override
        public List<Reason> objections(Floor floor) {
            var known = isHere(floor, visit) && (before == null || (!before.equals(visit) && isHere(floor, before)));
            var all = new ArrayList<>(Reason.unless(known, ReasonCode.NOT_KNOWN));
            if (basin != null) {
                var place = Place.basin(basin);
                all.addAll(Reason.unless(floor.salon().rooms().has(place), ReasonCode.NO_SUCH_PLACE, place));
            }
            return all;
        }

        private static boolean isHere(Floor floor, VisitId visit) {
            return floor.visit(visit).filter(Visit::isOpen).isPresent();
        }

        @Override
        public Day applyTo(Day day, Fact fact) {
            return day.pinned(visit, new Pin(basin, before, fact.happened()));
        }

        @Override
        public Set<Long> hangsOn() {
            return before == null ? Set.of(visit.value()) : Set.of(visit.value(), before.value());
        }
    }

    /** Nothing is decided any more about a head's next turn at a basin. */
    record TurnUnpinned(VisitId visit) implements DayEvent {
        @Override
        public List<Reason> objections(Floor floor) {
            return Reason.unless(floor.visit(visit).isPresent(), ReasonCode.NOT_KNOWN);
        }

        @Override
        public Day applyTo(Day day, Fact fact) {
            return day.pinned(visit, null);
        }
    }

    /**
     * The turns at the basins that people were told; what they were told before counts no more.
     *
     * @param floor the number of the newest fact that the plan was made for
     * @param turns by the number of the fact that put the first of each on
     */
    record TurnsAnnounced(long floor, Map<Long, Announced> turns) implements DayEvent {
        public TurnsAnnounced {
            turns = Map.copyOf(turns);
        }

        @Override
        public Day applyTo(Day day, Fact fact) {
            return day.announced(turns);
        }

        @Override
        public Event moved(Duration by) {
            var next = new TreeMap<Long, Announced>();
            turns.forEach((anchor, told) ->
                    next.put(anchor, new Announced(told.basin(), told.water().plus(by))));
            return new TurnsAnnounced(floor, next);
        }
    }

    /** No server ran between these instants: what happened then may not have been written down. */
    record Outage(Instant from, Instant until) implements DayEvent {
        /** A restart for an update takes less, and nobody has to catch up on it. */
        private static final Duration SHORTEST = Duration.ofMinutes(1);

        /**
         * Whether somebody has to catch up on it: whoever sat there may have had a first bowl put on that nobody could
         * record.
         */
        public boolean concerns(Floor floor) {
            return Duration.between(from, until).compareTo(SHORTEST) >= 0
                    && !floor.openVisits().isEmpty();
        }

        @Override
        public Day applyTo(Day day, Fact fact) {
            return day.with(new Day.Gap(fact.seq(), from, until));
        }

        @Override
        public Event moved(Duration by) {
            return new Outage(from.plus(by), until.plus(by));
        }
    }

    /** What may have been missed in every outage so far has been set right. */
    record CaughtUp() implements DayEvent {
        @Override
        public Day applyTo(Day day, Fact fact) {
            return day.caughtUp();
        }
    }

    /** A person said that the machine's clock is right, and so the salon's moved. */
    sealed interface ClockConfirmed permits ClockShifted, TimeMissed {
        /** By how much; back is negative. */
        Duration by();
    }

    /** The wall clock was wrong by this much: every instant recorded before moves alike. */
    record ClockShifted(Duration by) implements DayEvent, ClockConfirmed {
        @Override
        public Day applyTo(Day day, Fact fact) {
            return day;
        }
    }

    /**
     * So much time had passed uncounted while the machine was off; zero when none had. What was recorded before stands,
     * and is due so much sooner.
     */
    record TimeMissed(Duration by) implements DayEvent, ClockConfirmed {
        @Override
        public Day applyTo(Day day, Fact fact) {
            return day;
        }
    }

    /** The salon day is over. */
    record DayEnded() implements DayEvent {
        @Override
        public Day applyTo(Day day, Fact fact) {
            return day;
        }
    }
}

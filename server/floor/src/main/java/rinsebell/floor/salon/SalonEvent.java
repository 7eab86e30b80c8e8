package rinsebell.floor.salon;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.Event;
import rinsebell.floor.Fact;
import rinsebell.floor.Floor;
import rinsebell.floor.Reason;
import rinsebell.floor.ReasonCode;
import rinsebell.floor.TextId;
import rinsebell.floor.bowl.Portion;
import rinsebell.floor.product.Directions;
import rinsebell.floor.product.ProductId;
import rinsebell.floor.product.Tub;
import rinsebell.floor.visit.ClientId;

/** A change of the salon's set-up. */
public sealed interface SalonEvent extends Event {
    /** The salon after this. An event about somebody or something unknown changes nothing. */
    Salon applyTo(Salon salon, Fact fact);

    /** What makes this impossible on this floor; empty when nothing does. */
    default List<Reason> objections(Floor floor, Instant now) {
        return List.of();
    }

    /** The rooms are so; the fact's text is the salon's name. */
    record HouseSet(House house) implements SalonEvent {
        @Override
        public Salon applyTo(Salon salon, Fact fact) {
            return salon.withHouse(house, fact.seq());
        }

        @Override
        public List<Reason> objections(Floor floor, Instant now) {
            return Stream.concat(
                            floor.openVisits().stream()
                                    .filter(visit -> !house.has(visit.place()))
                                    .map(visit -> Reason.of(ReasonCode.PLACE_TAKEN, visit.place())),
                            turn(floor, now).stream())
                    .toList();
        }

        /** Another time zone may make today another day, and would end the visits of those who are here. */
        private Optional<Reason> turn(Floor floor, Instant now) {
            var salon = floor.salon();
            var turns = salon.isSetUp()
                    && !salon.dayOf(now).equals(salon.withHouse(house, 0).dayOf(now));
            return turns && !floor.openVisits().isEmpty()
                    ? Optional.of(Reason.of(ReasonCode.DAY_WOULD_TURN))
                    : Optional.empty();
        }
    }

    /** Somebody works here; the fact's text is their name. */
    record StaffEntered(Role role) implements SalonEvent {
        @Override
        public Salon applyTo(Salon salon, Fact fact) {
            return salon.withStaff(new StaffId(fact.seq()), role, fact.seq(), true);
        }
    }

    /** Somebody's name (the fact's text), role or whether they work here has changed. */
    record StaffChanged(StaffId staff, Role role, boolean working) implements SalonEvent {
        @Override
        public Salon applyTo(Salon salon, Fact fact) {
            return salon.staffMember(staff).isEmpty() ? salon : salon.withStaff(staff, role, fact.seq(), working);
        }

        @Override
        public List<Reason> objections(Floor floor, Instant now) {
            return Reason.unless(floor.salon().staffMember(staff).isPresent(), ReasonCode.NOT_KNOWN);
        }

        @Override
        public Set<Long> hangsOn() {
            return Set.of(staff.value());
        }
    }

    /** A product with the first edition of its directions. */
    record ProductEntered(Directions directions) implements SalonEvent {
        @Override
        public Salon applyTo(Salon salon, Fact fact) {
            return salon.withProduct(new ProductId(fact.seq()), directions);
        }
    }

    /** A new edition of a product's directions. */
    record DirectionsRevised(ProductId product, Directions directions) implements SalonEvent {
        @Override
        public Salon applyTo(Salon salon, Fact fact) {
            return salon.withEdition(product, directions);
        }

        @Override
        public List<Reason> objections(Floor floor, Instant now) {
            return Reason.unless(floor.salon().product(product).isPresent(), ReasonCode.NOT_KNOWN);
        }

        @Override
        public Set<Long> hangsOn() {
            return Set.of(product.value());
        }
    }

    /** A product is no longer offered, or offered again. */
    record ProductOffered(ProductId product, boolean offered) implements SalonEvent {
        @Override
        public Salon applyTo(Salon salon, Fact fact) {
            return salon.withOffer(product, offered);
        }

        @Override
        public List<Reason> objections(Floor floor, Instant now) {
            return Reason.unless(floor.salon().product(product).isPresent(), ReasonCode.NOT_KNOWN);
        }

        @Override
        public Set<Long> hangsOn() {
            return Set.of(product.value());
        }
    }

    /** What a tub of a product holds and costs, from now on. */
    record TubPriced(ProductId product, Tub tub) implements SalonEvent {
        @Override
        public Salon applyTo(Salon salon, Fact fact) {
            return salon.withPrice(product, tub, fact.happened());
        }

        @Override
        public List<Reason> objections(Floor floor, Instant now) {
            return Reason.unless(floor.salon().product(product).isPresent(), ReasonCode.NOT_KNOWN);
        }

        @Override
        public Set<Long> hangsOn() {
            return Set.of(product.value());
        }
    }

    /**
     * When somebody is at the basins, week by week; what was said before counts no more.
     *
     * @param shifts none for never
     */
    record ShiftsSet(StaffId staff, List<Shift> shifts) implements SalonEvent {
        public ShiftsSet {
            shifts = List.copyOf(shifts);
        }

        @Override
        public Salon applyTo(Salon salon, Fact fact) {
            return salon.staffMember(staff).isEmpty() ? salon : salon.withShifts(staff, shifts, fact.happened());
        }

        @Override
        public List<Reason> objections(Floor floor, Instant now) {
            return Reason.unless(floor.salon().staffMember(staff).isPresent(), ReasonCode.NOT_KNOWN);
        }

        @Override
        public Set<Long> hangsOn() {
            return Set.of(staff.value());
        }
    }

    /** How long services take here; one that is not named takes what is usual. */
    record ServiceTimesSet(Map<Service, Duration> times) implements SalonEvent {
        public ServiceTimesSet {
            times = Map.copyOf(times);
        }

        @Override
        public Salon applyTo(Salon salon, Fact fact) {
            return salon.withTimes(salon.times().saying(times));
        }
    }

    /** How long things took on a day that is over, in the unit of each {@link Stretch}. */
    record TimesLearned(Map<Stretch, List<Integer>> times) implements SalonEvent {
        public TimesLearned {
            times = Map.copyOf(times);
        }

        @Override
        public Salon applyTo(Salon salon, Fact fact) {
            return salon.withTimes(salon.times().learning(times));
        }
    }

    /** The house's own numbers. */
    record PolicySet(Policy policy) implements SalonEvent {
        @Override
        public Salon applyTo(Salon salon, Fact fact) {
            return salon.withPolicy(policy);
        }
    }

    /**
     * A recipe is kept; the fact's text is its name.
     *
     * @param client whose it is; null for the house's own
     * @param portions as they would be weighed for one bowl
     */
    record RecipeKept(@Nullable ClientId client, List<Portion> portions) implements SalonEvent {
        public RecipeKept {
            portions = List.copyOf(portions);
        }

        @Override
        public Salon applyTo(Salon salon, Fact fact) {
            return portions.isEmpty()
                    ? salon
                    : salon.withRecipe(
                            new RecipeId(fact.seq()), client, new KeptRecipe.Version(new TextId(fact.seq()), portions));
        }

        @Override
        public List<Reason> objections(Floor floor, Instant now) {
            return Reason.unless(!portions.isEmpty(), ReasonCode.BOWL_EMPTY);
        }
    }

    /** A recipe is another from now on; the fact's text is its name. */
    record RecipeRevised(RecipeId recipe, List<Portion> portions) implements SalonEvent {
        public RecipeRevised {
            portions = List.copyOf(portions);
        }

        @Override
        public Salon applyTo(Salon salon, Fact fact) {
            return salon.withVersion(recipe, new KeptRecipe.Version(new TextId(fact.seq()), portions));
        }

        @Override
        public List<Reason> objections(Floor floor, Instant now) {
            return Stream.concat(
                            Reason.unless(floor.salon().recipe(recipe).isPresent(), ReasonCode.NOT_KNOWN).stream(),
                            Reason.unless(!portions.isEmpty(), ReasonCode.BOWL_EMPTY).stream())
                    .toList();
        }

        @Override
        public Set<Long> hangsOn() {
            return Set.of(recipe.value());
        }
    }

    /** A recipe is no longer mixed by, or is again. */
    record RecipeDropped(RecipeId recipe, boolean dropped) implements SalonEvent {
        @Override
        public Salon applyTo(Salon salon, Fact fact) {
            return salon.withDropped(recipe, dropped);
        }

        @Override
        public List<Reason> objections(Floor floor, Instant now) {
            return Reason.unless(floor.salon().recipe(recipe).isPresent(), ReasonCode.NOT_KNOWN);
        }

        @Override
        public Set<Long> hangsOn() {
            return Set.of(recipe.value());
        }
    }
}

package rinsebell.floor.salon;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.TextId;
import rinsebell.floor.product.Directions;
import rinsebell.floor.product.Product;
import rinsebell.floor.product.ProductId;
import rinsebell.floor.product.Tub;
import rinsebell.floor.visit.ClientId;

/**
 * The set-up as it stands: rooms, staff, products, recipes, policy.
 *
 * @param house the rooms; null before the salon is set up
 * @param name where the salon's name stands; null before it is set up
 * @param staffById everybody, in the order in which they were entered
 * @param productsById every product, in the order in which they were entered
 * @param recipesById every recipe that was kept, in the order in which they were entered
 * @param policy the house's own numbers
 * @param basinHours who is at the basins when
 * @param times how long things take here
 */
public record Salon(
        @Nullable House house,
        @Nullable TextId name,
        Map<StaffId, StaffMember> staffById,
        Map<ProductId, Product> productsById,
        Map<RecipeId, KeptRecipe> recipesById,
        Policy policy,
        BasinHours basinHours,
        Times times) {
    /** Nothing set up yet. */
    public static final Salon EMPTY =
            new Salon(null, null, Map.of(), Map.of(), Map.of(), Policy.DEFAULT, BasinHours.UNSAID, Times.NONE);

    /** A salon day ends in the small hours, so that a late evening belongs to one day. */
    private static final Duration DAY_TURNS = Duration.ofHours(4);

    /** Its zone has a name, because browsers know none that is only an offset. */
    private static final House NO_HOUSE = new House(1, 0, 0, ZoneId.of("Etc/UTC"), true);

    public boolean isSetUp() {
        return house != null;
    }

    /** The rooms; one chair in UTC before the salon is set up. */
    public House rooms() {
        return house == null ? NO_HOUSE : house;
    }

    public ZoneId zone() {
        return rooms().zone();
    }

    /** The salon's own date at an instant; a day turns at 04:00. */
    public LocalDate dayOf(Instant instant) {
        return instant.atZone(zone()).toLocalDateTime().minus(DAY_TURNS).toLocalDate();
    }

    /** The instant at which the salon's day begins. */
    public Instant beginOf(LocalDate day) {
        return day.atStartOfDay().plus(DAY_TURNS).atZone(zone()).toInstant();
    }

    public Collection<StaffMember> staff() {
        return staffById.values();
    }

    /** Everybody who works here now. */
    public List<StaffMember> working() {
        return staff().stream().filter(StaffMember::working).toList();
    }

    /** Somebody who still works here. */
    public Optional<StaffMember> workingMember(StaffId id) {
        return staffMember(id).filter(StaffMember::working);
    }

    public Optional<StaffMember> staffMember(StaffId id) {
        return Optional.ofNullable(staffById.get(id));
    }

    public Collection<Product> products() {
        return productsById.values();
    }

    /** Products that may go into a new bowl. */
    public List<Product> offered() {
        return products().stream().filter(product -> !product.withdrawn()).toList();
    }

    public Optional<Product> product(ProductId id) {
        return Optional.ofNullable(productsById.get(id));
    }

    public Collection<KeptRecipe> recipes() {
        return recipesById.values();
    }

    /** What is kept for a client, or for the house where it is nobody's; what was dropped too. */
    public List<KeptRecipe> recipesOf(@Nullable ClientId client) {
        return recipes().stream()
                .filter(recipe -> Objects.equals(recipe.client(), client))
                .toList();
    }

    public Optional<KeptRecipe> recipe(RecipeId id) {
        return Optional.ofNullable(recipesById.get(id));
    }

    Salon withHouse(House next, long seq) {
        return new Salon(next, new TextId(seq), staffById, productsById, recipesById, policy, basinHours, times);
    }

    Salon withStaff(StaffId id, Role role, long nameSeq, boolean working) {
        var next = new LinkedHashMap<>(staffById);
        next.put(id, new StaffMember(id, role, new TextId(nameSeq), working));
        return new Salon(
                house, name, Collections.unmodifiableMap(next), productsById, recipesById, policy, basinHours, times);
    }

    Salon withProduct(ProductId id, Directions directions) {
        return withProduct(new Product(id, List.of(directions), false, List.of()));
    }

    Salon withEdition(ProductId id, Directions directions) {
        return change(id, product -> product.revised(directions));
    }

    Salon withOffer(ProductId id, boolean offered) {
        return change(id, product -> product.withdraw(!offered));
    }

    /** A price that is typed again on the same day puts right what was typed before. */
    Salon withPrice(ProductId id, Tub tub, Instant at) {
        return change(id, product -> product.priced(new Product.Price(at, tub), beginOf(dayOf(at))));
    }

    Salon withPolicy(Policy next) {
        return new Salon(house, name, staffById, productsById, recipesById, next, basinHours, times);
    }

    private Salon change(ProductId id, UnaryOperator<Product> change) {
        return product(id).map(product -> withProduct(change.apply(product))).orElse(this);
    }

    private Salon withProduct(Product product) {
        var next = new LinkedHashMap<>(productsById);
        next.put(product.id(), product);
        return new Salon(
                house, name, staffById, Collections.unmodifiableMap(next), recipesById, policy, basinHours, times);
    }

    Salon withRecipe(RecipeId id, @Nullable ClientId client, KeptRecipe.Version first) {
        return withRecipe(new KeptRecipe(id, client, List.of(first), false));
    }

    Salon withVersion(RecipeId id, KeptRecipe.Version next) {
        return recipe(id).map(recipe -> withRecipe(recipe.revised(next))).orElse(this);
    }

    Salon withDropped(RecipeId id, boolean dropped) {
        return recipe(id).map(recipe -> withRecipe(recipe.drop(dropped))).orElse(this);
    }

    private Salon withRecipe(KeptRecipe recipe) {
        var next = new LinkedHashMap<>(recipesById);
        next.put(recipe.id(), recipe);
        return new Salon(
                house, name, staffById, productsById, Collections.unmodifiableMap(next), policy, basinHours, times);
    }

    Salon withShifts(StaffId id, List<Shift> shifts, Instant at) {
        var next = basinHours.with(id, shifts, at);
        return new Salon(house, name, staffById, productsById, recipesById, policy, next, times);
    }

    Salon withTimes(Times next) {
        return new Salon(house, name, staffById, productsById, recipesById, policy, basinHours, next);
    }
}

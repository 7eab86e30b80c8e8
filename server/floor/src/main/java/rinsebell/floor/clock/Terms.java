package rinsebell.floor.clock;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.bowl.Bowl;
import rinsebell.floor.bowl.Portion;
import rinsebell.floor.product.Active;
import rinsebell.floor.product.Checks;
import rinsebell.floor.product.Develops;
import rinsebell.floor.product.Directions;
import rinsebell.floor.product.Kind;
import rinsebell.floor.product.Limits;
import rinsebell.floor.product.Product;
import rinsebell.floor.product.Span;
import rinsebell.floor.salon.Policy;
import rinsebell.floor.salon.Salon;

/**
 * What counts for a bowl: the strictest of the directions of all that is in it, in the editions in force at mixing,
 * tightened by the house policy.
 *
 * @param known false while the recipe is not known: the shortest times of the house's products stand in for it
 * @param directions of each portion
 * @param active usable for; null for no limit
 * @param develops development times: the earliest sensible end is the latest "from", the end the earliest "to"
 * @param longestOn null for no limit
 * @param limits zone, covers and heats
 * @param checks how often to look
 */
public record Terms(
        boolean known,
        List<Directions> directions,
        @Nullable Active active,
        List<Develops> develops,
        @Nullable Duration longestOn,
        Limits limits,
        Checks checks) {
    public Terms {
        directions = List.copyOf(directions);
        develops = List.copyOf(develops);
    }

    /** The terms of a bowl, or of none: an unknown recipe. */
    public static Terms of(@Nullable Bowl bowl, Salon salon) {
        return bowl == null || !bowl.isRecipeKnown() ? shortest(salon) : of(bowl.portions(), salon);
    }

    /** The terms of what these portions make. */
    public static Terms of(List<Portion> portions, Salon salon) {
        var directions = portions.stream()
                .map(portion -> salon.product(portion.product()).map(product -> product.directions(portion.edition())))
                .flatMap(Optional::stream)
                .toList();
        return strictest(true, directions, salon.policy());
    }

    private static Terms strictest(boolean known, List<Directions> directions, Policy policy) {
        return new Terms(
                known,
                directions,
                directions.stream()
                        .map(one -> one.times().active())
                        .flatMap(java.util.stream.Stream::ofNullable)
                        .reduce(Active::and)
                        .orElse(null),
                directions.stream()
                        .map(one -> one.times().develops())
                        .flatMap(java.util.stream.Stream::ofNullable)
                        .toList(),
                longestOn(directions, policy),
                directions.stream().map(Directions::limits).reduce(Limits.FREE, Limits::and),
                directions.stream().map(Directions::checks).reduce(Checks.NONE, Checks::and));
    }

    private static @Nullable Duration longestOn(List<Directions> directions, Policy policy) {
        var figures = new ArrayList<Duration>();
        for (var one : directions) {
            java.util.stream.Stream.ofNullable(one.times().longestOn()).forEach(figures::add);
            java.util.stream.Stream.ofNullable(policy.longestOn().get(one.kind()))
                    .forEach(figures::add);
        }
        return figures.stream().min(Comparator.naturalOrder()).orElse(null);
    }

    /** Until a recipe is filled in the shortest times of everything in the house count, and any restriction may hold. */
    private static Terms shortest(Salon salon) {
        var all = salon.offered().stream().map(Product::directions).toList();
        var strict = strictest(false, all, salon.policy());
        var soonest = shortestDevelopment(strict.develops).stream()
                .map(to -> new Develops(Develops.Counted.FROM_MIXING, new Span(to, to), java.util.Map.of()))
                .toList();
        return new Terms(false, List.of(), strict.active, soonest, strict.longestOn, Limits.FREE, strict.checks);
    }

    private static Optional<Duration> shortestDevelopment(List<Develops> develops) {
        return develops.stream().map(one -> one.plain().to()).min(Comparator.naturalOrder());
    }

    /** Until when more of a bowl may be put on; what that end means is said with {@link #active}. Empty for no limit. */
    public Optional<Instant> usableUntil(Instant mixedAt) {
        return Optional.ofNullable(active).map(one -> mixedAt.plus(one.usableFor()));
    }

    public boolean isLightener() {
        return any(one -> one.kind().isLightener());
    }

    /** Whether the end of development and a decision to rinse are hard limits; an unknown recipe may be lightener. */
    public boolean hasHardDevelopment() {
        return !known || any(one -> one.kind().hasHardDevelopment());
    }

    public boolean containsDye() {
        return any(one -> one.contents().dye());
    }

    /** Whether peroxide is known to be in it: a developer, or a strength above none. */
    public boolean containsPeroxide() {
        return any(one -> one.kind() == Kind.DEVELOPER
                || (one.contents().peroxide() != null
                        && one.contents().peroxide().value().signum() > 0));
    }

    /** Whether peroxide may be in it: it is known to be, or nobody knows. */
    public boolean mayContainPeroxide() {
        return !known || containsPeroxide() || any(one -> one.contents().peroxide() == null);
    }

    private boolean any(Function<Directions, Boolean> what) {
        return directions.stream().anyMatch(what::apply);
    }
}

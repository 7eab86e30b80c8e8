package rinsebell.floor.product;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiPredicate;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.unit.Percent;

/** In what newer directions of a product are stricter than older ones. A bowl keeps the edition it was mixed under. */
public enum Stricter {
    ZONE((older, newer) ->
            older.limits().zone() == Zone.ON_SCALP && newer.limits().zone() == Zone.OFF_SCALP),
    COVER((older, newer) -> Arrays.stream(Cover.values())
            .anyMatch(cover ->
                    isStricter(older.limits().cover(cover), newer.limits().cover(cover)))),
    HEAT((older, newer) -> Arrays.stream(Heat.values())
            .anyMatch(
                    heat -> isStricter(older.limits().heat(heat), newer.limits().heat(heat)))),
    USABLE((older, newer) -> isStricter(older.times().active(), newer.times().active())),
    DEVELOPS(
            (older, newer) -> isStricter(older.times().develops(), newer.times().develops())),
    LONGEST_ON((older, newer) -> !Optional.ofNullable(
                    Shorter.of(older.times().longestOn(), newer.times().longestOn()))
            .equals(Optional.ofNullable(older.times().longestOn()))),
    CHECKS((older, newer) -> !older.checks().and(newer.checks()).equals(older.checks())),
    STRENGTH((older, newer) -> isLess(older.mixing().strengths(), newer.mixing().strengths())
            || isLess(older.mixing().strengthsOnScalp(), newer.mixing().strengthsOnScalp())),
    MIXTURE((older, newer) -> !newer.mixing().mixtures().isEmpty()
            && !newer.mixing().mixtures().containsAll(older.mixing().mixtures())),
    PAIRING((older, newer) ->
            !older.mixing().pairings().containsAll(newer.mixing().pairings()));

    private final BiPredicate<Directions, Directions> is;

    Stricter(BiPredicate<Directions, Directions> is) {
        this.is = is;
    }

    /** In the order above; empty when nothing is stricter. */
    public static Set<Stricter> than(Directions older, Directions newer) {
        var found = EnumSet.noneOf(Stricter.class);
        Stream.of(values()).filter(one -> one.is.test(older, newer)).forEach(found::add);
        return found;
    }

    private static boolean isStricter(Allowance older, Allowance newer) {
        return !older.and(newer).equals(older);
    }

    private static boolean isStricter(@Nullable Active older, @Nullable Active newer) {
        return newer != null && (older == null || !older.and(newer).equals(older));
    }

    /** What counts from elsewhere may end sooner or later: it is told. */
    private static boolean isStricter(@Nullable Develops older, @Nullable Develops newer) {
        if (newer == null || older == null) {
            return newer != null;
        }
        return newer.counted() != older.counted()
                || newer.plain().to().compareTo(older.plain().to()) < 0
                || newer.heated().entrySet().stream()
                        .anyMatch(entry -> entry.getValue()
                                        .to()
                                        .compareTo(older.heated()
                                                .getOrDefault(entry.getKey(), older.plain())
                                                .to())
                                < 0);
    }

    /** None named is any. */
    private static boolean isLess(Set<Percent> older, Set<Percent> newer) {
        return !newer.isEmpty() && (older.isEmpty() || !newer.containsAll(older));
    }
}

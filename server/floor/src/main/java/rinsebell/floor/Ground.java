package rinsebell.floor;

import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalLong;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;

/**
 * What visits rest on: the bowls that were put on, and the clock as it was put right since. It is found by number, for
 * the dates under which it was recorded are those of the clock as it stood then.
 */
public final class Ground {
    private Ground() {}

    /**
     * The lowest number among these facts and all that they hang on, but for the set-up, which is never let go of.
     * Nothing with a lower number changes what they tell.
     *
     * @param find the facts of some numbers
     */
    public static OptionalLong lowest(Collection<Fact> facts, Function<Set<Long>, Collection<Fact>> find) {
        var found = new TreeSet<Long>();
        var next = facts;
        while (!next.isEmpty()) {
            next.forEach(fact -> found.add(fact.seq()));
            var more = hangingBelow(next, found);
            next = more.isEmpty() ? List.of() : withoutSetUp(find.apply(more));
        }
        return found.isEmpty() ? OptionalLong.empty() : OptionalLong.of(found.first());
    }

    private static Set<Long> hangingBelow(Collection<Fact> facts, Set<Long> found) {
        var below = new HashSet<Long>();
        facts.forEach(fact -> below.addAll(fact.event().hangsOn()));
        below.removeAll(found);
        return below;
    }

    private static List<Fact> withoutSetUp(Collection<Fact> facts) {
        return facts.stream()
                .filter(fact -> !(fact.stream() instanceof Stream.OfSalon))
                .toList();
    }
}

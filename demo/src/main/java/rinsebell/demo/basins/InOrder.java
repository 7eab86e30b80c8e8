package rinsebell.demo.basins;

import java.util.Comparator;
import java.util.Optional;
import java.util.function.ToLongFunction;

/**
 * Without a plan: those whose time has come, in one order. The work before the basin is begun for whoever is first, as soon
 * as a basin will be free by its end that nobody else is being prepared for.
 *
 * @param order who goes first
 * @param from from when a head is in the order, second of the day
 */
record InOrder(ToLongFunction<Sight.Seen> order, ToLongFunction<Sight.Seen> from) implements Way {
    /** By when somebody said that it should be rinsed. */
    static Way firstCome() {
        return new InOrder(Sight.Seen::asked, Sight.Seen::asked);
    }

    static Way earliestRinseBy() {
        return new InOrder(Sight.Seen::by, Sight.Seen::asked);
    }

    /** Lightener comes off as soon as its leaflet lets it, whether it is light enough or not. */
    static Way asSoonAsItMay() {
        return new InOrder(Sight.Seen::by, head -> head.ready() - head.kind().before());
    }

    @Override
    public Optional<Step> next(Sight sight) {
        if (sight.freeHands() == 0) {
            return Optional.empty();
        }
        return water(sight).or(() -> before(sight));
    }

    private Optional<Step> water(Sight sight) {
        var basin = sight.freeBasin();
        return basin == 0
                ? Optional.empty()
                : sight.at(Sight.Stage.PREPARED).stream()
                        .filter(head -> head.ready() <= sight.now())
                        .min(inOrder())
                        .map(head -> new Step(head.number(), basin));
    }

    private Optional<Step> before(Sight sight) {
        var promised = sight.at(Sight.Stage.BEFORE).size()
                + sight.at(Sight.Stage.PREPARED).size();
        return sight.at(Sight.Stage.ON).stream()
                .filter(head -> from.applyAsLong(head) <= sight.now())
                .min(inOrder())
                .filter(head -> freeBy(sight, sight.now() + head.kind().before()) > promised)
                .map(head -> new Step(head.number(), 0));
    }

    private Comparator<Sight.Seen> inOrder() {
        return Comparator.comparingLong(order).thenComparing(Sight.Seen::number);
    }

    private static int freeBy(Sight sight, long instant) {
        var estimate = new Estimate(sight);
        var free = 0;
        for (var basin = 1; basin <= sight.basins(); basin++) {
            free += estimate.free(basin) <= instant ? 1 : 0;
        }
        return free;
    }
}

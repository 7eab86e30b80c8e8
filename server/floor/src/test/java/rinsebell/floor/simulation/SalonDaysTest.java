package rinsebell.floor.simulation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import rinsebell.floor.Event;
import rinsebell.floor.ReasonCode;
import rinsebell.floor.bell.BellKind;

/**
 * Salon days that are always the same, and some that never were before. A day that failed is lived again with
 * {@code -Drinsebell.seed=}number.
 */
class SalonDaysTest {
    /** The first 70 see everything that can happen; {@code -Drinsebell.fixed=} lives more. */
    private static final long FIXED = Long.getLong("rinsebell.fixed", 80);

    /** Fresh days; {@code -Drinsebell.days=} lives as many more as there is time for. */
    private static final long FRESH = Long.getLong("rinsebell.days", 20);

    /** What cannot be in these days: the shelf keeps within the law, their floor is set up from the beginning and never that full. */
    private static final Set<ReasonCode> NEVER_REFUSED = Set.of(
            ReasonCode.PEROXIDE_OVER_LAW,
            ReasonCode.AMMONIA_OVER_LAW,
            ReasonCode.SALON_NOT_SET_UP,
            ReasonCode.FLOOR_FULL,
            ReasonCode.DAY_WOULD_TURN);

    private final ConcurrentLinkedQueue<Tally> tallies = new ConcurrentLinkedQueue<>();

    @Test
    void fixedDaysHoldAndSeeEverythingThatCanHappen() {
        var asked = Long.getLong("rinsebell.seed");
        if (asked != null) {
            assertThat(failures(LongStream.of(asked))).isEmpty();
            return;
        }
        assertThat(failures(LongStream.rangeClosed(1, FIXED))).isEmpty();
        var missing = everything();
        missing.removeAll(Tally.all(tallies.stream()));
        assertThat(missing).as("what no day has seen").isEmpty();
    }

    @Test
    void freshDaysHold() {
        var seed = new Random().nextLong();
        System.out.println(FRESH + " fresh salon days, seed " + seed);
        assertThat(failures(new Random(seed).longs(FRESH))).isEmpty();
    }

    /** The days that did not hold, with their seeds, a few of them. */
    private List<String> failures(LongStream seeds) {
        var found = new ConcurrentLinkedQueue<String>();
        seeds.parallel().filter(seed -> found.size() < 3).forEach(seed -> {
            try {
                tallies.add(SalonDay.live(seed));
            } catch (AssertionError broken) {
                found.add(broken.getMessage() + System.lineSeparator() + "live it again: -Drinsebell.seed=" + seed);
            }
        });
        return List.copyOf(found);
    }

    private static List<String> everything() {
        var names = new ArrayList<String>();
        kinds(Event.class).map(Class::getSimpleName).forEach(names::add);
        Arrays.stream(BellKind.values()).map(SalonDaysTest::loudest).forEach(names::add);
        Arrays.stream(ReasonCode.values())
                .filter(code -> !NEVER_REFUSED.contains(code))
                .map(Enum::name)
                .forEach(names::add);
        return names;
    }

    private static String loudest(BellKind kind) {
        return switch (kind) {
            case LAST_ON_MISSING, READY, GATE_OPEN, SCALP_AFTER_RINSE, ROUND_OVER -> kind + " LOW";
            case BOWL_WAITING, HEAT_END, COVER_END, TINGLING, BASINS_CLASH -> kind + " MEDIUM";
            default -> kind + " HIGH";
        };
    }

    private static Stream<Class<?>> kinds(Class<?> type) {
        var below = type.getPermittedSubclasses();
        return below == null
                ? Stream.of(type)
                : Arrays.stream(below).flatMap(SalonDaysTest::kinds).distinct();
    }
}

package rinsebell.demo.turnaround;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import rinsebell.app.shelf.InventedProducts;
import rinsebell.floor.command.Arrange;
import rinsebell.floor.command.Stock;
import rinsebell.floor.salon.House;
import rinsebell.floor.salon.SalonEvent;
import rinsebell.floor.salon.Stretch;

/** A salon of its own pace, day after day: first it learns, then what it says is remembered. */
final class Salon {
    private static final ZoneId ZONE = ZoneId.of("Etc/UTC");
    private static final Instant FIRST_DAY = Instant.parse("2026-11-02T09:00:00Z");
    private static final Duration UNTIL_NEXT = Duration.ofDays(1);
    private static final Duration TURNS = Duration.ofHours(2);
    private static final int FEWEST_CHAIRS = 6;
    private static final int MOST_CHAIRS = 12;
    private static final int CHAIRS_TO_A_BASIN = 4;

    /** A salon that has not learned by then never will. */
    private static final int LONGEST = 60;

    private final SplittableRandom dice;
    private final Pace pace;
    private final Book book = new Book();
    private Instant opens = FIRST_DAY;

    private Salon(long seed) {
        this.dice = new SplittableRandom(seed);
        this.pace = new Pace(dice);
        var chairs = dice.nextInt(FEWEST_CHAIRS, MOST_CHAIRS + 1);
        var house = new SalonEvent.HouseSet(
                new House(chairs, Math.round((float) chairs / CHAIRS_TO_A_BASIN), 0, ZONE, true));
        book.press(new Arrange(house, ""), opens.minus(UNTIL_NEXT));
        book.press(new Stock(InventedProducts.all()), opens.minus(UNTIL_NEXT));
    }

    /**
     * What one salon says of its chairs on the first days after it has learned.
     *
     * @param days how many
     */
    static Calibration live(long seed, int days) {
        var salon = new Salon(seed);
        for (var day = 0; !salon.hasLearned(); day++) {
            if (day > LONGEST) {
                throw new IllegalStateException("salon " + seed + " does not learn");
            }
            salon.day(List.of());
        }
        var learned = Promises.learned();
        var house = Promises.byHouseNumbers();
        for (var day = 0; day < days; day++) {
            salon.day(List.of(learned, house));
        }
        return new Calibration(learned.over(), house.over());
    }

    private boolean hasLearned() {
        var times = book.floor().salon().times();
        return Arrays.stream(Stretch.values())
                .noneMatch(stretch -> times.known(stretch).isEmpty());
    }

    private void day(List<Promises> heard) {
        SalonDay.live(book, pace, dice, opens, heard);
        opens = opens.plus(UNTIL_NEXT);
        book.turns(opens.minus(TURNS));
    }
}

package rinsebell.demo.basins;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.LongStream;

/**
 * {@code java -cp rinsebell-demo.jar rinsebell.demo.basins.Saturdays [days [seed]]}: so many simulated Saturdays for each
 * band of basin use, from one seed on, lived by each way; the same arguments print the same table. With {@code solver} as a
 * third argument the solver plans as well, which takes its time, and depends on the machine's pace.
 *
 * <p>Late is past the rinse-by, hard where that hurts hair; "past by" are the minutes of all late heads of a day; p95 is of
 * days. Idle are basins, from the first water to the last. Minutes for each head, in the mean: waited once it was done,
 * rinsed early before it was light enough, held from its arrival until somebody mixed for it.
 */
public final class Saturdays {
    private static final int DAYS = 100;

    private Saturdays() {}

    public static void main(String... arguments) {
        var days = arguments.length > 0 ? Integer.parseInt(arguments[0]) : DAYS;
        var seed = arguments.length > 1 ? Long.parseLong(arguments[1]) : 1;
        var ways = new ArrayList<>(List.of(Ways.values()));
        if (arguments.length < 3 || !arguments[2].equals("solver")) {
            ways.remove(Ways.SOLVER);
        }
        var seeds = LongStream.range(seed, seed + days).boxed().toList();
        for (var band : Band.values()) {
            System.out.println(Table.of(band, ways, seeds));
        }
    }
}

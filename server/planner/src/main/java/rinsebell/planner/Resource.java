package rinsebell.planner;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** Something of which there is so much at a time, less what is blocked. */
final class Resource {
    final int capacity;
    final List<Use> uses = new ArrayList<>();
    final List<Block> blocks = new ArrayList<>();

    Resource(int capacity) {
        this.capacity = capacity;
    }

    /** Times that it gives, as instants and as lengths. */
    IntStream marks() {
        return IntStream.concat(
                uses.stream().flatMapToInt(use -> IntStream.of(use.from(), use.until())),
                blocks.stream().flatMapToInt(block -> IntStream.of(block.from(), block.until())));
    }

    /**
     * @param activity by which
     * @param from counted from its start
     * @param until counted from its start, after {@code from}
     * @param amount how much
     */
    record Use(Activity activity, int from, int until, int amount) {}

    /**
     * @param from as an instant
     * @param until as an instant
     * @param amount how much
     */
    record Block(int from, int until, int amount) {}
}

package rinsebell.demo.basins;

import java.util.Optional;

/** How a salon decides who goes to the basins. It is asked again after each step, and each minute. */
interface Way {
    /**
     * One thing that is done now.
     *
     * @param head its number
     * @param basin 0 where the work before the basin is begun
     */
    record Step(int head, int basin) {}

    /** The next step now; empty when there is none. */
    Optional<Step> next(Sight sight);

    /** Whether a bowl may be mixed now for somebody who has waited for it so long, in seconds. */
    default boolean mayMix(Sight sight, Head head, long waited) {
        return true;
    }
}

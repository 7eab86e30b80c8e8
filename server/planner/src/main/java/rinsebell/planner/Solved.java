package rinsebell.planner;

import java.time.Duration;
import java.util.List;
import rinsebell.floor.basin.Plan;
import rinsebell.floor.basin.Score;

/**
 * What the solver found, and what it knows about it.
 *
 * @param plan never worse than the dispatch rule's
 * @param score of the plan
 * @param bound no plan has a smaller first figure, in whole seconds
 * @param sound whether what the solver found can be carried out; where it can't, which is a mistake of the solver's, the
 *     plan is the dispatch rule's
 * @param took how long was sought for each figure, in their order
 */
public record Solved(Plan plan, Score score, long bound, boolean sound, List<Duration> took) {
    public Solved {
        took = List.copyOf(took);
    }

    /** Whether no plan harms less. */
    public boolean isProven() {
        return score.over() <= bound;
    }
}

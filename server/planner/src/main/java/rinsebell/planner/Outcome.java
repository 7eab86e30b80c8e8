package rinsebell.planner;

import java.util.List;

/**
 * What became of a search.
 *
 * @param found whether there is a schedule
 * @param complete whether the search went to its end: what was found is the best there is, or nothing is there
 * @param value of the objective; meaningless where nothing was found
 * @param bound nothing better than this can be there
 * @param starts by the index of the activity
 * @param machines by the index of the activity; 0 where it asks for none
 */
record Outcome(boolean found, boolean complete, int value, int bound, List<Integer> starts, List<Integer> machines) {
    static Outcome none(boolean complete, int bound) {
        return new Outcome(false, complete, 0, bound, List.of(), List.of());
    }

    int start(Activity activity) {
        return starts.get(activity.index);
    }

    int machine(Activity activity) {
        return machines.get(activity.index);
    }

    boolean isOptimal() {
        return found && complete;
    }
}

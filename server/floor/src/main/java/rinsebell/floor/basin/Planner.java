package rinsebell.floor.basin;

/** Finds a plan for a station. */
public interface Planner {
    /** A plan in which every job has a turn, or is named as one that finds none. */
    Plan plan(Station station);
}

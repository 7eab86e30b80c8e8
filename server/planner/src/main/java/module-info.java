/** A solver behind floor's planner. */
module rinsebell.planner {
    requires transitive rinsebell.floor;
    requires static org.jspecify;
    requires org.chocosolver.solver;

    exports rinsebell.planner;
}

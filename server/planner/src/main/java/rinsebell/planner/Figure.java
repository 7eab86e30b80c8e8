package rinsebell.planner;

import java.util.Arrays;
import java.util.List;
import rinsebell.floor.basin.Plan;
import rinsebell.floor.basin.Score;
import rinsebell.floor.basin.Station;
import rinsebell.floor.basin.Turn;

/** The figures of a score, in their order. */
enum Figure {
    OVER,
    LATE,
    CHANGES,
    WAITING;

    long of(Score score) {
        return switch (this) {
            case OVER -> score.over();
            case LATE -> score.lateSeconds();
            case CHANGES -> score.changes();
            case WAITING -> score.waitingSeconds();
        };
    }

    /** What some turns add to it. */
    long of(Station station, List<Turn> turns) {
        return of(Score.of(station, new Plan(turns, List.of())));
    }

    /** Whether it depends on where a turn is, and not only on when. */
    boolean isOfPlace() {
        return compareTo(CHANGES) >= 0;
    }

    List<Figure> before() {
        return Arrays.stream(values()).filter(one -> one.compareTo(this) < 0).toList();
    }
}

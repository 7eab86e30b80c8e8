package rinsebell.floor.basin;

import java.time.Duration;
import java.util.Comparator;

/**
 * How good a plan is: of two, the better has the smaller first figure in which they differ. What harms comes first; then
 * what was told to people stays; then nobody waits.
 *
 * @param over for each head past its rinse-by, the five minutes begun times its weight; 0 exactly when nobody is late
 * @param lateSeconds weighted seconds past rinse-by
 * @param changes how many announced turns go to another basin or move by a minute or more
 * @param waitingSeconds seconds by which water comes after it is wanted, or before
 */
public record Score(long over, long lateSeconds, long changes, long waitingSeconds) implements Comparable<Score> {
    /** A head past its rinse-by counts once for every step begun: nobody is given up for the sake of two others. */
    public static final Duration STEP = Duration.ofMinutes(5);

    private static final long STEP_MILLIS = STEP.toMillis();

    /** What a job without a basin counts as: a day too late. */
    private static final Duration NEVER = Duration.ofDays(1);

    private static final Comparator<Score> ORDER = Comparator.comparingLong(Score::over)
            .thenComparingLong(Score::lateSeconds)
            .thenComparingLong(Score::changes)
            .thenComparingLong(Score::waitingSeconds);

    public static Score of(Station station, Plan plan) {
        var over = 0L;
        var late = 0L;
        var changes = 0L;
        var waiting = 0L;
        for (var turn : plan.turns()) {
            var weight = turn.job().harm().weight();
            over += addsToOver(turn.job().harm(), turn.lateBy().toMillis());
            late += weight * roundedUp(turn.lateBy());
            changes += station.announced(turn.job())
                            .filter(told -> told.isMoved(turn.told()))
                            .isPresent()
                    ? 1
                    : 0;
            waiting += Duration.between(turn.job().wanted(), turn.water()).abs().toSeconds();
        }
        for (var job : plan.without()) {
            over += addsToOver(job.harm(), NEVER.toMillis());
            late += job.harm().weight() * NEVER.toSeconds();
        }
        return new Score(over, late, changes, waiting);
    }

    /** What one head adds to the first figure whose water is so many milliseconds after its rinse-by, or before. */
    static long addsToOver(Job.Harm harm, long late) {
        return harm.weight() * ((Math.max(0, late) + STEP_MILLIS - 1) / STEP_MILLIS);
    }

    private static long roundedUp(Duration late) {
        return (late.toMillis() + 999) / 1_000;
    }

    /** Nobody is late, nothing changes, nobody waits: no plan is better. */
    public boolean isPerfect() {
        return over == 0 && lateSeconds == 0 && changes == 0 && waitingSeconds == 0;
    }

    @Override
    public int compareTo(Score other) {
        return ORDER.compare(this, other);
    }
}

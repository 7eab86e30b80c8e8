package rinsebell.planner;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rinsebell.floor.basin.Job;
import rinsebell.floor.basin.Score;
import rinsebell.floor.basin.Station;

/** How late some jobs can be without any figure of the score getting worse than it may. */
final class Room {
    private final Station station;
    private final Seconds seconds;
    private final List<Job> jobs;
    private final Map<Figure, Long> most = new EnumMap<>(Figure.class);

    Room(Station station, Seconds seconds, List<Job> jobs) {
        this.station = station;
        this.seconds = seconds;
        this.jobs = jobs;
    }

    /** So much of a figure all jobs together may come to. */
    Room atMost(Figure figure, long sum) {
        most.put(figure, sum);
        return this;
    }

    /** The latest water of each job, in seconds; empty where there is no room for all of them. */
    Optional<int[]> latest() {
        var latest = new int[jobs.size()];
        for (var i = 0; i < latest.length; i++) {
            var job = jobs.get(i);
            var until = most.keySet().stream()
                    .mapToLong(figure -> until(figure, job))
                    .min()
                    .orElse(Seconds.FAR);
            if (until < earliest(job)) {
                return Optional.empty();
            }
            latest[i] = (int) until;
        }
        return Optional.of(latest);
    }

    private int earliest(Job job) {
        return StayModel.earliest(station, seconds, job);
    }

    private long until(Figure figure, Job job) {
        var sum = jobs.stream().mapToLong(one -> least(figure, one)).sum();
        var room = most.getOrDefault(figure, 0L) - sum + least(figure, job);
        return Math.min(Seconds.FAR, until(figure, job, room));
    }

    private long until(Figure figure, Job job, long room) {
        if (room < 0) {
            return Long.MIN_VALUE;
        }
        var due = seconds.down(job.latest());
        return switch (figure) {
            case OVER -> due + Seconds.down(Score.STEP) * (room / job.harm().weight());
            case LATE -> due + room / job.harm().weight();
            case CHANGES -> Seconds.FAR;
            case WAITING -> seconds.up(job.wanted()) + room;
        };
    }

    /** What a job alone at an empty station comes to. */
    long least(Figure figure, Job job) {
        var late = Math.max(0L, earliest(job) - seconds.down(job.latest()));
        return switch (figure) {
            case OVER -> job.harm().weight() * steps(late);
            case LATE -> job.harm().weight() * late;
            case CHANGES -> 0;
            case WAITING -> Math.max(0, earliest(job) - seconds.up(job.wanted()));
        };
    }

    private static long steps(long late) {
        var step = Seconds.down(Score.STEP);
        return (late + step - 1) / step;
    }
}

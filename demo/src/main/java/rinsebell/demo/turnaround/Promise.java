package rinsebell.demo.turnaround;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.stream.IntStream;
import rinsebell.floor.turnaround.Turnaround;
import rinsebell.floor.visit.VisitId;

/**
 * What was said of a chair, and what came true.
 *
 * @param said by when it is free in each of the {@link #PARTS}
 * @param free when it really was
 * @param waited for a basin, since it was to be rinsed: without what the work before it takes
 */
record Promise(List<Instant> said, Instant free, Duration waited) {
    /** Of a hundred cases, in the order of {@link #said}. */
    static final List<Integer> PARTS =
            IntStream.rangeClosed(1, 19).mapToObj(twentieth -> 5 * twentieth).toList();

    Promise {
        said = List.copyOf(said);
    }

    static List<Instant> of(Turnaround turnaround, VisitId visit) {
        return PARTS.stream()
                .map(part -> turnaround.end(visit, part / 100.0).orElseThrow())
                .toList();
    }

    boolean isKept(int part) {
        return !free.isAfter(said.get(PARTS.indexOf(part)));
    }
}

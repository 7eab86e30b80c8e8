package rinsebell.app.lookin;

import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.turnaround.Range;
import rinsebell.floor.visit.Visit;
import rinsebell.floor.visit.VisitId;
import rinsebell.web.board.ChairTime;

/**
 * Since when each event of the calendar says what it says, so that calendars notice a change (RFC 5545, section 3.8.7.4).
 * After a start everything counts as changed: that is later than all that was told before, so no number ever falls.
 */
final class Revisions {
    private Map<Subject, Revision> last = Map.of();

    private record Subject(int chair, VisitId visit) {}

    /**
     * @param free what is said
     * @param number grows with each change
     * @param since when that was first said, to the second
     */
    record Revision(Range free, int number, Instant since) {}

    /**
     * An event of the calendar.
     *
     * @param chair whose time is known
     */
    record Event(ChairTime chair, Visit visit, Revision revision) {}

    /** The events of these chairs; those of which nobody can say anything have none. */
    synchronized List<Event> of(List<ChairTime> chairs, Instant now) {
        var next = new HashMap<Subject, Revision>();
        var events = chairs.stream()
                .filter(chair -> chair.free() != null)
                .map(chair -> event(chair, Objects.requireNonNull(chair.taken()), now))
                .toList();
        events.forEach(event -> next.put(subject(event.chair(), event.visit()), event.revision()));
        last = next;
        return events;
    }

    private Event event(ChairTime chair, Visit visit, Instant now) {
        var free = Objects.requireNonNull(chair.free());
        var before = last.get(subject(chair, visit));
        var revision = before != null && before.free().equals(free)
                ? before
                : new Revision(free, number(before, visit, now), now.truncatedTo(ChronoUnit.SECONDS));
        return new Event(chair, visit, revision);
    }

    private static Subject subject(ChairTime chair, Visit visit) {
        return new Subject(chair.chair(), visit.id());
    }

    /** A count that starts anew would be less than what was told before a restart; time is not. */
    private static int number(@Nullable Revision before, Visit visit, Instant now) {
        var seconds = (int) Duration.between(visit.begin(), now).toSeconds();
        return Math.max(Math.max(0, seconds), before == null ? 0 : before.number() + 1);
    }
}

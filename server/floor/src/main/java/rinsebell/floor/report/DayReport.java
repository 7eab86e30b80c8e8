package rinsebell.floor.report;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.Fact;
import rinsebell.floor.Floor;
import rinsebell.floor.bell.BellKey;
import rinsebell.floor.bowl.DayEvent;
import rinsebell.floor.salon.StaffId;

/**
 * How a day rang, and how late its rinses were.
 *
 * @param day the salon's own date
 * @param from when its work began: the first press about a client, or the first ring
 * @param until when its work ended: just after the last of those
 * @param rings every ring of the day
 * @param standing every bell that rang, and how long it stood
 * @param rinses everything that came off
 * @param sounds what devices sounded of it
 * @param unheard bells of which no device sounded anything
 */
public record DayReport(
        LocalDate day,
        Instant from,
        Instant until,
        List<Annunciation> rings,
        List<Standing> standing,
        List<RinseLateness> rinses,
        List<BellLateness> sounds,
        List<BellKey> unheard) {
    public DayReport {
        rings = List.copyOf(rings);
        standing = List.copyOf(standing);
        rinses = List.copyOf(rinses);
        sounds = List.copyOf(sounds);
        unheard = List.copyOf(unheard);
    }

    /**
     * @param log what rang on that day
     * @param floor with everybody who was here, and all that is known of it by now
     * @param sounded what devices say that they sounded on it
     */
    public static DayReport of(LocalDate day, RingLog log, Floor floor, Collection<Sounded> sounded) {
        var rings = log.annunciations();
        var begin = floor.salon().beginOf(day);
        var end = floor.salon().beginOf(day.plusDays(1));
        var work = Stream.concat(pressed(floor.facts()), rings.stream().map(Annunciation::began))
                .filter(at -> !at.isBefore(begin) && at.isBefore(end))
                .sorted()
                .toList();
        var from = work.isEmpty() ? begin : work.get(0);
        var until = work.isEmpty() ? begin : work.get(work.size() - 1).plusMillis(1);
        var sounds = BellLateness.of(sounded, log.turns());
        return new DayReport(
                day, from, until, rings, log.standing(), RinseLateness.of(floor, day), sounds, unheard(log, sounds));
    }

    private static List<BellKey> unheard(RingLog log, List<BellLateness> sounds) {
        var heard = sounds.stream().map(one -> one.sounded().turn().bell()).collect(Collectors.toSet());
        return log.turns().keySet().stream()
                .map(Turned::bell)
                .distinct()
                .filter(bell -> !heard.contains(bell))
                .toList();
    }

    /** When people pressed about clients; what the night closes by itself is nobody's work. */
    private static Stream<Instant> pressed(List<Fact> facts) {
        var nights = facts.stream()
                .filter(fact -> fact.event() instanceof DayEvent.DayEnded)
                .map(Fact::recorded)
                .collect(Collectors.toSet());
        return facts.stream()
                .filter(fact -> fact.stream() instanceof rinsebell.floor.Stream.OfVisit)
                .map(Fact::recorded)
                .filter(at -> !nights.contains(at));
    }

    /** Whether nothing was done on that day. */
    public boolean isEmpty() {
        return from.equals(until);
    }

    /** The figures of one person; of the salon as a whole where nobody is named. */
    public RingFigures of(@Nullable StaffId person) {
        return RingFigures.of(ringsOf(person), from, until);
    }

    public List<Annunciation> ringsOf(@Nullable StaffId person) {
        return rings.stream()
                .filter(ring -> Objects.equals(ring.person(), person))
                .toList();
    }

    /** Everybody for whom something rang, in the order in which it began to. */
    public List<StaffId> people() {
        return rings.stream()
                .flatMap(ring -> Stream.ofNullable(ring.person()))
                .distinct()
                .toList();
    }

    /** Bells that still stood when the work of the day ended. */
    public List<Standing> stillStanding() {
        return standing.stream()
                .filter(one -> one.gone() == null || !one.gone().isBefore(until))
                .toList();
    }
}

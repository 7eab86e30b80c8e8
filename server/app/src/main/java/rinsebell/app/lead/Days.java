package rinsebell.app.lead;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import rinsebell.app.desk.Snapshot;
import rinsebell.app.time.SalonClock;
import rinsebell.db.Soundings;
import rinsebell.floor.Fact;
import rinsebell.floor.Floor;
import rinsebell.floor.Stream;
import rinsebell.floor.TextId;
import rinsebell.floor.report.DayReport;
import rinsebell.floor.report.RingLog;
import rinsebell.floor.report.Sounded;

/**
 * Tells what days came to. Today's goes on from where it was told last; an earlier one is told from its facts when somebody
 * asks, one at a time, since that is work that nobody's hair waits for.
 */
public final class Days {
    private static final Duration PATIENCE = Duration.ofSeconds(1);

    private final Supplier<Snapshot> live;
    private final SalonClock clock;
    private final Kept kept;
    private final Turn turn = new Turn(PATIENCE);
    private @Nullable Today today;
    private @Nullable Told last;

    /**
     * Where what is no longer on the floor stands.
     *
     * @param facts of a day
     * @param between those of several days, both counted in, that are about no visit
     * @param texts of heads
     * @param soundings of devices
     */
    public record Kept(
            Function<LocalDate, List<Fact>> facts,
            BiFunction<LocalDate, LocalDate, List<Fact>> between,
            Function<Collection<TextId>, Map<TextId, String>> texts,
            Soundings soundings) {}

    /** Today, as far as it was told. */
    private record Today(LocalDate day, RingLog log, long taken) {}

    /**
     * A day and the floor that it was told on.
     *
     * @param report what it came to
     * @param floor with everybody who was here
     * @param texts labels and names
     */
    public record Told(DayReport report, Floor floor, Map<TextId, String> texts) {}

    public Days(Supplier<Snapshot> live, SalonClock clock, Kept kept) {
        this.live = live;
        this.clock = clock;
        this.kept = kept;
    }

    /**
     * What a day came to.
     *
     * @param day not after today
     * @throws rinsebell.db.DatabaseAway if that can't be told just now
     * @throws rinsebell.app.door.ProblemException reports-busy when it would take too long until it is told
     */
    public Told of(LocalDate day) {
        return turn.take(() -> told(day));
    }

    /**
     * The set-up as it is now and the days from one to another, without heads: all that bowls need.
     *
     * @throws rinsebell.db.DatabaseAway if that can't be told just now
     * @throws rinsebell.app.door.ProblemException reports-busy when it would take too long until it is told
     */
    public Floor withoutHeads(LocalDate from, LocalDate until) {
        return turn.take(() -> {
            var facts = new TreeMap<Long, Fact>();
            // What was left may be said after the day has turned.
            kept.between.apply(from, until.plusDays(1)).forEach(fact -> facts.put(fact.seq(), fact));
            live.get().floor().facts().stream()
                    .filter(fact -> !(fact.stream() instanceof Stream.OfVisit))
                    .forEach(fact -> facts.put(fact.seq(), fact));
            return Floor.of(facts.values());
        });
    }

    private Told told(LocalDate day) {
        var snapshot = live.get();
        var now = clock.now();
        return snapshot.floor().salon().dayOf(now).equals(day) ? today(day, snapshot, now) : earlier(day);
    }

    private Told today(LocalDate day, Snapshot snapshot, Instant now) {
        var facts = snapshot.floor().facts();
        var told = today;
        var log = told != null && told.day.equals(day) ? goneOn(told, facts, now) : begun(day, snapshot.floor(), now);
        today = new Today(day, log, snapshot.floor().lastSeq());
        return new Told(
                DayReport.of(day, log, snapshot.floor(), sounded(day, snapshot.floor())),
                snapshot.floor(),
                snapshot.texts());
    }

    private static RingLog goneOn(Today told, List<Fact> facts, Instant now) {
        told.log.take(facts.stream().filter(fact -> fact.seq() > told.taken).toList());
        told.log.goOnUntil(now);
        return told.log;
    }

    private static RingLog begun(LocalDate day, Floor floor, Instant now) {
        return RingLog.of(floor.facts(), floor.salon().beginOf(day), now);
    }

    /** The last one is kept: nobody turns to another page without having looked at this one a few times. */
    private Told earlier(LocalDate day) {
        var facts = kept.facts.apply(day);
        var floor = Floor.of(facts);
        var known = last;
        if (known == null || !known.report.day().equals(day) || !known.floor.equals(floor)) {
            known = told(day, facts, floor);
            last = known;
        }
        return new Told(known.report, floor, texts(facts));
    }

    private Told told(LocalDate day, List<Fact> facts, Floor floor) {
        var salon = floor.salon();
        var log = RingLog.of(facts, salon.beginOf(day), salon.beginOf(day.plusDays(1)));
        return new Told(DayReport.of(day, log, floor, sounded(day, floor)), floor, Map.of());
    }

    private List<Sounded> sounded(LocalDate day, Floor floor) {
        var salon = floor.salon();
        return kept.soundings.between(salon.beginOf(day), salon.beginOf(day.plusDays(1)));
    }

    private Map<TextId, String> texts(List<Fact> facts) {
        return Objects.requireNonNull(kept.texts.apply(
                facts.stream().map(fact -> new TextId(fact.seq())).toList()));
    }
}

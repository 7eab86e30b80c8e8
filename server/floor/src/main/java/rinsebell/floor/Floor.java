package rinsebell.floor;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.basin.Outlook;
import rinsebell.floor.bell.Bell;
import rinsebell.floor.bell.Peal;
import rinsebell.floor.bell.Seen;
import rinsebell.floor.bell.Shelved;
import rinsebell.floor.bowl.Bowl;
import rinsebell.floor.bowl.BowlId;
import rinsebell.floor.bowl.Day;
import rinsebell.floor.bowl.DayEvent;
import rinsebell.floor.salon.Place;
import rinsebell.floor.salon.Salon;
import rinsebell.floor.salon.SalonEvent;
import rinsebell.floor.turnaround.Turnaround;
import rinsebell.floor.visit.Application;
import rinsebell.floor.visit.ClientId;
import rinsebell.floor.visit.Visit;
import rinsebell.floor.visit.VisitFold;
import rinsebell.floor.visit.VisitId;

/**
 * The live floor: the fold of the salon's set-up, today, and the visits that are open or ended today. Immutable: a
 * press makes a new one. The same facts give the same floor, in whatever order they arrive.
 */
public final class Floor {
    public static final Floor EMPTY = new Floor(0, Map.of(), Map.of(), Salon.EMPTY, Day.EMPTY, Map.of(), Peal.NONE);

    private final long lastSeq;
    private final Map<Stream, List<Fact>> facts;
    private final Map<Stream, List<Fact>> standing;
    private final Salon salon;
    private final Day day;
    private final Map<VisitId, Visit> visits;
    private volatile Rung rung;
    private volatile @Nullable Outlook outlook;
    private volatile @Nullable Turnaround turnaround;

    /**
     * @param peal of this floor or, until somebody asks for its bells, of one before it
     * @param ofThis which of the two
     */
    private record Rung(Peal peal, boolean ofThis) {}

    private Floor(
            long lastSeq,
            Map<Stream, List<Fact>> facts,
            Map<Stream, List<Fact>> standing,
            Salon salon,
            Day day,
            Map<VisitId, Visit> visits,
            Peal before) {
        this.lastSeq = lastSeq;
        this.facts = facts;
        this.standing = standing;
        this.salon = salon;
        this.day = day;
        this.visits = visits;
        this.rung = new Rung(before, false);
    }

    /** The floor that these facts tell. */
    public static Floor of(Collection<Fact> facts) {
        return EMPTY.with(facts);
    }

    /** This floor and some more facts: only the streams they belong to are folded again. */
    public Floor with(Collection<Fact> more) {
        if (more.isEmpty()) {
            return this;
        }
        var all = new HashMap<>(facts);
        var touched = new HashSet<Stream>();
        for (var fact : more) {
            if (touched.add(fact.stream())) {
                all.computeIfPresent(fact.stream(), (stream, list) -> new ArrayList<>(list));
            }
            all.computeIfAbsent(fact.stream(), stream -> new ArrayList<>()).add(fact);
        }
        var last = more.stream().mapToLong(Fact::seq).max().orElse(lastSeq);
        return folded(Math.max(lastSeq, last), all, movesClock(more) ? all.keySet() : touched);
    }

    private static boolean movesClock(Collection<Fact> more) {
        return more.stream()
                .anyMatch(fact -> fact.event() instanceof DayEvent.ClockShifted
                        || (fact.stream() instanceof Stream.OfDay && fact.event() instanceof Correction));
    }

    private Floor folded(long last, Map<Stream, List<Fact>> all, Set<Stream> touched) {
        var shifts = shifts(all);
        var stand = new HashMap<>(standing);
        touched.forEach(stream -> stand.put(stream, Corrected.of(factsOf(all, stream), shifts)));
        var nextSalon = touched.contains(Stream.SALON) ? salon(factsOf(stand, Stream.SALON)) : salon;
        var nextDay = touched.stream().anyMatch(Stream.OfDay.class::isInstance) ? day(stand) : day;
        var nextVisits = new TreeMap<VisitId, Visit>(Comparator.comparingLong(VisitId::value));
        nextVisits.putAll(visits);
        for (var stream : touched) {
            if (stream instanceof Stream.OfVisit of) {
                nextVisits.remove(of.visit());
                VisitFold.of(of.visit(), factsOf(stand, stream)).ifPresent(visit -> nextVisits.put(of.visit(), visit));
            }
        }
        return new Floor(last, all, stand, nextSalon, nextDay, Collections.unmodifiableMap(nextVisits), rung.peal);
    }

    private static List<Fact> shifts(Map<Stream, List<Fact>> all) {
        return all.entrySet().stream()
                .filter(entry -> entry.getValue().stream().anyMatch(Floor::isShift))
                .flatMap(entry -> Corrected.of(entry.getValue(), List.of()).stream())
                .filter(Floor::isShift)
                .toList();
    }

    private static boolean isShift(Fact fact) {
        return fact.event() instanceof DayEvent.ClockShifted;
    }

    private static Salon salon(List<Fact> stand) {
        var folded = Salon.EMPTY;
        for (var fact : stand) {
            if (fact.event() instanceof SalonEvent event) {
                folded = event.applyTo(folded, fact);
            }
        }
        return folded;
    }

    private static Day day(Map<Stream, List<Fact>> stand) {
        var folded = Day.EMPTY;
        for (var fact : dayFacts(stand)) {
            if (fact.event() instanceof DayEvent event) {
                folded = event.applyTo(folded, fact);
            }
        }
        return folded;
    }

    private static List<Fact> dayFacts(Map<Stream, List<Fact>> stand) {
        return stand.entrySet().stream()
                .filter(entry -> entry.getKey() instanceof Stream.OfDay)
                .flatMap(entry -> entry.getValue().stream())
                .sorted(Corrected.BY_HAPPENED)
                .toList();
    }

    private static List<Fact> factsOf(Map<Stream, List<Fact>> all, Stream stream) {
        return all.getOrDefault(stream, List.of());
    }

    /** The number of the newest fact; 0 for none. */
    public long lastSeq() {
        return lastSeq;
    }

    /** The same floor where facts with higher numbers exist that are not part of it any more. */
    public Floor numberedFrom(long seq) {
        return new Floor(Math.max(lastSeq, seq), facts, standing, salon, day, visits, rung.peal);
    }

    /** Every fact of the live floor, corrections included, by number. */
    public List<Fact> facts() {
        return facts.values().stream()
                .flatMap(List::stream)
                .sorted(Comparator.comparingLong(Fact::seq))
                .toList();
    }

    /** The facts of one stream as they were recorded, corrections included. */
    public List<Fact> facts(Stream stream) {
        return List.copyOf(factsOf(facts, stream));
    }

    /** The facts of one stream that stand, at the times at which they happened. */
    public List<Fact> standing(Stream stream) {
        return factsOf(standing, stream);
    }

    /** A fact of the live floor, as it was recorded. */
    public Optional<Fact> fact(long seq) {
        return facts.values().stream()
                .flatMap(List::stream)
                .filter(fact -> fact.seq() == seq)
                .findFirst();
    }

    /** The same fact at the time at which it happened; empty when it was withdrawn. */
    public Optional<Fact> standing(long seq) {
        return fact(seq)
                .flatMap(known -> standing(known.stream()).stream()
                        .filter(fact -> fact.seq() == seq)
                        .findFirst());
    }

    /** Whether a fact, a correction among them, was not withdrawn. */
    public boolean stands(Fact fact) {
        return Corrected.stands(factsOf(facts, fact.stream()), fact.seq());
    }

    /** Whether some of a bowl was put on a head. */
    public boolean isTouched(BowlId bowl) {
        return touchedBowls().contains(bowl);
    }

    /**
     * Bowls that were mixed and still stand about: untouched, not thrown away, and not divided. What is left of a divided
     * one is asked for no more; what was taken from it is a bowl of its own, and waits.
     */
    public List<Bowl> waitingBowls() {
        var touched = touchedBowls();
        return day.bowls().stream()
                .filter(bowl -> !bowl.isThrownAway() && !bowl.divided() && !touched.contains(bowl.id()))
                .toList();
    }

    private Set<BowlId> touchedBowls() {
        return visits.values().stream()
                .flatMap(visit -> visit.applications().stream())
                .map(Application::bowl)
                .collect(Collectors.toUnmodifiableSet());
    }

    /** The standing facts that hang on this one, directly or not, by number; without itself. */
    public Set<Long> hangingOn(long seq) {
        var found = new LinkedHashSet<Long>();
        found.add(seq);
        var stand = standing.values().stream()
                .flatMap(List::stream)
                .sorted(Comparator.comparingLong(Fact::seq))
                .toList();
        for (var fact : stand) {
            if (hangsOnAny(fact, found)) {
                found.add(fact.seq());
            }
        }
        found.remove(seq);
        return Collections.unmodifiableSet(found);
    }

    /** Whether everything that this fact, standing or not, hangs on stands. */
    public boolean hasWhatItHangsOn(Fact fact) {
        var ofVisit = fact.stream() instanceof Stream.OfVisit of && of.visit().value() != fact.seq()
                ? Set.of(of.visit().value())
                : Set.<Long>of();
        return java.util.stream.Stream.concat(ofVisit.stream(), fact.event().hangsOn().stream())
                .allMatch(on -> fact(on).filter(this::stands).isPresent());
    }

    /** Everything of a visit hangs on its arrival. */
    private static boolean hangsOnAny(Fact fact, Set<Long> found) {
        var ofVisit = fact.stream() instanceof Stream.OfVisit of
                && found.contains(of.visit().value());
        return ofVisit || fact.event().hangsOn().stream().anyMatch(found::contains);
    }

    public Salon salon() {
        return salon;
    }

    public Day day() {
        return day;
    }

    public Collection<Visit> visits() {
        return visits.values();
    }

    /** Whoever is here, on a chair, at a basin or waiting. */
    public List<Visit> openVisits() {
        return visits.values().stream().filter(Visit::isOpen).toList();
    }

    /** Whether somebody of whom there is a record sits here now. */
    public boolean isHere(ClientId client) {
        return openVisits().stream()
                .anyMatch(visit -> client.equals(visit.stay().client()));
    }

    public Optional<Visit> visit(VisitId id) {
        return Optional.ofNullable(visits.get(id));
    }

    public Optional<Bowl> bowl(BowlId id) {
        return day.bowl(id);
    }

    /** Who is in a place. More than one may wait on the bench. */
    public List<Visit> at(Place place) {
        return openVisits().stream()
                .filter(visit -> visit.place().equals(place))
                .toList();
    }

    /**
     * All bells that ring or will ring on this floor if nobody acts: computed when first asked for, never stored. What is as
     * it was on the floor before is not reckoned again. Two threads that ask at once may both reckon, and come to the same.
     */
    public List<Bell> bells() {
        var known = rung;
        if (!known.ofThis) {
            known = new Rung(known.peal.on(this), true);
            rung = known;
        }
        return known.peal.bells();
    }

    /**
     * What is coming at the basins, seen from an instant. Kept for as long as it is asked for the same minute: every board
     * of one moment tells the same plan.
     */
    public Outlook outlook(Instant now) {
        var known = outlook;
        if (known == null || !known.isOf(now)) {
            known = Outlook.of(this, now);
            outlook = known;
        }
        return known;
    }

    /** When chairs come free, seen from an instant; kept as {@link #outlook} is. */
    public Turnaround turnaround(Instant now) {
        var known = turnaround;
        if (known == null || !known.isOf(now)) {
            known = Turnaround.of(this, now);
            turnaround = known;
        }
        return known;
    }

    /** What somebody has seen of bells. */
    public Set<Seen> acknowledged() {
        return told(BellAcknowledged.class, fact -> new Seen((BellAcknowledged) fact.event(), fact.happened()));
    }

    /** What somebody has put off. */
    public Set<Shelved> shelved() {
        return told(BellShelved.class, fact -> new Shelved((BellShelved) fact.event(), fact.happened(), fact.by()));
    }

    private <T> Set<T> told(Class<? extends BellAnswer> type, Function<Fact, T> what) {
        return standing.values().stream()
                .flatMap(List::stream)
                .filter(fact -> type.isInstance(fact.event()))
                .map(what)
                .collect(Collectors.toUnmodifiableSet());
    }

    /**
     * The floor that a new day begins with: without the earlier days' visits that have ended, and without the days that
     * no other visit rests on. What a restart loads is the same.
     */
    public Floor turned(Instant now) {
        var today = salon.dayOf(now);
        var stay = visits.values().stream()
                .filter(visit ->
                        visit.isOpen() || !salon.dayOf(visit.stay().arrivedAt()).isBefore(today))
                .toList();
        var streams = stay.stream().map(visit -> Stream.visit(visit.id())).collect(Collectors.toSet());
        var first = firstDay(stay, today);
        var next = Floor.of(facts().stream()
                .filter(fact -> isKept(fact.stream(), streams, first))
                .toList());
        return new Floor(lastSeq, next.facts, next.standing, next.salon, next.day, next.visits, rung.peal);
    }

    private static boolean isKept(Stream stream, Set<? extends Stream> visits, LocalDate first) {
        return stream instanceof Stream.OfVisit
                ? visits.contains(stream)
                : !(stream instanceof Stream.OfDay of) || !of.date().isBefore(first);
    }

    /** The day on which the first of these visits came, or under which the first of what they rest on was recorded. */
    private LocalDate firstDay(List<Visit> stay, LocalDate today) {
        var came = stay.stream().map(visit -> salon.dayOf(visit.stay().arrivedAt()));
        var facts = stay.stream()
                .flatMap(visit -> facts(Stream.visit(visit.id())).stream())
                .toList();
        var lowest = Ground.lowest(
                facts,
                numbers -> numbers.stream().flatMap(seq -> fact(seq).stream()).toList());
        var recorded = lowest.isEmpty() ? java.util.stream.Stream.<LocalDate>empty() : daysSince(lowest.getAsLong());
        return java.util.stream.Stream.of(came, recorded, java.util.stream.Stream.of(today))
                .flatMap(dates -> dates)
                .min(LocalDate::compareTo)
                .orElse(today);
    }

    private java.util.stream.Stream<LocalDate> daysSince(long seq) {
        return facts.entrySet().stream()
                .filter(day -> day.getKey() instanceof Stream.OfDay)
                .filter(day -> day.getValue().stream().anyMatch(fact -> fact.seq() >= seq))
                .map(day -> ((Stream.OfDay) day.getKey()).date());
    }

    /** Two floors are the same when they tell the same. */
    @Override
    public boolean equals(Object other) {
        return other instanceof Floor floor
                && floor.lastSeq == lastSeq
                && floor.salon.equals(salon)
                && floor.day.equals(day)
                && floor.visits.equals(visits)
                && floor.facts().equals(facts());
    }

    @Override
    public int hashCode() {
        return Long.hashCode(lastSeq);
    }
}

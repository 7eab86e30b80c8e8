package rinsebell.web.form;

import java.time.DateTimeException;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.LongStream;
import rinsebell.floor.Asked;

/** Reads when something happened. */
final class EntryTimes {
    static final int LONGEST_AGO_MINUTES = 720;
    /** A local time is looked for this far back: today, or before a change of the clocks that skipped it. */
    private static final int DAYS_BACK = 3;

    private static final Duration FURTHEST = Duration.ofHours(12);

    /** How long a press was on its way, in milliseconds, where it was not sent at once. */
    private static final String AGE = "age";

    /** How the instant of {@code at} is known where it is a screen that says it. */
    private static final String TOLD = "told";

    private static final Instant EARLIEST = Instant.parse("2000-01-01T00:00:00Z");
    private static final Instant LATEST = Instant.parse("2200-01-01T00:00:00Z");

    private EntryTimes() {}

    /** When it happened: as typed, else as long ago as the press was on its way, else now. */
    static Asked happened(Entries entries) {
        var asked = Asked.at(entries.now());
        return typed(entries)
                .map(when -> asked.happened(when, told(entries)))
                .orElseGet(() -> onItsWay(entries, asked));
    }

    private static Asked.Told told(Entries entries) {
        return entries.choice(TOLD, Asked.Told.class, Asked.Told.BY_HAND);
    }

    private static Asked onItsWay(Entries entries, Asked asked) {
        if (entries.all(AGE).isEmpty()) {
            return asked;
        }
        return pressed(entries)
                .map(when -> asked.happened(when, isUnsure(entries) ? Asked.Told.UNSURE : Asked.Told.BY_AGE))
                .orElse(asked.happened(asked.now(), Asked.Told.UNSURE));
    }

    /** Whether the screen itself does not know whether it slept or somebody set its clock. */
    private static boolean isUnsure(Entries entries) {
        return entries.choice(TOLD, Asked.Told.class, Asked.Told.BY_AGE) == Asked.Told.UNSURE;
    }

    /** When it happened, from {@code minutesAgo} or {@code at}; empty when nobody said so. */
    static Optional<Instant> typed(Entries entries) {
        var ago = entries.whole("minutesAgo", 0, LONGEST_AGO_MINUTES);
        var at = at(entries, "at");
        if (ago.isPresent() && at.isPresent()) {
            entries.fault("at", Fault.TWO_ANSWERS);
        }
        return at.or(
                () -> ago.map(minutes -> pressed(entries).orElse(entries.now()).minus(minutes, ChronoUnit.MINUTES)));
    }

    /** When a press that was on its way was pressed; empty for now, or when its age can't be one. */
    private static Optional<Instant> pressed(Entries entries) {
        return entries.all(AGE).stream()
                .findFirst()
                .filter(text -> text.matches("\\d{1,12}"))
                .map(Long::parseLong)
                .map(entries.now()::minusMillis);
    }

    /** An instant typed in a field of its own. */
    static Optional<Instant> at(Entries entries, String field) {
        return entries.value(field).flatMap(text -> entries.known(field, instant(text, entries), Fault.NOT_A_TIME));
    }

    private static Optional<Instant> instant(String text, Entries entries) {
        var zone = entries.floor().salon().zone();
        return parsed(text, LocalTime::parse)
                .flatMap(time -> latest(time, zone, entries.now()))
                .or(() -> parsed(text, OffsetDateTime::parse).map(OffsetDateTime::toInstant))
                .map(at -> at.truncatedTo(ChronoUnit.MILLIS))
                .filter(at -> at.isAfter(EARLIEST) && at.isBefore(LATEST));
    }

    /** The latest instant at which clocks in the zone showed this time, not after now. */
    static Optional<Instant> latest(LocalTime time, ZoneId zone, Instant now) {
        var today = now.atZone(zone).toLocalDate();
        return LongStream.rangeClosed(0, DAYS_BACK)
                .mapToObj(today::minusDays)
                .map(date -> latest(date.atTime(time), zone, now))
                .flatMap(Optional::stream)
                .findFirst();
    }

    private static Optional<Instant> latest(LocalDateTime local, ZoneId zone, Instant now) {
        return zone.getRules().getValidOffsets(local).stream()
                .map(local::toInstant)
                .filter(at -> !at.isAfter(now))
                .max(Comparator.naturalOrder());
    }

    /**
     * A time that is still to come, within half a day.
     *
     * @param field where the clock time, or an instant with its offset, was typed
     * @param from when it is said
     */
    static Optional<Instant> coming(Entries entries, String field, Instant from) {
        var zone = entries.floor().salon().zone();
        return entries.value(field)
                .flatMap(text -> entries.known(
                        field,
                        parsed(text, LocalTime::parse)
                                .flatMap(time -> next(time, zone, from))
                                .or(() -> parsed(text, OffsetDateTime::parse).map(OffsetDateTime::toInstant)),
                        Fault.NOT_A_TIME))
                .flatMap(at -> entries.known(
                        field,
                        Optional.of(at)
                                .filter(then -> then.isAfter(from)
                                        && Duration.between(from, then).compareTo(FURTHEST) <= 0),
                        Fault.GONE_BY));
    }

    /** The next instant at which clocks in the zone show this time; within two days, for one day may skip it. */
    private static Optional<Instant> next(LocalTime time, ZoneId zone, Instant from) {
        var today = from.atZone(zone).toLocalDate();
        return LongStream.rangeClosed(0, 2)
                .mapToObj(days -> today.plusDays(days).atTime(time))
                .flatMap(
                        local -> zone.getRules().getValidOffsets(local).stream().map(local::toInstant))
                .filter(at -> at.isAfter(from))
                .min(Comparator.naturalOrder());
    }

    static Optional<LocalDate> date(Entries entries, String field) {
        return entries.value(field)
                .flatMap(text -> entries.known(
                        field,
                        parsed(text, LocalDate::parse).filter(date -> date.getYear() >= 1900 && date.getYear() < 2200),
                        Fault.NOT_A_DATE));
    }

    static <T> Optional<T> parsed(String text, Function<String, T> parser) {
        try {
            return Optional.of(parser.apply(text));
        } catch (DateTimeException notThat) {
            return Optional.empty();
        }
    }
}

package rinsebell.floor;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.salon.StaffId;
import rinsebell.floor.unit.Instants;

/**
 * How a press was made.
 *
 * @param now the instant at which it is decided
 * @param happened when it happened
 * @param told how that is known
 * @param by who pressed; null when nobody was named
 * @param intent plan or fact
 */
public record Asked(
        Instant now, Instant happened, Told told, @Nullable StaffId by, Intent intent) {
    /** Facts are told to the millisecond, as they are kept. */
    public Asked {
        now = now.truncatedTo(ChronoUnit.MILLIS);
        happened = happened.truncatedTo(ChronoUnit.MILLIS);
    }

    /** How it is known when something happened. */
    public enum Told {
        /** It was pressed and decided at once. */
        NOW,
        /** Somebody typed it: what is impossible is refused, so that they can type it again. */
        BY_HAND,
        /** Reckoned from how long the press was on its way: what is impossible is put right. */
        BY_AGE,
        /** It was put right, or nobody knows how long the press was on its way. */
        UNSURE
    }

    /**
     * When whoever pressed saw what they answer to: now or, of a press that was on its way for long, then. What a bell has
     * come to since, they have not seen.
     */
    public Instant seenAt() {
        return told == Told.BY_AGE || told == Told.UNSURE ? Instants.earlier(happened, now) : now;
    }

    /** Pressed now, as a plan where the command can be one. */
    public static Asked at(Instant now) {
        return new Asked(now, now, Told.NOW, null, Intent.PLAN);
    }

    public Asked by(@Nullable StaffId whom) {
        return new Asked(now, happened, told, whom, intent);
    }

    /** @param when null for now */
    public Asked typed(@Nullable Instant when) {
        return when == null ? happened(now, Told.NOW) : happened(when, Told.BY_HAND);
    }

    public Asked happened(Instant when, Told how) {
        return new Asked(now, when, how, by, intent);
    }

    public Asked asFact() {
        return new Asked(now, happened, told, by, Intent.FACT);
    }

    /** This question, but at the earliest instant that it can be about where it was reckoned to be before that. */
    public Asked possible(Command command, Floor floor) {
        return told == Told.BY_AGE || told == Told.UNSURE
                ? earliest(command.decide(floor, this))
                        .map(at -> happened(at, Told.UNSURE))
                        .orElse(this)
                : this;
    }

    /** The instant before which something that was refused can't have happened; empty when it was not too early. */
    private static Optional<Instant> earliest(Decision decision) {
        return decision instanceof Decision.Refused refused
                ? refused.reasons().stream()
                        .filter(reason -> reason.code() == ReasonCode.TOO_EARLY)
                        .map(reason -> (Instant) reason.args().get(0))
                        .max(Comparator.naturalOrder())
                : Optional.empty();
    }

    /** Whether it is not sure that something happened at this instant. */
    boolean isUnsure(Instant at) {
        return told == Told.UNSURE && at.equals(happened);
    }
}

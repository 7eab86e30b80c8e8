package rinsebell.floor.report;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.bell.BellKey;
import rinsebell.floor.bell.Priority;
import rinsebell.floor.salon.StaffId;

/**
 * One time that a bell began to ring for somebody: the unit in which ISA-18.2 and EEMUA 191 count. Bells of one round are
 * one. A bell that rings louder than before, or again after it was seen, counts once more: it interrupts once more.
 *
 * @param bell which, by the round that it was part of
 * @param priority how it rang then
 * @param person for whom; null for the salon as a whole, where each bell counts once however many people heard it
 * @param asked when this bell began to ring for them without a break: before {@code began} where it has become louder
 * @param began when they could first hear it
 * @param ended when it rang for them no more; null while it rings
 * @param how what ended it; null while it rings
 */
public record Annunciation(
        BellKey bell,
        Priority priority,
        @Nullable StaffId person,
        Instant asked,
        Instant began,
        @Nullable Instant ended,
        @Nullable End how) {

    /** What ended a ring. */
    public enum End {
        /** Somebody said that they heard it. */
        SEEN,
        PUT_OFF,
        /** What it asked for was done. */
        DONE,
        /** What it rang for went away by a correction, unanswered. */
        RETURNED,
        /** It went on, louder. */
        LOUDER,
        /** It went on, for others. */
        ELSEWHERE;

        boolean isAnswer() {
            return this == SEEN || this == PUT_OFF || this == DONE;
        }
    }

    /** Whether it went on from a quieter one. */
    public boolean isLouder() {
        return asked.isBefore(began);
    }

    /** How long it asked before somebody answered it; empty when nobody did. */
    public Optional<Duration> toAnswer() {
        return ended == null || how == null || !how.isAnswer()
                ? Optional.empty()
                : Optional.of(Duration.between(asked, ended));
    }

    Annunciation ended(Instant at, End by) {
        return new Annunciation(bell, priority, person, asked, began, at, by);
    }

    Annunciation moved(Duration by) {
        return new Annunciation(
                bell, priority, person, asked.plus(by), began.plus(by), ended == null ? null : ended.plus(by), how);
    }
}

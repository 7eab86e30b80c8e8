package rinsebell.floor;

import java.time.Duration;
import java.time.Instant;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.bowl.DayEvent;
import rinsebell.floor.salon.StaffId;

/**
 * Something that happened, written down once and never changed. It is corrected by another fact that names it.
 *
 * @param seq its number; facts are numbered from 1 in the order in which they were recorded
 * @param stream what it belongs to
 * @param happened when it happened, to the millisecond
 * @param recorded when it was written down, to the millisecond
 * @param by who said so; null when nobody was named
 * @param event what happened
 * @param unsure whether nobody knows for sure when: the press was on its way, and its instant had to be put right
 */
public record Fact(
        long seq,
        Stream stream,
        Instant happened,
        Instant recorded,
        @Nullable StaffId by,
        Event event,
        boolean unsure) {
    public Fact(long seq, Stream stream, Instant happened, Instant recorded, @Nullable StaffId by, Event event) {
        this(seq, stream, happened, recorded, by, event, false);
    }

    /** The set-up is revised instead; and a clock that was put right wrongly is put right once more, since facts follow. */
    public boolean canBeCorrected() {
        return !(stream instanceof Stream.OfSalon) && !(event instanceof DayEvent.ClockShifted);
    }

    /** As somebody says who knows. */
    Fact at(Instant otherwise) {
        return new Fact(seq, stream, otherwise, recorded, by, event);
    }

    Fact moved(Duration by) {
        return by.isZero()
                ? this
                : new Fact(seq, stream, happened.plus(by), recorded, this.by, event.moved(by), unsure);
    }
}

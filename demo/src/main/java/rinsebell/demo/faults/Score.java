package rinsebell.demo.faults;

import java.util.List;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.bell.Bell;
import rinsebell.floor.bell.Ear;

/** A plan as one ear hears it, laid out so that a device can look often. */
final class Score {
    private final Part[] parts;

    /**
     * One bell.
     *
     * @param from when each of its turns begins, in milliseconds of the salon
     * @param turns those that this ear hears; null for a turn in which it does not
     */
    private record Part(long[] from, @Nullable Turn[] turns) {
        static Part of(Bell bell, Ear ear) {
            var rings = bell.rings();
            return new Part(
                    rings.stream().mapToLong(ring -> ring.from().toEpochMilli()).toArray(),
                    rings.stream()
                            .map(ring -> ring.isRinging() && ring.reach().reaches(ear) ? new Turn(bell, ring) : null)
                            .toArray(Turn[]::new));
        }

        @Nullable
        Turn at(long salonMillis) {
            var turn = -1;
            while (turn + 1 < from.length && from[turn + 1] <= salonMillis) {
                turn++;
            }
            return turn < 0 ? null : turns[turn];
        }
    }

    Score(List<Bell> bells, Ear ear) {
        parts = bells.stream().map(bell -> Part.of(bell, ear)).toArray(Part[]::new);
    }

    /** Every turn that is heard at an instant of the salon. */
    void at(long salonMillis, Consumer<Turn> taken) {
        for (var part : parts) {
            var turn = part.at(salonMillis);
            if (turn != null) {
                taken.accept(turn);
            }
        }
    }

    /** When the next turn of any bell begins after an instant; far away when none does. */
    long nextAfter(long salonMillis) {
        var next = Long.MAX_VALUE;
        for (var part : parts) {
            for (var from : part.from) {
                if (from > salonMillis) {
                    next = Math.min(next, from);
                    break;
                }
            }
        }
        return next;
    }
}

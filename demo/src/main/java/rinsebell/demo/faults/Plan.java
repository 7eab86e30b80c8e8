package rinsebell.demo.faults;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import rinsebell.app.desk.Snapshot;
import rinsebell.floor.bell.Bell;
import rinsebell.floor.bell.Ear;
import rinsebell.floor.bell.Ring;

/**
 * What the server shows: the floor and the plan of every bell.
 *
 * @param run of the server
 * @param number within that run
 * @param snapshot the floor
 * @param bells as they are sent
 * @param at true time at which it was shown
 * @param ahead how far the salon's time is ahead of true time, in milliseconds
 * @param scores by ear, laid out when one first listens
 */
record Plan(int run, long number, Snapshot snapshot, List<Bell> bells, long at, long ahead, Map<Ear, Score> scores) {
    Plan(int run, long number, Snapshot snapshot, List<Bell> bells, long at, long ahead) {
        this(run, number, snapshot, bells, at, ahead, new HashMap<>());
    }

    /** Whether this stands when both are known: by the number within a run. */
    boolean isNewerThan(Plan other) {
        return run > other.run || (run == other.run && number > other.number);
    }

    /** The same with the bells as the floor has them: what a device should be told. */
    Plan asItIs() {
        return bells == snapshot.bells() ? this : new Plan(run, number, snapshot, snapshot.bells(), at, ahead);
    }

    /** Every turn in which a bell rings for an ear at an instant of the salon. */
    void ringing(Ear ear, long salonMillis, Consumer<Turn> taken) {
        score(ear).at(salonMillis, taken);
    }

    /** When the next turn of any bell begins after an instant; far away when none does. */
    long nextAfter(long salonMillis) {
        return score(new Ear.Everything()).nextAfter(salonMillis);
    }

    private Score score(Ear ear) {
        return scores.computeIfAbsent(ear, one -> new Score(bells, one));
    }

    static @org.jspecify.annotations.Nullable Ring turnAt(Bell bell, long salonMillis) {
        Ring last = null;
        for (var ring : bell.rings()) {
            if (ring.from().toEpochMilli() > salonMillis) {
                break;
            }
            last = ring;
        }
        return last;
    }
}

package rinsebell.demo.kill;

import java.util.Collection;
import java.util.Locale;

/** Figures of a run. */
final class Tally {
    private int killsAtWork;
    private int killsAtStart;
    private long accepted;
    private long refused;
    private long queued;
    private long swallowed;
    private long swallowedButCounted;

    void killedAtStart() {
        killsAtStart++;
    }

    void killedAtWork() {
        killsAtWork++;
    }

    int kills() {
        return killsAtWork + killsAtStart;
    }

    /** @param counted whether a press whose answer was swallowed had been written down before the kill */
    void swallowed(boolean counted) {
        swallowed++;
        swallowedButCounted += counted ? 1 : 0;
    }

    void decided(Collection<Answered> all) {
        var yes = all.stream().filter(Answered::isAccepted).count();
        accepted += yes;
        refused += all.size() - yes;
        queued += all.stream().filter(one -> one.asked().isQueued()).count();
    }

    long answered() {
        return accepted + refused;
    }

    /** How many of them a browser's queue had sent. */
    long queued() {
        return queued;
    }

    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "%d kills (%d in the middle of presses, %d in the middle of a start): %d presses answered (%d accepted, "
                        + "%d refused; %d as the queue of a browser sends them, with their age), none lost, "
                        + "none answered otherwise afterwards; of %d answers that a kill swallowed %d presses had counted",
                kills(),
                killsAtWork,
                killsAtStart,
                answered(),
                accepted,
                refused,
                queued,
                swallowed,
                swallowedButCounted);
    }
}

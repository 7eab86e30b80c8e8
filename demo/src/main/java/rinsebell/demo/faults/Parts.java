package rinsebell.demo.faults;

import java.time.Instant;
import java.util.List;
import java.util.OptionalLong;
import rinsebell.app.desk.Snapshot;
import rinsebell.app.time.ClockProof;
import rinsebell.floor.Ledger;
import rinsebell.floor.bell.Bell;
import rinsebell.floor.bell.BellKind;

/**
 * Where a planted bug can sit: each method says what the honest part does there. A bug is these parts with one of them
 * otherwise.
 */
class Parts {
    static final Parts HONEST = new Parts();

    /** Whether a disk that says that it forced has done so. */
    boolean forces() {
        return true;
    }

    /** Whether a batch that could not be saved is said to be not saved. */
    boolean tellsNotSaved() {
        return true;
    }

    /** Whether a press is answered, or shown, only when it is saved. */
    boolean savesFirst() {
        return true;
    }

    /** What a start makes of the presses in the journal. */
    List<Ledger.Entry> read(List<Ledger.Entry> found) {
        return found;
    }

    /** Whether a press that came before a start is known after it. */
    boolean remembers() {
        return true;
    }

    /** What the machine says of its uptime. */
    OptionalLong uptime(long trueMillis, long wallAhead) {
        return OptionalLong.of(trueMillis);
    }

    /** Whether a start goes on from the last mark of the clock. */
    boolean goesOnFromMark() {
        return true;
    }

    /** Whether the clock moves with the facts when a person puts it right. */
    boolean clockFollows() {
        return true;
    }

    /** Whether devices hear of a clock that was put right before the next beat is due. */
    boolean beatsAtOnce() {
        return true;
    }

    /** What tells of the time at a start, besides the mark. */
    ClockProof proof(ClockProof read) {
        return read;
    }

    /** Whether the mark of a clock that was put right is written at once. */
    boolean marksAtOnce() {
        return true;
    }

    /** The bells as they are sent, from a server that runs since then. */
    List<Bell> sent(Snapshot snapshot, Instant since) {
        return snapshot.bells();
    }

    /** Whether a device takes a piece for older than what it shows, where the rule says so. */
    boolean isOlder(boolean byRule, Plan is, Plan was) {
        return byRule;
    }

    /** Whether a device asks again for a stream that it lost. */
    boolean reopens() {
        return true;
    }

    /** A device's own count, of steady milliseconds and of its time of day. */
    double count(double steady, double date) {
        return steady;
    }

    /** Whether the surest round trip counts. */
    boolean takesSurest() {
        return true;
    }

    /** Whether a device looks for sleep. */
    boolean looksForSleep() {
        return true;
    }

    /** Whether sleep counts that no server can confirm. */
    boolean countsSleepAlone() {
        return true;
    }

    /** For how long a device that wakes waits for an answer before it takes its own word for its sleep. */
    long wakePatience(long byRule) {
        return byRule;
    }

    /** The id under which a press is sent again. */
    String idOfAgain(String id, int times) {
        return id;
    }

    /** Whether what waits to be sent outlives the page. */
    boolean keepsQueue() {
        return true;
    }

    /** Whether a press that got no answer stays in the queue. */
    boolean sendsAgain() {
        return true;
    }

    /** Whether a late press says how long it was on its way. */
    boolean saysAge() {
        return true;
    }

    /** Whether a press that was held up on its way is so much older. */
    boolean countsTheWay() {
        return true;
    }

    /** Whether a step of a device's time of day counts as sleep only where the salon's clock went on as well. */
    boolean tellsHandFromSleep() {
        return true;
    }

    /** Whether a look quiets a bell of this kind on the device. */
    boolean lookQuiets(BellKind look, BellKind bell) {
        return look == bell;
    }

    /** Whether a device is still quiet by its own count about what was answered on it so long ago. */
    boolean isQuietByOwnCount(double passed, long millis) {
        return passed < millis;
    }

    /** For how long a device stays quiet about what was answered on it. */
    long quietMillis(long byRule) {
        return byRule;
    }
}

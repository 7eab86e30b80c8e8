package rinsebell.demo.kill;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;
import rinsebell.demo.kill.Answered.Asked;

/** What the clients asked and were answered, on their side of the wire. */
final class Book {
    private final Map<String, Asked> open = new ConcurrentHashMap<>();
    private final Map<String, Answered> decided = new ConcurrentHashMap<>();
    private final Map<String, Answered> sinceKill = new ConcurrentHashMap<>();
    private final AtomicInteger untilGoal = new AtomicInteger();
    private volatile CompletableFuture<Void> goal = new CompletableFuture<>();

    void asks(Asked asked) {
        open.put(asked.id(), asked);
    }

    /**
     * Notes an answer.
     *
     * @throws IllegalStateException when it is neither a yes nor a no of the floor
     */
    void answers(Answered answered) {
        if (!answered.isDecided()) {
            throw new IllegalStateException("not an answer to a press: " + answered);
        }
        decided.put(answered.asked().id(), answered);
        sinceKill.put(answered.asked().id(), answered);
        open.remove(answered.asked().id());
        if (untilGoal.decrementAndGet() <= 0) {
            goal.complete(null);
        }
    }

    /** Is done when so many more presses have been answered. */
    CompletableFuture<Void> answered(int many) {
        goal = new CompletableFuture<>();
        untilGoal.set(many);
        return goal;
    }

    /** Presses whose answer the kill has swallowed. */
    List<Asked> open() {
        return List.copyOf(open.values());
    }

    Collection<Answered> decided() {
        return decided.values();
    }

    /** What was answered since this was asked last. */
    List<Answered> takeSinceKill() {
        var taken = List.copyOf(sinceKill.values());
        sinceKill.clear();
        return taken;
    }
}

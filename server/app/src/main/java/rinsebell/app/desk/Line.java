package rinsebell.app.desk;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/** The presses that wait for the desk, and those that it has taken up and not answered yet. */
final class Line {
    /** More presses than hands: past this many waiting ones no more are let in. */
    private static final int MOST_WAITING = 10_000;

    private final BlockingQueue<Waiting> queue = new LinkedBlockingQueue<>(MOST_WAITING);
    private final Set<Waiting> unanswered = ConcurrentHashMap.newKeySet();

    /** Each time a press is handed in it waits for itself, the same press too. */
    record Waiting(Press press, CompletableFuture<Answer> answer) {
        static Waiting of(Press press) {
            return new Waiting(press, new CompletableFuture<>());
        }

        /** Empty when the patience is over before the answer is there. */
        Optional<Answer> within(Duration patience) {
            try {
                return Optional.of(answer.get(patience.toMillis(), TimeUnit.MILLISECONDS));
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                return Optional.empty();
            } catch (ExecutionException | TimeoutException e) {
                return Optional.empty();
            }
        }
    }

    /** Answers whether there was room. */
    boolean join(Waiting one) {
        unanswered.add(one);
        var joined = queue.offer(one);
        if (!joined) {
            unanswered.remove(one);
        }
        return joined;
    }

    /** Takes a press out again; one that the desk has taken up goes on. */
    void leave(Waiting one) {
        if (queue.remove(one)) {
            unanswered.remove(one);
        }
    }

    /** Whether a press of this id stands in line or is being written. One that is not has been answered, or never will. */
    boolean holds(String id) {
        return unanswered.stream().anyMatch(one -> one.press.id().equals(id));
    }

    boolean isEmpty() {
        return queue.isEmpty();
    }

    /** The next presses, together; none when none came in time. */
    List<Waiting> next(long waitMillis, int most) throws InterruptedException {
        var batch = new ArrayList<Waiting>();
        var first = queue.poll(waitMillis, TimeUnit.MILLISECONDS);
        if (first != null) {
            batch.add(first);
            queue.drainTo(batch, most - 1);
        }
        return batch;
    }

    /** Those that wait now, together; none when nobody does. */
    List<Waiting> waiting(int most) {
        var batch = new ArrayList<Waiting>();
        queue.drainTo(batch, most);
        return batch;
    }

    void answer(Waiting one, Answer answer) {
        one.answer.complete(answer);
        unanswered.remove(one);
    }
}

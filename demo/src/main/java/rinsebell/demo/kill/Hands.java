package rinsebell.demo.kill;

import java.util.Random;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.stream.IntStream;

/** Several people who press at once. */
final class Hands implements AutoCloseable {
    private static final int PAIRS = 6;

    private final ExecutorService threads = Executors.newFixedThreadPool(PAIRS);
    private final CompletableFuture<Void> nobodyThere;

    Hands(Client client, Book book, Random dice) {
        nobodyThere = CompletableFuture.allOf(IntStream.range(0, PAIRS)
                .mapToObj(pair -> new Presser(client, book, new Random(dice.nextLong())))
                .map(presser -> CompletableFuture.runAsync(presser, threads))
                .toArray(CompletableFuture[]::new));
    }

    /** Is done when the server is gone for all of them; fails when one was answered what no press may be answered. */
    CompletableFuture<Void> nobodyThere() {
        return nobodyThere;
    }

    @Override
    public void close() {
        threads.shutdownNow();
    }
}

package rinsebell.demo.kill;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/** Somebody who asks for the bells again and again while the server starts, and keeps the very first answer. */
final class Knock implements AutoCloseable {
    private static final long EVERY_MILLIS = 4;
    private static final long PATIENCE_SECONDS = 60;

    private final Client client;
    private final CompletableFuture<HttpResponse<String>> first = new CompletableFuture<>();
    private final ScheduledExecutorService thread = Executors.newSingleThreadScheduledExecutor();

    Knock(Client client) {
        this.client = client;
        thread.scheduleWithFixedDelay(this::once, 0, EVERY_MILLIS, TimeUnit.MILLISECONDS);
    }

    private void once() {
        try {
            first.complete(client.page("/bells"));
            thread.shutdown();
        } catch (IOException notOpenYet) {
            // It is asked again; what counts is the first answer.
        } catch (InterruptedException | RuntimeException e) {
            first.completeExceptionally(e);
        }
    }

    /** The first answer that the port gave. */
    HttpResponse<String> first() throws IOException, InterruptedException {
        try {
            return first.get(PATIENCE_SECONDS, TimeUnit.SECONDS);
        } catch (ExecutionException | TimeoutException e) {
            throw new IOException("the port was not opened", e);
        }
    }

    @Override
    public void close() {
        thread.shutdownNow();
    }
}

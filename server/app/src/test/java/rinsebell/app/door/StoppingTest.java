package rinsebell.app.door;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.InetAddress;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import rinsebell.app.http.ServerUnderTest;

class StoppingTest {

    private static final int SECONDS = 20;

    /** A browser that only keeps its connection is let go at once; whoever waits for an answer still gets it. */
    @Test
    void aStopWaitsForAnswersAndNotForIdleBrowsers() throws Exception {
        CountDownLatch begun = new CountDownLatch(1);
        CountDownLatch mayEnd = new CountDownLatch(1);
        ServerUnderTest server = new ServerUnderTest(List.of(routes -> {
            routes.get("/", ctx -> ctx.result("here"));
            routes.get("/slow", ctx -> {
                begun.countDown();
                ctx.result(mayEnd.await(SECONDS, TimeUnit.SECONDS) ? "done" : "never");
            });
        }));
        try (Socket idle = idle(server)) {
            CompletableFuture<HttpResponse<String>> slow = slow(server);
            assertThat(begun.await(SECONDS, TimeUnit.SECONDS)).isTrue();
            CompletableFuture<Void> stop = CompletableFuture.runAsync(server::close);
            assertThat(idle.getInputStream().readAllBytes()).isEmpty();
            assertThat(stop).isNotDone();
            mayEnd.countDown();
            assertThat(slow.get(SECONDS, TimeUnit.SECONDS).body()).isEqualTo("done");
            stop.get(SECONDS, TimeUnit.SECONDS);
        }
    }

    /** What is closed after the server, the database first of all, must be closed all the same. */
    @Test
    void whoeverNeverFinishesIsCutOff() throws Exception {
        CountDownLatch begun = new CountDownLatch(1);
        CountDownLatch never = new CountDownLatch(1);
        ServerUnderTest server = new ServerUnderTest(List.of(routes -> routes.get("/slow", ctx -> {
            begun.countDown();
            while (never.getCount() > 0) {
                try {
                    never.await();
                } catch (InterruptedException deaf) {
                    // As a handler that a driver does not let go.
                }
            }
        })));
        try {
            CompletableFuture<HttpResponse<String>> slow = slow(server);
            assertThat(begun.await(SECONDS, TimeUnit.SECONDS)).isTrue();
            server.close();
            assertThat(slow).failsWithin(SECONDS, TimeUnit.SECONDS);
        } finally {
            never.countDown();
        }
    }

    private static CompletableFuture<HttpResponse<String>> slow(ServerUnderTest server) {
        HttpRequest request =
                HttpRequest.newBuilder(URI.create(server.url("/slow"))).build();
        return HttpClient.newHttpClient().sendAsync(request, HttpResponse.BodyHandlers.ofString());
    }

    /** A connection on which one answer has come and nothing more is asked. */
    private static Socket idle(ServerUnderTest server) throws Exception {
        Socket socket = new Socket(InetAddress.getLoopbackAddress(), server.port());
        socket.setSoTimeout(SECONDS * 1_000);
        String request = "GET / HTTP/1.1\r\nHost: localhost:" + server.port() + "\r\n\r\n";
        socket.getOutputStream().write(request.getBytes(StandardCharsets.US_ASCII));
        StringBuilder answer = new StringBuilder();
        while (!answer.toString().endsWith("here")) {
            answer.append((char) socket.getInputStream().read());
        }
        return socket;
    }
}

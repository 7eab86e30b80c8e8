package rinsebell.app.feed;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.net.http.HttpResponse.BodySubscriber;
import java.nio.ByteBuffer;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.Flow;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rinsebell.app.door.Certificate;
import rinsebell.app.door.Shown;
import rinsebell.app.http.ServerUnderTest;
import rinsebell.app.http.TestCertificate;
import rinsebell.app.time.MachineTime;

/** HTTPS, and many screens of one browser over one connection of HTTP/2, with the JDK's own client. */
class SharedConnectionTest {

    private static final String BROWSER = "browser=" + "a".repeat(32);

    private final TwoBoards boards = new TwoBoards();
    private final Feed feed = new Feed(boards, new FeedLimits(Duration.ofMillis(200), 8, 10, 40));
    private final FeedRoutes routes = new FeedRoutes(feed, boards);

    @TempDir
    private Path folder = Path.of("");

    private ServerUnderTest server;
    private HttpClient client;

    /** What the client lets one stream hold unread; by itself it would take 16 MB. */
    @BeforeAll
    static void narrow() {
        System.setProperty("jdk.httpclient.windowsize", "1048576");
    }

    @AfterAll
    static void wide() {
        System.clearProperty("jdk.httpclient.windowsize");
    }

    @BeforeEach
    void start() throws Exception {
        TestCertificate made = new TestCertificate(folder, "EC", "-1d", 30);
        Instant now = Instant.ofEpochMilli(new MachineTime().wallMillis());
        server = new ServerUnderTest(List.of(routes), new Shown(Certificate.read(made.certificate(), made.key(), now)));
        client = HttpClient.newBuilder().sslContext(made.trust()).build();
    }

    @AfterEach
    void close() {
        feed.close();
        server.close();
    }

    private HttpRequest.Builder ask(String path) {
        return HttpRequest.newBuilder(URI.create("https://localhost:" + server.securePort() + path));
    }

    /** Takes events in, or none from some moment on: then the window of its stream fills (RFC 9113, section 5.2). */
    private static final class Tab implements BodySubscriber<Void>, HttpResponse.BodyHandler<Void> {

        private final StringBuilder heard = new StringBuilder();
        private final boolean reads;
        private final CompletableFuture<Void> end = new CompletableFuture<>();

        Tab(boolean reads) {
            this.reads = reads;
        }

        @Override
        public BodySubscriber<Void> apply(HttpResponse.ResponseInfo info) {
            return this;
        }

        @Override
        public CompletionStage<Void> getBody() {
            return CompletableFuture.completedFuture(null);
        }

        @Override
        public void onSubscribe(Flow.Subscription subscription) {
            if (reads) {
                subscription.request(Long.MAX_VALUE);
            }
        }

        @Override
        public synchronized void onNext(List<ByteBuffer> parts) {
            parts.forEach(part -> heard.append(UTF_8.decode(part)));
        }

        @Override
        public void onError(@Nullable Throwable broken) {
            end.complete(null);
        }

        @Override
        public void onComplete() {
            end.complete(null);
        }

        synchronized boolean heard(String text) {
            return heard.indexOf(text) >= 0;
        }
    }

    private Tab opened(boolean reads) throws Exception {
        Tab tab = new Tab(reads);
        HttpResponse<Void> answer =
                client.send(ask("/feed?board=floor").header("Cookie", BROWSER).build(), tab);
        assertThat(answer.version()).isEqualTo(HttpClient.Version.HTTP_2);
        assertThat(answer.statusCode()).isEqualTo(200);
        return tab;
    }

    @Test
    void moreTabsOfOneBrowserThanHttp1CouldHoldAreAllLive() throws Exception {
        List<Tab> tabs = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            tabs.add(opened(true));
        }
        boards.show("chair-1", "for all of them");
        feed.publish();
        tabs.forEach(tab -> await().until(() -> tab.heard("for all of them")));
    }

    /** The one that never reads is cut off by itself; the others of its connection hear on, and so does a new one. */
    @Test
    void aStalledTabIsCutOffAndNoOtherOfItsConnection() throws Exception {
        Tab good = opened(true);
        Tab stalled = opened(false);
        await().until(() -> feed.screenCount() == 2);
        int sent = 0;
        while (feed.screenCount() == 2) {
            sent++;
            String mark = "mark-" + sent + ".";
            boards.show("chair-1", mark + "x".repeat(250_000));
            feed.publish();
            await().until(() -> good.heard(mark));
            assertThat(sent).as("quarter megabytes sent before it was found").isLessThan(400);
        }
        boards.show("chair-2", "still live");
        feed.publish();
        await().until(() -> good.heard("still live"));
        assertThat(good.end).isNotDone();
        Tab next = opened(true);
        await().until(() -> next.heard("still live"));
        assertThat(stalled.heard("mark")).isFalse();
    }

    @Test
    void ourOwnOriginIsTheOneUnderHttps() throws Exception {
        String ours = "https://localhost:" + server.securePort();
        assertThat(status(ours)).isEqualTo(200);
        assertThat(status(ours.replace("https", "http"))).isEqualTo(403);
        assertThat(status("https://example.org")).isEqualTo(403);
    }

    private int status(String origin) throws Exception {
        return client.send(
                        ask("/feed/once?board=floor").header("Origin", origin).build(), BodyHandlers.ofString())
                .statusCode();
    }

    /** The same in the older protocol, which some programs speak. */
    @Test
    void http1IsServedToo() throws Exception {
        HttpResponse<String> answer = client.send(
                ask("/feed/once?board=floor")
                        .version(HttpClient.Version.HTTP_1_1)
                        .build(),
                BodyHandlers.ofString());
        assertThat(answer.version()).isEqualTo(HttpClient.Version.HTTP_1_1);
        assertThat(answer.body()).contains("chair-2");
    }
}

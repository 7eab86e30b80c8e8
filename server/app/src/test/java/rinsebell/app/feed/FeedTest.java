package rinsebell.app.feed;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import rinsebell.app.http.EventStream;
import rinsebell.app.http.ServerUnderTest;

class FeedTest {

    private static final FeedLimits LIMITS = new FeedLimits(Duration.ofMillis(100), 8, 3, 40);

    private static final Instant DUE = Instant.ofEpochMilli(TwoBoards.NOW).plusSeconds(1);

    private static final String ONE_BROWSER = "browser=" + "a".repeat(32);

    private final TwoBoards boards = new TwoBoards();
    private final Feed feed = new Feed(boards, LIMITS);
    private final FeedRoutes routes = new FeedRoutes(feed, boards);
    private final ServerUnderTest server = new ServerUnderTest(List.of(routes));

    @AfterEach
    void close() {
        feed.close();
        server.close();
    }

    @Test
    void theWholeBoardComesFirstThenOnlyWhatChanged() throws Exception {
        try (StreamReader screen = new StreamReader(server, "floor")) {
            assertThat(ids(screen.fragments(2))).containsExactly("chair-1", "chair-2");
            boards.show("chair-2", "check due");
            feed.publish();
            JsonNode changed = screen.fragments(3).get(2);
            assertThat(changed.get("id").asText()).isEqualTo("chair-2");
            assertThat(changed.get("html").asText()).isEqualTo("<p>check due</p>");
            assertThat(changed.get("n").asLong()).isEqualTo(2);
        }
    }

    @Test
    void theStreamSaysWhatItIs() {
        try (StreamReader screen = new StreamReader(server, "floor")) {
            screen.fragments(2);
            assertThat(screen.head()).contains("Content-Type: text/event-stream;charset=utf-8", "no-store");
            assertThat(screen.text())
                    .startsWith("retry: 1000\n\nevent: beat\nid: run1-1\ndata: {\"run\":\"run1\",\"n\":1,");
            assertThat(screen.events()).allMatch(event -> event.id().equals("run1-1"));
        }
    }

    /** Line ends of every kind, quotes and other scripts pass through a stream unharmed. */
    @Test
    void noTextCanEndAnEventEarly() {
        String odd = "a\n\nb\r\n\r\nc\rdata: x\n\nevent: beat\u2028\u0000 \"ü\" \ud83d\udc88 \u05d0\u05d1";
        boards.show("chair-1", odd);
        try (StreamReader screen = new StreamReader(server, "floor")) {
            assertThat(screen.fragments(2).get(0).get("html").asText()).isEqualTo("<p>" + odd + "</p>");
        }
    }

    @Test
    void aChangeIsDrawnOnceForAllScreens() {
        try (StreamReader one = new StreamReader(server, "floor");
                StreamReader two = new StreamReader(server, "floor");
                StreamReader other = new StreamReader(server, "basins")) {
            List.of(one, two).forEach(screen -> screen.fragments(2));
            other.fragments(1);
            int before = boards.drawings();
            boards.show("chair-1", "rinse now");
            feed.publish();
            List.of(one, two).forEach(screen -> screen.fragments(3));
            assertThat(boards.drawings() - before).isEqualTo(1);
            assertThat(other.fragments(1)).hasSize(1);
        }
    }

    private void drawnAhead() {
        int before = boards.drawings();
        feed.ahead(DUE);
        await().until(() -> boards.drawings() > before);
    }

    @Test
    void whatFallsDueWasDrawnAhead() {
        try (StreamReader screen = new StreamReader(server, "floor")) {
            screen.fragments(2);
            drawnAhead();
            int drawn = boards.drawings();
            boards.fallsDue();
            feed.publish();
            assertThat(screen.fragments(3).get(2).get("html").asText()).isEqualTo("<p>due at " + DUE + "</p>");
            assertThat(boards.drawings()).isEqualTo(drawn);
        }
    }

    @Test
    void whatWasDrawnAheadAndDidNotComeSoIsForgotten() {
        try (StreamReader screen = new StreamReader(server, "floor")) {
            screen.fragments(2);
            drawnAhead();
            boards.show("chair-1", "rinse now");
            feed.publish();
            assertThat(screen.fragments(3).get(2).get("html").asText()).isEqualTo("<p>rinse now</p>");
        }
    }

    /** Whoever comes between the drawing and its instant lets the others be sent something: the batch counts from that. */
    @Test
    void whatWasSentMeanwhileIsCountedIn() {
        try (StreamReader screen = new StreamReader(server, "floor")) {
            screen.fragments(2);
            drawnAhead();
            boards.timeChanges("chair-1", "7 minutes");
            try (StreamReader later = new StreamReader(server, "floor")) {
                later.fragments(2);
                assertThat(screen.fragments(3).get(2).get("html").asText()).isEqualTo("<p>7 minutes</p>");
                boards.fallsDue();
                feed.publish();
                assertThat(screen.fragments(5).subList(3, 5))
                        .extracting(one -> one.get("html").asText())
                        .containsExactly("<p>free</p>", "<p>due at " + DUE + "</p>");
            }
        }
    }

    @Test
    void aScreenThatComesBackGetsEverythingAgain() {
        try (StreamReader first = new StreamReader(server, "floor")) {
            first.fragments(2);
        }
        boards.show("chair-1", "changed while away");
        try (StreamReader second = new StreamReader(server, "floor")) {
            assertThat(second.fragments(2).get(0).get("html").asText()).isEqualTo("<p>changed while away</p>");
        }
    }

    @Test
    void piecesThatComeOrGoAskForANewPage() {
        try (StreamReader screen = new StreamReader(server, "floor")) {
            screen.fragments(2);
            boards.show("chair-3", "new");
            feed.publish();
            screen.until(reader -> reader.named("redraw").size() == 1);
            assertThat(screen.fragments(2)).hasSize(2);
        }
    }

    @Test
    void aBeatTellsTimeAndNumber() throws Exception {
        try (StreamReader screen = new StreamReader(server, "basins")) {
            screen.until(reader -> reader.named("beat").size() >= 3);
            JsonNode beat =
                    new ObjectMapper().readTree(screen.named("beat").get(2).data());
            assertThat(beat.get("now").asLong()).isEqualTo(TwoBoards.NOW);
            assertThat(beat.get("n").asLong()).isEqualTo(1);
            assertThat(beat.get("speed").asInt()).isEqualTo(1);
            assertThat(beat.get("clock").asText()).isEqualTo("agrees");
        }
    }

    /** The next beat of this feed is due in an hour. */
    @Test
    void aBeatAtOnceComesBeforeWhatIsPublishedAfterIt() {
        Feed seldom = new Feed(boards, new FeedLimits(Duration.ofHours(1), 8, 3, 40));
        try (ServerUnderTest another = new ServerUnderTest(List.of(new FeedRoutes(seldom, boards)));
                seldom;
                StreamReader screen = new StreamReader(another, "floor")) {
            screen.fragments(2);
            boards.show("chair-2", "taken");
            seldom.beatAtOnce();
            seldom.publish();
            screen.fragments(3);
            assertThat(screen.events().stream().map(EventStream.Event::type))
                    .containsExactly("beat", "fragment", "fragment", "beat", "fragment");
        }
    }

    @Test
    void anUnknownBoardIsNotFound() {
        given(server.request()).get("/feed?board=cellar").then().statusCode(404);
        given(server.request()).get("/feed").then().statusCode(404);
    }

    @Test
    void aBoardThatCannotBeDrawnLosesItsScreensAndNoOther() {
        try (StreamReader floor = new StreamReader(server, "floor");
                StreamReader basins = new StreamReader(server, "basins")) {
            floor.fragments(2);
            basins.fragments(1);
            boards.breakBoard("floor");
            feed.publish();
            floor.untilClosed();
            int beats = basins.named("beat").size();
            basins.until(reader -> reader.named("beat").size() > beats + 1);
        }
    }

    /** One client that never reads fills its window; the others must not notice, and it must be cut off. */
    @Test
    void aScreenThatNeverReadsIsCutOffAndHoldsNobodyUp() throws Exception {
        try (Socket deaf = deafScreen();
                StreamReader good = new StreamReader(server, "floor")) {
            good.fragments(2);
            await().until(() -> feed.screenCount() == 2);
            int sent = 0;
            while (feed.screenCount() == 2) {
                boards.show("chair-1", sent + "x".repeat(250_000));
                long started = System.nanoTime();
                feed.publish();
                assertThat(Duration.ofNanos(System.nanoTime() - started)).isLessThan(Duration.ofSeconds(1));
                sent++;
                good.untilCount(2 + sent);
                assertThat(sent)
                        .as("quarter megabytes sent before the deaf screen was found")
                        .isLessThan(200);
            }
            boards.show("chair-2", "still live");
            feed.publish();
            assertThat(good.fragments(3 + sent).get(2 + sent).get("html").asText())
                    .isEqualTo("<p>still live</p>");
            assertBroken(deaf);
        }
    }

    @Test
    void aScreenThatHangsUpIsForgotten() {
        try (StreamReader screen = new StreamReader(server, "floor")) {
            screen.fragments(2);
            assertThat(feed.screenCount()).isEqualTo(1);
        }
        await().until(() -> feed.screenCount() == 0);
    }

    @Test
    void manyScreensAtOnceAllHearTheSame() throws Exception {
        List<StreamReader> screens = java.util.stream.IntStream.range(0, 40)
                .mapToObj(i -> new StreamReader(server, "floor"))
                .toList();
        screens.forEach(screen -> screen.fragments(2));
        given(server.request()).get("/feed?board=floor").then().statusCode(503);
        boards.show("chair-1", "for all");
        feed.publish();
        for (StreamReader screen : screens) {
            assertThat(screen.fragments(3).get(2).get("html").asText()).isEqualTo("<p>for all</p>");
            screen.close();
        }
    }

    /** Seats are counted at the door, not when the feed has come to a screen: a crowd finds as many as one by one. */
    @Test
    void aCrowdGetsAsManySeatsAsThereAre() {
        List<StreamReader> crowd = java.util.stream.IntStream.range(0, 60)
                .mapToObj(i -> new StreamReader(server, "floor"))
                .toList();
        crowd.forEach(screen -> screen.until(reader -> !reader.head().isEmpty()));
        assertThat(crowd).filteredOn(screen -> screen.head().contains(" 200 ")).hasSize(40);
        crowd.forEach(StreamReader::close);
        boards.show("chair-1", "for nobody");
        feed.publish();
        await().untilAsserted(() -> assertThat(feed.screenCount()).isZero());
        try (StreamReader next = new StreamReader(server, "floor")) {
            assertThat(next.fragments(2)).hasSize(2);
        }
    }

    /** Whoever asks for the headers alone gets no stream and takes no seat. */
    @Test
    void headersAloneAreNoScreen() {
        for (int i = 0; i <= LIMITS.screens(); i++) {
            given(server.request()).head("/feed?board=floor").then().statusCode(200);
        }
        assertThat(feed.screenCount()).isZero();
        try (StreamReader next = new StreamReader(server, "floor")) {
            assertThat(next.fragments(2)).hasSize(2);
        }
    }

    /** The same bytes, and then the end; nothing of it may be kept. */
    @Test
    void onceAnswersWhatAStreamBeginsWith() {
        try (StreamReader screen = new StreamReader(server, "floor")) {
            screen.fragments(2);
            var once = given(server.request()).get("/feed/once?board=floor");
            once.then()
                    .statusCode(200)
                    .contentType("text/event-stream;charset=utf-8")
                    .header("Cache-Control", "no-store");
            assertThat(screen.text()).startsWith(once.asString());
            assertThat(once.asString()).contains("chair-1", "chair-2").endsWith("\n\n");
        }
        given(server.request()).get("/feed/once?board=cellar").then().statusCode(404);
    }

    /** Whoever asks for boards that are not there costs nothing, and whoever asks once costs one drawing. */
    @Test
    void noBoardIsDrawnToLookWhetherItIsThere() {
        given(server.request()).get("/feed?board=cellar").then().statusCode(404);
        given(server.request()).get("/feed/once?board=cellar").then().statusCode(404);
        assertThat(boards.boardsAsked()).isZero();
        given(server.request()).get("/feed/once?board=floor").then().statusCode(200);
        assertThat(boards.boardsAsked()).isEqualTo(1);
    }

    /** Six connections are what browsers open to one server on HTTP/1.1 (common practice, no source). */
    @Test
    void aBrowserGetsFourStreamsAndAnotherOneWhenOneIsClosed() {
        List<StreamReader> four = java.util.stream.IntStream.range(0, 4)
                .mapToObj(i -> new StreamReader(server, "floor", ONE_BROWSER))
                .toList();
        four.forEach(screen -> screen.fragments(2));
        for (int i = 0; i < 3; i++) {
            given(server.request())
                    .header("Cookie", ONE_BROWSER)
                    .get("/feed?board=floor")
                    .then()
                    .statusCode(429);
        }
        given(server.request())
                .header("Cookie", ONE_BROWSER)
                .get("/feed/once?board=floor")
                .then()
                .statusCode(200);
        try (StreamReader other = new StreamReader(server, "floor", "browser=" + "b".repeat(32));
                StreamReader program = new StreamReader(server, "floor")) {
            other.fragments(2);
            program.fragments(2);
        }
        four.get(0).close();
        try (StreamReader next = new StreamReader(server, "floor", ONE_BROWSER)) {
            next.fragments(2);
        }
        four.forEach(StreamReader::close);
    }

    @Test
    void closingEndsEveryStream() {
        try (StreamReader screen = new StreamReader(server, "floor")) {
            screen.fragments(2);
            feed.close();
            screen.untilClosed();
        }
    }

    private static List<String> ids(List<JsonNode> fragments) {
        return fragments.stream().map(fragment -> fragment.get("id").asText()).toList();
    }

    private Socket deafScreen() throws IOException {
        Socket socket = new Socket();
        socket.setReceiveBufferSize(4_096);
        socket.connect(new java.net.InetSocketAddress("127.0.0.1", server.port()));
        String request = "GET /feed?board=floor HTTP/1.1\r\nHost: localhost:" + server.port() + "\r\n\r\n";
        socket.getOutputStream().write(request.getBytes(StandardCharsets.US_ASCII));
        return socket;
    }

    /** What was on its way is still read; then the end comes at once, not after a timeout. */
    private static void assertBroken(Socket socket) throws Exception {
        Future<Boolean> ended = java.util.concurrent.CompletableFuture.supplyAsync(() -> readToEnd(socket));
        assertThat(ended.get(5, TimeUnit.SECONDS)).isTrue();
    }

    private static boolean readToEnd(Socket socket) {
        try (InputStream in = socket.getInputStream()) {
            in.transferTo(java.io.OutputStream.nullOutputStream());
        } catch (IOException reset) {
            return true;
        }
        return true;
    }
}

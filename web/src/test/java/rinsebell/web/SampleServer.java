package rinsebell.web;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicInteger;
import rinsebell.web.view.KeptPage;
import rinsebell.web.view.View;

/**
 * Serves the sample pages under the policy that the house sends, takes presses and tells the time. There is no feed.
 */
final class SampleServer implements AutoCloseable {
    private static final String POLICY = "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self'; "
            + "font-src 'self'; connect-src 'self'; worker-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'";

    /** What every answer of the house carries, and no other. */
    static final Map<String, String> OURS = Map.of("Rinsebell-Answer", "true");

    private static final String SIGN_IN =
            "<!doctype html><html lang=\"en\"><title>Sign in</title><main><h1>Sign in to this network</h1></main></html>";

    static {
        // Head and body of an answer go out as two packets, and the second would wait for the browser's word on the
        // first.
        System.setProperty("sun.net.httpserver.nodelay", "true");
    }

    private final HttpServer server;
    private final ExecutorService threads = Executors.newCachedThreadPool();
    private volatile Assets assets = Assets.under("/assets");
    private final Pages pages = new Pages();

    /** Made once: they are records, and a page asks for thirty files. */
    private final Map<String, View> samples = Preview.samples();

    /** Bodies of the presses that came, in their order. */
    final List<String> presses = new CopyOnWriteArrayList<>();

    /** The addresses of the presses that came, in their order. */
    final List<String> addresses = new CopyOnWriteArrayList<>();

    /** When, by the browser's own word, the presses that came were sent, in their order; "null" where it did not say. */
    final List<String> sent = new CopyOnWriteArrayList<>();

    /** Presses to these addresses are refused. */
    final Set<String> refused = ConcurrentHashMap.newKeySet();

    /** How often the feed was asked for. */
    final AtomicInteger feeds = new AtomicInteger();

    /** How the feed begins, which then says nothing more; while it is empty there is none. */
    volatile String feed = "";

    /** How often something was erased here. */
    volatile long erasings;

    /** Pages that can't be drawn. */
    final Set<String> failing = ConcurrentHashMap.newKeySet();

    /** How often something else answered at this address. */
    final AtomicInteger strangers = new AtomicInteger();

    /** Whether something else answers here, such as the sign-in page of a network. */
    volatile boolean isAnothers;

    /** Whether nothing is answered. */
    volatile boolean down;

    /** Whether presses are not answered; pages still come, so that one can be loaded again meanwhile. */
    volatile boolean isDeaf;

    /** Whether browsers may keep pages; tests that carry requests themselves would not see what a service worker asks. */
    volatile boolean keeps;

    /** Whether its clock goes on from page to page, as a salon's does, rather than from the samples' instant each time. */
    volatile boolean goesOn;

    /** The samples' instant; from then on it goes like any clock. */
    private volatile long startedNanos = System.nanoTime();

    SampleServer() throws IOException {
        server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
        server.createContext("/", this::answer);
        server.setExecutor(threads);
        server.start();
    }

    String url(String path) {
        return "http://localhost:" + server.getAddress().getPort() + "/" + path;
    }

    String asset(String path) {
        return assets.url(path);
    }

    /** The salon's time, in milliseconds since 1970. */
    long now() {
        return Samples.NOW.toEpochMilli() + (System.nanoTime() - startedNanos) / 1_000_000;
    }

    /** Lets time pass here that the browser does not see. */
    void pass(Duration time) {
        startedNanos -= time.toNanos();
    }

    /** From now on there are other files, as after an update of the program. */
    void update() {
        assets = Assets.under("/assets/next");
    }

    @Override
    public void close() {
        server.stop(0);
        threads.shutdownNow();
    }

    private void answer(HttpExchange exchange) throws IOException {
        var path = exchange.getRequestURI().getPath();
        if (isAnothers && !down) {
            strangers.incrementAndGet();
            exchange.getRequestBody().readAllBytes();
            send(exchange, 200, "text/html; charset=utf-8", SIGN_IN.getBytes(StandardCharsets.UTF_8));
            return;
        }
        OURS.forEach(exchange.getResponseHeaders()::set);
        exchange.getResponseHeaders().set("Rinsebell-Erased", String.valueOf(erasings));
        var page = path.equals("/kept") ? new KeptPage() : samples.get(path.substring(1));
        if (down || isDeaf && exchange.getRequestMethod().equals("POST")) {
            exchange.close();
        } else if (failing.contains(path)) {
            send(exchange, 500, "text/plain", new byte[0]);
        } else if (keeps && path.equals("/worker.js")) {
            send(exchange, 200, "text/javascript", assets.worker().bytes());
        } else if (path.equals("/listening") || path.equals("/sounded")) {
            send(exchange, 204, "text/plain", new byte[0]);
        } else if (exchange.getRequestMethod().equals("POST")) {
            press(exchange);
        } else if (path.equals("/clock")) {
            send(
                    exchange,
                    200,
                    "application/json",
                    ("{\"now\":" + now() + ",\"speed\":1}").getBytes(StandardCharsets.UTF_8));
        } else if (path.equals("/feed") && !feed.isEmpty()) {
            begin(exchange);
        } else if (page != null) {
            if (!goesOn) {
                startedNanos = System.nanoTime();
            }
            send(exchange, 200, "text/html; charset=utf-8", html(page).getBytes(StandardCharsets.UTF_8));
        } else {
            var asset = assets.at(path).orElse(null);
            send(
                    exchange,
                    asset == null ? 404 : 200,
                    asset == null ? "text/plain" : asset.type(),
                    asset == null ? new byte[0] : asset.bytes());
        }
    }

    private void begin(HttpExchange exchange) throws IOException {
        feeds.incrementAndGet();
        exchange.getResponseHeaders().set("Content-Type", "text/event-stream");
        exchange.sendResponseHeaders(200, 0);
        exchange.getResponseBody().write(feed.getBytes(StandardCharsets.UTF_8));
        exchange.getResponseBody().flush();
    }

    private void press(HttpExchange exchange) throws IOException {
        var path = exchange.getRequestURI().getPath();
        presses.add(new String(exchange.getRequestBody().readAllBytes(), StandardCharsets.UTF_8));
        addresses.add(path);
        sent.add(String.valueOf(exchange.getRequestHeaders().getFirst("Rinsebell-Sent")));
        var answer = refused.contains(path) ? FormSamples.refused() : FormSamples.done();
        var status = refused.contains(path) ? 409 : 200;
        send(exchange, status, "text/html; charset=utf-8", html(answer).getBytes(StandardCharsets.UTF_8));
    }

    private String html(View view) {
        var screen = Samples.screen(assets);
        var own = new Screen(
                screen.words(),
                assets,
                screen.time(),
                Instant.ofEpochMilli(now()),
                screen.stamp(),
                "press-of-the-page");
        return pages.render(view, own);
    }

    private static void send(HttpExchange exchange, int status, String type, byte[] body) throws IOException {
        exchange.getResponseHeaders().set("Content-Security-Policy", POLICY);
        exchange.getResponseHeaders().set("Content-Type", type);
        exchange.sendResponseHeaders(status, body.length == 0 ? -1 : body.length);
        exchange.getResponseBody().write(body);
        exchange.close();
    }
}

package rinsebell.app.http;

import io.restassured.builder.RequestSpecBuilder;
import io.restassured.config.EncoderConfig;
import io.restassured.config.RestAssuredConfig;
import io.restassured.specification.RequestSpecification;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import org.eclipse.jetty.server.Request;
import org.jspecify.annotations.Nullable;
import rinsebell.app.asset.AssetRoutes;
import rinsebell.app.door.Door;
import rinsebell.app.door.HostNames;
import rinsebell.app.door.ProblemText;
import rinsebell.app.door.Routes;
import rinsebell.app.door.Shown;
import rinsebell.app.door.WebServer;
import rinsebell.web.Assets;
import rinsebell.web.Pages;
import rinsebell.web.Screen;
import rinsebell.web.TimeStyle;
import rinsebell.web.Words;
import rinsebell.web.view.ProblemPage;

/** The real server on a free port of this machine, with the routes that a test gives it. */
public final class ServerUnderTest implements AutoCloseable {

    private final WebServer server;
    private final int port;
    private final int securePort;

    public ServerUnderTest(List<Routes> routes) {
        this(routes, null);
    }

    /** @param shown for HTTPS beside HTTP; null for HTTP alone */
    public ServerUnderTest(List<Routes> routes, @Nullable Shown shown) {
        this(routes, shown, request -> false);
    }

    /** @param devices whether a request comes from a device that is in */
    public ServerUnderTest(List<Routes> routes, @Nullable Shown shown, Predicate<Request> devices) {
        server = new WebServer(new Door(HostNames.loopbackAnd(Set.of()), problemText(), devices, false), routes);
        try {
            port = server.listen("127.0.0.1", 0);
            securePort = shown == null ? 0 : server.listenSecurely("127.0.0.1", 0, shown);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static ProblemText problemText() {
        Words words = Words.british();
        Pages pages = new Pages();
        TimeStyle style = new TimeStyle(ZoneOffset.UTC, false);
        Screen screen = new Screen(words, Assets.under(AssetRoutes.PREFIX), style, Instant.EPOCH, "", null);
        return new ProblemText(words, (title, detail) -> pages.render(new ProblemPage(title, detail), screen));
    }

    public int port() {
        return port;
    }

    /** Of HTTPS. */
    public int securePort() {
        return securePort;
    }

    public String url(String path) {
        return "http://localhost:" + port + path;
    }

    /** A request to this server, for RestAssured. */
    public RequestSpecification request() {
        return new RequestSpecBuilder()
                .setBaseUri("http://localhost")
                .setPort(port)
                .setUrlEncodingEnabled(false)
                .setConfig(RestAssuredConfig.config()
                        .encoderConfig(EncoderConfig.encoderConfig()
                                .appendDefaultContentCharsetToContentTypeIfUndefined(false)))
                .build();
    }

    @Override
    public void close() {
        server.close();
    }
}

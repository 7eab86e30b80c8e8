package rinsebell.app.door;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.json.JavalinJackson;
import io.javalin.util.JavalinBindException;
import io.javalin.util.JavalinException;
import java.io.IOException;
import java.util.List;
import org.eclipse.jetty.server.AbstractConnector;
import org.eclipse.jetty.server.Connector;
import org.eclipse.jetty.server.HttpConfiguration;
import org.eclipse.jetty.server.HttpConnectionFactory;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.server.ServerConnector;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import rinsebell.app.thread.Threads;

/** The HTTP server: the door and the routes behind it. */
public final class WebServer implements AutoCloseable {

    private static final Logger LOG = LoggerFactory.getLogger(WebServer.class);

    /** How long requests in flight may take to finish when the server stops. */
    private static final long STOP_MILLIS = 3_000;

    /** How long a connection on which nothing happens is waited for then; the usual second is felt at every stop. */
    private static final long LINGER_MILLIS = 100;

    /** Leaves out what is not known, rather than saying null. */
    private static final ObjectMapper JSON = JsonMapper.builder()
            .defaultPropertyInclusion(
                    JsonInclude.Value.construct(JsonInclude.Include.NON_NULL, JsonInclude.Include.NON_NULL))
            .build();

    private final Javalin javalin;
    private final Guard guard;

    /** Prepares the server; nobody can reach it before {@link #listen}. */
    public WebServer(Door door, List<Routes> routes) {
        guard = door.guard();
        javalin = Javalin.create(config -> {
            quieten(config);
            config.jsonMapper(new JavalinJackson(JSON, false));
            config.concurrency.useVirtualThreads = Threads.virtualAvailable();
            config.jetty.modifyServer(WebServer::stopGently);
            door.addTo(config);
            routes.forEach(group -> group.addTo(config.routes));
        });
    }

    /**
     * Opens the port for HTTP, on which everything begins.
     *
     * @param address of this machine
     * @param port to listen on, 0 for any free one
     * @return the port
     * @throws IOException when the port is taken or may not be used
     */
    public int listen(String address, int port) throws IOException {
        try {
            return javalin.start(address, port).port();
        } catch (JavalinBindException e) {
            throw new IOException(e.getMessage(), e);
        }
    }

    /**
     * Opens another port, for HTTPS and HTTP/2.
     *
     * @param address of this machine
     * @param port to listen on, 0 for any free one
     * @return the port
     * @throws IOException when the port is taken or may not be used
     */
    public int listenSecurely(String address, int port, Shown shown) throws IOException {
        Server server = javalin.jettyServer().server();
        ServerConnector connector = Secured.connector(server, configuration(server), shown);
        connector.setHost(address);
        connector.setPort(port);
        guard.watch(connector);
        connector.open();
        server.addConnector(connector);
        server.manage(connector);
        try {
            connector.start();
        } catch (Exception e) {
            throw new IOException(e.getMessage(), e);
        }
        return connector.getLocalPort();
    }

    /** The same for every port. */
    private static HttpConfiguration configuration(Server server) {
        return server.getConnectors()[0]
                .getConnectionFactory(HttpConnectionFactory.class)
                .getHttpConfiguration();
    }

    /** Closes every port and lets requests in flight finish; one that takes too long is cut off. */
    @Override
    public void close() {
        for (Connector connector : javalin.jettyServer().server().getConnectors()) {
            ((AbstractConnector) connector).setShutdownIdleTimeout(LINGER_MILLIS);
        }
        try {
            javalin.stop();
        } catch (JavalinException e) {
            LOG.warn("not every request could finish within {} ms: {}", STOP_MILLIS, e.toString());
        }
    }

    private static void quieten(JavalinConfig config) {
        config.startup.showJavalinBanner = false;
        config.startup.showOldJavalinVersionWarning = false;
        config.startup.startupWatcherEnabled = false;
    }

    private static void stopGently(Server server) {
        server.setStopTimeout(STOP_MILLIS);
        server.setStopAtShutdown(false);
    }
}

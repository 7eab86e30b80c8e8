package rinsebell.app;

import io.restassured.builder.RequestSpecBuilder;
import io.restassured.config.EncoderConfig;
import io.restassured.config.RestAssuredConfig;
import io.restassured.specification.RequestSpecification;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** The whole server in this process, on a free port, with its data in a folder; it can be stopped and started again. */
public final class RunningSalon implements AutoCloseable {

    private final Path folder;
    private final List<String> more;
    private @Nullable RunningServer server;

    @Command
    private static final class Chosen {
        @Mixin
        private final Settings settings = new Settings();
    }

    /** @param more what else is chosen at the command line */
    public RunningSalon(Path folder, String... more) {
        this.folder = folder;
        this.more = List.of(more);
        start();
    }

    public void start() {
        List<String> arguments = new ArrayList<>(List.of("--port", "0", "--data", folder.toString()));
        arguments.addAll(more);
        try {
            server = RunningServer.start(settings(arguments.toArray(String[]::new)), 1);
        } catch (CannotStart e) {
            throw new AssertionError(e.getMessage(), e);
        }
    }

    /** What is chosen with these at the command line. */
    static Settings settings(String... arguments) {
        Chosen chosen = new Chosen();
        new CommandLine(chosen).parseArgs(arguments);
        return chosen.settings;
    }

    public void stop() {
        running().close();
        server = null;
    }

    private RunningServer running() {
        return Objects.requireNonNull(server, "the server is stopped");
    }

    public String url() {
        return running().url();
    }

    /** Over HTTPS, where it was told to serve that. */
    public String secureUrl() {
        return running().wayIn().orElseThrow().secure().get(0);
    }

    /** A request to this server, for RestAssured. */
    public RequestSpecification request() {
        return new RequestSpecBuilder()
                .setBaseUri(url())
                .setContentType("application/json")
                .setUrlEncodingEnabled(false)
                .setConfig(RestAssuredConfig.config()
                        .encoderConfig(EncoderConfig.encoderConfig()
                                .defaultContentCharset(StandardCharsets.UTF_8)
                                .appendDefaultContentCharsetToContentTypeIfUndefined(false)))
                .build();
    }

    @Override
    public void close() {
        if (server != null) {
            stop();
        }
    }
}

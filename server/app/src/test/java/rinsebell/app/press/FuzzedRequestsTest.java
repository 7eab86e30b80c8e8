package rinsebell.app.press;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import io.swagger.v3.oas.models.OpenAPI;
import io.swagger.v3.oas.models.Operation;
import io.swagger.v3.oas.models.PathItem;
import io.swagger.v3.oas.models.media.Schema;
import io.swagger.v3.parser.OpenAPIV3Parser;
import io.swagger.v3.parser.core.models.ParseOptions;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rinsebell.app.RunningSalon;
import rinsebell.app.door.Key;
import rinsebell.db.DataFolder;
import rinsebell.db.Keyring;

/**
 * Requests out of the API's description, right, nearly right and wrong, from a seed: none brings the server to its knees.
 * {@code -Drinsebell.fuzz=50000} for more of them, {@code -Drinsebell.seed=} for others.
 */
class FuzzedRequestsTest {
    private static final int MANY = Integer.getInteger("rinsebell.fuzz", 2_000);
    private static final long SEED = Long.getLong("rinsebell.seed", 20261201);

    /** Common practice, no source: what a collection leaves differs by so much from one to the next. */
    private static final long MOST_GROWTH = 4L << 20;

    /** So many ids of presses are kept to be sent again. */
    private static final int KEPT = 1_000;

    /** For numbers in addresses: none, one that nothing has, the largest that there is, and larger ones. */
    private static final List<String> NOTHINGS =
            List.of("0", "4000000000", "9223372036854775807", "9223372036854775808", "99999999999999999999");

    private static final String NAME = "salon.test";

    private final Random random = new Random(SEED);
    private final Imagined imagined = new Imagined(random, Hostile.all());
    private final HttpClient client =
            HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();
    private final Map<Integer, Integer> answered = new TreeMap<>();
    private final List<Asking> askings = askings();
    private final List<String> pressed = new ArrayList<>();
    private String key = "";
    private PressExamples examples = new PressExamples(Map.of());

    /** @param body of a press; null for none */
    private record Asking(
            String method,
            String path,
            Operation operation,
            @Nullable Schema<?> body) {}

    private static List<Asking> askings() {
        ParseOptions options = new ParseOptions();
        options.setResolveFully(true);
        OpenAPI api = new OpenAPIV3Parser().read("rinsebell/app/openapi.yaml", null, options);
        List<Asking> all = new ArrayList<>();
        api.getPaths()
                .forEach((path, item) -> item.readOperationsMap()
                        .forEach((method, operation) ->
                                all.add(new Asking(method.name(), path, operation, body(operation)))));
        assertThat(all).extracting(Asking::method).contains(PathItem.HttpMethod.GET.name(), "POST");
        return all;
    }

    private static @Nullable Schema<?> body(Operation operation) {
        var body = operation.getRequestBody();
        var json = body == null ? null : body.getContent().get("application/json");
        return json == null ? null : json.getSchema();
    }

    @Test
    void noRequestIsTooMuch(@TempDir Path folder) throws Exception {
        key = letADeviceIn(folder);
        try (var salon = new RunningSalon(folder, "--name", NAME)) {
            examples = new PressExamples(new ExampleFloor(new Sender(salon)).ids());
            for (int i = 0; i < MANY * 4 / 5; i++) {
                ask(salon, random.nextInt(4) * 60);
            }
            // From here on nothing is recorded any more, so nothing more has to be remembered.
            long before = held();
            long midway = heldAfter(salon, MANY / 10);
            long after = heldAfter(salon, MANY / 10);
            System.out.printf(
                    "%d requests (seed %d): answers %s; heap %d kB before the last fifth, %d kB midway, %d kB after it%n",
                    MANY, SEED, answered, before >> 10, midway >> 10, after >> 10);
            // What a plan for the basins takes while it is made comes and goes.
            assertThat(Math.min(midway, after) - before).isLessThan(MOST_GROWTH);
            var log = get(salon, "/api/log").body();
            var setUp = get(salon, "/api/salon").body();
            salon.stop();
            salon.start();
            assertThat(get(salon, "/api/log").body()).isEqualTo(log);
            assertThat(get(salon, "/api/salon").body()).isEqualTo(setUp);
        }
        assertThat(answered).containsKeys(200, 201, 404, 422);
        assertThat(answered.keySet()).allMatch(status -> status < 500);
    }

    private static String letADeviceIn(Path folder) throws Exception {
        Key fresh = Key.fresh();
        try (var data = DataFolder.open(folder)) {
            Keyring keyring = Keyring.open(data);
            keyring.letIn(new Keyring.Fresh("Tablet", "chair-1", fresh.hash(), true), Instant.EPOCH);
            keyring.allowPlain(true);
        }
        return fresh.text();
    }

    private long heldAfter(RunningSalon salon, int requests) throws IOException, InterruptedException {
        for (int i = 0; i < requests; i++) {
            ask(salon, 1_000);
        }
        return held();
    }

    private static long held() {
        System.gc();
        return ManagementFactory.getMemoryMXBean().getHeapMemoryUsage().getUsed();
    }

    private HttpResponse<String> get(RunningSalon salon, String path) throws IOException, InterruptedException {
        return client.send(
                HttpRequest.newBuilder(URI.create(salon.url() + path)).build(), BodyHandlers.ofString());
    }

    /** @param wrong how often, of a thousand, something in it is not as it should be */
    private void ask(RunningSalon salon, int wrong) throws IOException, InterruptedException {
        Asking asking = askings.get(random.nextInt(askings.size()));
        boolean isRight = asking.method().equals("POST")
                && !asking.path().endsWith("/find")
                && random.nextInt(1_000) >= 600 + wrong;
        String press = asking.path().replaceFirst("^/api", "");
        var address = URI.create(salon.url() + (isRight ? "/api" + examples.address(press) : filled(asking, wrong)));
        var request = HttpRequest.newBuilder(address).timeout(java.time.Duration.ofSeconds(20));
        boolean isDevices = random.nextBoolean();
        if (isDevices) {
            request.header("Host", NAME + ":" + address.getPort()).header("Cookie", "device=" + key);
        }
        String method = random.nextInt(1_000) < wrong / 20 ? "PUT" : asking.method();
        String body = isRight
                ? Sender.text(examples.body(press))
                : asking.body() == null ? "" : written(imagined.value(asking.body(), wrong), wrong);
        request.header("Idempotency-Key", pressId(wrong));
        request.header("Content-Type", random.nextInt(1_000) < wrong / 20 ? "text/plain" : "application/json");
        var answer = client.send(
                request.method(method, BodyPublishers.ofString(body)).build(), BodyHandlers.ofString());
        answered.merge(answer.statusCode(), 1, Integer::sum);
        assertThat(answer.statusCode())
                .as("%s %s %s: %s", method, address.getPath(), body, answer.body())
                .isLessThan(500);
    }

    /** Fresh ones, ones that came before, and none at all that could be one. */
    private String pressId(int wrong) {
        int turn = random.nextInt(20);
        if (turn == 0 && !pressed.isEmpty()) {
            return pressed.get(random.nextInt(pressed.size()));
        }
        String fresh = new UUID(random.nextLong(), random.nextLong()).toString();
        if (pressed.size() < KEPT) {
            pressed.add(fresh);
        } else {
            pressed.set(random.nextInt(KEPT), fresh);
        }
        return random.nextInt(1_000) < wrong / 20 ? "short" : fresh;
    }

    /** What can't be JSON, now and then. */
    private String written(JsonNode body, int wrong) {
        String text = Sender.text(body);
        return random.nextInt(1_000) < wrong / 10 ? text.substring(0, random.nextInt(text.length() + 1)) : text;
    }

    private String filled(Asking asking, int wrong) {
        String path = asking.path();
        while (path.contains("{")) {
            boolean isWrong = random.nextInt(1_000) < wrong;
            String number =
                    isWrong ? NOTHINGS.get(random.nextInt(NOTHINGS.size())) : String.valueOf(1 + random.nextInt(30));
            path = path.replaceFirst("\\{[^}]*}", number);
        }
        var parameters = asking.operation().getParameters();
        StringBuilder query = new StringBuilder();
        if (parameters != null) {
            parameters.stream()
                    .filter(one -> "query".equals(one.getIn()) && random.nextBoolean())
                    .forEach(one -> {
                        JsonNode value = imagined.value(one.getSchema(), wrong);
                        query.append(query.isEmpty() ? '?' : '&')
                                .append(one.getName())
                                .append('=');
                        query.append(
                                java.net.URLEncoder.encode(value.asText(), java.nio.charset.StandardCharsets.UTF_8));
                    });
        }
        return path + (query.length() > 4_000 ? "" : query);
    }
}

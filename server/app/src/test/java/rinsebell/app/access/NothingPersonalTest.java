package rinsebell.app.access;

import static org.assertj.core.api.Assertions.assertThat;

import ch.qos.logback.classic.Level;
import ch.qos.logback.classic.Logger;
import ch.qos.logback.classic.spi.ILoggingEvent;
import ch.qos.logback.classic.spi.ThrowableProxyUtil;
import ch.qos.logback.core.read.ListAppender;
import io.restassured.response.Response;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.slf4j.LoggerFactory;
import rinsebell.floor.salon.Role;

/** Nothing about a person, and nothing that opens anything, stands in the log, in an address or on an error page. */
class NothingPersonalTest {
    private static final String LABEL = "Quillfeather";
    private static final String NOTE = "weeps when it stings";
    private static final String WRONG_PIN = "864209";
    private static final Pattern ADDRESS = Pattern.compile("(?:href|src|action)=\"([^\"]*)\"");
    private static final Pattern LOOK = Pattern.compile("/look/([A-Za-z0-9_-]{24})\"");

    private final ListAppender<ILoggingEvent> log = new ListAppender<>();
    private final Logger root = (Logger) LoggerFactory.getLogger(Logger.ROOT_LOGGER_NAME);
    private final Logger ours = (Logger) LoggerFactory.getLogger("rinsebell");
    private final Logger wires = (Logger) LoggerFactory.getLogger("org.eclipse.jetty");
    private final List<String> secrets = new ArrayList<>(List.of(LABEL, NOTE, WRONG_PIN));

    @BeforeEach
    void hear() {
        log.start();
        root.addAppender(log);
        root.setLevel(Level.DEBUG);
        ours.setLevel(Level.TRACE);
        // That one writes down what goes over the wire, which is what it is asked for at this level.
        wires.setLevel(Level.INFO);
    }

    @AfterEach
    void hearNoMore() {
        root.detachAppender(log);
        root.setLevel(Level.WARN);
        ours.setLevel(Level.INFO);
        wires.setLevel(null);
    }

    @Test
    void notInTheLogNotInAddressesNotOnErrorPages(@TempDir Path folder) throws Exception {
        try (var house = new SalonWithStaff(folder)) {
            SalonWithStaff.PINS.values().forEach(secrets::add);
            long visit = house.program(
                    "/api/visits",
                    Map.of("label", LABEL, "place", "chair-1", "stylist", house.staff.get(Role.STYLIST)));
            var code = house.invitation("phone", "pocket");
            secrets.add(code);
            var tablet = Tablet.overHttps(house.salon);
            tablet.post("/join", Map.of("code", code));
            tablet.post("/join", Map.of("code", code));
            house.unlock(tablet, Role.MANAGER);
            tablet.cookies().values().stream()
                    .filter(value -> value.length() > 20)
                    .forEach(secrets::add);
            var look =
                    LOOK.matcher(tablet.post("/look-ins", Map.of("name", LABEL)).asString());
            assertThat(look.find()).isTrue();
            secrets.add(look.group(1));
            live(house, tablet, visit, look.group(1));
            assertNoAddressTells(tablet, visit);
            assertNoErrorPageTells(tablet, visit);
        }
        assertThat(log.list).hasSizeGreaterThan(50);
        assertThat(log.list)
                .map(NothingPersonalTest::written)
                .noneMatch(line -> secrets.stream().anyMatch(line::contains));
    }

    private static String written(ILoggingEvent event) {
        var thrown = event.getThrowableProxy();
        return event.getFormattedMessage() + (thrown == null ? "" : ThrowableProxyUtil.asString(thrown));
    }

    private void live(SalonWithStaff house, Tablet tablet, long visit, String key) {
        var one = String.valueOf(house.staff.get(Role.DESK));
        var strange = Tablet.overHttps(house.salon);
        List<Response> answers = List.of(
                tablet.post("/visits/" + visit + "/discomfort", Map.of("grade", "burning", "note", NOTE)),
                tablet.post("/clients", Map.of("label", LABEL)),
                tablet.post("/clients/1/note", Map.of("kind", "reaction", "note", NOTE)),
                tablet.post("/visits/" + visit + "/label", Map.of("label", LABEL + " ", "who", one)),
                tablet.post("/unlock", Map.of("person", one, "pin", WRONG_PIN)),
                strange.get("/look/" + key),
                strange.get("/look/" + key + "/chairs.ics"),
                strange.post("/join/look", Map.of("code", WRONG_PIN)),
                strange.get("/" + LABEL + "?label=" + LABEL),
                tablet.get("/api/visits/" + visit),
                tablet.get("/lead"),
                tablet.get("/api/lead.csv"),
                tablet.get("/use"));
        assertThat(answers).allMatch(answer -> answer.statusCode() < 500);
    }

    private void assertNoAddressTells(Tablet tablet, long visit) {
        var pages = List.of(
                "/",
                "/visits/" + visit,
                "/visits/" + visit + "/more",
                "/clients",
                "/clients/1",
                "/desk",
                "/bells",
                "/lead",
                "/use",
                "/log",
                "/look-ins",
                "/devices",
                "/pins",
                "/staff");
        for (var page : pages) {
            var answer = tablet.get(page);
            assertThat(ADDRESS.matcher(answer.asString()).results().map(found -> found.group(1)))
                    .as(page)
                    .noneMatch(address -> secrets.stream().anyMatch(address::contains));
            assertThat(answer.header("Location")).isNull();
        }
        assertThat(tablet.post("/clients", Map.of("label", LABEL)).header("Location"))
                .doesNotContain(LABEL);
    }

    private void assertNoErrorPageTells(Tablet tablet, long visit) {
        List<Response> errors = List.of(
                tablet.get("/" + LABEL),
                tablet.get("/visits/999?label=" + LABEL),
                tablet.get("/api/visits/999?label=" + LABEL),
                tablet.request().header("Origin", "https://evil.test").post("/visits/" + visit + "/label"),
                tablet.request().contentType("text/plain").body(LABEL).post("/visits/" + visit + "/label"),
                tablet.request()
                        .contentType("application/json")
                        .body("{\"" + LABEL)
                        .post("/api/visits"));
        assertThat(errors)
                .allMatch(answer -> answer.statusCode() >= 400)
                .map(Response::asString)
                .noneMatch(body -> secrets.stream().anyMatch(body::contains));
    }
}

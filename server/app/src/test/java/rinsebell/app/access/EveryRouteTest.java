package rinsebell.app.access;

import static org.assertj.core.api.Assertions.assertThat;

import io.javalin.security.RouteRole;
import java.net.http.HttpClient;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.SortedMap;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import rinsebell.app.RegisteredRoutes;
import rinsebell.app.door.Matter;
import rinsebell.floor.salon.Role;

/** Every route of the running server, asked by everybody: the table of rights is what happens. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class EveryRouteTest {

    /** Their own answer to whoever comes without being anybody is the way in. */
    private static final Set<String> CHANGES_WHO_ASKS = Set.of("POST /lock", "POST /join", "POST /unlock");

    private HttpClient client;
    private SalonWithStaff house;
    private SortedMap<String, Set<RouteRole>> routes;
    private final Map<String, Tablet> callers = new LinkedHashMap<>();

    @BeforeAll
    void open(@TempDir Path folder, @TempDir Path other) throws Exception {
        routes = RegisteredRoutes.withRoles(other);
        house = new SalonWithStaff(folder);
        client = HttpClient.newBuilder().sslContext(house.trust()).build();
        callers.put("stranger", Tablet.overHttps(house.salon));
        callers.put("nobody", house.tablet("tablet", "chair-1"));
        for (Role role : Role.values()) {
            var tablet = house.tablet(role.name(), "desk");
            house.unlock(tablet, role);
            callers.put(role.name(), tablet);
        }
        callers.put("a program that reads", house.program("light", "program-reads"));
        callers.put("a program that acts", house.program("till", "program-acts"));
        var lost = house.tablet("lost phone", "pocket");
        callers.put("thrown out", lost);
        assertThat(lost.get("/desk").statusCode()).isEqualTo(200);
        var number = callers.size() - 1;
        assertThat(house.own.post("/devices/" + number + "/throw-out", Map.of()).statusCode())
                .isEqualTo(303);
    }

    @AfterAll
    void close() {
        house.close();
    }

    @Test
    void everyRouteSaysWhatItIsAbout() {
        assertThat(routes)
                .hasSizeGreaterThan(150)
                .allSatisfy((route, roles) ->
                        assertThat(roles).as(route).singleElement().isInstanceOf(Matter.class));
    }

    @Test
    void everyRouteAnswersThoseWhoMayAndNobodyElse() throws Exception {
        var softly = new SoftAssertions();
        for (var route : routes.entrySet()) {
            var matter = (Matter) route.getValue().iterator().next();
            for (var caller : callers.entrySet()) {
                if (!CHANGES_WHO_ASKS.contains(route.getKey())) {
                    var answer = ask(caller.getValue(), route.getKey());
                    softly.assertThat(
                                    answer.headers().firstValue(Access.REFUSED).orElse("in"))
                            .as("%s asks for %s (%s)", caller.getKey(), route.getKey(), matter)
                            .isEqualTo(expected(matter, caller.getKey(), route.getKey()));
                    softly.assertThat(answer.statusCode())
                            .as("%s asks for %s", caller.getKey(), route.getKey())
                            .isLessThan(500);
                }
            }
        }
        softly.assertAll();
    }

    /** The table, said a second time. */
    private static String expected(Matter matter, String caller, String route) {
        if (matter == Matter.OPEN || matter == Matter.COMING_IN) {
            return "in";
        }
        if (caller.startsWith("a program")) {
            return programMay(matter, caller, route) ? "in" : "key-not-for-that";
        }
        if (caller.equals("stranger") || caller.equals("thrown out")) {
            return "stranger";
        }
        Set<String> all = Set.of("ASSISTANT", "STYLIST", "DESK", "MANAGER");
        Set<String> may = switch (matter) {
            case OPEN, COMING_IN, UNLOCKING, SIGNAL, FLOOR, FINDING ->
                Set.of("nobody", "ASSISTANT", "STYLIST", "DESK", "MANAGER");
            case HISTORY -> Set.of("STYLIST", "DESK", "MANAGER");
            case DIRECTIONS, CORRECTIONS -> Set.of("STYLIST", "MANAGER");
            case HOUSE, STAFF, DEVICES, REPORTS, ERASING, TRAIL -> Set.of("MANAGER");
            case OWN_PIN -> all;
        };
        return may.contains(caller) ? "in" : caller.equals("nobody") ? "locked" : "not-yours";
    }

    private static boolean programMay(Matter matter, String caller, String route) {
        return path(route).startsWith("/api/")
                && (matter == Matter.FLOOR || matter == Matter.SIGNAL)
                && (method(route).equals("GET") || caller.endsWith("acts"));
    }

    private HttpResponse<String> ask(Tablet tablet, String route) throws Exception {
        return tablet.swiftly(client, method(route), path(route), Map.of());
    }

    private static String method(String route) {
        return route.substring(0, route.indexOf(' '));
    }

    private static String path(String route) {
        return route.substring(route.indexOf(' ') + 1).replaceAll("[{<][a-z]+[}>]", "999");
    }

    @Test
    void anotherSitesPageIsTurnedAwayEverywhere() throws Exception {
        assertTurnedAway(Map.of("Origin", "https://evil.test"), 403);
    }

    /** A page of another site whose name points here (DNS rebinding). */
    @Test
    void anotherHouseIsTurnedAwayEverywhere() throws Exception {
        assertTurnedAway(Map.of("Host", "evil.test"), 421);
    }

    private void assertTurnedAway(Map<String, String> headers, int status) throws Exception {
        var manager = Objects.requireNonNull(callers.get("MANAGER"));
        var softly = new SoftAssertions();
        for (var route : routes.keySet()) {
            softly.assertThat(manager.swiftly(client, method(route), path(route), headers)
                            .statusCode())
                    .as(route)
                    .isEqualTo(status);
        }
        softly.assertAll();
    }
}

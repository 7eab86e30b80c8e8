package rinsebell.app.access;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rinsebell.floor.salon.Role;

/** Devices that come in, and people who say who they are: over real HTTPS, by a name of the network. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ComingInTest {

    private SalonWithStaff house;
    private Path data = Path.of("");

    @BeforeAll
    void open(@TempDir Path folder) throws Exception {
        house = new SalonWithStaff(folder);
        data = folder.resolve("data");
        house.program(
                "/api/visits", Map.of("label", "Ines", "place", "chair-1", "stylist", house.staff.get(Role.STYLIST)));
    }

    @AfterAll
    void close() {
        house.close();
    }

    private Tablet stranger() {
        return Tablet.overHttps(house.salon);
    }

    @ParameterizedTest
    @ValueSource(strings = {"/", "/desk", "/visits/1", "/clients", "/setup", "/devices", "/feed", "/kept"})
    void aStrangerGetsOnePageThatSaysNothing(String page) {
        var answer = stranger().get(page);
        assertThat(answer.statusCode()).isEqualTo(403);
        assertThat(answer.asString())
                .isEqualTo(stranger().get("/basins").asString())
                .contains("Not in yet")
                .doesNotContain("Pepperbox", "Ines", "stylist", "Chair", "chair-");
        assertThat(answer.cookies()).isEmpty();
        assertThat(answer.header("Cache-Control")).isEqualTo("no-store");
    }

    @Test
    void aStrangersProgramIsToldInItsOwnForm() {
        var answer = stranger().get("/api/floor");
        assertThat(answer.statusCode()).isEqualTo(403);
        assertThat(answer.contentType()).startsWith("application/problem+json");
        assertThat(answer.<String>path("code")).isEqualTo("stranger");
    }

    /** Attributes: RFC 6265bis, section 4.1.2 and 4.1.3.2; OWASP ASVS 5.0, 3.3. */
    @Test
    void anInvitationLetsOneDeviceInOnce() {
        var code = house.invitation("tablet at chair 2", "chair-2");
        var tablet = stranger();
        assertThat(tablet.post("/join/look", Map.of("code", code)).asString()).contains("tablet at chair 2");
        assertThat(tablet.post("/join/look", Map.of("code", code)).asString())
                .as("looking uses nothing up")
                .contains("tablet at chair 2");
        var in = tablet.post("/join", Map.of("code", code));
        assertThat(in.statusCode()).isEqualTo(303);
        assertThat(in.header("Location")).endsWith("/chairs/2");
        assertThat(in.header("Set-Cookie"))
                .matches(
                        "__Host-device=[A-Za-z0-9_-]{24}; Path=/; Max-Age=31536000; HttpOnly; SameSite=Strict; Secure");
        assertThat(tablet.get("/desk").statusCode()).isEqualTo(200);
        var second = stranger();
        assertThat(second.post("/join", Map.of("code", code)).statusCode()).isEqualTo(422);
        assertThat(second.get("/desk").statusCode()).isEqualTo(403);
    }

    /** A number that a stranger brings along is never the one that lets in. */
    @Test
    void whatADeviceShowsIsNeverWhatItBrought() {
        var tablet = stranger();
        var brought = "A".repeat(24);
        tablet.cookies().put("__Host-device", brought);
        tablet.post("/join", Map.of("code", house.invitation("phone", "pocket")));
        assertThat(tablet.cookies().get("__Host-device")).isNotEqualTo(brought);
        var fixed = stranger();
        fixed.cookies().put("__Host-device", brought);
        assertThat(fixed.get("/desk").statusCode()).isEqualTo(403);
    }

    @Test
    void noTokenAndNoPinStandsInTheDataFolder() throws Exception {
        var tablet = house.tablet("watched", "desk");
        house.unlock(tablet, Role.DESK);
        var secrets = List.of(
                String.valueOf(tablet.cookies().get("__Host-device")),
                String.valueOf(tablet.cookies().get("__Host-unlocked")),
                SalonWithStaff.pin(Role.DESK));
        try (var files = Files.walk(data)) {
            for (var file : files.filter(Files::isRegularFile).toList()) {
                var bytes = new String(Files.readAllBytes(file), java.nio.charset.StandardCharsets.ISO_8859_1);
                assertThat(secrets).as(file.toString()).noneMatch(bytes::contains);
            }
        }
    }

    @Test
    void aPinOpensWhatIsPrivateAndANewKeyComesWithEachPin() {
        var tablet = house.tablet("private", "desk");
        assertThat(tablet.get("/clients").statusCode()).isEqualTo(403);
        tablet.cookies().put("__Host-unlocked", "B".repeat(24));
        house.unlock(tablet, Role.DESK);
        var first = tablet.cookies().get("__Host-unlocked");
        assertThat(first).isNotEqualTo("B".repeat(24));
        assertThat(tablet.get("/clients").statusCode()).isEqualTo(200);
        house.unlock(tablet, Role.STYLIST);
        assertThat(tablet.cookies().get("__Host-unlocked")).isNotEqualTo(first);
        var before = house.tablet("with the key of before", "desk");
        before.cookies().put("__Host-unlocked", first);
        assertThat(before.get("/clients").statusCode()).isEqualTo(403);
        assertThat(tablet.post("/lock", Map.of()).statusCode()).isEqualTo(303);
        assertThat(tablet.get("/clients").statusCode()).isEqualTo(403);
    }

    /** The key of one device opens nothing on another, even where somebody copied it. */
    @Test
    void aKeyIsGoodOnItsOwnDeviceAlone() {
        var one = house.tablet("one", "desk");
        house.unlock(one, Role.MANAGER);
        var other = house.tablet("other", "desk");
        other.cookies().put("__Host-unlocked", one.cookies().get("__Host-unlocked"));
        assertThat(one.get("/policy").statusCode()).isEqualTo(200);
        assertThat(other.get("/policy").statusCode()).isEqualTo(403);
    }

    @Test
    void whatWasTypedIsKeptWhileAPinIsAskedFor() {
        var tablet = house.tablet("form", "desk");
        var asked = tablet.post("/clients", Map.of("label", "Ines <3 \"Q\"", "press", "some-press-id"));
        assertThat(asked.statusCode()).isEqualTo(403);
        assertThat(asked.asString()).contains("name=\"carried.label\" value=\"Ines &lt;3 &#34;Q&#34;\"");
        var opened = tablet.post(
                "/unlock",
                Map.of(
                        "person",
                        String.valueOf(house.staff.get(Role.DESK)),
                        "pin",
                        SalonWithStaff.pin(Role.DESK),
                        "page",
                        "/clients",
                        "matter",
                        "HISTORY",
                        "carried.label",
                        "Ines <3 \"Q\""));
        assertThat(opened.statusCode()).isEqualTo(200);
        assertThat(opened.asString())
                .contains("action=\"/clients\"", "name=\"label\" value=\"Ines &lt;3 &#34;Q&#34;\"");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "//evil.test/",
                "https://evil.test/",
                "/\\evil.test",
                "javascript:alert(1)",
                "/a\nSet-Cookie: x=y"
            })
    void noPinLeadsToAnotherSite(String page) {
        var tablet = house.tablet("redirected", "desk");
        var answer = tablet.post(
                "/unlock",
                Map.of(
                        "person",
                        String.valueOf(house.staff.get(Role.DESK)),
                        "pin",
                        SalonWithStaff.pin(Role.DESK),
                        "page",
                        page));
        assertThat(answer.statusCode()).isEqualTo(303);
        assertThat(answer.header("Location")).matches("(https://[^/]+)?/");
    }

    @Test
    void guessesAreSlowedOnOneAndOnManyDevicesAndNobodyIsLockedOutWhereTheyAreKnown() {
        var hers = house.tablet("the assistant's", "basins");
        house.unlock(hers, Role.ASSISTANT);
        var stolen = house.tablet("stolen", "wall");
        for (int i = 0; i < Guesses.FREE; i++) {
            assertThat(guess(stolen, Role.ASSISTANT, "111222")).isEqualTo(403);
        }
        assertThat(guess(stolen, Role.ASSISTANT, SalonWithStaff.pin(Role.ASSISTANT)))
                .as("even the right one waits")
                .isEqualTo(429);
        assertThat(guess(house.tablet("another", "wall"), Role.ASSISTANT, "111222"))
                .as("from another device")
                .isEqualTo(429);
        assertThat(guess(stolen, Role.DESK, "111222")).as("at another person").isEqualTo(429);
        assertThat(guess(hers, Role.ASSISTANT, SalonWithStaff.pin(Role.ASSISTANT)))
                .as("where she is known")
                .isEqualTo(303);
    }

    private int guess(Tablet tablet, Role whose, String pin) {
        return tablet.post("/unlock", Map.of("person", String.valueOf(house.staff.get(whose)), "pin", pin))
                .statusCode();
    }

    @Test
    void nobodyGivesThePinOfSomebodyWhoMayNot() {
        var tablet = house.tablet("roles", "desk");
        house.unlock(tablet, Role.ASSISTANT);
        var asked = tablet.get("/policy");
        assertThat(asked.statusCode()).isEqualTo(403);
        assertThat(asked.asString()).contains("assistant may not do that");
        assertThat(tablet.post(
                                "/unlock",
                                Map.of(
                                        "person",
                                        String.valueOf(house.staff.get(Role.ASSISTANT)),
                                        "pin",
                                        SalonWithStaff.pin(Role.ASSISTANT),
                                        "page",
                                        "/policy",
                                        "matter",
                                        "HOUSE"))
                        .statusCode())
                .isEqualTo(422);
    }

    /** Discomfort, answering a bell and beginning a rinse ask for nothing. */
    @Test
    void aPressAsksWhoOnceButNeverWhereSomebodyIsHurt() {
        var tablet = house.tablet("presses", "chair-1");
        var visit = house.program(
                "/api/visits", Map.of("label", "Jo", "place", "chair-3", "stylist", house.staff.get(Role.STYLIST)));
        assertThat(tablet.post("/visits/" + visit + "/discomfort", Map.of("grade", "burning"))
                        .statusCode())
                .isEqualTo(303);
        var asked = tablet.post("/visits/" + visit + "/move", Map.of("place", "chair-4"));
        assertThat(asked.statusCode()).isEqualTo(409);
        assertThat(asked.asString()).contains("Who presses?", "name=\"who\" value=\"" + stylist() + "\"");
        var said = tablet.post("/visits/" + visit + "/move", Map.of("place", "chair-4", "who", stylist()));
        assertThat(said.statusCode()).isEqualTo(303);
        assertThat(said.header("Set-Cookie")).startsWith("__Host-who=" + stylist() + "; Path=/; Max-Age=900; SameSite");
        assertThat(tablet.post("/visits/" + visit + "/move", Map.of("place", "chair-3"))
                        .statusCode())
                .isEqualTo(303);
        List<Integer> by = house.own.get("/api/log").path("findAll { it.kind == 'moved' }.by");
        assertThat(by).as(house.own.get("/api/log").asString()).endsWith(Integer.valueOf(stylist()));
    }

    private String stylist() {
        return String.valueOf(house.staff.get(Role.STYLIST));
    }

    /** What others could read along in the clear must open nothing where nobody reads along, nor the other way round. */
    @Test
    void whatIsShownInTheClearOpensNothingElse() {
        assertThat(house.own.post("/devices/plain", Map.of("plain", "yes")).statusCode())
                .isEqualTo(303);
        try {
            var plain = Tablet.onTheNetwork(house.salon);
            plain.post("/join", Map.of("code", house.invitation("old tablet", "wall")));
            assertThat(plain.get("/desk").statusCode()).isEqualTo(200);
            var thief = stranger();
            thief.cookies()
                    .put("__Host-device", Objects.requireNonNull(plain.cookies().get("device")));
            assertThat(thief.get("/desk").statusCode()).isEqualTo(403);
            var secure = house.tablet("new tablet", "wall");
            var careless = Tablet.onTheNetwork(house.salon);
            careless.cookies()
                    .put("device", Objects.requireNonNull(secure.cookies().get("__Host-device")));
            assertThat(careless.get("/desk").statusCode()).isEqualTo(403);
        } finally {
            house.own.post("/devices/plain", Map.of("plain", "no"));
        }
    }

    /** A program on the machine that passes on what others ask adds a header, or speaks an old HTTP, as a rule. */
    @Test
    void whatIsPassedOnIsNotTheServersOwnScreen() throws Exception {
        assertThat(atTheServer("HTTP/1.1", "")).startsWith("HTTP/1.1 200");
        assertThat(atTheServer("HTTP/1.0", "")).contains(" 403 ");
        assertThat(atTheServer("HTTP/1.1", "Via: 1.1 other\r\n")).contains(" 403 ");
        assertThat(atTheServer("HTTP/1.1", "X-Forwarded-For: 192.0.2.1\r\n")).contains(" 403 ");
    }

    private String atTheServer(String version, String header) throws Exception {
        var port = java.net.URI.create(house.salon.url()).getPort();
        try (var socket = new java.net.Socket("127.0.0.1", port)) {
            var asked = "GET /desk " + version + "\r\nHost: localhost:" + port + "\r\n" + header
                    + "Connection: close\r\n\r\n";
            socket.getOutputStream().write(asked.getBytes(java.nio.charset.StandardCharsets.US_ASCII));
            return new String(socket.getInputStream().readNBytes(15), java.nio.charset.StandardCharsets.US_ASCII);
        }
    }

    /** OWASP ASVS 5.0, 7.5.2: whoever gave a PIN sees where else it is good, and ends that. */
    @Test
    void whereverAPinIsStillGood() {
        var one = house.tablet("tablet one", "desk");
        var two = house.tablet("tablet two", "desk");
        house.unlock(one, Role.STYLIST);
        house.unlock(two, Role.STYLIST);
        assertThat(one.get("/me").asString())
                .contains("still good on", "tablet two")
                .doesNotContain("on: tablet one");
        assertThat(one.post("/lock", Map.of("everywhere", "yes")).statusCode()).isEqualTo(303);
        assertThat(one.get("/clients").statusCode()).isEqualTo(403);
        assertThat(two.get("/clients").statusCode()).isEqualTo(403);
        house.unlock(one, Role.STYLIST);
        assertThat(one.get("/me").asString()).doesNotContain("still good on");
    }

    @Test
    void aCodeThatIsSentInTheClearIsGoodNoMore() {
        var code = house.invitation("tablet in the clear", "desk");
        assertThat(Tablet.onTheNetwork(house.salon)
                        .post("/join/look", Map.of("code", code))
                        .asString())
                .doesNotContain("tablet in the clear");
        assertThat(stranger().post("/join", Map.of("code", code)).statusCode()).isEqualTo(422);
    }

    @Test
    void aSharedDeviceNamesSomebodyForAsLongAsTheHouseSays() {
        var tablet = house.tablet("shared", "chair-2");
        var pocket = house.tablet("carried", "pocket");
        var who = Map.of("person", String.valueOf(house.staff.get(Role.STYLIST)));
        assertThat(tablet.post("/me", who).header("Set-Cookie")).contains("Max-Age=900");
        house.program("/api/policy", Map.of("keeping", Map.of("nameMinutes", 4)));
        assertThat(tablet.post("/me", who).header("Set-Cookie")).contains("Max-Age=240");
        assertThat(tablet.get("/me").asString()).contains("after 4 minutes without a press");
        assertThat(pocket.post("/me", who).header("Set-Cookie")).contains("Max-Age=31536000");
        house.program("/api/policy", Map.of("keeping", Map.of("nameMinutes", 15)));
    }
}

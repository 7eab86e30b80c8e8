package rinsebell.app.access;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.net.ssl.SSLContext;
import rinsebell.app.RunningSalon;
import rinsebell.app.http.TestCertificate;
import rinsebell.floor.salon.Role;

/** A salon with one of each role, all with a PIN, and served over HTTPS. */
final class SalonWithStaff implements AutoCloseable {
    static final Map<Role, String> PINS =
            Map.of(Role.MANAGER, "402917", Role.STYLIST, "730586", Role.DESK, "918264", Role.ASSISTANT, "265073");

    private static final Pattern KEY = Pattern.compile("<p class=\"typed\">([A-Za-z0-9_-]{24})</p>");
    private static final Pattern CODE = Pattern.compile("<p class=\"typed\">([0-9A-Z-]{14})</p>");

    private final TestCertificate certificate;
    final RunningSalon salon;
    final Map<Role, Long> staff = new EnumMap<>(Role.class);
    final Tablet own;

    SalonWithStaff(Path folder) throws Exception {
        certificate = new TestCertificate(Files.createDirectories(folder.resolve("certificate")), "EC", "-1d", 30);
        salon = new RunningSalon(
                folder.resolve("data"),
                "--name",
                Tablet.NAME,
                "--secure-port",
                "0",
                "--certificate",
                certificate.certificate().toString(),
                "--key",
                certificate.key().toString());
        own = Tablet.atTheServer(salon);
        program("/api/salon", Map.of("name", "Pepperbox Yard", "chairs", 4, "basins", 2, "bench", 2, "zone", "UTC"));
        for (Role role : Role.values()) {
            long id = program(
                    "/api/staff",
                    Map.of(
                            "name",
                            role.name().toLowerCase(Locale.ROOT),
                            "role",
                            role.name().toLowerCase(Locale.ROOT)));
            staff.put(role, id);
        }
        // Whoever is first opens the rest.
        choosePin(own, Role.MANAGER, "");
        unlock(own, Role.MANAGER);
        for (Role role : Role.values()) {
            if (role != Role.MANAGER) {
                choosePin(own, role, pin(Role.MANAGER));
            }
        }
    }

    SSLContext trust() throws Exception {
        return certificate.trust();
    }

    static String pin(Role role) {
        return Objects.requireNonNull(PINS.get(role));
    }

    long program(String path, Map<String, ?> body) {
        var answer = own.program(path, body);
        assertThat(answer.statusCode()).as("%s: %s", path, answer.asString()).isEqualTo(201);
        Number first = answer.path("facts[0]");
        return first == null ? 0 : first.longValue();
    }

    void choosePin(Tablet tablet, Role whose, String current) {
        var pin = pin(whose);
        var answer = tablet.post("/pins/" + staff.get(whose), Map.of("current", current, "fresh", pin, "again", pin));
        assertThat(answer.statusCode()).as(answer.asString()).isEqualTo(303);
    }

    void unlock(Tablet tablet, Role as) {
        var answer = tablet.post(
                "/unlock", Map.of("person", String.valueOf(staff.get(as)), "pin", pin(as), "page", "/rights"));
        assertThat(answer.statusCode()).as(answer.asString()).isEqualTo(303);
    }

    /** The code of an invitation, as it stands on the manager's screen. */
    String invitation(String name, String purpose) {
        var page =
                own.post("/devices", Map.of("name", name, "purpose", purpose)).asString();
        Matcher code = CODE.matcher(page);
        assertThat(code.find()).as(page).isTrue();
        return code.group(1);
    }

    /** A tablet on the network that has come in. */
    Tablet tablet(String name, String purpose) {
        var tablet = Tablet.overHttps(salon);
        var answer = tablet.post("/join", Map.of("code", invitation(name, purpose)));
        assertThat(answer.statusCode()).as(answer.asString()).isEqualTo(303);
        return tablet;
    }

    /** A program somewhere on the network, with the key that the manager's screen showed. */
    Tablet program(String name, String purpose) {
        var page = own.post("/devices/programs", Map.of("program", name, "scope", purpose))
                .asString();
        Matcher key = KEY.matcher(page);
        assertThat(key.find()).as(page).isTrue();
        return Tablet.overHttps(salon).showing(key.group(1));
    }

    @Override
    public void close() {
        salon.close();
    }
}

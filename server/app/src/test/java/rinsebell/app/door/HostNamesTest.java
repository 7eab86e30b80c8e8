package rinsebell.app.door;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HostNamesTest {

    /** The usual ports: RFC 9110, sections 4.2.1 and 4.2.2. */
    @ParameterizedTest
    @CsvSource({"443, 443, true", "80, 443, false", "443, 80, false", "80, 80, true"})
    void thePortIsLeftOutWhereItIsTheUsualOne(int port, int usual, boolean allowed) {
        assertThat(names.allow("localhost", port, usual)).isEqualTo(allowed);
    }

    private final HostNames names = HostNames.loopbackAnd(Set.of("Salon.local", "10.0.0.7:8080", "[fd00::1]"));

    @ParameterizedTest
    @CsvSource({
        "localhost:8460, 8460, true",
        "LocalHost:8460, 8460, true",
        "127.0.0.1:8460, 8460, true",
        "[::1]:8460, 8460, true",
        "salon.local:8460, 8460, true",
        "10.0.0.7:8080, 8460, true",
        "[fd00::1]:8460, 8460, true",
        "localhost, 80, true",
        "[::1], 80, true",
        "localhost, 8460, false",
        "localhost:8461, 8460, false",
        "localhost:84600, 8460, false",
        "10.0.0.7:8460, 8460, false",
        "localhost.:8460, 8460, false",
        "localhost.example.org:8460, 8460, false",
        "example.org:8460, 8460, false",
        "example.org, 80, false",
        "127.0.0.2:8460, 8460, false",
        "0.0.0.0:8460, 8460, false",
        "'', 8460, false",
        ", 8460, false"
    })
    void onlyOurOwnNamesWithOurPort(@Nullable String host, int port, boolean allowed) {
        assertThat(names.allow(host, port, 80)).isEqualTo(allowed);
    }
}

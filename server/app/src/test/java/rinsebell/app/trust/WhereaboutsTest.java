package rinsebell.app.trust;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.InetAddress;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WhereaboutsTest {

    /** RFC 5952, sections 1, 2.2, 4.2.2 and 4.2.3. */
    @ParameterizedTest
    @CsvSource({
        "2001:0db8:0000:0000:0001:0000:0000:0001, [2001:db8::1:0:0:1]",
        "2001:db8:0:0:0:0:2:1, [2001:db8::2:1]",
        "2001:db8:0:1:1:1:1:1, [2001:db8:0:1:1:1:1:1]",
        "2001:0:0:1:0:0:0:1, [2001:0:0:1::1]",
        "0:0:0:0:0:0:0:1, [::1]",
        "fd00:10:0:0:0:0:0:0, [fd00:10::]",
        "192.168.0.10, 192.168.0.10"
    })
    void anAddressIsWrittenAsBrowsersWriteIt(String address, String written) throws Exception {
        assertThat(Whereabouts.inLink(InetAddress.getByName(address))).isEqualTo(written);
    }

    @Test
    void browsersMayCallItByWhatItIsReachedBy() throws Exception {
        Whereabouts here = new Whereabouts(Set.of("Colour.test:80"), InetAddress.getByName("fd00::7"));
        assertThat(here.callable()).containsExactlyInAnyOrder("colour.test:80", "rinsebell.local", "[fd00::7]");
        assertThat(here.inLinks()).containsExactly("rinsebell.local", "colour.test:80", "[fd00::7]");
        assertThat(here.given()).isEqualTo(Reaches.of("localhost", "rinsebell.local", "colour.test"));
        assertThat(here.now()).isEqualTo(Reaches.of("localhost", "rinsebell.local", "colour.test", "fd00::7"));
    }

    @Test
    void aNameThatAPersonGaveForTheNetworkTakesThePlaceOfTheUsualOne() throws Exception {
        InetAddress address = InetAddress.getByName("10.0.0.7");
        assertThat(new Whereabouts(Set.of("10.0.0.8", "bar.local:8461"), address).ownName())
                .contains("bar.local");
        assertThat(new Whereabouts(Set.of("a.b.local"), address).ownName()).contains("rinsebell.local");
        assertThat(new Whereabouts(Set.of(), InetAddress.getLoopbackAddress()).ownName())
                .isEmpty();
    }

    /** Whatever this machine has, none of it is its alone. */
    @Test
    void onEveryAddressNoneIsLoopback() throws Exception {
        Whereabouts everywhere = new Whereabouts(Set.of(), InetAddress.getByName("0.0.0.0"));
        assertThat(everywhere.addresses())
                .noneMatch(InetAddress::isLoopbackAddress)
                .noneMatch(InetAddress::isAnyLocalAddress);
    }
}

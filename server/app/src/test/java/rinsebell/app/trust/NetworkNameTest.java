package rinsebell.app.trust;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.InetAddress;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rinsebell.app.time.TimeByHand;

/** When the name is told, and to which networks; how it is told is the library's. */
class NetworkNameTest {

    private final List<String> told = new ArrayList<>();

    private final NetworkName name = new NetworkName("rinsebell.local", (address, bare) -> {
        told.add(bare + " on " + address.getHostAddress());
        return new NetworkName.Announced() {
            @Override
            public String name() {
                return bare + ".local.";
            }

            @Override
            public void close() {
                told.add("no more on " + address.getHostAddress());
            }
        };
    });

    private static List<InetAddress> addresses(String... addresses) throws IOException {
        List<InetAddress> all = new ArrayList<>();
        for (String address : addresses) {
            all.add(InetAddress.getByName(address));
        }
        return all;
    }

    @Test
    void itIsToldOnceToEachNetworkAndTakenBack() throws Exception {
        name.announceOn(addresses("192.168.1.7", "10.0.0.7", "fd00::7"));
        name.announceOn(addresses("192.168.1.7", "10.0.0.7", "fd00::8"));
        assertThat(told).containsExactly("rinsebell on 192.168.1.7", "rinsebell on 10.0.0.7");
        told.clear();
        name.announceOn(addresses("192.168.1.99"));
        assertThat(told).containsExactly("no more on 192.168.1.7", "no more on 10.0.0.7", "rinsebell on 192.168.1.99");
        told.clear();
        name.close();
        assertThat(told).containsExactly("no more on 192.168.1.99");
    }

    @Test
    void aNetworkThatLetsItHaveNoneIsAskedAgain() throws Exception {
        List<String> asked = new ArrayList<>();
        NetworkName refused = new NetworkName("rinsebell.local", (address, bare) -> {
            asked.add(address.getHostAddress());
            throw new IOException("no multicast here");
        });
        refused.announceOn(addresses("192.168.1.7"));
        refused.announceOn(addresses("192.168.1.7"));
        assertThat(asked).containsExactly("192.168.1.7", "192.168.1.7");
    }

    @Test
    void aServerThatNoOtherMachineReachesTellsNobody(@TempDir Path folder) throws Exception {
        assertThat(toldBy(folder, "127.0.0.1")).isEmpty();
        assertThat(toldBy(folder, "192.168.1.7")).containsExactly("rinsebell on 192.168.1.7");
    }

    private List<String> toldBy(Path folder, String bound) throws Exception {
        Whereabouts here = new Whereabouts(Set.of(), InetAddress.getByName(bound));
        TimeByHand time = new TimeByHand(Instant.parse("2026-11-28T10:00:00Z"));
        SecureDoor door = new SecureDoor(Vouched.in(folder.resolve(bound), here, time.wall()), here, name, time);
        door.round();
        List<String> then = List.copyOf(told);
        door.close();
        return then;
    }
}

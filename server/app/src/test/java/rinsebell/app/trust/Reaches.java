package rinsebell.app.trust;

import java.net.InetAddress;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Names and addresses for tests. */
final class Reaches {

    private Reaches() {}

    static Reach of(String... named) {
        Set<InetAddress> addresses = Stream.of(named)
                .map(Numbers::read)
                .flatMap(java.util.Optional::stream)
                .collect(Collectors.toSet());
        return new Reach(
                Stream.of(named)
                        .filter(name -> Numbers.read(name).isEmpty())
                        .collect(Collectors.toCollection(TreeSet::new)),
                addresses);
    }
}

package rinsebell.demo.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import rinsebell.demo.browser.BellBoard.Listed;

/** When each bell must begin to ring on a screen, on a count that nobody sets, by the plan of a page that was read once. */
final class ExpectedRings {
    /** The goal: no bell is later. */
    private static final double LATEST_MILLIS = 1_000;

    private static final double UNSURE_MILLIS = 50;

    /** With fewer nothing is proved. */
    static final int FEWEST = 5;

    private final Map<String, Double> due = new TreeMap<>();
    private final SalonTime time;
    private double stoodFrom;
    private double stoodUntil;

    private ExpectedRings(SalonTime time) {
        this.time = time;
    }

    /** By a server whose clock nobody has set yet. */
    static ExpectedRings by(Asking asking) {
        var expected = new ExpectedRings(SalonTime.of(asking));
        BellTimes.on(asking.page("/bells")).forEach((bell, at) -> expected.due.put(bell, at - expected.time.ahead()));
        return expected;
    }

    SalonTime time() {
        return time;
    }

    /** Nothing could ring then; what fell due in between must ring soon after. */
    void nobodyRangBetween(double from, double until) {
        stoodFrom = from;
        stoodUntil = until;
    }

    /** Checks that each bell came in time, and from then on stood in each list once. */
    void assertCame(List<Listed> lists) {
        var late = new ArrayList<Double>();
        var rang = new HashSet<>(lists.get(0).ringing());
        for (var list : lists) {
            assertThat(list.ringing()).as("none is doubled").doesNotHaveDuplicates();
            assertThat(list.ringing()).as("none is dropped").containsAll(rang);
            list.ringing().stream()
                    .filter(rang::add)
                    .forEach(bell -> late.add(list.millis() - mustRing(bell, list.millis())));
        }
        System.out.printf("%d bells began to ring, the latest after %.0f ms%n", late.size(), max(late));
        assertThat(late)
                .hasSizeGreaterThan(FEWEST)
                .allSatisfy(one -> assertThat(one).isBetween(-UNSURE_MILLIS - time.unsure(), LATEST_MILLIS));
        var last = lists.get(lists.size() - 1).millis();
        due.forEach((bell, at) -> assertThat(rang.contains(bell) || mustRing(bell, last) > last - LATEST_MILLIS)
                .as("%s rings", bell)
                .isTrue());
    }

    /**
     * Never, for one that no plan has. One that was not late yet when the machine stood still, and had not come, was on its
     * way: it comes when the machine goes on.
     */
    private double mustRing(String bell, double came) {
        var at = due.getOrDefault(bell, Double.NaN);
        return at > stoodFrom - LATEST_MILLIS && at < stoodUntil && came > stoodFrom ? stoodUntil : at;
    }

    private static double max(List<Double> all) {
        return all.stream().mapToDouble(one -> one).max().orElse(0);
    }
}

package rinsebell.floor.report;

import static org.assertj.core.api.Assertions.assertThat;
import static rinsebell.floor.testing.Saturday.at;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rinsebell.floor.Fact;
import rinsebell.floor.Floor;
import rinsebell.floor.salon.StaffId;
import rinsebell.floor.testing.Saturday;

/**
 * On an ordinary Saturday at most two bells ring for one person in ten minutes on average, which ISA-18.2-2016 thinks the
 * most that is manageable, and there is no flood: more than ten in ten minutes.
 */
class OrdinarySaturdayTest {
    private static final double MOST_IN_TEN_MINUTES = 2;

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void isQuiet(long seed) {
        var facts = OrdinarySaturday.lived(seed);
        var report = report(facts);
        assertThat(facts.stream().filter(fact -> fact.event() instanceof rinsebell.floor.visit.StayEvent.Left))
                .as("clients who were served")
                .hasSizeGreaterThan(18);
        for (var person : report.people()) {
            var figures = report.of(person);
            System.out.println(told(seed, person, report));
            assertThat(figures.perTenMinutes()).as("%s", person).isLessThanOrEqualTo(MOST_IN_TEN_MINUTES);
            assertThat(figures.floods()).as("%s", person).isEmpty();
            assertThat(figures.chattering()).as("%s", person).isZero();
        }
    }

    private static DayReport report(List<Fact> facts) {
        var log = RingLog.of(facts, at("04:00"), at("23:00"));
        return DayReport.of(Saturday.DATE, log, Floor.of(facts), List.of());
    }

    private static String told(long seed, StaffId person, DayReport report) {
        var figures = report.of(person);
        var kinds = report.ringsOf(person).stream()
                .collect(Collectors.groupingBy(
                        ring -> ring.bell().kind() + " " + ring.priority(),
                        java.util.TreeMap::new,
                        Collectors.counting()));
        return "seed %d, %s: %d bells, %.2f in ten minutes, at most %d, half answered in %s; %s"
                .formatted(
                        seed,
                        person,
                        figures.bells(),
                        figures.perTenMinutes(),
                        figures.mostInTenMinutes(),
                        figures.toAnswer(0.5).orElse(null),
                        kinds);
    }
}

package rinsebell.floor.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static rinsebell.floor.testing.Saturday.at;
import static rinsebell.floor.testing.Saturday.minutes;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rinsebell.floor.bell.BellKey;
import rinsebell.floor.bell.BellKind;
import rinsebell.floor.bell.Priority;
import rinsebell.floor.report.Annunciation.End;

/**
 * The figures of ISA-18.2-2016 / IEC 62682 (table 7 and the definitions with it), of examples that were computed by hand.
 * What a ten minutes is: half-open, so that none of it counts twice.
 */
class RingFiguresTest {
    private static final Instant TEN = at("10:00");

    private static Annunciation ring(long bell, Priority priority, String began, @Nullable String ended, End how) {
        var end = ended == null ? null : at(ended);
        var key = new BellKey(BellKind.TINGLING, bell, bell);
        return new Annunciation(key, priority, null, at(began), at(began), end, end == null ? null : how);
    }

    /** Of that many bells one every so many seconds, from an instant on. */
    private static Stream<Annunciation> every(long seconds, int bells, Instant from) {
        return IntStream.range(0, bells).mapToObj(one -> {
            var began = from.plusSeconds(seconds * one);
            return new Annunciation(
                    new BellKey(BellKind.TINGLING, one, one), Priority.LOW, null, began, began, null, null);
        });
    }

    private static RingFigures of(Stream<Annunciation> rings, String until) {
        return RingFigures.of(rings.toList(), TEN, at(until));
    }

    /**
     * An hour and a half of one stylist, by hand.
     *
     * <pre>
     * bell  rings    from      answered  after
     * 1     low      10:02     10:03     60 s
     * 2     medium   10:05     10:05:30  30 s
     * 3     high     10:05:20  10:05:40  20 s
     * 4     low      10:14:59  put off 10:16:59, 120 s
     * 2     medium   10:35:30  10:36:10  40 s (it rings again)
     * 5     low      10:50     never: withdrawn at 10:51
     * 6     low      11:29     still rings
     * </pre>
     *
     * 7 bells in 90 min are 7/9 = 0.778 in ten. Periods from 10:00: 3 1 0 1 0 1 0 0 1. Most in any ten: 10:05 to
     * 10:14:59 is 9 min 59 s, so bells 2, 3 and 4; 10:02 to 10:05:20 are three as well: 3. Low 4/7, medium 2/7, high 1/7.
     * Answered after 20 30 40 60 120 s: n = 5, the median is the third, 40 s; of 90 % the place is 16/3 x 0.9 + 1/3 =
     * 5.13, past the last, so 120 s; of 25 % it is 16/3 / 4 + 1/3 = 1 2/3, so 20 + 2/3 x 10 = 26.667 s.
     */
    @Test
    void anHourAndAHalfByHand() {
        var figures = of(
                Stream.of(
                        ring(1, Priority.LOW, "10:02", "10:03", End.DONE),
                        ring(2, Priority.MEDIUM, "10:05", "10:05:30", End.SEEN),
                        ring(3, Priority.HIGH, "10:05:20", "10:05:40", End.DONE),
                        ring(4, Priority.LOW, "10:14:59", "10:16:59", End.PUT_OFF),
                        ring(2, Priority.MEDIUM, "10:35:30", "10:36:10", End.DONE),
                        ring(5, Priority.LOW, "10:50", "10:51", End.RETURNED),
                        ring(6, Priority.LOW, "11:29", null, End.DONE)),
                "11:30");

        assertThat(figures.bells()).isEqualTo(7);
        assertThat(figures.perTenMinutes()).isCloseTo(0.778, within(5e-4));
        assertThat(figures.periods()).containsExactly(3, 1, 0, 1, 0, 1, 0, 0, 1);
        assertThat(figures.mostInTenMinutes()).isEqualTo(3);
        assertThat(figures.partOver()).isZero();
        assertThat(figures.floods()).isEmpty();
        assertThat(figures.partInFlood()).isZero();
        assertThat(figures.chattering()).isZero();
        assertThat(figures.part(Priority.LOW).orElseThrow()).isCloseTo(4 / 7.0, within(1e-9));
        assertThat(figures.part(Priority.MEDIUM).orElseThrow()).isCloseTo(2 / 7.0, within(1e-9));
        assertThat(figures.part(Priority.HIGH).orElseThrow()).isCloseTo(1 / 7.0, within(1e-9));
        assertThat(figures.toAnswer(0.5)).contains(Duration.ofSeconds(40));
        assertThat(figures.toAnswer(0.9)).contains(Duration.ofSeconds(120));
        assertThat(figures.toAnswer(0.25)).contains(Duration.ofMillis(26_667));
    }

    /** Ten in ten minutes are none; the eleventh is one, unless it comes when the first has been ten minutes. */
    @ParameterizedTest
    @CsvSource({"10, 10:09:59.999, 0, 10", "11, 10:09:59.999, 1, 11", "11, 10:10, 0, 10"})
    void moreThanTenInTenMinutesAreAFlood(int bells, String last, int floods, int most) {
        var rings = Stream.concat(every(30, bells - 1, TEN), Stream.of(ring(99, Priority.LOW, last, null, End.DONE)));
        var figures = of(rings, "12:00");
        assertThat(figures.floods()).hasSize(floods);
        assertThat(figures.mostInTenMinutes()).isEqualTo(most);
    }

    /**
     * Twelve bells half a minute apart from 10:00: the eleventh, at 10:05, begins the flood. The eighth, of 10:03:30, is
     * ten minutes old at 10:13:30, which leaves four: it ends then, after 8 min 30 s, of two hours 7.083 %. The first
     * period has twelve: one of twelve is over.
     */
    @Test
    void aFloodByHand() {
        var figures = of(every(30, 12, TEN), "12:00");
        assertThat(figures.floods()).containsExactly(new Flood(at("10:05"), at("10:13:30")));
        assertThat(figures.partInFlood()).isCloseTo(0.0708333, within(1e-6));
        assertThat(figures.partOver()).isCloseTo(1 / 12.0, within(1e-9));
    }

    /** While five began in the last ten minutes it goes on; four end it. */
    @Test
    void aFloodEndsBelowFive() {
        var rings =
                Stream.concat(every(30, 12, TEN), Stream.of(ring(99, Priority.LOW, "10:13:29.999", null, End.DONE)));
        assertThat(of(rings, "12:00").floods()).containsExactly(new Flood(at("10:05"), at("10:14")));
    }

    /** What lies beyond the end is no time of this stretch. */
    @Test
    void aFloodCountsUntilTheEnd() {
        assertThat(of(every(30, 12, TEN), "10:06").inFlood()).isEqualTo(minutes(1));
    }

    /** Eleven in a period of ten minutes are more than ten. */
    @ParameterizedTest
    @CsvSource({"9, 0", "10, 0", "11, 0.5", "12, 0.5"})
    void periodsOverTen(int bells, double part) {
        assertThat(of(every(1, bells, TEN), "10:20").partOver()).isEqualTo(part);
    }

    /** The same bell three times within a minute chatters; twice, or three times in a whole minute, does not. */
    @ParameterizedTest
    @CsvSource({
        "10:00:59.999, 1, 1",
        "10:01:00,     1, 0",
        "10:01:00.001, 1, 0",
        "10:00:59.999, 2, 0",
    })
    void chattering(String third, long bell, int chattering) {
        var rings = Stream.of(
                ring(1, Priority.LOW, "10:00", "10:00:10", End.RETURNED),
                ring(1, Priority.LOW, "10:00:20", "10:00:30", End.RETURNED),
                ring(bell, Priority.LOW, third, null, End.DONE));
        assertThat(of(rings, "10:30").chattering()).isEqualTo(chattering);
    }

    @Test
    void growingLouderIsNoChattering() {
        var rings = new ArrayList<>(List.of(ring(1, Priority.LOW, "10:00", "10:00:10", End.LOUDER)));
        for (var began : List.of("10:00:10", "10:00:20", "10:00:30")) {
            rings.add(
                    new Annunciation(rings.get(0).bell(), Priority.HIGH, null, TEN, at(began), at(began), End.LOUDER));
        }
        assertThat(of(rings.stream(), "10:30").chattering()).isZero();
    }

    /** From the first of the stretch, which counts, until its end, which does not. */
    @ParameterizedTest
    @CsvSource({"09:59:59.999, 0", "10:00, 1", "10:29:59.999, 1", "10:30, 0"})
    void onlyWhatBeganInTheStretchCounts(String began, int bells) {
        assertThat(of(Stream.of(ring(1, Priority.LOW, began, null, End.DONE)), "10:30")
                        .bells())
                .isEqualTo(bells);
    }

    @Test
    void ofNoTimeAndNoBellsThereIsNothing() {
        var figures = of(Stream.of(), "10:00");
        assertThat(figures.perTenMinutes()).isZero();
        assertThat(figures.partOver()).isZero();
        assertThat(figures.partInFlood()).isZero();
        assertThat(figures.part(Priority.LOW)).isEmpty();
        assertThat(figures.toAnswer(0.5)).isEmpty();
    }

    /** It asked from its first ring on, however loud it was then. */
    @Test
    void aBellThatGrewLouderAskedFromItsBeginning() {
        var louder = new Annunciation(
                new BellKey(BellKind.RINSE, 1, 1), Priority.HIGH, null, TEN, at("10:04"), at("10:05"), End.DONE);
        assertThat(louder.toAnswer()).contains(minutes(5));
    }
}

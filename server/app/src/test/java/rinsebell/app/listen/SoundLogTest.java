package rinsebell.app.listen;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import rinsebell.floor.bell.BellKey;
import rinsebell.floor.bell.BellKind;
import rinsebell.floor.report.Sounded;
import rinsebell.floor.report.Turned;

/** Whatever devices say, nothing waits for it and nothing grows without end. */
class SoundLogTest {
    private static final Instant TEN = Instant.parse("2026-05-16T08:00:00Z");

    private final List<Sounded> written = new ArrayList<>();
    /** As in the database, what is told again is written once. */
    private final Set<Sounded> known = new HashSet<>();

    private boolean broken;
    private Instant now = TEN;
    private final SoundLog log = new SoundLog(this::write, () -> now);

    @AfterEach
    void close() {
        log.close();
    }

    private int write(List<Sounded> batch) {
        if (broken) {
            throw new IllegalStateException("the database is away");
        }
        var before = written.size();
        batch.stream().filter(known::add).forEach(written::add);
        return written.size() - before;
    }

    private static Sounded sounded(int number) {
        var bell = new BellKey(BellKind.RINSE, number, number);
        return new Sounded(new Turned(bell, TEN), "tablet", "all", TEN, TEN);
    }

    private void take(int many) {
        take(0, many);
    }

    private void take(int first, int many) {
        IntStream.range(first, first + many).mapToObj(SoundLogTest::sounded).forEach(log::take);
    }

    @Test
    void whatWasTakenIsWrittenOnceInItsOrder() {
        take(3);
        assertThat(written).isEmpty();
        log.round();
        log.round();
        assertThat(written).containsExactly(sounded(0), sounded(1), sounded(2));
        assertThat(log.dropped()).isZero();
    }

    @Test
    void whatComesTooFastIsDroppedAndCounted() {
        take(SoundLog.MOST_WAITING);
        assertThat(log.dropped()).isZero();
        take(1);
        assertThat(log.dropped()).isEqualTo(1);
        log.round();
        assertThat(written).hasSize(SoundLog.MOST_WAITING);
    }

    @Test
    void whatCannotBeWrittenIsDroppedAndTheNextIsNot() {
        broken = true;
        take(2);
        log.round();
        broken = false;
        take(1);
        log.round();
        assertThat(written).containsExactly(sounded(0));
        assertThat(log.dropped()).isEqualTo(2);
    }

    /** Strangers may not fill the disk: a day has an end of it, and the next day begins anew. */
    @Test
    void aDayHasSoManyAndNoMore() {
        fillTheDay(SoundLog.MOST_A_DAY);
        take(SoundLog.MOST_A_DAY, 1);
        log.round();
        assertThat(written).hasSize(SoundLog.MOST_A_DAY);
        assertThat(log.dropped()).isEqualTo(1);
        now = TEN.plus(Duration.ofDays(1));
        take(SoundLog.MOST_A_DAY, 1);
        log.round();
        assertThat(written).hasSize(SoundLog.MOST_A_DAY + 1);
    }

    private void fillTheDay(int different) {
        for (var first = 0; first < SoundLog.MOST_A_DAY; first += SoundLog.MOST_WAITING) {
            take(first % different, Math.min(SoundLog.MOST_A_DAY - first, SoundLog.MOST_WAITING));
            log.round();
        }
    }

    /** A device that hears no answer tells it again, and whoever repeats one thing all day takes nobody's place. */
    @Test
    void whatIsToldAgainTakesNothingOfTheDay() {
        fillTheDay(SoundLog.MOST_WAITING);
        assertThat(written).hasSize(SoundLog.MOST_WAITING);
        take(SoundLog.MOST_WAITING, 1);
        log.round();
        assertThat(written).hasSize(SoundLog.MOST_WAITING + 1);
        assertThat(log.dropped()).isZero();
    }

    @Test
    void whatWaitsIsWrittenWhenItCloses() {
        take(1);
        log.close();
        assertThat(written).containsExactly(sounded(0));
    }
}

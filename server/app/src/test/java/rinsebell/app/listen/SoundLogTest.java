package rinsebell.app.listen;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
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
    private boolean broken;
    private Instant now = TEN;
    private final SoundLog log = new SoundLog(this::write, () -> now);

    @AfterEach
    void close() {
        log.close();
    }

    private void write(List<Sounded> batch) {
        if (broken) {
            throw new IllegalStateException("the database is away");
        }
        written.addAll(batch);
    }

    private static Sounded sounded(int number) {
        var bell = new BellKey(BellKind.RINSE, number, number);
        return new Sounded(new Turned(bell, TEN), "tablet", "all", TEN, TEN);
    }

    private void take(int many) {
        IntStream.range(0, many).mapToObj(SoundLogTest::sounded).forEach(log::take);
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
        fillTheDay();
        take(1);
        log.round();
        assertThat(written).hasSize(SoundLog.MOST_A_DAY);
        assertThat(log.dropped()).isEqualTo(1);
        now = TEN.plus(Duration.ofDays(1));
        take(1);
        log.round();
        assertThat(written).hasSize(SoundLog.MOST_A_DAY + 1);
    }

    private void fillTheDay() {
        for (var left = SoundLog.MOST_A_DAY; left > 0; left -= SoundLog.MOST_WAITING) {
            take(Math.min(left, SoundLog.MOST_WAITING));
            log.round();
        }
    }

    @Test
    void whatWaitsIsWrittenWhenItCloses() {
        take(1);
        log.close();
        assertThat(written).containsExactly(sounded(0));
    }
}

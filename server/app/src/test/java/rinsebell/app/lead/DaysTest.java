package rinsebell.app.lead;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static rinsebell.floor.testing.Saturday.TEN;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rinsebell.app.desk.Snapshot;
import rinsebell.app.door.ProblemException;
import rinsebell.app.time.SalonClock;
import rinsebell.app.time.TimeByHand;
import rinsebell.db.DataFolder;
import rinsebell.db.SalonStore;
import rinsebell.floor.Fact;
import rinsebell.floor.testing.Saturday;
import rinsebell.floor.testing.Story;

/** Days are told one at a time, and nobody waits long for another's. */
class DaysTest {
    private static final long LONG = 20;

    private final SalonClock clock = SalonClock.startingAtTheWall(new TimeByHand(TEN), 1);
    private final Snapshot shown = Snapshot.of(Story.stocked().at(TEN).floor(), Map.of());
    private final CountDownLatch begun = new CountDownLatch(1);
    private final CountDownLatch over = new CountDownLatch(1);

    private List<Fact> slowly(List<Fact> facts) {
        begun.countDown();
        try {
            assertThat(over.await(LONG, TimeUnit.SECONDS)).isTrue();
        } catch (InterruptedException stopping) {
            Thread.currentThread().interrupt();
        }
        return facts;
    }

    @Test
    void whoeverAsksWhileAnotherDayIsToldIsSentAwaySoon(@TempDir Path folder) throws Exception {
        try (var data = DataFolder.open(folder);
                var store = SalonStore.open(data, TEN)) {
            var kept = new Days.Kept(day -> slowly(store.facts(day)), store::facts, store::texts, store.soundings());
            var days = new Days(() -> shown, clock, kept);
            LocalDate yesterday = Saturday.DATE.minusDays(1);
            var first = CompletableFuture.supplyAsync(() -> days.of(yesterday));
            assertThat(begun.await(LONG, TimeUnit.SECONDS)).isTrue();
            assertThatThrownBy(() -> days.of(Saturday.DATE))
                    .isInstanceOf(ProblemException.class)
                    .hasMessage("reports-busy");
            over.countDown();
            assertThat(first.get(LONG, TimeUnit.SECONDS).report().day()).isEqualTo(yesterday);
            assertThat(days.of(Saturday.DATE).report().day()).isEqualTo(Saturday.DATE);
        }
    }
}

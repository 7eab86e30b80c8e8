package rinsebell.app.privacy;

import static org.assertj.core.api.Assertions.assertThat;
import static rinsebell.floor.testing.Saturday.at;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rinsebell.app.time.SalonClock;
import rinsebell.app.time.TimeByHand;
import rinsebell.db.DataFolder;
import rinsebell.db.Retention;
import rinsebell.db.SalonStore;
import rinsebell.floor.ClockTrust;
import rinsebell.floor.Fact;
import rinsebell.floor.Floor;
import rinsebell.floor.Ledger.Entry;
import rinsebell.floor.TextId;
import rinsebell.floor.salon.Policy.Keeping;
import rinsebell.floor.testing.Head;
import rinsebell.floor.testing.Story;
import rinsebell.floor.visit.ClientId;
import rinsebell.floor.visit.StayEvent;

/** What the house's numbers erase, day by day, on a real disk; time is turned by hand. */
class DailyRetentionTest {

    private static final Duration DAY = Duration.ofDays(1);

    @TempDir
    private Path path = Path.of("");

    private final TimeByHand machine = new TimeByHand(at("12:00"));
    private final Story story = Story.begins();
    private final AtomicReference<Floor> floor = new AtomicReference<>(story.floor());
    private final Set<TextId> forgotten = new HashSet<>();
    private DataFolder folder;
    private SalonStore store;
    private SalonClock clock;
    private DailyRetention daily;
    private ClientId came;
    private ClientId here;
    private Head nobody;

    /** One who came and left, one who came and left without a record, one who stays. */
    @BeforeEach
    void aSaturday() throws Exception {
        folder = DataFolder.open(path);
        store = SalonStore.open(folder, machine.wall());
        came = store.clients().add("came", "press-1");
        here = store.clients().add("here", "press-2");
        story.at("09:00").arrives(came).leaves();
        nobody = story.arrives();
        nobody.leaves();
        story.arrives(here);
        List<Entry> presses = new ArrayList<>();
        for (Fact fact : story.facts()) {
            Map<Long, String> texts = fact.event() instanceof StayEvent.Arrived ? Map.of(fact.seq(), "x") : Map.of();
            presses.add(new Entry("press-of-" + fact.seq(), "tablet", "hash", "{}", List.of(fact), texts));
        }
        store.append(presses);
        floor.set(story.floor());
        clock = SalonClock.startingAtTheWall(machine, 1);
        daily = daily();
    }

    private DailyRetention daily() {
        return new DailyRetention(
                store.retention(),
                new Erasing(store.clients(), floor::get, forgotten::addAll),
                forgotten::addAll,
                floor::get,
                clock);
    }

    @AfterEach
    void close() throws Exception {
        daily.close();
        store.close();
        folder.close();
    }

    private List<Retention.Run> runs() {
        return store.retention().last(1_000);
    }

    /** Each day's own, through as many days. */
    private void live(int days) {
        for (int day = 0; day < days; day++) {
            machine.pass(DAY);
            daily.round();
        }
    }

    private boolean isKept(ClientId client) {
        return store.clients().card(client).isPresent();
    }

    private boolean isTold(Head head) {
        return !store.texts(List.of(new TextId(head.id().value()))).isEmpty();
    }

    @Test
    void onceADayAndAtTheStartOfADayThatHasNone() {
        daily.round();
        daily.round();
        assertThat(runs()).hasSize(1);
        assertThat(runs().get(0).at()).isEqualTo(clock.now());
        daily().round();
        assertThat(runs()).as("after a start").hasSize(1);
        machine.pass(Duration.ofHours(16).minusMillis(1));
        daily.round();
        assertThat(runs()).as("before four in the morning, Berlin").hasSize(1);
        machine.pass(Duration.ofMillis(1));
        daily.round();
        assertThat(runs()).hasSize(2);
    }

    @Test
    void labelsGoAndRecordsGoEachAtTheirTimeAndWhoIsHereStays() {
        daily.round();
        live(Keeping.DEFAULT.textDays() - 1);
        assertThat(isTold(nobody)).isTrue();
        live(1);
        assertThat(isTold(nobody)).isFalse();
        assertThat(forgotten).containsExactly(new TextId(nobody.id().value()));
        assertThat(runs().get(0))
                .extracting(Retention.Run::records, Retention.Run::texts)
                .containsExactly(0, 1);

        live(24 * 30 - Keeping.DEFAULT.textDays());
        assertThat(isKept(came)).as("two years are more than 720 days").isTrue();
        live(14);
        assertThat(isKept(came)).isFalse();
        assertThat(isKept(here)).isTrue();
        assertThat(runs().stream().mapToInt(Retention.Run::records).sum()).isEqualTo(1);
    }

    /** A machine that was off, and begins with a clock that is years ahead, can't be told from one that was off for years. */
    @Test
    void aClockThatIsYearsAheadErasesNothingForWeeks() {
        daily.round();
        machine.restartMachine("boot-2");
        machine.setWall(DAY.multipliedBy(3650));
        clock = SalonClock.startingAtTheWall(machine, 1);
        assertThat(clock.trust()).isEqualTo(ClockTrust.AGREES);
        daily = daily();
        daily.round();
        live(10);
        assertThat(isTold(nobody)).isTrue();
        assertThat(isKept(came)).isTrue();
        machine.restartMachine("boot-3");
        machine.setWall(DAY.multipliedBy(-3650));
        clock = SalonClock.startingAtTheWall(machine, 1);
        daily = daily();
        daily.round();
        Retention.Run right = runs().get(0);
        assertThat(right.at()).as("once the clock is right it goes on by it").isEqualTo(clock.now());
        assertThat(right.until()).isEqualTo(clock.now());
    }

    @Test
    void aClockThatNobodyConfirmedErasesNothing() {
        machine.setWall(DAY.multipliedBy(3650));
        assertThat(clock.trust()).isEqualTo(ClockTrust.SET);
        daily.round();
        assertThat(runs()).isEmpty();
    }

    @Test
    void aSalonThatWasClosedCatchesUp() {
        daily.round();
        machine.pass(DAY.multipliedBy(28));
        live(5);
        Instant now = clock.now();
        assertThat(runs().get(0).until()).isEqualTo(now);
        assertThat(runs().get(1).until()).isBefore(now.minus(DAY));
    }

    /** Who came in again since the tables were asked is on the floor. */
    @Test
    void whoIsOnTheFloorIsNeverErased() {
        daily.round();
        story.at("11:00").arrives(came);
        floor.set(story.floor());
        live(24 * 31);
        assertThat(isKept(came)).isTrue();
    }
}

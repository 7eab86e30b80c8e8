package rinsebell.app.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;
import static rinsebell.floor.testing.Saturday.TEN;
import static rinsebell.floor.testing.Scoop.g;
import static rinsebell.floor.testing.Shelf.DEV20;
import static rinsebell.floor.testing.Shelf.MILD_CREAM;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rinsebell.app.time.AliveMarker;
import rinsebell.app.time.ClockMark;
import rinsebell.app.time.ClockProof;
import rinsebell.app.time.SalonClock;
import rinsebell.app.time.TimeByHand;
import rinsebell.floor.Asked;
import rinsebell.floor.Event;
import rinsebell.floor.Fact;
import rinsebell.floor.bowl.DayEvent;
import rinsebell.floor.command.Report;
import rinsebell.floor.testing.Head;
import rinsebell.floor.testing.Saturday;
import rinsebell.floor.testing.Story;
import rinsebell.floor.testing.Where;
import rinsebell.floor.visit.Area;
import rinsebell.floor.visit.Ending;
import rinsebell.floor.visit.StayEvent;
import rinsebell.floor.visit.WorkEvent;

class CaretakerTest {

    @TempDir
    private Path folder = Path.of("");

    private final LedgerByHand ledger = new LedgerByHand();
    private final Story story = Story.stocked().at(TEN);
    private @Nullable FloorDesk desk;

    @AfterEach
    void close() {
        if (desk != null) {
            desk.close();
        }
    }

    /** A caretaker who begins at an instant, makes the first round, and goes. */
    private SalonClock beginsAt(Instant now, Instant lastAlive) {
        desk = new FloorDesk(
                Snapshot.of(story.floor(), Map.of()),
                new FloorDesk.Tools(
                        ledger,
                        new PressMemory(id -> Optional.empty()),
                        (reason, on, texts) -> reason.code().name(),
                        facts -> {},
                        snapshot -> {},
                        () -> {}));
        return comesAgain(desk, now, lastAlive);
    }

    private SalonClock comesAgain(FloorDesk opened, Instant now, Instant lastAlive) {
        SalonClock clock = SalonClock.startingAtTheWall(new TimeByHand(now), 1);
        AtomicInteger looks = new AtomicInteger();
        try (Caretaker caretaker = new Caretaker(opened, clock, new AliveMarker(folder), task -> {
            task.run();
            looks.incrementAndGet();
        })) {
            caretaker.begin(lastAlive);
            await().until(() -> looks.get() > 0);
        }
        return clock;
    }

    private List<Event> written() {
        return ledger.facts().stream().map(Fact::event).toList();
    }

    @ParameterizedTest
    @CsvSource({"59999, 0", "60000, 1", "60001, 1", "7200000, 1"})
    void anOutageOfAMinuteIsWrittenDown(long millis, int outages) {
        story.arrivesFine();
        Instant now = TEN.plusMillis(millis);
        beginsAt(now, TEN);
        assertThat(written()).hasSize(outages);
        if (outages > 0) {
            assertThat(written()).containsExactly(new DayEvent.Outage(TEN, now));
        }
    }

    @Test
    void anOutageInAnEmptySalonConcernsNobody() {
        story.arrivesFine().tells(new StayEvent.Left());
        beginsAt(TEN.plus(Duration.ofHours(2)), TEN);
        assertThat(written()).isEmpty();
    }

    /** A salon's day turns at four in the morning of its own zone, which is two hours before UTC here. */
    @ParameterizedTest
    @CsvSource({"2026-05-17T01:59:59.999Z, false", "2026-05-17T02:00:00Z, true", "2026-05-17T08:00:00Z, true"})
    void aForgottenVisitEndsWithItsDay(Instant now, boolean ended) {
        story.arrivesFine();
        beginsAt(now, now);
        assertThat(written()).isEqualTo(ended ? List.of(new StayEvent.Left(), new DayEvent.DayEnded()) : List.of());
    }

    @Test
    void whatIsOnKeepsItsVisitOpen() {
        Head head = story.arrivesFine();
        head.puts(story.mixes(g(60, MILD_CREAM), g(60, DEV20)), Where.onScalp(Area.REGROWTH));
        beginsAt(Saturday.on(Saturday.DATE.plusDays(1), "09:00"), Saturday.on(Saturday.DATE.plusDays(1), "09:00"));
        assertThat(written()).isEmpty();
    }

    /** Of two who were left at four, one had something on until half past nine. */
    @Test
    void whoeverIsRinsedAfterTheDaysEndIsNotKeptUntilTheNext() throws Exception {
        Head forgotten = story.arrivesFine();
        Head head = story.arrivesFine();
        head.puts(story.mixes(g(60, MILD_CREAM), g(60, DEV20)), Where.onScalp(Area.REGROWTH));
        Instant morning = Saturday.on(Saturday.DATE.plusDays(1), "09:00");
        beginsAt(morning, morning);
        FloorDesk opened = Objects.requireNonNull(desk);
        assertThat(opened.snapshot().floor().visit(forgotten.id())).isEmpty();
        Instant rinsed = morning.plus(Duration.ofMinutes(30));
        var on = opened.snapshot()
                .floor()
                .visit(head.id())
                .orElseThrow()
                .applications()
                .get(0)
                .id();
        var off = Report.of(head.id(), new WorkEvent.TakenOff(Set.of(on), Ending.How.RINSED));
        opened.press(new Press("rinsed-press", "", "hash", off, Asked.at(rinsed)))
                .get(10, TimeUnit.SECONDS);
        comesAgain(opened, rinsed, rinsed);
        assertThat(opened.snapshot().floor().visits()).isEmpty();
        int facts = ledger.facts().size();
        comesAgain(opened, rinsed, rinsed);
        assertThat(ledger.facts()).as("nobody is left over").hasSize(facts);
    }

    @Test
    void theLastThingSaidIsThatItRanUntilNow() {
        SalonClock clock = beginsAt(TEN, TEN);
        ClockMark mark = new AliveMarker(folder)
                .last(new ClockProof(null, new TreeMap<>(), TEN))
                .orElseThrow();
        assertThat(mark).isEqualTo(clock.mark());
        assertThat(mark.salon()).isEqualTo(TEN);
        assertThat(mark.bootId()).isEqualTo("boot-1");
    }
}

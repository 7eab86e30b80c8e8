package rinsebell.app.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;
import static rinsebell.floor.testing.Saturday.at;
import static rinsebell.floor.testing.Scoop.g;
import static rinsebell.floor.testing.Shelf.DEV20;
import static rinsebell.floor.testing.Shelf.POWDER;
import static rinsebell.floor.testing.Where.offScalp;

import java.time.Duration;
import java.util.Map;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import rinsebell.app.time.MachineTime;
import rinsebell.floor.Floor;
import rinsebell.floor.bowl.Announced;
import rinsebell.floor.bowl.DayEvent;
import rinsebell.floor.command.Announce;
import rinsebell.floor.testing.Head;
import rinsebell.floor.testing.Story;
import rinsebell.floor.visit.Area;
import rinsebell.planner.BasinPlanner;
import rinsebell.planner.Budget;

/** Turns are told when there is something new to tell, and only then. */
class PlanWatchTest {
    private final Story story = Story.begins().at("10:00");
    private final AtomicReference<Floor> floor = new AtomicReference<>(story.floor());
    private final BlockingQueue<Announce> told = new LinkedBlockingQueue<>();
    private final PlanWatch watch = new PlanWatch(
            floor::get,
            () -> at("10:05"),
            new BasinPlanner(Budget.QUICK, new MachineTime()::monotonicNanos),
            told::add);

    @AfterEach
    void close() {
        watch.close();
    }

    private Announce next() throws InterruptedException {
        floor.set(story.floor());
        watch.moved();
        var announce = told.poll(10, TimeUnit.SECONDS);
        assertThat(announce).isNotNull();
        return announce;
    }

    private Head lightened() {
        var head = story.arrivesFine();
        head.lastOn(head.puts(story.mixes(g(60, POWDER), g(60, DEV20)), offScalp(Area.LENGTHS)));
        return head;
    }

    @Test
    void whoIsNewIsTold() throws InterruptedException {
        var head = lightened();
        var announce = next();
        var turn = story.floor().outlook(at("10:05")).turn(head.id()).orElseThrow();
        assertThat(announce.floor()).isEqualTo(story.floor().lastSeq());
        assertThat(announce.turns()).isEqualTo(Map.of(turn.job().anchor(), new Announced(turn.basin(), turn.water())));
    }

    /** Neither the announcement itself nor a look at the scalp moves anybody: the next thing told is the next head. */
    @Test
    void whatIsKnownIsNotToldAgain() throws InterruptedException {
        lightened();
        var first = next();
        story.tells(new DayEvent.TurnsAnnounced(first.floor(), first.turns()));
        floor.set(story.floor());
        watch.moved();
        story.tells(new DayEvent.CaughtUp());
        lightened();
        assertThat(next().turns()).hasSize(2).containsAllEntriesOf(first.turns());
        assertThat(told).isEmpty();
    }

    @Test
    void aBasinOutOfOrderIsNews() throws InterruptedException {
        var head = lightened();
        var first = next();
        story.tells(new DayEvent.TurnsAnnounced(first.floor(), first.turns()));
        story.tells(new DayEvent.BasinClosed(1));
        var on = head.visit().onHair().get(0).id().value();
        assertThat(next().turns().get(on)).extracting(Announced::basin).isEqualTo(2);
    }

    /** With nobody on the floor there is nothing to tell; the watch lives on. */
    @Test
    void anEmptyFloorIsQuiet() throws InterruptedException {
        watch.moved();
        await().during(Duration.ofMillis(1_500)).until(told::isEmpty);
        lightened();
        assertThat(next().turns()).hasSize(1);
    }
}

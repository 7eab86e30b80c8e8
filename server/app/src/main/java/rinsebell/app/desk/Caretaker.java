package rinsebell.app.desk;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.UUID;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import rinsebell.app.thread.Threads;
import rinsebell.app.time.AliveMarker;
import rinsebell.app.time.SalonClock;
import rinsebell.floor.Asked;
import rinsebell.floor.Command;
import rinsebell.floor.Floor;
import rinsebell.floor.bowl.DayEvent;
import rinsebell.floor.command.EndDay;
import rinsebell.floor.command.OnDay;
import rinsebell.floor.visit.Visit;

/**
 * Does what nobody presses: says every few seconds that a server runs, ends a day that is over, and at the start writes
 * down since when none ran.
 */
public final class Caretaker implements AutoCloseable {

    private static final Logger LOG = LoggerFactory.getLogger(Caretaker.class);
    private static final Duration ROUND = Duration.ofSeconds(5);

    private final FloorDesk desk;
    private final SalonClock clock;
    private final AliveMarker marker;
    private final Consumer<Runnable> whileClockStands;
    private final ScheduledExecutorService thread = Threads.timer("caretaker");

    /** @param whileClockStands does something in which the clock is not put right, now or not at all */
    public Caretaker(FloorDesk desk, SalonClock clock, AliveMarker marker, Consumer<Runnable> whileClockStands) {
        this.desk = desk;
        this.clock = clock;
        this.marker = marker;
        this.whileClockStands = whileClockStands;
    }

    /**
     * Writes down an outage during which somebody was here, and begins the rounds.
     *
     * @param lastAlive when the last server still ran
     */
    public void begin(Instant lastAlive) {
        DayEvent.Outage outage = new DayEvent.Outage(lastAlive, clock.now());
        if (outage.concerns(desk.snapshot().floor())) {
            press("outage " + UUID.randomUUID(), new OnDay(outage));
        }
        var unused = thread.scheduleWithFixedDelay(this::round, 0, ROUND.toMillis(), TimeUnit.MILLISECONDS);
    }

    private void round() {
        try {
            marker.write(clock.mark());
            whileClockStands.accept(this::endDayIfOver);
        } catch (RuntimeException e) {
            LOG.error("a round failed; the next one comes", e);
        }
    }

    private void endDayIfOver() {
        Instant now = clock.now();
        Floor floor = desk.snapshot().floor();
        if (floor.visits().stream().anyMatch(visit -> isLeftOver(visit, floor, now))) {
            LocalDate today = floor.salon().dayOf(now);
            // Whoever was still being rinsed when the day turned is left over later, on a floor of more facts.
            press("end of day before " + today + " after " + floor.lastSeq(), new EndDay(today));
        }
    }

    /** A visit of an earlier day with nothing on: forgotten, or long ended. What is on stays, and rings. */
    private static boolean isLeftOver(Visit visit, Floor floor, Instant now) {
        boolean earlier = floor.salon()
                .dayOf(visit.stay().arrivedAt())
                .isBefore(floor.salon().dayOf(now));
        return earlier && visit.onHair().isEmpty();
    }

    /** @param id with a space, which no press of a person or a program can have */
    private void press(String id, Command command) {
        desk.press(new Press(id, "", id, command, Asked.at(clock.now()))).join();
    }

    /** Lets a round that is under way finish, so that the last mark is the last. */
    @Override
    public void close() {
        thread.shutdown();
        try {
            if (!thread.awaitTermination(ROUND.toMillis(), TimeUnit.MILLISECONDS)) {
                LOG.warn("a round did not end in time");
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        marker.write(clock.mark());
    }
}

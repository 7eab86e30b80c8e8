package rinsebell.app.time;

import java.time.Duration;
import java.time.Instant;
import java.util.OptionalLong;

/** A machine whose clocks move only when a test moves them. */
public class TimeByHand implements TimeSources {

    private final int nanosIntoMilli;
    private long wallMillis;
    private long nanos = 5_000_000_000L;
    private long uptimeMillis = 70_000;
    private boolean tellsUptime = true;
    private String bootId = "boot-1";

    public TimeByHand(Instant wall) {
        wallMillis = wall.toEpochMilli();
        nanosIntoMilli = wall.getNano() % 1_000_000;
    }

    /** Time goes by while the machine is awake. */
    public synchronized void pass(Duration time) {
        nanos += time.toNanos();
        sleep(time);
    }

    /** Time goes by while the machine sleeps: the monotonic counter stands still. */
    public synchronized void sleep(Duration time) {
        wallMillis += time.toMillis();
        uptimeMillis += time.toMillis();
    }

    /** Somebody sets the wall clock. */
    public synchronized void setWall(Duration by) {
        wallMillis += by.toMillis();
    }

    /** The machine starts anew. */
    public synchronized void restartMachine(String newBootId) {
        bootId = newBootId;
        nanos = 1_000_000;
        uptimeMillis = 20_000;
    }

    /** A system that tells no uptime. */
    public synchronized void hideUptime() {
        tellsUptime = false;
        bootId = "";
    }

    @Override
    public synchronized long wallMillis() {
        return wallMillis;
    }

    @Override
    public synchronized Instant wall() {
        return Instant.ofEpochMilli(wallMillis).plusNanos(nanosIntoMilli);
    }

    @Override
    public synchronized long monotonicNanos() {
        return nanos;
    }

    @Override
    public synchronized OptionalLong uptimeMillis() {
        return tellsUptime ? OptionalLong.of(uptimeMillis) : OptionalLong.empty();
    }

    @Override
    public synchronized String bootId() {
        return bootId;
    }
}

package rinsebell.app.time;

import java.time.Duration;
import java.time.Instant;
import java.util.OptionalLong;

/** A machine whose clocks move only when a test moves them. */
public class TimeByHand implements TimeSources {

    private Instant wall;
    private long nanos = 5_000_000_000L;
    private long uptimeMillis = 70_000;
    private boolean tellsUptime = true;
    private String bootId = "boot-1";

    public TimeByHand(Instant wall) {
        this.wall = wall;
    }

    /** Time goes by while the machine is awake. */
    public synchronized void pass(Duration time) {
        nanos += time.toNanos();
        sleep(time);
    }

    /** Time goes by while the machine sleeps: the monotonic counter stands still. */
    public synchronized void sleep(Duration time) {
        wall = wall.plus(time);
        uptimeMillis += time.toMillis();
    }

    /** Somebody sets the wall clock. */
    public synchronized void setWall(Duration by) {
        wall = wall.plus(by);
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
    public synchronized Instant wall() {
        return wall;
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

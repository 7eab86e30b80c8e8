package rinsebell.demo.faults;

import java.time.Instant;
import java.util.OptionalLong;
import rinsebell.app.time.TimeSources;

/** The computer in the back room: its clocks can be set, it can sleep, and it can start anew. */
final class Machine implements TimeSources {
    private final Agenda agenda;
    private final Parts parts;
    private long wallAhead;
    private long slept;
    private long startedAt;
    private int starts = 1;

    Machine(Agenda agenda, Parts parts) {
        this.agenda = agenda;
        this.parts = parts;
        this.startedAt = agenda.now() - 70_000;
    }

    /** Somebody, or a time server, sets the wall clock. */
    void setWall(long byMillis) {
        wallAhead += byMillis;
    }

    /** It slept until now. */
    void woke(long sleptMillis) {
        slept += sleptMillis;
    }

    /** Its power went, and it starts now. */
    void startAnew() {
        startedAt = agenda.now();
        slept = 0;
        starts++;
    }

    long wallAhead() {
        return wallAhead;
    }

    @Override
    public Instant wall() {
        return Instant.ofEpochMilli(agenda.now() + wallAhead);
    }

    @Override
    public long monotonicNanos() {
        return (agenda.now() - startedAt - slept) * 1_000_000;
    }

    @Override
    public OptionalLong uptimeMillis() {
        return parts.uptime(agenda.now() - startedAt, wallAhead);
    }

    @Override
    public String bootId() {
        return "start-" + starts;
    }
}

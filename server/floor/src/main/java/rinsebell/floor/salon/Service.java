package rinsebell.floor.salon;

import java.time.Duration;

/** What is done for a client and holds the chair. */
public enum Service {
    /** Colour or lightener, from the first of it on. How long it takes its directions say. */
    BOWL(Duration.ZERO),
    /** A toner, put on at the basin after the rinse. */
    TONER(Duration.ofMinutes(20)),
    CUT(Duration.ofMinutes(30)),
    BLOW_DRY(Duration.ofMinutes(25));

    private final Duration usual;

    Service(Duration usual) {
        this.usual = usual;
    }

    /** How long it takes while the salon has said nothing else; common practice, no source. */
    public Duration usual() {
        return usual;
    }

    /** Whether it has a length of its own. */
    public boolean isTimed() {
        return this != BOWL;
    }
}

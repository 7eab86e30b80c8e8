package rinsebell.app.time;

import static java.time.Duration.ofMillis;

import java.time.Duration;
import java.time.Instant;
import org.jetbrains.lincheck.datastructures.IntGen;
import org.jetbrains.lincheck.datastructures.Operation;
import org.jetbrains.lincheck.datastructures.Param;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import rinsebell.app.Races;

@Tag("races")
@Tag("long")
class SalonClockRacesTest {

    @Test
    void whoeverLooksAtOnceSeesOneClock() {
        Races.noneIn(Looks.class);
    }

    @Param(name = "millis", gen = IntGen.class, conf = "1:3000")
    public static class Looks {
        private final TimeByHand machine = new TimeByHand(Instant.parse("2026-03-07T10:00:00Z"));
        private final SalonClock clock = SalonClock.startingAtTheWall(machine, 1);

        @Operation
        public long now() {
            return clock.now().toEpochMilli();
        }

        @Operation
        public String trust() {
            return clock.trust().name();
        }

        @Operation
        public void confirm(@Param(name = "millis") int millis) {
            clock.confirm(Duration.ofMillis(millis), 1);
        }

        @Operation
        public void set(@Param(name = "millis") int millis) {
            machine.setWall(ofMillis(millis));
        }
    }
}

package rinsebell.app.desk;

import static rinsebell.floor.testing.Saturday.TEN;

import org.jetbrains.lincheck.datastructures.IntGen;
import org.jetbrains.lincheck.datastructures.Operation;
import org.jetbrains.lincheck.datastructures.Param;
import org.jetbrains.lincheck.datastructures.Validate;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import rinsebell.app.Races;
import rinsebell.floor.Asked;
import rinsebell.floor.bowl.DayEvent;
import rinsebell.floor.command.OnDay;

/** Presses join from many threads while the desk takes and answers them. */
@Tag("races")
class LineRacesTest {

    @Test
    void nobodyStandsInLineWhoWasAnswered() {
        Races.noneUnderStress(Presses.class);
    }

    @Param(name = "press", gen = IntGen.class, conf = "1:3")
    public static class Presses {
        private final Line line = new Line();

        @Operation
        public boolean join(@Param(name = "press") int press) {
            return line.join(Line.Waiting.of(
                    new Press("press-" + press, "", "payload", new OnDay(new DayEvent.CaughtUp()), Asked.at(TEN))));
        }

        @Operation
        public String serve() {
            var taken = line.waiting(1);
            taken.forEach(one -> line.answer(one, new Answer.NotSaved(false)));
            return String.join(",", taken.stream().map(one -> one.press().id()).toList());
        }

        /** Who is neither in the line nor at the desk is held no more. */
        @Validate
        public void nobodyIsLeftBehind() {
            for (var press = 1; press <= 3; press++) {
                if (line.isEmpty() && line.holds("press-" + press)) {
                    throw new IllegalStateException("press-" + press + " was answered and is still held");
                }
            }
        }
    }
}

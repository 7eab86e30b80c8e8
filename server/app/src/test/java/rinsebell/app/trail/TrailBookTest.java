package rinsebell.app.trail;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import rinsebell.db.DatabaseAway;
import rinsebell.db.Trail.Step;

/** What was done is kept even if the database is away; what can't be kept is not shown. */
class TrailBookTest {
    private static final Instant NOON = Instant.parse("2026-11-21T12:00:00Z");

    private final List<Long> written = new ArrayList<>();
    private boolean away;
    private final TrailBook book = new TrailBook(this::write);

    private void write(List<Step> steps) {
        if (away) {
            throw new DatabaseAway(new IOException("away"));
        }
        steps.forEach(step -> written.add(step.about().orElseThrow()));
    }

    private static Step step(long number, Instant at, int status) {
        return new Step(at, "own", null, "HISTORY", "GET /clients/{id}", number, status);
    }

    private static Step step(long number) {
        return step(number, NOON, 200);
    }

    @Test
    void whatCantBeKeptIsNotShown() {
        away = true;
        assertThatThrownBy(() -> book.keep(step(1))).isInstanceOf(DatabaseAway.class);
        away = false;
        book.keep(step(2));
        assertThat(written).as("it was not shown, so it did not happen").containsExactly(2L);
    }

    @Test
    void whatWasDoneWaitsAndKeepsItsPlace() {
        away = true;
        book.keepSoon(step(1));
        book.keepSoon(step(2));
        away = false;
        book.keep(step(3));
        book.keepSoon(step(4));
        assertThat(written).containsExactly(1L, 2L, 3L, 4L);
    }

    @Test
    void onlySoManyWait() {
        away = true;
        for (int number = 0; number < TrailBook.MOST_WAITING + 10; number++) {
            book.keepSoon(step(number));
        }
        away = false;
        book.keepSoon(step(-1));
        assertThat(written).hasSize(TrailBook.MOST_WAITING + 1).endsWith(-1L);
    }

    @Test
    void nobodyFillsTheDiskByGuessing() {
        for (int number = 0; number < TrailBook.MOST_REFUSED_A_DAY + 10; number++) {
            book.keepSoon(step(number, NOON, 403));
        }
        assertThat(written).hasSize(TrailBook.MOST_REFUSED_A_DAY);
        book.keepSoon(step(7, NOON, 303));
        assertThat(written).as("what is right is kept").endsWith(7L);
        book.keepSoon(step(8, NOON.plus(Duration.ofDays(1)), 403));
        assertThat(written).as("and the next day begins anew").endsWith(8L);
    }
}

package rinsebell.app.page;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static rinsebell.floor.testing.Saturday.TEN;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicReference;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rinsebell.app.asset.AssetRoutes;
import rinsebell.app.desk.Snapshot;
import rinsebell.app.http.ServerUnderTest;
import rinsebell.app.time.SalonClock;
import rinsebell.app.time.TimeByHand;
import rinsebell.floor.client.ClientBook;
import rinsebell.floor.testing.Story;
import rinsebell.web.Assets;
import rinsebell.web.Pages;
import rinsebell.web.Words;
import rinsebell.web.board.LivePages;

/** A page never claims a newer number than what it shows: its screen would drop what came since, and stay stale. */
class PageNumberTest {

    private static final Pattern NUMBER = Pattern.compile("data-n=\"[0-9a-f]+-(\\d+)\"");

    private final AtomicReference<Runnable> meanwhile = new AtomicReference<>(() -> {});
    private final Story story = Story.stocked().at(TEN);
    private final Snapshot empty = Snapshot.of(story.floor(), Map.of());
    private final TimeByHand time = new TimeByHand(TEN) {
        @Override
        public long monotonicNanos() {
            meanwhile.getAndSet(() -> {}).run();
            return super.monotonicNanos();
        }
    };
    private final LiveFloor live = new LiveFloor(
            empty,
            SalonClock.startingAtTheWall(time, 1),
            new LiveFloor.Paper(new Pages(), Words.british(), Assets.under(AssetRoutes.PREFIX)),
            List::of);

    @ParameterizedTest
    @ValueSource(strings = {"/", "/basins", "/desk", "/bells", "/pocket", "/welcome", "/bowls/mix"})
    void aPressInTheMiddleOfADrawingLeavesItsNumberBehind(String page) {
        Answers answers = new Answers();
        try (ServerUnderTest server = new ServerUnderTest(
                List.of(new PageRoutes(live, answers), new FormRoutes(live, answers, ClientBook.EMPTY)))) {
            assertThat(number(server, page)).isEqualTo(1);
            story.arrivesFine();
            meanwhile.set(() -> live.show(Snapshot.of(story.floor(), Map.of())));
            assertThat(number(server, page)).isZero();
            assertThat(number(server, page)).isEqualTo(2);
        }
    }

    private static long number(ServerUnderTest server, String page) {
        return number(given(server.request())
                .get(page)
                .then()
                .statusCode(200)
                .extract()
                .asString());
    }

    private static long number(String html) {
        Matcher number = NUMBER.matcher(html);
        assertThat(number.find()).as(html).isTrue();
        return Long.parseLong(number.group(1));
    }

    @Test
    void aBellThatFallsDueInTheMiddleOfADrawingLeavesItsNumberBehind() {
        var before = live.moment();
        time.pass(Duration.ofSeconds(1));
        live.fellDue();
        assertThat(number(live.page(new LivePages(before, null, null).bells(), before)))
                .isZero();
        var after = live.moment();
        assertThat(number(live.page(new LivePages(after, null, null).bells(), after)))
                .isEqualTo(2);
    }
}

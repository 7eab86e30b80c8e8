package rinsebell.floor.bell;

import static org.assertj.core.api.Assertions.assertThat;
import static rinsebell.floor.testing.Leaflet.leaflet;
import static rinsebell.floor.testing.Ringing.bell;
import static rinsebell.floor.testing.Saturday.at;
import static rinsebell.floor.testing.Saturday.minutes;
import static rinsebell.floor.testing.Scoop.g;
import static rinsebell.floor.testing.Where.offScalp;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import rinsebell.floor.command.Acknowledge;
import rinsebell.floor.product.Kind;
import rinsebell.floor.testing.Desk;
import rinsebell.floor.testing.Head;
import rinsebell.floor.testing.Story;
import rinsebell.floor.visit.ApplicationId;
import rinsebell.floor.visit.Area;
import rinsebell.floor.visit.Complaint;

/** What rang and is gone without anybody having seen it or done something about it. */
class ReturnedTest {
    private final Story story = Story.begins();
    private final Head head = story.at("09:50").arrivesFine();
    private ApplicationId on = new ApplicationId(0);
    private long complaint;

    @BeforeEach
    void tingling() {
        story.at("10:00");
        var powder = leaflet("powder", Kind.POWDER_LIGHTENER).longestOn(minutes(40));
        on = head.puts(story.mixes(g(60, powder.typedIn())), offScalp(Area.LENGTHS));
        head.lastOn(on);
        complaint = head.complains(Complaint.Grade.TINGLING);
        story.at("10:05");
    }

    private java.util.List<Returned> returned(String clock) {
        return Returned.of(story.floor(), at(clock));
    }

    @Test
    void aWithdrawnBellIsListedUntilSomebodySeesIt() {
        var rang = bell(story.floor(), BellKind.TINGLING);
        story.withdraws(complaint);
        assertThat(returned("10:06")).singleElement().satisfies(one -> {
            assertThat(one.key()).isEqualTo(rang.key());
            assertThat(one.gone()).isEqualTo(at("10:05"));
            assertThat(one.stage().priority()).isEqualTo(Priority.MEDIUM);
        });
        var desk = Desk.after(story).at("10:06");
        assertThat(Desk.isAccepted(desk.plans(new Acknowledge(rang.key(), null))))
                .isTrue();
        assertThat(Returned.of(desk.floor(), at("10:06"))).isEmpty();
    }

    @Test
    void whatWasSeenBeforeItWentIsNotListed() {
        story.acknowledges(bell(story.floor(), BellKind.TINGLING));
        story.withdraws(complaint);
        assertThat(returned("10:06")).isEmpty();
    }

    @Test
    void whatSomebodyDidSomethingAboutIsNotListed() {
        head.scalpIs(rinsebell.floor.visit.ScalpCheck.Finding.FINE);
        assertThat(returned("10:06")).isEmpty();
    }

    /** Work begins at 10:39; put on ten minutes later, it does at 10:49, and then it rings as ever. */
    @Test
    void whatIsDueLaterAfterAllIsListedUntilItRingsAgain() {
        story.withdraws(complaint);
        story.at("10:39");
        var rinse = bell(story.floor(), BellKind.RINSE);
        story.setsBack(on.value(), "10:10");
        assertThat(returned("10:40")).extracting(Returned::key).contains(rinse.key());
        assertThat(returned("10:48:59.999")).extracting(Returned::key).contains(rinse.key());
        assertThat(returned("10:49")).extracting(Returned::key).doesNotContain(rinse.key());
    }

    @Test
    void yesterdaysAreOver() {
        story.withdraws(complaint);
        assertThat(Returned.of(story.floor(), at("10:06").plus(java.time.Duration.ofDays(1))))
                .isEmpty();
    }
}

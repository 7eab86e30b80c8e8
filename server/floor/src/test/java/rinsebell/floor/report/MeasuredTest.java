package rinsebell.floor.report;

import static org.assertj.core.api.Assertions.assertThat;
import static rinsebell.floor.product.Develops.Counted.FROM_FIRST_ON;
import static rinsebell.floor.testing.Leaflet.leaflet;
import static rinsebell.floor.testing.Saturday.minutes;
import static rinsebell.floor.testing.Scoop.g;
import static rinsebell.floor.testing.Where.offScalp;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import rinsebell.floor.product.Kind;
import rinsebell.floor.salon.Place;
import rinsebell.floor.salon.Service;
import rinsebell.floor.salon.Stretch;
import rinsebell.floor.testing.Head;
import rinsebell.floor.testing.Story;
import rinsebell.floor.visit.ApplicationId;
import rinsebell.floor.visit.Area;
import rinsebell.floor.visit.StayEvent;
import rinsebell.floor.visit.WorkEvent;

/** What a day's facts say of how long things took, reckoned by hand. */
class MeasuredTest {
    private final Story story = Story.begins().at("09:50");
    private final Head head = story.arrivesFine();

    private Map<Stretch, List<Integer>> measured() {
        return Measured.of(story.floor(), List.of(head.visit()));
    }

    private ApplicationId goesOn() {
        var powder = leaflet("powder", Kind.POWDER_LIGHTENER).develops(FROM_FIRST_ON, minutes(20), minutes(50));
        story.at("10:00");
        var on = head.puts(story.mixes(g(60, powder.typedIn())), offScalp(Area.LENGTHS));
        story.at("10:12");
        head.lastOn(on);
        return on;
    }

    /** Decided at 10:25, with a minute to walk: 26 of 50 minutes. That no basin was free until 10:40 is no development. */
    @Test
    void eachStretchFromItsBeginningToItsEnd() {
        var on = goesOn();
        story.at("10:25");
        head.saysRinse(on);
        story.at("10:40");
        head.rinses(on);
        story.at("10:49");
        head.tells(new StayEvent.Moved(Place.chair(1)));
        story.at("10:52");
        head.tells(new StayEvent.ServiceBegan(Service.CUT));
        story.at("11:20");
        head.tells(new StayEvent.ServiceBegan(Service.BLOW_DRY));
        story.at("11:45");
        head.tells(new StayEvent.ServiceEnded(Service.BLOW_DRY));
        story.at("11:50");
        head.leaves();
        assertThat(measured())
                .isEqualTo(Map.of(
                        Stretch.APPLYING, List.of(12 * 60),
                        Stretch.DEVELOPING, List.of(520),
                        Stretch.RINSING, List.of(9 * 60),
                        Stretch.WAITING, List.of(3 * 60, 0),
                        Stretch.CUT, List.of(28 * 60),
                        Stretch.BLOW_DRY, List.of(25 * 60),
                        Stretch.SETTLING, List.of(5 * 60)));
    }

    @Test
    void whereNobodySaidThatItIsToBeRinsedWaterTells() {
        var on = goesOn();
        story.at("10:40");
        head.rinses(on);
        assertThat(measured().get(Stretch.DEVELOPING)).containsExactly(800);
    }

    /** Settling begins where the rinse ends; of a rinse whose end nobody recorded it is not known. */
    @Test
    void whoHasNothingMoreDoneSettlesAfterTheRinse() {
        var on = goesOn();
        story.at("10:40");
        head.rinses(on);
        story.at("10:55");
        head.leaves();
        assertThat(measured()).doesNotContainKeys(Stretch.RINSING, Stretch.SETTLING);
        story.at("10:48");
        head.tells(new WorkEvent.TowelDried());
        assertThat(measured()).containsEntry(Stretch.SETTLING, List.of(7 * 60));
    }

    /** A service that is only said to be over has no beginning. */
    @Test
    void whatNobodySawBeginIsNoWait() {
        story.at("10:00");
        head.tells(new StayEvent.ServiceBegan(Service.CUT));
        story.at("10:30");
        head.tells(new StayEvent.ServiceEnded(Service.CUT));
        story.at("11:00");
        head.tells(new StayEvent.ServiceEnded(Service.BLOW_DRY));
        assertThat(measured()).containsOnlyKeys(Stretch.CUT);
    }
}

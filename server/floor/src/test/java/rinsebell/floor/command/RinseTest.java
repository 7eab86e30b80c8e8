package rinsebell.floor.command;

import static org.assertj.core.api.Assertions.assertThat;
import static rinsebell.floor.testing.Saturday.at;
import static rinsebell.floor.testing.Scoop.g;
import static rinsebell.floor.testing.Where.onScalp;

import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import rinsebell.floor.Decision;
import rinsebell.floor.Fact;
import rinsebell.floor.Reason;
import rinsebell.floor.ReasonCode;
import rinsebell.floor.bowl.DayEvent;
import rinsebell.floor.product.Heat;
import rinsebell.floor.salon.Place;
import rinsebell.floor.testing.Desk;
import rinsebell.floor.testing.Gates;
import rinsebell.floor.testing.Head;
import rinsebell.floor.testing.Shelf;
import rinsebell.floor.testing.Story;
import rinsebell.floor.visit.ApplicationId;
import rinsebell.floor.visit.Area;
import rinsebell.floor.visit.StayEvent;
import rinsebell.floor.visit.Visit;

/** Water is on: a fact that nothing keeps from being written down. */
class RinseTest {
    private final Story story = Story.stocked().at("09:50");
    private final Head head = story.arrives();
    private final ApplicationId on = putOn();

    private ApplicationId putOn() {
        head.answers(Gates.FINE);
        var bowl = story.mixes(g(60, Shelf.MILD_CREAM), g(60, Shelf.DEV20));
        return story.at("10:00").puts(head, bowl, onScalp(Area.REGROWTH));
    }

    private Rinse rinse(Place.@Nullable Basin basin) {
        return new Rinse(head.id(), Set.of(on), basin, null);
    }

    private static Place.Basin basin(int number) {
        return (Place.Basin) Place.basin(number);
    }

    private Visit visit(Desk desk) {
        return desk.floor().visit(head.id()).orElseThrow();
    }

    private static List<ReasonCode> cautions(Decision decision) {
        return ((Decision.Accepted) decision)
                .cautions().stream().map(Reason::code).toList();
    }

    @Test
    void whoIsRinsedAtABasinIsThere() {
        var desk = Desk.after(story).at("10:40");
        assertThat(cautions(desk.plans(rinse(basin(1))))).isEmpty();
        assertThat(visit(desk).onHair()).isEmpty();
        assertThat(visit(desk).place()).isEqualTo(basin(1));
    }

    @Test
    void aTakenBasinKeepsNobodyFromRinsing() {
        var other = story.arrives();
        other.tells(new StayEvent.Moved(basin(1)));
        assertRinsedWhereItSat(Desk.after(story).at("10:40"));
    }

    @Test
    void norDoesOneThatIsOutOfOrder() {
        story.tells(new DayEvent.BasinClosed(1));
        assertRinsedWhereItSat(Desk.after(story).at("10:40"));
    }

    private void assertRinsedWhereItSat(Desk desk) {
        var before = visit(desk).place();
        assertThat(cautions(desk.plans(rinse(basin(1))))).containsExactly(ReasonCode.BASIN_NOT_FREE);
        assertThat(visit(desk).onHair()).isEmpty();
        assertThat(visit(desk).place()).isEqualTo(before);
    }

    @Test
    void whoIsAtTheBasinAlreadyDoesNotComeAgain() {
        story.at("10:35");
        head.tells(new StayEvent.Moved(basin(2)));
        var desk = Desk.after(story).at("10:40");
        desk.plans(rinse(basin(2)));
        assertThat(visit(desk).stay().placeSince()).isEqualTo(at("10:35"));
        assertThat(desk.floor().facts().stream().filter(fact -> fact.happened().equals(at("10:40"))))
                .hasSize(1);
    }

    @Test
    void whatIsNotOnIsNotRinsedAgain() {
        var desk = Desk.after(story).at("10:40");
        desk.plans(rinse(null));
        var again = desk.at("10:50").reports(rinse(null));
        assertThat(((Decision.Refused) again).reasons()).containsExactly(Reason.of(ReasonCode.NOT_ON));
    }

    @Test
    void whoLeftWithSomethingOnIsRinsedAllTheSame() {
        story.at("10:20");
        head.leaves();
        var desk = Desk.after(story).at("10:40");
        assertThat(visit(desk).isOpen()).isTrue();
        assertThat(cautions(desk.plans(rinse(null)))).isEmpty();
        assertThat(visit(desk).isOpen()).isFalse();
    }

    @Test
    void nobodyLeftBeforeWhatWasPutOnAndTakenOff() {
        var desk = Desk.after(story).at("10:40");
        desk.plans(rinse(null));
        var early = desk.at("10:50").reports(Report.of(head.id(), new StayEvent.Left()), at("10:39"));
        assertThat(((Decision.Refused) early).reasons())
                .extracting(Reason::code)
                .containsExactly(ReasonCode.TOO_EARLY);
    }

    @Test
    void nobodyCameAfterWhatWasPutOn() {
        var desk = Desk.after(story).at("10:40");
        var late = desk.plans(new SetFactBack(head.id().value(), at("10:01")));
        assertThat(((Decision.Refused) late).reasons()).extracting(Reason::code).containsExactly(ReasonCode.TOO_LATE);
    }

    /** A dryer that nobody switched off in the book would warm the next bowl there. */
    @Test
    void waterEndsHeatAndTakingItBackBringsHeatBack() {
        story.at("10:10");
        head.heats(Heat.GENTLE_STEAM);
        var desk = Desk.after(story).at("10:40");
        desk.plans(rinse(basin(1)));
        assertThat(visit(desk).heat()).isEmpty();
        assertThat(visit(desk).heats().get(0).until()).isEqualTo(at("10:40"));
        var rinsed = desk.floor().facts().stream()
                .filter(fact -> fact.happened().equals(at("10:40")))
                .mapToLong(Fact::seq)
                .max()
                .orElseThrow();
        desk.plans(new WithdrawFact(rinsed, Set.of()));
        assertThat(visit(desk).heat()).isPresent();
    }
}

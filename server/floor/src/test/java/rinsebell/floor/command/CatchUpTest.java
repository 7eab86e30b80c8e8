package rinsebell.floor.command;

import static org.assertj.core.api.Assertions.assertThat;
import static rinsebell.floor.testing.Desk.events;
import static rinsebell.floor.testing.Desk.refusal;
import static rinsebell.floor.testing.Scoop.g;
import static rinsebell.floor.testing.Where.offScalp;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import rinsebell.floor.ReasonCode;
import rinsebell.floor.bell.BellKind;
import rinsebell.floor.bowl.DayEvent;
import rinsebell.floor.command.CatchUp.Missed;
import rinsebell.floor.testing.Desk;
import rinsebell.floor.testing.Head;
import rinsebell.floor.testing.Saturday;
import rinsebell.floor.testing.Shelf;
import rinsebell.floor.testing.Story;
import rinsebell.floor.visit.ApplicationId;
import rinsebell.floor.visit.Area;
import rinsebell.floor.visit.Ending;
import rinsebell.floor.visit.LookEvent;
import rinsebell.floor.visit.StayEvent;
import rinsebell.floor.visit.StrandFinding;
import rinsebell.floor.visit.WorkEvent;

/** No server ran from 10:10 to 10:50; a head was looked at, rinsed and left meanwhile. */
class CatchUpTest {
    private final Story story = Story.stocked();
    private final Head head;
    private final ApplicationId on;
    private final Desk desk;

    CatchUpTest() {
        story.at("10:00");
        head = story.arrivesFine();
        on = head.puts(story.mixes(g(60, Shelf.POWDER), g(60, Shelf.DEV20)), offScalp(Area.LENGTHS));
        story.at("10:50");
        story.tells(new DayEvent.Outage(Saturday.at("10:10"), Saturday.at("10:50")));
        desk = Desk.after(story).at("10:55");
    }

    @Test
    void everythingIsToldAtItsTimeInOnePress() {
        var decision = desk.plans(new CatchUp(List.of(left("10:40"), rinsed("10:30"), looked("10:20"))));
        assertThat(events(decision))
                .containsExactly(looked("").event(), rinsed("").event(), new StayEvent.Left(), new DayEvent.CaughtUp());
        var visit = desk.floor().visit(head.id()).orElseThrow();
        var application = visit.application(on).orElseThrow();
        assertThat(application.checks()).extracting(check -> check.at()).containsExactly(Saturday.at("10:20"));
        assertThat(application.ending()).isNotNull().extracting(Ending::at).isEqualTo(Saturday.at("10:30"));
        assertThat(visit.stay().leftAt()).isEqualTo(Saturday.at("10:40"));
        assertThat(desk.floor().day().gaps()).isEmpty();
        assertThat(desk.floor().bells())
                .noneMatch(bell -> Set.of(BellKind.STRAND_CHECK, BellKind.RINSE).contains(bell.kind()));
    }

    @Test
    void oneImpossibleLineKeepsAllOfItOut() {
        var before = desk.floor();
        assertThat(refusal(desk.plans(new CatchUp(List.of(looked("10:20"), rinsed("09:59"))))))
                .containsExactly(ReasonCode.TOO_EARLY);
        assertThat(refusal(desk.plans(new CatchUp(List.of(rinsed("10:20"), looked("10:21"))))))
                .as("it is off by then")
                .isNotEmpty();
        assertThat(refusal(desk.plans(new CatchUp(List.of(looked("10:56"))))))
                .containsExactly(ReasonCode.IN_THE_FUTURE);
        assertThat(desk.floor()).isEqualTo(before);
        assertThat(desk.floor().day().gaps()).hasSize(1);
    }

    /** It happened: a restriction does not keep the truth from being written down. */
    @Test
    void whoLeftWithProductOnIsWrittenDown() {
        assertThat(events(desk.plans(new CatchUp(List.of(left("10:40"))))))
                .containsExactly(new StayEvent.Left(), new DayEvent.CaughtUp());
    }

    @Test
    void nothingMissedIsCaughtUpToo() {
        assertThat(events(desk.plans(new CatchUp(List.of())))).containsExactly(new DayEvent.CaughtUp());
        assertThat(desk.floor().day().gaps()).isEmpty();
    }

    private Missed looked(String time) {
        return missed(new LookEvent.StrandChecked(on, StrandFinding.NOTHING_SAID, null), time);
    }

    private Missed rinsed(String time) {
        return missed(new WorkEvent.TakenOff(Set.of(on), Ending.How.RINSED), time);
    }

    private Missed left(String time) {
        return missed(new StayEvent.Left(), time);
    }

    private Missed missed(rinsebell.floor.visit.VisitEvent event, String time) {
        return new Missed(head.id(), event, time.isEmpty() ? Saturday.TEN : Saturday.at(time));
    }
}

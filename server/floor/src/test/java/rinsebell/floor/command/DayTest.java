package rinsebell.floor.command;

import static org.assertj.core.api.Assertions.assertThat;
import static rinsebell.floor.testing.Desk.events;
import static rinsebell.floor.testing.Desk.isAccepted;
import static rinsebell.floor.testing.Desk.refusal;
import static rinsebell.floor.testing.Saturday.DATE;
import static rinsebell.floor.testing.Scoop.g;
import static rinsebell.floor.testing.Where.offScalp;

import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rinsebell.floor.Decision;
import rinsebell.floor.Draft;
import rinsebell.floor.ReasonCode;
import rinsebell.floor.Stream;
import rinsebell.floor.bell.BellKind;
import rinsebell.floor.bowl.BowlId;
import rinsebell.floor.bowl.BowlReason;
import rinsebell.floor.bowl.DayEvent;
import rinsebell.floor.salon.Place;
import rinsebell.floor.salon.Service;
import rinsebell.floor.testing.Desk;
import rinsebell.floor.testing.Gates;
import rinsebell.floor.testing.Head;
import rinsebell.floor.testing.Ringing;
import rinsebell.floor.testing.Saturday;
import rinsebell.floor.testing.Shelf;
import rinsebell.floor.testing.Story;
import rinsebell.floor.visit.Area;
import rinsebell.floor.visit.ClientId;
import rinsebell.floor.visit.Gate;
import rinsebell.floor.visit.StayEvent;
import rinsebell.floor.visit.VisitId;

/** Welcoming, seeing bells, dividing bowls, ending the day. */
class DayTest {
    private final Story story = Story.stocked();
    private final Head head = story.at("09:50").arrivesFine();
    private final BowlId bowl = story.at("09:55").mixes(g(60, Shelf.POWDER), g(60, Shelf.DEV30));
    private final Desk desk = Desk.after(story).at("10:00");

    @Test
    void whoIsWelcomedSitsWhereTheyWerePutWithWhatIsKnownAtTheGate() {
        var arrival = new StayEvent.Arrived(Place.chair(4), story.stylist(), null, new ClientId(7));
        var decision = desk.plans(new Welcome(arrival, "AB", Gates.FINE));
        var id = new VisitId(desk.last() - 1);
        var visit = desk.floor().visit(id).orElseThrow();
        assertThat(visit.place()).isEqualTo(Place.chair(4));
        assertThat(visit.gate()).isEqualTo(Gates.FINE);
        assertThat(visit.stay().client()).isEqualTo(new ClientId(7));
        assertThat(visit.stay().arrivedAt()).isEqualTo(desk.now());
        assertThat(((Decision.Accepted) decision).drafts())
                .extracting(Draft::text)
                .containsExactly("AB", null);
        assertThat(desk.floor().at(Place.chair(4))).containsExactly(visit);
    }

    @Test
    void whereNothingIsKnownAtTheGateNothingIsAnswered() {
        var arrival = new StayEvent.Arrived(Place.BENCH, null, null, null);
        assertThat(events(desk.plans(new Welcome(arrival, "AB", Gate.UNANSWERED, List.of(Service.CUT)))))
                .containsExactly(arrival, new StayEvent.ServicesListed(List.of(Service.CUT)));
        assertThat(events(desk.plans(new Welcome(arrival, "AB", Gate.UNANSWERED))))
                .containsExactly(arrival);
    }

    @Test
    void aDividedBowlKeepsItsMixingTimeAndIsForSomebodyElse() {
        desk.plans(new DivideBowl(bowl, BowlReason.NEXT_AREA, head.id()));
        var part = desk.floor().bowl(new BowlId(desk.last())).orElseThrow();
        assertThat(part.mixedAt()).isEqualTo(Saturday.at("09:55"));
        assertThat(part.root()).isEqualTo(bowl);
        assertThat(part.forVisit()).isEqualTo(head.id());
        assertThat(part.portions())
                .isEqualTo(desk.floor().bowl(bowl).orElseThrow().portions());
        assertThat(desk.floor().bowl(bowl).orElseThrow().divided()).isTrue();
        assertThat(isAccepted(desk.plans(new DivideBowl(part.id(), BowlReason.FIRST, null))))
                .as("divided again")
                .isTrue();
    }

    @Test
    void whatIsFilledInCountsForEveryPart() {
        desk.plans(new Mix(java.util.List.of(), BowlReason.FIRST, null));
        var whole = new BowlId(desk.last());
        desk.plans(new DivideBowl(whole, BowlReason.FIRST, null));
        var part = new BowlId(desk.last());
        desk.plans(new FillRecipe(part, story.weighed(g(60, Shelf.POWDER), g(60, Shelf.DEV30))));
        assertThat(desk.floor().bowl(whole).orElseThrow().portions())
                .isEqualTo(desk.floor().bowl(part).orElseThrow().portions())
                .hasSize(2);
    }

    // The waiting bowl asks from 10:01 on, which is no alarm yet, and rings from 10:10 on.
    @ParameterizedTest
    @CsvSource({
        "10:00:59.999, false, false",
        "10:01, true, false",
        "10:09:59.999, true, false",
        "10:10, true, true",
        "10:10:00.001, true, true"
    })
    void aBellIsSeenOnceItHasCome(String clock, boolean accepted, boolean seen) {
        var key = Ringing.bell(desk.floor(), BellKind.BOWL_WAITING).key();
        desk.at(clock);
        var decision = desk.plans(new Acknowledge(key, "on its way"));
        assertThat(isAccepted(decision)).isEqualTo(accepted);
        assertThat(Ringing.bell(desk.floor(), BellKind.BOWL_WAITING).isSeen(desk.now()))
                .isEqualTo(seen);
        if (!accepted) {
            assertThat(refusal(decision)).containsExactly(ReasonCode.BELL_NOT_RINGING);
        }
    }

    @Test
    void aBellOfAHeadIsSeenInThatVisitAndABowlsInTheDay() {
        var on = head.puts(bowl, offScalp(Area.LENGTHS));
        story.at("10:30");
        var later = Desk.after(story).at("10:30");
        var ofHead = Ringing.bell(later.floor(), BellKind.LAST_ON_MISSING).key();
        var decision = (Decision.Accepted) later.plans(new Acknowledge(ofHead, "soon"));
        assertThat(decision.drafts()).extracting(Draft::stream).containsExactly(Stream.visit(head.id()));
        assertThat(decision.drafts()).extracting(Draft::text).containsExactly("soon");
        assertThat(on.value()).isEqualTo(ofHead.subject());
        desk.at("10:02");
        var ofBowl = Ringing.bell(desk.floor(), BellKind.BOWL_WAITING).key();
        var seen = (Decision.Accepted) desk.plans(new Acknowledge(ofBowl, null));
        assertThat(seen.drafts()).extracting(Draft::stream).containsExactly(Stream.day(DATE));
    }

    @Test
    void theDayEndsForWhomNothingIsOnAndTheOthersStayAndRing() {
        head.puts(bowl, offScalp(Area.LENGTHS));
        var forgotten = story.arrivesFine();
        var evening = Desk.after(story).at("20:00");
        var decision = evening.plans(new EndDay(DATE.plusDays(1)));
        assertThat(events(decision)).containsExactly(new StayEvent.Left(), new DayEvent.DayEnded());
        assertThat(evening.floor().openVisits()).extracting(visit -> visit.id()).containsExactly(head.id());
        assertThat(evening.floor().visit(forgotten.id()).orElseThrow().isOpen()).isFalse();
        assertThat(evening.floor().bells().stream()
                        .filter(bell -> bell.kind() == BellKind.RINSE)
                        .anyMatch(bell -> bell.at(evening.now()).isPresent()))
                .isTrue();
    }

    @Test
    void aDayThatEndsAtNoonOfTheNextClosesNobodyWhoCameThatMorning() {
        var next = DATE.plusDays(1);
        story.at(Saturday.on(next, "09:00"));
        var came = story.arrivesFine();
        var went = story.arrivesFine();
        var used = story.mixes(g(60, Shelf.MILD_CREAM), g(60, Shelf.DEV20));
        var on = went.puts(used, offScalp(Area.LENGTHS));
        story.at(Saturday.on(next, "09:40"));
        went.rinses(on);
        went.leaves();
        story.at(Saturday.on(next, "12:00"));
        var noon = Desk.after(story);
        assertThat(events(noon.plans(new EndDay(next)))).containsExactly(new StayEvent.Left(), new DayEvent.DayEnded());
        assertThat(noon.floor().openVisits()).extracting(visit -> visit.id()).containsExactly(came.id());
        var turned = noon.floor().turned(noon.now());
        assertThat(turned.visits()).extracting(visit -> visit.id()).containsExactly(came.id(), went.id());
        assertThat(turned.bells()).noneMatch(bell -> bell.kind() == BellKind.BOWL_WAITING);
    }

    /** As after an outage, which restarts are too short for and which concerns nobody in an empty salon. */
    @ParameterizedTest
    @CsvSource({"59999, true, 0", "60000, true, 1", "1380000, true, 1", "1380000, false, 0"})
    void timeThatPassedUncountedIsCaughtUpOn(long millis, boolean isHere, int gaps) {
        var desk = Desk.after(Story.stocked()).at("10:00");
        if (isHere) {
            desk.plans(new Welcome(new StayEvent.Arrived(Place.BENCH, null, null, null), "M. A.", Gate.UNANSWERED));
        }
        var since = desk.now().minusSeconds(90);
        var visits = List.copyOf(desk.floor().visits());
        desk.plans(new MissTime(Duration.ofMillis(millis), since));
        assertThat(desk.floor().day().gaps()).hasSize(gaps).allSatisfy(gap -> {
            assertThat(gap.from()).isEqualTo(since);
            assertThat(gap.until()).isEqualTo(since.plusMillis(millis));
        });
        assertThat(desk.floor().visits()).as("what was recorded stands").containsExactlyElementsOf(visits);
        desk.plans(new CatchUp(List.of()));
        assertThat(desk.floor().day().gaps()).isEmpty();
    }

    @Test
    void breaksBasinsAndOutagesAreToldOfTheDay() {
        desk.plans(new OnDay(new DayEvent.BreakBegan(story.stylist())));
        assertThat(desk.floor().day().onBreak()).containsExactly(story.stylist());
        desk.plans(new OnDay(new DayEvent.BreakEnded(story.stylist())));
        assertThat(desk.floor().day().onBreak()).isEmpty();
        desk.plans(new OnDay(new DayEvent.BasinClosed(1)));
        assertThat(desk.floor().day().closedBasins()).containsOnlyKeys(1);
        desk.plans(new OnDay(new DayEvent.BasinOpened(1)));
        assertThat(desk.floor().day().closedBasins()).isEmpty();
        desk.plans(new OnDay(new DayEvent.Outage(Saturday.at("09:00"), Saturday.at("09:30"))));
        assertThat(desk.floor().day().gaps()).hasSize(1);
        desk.plans(new OnDay(new DayEvent.CaughtUp()));
        assertThat(desk.floor().day().gaps()).isEmpty();
    }
}

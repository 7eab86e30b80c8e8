package rinsebell.floor;

import static org.assertj.core.api.Assertions.assertThat;
import static rinsebell.floor.testing.Saturday.TEN;
import static rinsebell.floor.testing.Saturday.at;
import static rinsebell.floor.testing.Saturday.minutes;
import static rinsebell.floor.testing.Scoop.g;
import static rinsebell.floor.testing.Where.offScalp;
import static rinsebell.floor.testing.Where.onScalp;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import rinsebell.floor.bell.BellKey;
import rinsebell.floor.bell.BellKind;
import rinsebell.floor.bell.Priority;
import rinsebell.floor.bell.Stage;
import rinsebell.floor.bowl.BowlId;
import rinsebell.floor.bowl.DayEvent;
import rinsebell.floor.product.Cover;
import rinsebell.floor.product.Heat;
import rinsebell.floor.salon.Place;
import rinsebell.floor.testing.Head;
import rinsebell.floor.testing.Ringing;
import rinsebell.floor.testing.Saturday;
import rinsebell.floor.testing.Shelf;
import rinsebell.floor.testing.Story;
import rinsebell.floor.visit.Application;
import rinsebell.floor.visit.ApplicationId;
import rinsebell.floor.visit.Area;
import rinsebell.floor.visit.CheckDecision;
import rinsebell.floor.visit.Complaint;
import rinsebell.floor.visit.LookEvent;
import rinsebell.floor.visit.ScalpCheck;
import rinsebell.floor.visit.StayEvent;
import rinsebell.floor.visit.WorkEvent;

/** The same facts give the same floor. */
class FoldTest {
    private final Story story = Story.stocked();
    private final Head head = story.at("09:50").arrivesFine();
    private final BowlId bowl = story.at("09:55").mixes(g(60, Shelf.MILD_CREAM), g(60, Shelf.DEV20));
    private final ApplicationId on = story.at("10:00").puts(head, bowl, onScalp(Area.REGROWTH));

    private boolean isOn() {
        return head.visit().application(on).isPresent();
    }

    private java.time.Instant firstOn() {
        return head.visit().application(on).orElseThrow().firstOn();
    }

    @Test
    void withdrawnDidNotHappenAndWithdrawingThatBringsItBack() {
        assertThat(isOn()).isTrue();
        var once = story.at("10:10").withdraws(on.value());
        assertThat(isOn()).isFalse();
        var twice = story.withdraws(once);
        assertThat(isOn()).isTrue();
        var thrice = story.withdraws(twice);
        assertThat(isOn()).isFalse();
        story.withdraws(thrice);
        assertThat(isOn()).isTrue();
    }

    @Test
    void withdrawnTwiceComesBackOnlyWhenBothAreWithdrawn() {
        var one = story.at("10:10").withdraws(on.value());
        var other = story.withdraws(on.value());
        story.withdraws(one);
        assertThat(isOn()).isFalse();
        story.withdraws(other);
        assertThat(isOn()).isTrue();
    }

    @Test
    void ofSeveralSetBacksTheLatestByNumberWinsWheneverItWasSaid() {
        story.at("10:20").setsBack(on.value(), "09:58");
        story.at("10:10").setsBack(on.value(), "09:59");
        assertThat(firstOn()).isEqualTo(at("09:59"));
    }

    @Test
    void aWithdrawnSetBackLeavesTheOneBefore() {
        story.setsBack(on.value(), "09:58");
        var latest = story.setsBack(on.value(), "09:59");
        story.withdraws(latest);
        assertThat(firstOn()).isEqualTo(at("09:58"));
    }

    @Test
    void factsAreFoldedInTheOrderInWhichTheyHappened() {
        story.at("10:20");
        var heat = head.heats(Heat.GENTLE_STEAM);
        story.at("10:30");
        head.heatOff();
        assertThat(head.visit().heat()).isEmpty();
        story.setsBack(heat, "10:40");
        assertThat(head.visit().heat())
                .as("the heat began after it was put off")
                .isPresent();
    }

    @Test
    void ofTwoAtOnceTheNumberDecides() {
        story.at("10:20");
        head.tells(new StayEvent.Moved(Place.BENCH));
        head.tells(new StayEvent.Moved(Place.basin(1)));
        assertThat(head.visit().place()).isEqualTo(Place.basin(1));
    }

    @Test
    void whatIsSaidOfSomethingWithdrawnChangesNothing() {
        story.at("10:05");
        head.lastOn(on);
        head.checks(on);
        var before = head.visit();
        var gone = story.withdraws(on.value());
        assertThat(head.visit().applications()).isEmpty();
        story.withdraws(gone);
        assertThat(head.visit()).isEqualTo(before);
    }

    /** Rinsed at 10:31, said late; that a toner has been on the same area since 10:28 is said later still. */
    @Test
    void aRinseDoesNotEndWhatIsSaidToHaveGoneOverItWithoutBeingNamed() {
        story.at("10:31");
        head.rinses(on);
        story.at("10:28");
        var toner = head.puts(story.mixes(g(40, Shelf.TONER), g(80, Shelf.DEV10)), onScalp(Area.REGROWTH));
        assertThat(head.visit().onHair()).extracting(Application::id).containsExactly(toner);
        assertThat(Ringing.bell(story.floor(), BellKind.RINSE).stages()).isNotEmpty();
    }

    @Test
    void aRinseThatNamesTheUpperBowlEndsWhatLiesUnderIt() {
        story.at("10:20");
        var over = head.puts(story.mixes(g(60, Shelf.MILD_CREAM), g(60, Shelf.DEV20)), onScalp(Area.REGROWTH));
        story.at("10:31");
        head.rinses(over);
        assertThat(head.visit().onHair()).isEmpty();
    }

    @Test
    void aVisitWithoutAnArrivalIsNone() {
        var arrival = story.withdraws(head.id().value());
        assertThat(story.floor().visit(head.id())).isEmpty();
        story.withdraws(arrival);
        assertThat(story.floor().visit(head.id())).isPresent();
    }

    @ParameterizedTest
    @ValueSource(longs = {-3_600_000, -1, 1, 90_000, 3_600_000})
    void aShiftOfTheClockMovesEveryInstantAlike(long millis) {
        var eventful = eventful();
        var by = Duration.ofMillis(millis);
        var moved = eventful.facts().stream().map(fact -> movedByHand(fact, by)).toList();
        eventful.shiftsClock(by);
        var shifted = eventful.floor();
        var expected = Floor.of(moved);
        assertThat(shifted.visits()).containsExactlyElementsOf(expected.visits());
        assertThat(shifted.day()).isEqualTo(expected.day());
        assertThat(shifted.salon()).isEqualTo(expected.salon());
    }

    private static Fact movedByHand(Fact fact, Duration by) {
        var event = fact.event();
        if (event instanceof Correction.SetBack back) {
            event = new Correction.SetBack(back.of(), back.to().plus(by));
        } else if (event instanceof DayEvent.Outage gap) {
            event = new DayEvent.Outage(gap.from().plus(by), gap.until().plus(by));
        }
        return new Fact(fact.seq(), fact.stream(), fact.happened().plus(by), fact.recorded(), fact.by(), event);
    }

    @Test
    void shiftsAddUpAndMoveOnlyWhatWasSaidBefore() {
        story.at("10:10").shiftsClock(minutes(10));
        story.at("10:21");
        var check = head.checks(on);
        story.at("10:22").shiftsClock(minutes(-3));
        var application = head.visit().application(on).orElseThrow();
        assertThat(application.firstOn()).isEqualTo(at("10:07"));
        assertThat(application.checks()).extracting(one -> one.seq()).containsExactly(check);
        assertThat(application.checks()).extracting(one -> one.at()).containsExactly(at("10:18"));
    }

    @Test
    void aWithdrawnShiftMovesNothing() {
        var shift = story.at("10:10").shiftsClock(minutes(10));
        assertThat(firstOn()).isEqualTo(at("10:10"));
        story.withdraws(shift);
        assertThat(firstOn()).isEqualTo(TEN);
    }

    @Test
    void aSetBackSaidAfterAShiftIsInTheNewTime() {
        story.at("10:10").setsBack(on.value(), "09:58");
        story.shiftsClock(minutes(10));
        assertThat(firstOn()).isEqualTo(at("10:08"));
        story.at("10:21").setsBack(on.value(), "10:05");
        assertThat(firstOn()).isEqualTo(at("10:05"));
    }

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 200);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void anyOrderOfArrivalGivesTheSameFloor(long seed) {
        var random = new Random(seed);
        var facts = new ArrayList<>(eventful().facts());
        var expected = Floor.of(facts);
        Collections.shuffle(facts, random);
        assertThat(Floor.of(facts)).as("seed %d, at once", seed).isEqualTo(expected);
        assertThat(inParts(facts, random)).as("seed %d, in parts", seed).isEqualTo(expected);
    }

    private static Floor inParts(List<Fact> facts, Random random) {
        var floor = Floor.EMPTY;
        for (var from = 0; from < facts.size(); ) {
            var to = Math.min(facts.size(), from + 1 + random.nextInt(5));
            floor = floor.with(facts.subList(from, to));
            from = to;
        }
        return floor;
    }

    @Test
    void factByFactGivesTheSameFloorAtEachStep() {
        var facts = eventful().facts();
        var floor = Floor.EMPTY;
        for (var step : IntStream.range(0, facts.size()).toArray()) {
            floor = floor.with(facts.subList(step, step + 1));
            assertThat(floor).as("after fact %d", step + 1).isEqualTo(Floor.of(facts.subList(0, step + 1)));
        }
    }

    @Test
    void aFloorStaysAsItWasWhateverComesAfterIt() {
        var facts = eventful().facts();
        var half = Floor.of(facts.subList(0, facts.size() / 2));
        var more = half.with(facts.subList(facts.size() / 2, facts.size()));
        assertThat(more).isEqualTo(Floor.of(facts));
        assertThat(half).isEqualTo(Floor.of(facts.subList(0, facts.size() / 2)));
    }

    @Test
    void nothingMoreIsTheSameFloor() {
        var floor = story.floor();
        assertThat(floor.with(List.of())).isSameAs(floor);
    }

    @Test
    void everythingOfAVisitHangsOnItsArrivalAndOfABowlOnItsMixing() {
        story.at("10:05");
        var lastOn = head.lastOn(on);
        var look = head.scalpIs(ScalpCheck.Finding.FINE);
        var floor = story.floor();
        assertThat(floor.hangingOn(on.value())).containsExactly(lastOn);
        assertThat(floor.hangingOn(bowl.value())).containsExactly(on.value(), lastOn);
        assertThat(floor.hangingOn(head.id().value())).contains(on.value(), lastOn, look);
        assertThat(floor.hangingOn(lastOn)).isEmpty();
    }

    @Test
    void aDayTurnsWithoutWhatHasEnded() {
        story.at("10:40");
        head.rinses(on);
        head.leaves();
        var stays = story.at("18:00").arrivesFine();
        var floor = story.floor();
        var sameDay = floor.turned(Saturday.on(Saturday.DATE.plusDays(1), "03:59:59.999"));
        assertThat(sameDay.visits()).extracting(visit -> visit.id()).containsExactly(head.id(), stays.id());
        assertThat(sameDay.bowl(bowl)).isPresent();
        assertThat(sameDay.lastSeq()).isEqualTo(floor.lastSeq());
        var nextDay = floor.turned(Saturday.on(Saturday.DATE.plusDays(1), "04:00"));
        assertThat(nextDay.visits()).extracting(visit -> visit.id()).containsExactly(stays.id());
        assertThat(nextDay.bowl(bowl)).as("somebody is still here").isPresent();
        stays.leaves();
        var empty = story.floor().turned(Saturday.on(Saturday.DATE.plusDays(1), "04:00"));
        assertThat(empty.visits()).isEmpty();
        assertThat(empty.day().bowls()).isEmpty();
        assertThat(empty.salon()).isEqualTo(floor.salon());
    }

    /**
     * A machine that lost its time went on at 19:05 of the day before. What was recorded until somebody confirmed the
     * time lies with that day, and the visit came on the next by the right clock.
     */
    @Test
    void aDayTurnsWithAllThatAnOpenVisitRestsOnWhereverTheClockStoodThen() {
        var evening = Story.stocked();
        var before = evening.at("19:00").mixes(g(60, Shelf.POWDER), g(60, Shelf.DEV30));
        var mia = evening.at("19:05").arrivesFine();
        var after = evening.at("19:06").mixes(g(60, Shelf.MILD_CREAM), g(60, Shelf.DEV20));
        evening.at("19:10").puts(mia, before, offScalp(Area.FOILS_ALL).under(Cover.FOIL));
        evening.puts(mia, after, onScalp(Area.REGROWTH));
        evening.tells(new DayEvent.ClockShifted(Duration.ofHours(14)));
        var floor = evening.floor();
        var turned = floor.turned(Saturday.on(Saturday.DATE.plusDays(1), "09:10"));
        assertThat(turned.visits()).containsExactlyElementsOf(floor.visits());
        assertThat(turned.bowl(before)).isEqualTo(floor.bowl(before)).isPresent();
        assertThat(turned.bowl(after)).isEqualTo(floor.bowl(after)).isPresent();
        assertThat(turned.bells()).isEqualTo(floor.bells()).isNotEmpty();
    }

    /** A day with every kind of fact, corrections of corrections among them, told out of order. */
    private static Story eventful() {
        var story = Story.stocked();
        var mia = story.at("09:40").arrivesFine();
        var noa = story.at("09:45").arrives();
        var cream = story.at("09:50").mixes(g(60, Shelf.MILD_CREAM), g(60, Shelf.DEV20));
        var powder = story.at("09:52").mixes(g(60, Shelf.POWDER), g(60, Shelf.DEV30));
        var part = story.at("09:53").divides(powder);
        var unknown = story.at("09:54").mixes();
        var regrowth = story.at("10:00").puts(mia, cream, onScalp(Area.REGROWTH).planned(minutes(40)));
        var foils = story.at("10:02").puts(mia, powder, offScalp(Area.FOILS_ALL).under(Cover.FOIL));
        var ends = story.at("10:04").puts(noa, unknown, offScalp(Area.ENDS));
        var lastOn = story.at("10:10").tells(mia, new WorkEvent.LastOn(regrowth));
        story.at("10:05").tells(mia, new WorkEvent.HeatOn(Heat.GENTLE_STEAM));
        var heatOff = story.at("10:15").tells(mia, new WorkEvent.HeatOff());
        var check = story.at("10:12")
                .tells(mia, new LookEvent.StrandChecked(regrowth, FINDING, CheckDecision.lookAgain(minutes(5))));
        story.at("10:13").tells(mia, new LookEvent.ScalpChecked(ScalpCheck.Finding.PINK, null));
        story.at("10:14").tells(mia, new LookEvent.Complained(Complaint.Grade.TINGLING));
        story.at("10:16")
                .tells(
                        mia,
                        new BellAcknowledged(
                                new BellKey(BellKind.STRAND_CHECK, regrowth.value(), check),
                                Stage.Step.DUE,
                                Priority.SILENT,
                                Set.of(),
                                false));
        story.at("10:17").fills(unknown, g(40, Shelf.REMOVER));
        story.at("10:18").tells(noa, new WorkEvent.CoverChanged(ends, Cover.FILM));
        story.at("10:19").tells(noa, new StayEvent.Moved(Place.BENCH));
        story.at("10:20").tells(mia, new WorkEvent.FoilsOut(foils));
        story.tells(new DayEvent.ThrownAway(part));
        story.tells(new DayEvent.BreakBegan(story.stylist()));
        story.tells(new DayEvent.BasinClosed(2));
        var outage = story.tells(new DayEvent.Outage(at("10:06"), at("10:08")));
        story.tells(new DayEvent.Outage(at("10:07"), at("10:09")));
        var shift = story.at("10:21").shiftsClock(minutes(2));
        story.at("10:25").setsBack(lastOn, "10:09");
        var back = story.setsBack(lastOn, "10:11");
        story.withdraws(back);
        var gone = story.withdraws(heatOff);
        story.withdraws(gone);
        story.withdraws(outage);
        story.at("10:26").tells(mia, new WorkEvent.Planned(regrowth, minutes(45)));
        story.at("10:30").shiftsClock(minutes(-1));
        story.withdraws(shift);
        var over = story.at("10:31").puts(mia, cream, onScalp(Area.REGROWTH));
        story.at("10:33").tells(mia, new WorkEvent.Emulsified(over));
        mia.rinses(over, foils);
        story.at("10:35").tells(mia, new WorkEvent.TowelDried());
        story.tells(mia, new LookEvent.LiftJudged(false));
        story.tells(mia, new LookEvent.RoundsStopped());
        mia.leaves();
        story.tells(new DayEvent.BreakEnded(story.stylist()));
        story.tells(new DayEvent.BasinOpened(2));
        return story;
    }

    private static final rinsebell.floor.visit.StrandFinding FINDING = rinsebell.floor.visit.StrandFinding.NOTHING_SAID;
}

package rinsebell.floor.command;

import static org.assertj.core.api.Assertions.assertThat;
import static rinsebell.floor.testing.Desk.isAccepted;
import static rinsebell.floor.testing.Desk.refusal;
import static rinsebell.floor.testing.Saturday.at;
import static rinsebell.floor.testing.Scoop.g;
import static rinsebell.floor.testing.Where.offScalp;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rinsebell.floor.Asked;
import rinsebell.floor.Command;
import rinsebell.floor.Decision;
import rinsebell.floor.ReasonCode;
import rinsebell.floor.bowl.BowlId;
import rinsebell.floor.bowl.BowlReason;
import rinsebell.floor.bowl.DayEvent;
import rinsebell.floor.product.Cover;
import rinsebell.floor.product.Heat;
import rinsebell.floor.product.Zone;
import rinsebell.floor.salon.Place;
import rinsebell.floor.testing.Desk;
import rinsebell.floor.testing.Gates;
import rinsebell.floor.testing.Head;
import rinsebell.floor.testing.Shelf;
import rinsebell.floor.testing.Story;
import rinsebell.floor.visit.ApplicationId;
import rinsebell.floor.visit.Area;
import rinsebell.floor.visit.Complaint;
import rinsebell.floor.visit.Ending;
import rinsebell.floor.visit.Gate;
import rinsebell.floor.visit.LookEvent;
import rinsebell.floor.visit.ScalpCheck;
import rinsebell.floor.visit.StayEvent;
import rinsebell.floor.visit.StrandFinding;
import rinsebell.floor.visit.WorkEvent;

/** An instant typed by hand lies between the earliest at which it can have happened, and now. */
class TypedInstantTest {
    private static final Duration MILLI = Duration.ofMillis(1);
    private static final Instant NOW = at("10:30");

    // Arrived 09:40, mixed 09:45, the second bowl 09:46, first on 09:50 and 09:51, heat on 10:00.
    private final Story story = Story.stocked();
    private final Head head = story.at("09:40").arrivesFine();
    private final BowlId bowl = story.at("09:45").mixes(g(60, Shelf.MILD_CREAM), g(60, Shelf.DEV20));
    private final BowlId fresh = story.at("09:46").mixes(g(60, Shelf.MILD_CREAM), g(60, Shelf.DEV20));
    private final ApplicationId on = story.at("09:50").puts(head, bowl, offScalp(Area.LENGTHS));
    private final ApplicationId later = story.at("09:51").puts(head, bowl, offScalp(Area.ENDS));

    private Desk desk() {
        story.at("10:00");
        head.heats(Heat.GENTLE_STEAM);
        return Desk.after(story).at(NOW);
    }

    private record Row(String name, Instant earliest, Function<TypedInstantTest, Command> command) {
        @Override
        public String toString() {
            return name;
        }
    }

    private static Row row(String name, String earliest, Function<TypedInstantTest, Command> command) {
        return new Row(name, at(earliest), command);
    }

    static Stream<Row> presses() {
        // Nothing of a day is typed in further back than twelve hours: 22:30 on the day before.
        var dayBack = NOW.minus(Duration.ofHours(12));
        return Stream.of(
                row(
                        "put on",
                        "09:46",
                        test -> Report.of(
                                test.head.id(),
                                new WorkEvent.PutOn(test.fresh, Area.HAIRLINE, Zone.OFF_SCALP, Cover.OPEN, null))),
                row("last on", "09:50", test -> Report.of(test.head.id(), new WorkEvent.LastOn(test.on))),
                row(
                        "strand",
                        "09:50",
                        test -> Report.of(
                                test.head.id(),
                                new LookEvent.StrandChecked(test.on, StrandFinding.NOTHING_SAID, null))),
                row(
                        "cover",
                        "09:50",
                        test -> Report.of(test.head.id(), new WorkEvent.CoverChanged(test.on, Cover.FOIL))),
                row("foils out", "09:50", test -> Report.of(test.head.id(), new WorkEvent.FoilsOut(test.on))),
                row(
                        "rinse one",
                        "09:50",
                        test -> Report.of(test.head.id(), new WorkEvent.TakenOff(Set.of(test.on), Ending.How.RINSED))),
                row(
                        "rinse both",
                        "09:51",
                        test -> Report.of(
                                test.head.id(),
                                new WorkEvent.TakenOff(Set.of(test.on, test.later), Ending.How.RINSED))),
                row(
                        "scalp",
                        "09:40",
                        test -> Report.of(test.head.id(), new LookEvent.ScalpChecked(ScalpCheck.Finding.FINE, null))),
                row(
                        "discomfort",
                        "09:40",
                        test -> Report.of(test.head.id(), new LookEvent.Complained(Complaint.Grade.BURNING))),
                row("gate", "09:40", test -> Report.of(test.head.id(), new StayEvent.GateAnswered(Gates.FINE))),
                row("move", "09:40", test -> Report.of(test.head.id(), new StayEvent.Moved(Place.BENCH))),
                row("heat off", "10:00", test -> Report.of(test.head.id(), new WorkEvent.HeatOff())),
                row("divide", "09:46", test -> new DivideBowl(test.fresh, BowlReason.FIRST, null)),
                row("throw away", "09:45", test -> new ThrowAway(test.bowl)),
                row("fill", "09:45", test -> new FillRecipe(test.bowl, test.story.weighed(g(60, Shelf.POWDER)))),
                new Row("mix", dayBack, test -> new Mix(List.of(), BowlReason.FIRST, null)),
                new Row(
                        "welcome",
                        dayBack,
                        test -> new Welcome(
                                new StayEvent.Arrived(Place.BENCH, null, null, null), "AB", Gate.UNANSWERED)),
                new Row(
                        "already on",
                        dayBack,
                        test -> new PutAlready(test.head.id(), Area.HAIRLINE, Zone.OFF_SCALP, Cover.OPEN)),
                new Row("basin closed", dayBack, test -> new OnDay(new DayEvent.BasinClosed(1))));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("presses")
    void liesBetweenTheEarliestAndNow(Row row) {
        assertThat(isAccepted(typed(row, row.earliest.plus(MILLI))))
                .as("just after the earliest")
                .isTrue();
        assertThat(isAccepted(typed(row, row.earliest))).as("at the earliest").isTrue();
        assertThat(refusal(typed(row, row.earliest.minus(MILLI))))
                .as("just before the earliest")
                .containsExactly(ReasonCode.TOO_EARLY);
        assertThat(isAccepted(typed(row, NOW.minus(MILLI))))
                .as("just before now")
                .isTrue();
        assertThat(isAccepted(typed(row, NOW))).as("now").isTrue();
        assertThat(refusal(typed(row, NOW.plus(MILLI)))).as("just after now").containsExactly(ReasonCode.IN_THE_FUTURE);
    }

    /** A press that was on its way is not refused for its time: it is put right, and marked. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("presses")
    void anInstantReckonedFromAnAgeIsPutRight(Row row) {
        assertThat(byAge(row, row.earliest.plus(MILLI)))
                .as("just after the earliest")
                .isEqualTo(row.earliest.plus(MILLI) + " sure");
        assertThat(byAge(row, row.earliest)).as("at the earliest").isEqualTo(row.earliest + " sure");
        assertThat(byAge(row, row.earliest.minus(MILLI)))
                .as("just before the earliest")
                .isEqualTo(row.earliest + " unsure");
        assertThat(byAge(row, Instant.EPOCH)).as("absurd").isEqualTo(row.earliest + " unsure");
        assertThat(byAge(row, NOW)).as("now").isEqualTo(NOW + " sure");
    }

    private String byAge(Row row, Instant reckoned) {
        var desk = desk();
        var asked = Asked.at(NOW).asFact().happened(reckoned, Asked.Told.BY_AGE);
        var accepted = (Decision.Accepted) desk.presses(row.command.apply(this), asked);
        var fact = desk.floor().fact(desk.last()).orElseThrow();
        assertThat(fact.event())
                .isEqualTo(accepted.drafts().get(accepted.drafts().size() - 1).event());
        return fact.happened() + (fact.unsure() ? " unsure" : " sure");
    }

    /** What is refused for another reason too is refused for that alone. */
    @Test
    void whatIsRefusedForMoreThanItsTimeStaysRefused() {
        var desk = desk();
        var lastOn = Report.of(head.id(), new WorkEvent.LastOn(new ApplicationId(999)));
        var byAge = Asked.at(NOW).happened(at("09:00"), Asked.Told.BY_AGE);
        assertThat(refusal(desk.reports(lastOn, at("09:00")))).containsExactly(ReasonCode.NOT_ON, ReasonCode.TOO_EARLY);
        assertThat(refusal(desk.presses(lastOn, byAge))).containsExactly(ReasonCode.NOT_ON);
    }

    @Test
    void whatSomebodyTypesOfAnUnsureInstantIsSure() {
        var desk = desk();
        desk.presses(
                Report.of(head.id(), new WorkEvent.LastOn(on)),
                Asked.at(NOW).asFact().happened(at("09:00"), Asked.Told.BY_AGE));
        var seq = desk.last();
        assertThat(desk.floor().standing(seq).orElseThrow().unsure()).isTrue();
        desk.plans(new SetFactBack(seq, at("10:01")));
        assertThat(desk.floor().standing(seq).orElseThrow().unsure()).isFalse();
    }

    private rinsebell.floor.Decision typed(Row row, Instant when) {
        return desk().reports(row.command.apply(this), when);
    }

    @ParameterizedTest
    @MethodSource("bounds")
    void aSetBackLiesBetweenWhatCameBeforeAndWhatCameOfIt(String which, String to, boolean accepted) {
        var lastOn = story.at("09:58");
        var number = head.lastOn(on);
        var seq = switch (which) {
            case "mixed" -> bowl.value();
            case "put on" -> on.value();
            case "last on" -> number;
            default -> head.id().value();
        };
        var desk = Desk.after(lastOn).at(NOW);
        assertThat(isAccepted(desk.plans(new SetFactBack(seq, at(to))))).isEqualTo(accepted);
        if (accepted) {
            assertThat(desk.floor().standing(seq).orElseThrow().happened()).isEqualTo(at(to));
        }
    }

    static Stream<Object[]> bounds() {
        return Stream.of(
                new Object[] {"mixed", "09:49:59.999", true},
                new Object[] {"mixed", "09:50", true},
                new Object[] {"mixed", "09:50:00.001", false},
                new Object[] {"mixed", "03:00", true},
                new Object[] {"put on", "09:44:59.999", false},
                new Object[] {"put on", "09:45", true},
                new Object[] {"put on", "09:45:00.001", true},
                new Object[] {"put on", "09:57:59.999", true},
                new Object[] {"put on", "09:58", true},
                new Object[] {"put on", "09:58:00.001", false},
                new Object[] {"last on", "09:49:59.999", false},
                new Object[] {"last on", "09:50", true},
                new Object[] {"last on", "09:50:00.001", true},
                new Object[] {"last on", "10:29:59.999", true},
                new Object[] {"last on", "10:30", true},
                new Object[] {"last on", "10:30:00.001", false},
                new Object[] {"arrived", "09:00", true},
                new Object[] {"arrived", "10:30:00.001", false});
    }
}

package rinsebell.web.board;

import static org.assertj.core.api.Assertions.assertThat;
import static rinsebell.floor.testing.Saturday.at;
import static rinsebell.floor.testing.Saturday.minutes;
import static rinsebell.floor.testing.Scoop.g;
import static rinsebell.floor.testing.Shelf.DEV10;
import static rinsebell.floor.testing.Shelf.DEV20;
import static rinsebell.floor.testing.Shelf.POWDER;
import static rinsebell.floor.testing.Shelf.REMOVER;
import static rinsebell.floor.testing.Shelf.STRONG_CREAM;
import static rinsebell.floor.testing.Shelf.TONER;
import static rinsebell.floor.testing.Where.offScalp;
import static rinsebell.floor.testing.Where.onScalp;

import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import rinsebell.floor.bowl.BowlId;
import rinsebell.floor.bowl.BowlReason;
import rinsebell.floor.bowl.DayEvent;
import rinsebell.floor.product.Cover;
import rinsebell.floor.product.Heat;
import rinsebell.floor.testing.Gates;
import rinsebell.floor.testing.Head;
import rinsebell.floor.testing.Story;
import rinsebell.floor.visit.ApplicationId;
import rinsebell.floor.visit.Area;
import rinsebell.floor.visit.CheckDecision;
import rinsebell.floor.visit.Complaint;
import rinsebell.floor.visit.Gate;
import rinsebell.floor.visit.LookEvent;
import rinsebell.floor.visit.ScalpCheck;
import rinsebell.floor.visit.StrandFinding;
import rinsebell.floor.visit.WorkEvent;
import rinsebell.web.Words;

/** What the main press is for what is loudest at a head, or comes next: a row each. */
class MainPressTest {
    private final Story story = Story.stocked();

    /** A head at 09:55 on which something happened, up to the minute that is looked at. */
    private record Told(Story story, Head head) {
        ApplicationId on(String clock, BowlId bowl, rinsebell.floor.testing.Where where) {
            story.at(clock);
            return head.puts(bowl, where);
        }

        /** Powder in foils, mixed 10:00 and on at 10:05: looks every 10 min, rinse by 10:55. */
        ApplicationId foils() {
            return on(
                    "10:05",
                    story.at("10:00").mixes(g(60, POWDER), g(60, DEV20)),
                    offScalp(Area.FOILS_ALL).under(Cover.FOIL));
        }

        ApplicationId foilsAllOn() {
            var on = foils();
            story.at("10:15");
            head.lastOn(on);
            head.checks(on);
            return on;
        }

        /** Strong cream on the scalp at 10:05: strands every 10 min, the scalp every 8. */
        ApplicationId cream() {
            var on = on("10:05", story.at("10:00").mixes(g(60, STRONG_CREAM), g(60, DEV20)), onScalp(Area.WHOLE_HEAD));
            head.lastOn(on);
            return on;
        }

        ApplicationId toner() {
            var on = on("10:05", story.at("10:00").mixes(g(60, TONER), g(60, DEV10)), onScalp(Area.LENGTHS));
            head.lastOn(on);
            return on;
        }

        void rinsed(String clock, ApplicationId... what) {
            story.at(clock);
            head.rinses(what);
        }

        void stretches(ApplicationId on, StrandFinding.Stretch how) {
            head.tells(new LookEvent.StrandChecked(
                    on, new StrandFinding(null, null, how, null), CheckDecision.lookAgain(minutes(5))));
        }

        void waits(BowlReason reason) {
            story.tells(new DayEvent.Mixed(story.portions(g(60, TONER), g(60, DEV10)), reason, head.id()));
        }
    }

    private static Arguments row(String what, String clock, Act main, Consumer<Told> told) {
        return Arguments.of(what, clock, main, told);
    }

    static Stream<Arguments> on() {
        return Stream.of(
                row("being put on", "10:08", Act.LAST_ON, Told::foils),
                row("the strand comes next", "10:16", Act.STRAND, Told::foilsAllOn),
                row("the scalp comes next", "10:06", Act.SCALP, Told::cream),
                row("foils out come next", "10:49", Act.FOILS_OUT, told -> {
                    var on = told.foilsAllOn();
                    told.story.at("10:45");
                    told.head.checks(on);
                }),
                row("time for the foils, and they are in", "10:50", Act.FOILS_OUT, told -> {
                    var on = told.foilsAllOn();
                    told.story.at("10:45");
                    told.head.checks(on);
                }),
                row("the foils are out", "10:51", Act.RINSE, told -> {
                    var on = told.foilsAllOn();
                    told.story.at("10:45");
                    told.head.checks(on);
                    told.story.at("10:50");
                    told.head.tells(new WorkEvent.FoilsOut(on));
                }),
                row("some foils came out long before", "10:50", Act.FOILS_OUT, told -> {
                    var on = told.foilsAllOn();
                    told.story.at("10:44");
                    told.head.tells(new WorkEvent.FoilsOut(on));
                    told.story.at("10:45");
                    told.head.checks(on);
                }),
                row("the rinse is due", "10:55", Act.RINSE, Told::foilsAllOn),
                row("tingling", "10:16", Act.SCALP, told -> {
                    told.foilsAllOn();
                    told.head.complains(Complaint.Grade.TINGLING);
                }),
                row("burning", "10:16", Act.RINSE, told -> {
                    told.foils();
                    told.head.complains(Complaint.Grade.BURNING);
                }),
                row("hot foil", "10:16", Act.RINSE, told -> {
                    told.foils();
                    told.head.complains(Complaint.Grade.HOT_FOIL);
                }),
                row("forbidden heat", "10:16", Act.HEAT_OFF, told -> {
                    told.foils();
                    told.head.heats(Heat.DRYER);
                }),
                row("heat past its time", "10:20", Act.HEAT_OFF, told -> {
                    var on = told.cream();
                    told.head.heats(Heat.GENTLE_STEAM);
                    told.story.at("10:19");
                    told.head.checks(on);
                    told.head.scalpIs(ScalpCheck.Finding.FINE);
                }),
                row("a forbidden cover", "10:06", Act.COVER, told -> told.head.covers(told.cream(), Cover.FILM)),
                row(
                        "a cover past its time",
                        "10:20",
                        Act.COVER,
                        told -> told.on(
                                "10:05",
                                told.story.at("10:00").mixes(g(60, REMOVER)),
                                offScalp(Area.LENGTHS).under(Cover.FILM))),
                row(
                        "on the scalp, and must not be",
                        "10:06",
                        Act.RINSE,
                        told -> told.on(
                                "10:05",
                                told.story.at("10:00").mixes(g(60, POWDER), g(60, DEV20)),
                                onScalp(Area.WHOLE_HEAD))),
                row(
                        "a forbidden mixture",
                        "10:06",
                        Act.RINSE,
                        told -> told.on(
                                "10:05",
                                told.story.at("10:00").mixes(g(60, POWDER), g(30, TONER), g(90, DEV20)),
                                offScalp(Area.LENGTHS))),
                row("dye after a reaction", "10:06", Act.RINSE, told -> {
                    told.head.answers(Gates.reactedEarlier());
                    told.toner();
                }),
                row("a broken scalp", "10:06", Act.RINSE, told -> {
                    told.head.answers(Gates.fineBut(Gate.Scalp.BROKEN));
                    told.on(
                            "10:05",
                            told.story.at("10:00").mixes(g(60, STRONG_CREAM), g(60, DEV20)),
                            onScalp(Area.WHOLE_HEAD));
                }),
                row(
                        "the strand snaps",
                        "10:16",
                        Act.RINSE,
                        told -> told.stretches(told.foilsAllOn(), StrandFinding.Stretch.GIVES_WAY)),
                row(
                        "the strand stays stretched",
                        "10:16",
                        Act.STRAND,
                        told -> told.stretches(told.foilsAllOn(), StrandFinding.Stretch.STRETCHES_LITTLE)),
                row("it snapped, then it sprang back", "10:17", Act.STRAND, told -> {
                    var on = told.foilsAllOn();
                    told.stretches(on, StrandFinding.Stretch.GIVES_WAY);
                    told.story.at("10:16");
                    told.stretches(on, StrandFinding.Stretch.STRETCHES_WELL);
                }),
                row("a sore scalp under it", "10:06", Act.RINSE, told -> {
                    told.cream();
                    told.head.scalpIs(ScalpCheck.Finding.SORE);
                }),
                row("a sore scalp, and nothing touches it", "10:16", Act.STRAND, told -> {
                    told.foilsAllOn();
                    told.head.scalpIs(ScalpCheck.Finding.SORE);
                }));
    }

    static Stream<Arguments> off() {
        return Stream.of(
                row("just here", "09:56", Act.MIX, told -> {}),
                row("a bowl waits", "10:01", Act.PUT_ON, told -> {
                    told.story.at("10:00");
                    told.waits(BowlReason.FIRST);
                }),
                row("a bowl is past its time", "10:30", Act.THROW_AWAY, told -> {
                    told.story.at("10:00");
                    told.waits(BowlReason.FIRST);
                }),
                row("rinsed off the scalp", "10:41", Act.SCALP, told -> told.rinsed("10:40", told.cream())),
                row(
                        "rinsed off the lengths",
                        "10:41",
                        Act.TOWEL_DRIED,
                        told -> told.rinsed("10:40", told.foilsAllOn())),
                row("towel-dried after lightener", "10:42", Act.LIFT, told -> {
                    told.rinsed("10:40", told.foilsAllOn());
                    told.head.tells(new WorkEvent.TowelDried());
                }),
                row("not light enough", "10:43", Act.MIX, told -> {
                    told.rinsed("10:40", told.foilsAllOn());
                    told.head.tells(new WorkEvent.TowelDried());
                    told.head.tells(new LookEvent.LiftJudged(false));
                }),
                row("light enough", "10:43", Act.MIX, told -> {
                    told.rinsed("10:40", told.foilsAllOn());
                    told.head.tells(new WorkEvent.TowelDried());
                    told.head.tells(new LookEvent.LiftJudged(true));
                }),
                row("left at that", "10:44", Act.LEAVE, told -> {
                    told.rinsed("10:40", told.foilsAllOn());
                    told.head.tells(new WorkEvent.TowelDried());
                    told.head.tells(new LookEvent.LiftJudged(false));
                    told.head.tells(new LookEvent.RoundsStopped());
                }),
                row("towel-dried after a toner", "10:24", Act.LEAVE, told -> {
                    told.rinsed("10:20", told.toner());
                    told.head.tells(new WorkEvent.TowelDried());
                }),
                row("burning, and it is off", "10:21", Act.SCALP, told -> {
                    var on = told.foils();
                    told.head.complains(Complaint.Grade.BURNING);
                    told.rinsed("10:20", on);
                    told.head.tells(new WorkEvent.TowelDried());
                }),
                row("burning, off, and looked at", "10:22", Act.LEAVE, told -> {
                    var on = told.foils();
                    told.head.complains(Complaint.Grade.BURNING);
                    told.rinsed("10:20", on);
                    told.head.tells(new WorkEvent.TowelDried());
                    told.head.scalpIs(ScalpCheck.Finding.PINK);
                }));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource({"on", "off"})
    void answersWhatIsLoudestOrComesNext(String what, String clock, Act main, Consumer<Told> tell) {
        var head = story.at("09:55").arrivesFine();
        tell.accept(new Told(story, head));
        assertThat(new HeadActs(telling(head, clock)).main()).as(what).isEqualTo(main);
    }

    private HeadTelling telling(Head head, String clock) {
        var floor = story.floor();
        var moment = new Moment(floor, id -> "L. " + id.seq(), floor.bells(), at(clock), Words.british());
        return new HeadTelling(moment, head.visit(), false);
    }
}

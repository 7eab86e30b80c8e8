package rinsebell.floor.basin;

import static org.assertj.core.api.Assertions.assertThat;
import static rinsebell.floor.bell.BellKind.BASINS_CLASH;
import static rinsebell.floor.product.Develops.Counted.FROM_FIRST_ON;
import static rinsebell.floor.testing.Leaflet.leaflet;
import static rinsebell.floor.testing.Ringing.assertQuiet;
import static rinsebell.floor.testing.Ringing.assertRings;
import static rinsebell.floor.testing.Saturday.at;
import static rinsebell.floor.testing.Saturday.minutes;
import static rinsebell.floor.testing.Scoop.g;
import static rinsebell.floor.testing.Where.offScalp;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import rinsebell.floor.Asked;
import rinsebell.floor.Decision;
import rinsebell.floor.Stream;
import rinsebell.floor.bowl.Announced;
import rinsebell.floor.bowl.DayEvent;
import rinsebell.floor.command.Announce;
import rinsebell.floor.product.Kind;
import rinsebell.floor.salon.SalonEvent;
import rinsebell.floor.salon.Service;
import rinsebell.floor.salon.Shift;
import rinsebell.floor.testing.Head;
import rinsebell.floor.testing.Story;
import rinsebell.floor.visit.Area;
import rinsebell.floor.visit.Complaint;
import rinsebell.floor.visit.StayEvent;
import rinsebell.floor.visit.VisitId;

/** What is coming at the basins, as people see it: two basins, a rinse of eight minutes, a walk of one. */
class OutlookTest {
    private final Story story = Story.begins().at("09:50");

    private void oneBasinOnly() {
        story.tells(new DayEvent.BasinClosed(2));
    }

    private Head mayFromMustBy(String ready, String rinseBy) {
        var powder = leaflet("powder", Kind.POWDER_LIGHTENER)
                .develops(
                        FROM_FIRST_ON,
                        Duration.between(at("10:00"), at(ready)),
                        Duration.between(at("10:00"), at(rinseBy)));
        var head = story.at("09:55").arrivesFine();
        story.at("10:00");
        head.lastOn(head.puts(story.mixes(g(60, powder.typedIn())), offScalp(Area.LENGTHS)));
        return head;
    }

    private Outlook seen(String clock) {
        return story.floor().outlook(at(clock));
    }

    private Instant water(Head head, String clock) {
        return seen(clock).turn(head.id()).orElseThrow().water();
    }

    @Test
    void whoHasToMakeRoomIsNamed() {
        oneBasinOnly();
        var first = mayFromMustBy("10:30", "10:44");
        var then = mayFromMustBy("10:40", "10:44");
        var squeezes = seen("10:20").squeezes();
        assertThat(squeezes).hasSize(1);
        assertThat(squeezes.get(0).first().visit()).isEqualTo(first.id());
        assertThat(squeezes.get(0).first().water()).isEqualTo(at("10:36"));
        assertThat(squeezes.get(0).then().visit()).isEqualTo(then.id());
        assertThat(squeezes.get(0).by()).isEqualTo(at("10:44"));
        story.tells(new DayEvent.BasinOpened(2));
        assertThat(seen("10:20").squeezes()).as("with two basins nobody has to").isEmpty();
    }

    /** Seven heads one after the other at one basin: of six pairs the first five are told. */
    @Test
    void onlyTheFirstFewPairsAreTold() {
        oneBasinOnly();
        var heads = IntStream.range(0, 7)
                .mapToObj(i -> mayFromMustBy(clock(37 + 7 * i), clock(44 + 7 * i)))
                .toList();
        assertThat(seen("10:20").plan().late()).isEmpty();
        assertThat(seen("10:20").squeezes())
                .extracting(squeeze -> squeeze.first().visit())
                .containsExactlyElementsOf(
                        heads.subList(0, 5).stream().map(Head::id).toList());
    }

    private static String clock(int afterTen) {
        return "%d:%02d".formatted(10 + afterTen / 60, afterTen % 60);
    }

    @Test
    void aPinIsKeptAndWhomItMakesLateIsNamed() {
        oneBasinOnly();
        var urgent = mayFromMustBy("10:30", "10:40");
        var patient = mayFromMustBy("10:38", "10:55");
        assertThat(seen("10:20").plan().isSafe()).isTrue();
        story.tells(new DayEvent.TurnPinned(patient.id(), null, urgent.id()));
        var outlook = seen("10:20");
        assertThat(water(patient, "10:20")).isEqualTo(at("10:38"));
        assertThat(outlook.lateByPins()).extracting(Turn::visit).containsExactly(urgent.id());
        story.tells(new DayEvent.TurnUnpinned(patient.id()));
        assertThat(seen("10:20").plan().isSafe()).isTrue();
        assertThat(seen("10:20").lateByPins()).isEmpty();
    }

    @Test
    void aTurnIsPinnedToABasin() {
        var head = mayFromMustBy("10:30", "10:40");
        assertThat(seen("10:20").turn(head.id()).orElseThrow().basin()).isEqualTo(1);
        story.tells(new DayEvent.TurnPinned(head.id(), 2, null));
        assertThat(seen("10:20").turn(head.id()).orElseThrow().basin()).isEqualTo(2);
        story.tells(new DayEvent.BasinClosed(2));
        assertThat(seen("10:20").turn(head.id()).orElseThrow().basin())
                .as("a basin out of order keeps nobody")
                .isEqualTo(1);
    }

    @Test
    void whoBurnsGoesBeforeEveryPin() {
        oneBasinOnly();
        var burns = mayFromMustBy("10:30", "10:50");
        var other = mayFromMustBy("10:05", "10:50");
        story.tells(new DayEvent.TurnPinned(other.id(), null, burns.id()));
        story.at("10:10");
        burns.complains(Complaint.Grade.BURNING);
        assertThat(water(burns, "10:10")).isEqualTo(at("10:10"));
    }

    /** It stays where people were told, as long as nobody is later for that. */
    @Test
    void whatWasAnnouncedStays() {
        oneBasinOnly();
        var head = mayFromMustBy("10:30", "10:55");
        announce(head, "10:40");
        assertThat(water(head, "10:20")).isEqualTo(at("10:40"));
        mayFromMustBy("10:40", "10:43");
        assertThat(water(head, "10:20")).as("it would make somebody late").isNotEqualTo(at("10:40"));
        assertThat(seen("10:20").plan().isSafe()).isTrue();
    }

    private void announce(Head head, String water) {
        var anchor = head.visit().onHair().get(0).id().value();
        var told = new Announce(story.floor().lastSeq(), Map.of(anchor, new Announced(1, at(water))));
        var decision = (Decision.Accepted) told.decide(story.floor(), Asked.at(story.now()));
        story.tells((DayEvent) decision.drafts().get(0).event());
    }

    @Test
    void aPlanForAnOlderFloorIsNotAnnounced() {
        mayFromMustBy("10:30", "10:55");
        var old = new Announce(story.floor().lastSeq() - 1, Map.of());
        assertThat(old.decide(story.floor(), Asked.at(story.now())))
                .isEqualTo(new Decision.Accepted(List.of(), List.of()));
    }

    /** By the hours that were entered somebody is there until 10:30 and from 11:00 on; 2026-05-16 is a Saturday. */
    @Test
    void handsAreThereByTheirHours() {
        var head = mayFromMustBy("10:20", "10:50");
        assertThat(water(head, "10:05")).as("hands are not counted").isEqualTo(at("10:50"));
        story.tells(
                Stream.SALON,
                new SalonEvent.ShiftsSet(story.assistant(), List.of(shift("09:00", "10:30"), shift("11:00", "18:00"))));
        assertThat(water(head, "10:05"))
                .as("from the walk to the end of the rinse")
                .isEqualTo(at("10:22"));
        assertQuiet(story.floor(), BASINS_CLASH);
        story.at("10:07")
                .tells(Stream.SALON, new SalonEvent.ShiftsSet(story.assistant(), List.of(shift("09:00", "10:15"))));
        assertThat(seen("10:08").plan().without()).hasSize(1);
        assertRings(story.floor(), BASINS_CLASH, "10:07 DUE MEDIUM DESK");
    }

    private static Shift shift(String from, String until) {
        return new Shift(DayOfWeek.SATURDAY, LocalTime.parse(from), LocalTime.parse(until));
    }

    /** Rinse 8, toner 5 and 15, rinse 8: the basin is taken for 36 minutes, the hands for 13 and for 8. */
    @Test
    void aTonerStaysAtTheBasin() {
        var head = mayFromMustBy("10:30", "10:40");
        head.tells(new StayEvent.ServicesListed(List.of(Service.BOWL, Service.TONER)));
        var turn = seen("10:20").turn(head.id()).orElseThrow();
        assertThat(turn.job().work().stay()).isEqualTo(minutes(36));
        assertThat(turn.job().work().hands())
                .containsExactly(new Work.Hold(minutes(-1), minutes(13)), new Work.Hold(minutes(28), minutes(36)));
    }

    /** What must be off before the rest is ready asks for a stay of its own; what can go together goes together. */
    @Test
    void windowsThatMeetShareOneStay() {
        var head = mayFromMustBy("10:30", "10:40");
        puts(head, Area.ENDS, "10:35", "10:50");
        assertThat(jobs(head)).hasSize(1);
        puts(head, Area.HAIRLINE, "10:45", "11:00");
        assertThat(jobs(head)).extracting(Job::latest).containsExactly(at("10:40"), at("11:00"));
        assertThat(jobs(head)).extracting(Job::earliest).containsExactly(at("10:35"), at("10:45"));
    }

    private void puts(Head head, Area area, String ready, String by) {
        var more = leaflet("more " + area, Kind.POWDER_LIGHTENER)
                .develops(
                        FROM_FIRST_ON, Duration.between(at("10:00"), at(ready)), Duration.between(at("10:00"), at(by)));
        head.lastOn(head.puts(story.mixes(g(60, more.typedIn())), offScalp(area)));
    }

    private List<Job> jobs(Head head) {
        return Stations.ofFacts(story.floor()).jobs().stream()
                .filter(job -> job.visit().equals(head.id()))
                .toList();
    }

    /** Nobody can say when they will be past: no basin at all, five hundred heads, a limit long past. */
    @Test
    void whatCannotBePlannedIsSaidAndNotThrown() {
        var head = mayFromMustBy("10:30", "10:40");
        assertThat(seen("12:00").turn(head.id()).orElseThrow().isLate()).isTrue();
        story.at("10:05").tells(new DayEvent.BasinClosed(1));
        story.tells(new DayEvent.BasinClosed(2));
        assertThat(seen("10:10").plan().without()).extracting(Job::visit).containsExactly(head.id());
        assertThat(seen("10:10").turn(new VisitId(1))).isEmpty();
    }
}

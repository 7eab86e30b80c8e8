package rinsebell.floor.turnaround;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static rinsebell.floor.product.Develops.Counted.FROM_FIRST_ON;
import static rinsebell.floor.product.Develops.Counted.FROM_LAST_ON;
import static rinsebell.floor.testing.Leaflet.leaflet;
import static rinsebell.floor.testing.Saturday.at;
import static rinsebell.floor.testing.Saturday.minutes;
import static rinsebell.floor.testing.Scoop.g;
import static rinsebell.floor.testing.Where.offScalp;

import java.time.Duration;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import rinsebell.floor.Stream;
import rinsebell.floor.bowl.DayEvent;
import rinsebell.floor.product.Kind;
import rinsebell.floor.salon.House;
import rinsebell.floor.salon.Place;
import rinsebell.floor.salon.SalonEvent;
import rinsebell.floor.salon.Service;
import rinsebell.floor.salon.Stretch;
import rinsebell.floor.testing.Head;
import rinsebell.floor.testing.Saturday;
import rinsebell.floor.testing.Story;
import rinsebell.floor.visit.Area;
import rinsebell.floor.visit.StayEvent;

/** When chairs come free, where the lengths are such that the sums can be worked by hand. */
class TurnaroundTest {
    private final Story story = Story.begins().at("09:50");

    /** Twenty of each are measured, and all of them took as long. */
    private void always(Map<Stretch, Integer> seconds) {
        var learned = new EnumMap<Stretch, List<Integer>>(Stretch.class);
        seconds.forEach((stretch, takes) -> learned.put(stretch, Collections.nCopies(20, takes)));
        story.tells(Stream.SALON, new SalonEvent.TimesLearned(learned));
    }

    private Head comesFor(Place place, Service... services) {
        var head = story.arrives();
        head.tells(new StayEvent.Moved(place));
        head.tells(new StayEvent.ServicesListed(List.of(services)));
        return head;
    }

    private Turnaround seen(String clock) {
        return Turnaround.of(story.floor(), at(clock));
    }

    private static Range exactly(String clock) {
        return new Range(at(clock), at(clock));
    }

    @Test
    void whatIsStillToBeDoneIsAddedUp() {
        always(Map.of(Stretch.CUT, 30 * 60, Stretch.BLOW_DRY, 20 * 60, Stretch.SETTLING, 5 * 60));
        var head = comesFor(Place.chair(1), Service.CUT, Service.BLOW_DRY);
        assertThat(seen("10:00").end(head.id())).hasValue(exactly("10:55"));
        assertThat(seen("10:00").chairs()).isEqualTo(Map.of(1, exactly("10:55")));
    }

    /** Begun at 10:00 and over at 10:30: at 10:10 there are twenty minutes of it left. */
    @Test
    void whatGoesOnCountsFromItsBeginning() {
        always(Map.of(Stretch.CUT, 30 * 60, Stretch.SETTLING, 5 * 60));
        var head = comesFor(Place.chair(1), Service.CUT);
        story.at("10:00");
        head.tells(new StayEvent.ServiceBegan(Service.CUT));
        assertThat(seen("10:10").end(head.id())).hasValue(exactly("10:35"));
        assertThat(seen("10:45").end(head.id())).as("it takes longer than ever").hasValue(exactly("10:50"));
        story.at("10:20");
        head.tells(new StayEvent.ServiceEnded(Service.CUT));
        assertThat(seen("10:20").end(head.id())).hasValue(exactly("10:25"));
    }

    @Test
    void whoWaitsGetsTheChairThatIsFreeFirst() {
        story.tells(Stream.SALON, new SalonEvent.HouseSet(new House(2, 2, 4, Saturday.ZONE, true)));
        always(Map.of(Stretch.CUT, 30 * 60, Stretch.BLOW_DRY, 20 * 60, Stretch.SETTLING, 5 * 60));
        comesFor(Place.chair(1), Service.CUT, Service.BLOW_DRY);
        comesFor(Place.chair(2), Service.CUT);
        var first = comesFor(Place.BENCH, Service.CUT);
        var second = comesFor(Place.BENCH, Service.CUT);
        var waits = Turnaround.of(story.floor(), at("10:00"), Wish.of(List.of(Service.BLOW_DRY)))
                .waits();
        assertThat(waits)
                .containsExactly(
                        new Turnaround.Waits(Optional.of(first.id()), exactly("10:35"), exactly("11:10"), 2),
                        new Turnaround.Waits(Optional.of(second.id()), exactly("10:55"), exactly("11:30"), 1),
                        new Turnaround.Waits(Optional.empty(), exactly("11:10"), exactly("11:35"), 2));
    }

    /** In a chair of their own choice, and for as long as they say where the services take less. */
    @Test
    void whoAsksMayNameAChairAndATime() {
        story.tells(Stream.SALON, new SalonEvent.HouseSet(new House(2, 2, 4, Saturday.ZONE, true)));
        always(Map.of(Stretch.CUT, 30 * 60, Stretch.SETTLING, 5 * 60));
        comesFor(Place.chair(1), Service.CUT);
        assertThat(comes(List.of(Service.CUT), Optional.of(1), Duration.ofMinutes(90)))
                .isEqualTo(new Turnaround.Waits(Optional.empty(), exactly("10:35"), exactly("12:05"), 1));
        assertThat(comes(List.of(Service.CUT), Optional.of(2), Duration.ofMinutes(20)))
                .isEqualTo(new Turnaround.Waits(Optional.empty(), exactly("10:00"), exactly("10:35"), 2));
        assertThat(comes(List.of(), Optional.of(9), Duration.ofMinutes(20)))
                .as("a chair that is not there")
                .isEqualTo(new Turnaround.Waits(Optional.empty(), exactly("10:00"), exactly("10:20"), 2));
    }

    private Turnaround.Waits comes(List<Service> services, Optional<Integer> chair, Duration least) {
        return Turnaround.of(story.floor(), at("10:00"), new Wish(services, chair, least))
                .waits()
                .get(0);
    }

    /** Somebody whose bowl is still to come takes no basin before it is due there. */
    @Test
    void aBowlThatIsToComeHoldsUpNobodyBefore() {
        story.tells(new DayEvent.BasinClosed(2));
        always(Map.of(
                Stretch.RINSING, 8 * 60, Stretch.DEVELOPING, 1_000, Stretch.APPLYING, 600, Stretch.SETTLING, 300));
        var powder = leaflet("powder", Kind.POWDER_LIGHTENER).develops(FROM_FIRST_ON, minutes(30), minutes(30));
        var on = story.at("09:55").arrivesFine();
        on.tells(new StayEvent.Moved(Place.chair(2)));
        story.at("10:00");
        on.lastOn(on.puts(story.mixes(g(60, powder.typedIn())), offScalp(Area.LENGTHS)));
        var toCome = comesFor(Place.chair(1), Service.BOWL);
        assertThat(seen("10:05").end(on.id())).hasValue(exactly("10:43"));
        assertThat(seen("10:05").end(toCome.id())).hasValue(exactly("11:08"));
    }

    /** Four minutes until somebody comes, 30 for the cut, four again, 20 for the blow-dry, five to leave. */
    @Test
    void somebodyHasToComeForEachThing() {
        always(Map.of(Stretch.WAITING, 240, Stretch.CUT, 30 * 60, Stretch.BLOW_DRY, 20 * 60, Stretch.SETTLING, 5 * 60));
        var head = comesFor(Place.chair(1), Service.CUT, Service.BLOW_DRY);
        assertThat(seen("10:00").end(head.id())).hasValue(exactly("11:03"));
    }

    /** The cut until 10:35, fifty minutes of a bowl that no directions are known of, eight at the basin, five to leave. */
    @Test
    void whatComesBeforeABowlPutsItOff() {
        always(Map.of(Stretch.CUT, 30 * 60, Stretch.RINSING, 8 * 60, Stretch.DEVELOPING, 1_000, Stretch.SETTLING, 300));
        var head = comesFor(Place.chair(1), Service.CUT, Service.BOWL);
        assertThat(seen("10:05").end(head.id())).hasValue(exactly("11:38"));
    }

    /** Colour is put on for 35 minutes here, and its leaflet counts 40 from the last: water at 11:15, and 13 minutes more. */
    @Test
    void whoPutsItOnSlowlyRinsesLate() {
        always(Map.of(
                Stretch.APPLYING, 35 * 60, Stretch.DEVELOPING, 1_000, Stretch.RINSING, 480, Stretch.SETTLING, 300));
        var colour = leaflet("colour", Kind.PERMANENT_COLOUR).develops(FROM_LAST_ON, minutes(30), minutes(40));
        var head = sits("10:00");
        var on = head.puts(story.mixes(g(60, colour.typedIn())), offScalp(Area.LENGTHS));
        assertThat(seen("10:00").end(head.id())).hasValue(exactly("11:28"));
        story.at("10:20");
        head.lastOn(on);
        assertThat(seen("10:20").end(head.id())).as("quicker than ever").hasValue(exactly("11:13"));
    }

    /** Half of the heads are taken off at 40 % of fifty minutes, half at 90 %: water at 10:20 or 10:45, and 15 minutes more. */
    @Test
    void beforeAnybodyDecidesAllThatIsPossibleCounts() {
        var learned = new EnumMap<Stretch, List<Integer>>(Stretch.class);
        learned.put(
                Stretch.DEVELOPING,
                java.util.stream.Stream.concat(
                                Collections.nCopies(10, 400).stream(), Collections.nCopies(10, 900).stream())
                        .toList());
        story.tells(Stream.SALON, new SalonEvent.TimesLearned(learned));
        always(Map.of(Stretch.RINSING, 600, Stretch.SETTLING, 300));
        var powder = leaflet("powder", Kind.POWDER_LIGHTENER).develops(FROM_FIRST_ON, minutes(20), minutes(50));
        var head = sits("10:00");
        head.lastOn(head.puts(story.mixes(g(60, powder.typedIn())), offScalp(Area.LENGTHS)));
        assertThat(seen("10:05").end(head.id(), 0.25)).hasValue(at("10:35"));
        assertThat(seen("10:05").end(head.id(), 0.75)).hasValue(at("11:00"));
        assertThat(seen("10:26").end(head.id(), 0.25))
                .as("it has been on for longer")
                .hasValue(at("11:00"));
    }

    /** All heads are taken off at 10:20 here, but somebody wants to look at this one at 10:30: 15 minutes more from there. */
    @Test
    void whatIsLookedAtAgainStaysOnUntilThen() {
        always(Map.of(Stretch.DEVELOPING, 400, Stretch.RINSING, 600, Stretch.SETTLING, 300));
        var powder = leaflet("powder", Kind.POWDER_LIGHTENER).develops(FROM_FIRST_ON, minutes(20), minutes(50));
        var head = sits("10:00");
        var on = head.puts(story.mixes(g(60, powder.typedIn())), offScalp(Area.LENGTHS));
        head.lastOn(on);
        assertThat(seen("10:10").end(head.id())).hasValue(exactly("10:35"));
        story.at("10:10");
        head.looksAgain(on, minutes(20));
        assertThat(seen("10:10").end(head.id())).hasValue(exactly("10:45"));
    }

    /** Of a bowl that was over when it went on, no time is allowed at all: 15 minutes from now. */
    @Test
    void whatMustComeOffAtOnceDoes() {
        always(Map.of(Stretch.DEVELOPING, 400, Stretch.RINSING, 600, Stretch.SETTLING, 300));
        var powder = leaflet("powder", Kind.POWDER_LIGHTENER).usableThenRinse(minutes(10));
        var bowl = story.mixes(g(60, powder.typedIn()));
        var head = sits("10:00");
        head.lastOn(head.puts(bowl, offScalp(Area.LENGTHS)));
        assertThat(seen("10:00").end(head.id())).hasValue(exactly("10:15"));
    }

    /** Foils are rinsed for twelve minutes, and after fifteen of toner there are none left: six. */
    @Test
    void aTonerIsRinsedWithoutFoils() {
        always(Map.of(
                Stretch.DEVELOPING, 1_000,
                Stretch.RINSING, 360,
                Stretch.RINSING_FOILS, 720,
                Stretch.TONER, 900,
                Stretch.SETTLING, 300));
        var powder = leaflet("powder", Kind.POWDER_LIGHTENER).develops(FROM_FIRST_ON, minutes(30), minutes(30));
        var head = sits("10:00");
        head.tells(new StayEvent.ServicesListed(List.of(Service.BOWL, Service.TONER)));
        head.lastOn(head.puts(story.mixes(g(60, powder.typedIn())), offScalp(Area.FOILS_ALL)));
        assertThat(seen("10:00").end(head.id())).hasValue(exactly("11:08"));
    }

    private Head sits(String clock) {
        var head = story.at(clock).arrivesFine();
        head.tells(new StayEvent.Moved(Place.chair(2)));
        return head;
    }

    /** Of a sample from 1 to 20 type 8 puts the middle at 10.5 and nine tenths at 18.6333 (Hyndman and Fan 1996). */
    @Test
    void whatWasMeasuredIsDrawnByItsQuantiles() {
        var lasting = Lasting.of(IntStream.rangeClosed(1, 20).boxed().toList(), 0, 0, 0);
        assertThat(lasting.at(0.5)).isCloseTo(10.5, within(1e-9));
        assertThat(lasting.at(0.9)).isCloseTo(18.0 + 19.0 / 30, within(1e-9));
    }

    /** A triangle from 45 to 90 with its top at 60: a third of it lies below the top, and a quarter of that below 52.5. */
    @Test
    void aHouseNumberIsDrawnByATriangle() {
        var lasting = Lasting.of(List.of(), 45, 60, 90);
        assertThat(lasting.at(1.0 / 3)).isCloseTo(60, within(1e-9));
        assertThat(lasting.at(1.0 / 12)).isCloseTo(52.5, within(1e-9));
        assertThat(lasting.at(1)).isCloseTo(90, within(1e-9));
    }

    /** Below twenty the house number counts, from twenty on what was measured. */
    @Test
    void twentyAreEnough() {
        var head = comesFor(Place.chair(1), Service.CUT);
        learns(19);
        assertThat(spread(head)).isGreaterThan(Duration.ofMinutes(5));
        learns(1);
        assertThat(spread(head)).isLessThan(Duration.ofMinutes(3));
    }

    private void learns(int count) {
        story.tells(
                Stream.SALON, new SalonEvent.TimesLearned(Map.of(Stretch.CUT, Collections.nCopies(count, 30 * 60))));
    }

    private Duration spread(Head head) {
        var end = seen("10:00").end(head.id()).orElseThrow();
        return Duration.between(end.likely(), end.latest());
    }

    /** Nobody's time jumps because somebody else has come. */
    @Test
    void oneMoreClientChangesNobodyElsesTime() {
        var head = comesFor(Place.chair(1), Service.CUT, Service.BLOW_DRY);
        var before = seen("10:00").end(head.id());
        comesFor(Place.chair(2), Service.CUT);
        assertThat(seen("10:00").end(head.id())).isEqualTo(before);
    }

    /** Draws spread evenly: of ten thousand about a tenth lies in each tenth (chi-squared, 9 degrees, 0.1 %: 27.88). */
    @Test
    void drawsAreEven() {
        var counts = new int[10];
        for (var run = 0; run < 10_000; run++) {
            counts[(int) (10 * Draw.of(41, Stretch.CUT, 0, run))]++;
        }
        var chi = IntStream.of(counts)
                .mapToDouble(count -> Math.pow(count - 1_000, 2) / 1_000)
                .sum();
        assertThat(chi).isLessThan(27.88);
    }

    @Test
    void twoLooksSayTheSame() {
        comesFor(Place.chair(1), Service.CUT, Service.BLOW_DRY);
        assertThat(seen("10:00").chairs()).isEqualTo(seen("10:00").chairs());
    }
}

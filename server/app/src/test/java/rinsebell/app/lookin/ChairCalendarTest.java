package rinsebell.app.lookin;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static rinsebell.floor.testing.Saturday.at;

import biweekly.Biweekly;
import biweekly.ICalVersion;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import java.time.Duration;
import java.time.Instant;
import java.util.Collections;
import java.util.Date;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import rinsebell.floor.salon.Place;
import rinsebell.floor.salon.SalonEvent;
import rinsebell.floor.salon.Service;
import rinsebell.floor.salon.Stretch;
import rinsebell.floor.testing.Head;
import rinsebell.floor.testing.Story;
import rinsebell.floor.visit.StayEvent;
import rinsebell.web.Words;
import rinsebell.web.board.Moment;

/**
 * The calendar of chairs, read back by another library, biweekly, and by the rules of RFC 5545 themselves. What it must say
 * is what the floor's own turnaround says.
 */
class ChairCalendarTest {
    private static final String LINK = "a".repeat(64);

    private static final String SALON = "Pepperbox Yard; 👩‍🦰, \"" + "ü".repeat(60) + "\\n";

    private final Story story = Story.begins().at("09:50");
    private final ChairCalendar calendar = new ChairCalendar();

    private Head comesFor(Service... services) {
        var head = story.arrives();
        if (services.length > 0) {
            head.tells(new StayEvent.ServicesListed(List.of(services)));
        }
        return head;
    }

    private Moment seen(String clock) {
        var floor = story.floor();
        return new Moment(
                floor,
                text -> text.equals(floor.salon().name()) ? SALON : "Ada " + text.seq(),
                floor.bells(),
                at(clock),
                Words.british());
    }

    private String written(String clock) {
        return new String(calendar.of(seen(clock), LINK), UTF_8);
    }

    private static ICalendar read(String written) {
        return Biweekly.parse(written).first();
    }

    /** The next time that a clock shows in steps of five minutes. */
    private static Date toFive(Instant at) {
        var over = at.getEpochSecond() % 300;
        return Date.from(over == 0 ? at : at.plusSeconds(300 - over));
    }

    @Test
    void eachTakenChairOfWhichSomethingIsKnownIsAnEvent() {
        comesFor(Service.CUT, Service.BLOW_DRY);
        comesFor(Service.BOWL, Service.CUT);
        comesFor();
        var told = story.floor().turnaround(at("10:02")).chairs();
        var read = read(written("10:02"));
        assertThat(told).hasSize(3);
        assertThat(read.getEvents()).hasSize(2);
        for (var chair : List.of(1, 2)) {
            var event = read.getEvents().get(chair - 1);
            var range = Objects.requireNonNull(told.get(chair));
            assertThat(event.getDateStart().getValue()).isEqualTo(toFive(range.likely()));
            assertThat(event.getDateEnd().getValue()).isEqualTo(toFive(range.latest()));
            assertThat(event.getSummary().getValue())
                    .isEqualTo("Chair %d free, almost surely by %tR"
                            .formatted(
                                    chair,
                                    toFive(range.latest())
                                            .toInstant()
                                            .atZone(story.floor().salon().zone())));
            assertThat(event.getTransparency().isTransparent()).isTrue();
            assertThat(event.getDateTimeStamp().getValue()).isEqualTo(Date.from(at("10:02")));
            assertThat(event.getLastModified().getValue()).isEqualTo(Date.from(at("10:02")));
        }
    }

    @Test
    void itSaysWhoseChairsAndHowOftenToAskAndNamesNobody() {
        comesFor(Service.CUT);
        var written = written("10:00");
        var read = read(written);
        assertThat(read.getVersion()).isEqualTo(ICalVersion.V2_0);
        assertThat(read.getMethod().getValue()).isEqualTo("PUBLISH");
        assertThat(read.getNames())
                .singleElement()
                .satisfies(name -> assertThat(name.getValue()).isEqualTo("Chairs at " + SALON));
        assertThat(read.getRefreshInterval().getValue().toMillis())
                .isEqualTo(Duration.ofMinutes(5).toMillis());
        assertThat(written).doesNotContain("Ada", "VALARM", "ATTENDEE", "LOCATION", "DESCRIPTION", "TZID");
        assertThat(read.validate(ICalVersion.V2_0))
                .as("what biweekly finds wrong")
                .isEmpty();
    }

    /** Section 3.6: a calendar holds at least one component. Biweekly takes a zone out as it reads, so the text is looked at. */
    @Test
    void whereNoChairIsTakenItIsACalendarAllTheSame() {
        assertThat(read(written("10:00")).getEvents()).isEmpty();
        assertThat(written("10:00").lines())
                .containsSubsequence(
                        "BEGIN:VTIMEZONE",
                        "TZID:UTC",
                        "BEGIN:STANDARD",
                        "DTSTART:19700101T000000",
                        "TZOFFSETFROM:+0000",
                        "TZOFFSETTO:+0000",
                        "END:STANDARD",
                        "END:VTIMEZONE",
                        "END:VCALENDAR");
    }

    /** RFC 5545, section 3.1: lines end in CRLF and have at most 75 octets, a character is not cut in two. */
    @Test
    void itsLinesAreOfTheStandard() {
        comesFor(Service.CUT, Service.BLOW_DRY);
        var written = written("10:00");
        assertThat(written).endsWith("END:VCALENDAR\r\n").doesNotContainPattern("[^\r]\n|\r[^\n]");
        assertThat(written.split("\r\n")).hasSizeGreaterThan(15).allSatisfy(line -> {
            assertThat(line.getBytes(UTF_8)).hasSizeLessThanOrEqualTo(75);
            assertThat(new String(line.getBytes(UTF_8), UTF_8)).isEqualTo(line).doesNotContain("\uFFFD");
        });
        assertThat(written.replace("\r\n ", "").lines())
                .contains(
                        "VERSION:2.0",
                        "METHOD:PUBLISH",
                        "REFRESH-INTERVAL;VALUE=DURATION:PT5M",
                        "TRANSP:TRANSPARENT",
                        "NAME:Chairs at " + SALON.replaceAll("[\\\\;,]", "\\\\$0"))
                .anyMatch(line -> line.matches("DTSTART:\\d{8}T\\d{6}Z"))
                .anyMatch(line -> line.matches("ORGANIZER:urn:uuid:[0-9a-f-]{36}"));
    }

    /** Twenty cuts were measured, and all of them took half an hour. */
    private Head isCutFrom(String clock) {
        var learned = new EnumMap<Stretch, List<Integer>>(Stretch.class);
        Map.of(Stretch.CUT, 30 * 60, Stretch.SETTLING, 5 * 60)
                .forEach((stretch, takes) -> learned.put(stretch, Collections.nCopies(20, takes)));
        story.tells(rinsebell.floor.Stream.SALON, new SalonEvent.TimesLearned(learned));
        var head = comesFor(Service.CUT);
        story.at(clock);
        head.tells(new StayEvent.ServiceBegan(Service.CUT));
        return head;
    }

    /** An end must be later than its beginning (section 3.8.2.2). */
    @Test
    void whatIsCertainHasNoEnd() {
        isCutFrom("10:00");
        var event = event(written("10:00"));
        assertThat(event.getDateStart().getValue()).isEqualTo(Date.from(at("10:35")));
        assertThat(event.getDateEnd()).isNull();
    }

    @Test
    void ofTwoWhoHoldAChairTheLaterCounts() {
        var first = comesFor(Service.CUT);
        first.tells(new StayEvent.Moved(Place.basin(1)));
        var second = comesFor(Service.CUT, Service.BLOW_DRY, Service.CUT);
        second.tells(new StayEvent.Moved(Place.chair(1)));
        var range = Objects.requireNonNull(
                story.floor().turnaround(at("10:00")).chairs().get(1));
        assertThat(read(written("10:00")).getEvents())
                .singleElement()
                .satisfies(event -> assertThat(event.getDateEnd().getValue()).isEqualTo(toFive(range.latest())));
    }

    @Test
    void theSameIsTheSameLetterByLetterUntilItChanges() {
        var head = isCutFrom("10:00");
        var before = written("10:00");
        assertThat(written("10:17")).isEqualTo(before);
        var first = event(before);
        story.at("10:20");
        head.tells(new StayEvent.ServiceEnded(Service.CUT));
        var second = event(written("10:20"));
        assertThat(second.getUid()).isEqualTo(first.getUid());
        assertThat(second.getDateStart().getValue()).isEqualTo(Date.from(at("10:25")));
        assertThat(number(second)).isGreaterThan(number(first));
        assertThat(second.getLastModified().getValue()).isEqualTo(Date.from(at("10:20")));
        assertThat(second.getDateTimeStamp().getValue()).isEqualTo(Date.from(at("10:20")));
    }

    /** Two changes within one second; and a clock that was put back, which the numbers do not follow. */
    @Test
    void eachChangeHasAGreaterNumber() {
        var head = comesFor(Service.CUT);
        var numbers = Stream.of(1, 2, 3)
                .map(more -> {
                    head.tells(new StayEvent.ServicesListed(Collections.nCopies(more, Service.BLOW_DRY)));
                    return number(event(written(more == 3 ? "09:55" : "10:00")));
                })
                .toList();
        assertThat(numbers).isSorted().doesNotHaveDuplicates();
    }

    @Test
    void afterARestartNoNumberIsLess() {
        comesFor(Service.CUT);
        var before = event(written("10:00"));
        var after = event(new String(new ChairCalendar().of(seen("10:01"), LINK), UTF_8));
        assertThat(after.getUid()).isEqualTo(before.getUid());
        assertThat(number(after)).isGreaterThan(number(before));
    }

    @Test
    void noTwoEventsHaveOneName() {
        comesFor(Service.CUT);
        comesFor(Service.CUT);
        var mine = read(written("10:00"));
        var theirs = read(new String(calendar.of(seen("10:00"), "b".repeat(64)), UTF_8));
        assertThat(Stream.of(mine, theirs).flatMap(one -> one.getEvents().stream()))
                .extracting(VEvent::getUid)
                .doesNotHaveDuplicates()
                .hasSize(4);
    }

    private static VEvent event(String written) {
        return read(written).getEvents().get(0);
    }

    private static int number(VEvent event) {
        return event.getSequence().getValue();
    }
}

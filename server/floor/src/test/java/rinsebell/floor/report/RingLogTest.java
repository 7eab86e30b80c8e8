package rinsebell.floor.report;

import static org.assertj.core.api.Assertions.assertThat;
import static rinsebell.floor.testing.Leaflet.leaflet;
import static rinsebell.floor.testing.Ringing.bell;
import static rinsebell.floor.testing.Saturday.at;
import static rinsebell.floor.testing.Saturday.minutes;
import static rinsebell.floor.testing.Scoop.g;
import static rinsebell.floor.testing.Where.offScalp;

import java.time.Instant;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import rinsebell.floor.bell.BellKind;
import rinsebell.floor.bell.Priority;
import rinsebell.floor.product.Kind;
import rinsebell.floor.report.Annunciation.End;
import rinsebell.floor.salon.StaffId;
import rinsebell.floor.testing.Head;
import rinsebell.floor.testing.Leaflet;
import rinsebell.floor.testing.Shelf;
import rinsebell.floor.testing.Story;
import rinsebell.floor.visit.Area;
import rinsebell.floor.visit.Complaint;
import rinsebell.floor.visit.ScalpCheck;

/**
 * What rang for whom. A medium bell calls the assistants after two minutes and everyone after two more; seen, it rings
 * again after five.
 */
class RingLogTest {
    private final Story story = Story.begins();
    private final StaffId own = story.stylist();
    private final StaffId assistant = story.assistant();
    private final Head head = story.at("09:50").arrivesFine();

    private record Rang(
            BellKind kind,
            Priority priority,
            Instant began,
            @Nullable Instant ended,
            @Nullable End how) {}

    private static Rang rang(
            BellKind kind, Priority priority, String began, @Nullable String ended, @Nullable End how) {
        return new Rang(kind, priority, at(began), ended == null ? null : at(ended), how);
    }

    private RingLog log(String until) {
        return RingLog.of(story.facts(), at("08:00"), at(until));
    }

    /** Bells of one kind: the bowl is of lightener alone, which rings for itself. */
    private List<Rang> ofPerson(@Nullable StaffId person, BellKind kind, String until) {
        return log(until).annunciations().stream()
                .filter(one ->
                        Objects.equals(one.person(), person) && one.bell().kind() == kind)
                .map(one -> new Rang(one.bell().kind(), one.priority(), one.began(), one.ended(), one.how()))
                .toList();
    }

    private void tinglesAt(String clock) {
        story.at("09:55");
        var on = head.puts(story.mixes(g(60, Shelf.MILD_CREAM)), offScalp(Area.LENGTHS));
        head.lastOn(on);
        story.at(clock);
        head.complains(Complaint.Grade.TINGLING);
    }

    @Test
    void whoIsCalledLaterHearsItLater() {
        tinglesAt("10:00");
        story.at("10:03");
        head.scalpIs(ScalpCheck.Finding.FINE);

        assertThat(ofPerson(own, BellKind.TINGLING, "10:04"))
                .containsExactly(rang(BellKind.TINGLING, Priority.MEDIUM, "10:00", "10:03", End.DONE));
        assertThat(ofPerson(assistant, BellKind.TINGLING, "10:04"))
                .containsExactly(rang(BellKind.TINGLING, Priority.MEDIUM, "10:02", "10:03", End.DONE));
        assertThat(ofPerson(null, BellKind.TINGLING, "10:04")).isEqualTo(ofPerson(own, BellKind.TINGLING, "10:04"));
    }

    /** Just before, at and just after the instant at which the assistants are called. */
    @Test
    void whatIsOverByThenNeverRang() {
        tinglesAt("10:00");
        assertThat(ofPerson(assistant, BellKind.TINGLING, "10:01:59.999")).isEmpty();
        assertThat(ofPerson(assistant, BellKind.TINGLING, "10:02")).isEmpty();
        assertThat(ofPerson(assistant, BellKind.TINGLING, "10:02:00.001")).hasSize(1);
    }

    @Test
    void whatWasSeenRingsAgainAndCountsAgain() {
        tinglesAt("10:00");
        story.at("10:01");
        story.acknowledges(bell(story.floor(), BellKind.TINGLING));

        assertThat(ofPerson(own, BellKind.TINGLING, "10:07"))
                .containsExactly(
                        rang(BellKind.TINGLING, Priority.MEDIUM, "10:00", "10:01", End.SEEN),
                        rang(BellKind.TINGLING, Priority.MEDIUM, "10:06", null, null));
    }

    @Test
    void whatWasPutOffRingsAgainAndCountsAgain() {
        tinglesAt("10:00");
        story.at("10:01");
        story.shelves(bell(story.floor(), BellKind.TINGLING), minutes(3));

        assertThat(ofPerson(own, BellKind.TINGLING, "10:05"))
                .containsExactly(
                        rang(BellKind.TINGLING, Priority.MEDIUM, "10:00", "10:01", End.PUT_OFF),
                        rang(BellKind.TINGLING, Priority.MEDIUM, "10:04", null, null));
    }

    @Test
    void whatWasWithdrawnWasNotAnswered() {
        story.at("09:55");
        head.puts(story.mixes(g(60, Shelf.MILD_CREAM)), offScalp(Area.LENGTHS));
        story.at("10:00");
        var said = head.complains(Complaint.Grade.TINGLING);
        story.at("10:01");
        story.withdraws(said);

        assertThat(ofPerson(own, BellKind.TINGLING, "10:04"))
                .containsExactly(rang(BellKind.TINGLING, Priority.MEDIUM, "10:00", "10:01", End.RETURNED));
    }

    private static Leaflet everyTen() {
        return leaflet("powder", Kind.POWDER_LIGHTENER).strandEvery(minutes(10), null);
    }

    /** Medium 2 min late, high 5 min late: two interruptions of one bell, answered after six minutes. */
    @Test
    void louderCountsOnceMore() {
        story.at("10:00");
        var on = head.puts(story.mixes(g(60, everyTen().typedIn())), offScalp(Area.LENGTHS));
        head.lastOn(on);
        story.at("10:18");
        head.checks(on);

        assertThat(ofPerson(own, BellKind.STRAND_CHECK, "10:19"))
                .containsExactly(
                        rang(BellKind.STRAND_CHECK, Priority.MEDIUM, "10:12", "10:15", End.LOUDER),
                        rang(BellKind.STRAND_CHECK, Priority.HIGH, "10:15", "10:18", End.DONE));
        assertThat(log("10:19").annunciations())
                .anyMatch(one -> one.toAnswer().filter(minutes(6)::equals).isPresent());
    }

    /** Looks of one round are one bell, and stay one when the first of them has been taken. */
    @Test
    void aRoundIsOneBell() {
        story.at("10:00");
        var first = head.puts(story.mixes(g(60, everyTen().typedIn())), offScalp(Area.LENGTHS));
        head.lastOn(first);
        var other = story.arrivesFine();
        story.at("10:01");
        var second = other.puts(story.mixes(g(60, everyTen().typedIn())), offScalp(Area.LENGTHS));
        other.lastOn(second);
        story.at("10:14");
        head.checks(first);
        story.at("10:15");
        other.checks(second);

        assertThat(ofPerson(own, BellKind.STRAND_CHECK, "10:16"))
                .containsExactly(rang(BellKind.STRAND_CHECK, Priority.MEDIUM, "10:13", "10:15", End.DONE));
    }

    @Test
    void aDuePromptIsSilent() {
        story.at("10:00");
        head.lastOn(head.puts(story.mixes(g(60, everyTen().typedIn())), offScalp(Area.LENGTHS)));
        assertThat(ofPerson(own, BellKind.STRAND_CHECK, "10:12")).isEmpty();
    }

    /**
     * What was told too late rings from when it was told, and its turn was known only then: due at 10:10, quiet until
     * 10:20 while it may be being put on, then high, wider each half minute, until it calls everyone.
     */
    @Test
    void nobodyHearsWhatNobodyKnows() {
        story.at("10:30");
        var on = head.puts(story.mixes(g(60, everyTen().typedIn())), offScalp(Area.LENGTHS));
        story.setsBack(on.value(), "10:00");

        assertThat(ofPerson(own, BellKind.STRAND_CHECK, "10:31"))
                .containsExactly(rang(BellKind.STRAND_CHECK, Priority.HIGH, "10:30", null, null));
        var turn = new Turned(bell(story.floor(), BellKind.STRAND_CHECK).key(), at("10:21:30"));
        assertThat(log("10:31").turns()).containsEntry(turn, at("10:30"));
    }

    /** The salon's clock was ten minutes slow: what had rung did so ten minutes later by the right one. */
    @Test
    void theClockTakesAllAlong() {
        tinglesAt("10:00");
        story.at("10:01");
        story.shiftsClock(minutes(10));
        story.at("10:13");
        head.scalpIs(ScalpCheck.Finding.FINE);

        assertThat(ofPerson(own, BellKind.TINGLING, "10:14"))
                .containsExactly(rang(BellKind.TINGLING, Priority.MEDIUM, "10:10", "10:13", End.DONE));
        assertThat(ofPerson(assistant, BellKind.TINGLING, "10:14"))
                .containsExactly(rang(BellKind.TINGLING, Priority.MEDIUM, "10:12", "10:13", End.DONE));
    }

    @Test
    void itStandsUntilWhatItRangForIsOver() {
        tinglesAt("10:00");
        story.at("10:01");
        story.acknowledges(bell(story.floor(), BellKind.TINGLING));
        assertThat(log("10:03").standing())
                .filteredOn(one -> one.bell().kind() == BellKind.TINGLING)
                .singleElement()
                .matches(one -> one.gone() == null && one.at(at("10:03")).equals(minutes(3)));
        story.at("10:04");
        head.scalpIs(ScalpCheck.Finding.FINE);
        assertThat(log("10:10").standing())
                .filteredOn(one -> one.bell().kind() == BellKind.TINGLING)
                .singleElement()
                .matches(one -> one.at(at("10:10")).equals(minutes(4)));
    }

    /** Fact after fact, and looked at in between, it comes to the same as all at once. */
    @Test
    void lookingInBetweenChangesNothing() {
        louderCountsOnceMore();
        var facts = story.facts();
        var log = RingLog.of(facts.subList(0, 3), at("08:00"), at("09:51"));
        for (var fact : facts.subList(3, facts.size())) {
            log.take(List.of(fact));
        }
        log.goOnUntil(at("10:19"));
        assertThat(log.annunciations()).isEqualTo(log("10:19").annunciations());
    }
}

package rinsebell.floor.clock;

import static org.assertj.core.api.Assertions.assertThat;
import static rinsebell.floor.product.Heat.GENTLE_STEAM;
import static rinsebell.floor.product.Kind.MILD_CREAM_LIGHTENER;
import static rinsebell.floor.testing.Leaflet.leaflet;
import static rinsebell.floor.testing.Saturday.at;
import static rinsebell.floor.testing.Saturday.minutes;
import static rinsebell.floor.testing.Scoop.g;
import static rinsebell.floor.testing.Where.offScalp;
import static rinsebell.floor.testing.Where.onScalp;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rinsebell.floor.bowl.BowlId;
import rinsebell.floor.product.Directions;
import rinsebell.floor.testing.Head;
import rinsebell.floor.testing.Story;
import rinsebell.floor.visit.ApplicationId;
import rinsebell.floor.visit.Area;
import rinsebell.floor.visit.CheckDecision;
import rinsebell.floor.visit.ScalpCheck;

/** When strand and scalp are looked at next. Strand every 10 minutes, 4 under heat; scalp every 8, 3 under heat. */
class LooksTest {
    private static final Directions CREAM = leaflet("cream", MILD_CREAM_LIGHTENER)
            .strandEvery(minutes(10), minutes(4))
            .scalpEvery(minutes(8), minutes(3))
            .allows(GENTLE_STEAM)
            .typedIn();

    private final Story story = Story.begins();
    private final Head head = story.at("09:50").arrivesFine();
    private final BowlId bowl = story.mixes(g(60, CREAM));
    private ApplicationId on = new ApplicationId(0);

    @BeforeEach
    void putOnAtTen() {
        story.at("10:00");
        on = head.puts(bowl, onScalp(Area.REGROWTH));
    }

    private Looks.Due strand() {
        return Looks.strand(head.timing(on), head.visit()).orElseThrow();
    }

    private Looks.Due scalp() {
        return head.timing().nextScalp().orElseThrow();
    }

    @Test
    void theFirstCountsFromFirstOn() {
        assertThat(strand()).isEqualTo(new Looks.Due(at("10:10"), on.value()));
        assertThat(scalp()).isEqualTo(new Looks.Due(at("10:08"), on.value()));
    }

    @Test
    void theNextCountsFromTheLast() {
        story.at("10:07");
        var strandLook = head.checks(on);
        assertThat(strand()).isEqualTo(new Looks.Due(at("10:17"), strandLook));
        assertThat(scalp().at()).as("a look at a strand is none at the scalp").isEqualTo(at("10:08"));
        var scalpLook = head.scalpIs(ScalpCheck.Finding.FINE);
        assertThat(scalp()).isEqualTo(new Looks.Due(at("10:15"), scalpLook));
    }

    @ParameterizedTest
    @CsvSource({
        "10:00, 10:04, 10:03",
        "10:05, 10:09, 10:08",
        "10:05:59.999, 10:09:59.999, 10:08",
        "10:06, 10:10, 10:08",
        "10:06:00.001, 10:10, 10:08"
    })
    void heatBringsTheNextForwardFromWhenItBegan(String heated, String strand, String scalp) {
        story.at(heated);
        head.heats(GENTLE_STEAM);
        assertThat(strand().at()).isEqualTo(at(strand));
        assertThat(scalp().at()).isEqualTo(at(scalp));
    }

    @Test
    void underHeatTheNextCountsFromTheLastLook() {
        story.at("10:01");
        head.heats(GENTLE_STEAM);
        story.at("10:05");
        head.checks(on);
        head.scalpIs(ScalpCheck.Finding.FINE);
        assertThat(strand().at()).isEqualTo(at("10:09"));
        assertThat(scalp().at()).isEqualTo(at("10:08"));
    }

    @Test
    void afterHeatTheIntervalIsThePlainOneAgain() {
        story.at("10:01");
        head.heats(GENTLE_STEAM);
        story.at("10:03");
        head.heatOff();
        assertThat(strand().at()).isEqualTo(at("10:10"));
    }

    @ParameterizedTest
    @CsvSource({"3, 10:10", "9, 10:16", "10, 10:17", "11, 10:17", "60, 10:17"})
    void lookAgainShortensAndNeverLengthens(long again, String next) {
        story.at("10:07");
        head.looksAgain(on, minutes(again));
        assertThat(strand().at()).isEqualTo(at(next));
    }

    @ParameterizedTest
    @CsvSource({"3, 10:10", "7, 10:14", "8, 10:15", "9, 10:15"})
    void lookAgainAtTheScalpShortensAndNeverLengthens(long again, String next) {
        story.at("10:07");
        head.scalpIs(ScalpCheck.Finding.PINK, CheckDecision.lookAgain(minutes(again)));
        assertThat(scalp().at()).isEqualTo(at(next));
    }

    @Test
    void lookAgainDoesNotOutlastHeat() {
        story.at("10:07");
        head.heats(GENTLE_STEAM);
        head.looksAgain(on, minutes(5));
        assertThat(strand().at()).isEqualTo(at("10:11"));
    }

    @Test
    void noneAfterRinseWasDecided() {
        story.at("10:07");
        head.saysRinse(on);
        assertThat(Looks.strand(head.timing(on), head.visit())).isEmpty();
    }

    @Test
    void noneOnceItIsOff() {
        story.at("10:20");
        head.rinses(on);
        assertThat(head.timing().nextStrand()).isEmpty();
        assertThat(head.timing().nextScalp()).isEmpty();
    }

    @Test
    void theScalpIsLookedAtOnlyWhereSomethingIsOnIt() {
        story.at("10:20");
        head.rinses(on);
        head.puts(bowl, offScalp(Area.LENGTHS));
        assertThat(head.timing().nextScalp()).isEmpty();
        assertThat(head.timing().nextStrand().map(Looks.Due::at)).contains(at("10:30"));
    }

    @Test
    void aLookBeforeThisRoundDoesNotCount() {
        story.at("09:59:59.999");
        head.scalpIs(ScalpCheck.Finding.FINE);
        assertThat(scalp()).isEqualTo(new Looks.Due(at("10:08"), on.value()));
    }

    @Test
    void directionsWithoutIntervalsAskForNoLook() {
        var quiet = story.mixes(g(60, leaflet("quiet", MILD_CREAM_LIGHTENER).typedIn()));
        var other = story.arrivesFine();
        other.puts(quiet, onScalp(Area.REGROWTH));
        assertThat(other.timing().nextStrand()).isEmpty();
        assertThat(other.timing().nextScalp()).isEmpty();
    }

    @Test
    void ofSeveralTheEarliestComesFirst() {
        story.at("10:05");
        var second = head.puts(bowl, offScalp(Area.LENGTHS));
        assertThat(head.timing().nextStrand()).contains(new Looks.Due(at("10:10"), on.value()));
        story.at("10:09");
        head.checks(on);
        assertThat(head.timing().nextStrand()).contains(new Looks.Due(at("10:15"), second.value()));
    }
}

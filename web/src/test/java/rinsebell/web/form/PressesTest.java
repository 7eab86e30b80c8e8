package rinsebell.web.form;

import static org.assertj.core.api.Assertions.assertThat;
import static rinsebell.web.form.PressTable.asked;
import static rinsebell.web.form.PressTable.command;
import static rinsebell.web.form.PressTable.faults;

import java.time.Duration;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rinsebell.floor.Asked;
import rinsebell.floor.Intent;
import rinsebell.floor.bell.BellKey;
import rinsebell.floor.bell.BellKind;
import rinsebell.floor.bowl.BowlReason;
import rinsebell.floor.bowl.Left;
import rinsebell.floor.command.Acknowledge;
import rinsebell.floor.command.Arrange;
import rinsebell.floor.command.FillRecipe;
import rinsebell.floor.command.Mix;
import rinsebell.floor.command.PutAlready;
import rinsebell.floor.command.Report;
import rinsebell.floor.command.Rinse;
import rinsebell.floor.command.SetFactBack;
import rinsebell.floor.command.ThrowAway;
import rinsebell.floor.command.Welcome;
import rinsebell.floor.command.WithdrawFact;
import rinsebell.floor.product.Cover;
import rinsebell.floor.product.Zone;
import rinsebell.floor.salon.Place;
import rinsebell.floor.testing.Saturday;
import rinsebell.floor.testing.Shelf;
import rinsebell.floor.unit.Grams;
import rinsebell.floor.visit.Area;
import rinsebell.floor.visit.CheckDecision;
import rinsebell.floor.visit.Complaint;
import rinsebell.floor.visit.Ending;
import rinsebell.floor.visit.Gate;
import rinsebell.floor.visit.LookEvent;
import rinsebell.floor.visit.ScalpCheck;
import rinsebell.floor.visit.StayEvent;
import rinsebell.floor.visit.StrandFinding;
import rinsebell.floor.visit.VisitEvent;
import rinsebell.floor.visit.WorkEvent;

class PressesTest {
    private final PressTable table = new PressTable();

    private void reports(VisitEvent event, String press, String... typed) {
        assertThat(command(table.onVisit(press, typed))).isEqualTo(Report.of(table.visit, event));
    }

    /** A clock time that is to come: the next one on the salon's clocks, at most half a day away. It is ten o'clock. */
    @ParameterizedTest
    @CsvSource({
        "11:40, 100",
        "10:01, 1",
        "22:00, 720",
        "2026-05-16T11:40:00+02:00, 100",
    })
    void anEndIsToldByTheClock(String until, int minutes) {
        reports(new StayEvent.EndTold(Duration.ofMinutes(minutes)), "end-told", "until", until);
    }

    @ParameterizedTest
    @CsvSource({
        "10:00, GONE_BY",
        "09:30, GONE_BY",
        "22:01, GONE_BY",
        "2026-05-16T09:59:00+02:00, GONE_BY",
        "2026-05-18T09:59:00+02:00, GONE_BY",
        "soon, NOT_A_TIME",
        "'', MISSING",
    })
    void anEndThatHasGoneByIsNoEnd(String until, Fault fault) {
        assertThat(faults(table.onVisit("end-told", "until", until))).isEqualTo(Map.of("until", fault));
    }

    /** Told twenty minutes ago that it takes until half past ten. */
    @Test
    void whatWasToldCountsFromThen() {
        reports(new StayEvent.EndTold(Duration.ofMinutes(50)), "end-told", "until", "10:30", "minutesAgo", "20");
    }

    @Test
    void everyPressOfAHeadReads() {
        reports(new StayEvent.Moved(Place.basin(1)), "move", "place", "basin-A");
        reports(new StayEvent.HandedOver(table.story.stylist(), null), "hand-over", "stylist", stylist());
        reports(new StayEvent.ClientLinked(null), "client");
        reports(new WorkEvent.LastOn(table.on), "last-on");
        reports(new WorkEvent.CoverChanged(table.on, Cover.FILM), "cover", "cover", "film");
        reports(new WorkEvent.Planned(table.on, Duration.ofMinutes(35)), "plan", "planned", "35");
        reports(new WorkEvent.Planned(table.on, null), "plan");
        reports(new WorkEvent.HeatOn(rinsebell.floor.product.Heat.GENTLE_STEAM), "heat-on", "heat", "gentle-steam");
        reports(new WorkEvent.HeatOff(), "heat-off");
        reports(new WorkEvent.FoilsOut(table.on), "foils-out", "application", "" + table.on.value());
        reports(new WorkEvent.Emulsified(table.on), "emulsified");
        reports(new WorkEvent.TakenOff(Set.of(table.on), Ending.How.WIPED_OFF), "wipe-off");
        reports(new WorkEvent.TowelDried(), "towel-dried");
        reports(new LookEvent.LiftJudged(true), "lift", "reached", "yes");
        reports(new LookEvent.RoundsStopped(), "stop");
        reports(new LookEvent.Complained(Complaint.Grade.HOT_FOIL), "discomfort", "grade", "hot-foil");
        reports(new StayEvent.Left(), "leave");
    }

    @Test
    void checksCarryFindingAndDecision() {
        var finding = new StrandFinding(8, StrandFinding.Tone.PALE_YELLOW, null, StrandFinding.Dryness.MOIST);
        reports(
                new LookEvent.StrandChecked(table.on, finding, CheckDecision.lookAgain(Duration.ofMinutes(5))),
                "strand",
                "level",
                "8",
                "tone",
                "pale-yellow",
                "dryness",
                "moist",
                "again",
                "5");
        reports(
                new LookEvent.ScalpChecked(ScalpCheck.Finding.PINK, CheckDecision.RINSE),
                "scalp",
                "finding",
                "pink",
                "decision",
                "rinse");
        assertThat(faults(table.onVisit("scalp", "finding", "fine", "decision", "rinse", "again", "3")))
                .isEqualTo(Map.of("again", Fault.TWO_ANSWERS));
    }

    @Test
    void rinsingAtABasinTakesTheClientThere() {
        assertThat(command(table.onVisit("rinse", "basin", "B")))
                .isEqualTo(new Rinse(table.visit, Set.of(table.on), (Place.Basin) Place.basin(2), null));
    }

    @Test
    void puttingOnNamesBowlAreaAndZone() {
        reports(
                new WorkEvent.PutOn(table.bowl, Area.LENGTHS, Zone.OFF_SCALP, Cover.FOIL, Duration.ofMinutes(30)),
                "put-on",
                "bowl",
                "" + table.bowl.value(),
                "area",
                "lengths",
                "zone",
                "off-scalp",
                "cover",
                "foil",
                "planned",
                "30");
        assertThat(faults(table.onVisit("put-on")))
                .isEqualTo(Map.of("bowl", Fault.MISSING, "area", Fault.MISSING, "zone", Fault.MISSING));
    }

    @Test
    void alreadyOnIsOnePressAndMinutesAgo() {
        var reading = table.onVisit("already-on", "minutesAgo", "12");
        assertThat(command(reading)).isEqualTo(new PutAlready(table.visit, Area.WHOLE_HEAD, Zone.ON_SCALP, Cover.OPEN));
        assertThat(asked(reading).happened()).isEqualTo(Saturday.at("09:48"));
    }

    @Test
    void welcomeTakesEmojiAndRightToLeftLabels() {
        var fields = Fields.of(
                "label", " דנה \uD83D\uDC87\u200D♀️ ",
                "place", "chair-3",
                "stylist", stylist(),
                "scalp", "fine",
                "skinTest", "no-reaction",
                "skinTestOn", "2026-05-13",
                "under16", "no");
        var gate = new Gate(
                new Gate.SkinTest(Gate.SkinTest.Result.NO_REACTION, LocalDate.of(2026, 5, 13)),
                Gate.Scalp.FINE,
                null,
                null,
                Gate.YesNo.NO);
        assertThat(command(table.read("visits", "", 0, fields)))
                .isEqualTo(new Welcome(
                        new StayEvent.Arrived(Place.chair(3), table.story.stylist(), null, null),
                        "דנה \uD83D\uDC87\u200D♀️",
                        gate));
    }

    @Test
    void welcomeTellsAllThatIsWrongAtOnce() {
        var fields = Fields.of(
                "label", "x".repeat(41),
                "place", "chair-9",
                "stylist", "999",
                "skinTest", "reacted",
                "under16", "maybe");
        assertThat(faults(table.read("visits", "", 0, fields)))
                .isEqualTo(Map.of(
                        "label", Fault.TOO_LONG,
                        "place", Fault.NOT_KNOWN,
                        "stylist", Fault.NOT_KNOWN,
                        "skinTestOn", Fault.MISSING,
                        "under16", Fault.NOT_A_CHOICE));
    }

    @Test
    void mixingReadsRowsWithGramsFromFormsAndFromTrees() {
        var cream = table.story.product(Shelf.MILD_CREAM);
        var developer = table.story.product(Shelf.DEV20);
        var portions = List.of(
                Map.of("product", cream.value(), "grams", 60), Map.of("product", developer.value(), "grams", "60,5"));
        var tree = Map.of("portions", portions, "reason", "refill");
        var mix = (Mix) command(table.read("bowls", "", 0, Fields.ofTree(tree)));
        assertThat(mix.weighed()).hasSize(2);
        assertThat(mix.weighed().get(1).grams()).isEqualTo(rinsebell.floor.unit.Grams.of("60.5"));
        assertThat(mix.reason()).isEqualTo(BowlReason.REFILL);
        var recipe = Fields.ofTree(Map.of("portions", portions));
        var filled = command(table.read("bowls", "recipe", table.bowl.value(), recipe));
        assertThat(((FillRecipe) filled).weighed()).isEqualTo(mix.weighed());
    }

    /** A program that misspells a name must hear of it; a browser may add to a form what it likes. */
    @Test
    void inATreeEveryNameCounts() {
        var bowl = table.bowl.value();
        var odd = Map.of("minuteAgo", 5, "by", Map.of("id", 1), "deep", List.of(List.of(List.of())));
        assertThat(faults(table.read("bowls", "throw-away", bowl, Fields.ofTree(odd))))
                .isEqualTo(Map.of("minuteAgo", Fault.NOT_A_FIELD, "by.id", Fault.NOT_A_FIELD));
        command(table.read("bowls", "throw-away", bowl, Fields.of("minuteAgo", "5")));
        var halfARow = Fields.ofTree(Map.of("portions", List.of(Map.of("product", 1))));
        assertThat(faults(table.read("bowls", "recipe", bowl, halfARow)))
                .containsEntry("portions.0.grams", Fault.MISSING);
    }

    @ParameterizedTest
    @CsvSource({
        "0.09, TOO_SMALL",
        "-1, TOO_SMALL",
        "0, TOO_SMALL",
        "2000.01, TOO_LARGE",
        "1e3, NOT_A_NUMBER",
        "NaN, NOT_A_NUMBER",
        "Infinity, NOT_A_NUMBER",
        "0x10, NOT_A_NUMBER",
        "60.125, TOO_FINE",
        "99999999999999999999, NOT_A_NUMBER",
        "٣, NOT_A_NUMBER",
        "<b>6</b>, NOT_A_NUMBER"
    })
    void gramsOutsideTheirBounds(String grams, Fault fault) {
        var fields = Fields.of("portions.0.product", product(), "portions.0.grams", grams);
        assertThat(faults(table.read("bowls", "", 0, fields))).isEqualTo(Map.of("portions.0.grams", fault));
    }

    @ParameterizedTest
    @CsvSource({"0.1", "2000", "60", "60.25", "',5'", "+7"})
    void gramsWithinTheirBounds(String grams) {
        var fields = Fields.of("portions.0.product", product(), "portions.0.grams", grams);
        assertThat(command(table.read("bowls", "", 0, fields))).isInstanceOf(Mix.class);
    }

    private Reading throwsAway(String... typed) {
        return table.read("bowls", "throw-away", table.bowl.value(), Fields.of(typed));
    }

    private @Nullable Left left(String... typed) {
        return ((ThrowAway) command(throwsAway(typed))).left();
    }

    @Test
    void whatIsLeftIsEstimatedOrWeighedOrNotSaid() {
        assertThat(left()).isNull();
        assertThat(faults(throwsAway("grams", ""))).isEqualTo(Map.of("grams", Fault.MISSING));
        var tree = Fields.ofTree(Map.of("left", "", "grams", ""));
        assertThat(((ThrowAway) command(table.read("bowls", "throw-away", table.bowl.value(), tree))).left())
                .isNull();
        assertThat(left("left", "three-quarters")).isEqualTo(new Left.Estimated(Left.Quarters.THREE_QUARTERS));
        assertThat(left("grams", "12,5")).isEqualTo(new Left.Weighed(Grams.of("12.5")));
        assertThat(faults(throwsAway("left", "half", "grams", "60"))).isEqualTo(Map.of("grams", Fault.TWO_ANSWERS));
    }

    /** The bowl has 60 g and 60 g. */
    @ParameterizedTest
    @CsvSource({
        "-0.01, TOO_SMALL",
        "120.01, TOO_LARGE",
        "1000000000, TOO_LARGE",
        "0.125, TOO_FINE",
        "some, NOT_A_NUMBER"
    })
    void noMoreIsLeftThanWasMixed(String grams, Fault fault) {
        assertThat(faults(throwsAway("left", "much", "grams", grams)))
                .isEqualTo(Map.of("left", Fault.NOT_A_CHOICE, "grams", fault));
    }

    @ParameterizedTest
    @CsvSource({"0", "119.99", "120"})
    void whatIsLeftMayBeAsMuchAsWasMixed(String grams) {
        assertThat(left("grams", grams)).isEqualTo(new Left.Weighed(Grams.of(grams)));
    }

    @Test
    void theMostThatCanBeLeftIsNamed() {
        var wrong = (Reading.Wrong) throwsAway("grams", "500");
        assertThat(wrong.errors().get(0).args()).hasToString("[120]");
    }

    private Reading prices(String grams, String price) {
        return table.read("products", "price", Long.parseLong(product()), Fields.of("tubGrams", grams, "price", price));
    }

    /** Both fields are read, whatever is wrong with the other. */
    @ParameterizedTest
    @CsvSource({
        "0, TOO_SMALL, -0.01, TOO_SMALL",
        "-1, TOO_SMALL, 10000000.01, TOO_LARGE",
        "1000000000, TOO_LARGE, 1000000000, TOO_LARGE",
        "1e9, NOT_A_NUMBER, dear, NOT_A_NUMBER",
        "0.125, TOO_FINE, 0.125, TOO_FINE",
        "'', MISSING, '', MISSING"
    })
    void pricesOutsideTheirBounds(String grams, Fault ofGrams, String price, Fault ofPrice) {
        assertThat(faults(prices(grams, price))).isEqualTo(Map.of("tubGrams", ofGrams, "price", ofPrice));
    }

    @ParameterizedTest
    @CsvSource({"0.1, 0", "450, 27.5", "100000, 10000000", "',5', '12,34'"})
    void pricesWithinTheirBounds(String grams, String price) {
        assertThat(command(prices(grams, price))).isInstanceOf(Arrange.class);
    }

    @ParameterizedTest
    @CsvSource({"0, 10:00", "1, 09:59", "720, 22:00"})
    void minutesAgo(int ago, String clock) {
        var expected = ago == 720 ? Saturday.on(Saturday.DATE.minusDays(1), clock) : Saturday.at(clock);
        assertThat(asked(table.onVisit("stop", "minutesAgo", "" + ago)).happened())
                .isEqualTo(expected);
    }

    @ParameterizedTest
    @CsvSource({
        "minutesAgo, -1, TOO_SMALL", "minutesAgo, 721, TOO_LARGE", "minutesAgo, 2.5, NOT_WHOLE",
        "minutesAgo, ten, NOT_A_NUMBER", "at, 25:00, NOT_A_TIME", "at, yesterday, NOT_A_TIME",
        "at, 2026-05-16, NOT_A_TIME", "at, +999999999-01-01T00:00:00Z, NOT_A_TIME", "by, 99, NOT_KNOWN",
        "by, -1, NOT_KNOWN", "intent, perhaps, NOT_A_CHOICE"
    })
    void whatEveryPressHasInCommon(String field, String typed, Fault fault) {
        assertThat(faults(table.onVisit("stop", field, typed))).isEqualTo(Map.of(field, fault));
    }

    @ParameterizedTest
    @CsvSource({
        "09:30, 2026-05-16T07:30:00Z",
        "10:00, 2026-05-16T08:00:00Z",
        "10:01, 2026-05-15T08:01:00Z",
        "2026-05-16T09:30:00+02:00, 2026-05-16T07:30:00Z",
        "2026-05-16T07:30:00.1239Z, 2026-05-16T07:30:00.123Z"
    })
    void aTypedTimeIsTheLatestMatchingInstant(String typed, String instant) {
        assertThat(asked(table.onVisit("stop", "at", typed)).happened()).isEqualTo(java.time.Instant.parse(instant));
    }

    /** The table's now is 10:00, and ages are in milliseconds; what is no age counts for nothing. */
    @ParameterizedTest
    @CsvSource({
        "age, 0, '', '', 10:00, BY_AGE",
        "age, 60000, '', '', 09:59, BY_AGE",
        "age, -1, '', '', 10:00, UNSURE",
        "age, 1e3, '', '', 10:00, UNSURE",
        "age, '', '', '', 10:00, UNSURE",
        "age, 60000, minutesAgo, 5, 09:54, BY_HAND",
        "age, 60000, at, 09:30, 09:30, BY_HAND",
        "told, by-age, at, 09:30, 09:30, BY_AGE",
        "told, unsure, at, 09:30, 09:30, UNSURE",
        "told, by-age, '', '', 10:00, NOW"
    })
    void howItIsKnownWhenItHappened(
            String one, String value, String other, String otherValue, String clock, Asked.Told told) {
        var asked = asked(table.onVisit("stop", one, value, other, otherValue));
        assertThat(asked.happened()).isEqualTo(Saturday.at(clock));
        assertThat(asked.told()).isEqualTo(told);
    }

    @Test
    void intentAndWhoAreRead() {
        var asked = asked(table.onVisit("stop", "intent", "fact", "by", stylist()));
        assertThat(asked.intent()).isEqualTo(Intent.FACT);
        assertThat(asked.by()).isEqualTo(table.story.stylist());
    }

    @Test
    void settingBackNamesAnInstantOrMinutesEarlier() {
        var to = new SetFactBack(table.on.value(), Saturday.at("09:51"));
        assertThat(command(table.read("facts", "set-back", table.on.value(), Fields.of("at", "09:51"))))
                .isEqualTo(to);
        var earlier = table.read("facts", "set-back", table.on.value(), Fields.of("earlier", "4"));
        assertThat(command(earlier)).isEqualTo(to);
        assertThat(asked(earlier).told()).isEqualTo(Asked.Told.NOW);
        assertThat(faults(table.read("facts", "set-back", table.on.value(), Fields.NONE)))
                .isEqualTo(Map.of("at", Fault.MISSING));
    }

    /** Burning that could not be saved counts from a number that no fact on disk has. */
    @Test
    void aBellThatIsNotOnDiskCanBeHeardToo() {
        for (var anchor : List.of(5L, -5L)) {
            var typed = Fields.of("kind", "burning", "subject", "" + table.visit.value(), "anchor", "" + anchor);
            assertThat(command(table.read("bells", "acknowledge", 0, typed)))
                    .isEqualTo(new Acknowledge(new BellKey(BellKind.BURNING, table.visit.value(), anchor), null));
        }
    }

    @Test
    void withdrawingMayTakeAllThatHangsOnIt() {
        var along = command(table.read("facts", "withdraw", table.bowl.value(), Fields.of("all", "yes")));
        assertThat(along).isEqualTo(new WithdrawFact(table.bowl.value(), Set.of(table.on.value())));
    }

    @Test
    void controlCharactersAndTurnedDirectionsAreNoLabel() {
        for (var label : List.of("a\u0000b", "a\u001bb", "a\u202eb", "a\u2028b", "a\ud800b")) {
            assertThat(faults(table.onVisit("label", "label", label))).isEqualTo(Map.of("label", Fault.UNPRINTABLE));
        }
        for (var label : List.of("a\nb", "a\rb", "a\tb")) {
            assertThat(faults(table.onVisit("label", "label", label))).isEqualTo(Map.of("label", Fault.UNPRINTABLE));
        }
        for (var label : List.of(" \u200b ", "\u3164", "\u2800", "\ufe0f\ufe0f")) {
            assertThat(faults(table.onVisit("label", "label", label))).isEqualTo(Map.of("label", Fault.MISSING));
        }
    }

    private String stylist() {
        return "" + table.story.stylist().value();
    }

    private String product() {
        return "" + table.story.product(Shelf.MILD_CREAM).value();
    }

    /** Of a late look medium, and high with heat or on scalp; of a waiting bowl the question and low. */
    @ParameterizedTest
    @CsvSource({
        "checks.medium, 2, checks.highSooner, 1",
        "checks.medium, 5, checks.high, 4",
        "bowl.question, 6, bowl.low, 5"
    })
    void noBellOfTheHouseMayGetQuieter(String first, String minutes, String louder, String sooner) {
        var house = Map.of("checks.highSooner", "9", "checks.high", "9");
        assertThat(faults(policy(house, first, minutes, louder, sooner))).isEqualTo(Map.of(louder, Fault.ENDS_BEFORE));
        assertThat(policy(house, first, minutes, louder, minutes)).isInstanceOf(Reading.Read.class);
    }

    private Reading policy(Map<String, String> house, String first, String minutes, String louder, String later) {
        var typed = new LinkedHashMap<>(house);
        typed.put(first, minutes);
        typed.put(louder, later);
        var fields = typed.entrySet().stream()
                .flatMap(entry -> Stream.of(entry.getKey(), entry.getValue()))
                .toArray(String[]::new);
        return table.read("policy", Presses.PLAIN, 0, Fields.of(fields));
    }
}

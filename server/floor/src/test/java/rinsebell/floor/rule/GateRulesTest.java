package rinsebell.floor.rule;

import static org.assertj.core.api.Assertions.assertThat;
import static rinsebell.floor.ReasonCode.DYE_REACTION;
import static rinsebell.floor.ReasonCode.GATE_OPEN;
import static rinsebell.floor.ReasonCode.METAL_ON_HAIR;
import static rinsebell.floor.ReasonCode.NO_SKIN_TEST;
import static rinsebell.floor.ReasonCode.SCALP_NOT_SOUND;
import static rinsebell.floor.ReasonCode.UNDER_16;
import static rinsebell.floor.testing.Gates.FINE;
import static rinsebell.floor.testing.Gates.fineBut;
import static rinsebell.floor.testing.Gates.reactedEarlier;
import static rinsebell.floor.testing.Gates.testedOn;
import static rinsebell.floor.testing.Gates.under16;
import static rinsebell.floor.testing.Saturday.DATE;
import static rinsebell.floor.testing.Saturday.TEN;
import static rinsebell.floor.testing.Saturday.on;
import static rinsebell.floor.testing.Scoop.g;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import rinsebell.floor.Reason;
import rinsebell.floor.ReasonCode;
import rinsebell.floor.clock.Terms;
import rinsebell.floor.product.Zone;
import rinsebell.floor.salon.Policy;
import rinsebell.floor.testing.Gates;
import rinsebell.floor.testing.Scoop;
import rinsebell.floor.testing.Shelf;
import rinsebell.floor.testing.Story;
import rinsebell.floor.visit.Gate;
import rinsebell.floor.visit.Gate.Metal;
import rinsebell.floor.visit.Gate.Scalp;
import rinsebell.floor.visit.Gate.SkinTest;

/**
 * Every question of the gate against every family of product, on and off the scalp. Sources: dye and age, the dye
 * warnings of Regulation (EC) No 1223/2009, Annex III, entries 8, 8a, 9, 9a and 22; skin test two days before, every
 * time, FDA, "Cosmetics Safety Q&A: Hair Dyes"; henna and metal salts, common practice, no source.
 */
class GateRulesTest {
    private final Story story = Story.stocked();

    /** A family of products as one bowl: whether it holds dye, and lightener or peroxide. */
    private enum Family {
        CREAM_LIGHTENER(false, true, g(60, Shelf.MILD_CREAM), g(60, Shelf.DEV20)),
        POWDER_LIGHTENER(false, true, g(60, Shelf.POWDER), g(60, Shelf.DEV30)),
        LIGHTENER_WITHOUT_DEVELOPER(false, true, g(60, Shelf.POWDER)),
        HIGH_LIFT(true, true, g(60, Shelf.HIGH_LIFT), g(60, Shelf.DEV40)),
        PERMANENT(true, true, g(60, Shelf.PERMANENT), g(60, Shelf.DEV20)),
        TONER(true, true, g(60, Shelf.TONER), g(60, Shelf.DEV10)),
        TONER_WITHOUT_DEVELOPER(true, false, g(60, Shelf.TONER)),
        REMOVER(false, false, g(60, Shelf.REMOVER)),
        CLEAR(false, false, g(60, Shelf.CLEAR)),
        DEVELOPER(false, true, g(60, Shelf.DEV10));

        private final boolean dye;
        private final boolean lightenerOrPeroxide;

        @SuppressWarnings("ImmutableEnumChecker")
        private final Scoop[] bowl;

        Family(boolean dye, boolean lightenerOrPeroxide, Scoop... bowl) {
            this.dye = dye;
            this.lightenerOrPeroxide = lightenerOrPeroxide;
            this.bowl = bowl;
        }
    }

    private static final SkinTest REACTED = new SkinTest(SkinTest.Result.REACTED, DATE.minusDays(2));

    /** An answer and what it refuses: of dye, of dye on scalp, of anything on scalp, of lightener and peroxide. */
    private record Answer(
            String name,
            Gate gate,
            @Nullable ReasonCode dye,
            @Nullable ReasonCode dyeOnScalp,
            @Nullable ReasonCode onScalp,
            @Nullable ReasonCode peroxide) {
        List<ReasonCode> expected(Family family, Zone zone) {
            var codes = new ArrayList<@Nullable ReasonCode>();
            codes.add(zone == Zone.ON_SCALP ? onScalp : null);
            codes.add(family.dye ? dye : null);
            codes.add(family.dye && zone == Zone.ON_SCALP ? dyeOnScalp : null);
            codes.add(family.lightenerOrPeroxide ? peroxide : null);
            return codes.stream().flatMap(Stream::ofNullable).toList();
        }
    }

    private static List<Answer> answers() {
        return List.of(
                new Answer("fine", FINE, null, null, null, null),
                new Answer("no skin test", fineBut(SkinTest.NOT_DONE), null, NO_SKIN_TEST, null, null),
                new Answer("skin test yesterday", fineBut(testedOn(DATE.minusDays(1))), null, NO_SKIN_TEST, null, null),
                new Answer("skin test reacted", fineBut(REACTED), DYE_REACTION, null, null, null),
                new Answer("scalp sore", fineBut(Scalp.SORE), null, null, SCALP_NOT_SOUND, null),
                new Answer("scalp broken", fineBut(Scalp.BROKEN), null, null, SCALP_NOT_SOUND, null),
                new Answer("earlier reaction", reactedEarlier(), DYE_REACTION, null, null, null),
                new Answer("under 16", under16(), UNDER_16, null, null, null),
                new Answer("henna or metal", fineBut(Metal.PRESENT), null, null, null, METAL_ON_HAIR),
                new Answer("test reacted", fineBut(Metal.PRESENT_TEST_REACTED), null, null, null, METAL_ON_HAIR),
                new Answer("test fine", fineBut(Metal.PRESENT_TEST_WITHOUT_REACTION), null, null, null, null));
    }

    static Stream<Object[]> everyAnswerAndFamily() {
        return answers().stream()
                .flatMap(answer -> Stream.of(Family.values())
                        .flatMap(family -> Stream.of(Zone.values())
                                .map(zone -> new Object[] {answer.name, family, zone, answer})));
    }

    private List<ReasonCode> judged(Gate gate, Family family, Zone zone, Instant at) {
        var salon = story.floor().salon();
        return GateRules.judge(gate, Terms.of(story.portions(family.bowl), salon), zone, at, salon).stream()
                .map(Reason::code)
                .toList();
    }

    @ParameterizedTest(name = "{0}, {1}, {2}")
    @MethodSource("everyAnswerAndFamily")
    void theGateRefuses(String name, Family family, Zone zone, Answer answer) {
        assertThat(judged(answer.gate, family, zone, TEN)).as(name).isEqualTo(answer.expected(family, zone));
    }

    static Stream<Gate> eachQuestionUnanswered() {
        return Stream.of(
                new Gate(null, FINE.scalp(), FINE.earlierReaction(), FINE.metal(), FINE.under16()),
                new Gate(FINE.skinTest(), null, FINE.earlierReaction(), FINE.metal(), FINE.under16()),
                new Gate(FINE.skinTest(), FINE.scalp(), null, FINE.metal(), FINE.under16()),
                new Gate(FINE.skinTest(), FINE.scalp(), FINE.earlierReaction(), null, FINE.under16()),
                new Gate(FINE.skinTest(), FINE.scalp(), FINE.earlierReaction(), FINE.metal(), null),
                Gate.UNANSWERED);
    }

    @ParameterizedTest
    @MethodSource("eachQuestionUnanswered")
    void anUnansweredQuestionRefusesEveryProduct(Gate gate) {
        for (var family : Family.values()) {
            for (var zone : Zone.values()) {
                assertThat(judged(gate, family, zone, TEN))
                        .as("%s %s", family, zone)
                        .containsExactly(GATE_OPEN);
            }
        }
    }

    @Test
    void whatIsAnsweredRefusesEvenWhileAnotherQuestionIsOpen() {
        var sore = new Gate(null, Scalp.SORE, null, null, null);
        assertThat(judged(sore, Family.REMOVER, Zone.ON_SCALP, TEN))
                .containsExactlyInAnyOrder(GATE_OPEN, SCALP_NOT_SOUND);
    }

    // Two days before at least, seven days at most: the house's figures to begin with.
    @ParameterizedTest
    @CsvSource({"0, false", "1, false", "2, true", "3, true", "6, true", "7, true", "8, false", "-1, false"})
    void aSkinTestCountsByDaysOfTheCalendar(long daysAgo, boolean valid) {
        assertThat(isValid(DATE.minusDays(daysAgo), TEN)).isEqualTo(valid);
    }

    // A salon day turns at 04:00. The last two pairs are the nights of the change of the clocks, 46 and 48 hours long.
    @ParameterizedTest
    @CsvSource({
        "2026-05-14, 2026-05-16, 03:59:59.999, false",
        "2026-05-14, 2026-05-16, 04:00, true",
        "2026-05-14, 2026-05-16, 04:00:00.001, true",
        "2026-05-09, 2026-05-17, 03:59:59.999, true",
        "2026-05-09, 2026-05-17, 04:00, false",
        "2026-05-09, 2026-05-17, 04:00:00.001, false",
        "2026-03-27, 2026-03-29, 03:59:59.999, false",
        "2026-03-27, 2026-03-29, 04:00, true",
        "2026-03-27, 2026-03-29, 04:00:00.001, true",
        "2026-10-23, 2026-10-25, 03:59:59.999, false",
        "2026-10-23, 2026-10-25, 04:00, true",
        "2026-10-23, 2026-10-25, 04:00:00.001, true"
    })
    void theSalonDayDecides(LocalDate applied, LocalDate date, String clock, boolean valid) {
        assertThat(isValid(applied, on(date, clock))).isEqualTo(valid);
    }

    // A house that asks for more or less than two whole days: part of a day is asked for as a whole one.
    @ParameterizedTest
    @CsvSource({
        "47, 1, false",
        "47, 2, true",
        "48, 1, false",
        "48, 2, true",
        "49, 2, false",
        "49, 3, true",
        "72, 2, false",
        "72, 3, true"
    })
    void theTimeOfTheHouseIsAskedForInWholeDays(long hours, long daysAgo, boolean valid) {
        var policy = Policy.DEFAULT;
        story.policy(new Policy(
                policy.applying(),
                policy.working(),
                policy.bowl(),
                policy.checks(),
                policy.ringing(),
                new Policy.SkinTestRule(Duration.ofHours(hours), 7),
                policy.longestOn(),
                policy.weighingSlackGrams(),
                policy.keeping()));
        assertThat(isValid(DATE.minusDays(daysAgo), TEN)).isEqualTo(valid);
    }

    private boolean isValid(LocalDate applied, Instant at) {
        return judged(fineBut(Gates.testedOn(applied)), Family.TONER, Zone.ON_SCALP, at)
                .isEmpty();
    }

    @Test
    void aTestWithoutADateDoesNotCount() {
        var undated = new SkinTest(SkinTest.Result.NO_REACTION, null);
        assertThat(judged(fineBut(undated), Family.TONER, Zone.ON_SCALP, TEN)).containsExactly(NO_SKIN_TEST);
    }
}

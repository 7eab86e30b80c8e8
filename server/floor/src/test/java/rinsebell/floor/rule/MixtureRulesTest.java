package rinsebell.floor.rule;

import static org.assertj.core.api.Assertions.assertThat;
import static rinsebell.floor.ReasonCode.NEVER_MIXED;
import static rinsebell.floor.ReasonCode.NEVER_ON_SCALP_TOGETHER;
import static rinsebell.floor.ReasonCode.NO_DEVELOPER;
import static rinsebell.floor.ReasonCode.STRENGTH_NOT_ALLOWED;
import static rinsebell.floor.ReasonCode.STRENGTH_NOT_ON_SCALP;
import static rinsebell.floor.ReasonCode.TOO_LITTLE_DEVELOPER;
import static rinsebell.floor.ReasonCode.TOO_MUCH_ADDED;
import static rinsebell.floor.ReasonCode.TOO_MUCH_DEVELOPER;
import static rinsebell.floor.testing.Scoop.g;
import static rinsebell.floor.testing.Shelf.CLEAR;
import static rinsebell.floor.testing.Shelf.DEV10;
import static rinsebell.floor.testing.Shelf.DEV20;
import static rinsebell.floor.testing.Shelf.DEV30;
import static rinsebell.floor.testing.Shelf.DEV40;
import static rinsebell.floor.testing.Shelf.HIGH_LIFT;
import static rinsebell.floor.testing.Shelf.MILD_CREAM;
import static rinsebell.floor.testing.Shelf.PERMANENT;
import static rinsebell.floor.testing.Shelf.POWDER;
import static rinsebell.floor.testing.Shelf.REMOVER;
import static rinsebell.floor.testing.Shelf.STRONG_CREAM;
import static rinsebell.floor.testing.Shelf.TONER;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rinsebell.floor.Reason;
import rinsebell.floor.ReasonCode;
import rinsebell.floor.salon.Policy;
import rinsebell.floor.testing.Scoop;
import rinsebell.floor.testing.Story;

/** Which mixtures the directions of the shelf allow. The ratios and what never meets: common practice, no source. */
class MixtureRulesTest {
    private final Story story = Story.stocked();

    private record Row(String name, List<Scoop> scoops, List<ReasonCode> codes) {
        @Override
        public String toString() {
            return name;
        }
    }

    private static Row allowed(String name, Scoop... scoops) {
        return new Row(name, Arrays.asList(scoops), List.of());
    }

    private record Unjudged(String name, List<Scoop> scoops) {
        Row with(ReasonCode... codes) {
            return new Row(name, scoops, Arrays.asList(codes));
        }
    }

    private static Unjudged refused(String name, Scoop... scoops) {
        return new Unjudged(name, Arrays.asList(scoops));
    }

    private Story weighedWithin(int slackGrams) {
        var policy = Policy.DEFAULT;
        return story.policy(new Policy(
                policy.applying(),
                policy.working(),
                policy.bowl(),
                policy.checks(),
                policy.ringing(),
                policy.skinTest(),
                policy.longestOn(),
                slackGrams,
                policy.keeping()));
    }

    private List<ReasonCode> judged(List<Scoop> scoops) {
        return restrictions(MixtureRules.judge(
                story.portions(scoops.toArray(Scoop[]::new)), story.floor().salon()));
    }

    private List<ReasonCode> judgedOnScalp(Scoop... scoops) {
        return restrictions(
                MixtureRules.judgeOnScalp(story.portions(scoops), story.floor().salon()));
    }

    private static List<ReasonCode> restrictions(List<Reason> reasons) {
        return reasons.stream()
                .map(Reason::code)
                .filter(ReasonCode::isRestriction)
                .toList();
    }

    static Stream<Row> creamsTakeAnEqualWeightNeverADouble() {
        return Stream.of(
                refused("mild just below", g(60, MILD_CREAM), g("59.9", DEV20)).with(TOO_LITTLE_DEVELOPER),
                allowed("mild equal", g(60, MILD_CREAM), g(60, DEV20)),
                refused("mild just above", g(60, MILD_CREAM), g("60.1", DEV20)).with(TOO_MUCH_DEVELOPER),
                refused("mild double", g(60, MILD_CREAM), g(120, DEV20)).with(TOO_MUCH_DEVELOPER),
                refused("strong just below", g(45, STRONG_CREAM), g("44.9", DEV20))
                        .with(TOO_LITTLE_DEVELOPER),
                allowed("strong equal", g(45, STRONG_CREAM), g(45, DEV20)),
                refused("strong just above", g(45, STRONG_CREAM), g("45.1", DEV20))
                        .with(TOO_MUCH_DEVELOPER),
                refused("strong double", g(45, STRONG_CREAM), g(90, DEV20)).with(TOO_MUCH_DEVELOPER),
                allowed("in two developers", g(60, MILD_CREAM), g(30, DEV10), g(30, DEV30)),
                refused("none", g(60, MILD_CREAM)).with(NO_DEVELOPER));
    }

    static Stream<Row> powderTakesAtMostSevenGramsMorePerSixty() {
        return Stream.of(
                allowed("just below", g(60, POWDER), g("66.9", DEV30)),
                allowed("at", g(60, POWDER), g("67.0", DEV30)),
                refused("just above", g(60, POWDER), g("67.1", DEV30)).with(TOO_MUCH_DEVELOPER),
                allowed("half, at", g(30, POWDER), g("33.5", DEV30)),
                refused("half, just above", g(30, POWDER), g("33.6", DEV30)).with(TOO_MUCH_DEVELOPER),
                allowed("equal", g(60, POWDER), g(60, DEV30)),
                refused("just below equal", g(60, POWDER), g("59.9", DEV30)).with(TOO_LITTLE_DEVELOPER),
                allowed("weighed twice", g(30, POWDER), g(30, POWDER), g("67.0", DEV30)),
                refused("weighed twice, above", g(30, POWDER), g(30, POWDER), g("67.1", DEV30))
                        .with(TOO_MUCH_DEVELOPER, TOO_MUCH_DEVELOPER));
    }

    static Stream<Row> powderIsThinnedForFreeHandAsANamedMixture() {
        return Stream.of(
                refused("just below", g(60, POWDER), g(7, CLEAR), g("44.9", DEV30))
                        .with(TOO_LITTLE_DEVELOPER),
                allowed("at, 30 volumes", g(60, POWDER), g(7, CLEAR), g(45, DEV30)),
                allowed("at, 40 volumes", g(60, POWDER), g(7, CLEAR), g(45, DEV40)),
                refused("between the two mixtures", g(60, POWDER), g(7, CLEAR), g("45.1", DEV30))
                        .with(TOO_LITTLE_DEVELOPER),
                allowed("less additive", g(60, POWDER), g("6.9", CLEAR), g(45, DEV30)),
                refused("too much additive", g(60, POWDER), g("7.1", CLEAR), g(45, DEV30))
                        .with(TOO_MUCH_ADDED));
    }

    static Stream<Row> powderNeverMeetsColour() {
        return Stream.of(
                refused("high lift", g(60, POWDER), g(7, HIGH_LIFT), g(67, DEV30))
                        .with(NEVER_MIXED),
                refused("permanent", g(60, POWDER), g(7, PERMANENT), g(67, DEV30))
                        .with(NEVER_MIXED),
                refused("a trace of permanent", g(60, POWDER), g("0.1", PERMANENT), g("60.1", DEV30))
                        .with(NEVER_MIXED),
                allowed("no colour", g(60, POWDER), g(60, DEV30)));
    }

    static Stream<Row> aLittleMildCreamMakesPowderCreamier() {
        // 7 to 15 g per 60 g; nothing speaks against less, and the cream is left out of the ratio.
        return Stream.of(
                allowed("less", g(60, POWDER), g("6.9", MILD_CREAM), g(60, DEV30)),
                allowed("7", g(60, POWDER), g(7, MILD_CREAM), g(60, DEV30)),
                allowed("just below", g(60, POWDER), g("14.9", MILD_CREAM), g(60, DEV30)),
                allowed("at", g(60, POWDER), g(15, MILD_CREAM), g(60, DEV30)),
                refused("just above", g(60, POWDER), g("15.1", MILD_CREAM), g(60, DEV30))
                        .with(TOO_MUCH_ADDED),
                allowed("powder weighed twice", g(30, POWDER), g(30, POWDER), g(15, MILD_CREAM), g(60, DEV30)),
                allowed("with the seven extra", g(60, POWDER), g(15, MILD_CREAM), g(67, DEV30)),
                refused("with more", g(60, POWDER), g(15, MILD_CREAM), g("67.1", DEV30))
                        .with(TOO_MUCH_DEVELOPER));
    }

    static Stream<Row> highLiftTakesSevenGramsOfColour() {
        return Stream.of(
                allowed("alone", g(60, HIGH_LIFT), g(60, DEV40)),
                allowed("just below", g(60, HIGH_LIFT), g(60, DEV30), g("6.9", PERMANENT)),
                allowed("at, 30 volumes", g(60, HIGH_LIFT), g(60, DEV30), g(7, PERMANENT)),
                allowed("at, 40 volumes", g(60, HIGH_LIFT), g(60, DEV40), g(7, PERMANENT)),
                refused("just above", g(60, HIGH_LIFT), g(60, DEV40), g("7.1", PERMANENT))
                        .with(TOO_MUCH_ADDED),
                refused("20 volumes", g(60, HIGH_LIFT), g(60, DEV20), g(7, PERMANENT))
                        .with(STRENGTH_NOT_ALLOWED),
                refused("developer for the colour too", g(60, HIGH_LIFT), g(67, DEV40), g(7, PERMANENT))
                        .with(TOO_MUCH_DEVELOPER));
    }

    static Stream<Row> depositColourTakesAnEqualWeightOfTenVolumes() {
        return Stream.of(
                refused("just below", g(60, TONER), g("59.9", DEV10)).with(TOO_LITTLE_DEVELOPER),
                allowed("at", g(60, TONER), g(60, DEV10)),
                refused("just above", g(60, TONER), g("60.1", DEV10)).with(TOO_MUCH_DEVELOPER),
                refused("20 volumes", g(60, TONER), g(60, DEV20)).with(STRENGTH_NOT_ALLOWED),
                refused("a drop of 20 volumes", g(60, TONER), g("59.9", DEV10), g("0.1", DEV20))
                        .with(STRENGTH_NOT_ALLOWED));
    }

    static Stream<Row> aBlendOfDevelopersLiesBetweenTheAllowedStrengths() {
        // High lift takes 9 to 12 %. 30 g of 6 % and 30 g of 12 % are 9 %.
        return Stream.of(
                refused("just below", g(60, HIGH_LIFT), g("30.1", DEV20), g("29.9", DEV40))
                        .with(STRENGTH_NOT_ALLOWED),
                allowed("at", g(60, HIGH_LIFT), g(30, DEV20), g(30, DEV40)),
                allowed("just above", g(60, HIGH_LIFT), g("29.9", DEV20), g("30.1", DEV40)));
    }

    static Stream<Row> whatTakesNoDeveloperNeedsNone() {
        return Stream.of(
                allowed("remover", g(40, REMOVER)), allowed("clear", g(20, CLEAR)), allowed("developer", g(20, DEV20)));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource({
        "creamsTakeAnEqualWeightNeverADouble",
        "powderTakesAtMostSevenGramsMorePerSixty",
        "powderIsThinnedForFreeHandAsANamedMixture",
        "powderNeverMeetsColour",
        "aLittleMildCreamMakesPowderCreamier",
        "highLiftTakesSevenGramsOfColour",
        "depositColourTakesAnEqualWeightOfTenVolumes",
        "aBlendOfDevelopersLiesBetweenTheAllowedStrengths",
        "whatTakesNoDeveloperNeedsNone"
    })
    void mixture(Row row) {
        weighedWithin(0);
        assertThat(judged(row.scoops)).isEqualTo(row.codes);
    }

    static Stream<Row> aHouseWeighsWithinAGram() {
        return Stream.of(
                refused("below", g(60, MILD_CREAM), g("58.9", DEV20)).with(TOO_LITTLE_DEVELOPER),
                allowed("a gram less", g(60, MILD_CREAM), g(59, DEV20)),
                allowed("a gram more", g(60, MILD_CREAM), g(61, DEV20)),
                refused("above", g(60, MILD_CREAM), g("61.1", DEV20)).with(TOO_MUCH_DEVELOPER),
                allowed("the directions' own slack, at", g(60, POWDER), g("67.0", DEV30)),
                refused("is not added to", g(60, POWDER), g("67.1", DEV30)).with(TOO_MUCH_DEVELOPER));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("aHouseWeighsWithinAGram")
    void weighed(Row row) {
        weighedWithin(1);
        assertThat(judged(row.scoops)).isEqualTo(row.codes);
    }

    @Test
    void powderAndTheStrongerCreamAreNeverTogetherOnScalp() {
        Scoop[] both = {g(30, POWDER), g(30, STRONG_CREAM), g(60, DEV20)};
        assertThat(judged(List.of(both))).as("off scalp they may").isEmpty();
        assertThat(judgedOnScalp(both)).contains(NEVER_ON_SCALP_TOGETHER);
        assertThat(judgedOnScalp(g(60, STRONG_CREAM), g(60, DEV20))).isEmpty();
        assertThat(judgedOnScalp(g(60, POWDER), g(15, MILD_CREAM), g(60, DEV20)))
                .as("the mild one may")
                .doesNotContain(NEVER_ON_SCALP_TOGETHER);
    }

    @Test
    void someStrengthsAreForOffScalpOnly() {
        // The creams of the shelf take 3 to 9 %, on scalp 3 to 6 %.
        assertThat(judgedOnScalp(g(60, MILD_CREAM), g(60, DEV20))).isEmpty();
        assertThat(judgedOnScalp(g(60, MILD_CREAM), g(60, DEV30))).containsExactly(STRENGTH_NOT_ON_SCALP);
        assertThat(judged(List.of(g(60, MILD_CREAM), g(60, DEV30)))).isEmpty();
        assertThat(judgedOnScalp(g(60, MILD_CREAM), g(30, DEV10), g(30, DEV30)))
                .as("a blend of 6 %")
                .isEmpty();
        assertThat(judgedOnScalp(g(60, MILD_CREAM), g("29.9", DEV10), g("30.1", DEV30)))
                .as("just above")
                .containsExactly(STRENGTH_NOT_ON_SCALP);
    }

    @Test
    void reasonsComeInTheOrderOfHarmAndNameWhatTheySpeakOf() {
        weighedWithin(0);
        var reasons = MixtureRules.judge(
                story.portions(g(60, POWDER), g(7, PERMANENT), g(80, DEV30)),
                story.floor().salon());
        assertThat(reasons).isSorted();
        assertThat(reasons).contains(Reason.of(NEVER_MIXED, "powder", "permanent"));
    }
}

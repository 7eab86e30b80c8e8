package rinsebell.app.shelf;

import static org.assertj.core.api.Assertions.assertThat;
import static rinsebell.app.shelf.InventedProducts.BEIGE;
import static rinsebell.app.shelf.InventedProducts.CLEAR;
import static rinsebell.app.shelf.InventedProducts.DARK_BROWN;
import static rinsebell.app.shelf.InventedProducts.DEVELOPER_10;
import static rinsebell.app.shelf.InventedProducts.DEVELOPER_20;
import static rinsebell.app.shelf.InventedProducts.DEVELOPER_30;
import static rinsebell.app.shelf.InventedProducts.DEVELOPER_40;
import static rinsebell.app.shelf.InventedProducts.HIGH_LIFT;
import static rinsebell.app.shelf.InventedProducts.MILD_CREAM;
import static rinsebell.app.shelf.InventedProducts.POWDER;
import static rinsebell.app.shelf.InventedProducts.STRONG_CREAM;
import static rinsebell.app.shelf.InventedProducts.TONER;
import static rinsebell.floor.testing.Scoop.g;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.FieldSource;
import org.junit.jupiter.params.provider.MethodSource;
import rinsebell.floor.Reason;
import rinsebell.floor.ReasonCode;
import rinsebell.floor.product.Active;
import rinsebell.floor.product.Cover;
import rinsebell.floor.product.Directions;
import rinsebell.floor.product.Heat;
import rinsebell.floor.product.Kind;
import rinsebell.floor.product.Zone;
import rinsebell.floor.rule.MixtureRules;
import rinsebell.floor.testing.Scoop;
import rinsebell.floor.testing.Story;

/** What the trade says of its kinds of product, held against the shelf. Every row: common practice, no source. */
class InventedProductsTest {
    private static final List<Directions> LIGHTENERS = List.of(MILD_CREAM, STRONG_CREAM, POWDER);
    private static final List<Directions> CREAMS = List.of(MILD_CREAM, STRONG_CREAM);
    private static final List<Directions> COLOURS = List.of(HIGH_LIFT, DARK_BROWN, BEIGE, TONER);

    private static final String[] NOTHING = {};

    private static Arguments bowl(String[] refusals, Scoop... scoops) {
        return Arguments.of(List.of(scoops), Arrays.asList(refusals));
    }

    private static String[] refused(String... codes) {
        return codes;
    }

    static Stream<Arguments> bowls() {
        return Stream.of(
                // Creams take an equal weight of developer, never a double amount.
                bowl(NOTHING, g(60, MILD_CREAM), g(60, DEVELOPER_20)),
                bowl(refused("TOO_MUCH_DEVELOPER"), g(60, MILD_CREAM), g(120, DEVELOPER_20)),
                bowl(NOTHING, g(60, STRONG_CREAM), g(60, DEVELOPER_20)),
                bowl(refused("TOO_MUCH_DEVELOPER"), g(60, STRONG_CREAM), g(120, DEVELOPER_20)),
                bowl(refused("NO_DEVELOPER"), g(60, STRONG_CREAM)),
                // Powder takes an equal weight, at most 7 g extra per 60 g.
                bowl(NOTHING, g(60, POWDER), g("66.9", DEVELOPER_30)),
                bowl(NOTHING, g(60, POWDER), g(67, DEVELOPER_30)),
                bowl(refused("TOO_MUCH_DEVELOPER"), g(60, POWDER), g("67.1", DEVELOPER_30)),
                bowl(NOTHING, g(30, POWDER), g("33.5", DEVELOPER_30)),
                bowl(refused("TOO_MUCH_DEVELOPER"), g(30, POWDER), g("33.6", DEVELOPER_30)),
                // Free hand: 60 powder, 7 clear additive, 45 developer of 30 or 40 volumes.
                bowl(NOTHING, g(60, POWDER), g(7, CLEAR), g(45, DEVELOPER_30)),
                bowl(NOTHING, g(60, POWDER), g(7, CLEAR), g(45, DEVELOPER_40)),
                bowl(refused("TOO_MUCH_ADDED"), g(60, POWDER), g("7.1", CLEAR), g(45, DEVELOPER_40)),
                bowl(refused("TOO_LITTLE_DEVELOPER"), g(60, POWDER), g(7, CLEAR), g(40, DEVELOPER_40)),
                // Powder is never put into a mixture that contains colour.
                bowl(refused("NEVER_MIXED", "STRENGTH_NOT_ALLOWED"), g(60, POWDER), g(7, TONER), g(67, DEVELOPER_10)),
                bowl(refused("NEVER_MIXED"), g(60, POWDER), g(7, DARK_BROWN), g(67, DEVELOPER_20)),
                bowl(refused("NEVER_MIXED"), g(60, POWDER), g(7, HIGH_LIFT), g(67, DEVELOPER_30)),
                // 7 to 15 g of the mild cream per 60 g powder makes it creamier.
                bowl(NOTHING, g(60, POWDER), g(7, MILD_CREAM), g(60, DEVELOPER_20)),
                bowl(NOTHING, g(60, POWDER), g(15, MILD_CREAM), g(60, DEVELOPER_20)),
                bowl(refused("TOO_MUCH_ADDED"), g(60, POWDER), g("15.1", MILD_CREAM), g(60, DEVELOPER_20)),
                // High lift: 60 g cream, 60 g of 30 or 40 volumes, 7 g of colour.
                bowl(NOTHING, g(60, HIGH_LIFT), g(60, DEVELOPER_30), g(7, BEIGE)),
                bowl(NOTHING, g(60, HIGH_LIFT), g(60, DEVELOPER_40), g(7, DARK_BROWN)),
                bowl(refused("STRENGTH_NOT_ALLOWED"), g(60, HIGH_LIFT), g(60, DEVELOPER_20), g(7, BEIGE)),
                bowl(refused("TOO_MUCH_ADDED"), g(60, HIGH_LIFT), g(60, DEVELOPER_40), g("7.1", DARK_BROWN)),
                // Deposit-only colour takes an equal weight of 10-volume developer.
                bowl(NOTHING, g(60, TONER), g(60, DEVELOPER_10)),
                bowl(refused("STRENGTH_NOT_ALLOWED"), g(60, TONER), g(60, DEVELOPER_20)),
                bowl(refused("TOO_MUCH_DEVELOPER"), g(60, TONER), g(120, DEVELOPER_10)));
    }

    @ParameterizedTest
    @MethodSource("bowls")
    void whatMayBeInOneBowl(List<Scoop> scoops, List<String> refusals) {
        var story = Story.begins();
        var portions = story.portions(scoops.toArray(Scoop[]::new));

        var found = MixtureRules.judge(portions, story.floor().salon());

        assertThat(restrictions(found)).containsExactlyInAnyOrderElementsOf(refusals);
    }

    static Stream<Arguments> bowlsOnScalp() {
        return Stream.of(
                bowl(NOTHING, g(60, MILD_CREAM), g(60, DEVELOPER_20)),
                bowl(refused("STRENGTH_NOT_ON_SCALP"), g(60, MILD_CREAM), g(60, DEVELOPER_30)),
                bowl(refused("STRENGTH_NOT_ON_SCALP"), g(60, STRONG_CREAM), g(60, DEVELOPER_30)),
                bowl(NOTHING, g(60, HIGH_LIFT), g(60, DEVELOPER_40), g(7, DARK_BROWN)),
                // Powder and the stronger cream are never used together on the scalp.
                bowl(
                        refused("OFF_SCALP_PRODUCT", "NEVER_ON_SCALP_TOGETHER"),
                        g(60, STRONG_CREAM),
                        g(60, POWDER),
                        g(120, DEVELOPER_20)));
    }

    @ParameterizedTest
    @MethodSource("bowlsOnScalp")
    void whatMayBeInABowlForAScalp(List<Scoop> scoops, List<String> refusals) {
        var story = Story.begins();
        var portions = story.portions(scoops.toArray(Scoop[]::new));

        var found = MixtureRules.judgeOnScalp(portions, story.floor().salon());

        assertThat(restrictions(found)).containsExactlyInAnyOrderElementsOf(refusals);
    }

    private static List<String> restrictions(List<Reason> reasons) {
        return reasons.stream()
                .map(Reason::code)
                .filter(ReasonCode::isRestriction)
                .map(Enum::name)
                // Where both leaflets forbid a meeting it is said twice.
                .distinct()
                .toList();
    }

    @ParameterizedTest
    @FieldSource("LIGHTENERS")
    void lightenerIsActiveForOneHour(Directions lightener) {
        var hour = new Active(Duration.ofMinutes(60), Active.AtEnd.RINSE);

        assertThat(lightener.times().active()).isEqualTo(hour);
    }

    @ParameterizedTest
    @FieldSource("CREAMS")
    void noPlasticAndNoDryerOverACreamButGentleSteam(Directions cream) {
        assertThat(cream.limits().zone()).isEqualTo(Zone.ON_SCALP);
        assertThat(cream.limits().cover(Cover.FILM).allowed()).isFalse();
        assertThat(cream.limits().cover(Cover.CAP).allowed()).isFalse();
        assertThat(cream.limits().heat(Heat.DRYER).allowed()).isFalse();
        assertThat(cream.limits().heat(Heat.GENTLE_STEAM).allowed()).isTrue();
    }

    @Test
    void powderStaysOffTheScalpAndTakesNoHeat() {
        assertThat(POWDER.limits().zone()).isEqualTo(Zone.OFF_SCALP);
        assertThat(POWDER.limits().cover(Cover.FOIL).allowed()).isTrue();
        assertThat(Heat.values()).noneMatch(heat -> POWDER.limits().heat(heat).allowed());
    }

    @ParameterizedTest
    @FieldSource("COLOURS")
    void everyColourHoldsDye(Directions colour) {
        assertThat(colour.contents().dye()).isTrue();
    }

    @Test
    void theShelfHoldsEveryKindFourDevelopersAndTheirBase() {
        var kinds = new ArrayList<>(
                InventedProducts.all().stream().map(Directions::kind).toList());

        assertThat(kinds).contains(Kind.values());
        assertThat(kinds.stream().filter(kind -> kind == Kind.DEVELOPER)).hasSize(5);
        assertThat(InventedProducts.all().stream().map(Directions::name)).doesNotHaveDuplicates();
    }
}

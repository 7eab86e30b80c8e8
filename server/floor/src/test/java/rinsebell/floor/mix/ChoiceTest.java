package rinsebell.floor.mix;

import static org.assertj.core.api.Assertions.assertThat;
import static rinsebell.floor.testing.Scoop.g;
import static rinsebell.floor.testing.Shelf.CLEAR;
import static rinsebell.floor.testing.Shelf.DEV10;
import static rinsebell.floor.testing.Shelf.DEV20;
import static rinsebell.floor.testing.Shelf.HIGH_LIFT;
import static rinsebell.floor.testing.Shelf.MILD_CREAM;
import static rinsebell.floor.testing.Shelf.PERMANENT;
import static rinsebell.floor.testing.Shelf.POWDER;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rinsebell.floor.bowl.Portion;
import rinsebell.floor.product.Directions;
import rinsebell.floor.product.ProductId;
import rinsebell.floor.testing.Scoop;
import rinsebell.floor.testing.Story;
import rinsebell.floor.unit.Fraction;
import rinsebell.floor.unit.Grams;

/** Developer is measured against what it activates, additions left out. The ratios: common practice, no source. */
class ChoiceTest {
    private final Story story = Story.stocked();

    private record Row(String mixture, String extra, List<Scoop> chosen, List<Fraction> parts) {}

    private static Row row(String mixture, String extra, List<Scoop> chosen, String... parts) {
        return new Row(
                mixture,
                extra,
                chosen,
                Arrays.stream(parts)
                        .map(java.math.BigDecimal::new)
                        .map(Fraction::of)
                        .toList());
    }

    static Stream<Row> rows() {
        return Stream.of(
                row("equal parts", "0", List.of(g(60, MILD_CREAM)), "60", "60"),
                row("equal parts", "7", List.of(g(60, POWDER)), "60", "67"),
                row("free hand", "0", List.of(g(60, POWDER), g(7, CLEAR)), "60", "7", "45"),
                row("equal parts", "0", List.of(g(60, POWDER), g(15, MILD_CREAM)), "60", "15", "60"),
                row("equal parts", "0", List.of(g(60, HIGH_LIFT), g(7, PERMANENT)), "60", "7", "60"),
                row("no such mixture", "0", List.of(g(60, POWDER)), "60", "60"));
    }

    @ParameterizedTest
    @MethodSource("rows")
    void takesTheRatioFromTheDirections(Row row) {
        var recipe = choice(row).recipe(story.floor().salon()).orElseThrow();
        assertThat(recipe.shares()).extracting(Recipe.Share::parts).isEqualTo(row.parts);
    }

    @Test
    void withoutADeveloperItIsLeftOut() {
        var only = choice(row("", "0", List.of(g(60, POWDER))));
        var recipe = new Choice(only.products(), "", List.of(), Grams.NONE)
                .recipe(story.floor().salon())
                .orElseThrow();
        assertThat(recipe.shares()).hasSize(1);
    }

    @Test
    void nothingIsMadeOfWhatNobodyKnows() {
        var unknown = List.of(new Choice.Chosen(new ProductId(999), Grams.of(60)));
        assertThat(new Choice(unknown, "", List.of(), Grams.NONE)
                        .recipe(story.floor().salon()))
                .isEmpty();
    }

    private Choice choice(Row row) {
        var chosen = row.chosen.stream()
                .map(scoop -> new Choice.Chosen(id(scoop.of()), scoop.grams()))
                .toList();
        return new Choice(chosen, row.mixture, List.of(of(DEV20, 1)), Grams.of(row.extra));
    }

    private Recipe.Share of(Directions directions, long parts) {
        return new Recipe.Share(id(directions), Fraction.of(parts));
    }

    /** Two stand for one: 45 g in the ratio 2 to 1. */
    @Test
    void twoDevelopersShareWhatIsWanted() {
        var one = choice(row("free hand", "0", List.of(g(60, POWDER))));
        var two = new Choice(one.products(), one.mixture(), List.of(of(DEV20, 2), of(DEV10, 1)), Grams.NONE);
        assertThat(two.recipe(story.floor().salon()).orElseThrow().shares())
                .containsExactly(of(POWDER, 60), of(DEV20, 30), of(DEV10, 15));
    }

    private ProductId id(Directions directions) {
        return story.portions(g(1, directions)).stream()
                .map(Portion::product)
                .findFirst()
                .orElseThrow();
    }
}

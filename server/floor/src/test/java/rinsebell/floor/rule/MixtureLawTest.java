package rinsebell.floor.rule;

import static org.assertj.core.api.Assertions.assertThat;
import static rinsebell.floor.testing.Leaflet.leaflet;
import static rinsebell.floor.testing.Scoop.g;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rinsebell.floor.ReasonCode;
import rinsebell.floor.product.Directions;
import rinsebell.floor.product.Kind;
import rinsebell.floor.testing.Scoop;
import rinsebell.floor.testing.Story;

/**
 * The law of the European Union, ready for use. Source: Regulation (EC) No 1223/2009, Annex III, entry 12(a), as
 * replaced by Regulation (EU) 2019/831 (hydrogen peroxide at most 12 %), and entry 4 (ammonia at most 6 % as NH3, "contains
 * ammonia" above 2 %).
 */
class MixtureLawTest {
    private final Story story = Story.begins();

    private static Directions tub(String ammonia) {
        return leaflet("tub of " + ammonia, Kind.COLOUR_REMOVER)
                .ammonia(ammonia)
                .typedIn();
    }

    private static Directions developer(String peroxide) {
        return leaflet("developer of " + peroxide, Kind.DEVELOPER)
                .peroxide(peroxide)
                .typedIn();
    }

    private static final Directions WATER =
            leaflet("water", Kind.CLEAR_ADDITIVE).typedIn();

    private static final Directions UNKNOWN =
            leaflet("unknown", Kind.COLOUR_REMOVER).ammonia(null).peroxide(null).typedIn();

    private List<ReasonCode> judged(Scoop... scoops) {
        return MixtureRules.judge(story.portions(scoops), story.floor().salon()).stream()
                .map(reason -> reason.code())
                .toList();
    }

    @ParameterizedTest
    @CsvSource({
        "3.2, ",
        "3.9, ",
        "4, ",
        "4.1, CONTAINS_AMMONIA",
        "6, CONTAINS_AMMONIA",
        "11.9, CONTAINS_AMMONIA",
        "12, CONTAINS_AMMONIA",
        "12.1, AMMONIA_OVER_LAW"
    })
    void ammoniaInTheTubAtOneToOne(String inTheTub, ReasonCode said) {
        var expected = said == null ? List.of() : List.of(said);
        assertThat(judged(g(60, tub(inTheTub)), g(60, WATER))).isEqualTo(expected);
    }

    @ParameterizedTest
    @CsvSource({
        "23.9, CONTAINS_PEROXIDE",
        "24, CONTAINS_PEROXIDE",
        "24.1, PEROXIDE_OVER_LAW",
        "12, CONTAINS_PEROXIDE",
        "0.1, CONTAINS_PEROXIDE",
        "0, "
    })
    void peroxideAtOneToOne(String developer, ReasonCode said) {
        var expected = said == null ? List.of() : List.of(said);
        assertThat(judged(g(60, WATER), g(60, developer(developer)))).isEqualTo(expected);
    }

    @ParameterizedTest
    @CsvSource({"36, 1, 2, false", "36, 1, 1.9999999999999999999, true", "36, 1, 2.0000000000000000001, false"})
    void noRoundingDecidesOverTheLimit(String strength, String grams, String water, boolean over) {
        assertThat(judged(g(grams, developer(strength)), g(water, WATER)).contains(ReasonCode.PEROXIDE_OVER_LAW))
                .isEqualTo(over);
    }

    @Test
    void aStrengthThatIsNotKnownRefusesOnlyWhatIsSurelyOver() {
        assertThat(judged(g(60, UNKNOWN), g(60, developer("12")))).containsExactly(ReasonCode.CONTAINS_PEROXIDE);
        assertThat(judged(g(60, UNKNOWN), g(60, developer("25")))).containsExactly(ReasonCode.PEROXIDE_OVER_LAW);
    }

    @Test
    void nothingWeighedIsOverNothing() {
        assertThat(judged()).isEmpty();
    }
}

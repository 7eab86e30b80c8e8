package rinsebell.web.form;

import static org.assertj.core.api.Assertions.assertThat;
import static rinsebell.floor.testing.Scoop.g;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rinsebell.floor.bowl.Bowl;
import rinsebell.floor.command.Mix;
import rinsebell.floor.salon.SalonEvent;
import rinsebell.floor.testing.Scoop;
import rinsebell.floor.testing.Shelf;

/** What the bench makes of a bowl of before weighs the same, half, or one and a half times as much. */
class SameAgainTest {
    private final PressTable table = new PressTable();

    @ParameterizedTest
    @CsvSource({
        "60 MILD_CREAM + 60 DEV20,                    1,   60 60",
        "60 MILD_CREAM + 60 DEV20,                    0.5, 30 30",
        "60 MILD_CREAM + 60 DEV20,                    1.5, 90 90",
        "40 POWDER + 4 CLEAR + 44 DEV20,              1.5, 60 6 66",
        "60 POWDER + 45 DEV20,                        1,   60 45",
        "60 POWDER + 20 DEV40 + 40 DEV10,             2,   120 40 80",
        "90 REMOVER,                                  1,   90"
    })
    void isReckonedFromWhatWasWeighed(String scoops, BigDecimal size, String weighed) {
        var typed = SameAgain.of(MixedBefore.of(bowl(scoops)), table.floor().salon(), size)
                .orElseThrow();
        var mix = (Mix) PressTable.command(table.read("mixtures", "", 0, typed));
        assertThat(mix.weighed().stream()
                        .map(one -> one.grams().amount().stripTrailingZeros().toPlainString())
                        .collect(Collectors.joining(" ")))
                .isEqualTo(weighed);
    }

    @Test
    void whatIsNotOfferedAnyMoreIsNotMixedAgain() {
        var bowl = bowl("60 POWDER + 60 DEV20");
        var powder = table.story.product(Shelf.POWDER);
        table.story.tells(new rinsebell.floor.Stream.OfSalon(), new SalonEvent.ProductOffered(powder, false));
        assertThat(SameAgain.of(MixedBefore.of(bowl), table.floor().salon(), BigDecimal.ONE))
                .isEmpty();
    }

    private Bowl bowl(String scoops) {
        var all = Arrays.stream(scoops.split(" \\+ "))
                .map(one -> one.split(" "))
                .map(one -> g(Long.parseLong(one[0]), MixtureFormTest.directions(one[1])))
                .toArray(Scoop[]::new);
        var mixed = table.story.mixes(all);
        return table.floor().bowl(mixed).orElseThrow();
    }

    /** Nobody knows what would be the same as what nobody knows. */
    @Test
    void whatIsNotKnownIsNotMixedAgain() {
        var unknown = table.story.mixes();
        assertThat(new PageTable(table).html("bowls", "tag", unknown.value(), Fields.NONE))
                .doesNotContain("size=", "/recipes/new");
    }

    /**
     * What today's directions would make another mixture of is not reckoned anew: less developer than they say, more than
     * they allow, developer where nothing takes any, an accent before its base. It is typed in as it was, and judged.
     */
    @ParameterizedTest
    @CsvSource({
        "60 PERMANENT + 50 DEV20, false",
        "60 PERMANENT + 70 DEV20, false",
        "60 REMOVER + 60 DEV20,   false",
        "60 PERMANENT + 60 DEV20, true",
        "60 POWDER + 67 DEV20,    true",
        "61 MILD_CREAM + 59 DEV20, false"
    })
    void anotherMixtureIsNotMadeOfIt(String scoops, boolean atTheBench) {
        var bowl = bowl(scoops);
        var pages = new PageTable(table);
        var html = pages.html("bowls", "tag", bowl.id().value(), Fields.NONE);
        assertThat(html.contains("href=\"/mixtures?")).isEqualTo(atTheBench);
        assertThat(html.contains("href=\"/bowls/mix?bowl=" + bowl.id().value() + "&amp;size=0.5"))
                .isNotEqualTo(atTheBench);
        var half = pages.html("bowls", "", 0, Fields.of("bowl", "" + bowl.id().value(), "size", "0.5"));
        var first = bowl.portions().get(0).grams().amount().multiply(new BigDecimal("0.5"));
        assertThat(half).contains("value=\"" + first.stripTrailingZeros().toPlainString() + "\"");
    }
}

package rinsebell.web.form;

import static org.assertj.core.api.Assertions.assertThat;
import static rinsebell.floor.testing.Leaflet.leaflet;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rinsebell.floor.Asked;
import rinsebell.floor.Decision;
import rinsebell.floor.Reason;
import rinsebell.floor.ReasonCode;
import rinsebell.floor.Stream;
import rinsebell.floor.command.Mix;
import rinsebell.floor.product.Directions;
import rinsebell.floor.product.Kind;
import rinsebell.floor.salon.SalonEvent;
import rinsebell.floor.testing.Saturday;
import rinsebell.floor.testing.Shelf;

/** What a developer may be blended with. */
class BlendPageTest {
    private final PageTable pages = new PageTable();
    private final PressTable table = pages.table;

    /** 12 to 6 with water 1 : 1 and to 3 1 : 3, derived. By itself a carrier is no choice, for it activates nothing. */
    @ParameterizedTest
    @CsvSource({"6, 60, 30, 30", "3, 60, 15, 45"})
    void aCarrierWithoutPeroxideWeakens(String strength, String colour, String strong, String carrier) {
        var base = enters(leaflet("base", Kind.DEVELOPER).peroxide("0").typedIn());
        var typed = typed(number(Shelf.DEV40), base, strength);
        assertThat(mix(typed).weighed())
                .extracting(one -> one.grams().amount().toPlainString())
                .containsExactly(colour, strong, carrier);
        assertThat(pages.html("mixtures", "", 0, typed))
                .contains("<option value=\"" + base + "\" selected")
                .contains("name=\"developer\" value=\"" + number(Shelf.DEV10))
                .doesNotContain("name=\"developer\" value=\"" + base);
    }

    /** What a developer's own directions forbid is not offered, and refused where it is asked for all the same. */
    @Test
    void aDeveloperThatMeetsNoOtherIsNotBlended() {
        var pure = enters(leaflet("pure", Kind.DEVELOPER)
                .peroxide("12")
                .never(Kind.DEVELOPER)
                .typedIn());
        var other = number(Shelf.DEV10);
        var typed = typed(pure, other, "6");
        assertThat(pages.html("mixtures", "", 0, typed)).doesNotContain("<option value=\"" + other + "\"");
        assertThat(mix(typed).decide(table.floor(), Asked.at(Saturday.TEN)))
                .isInstanceOfSatisfying(
                        Decision.Refused.class,
                        refused -> assertThat(refused.reasons())
                                .extracting(Reason::code)
                                .contains(ReasonCode.NEVER_MIXED));
    }

    private Mix mix(Fields typed) {
        return (Mix) PressTable.command(table.read("mixtures", "", 0, typed));
    }

    private Fields typed(String developer, String other, String strength) {
        return Fields.of(
                "products.0.product",
                number(Shelf.PERMANENT),
                "developer",
                developer,
                "otherDeveloper",
                other,
                "strength",
                strength,
                "of",
                number(Shelf.PERMANENT),
                "grams",
                "60");
    }

    private String enters(Directions directions) {
        return String.valueOf(table.story.tells(new Stream.OfSalon(), new SalonEvent.ProductEntered(directions)));
    }

    private String number(Directions directions) {
        return String.valueOf(table.story.product(directions).value());
    }
}

package rinsebell.web.form;

import static org.assertj.core.api.Assertions.assertThat;
import static rinsebell.web.form.PressTable.faults;

import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rinsebell.floor.product.Directions;
import rinsebell.floor.salon.SalonEvent;
import rinsebell.floor.testing.Shelf;
import rinsebell.floor.visit.Gate;
import rinsebell.floor.visit.StayEvent;

/** What a bench's page says, and what it takes at its word. */
class BenchPageTest {
    private static final Pattern SHOWN = Pattern.compile("name=\"shown\" value=\"([^\"]*)\"");

    private final PageTable pages = new PageTable();
    private final PressTable table = pages.table;

    /** What was typed after the page had reckoned is not recorded unseen. */
    @Test
    void onlyWhatWasShownIsRecorded() {
        var typed = bowl("120");
        var shown = SHOWN.matcher(pages.html("mixtures", "", 0, typed));
        assertThat(shown.find()).isTrue();
        assertThat(shown.group(1)).isEqualTo("60 60");
        PressTable.command(table.read("mixtures", "", 0, with(typed, "60 60")));
        assertThat(faults(table.read("mixtures", "", 0, with(bowl("90"), "60 60"))))
                .containsEntry("grams", Fault.SHOWN_OTHERWISE);
    }

    /** What is proposed in a field is reckoned with before anybody has typed there. */
    @Test
    void whatStandsInTheFieldsIsReckonedWith() {
        var typed = Fields.of(
                "products.0.product", number(Shelf.POWDER),
                "products.1.product", number(Shelf.CLEAR),
                "developer", number(Shelf.DEV20),
                "grams", "127");
        assertThat(pages.html("mixtures", "", 0, typed)).contains("name=\"shown\" value=\"60 7 60\"");
    }

    /** Half a step is the least of a portion: what is rounded to a step would be more than twice of itself. */
    @ParameterizedTest
    @CsvSource({"0.1, true", "0.9, true", "1, false", "1.2, false"})
    void lessThanTheScaleCanShowIsNotWeighed(String grams, boolean tooLittle) {
        var read = table.read("mixtures", "", 0, bowl(grams));
        assertThat(read instanceof Reading.Wrong).isEqualTo(tooLittle);
        if (tooLittle) {
            assertThat(faults(read)).containsEntry("grams", Fault.TOO_LITTLE_TO_WEIGH);
        }
    }

    @Test
    void aDeveloperThatNothingTakesIsNotDropped() {
        var typed =
                Fields.of("products.0.product", number(Shelf.REMOVER), "developer", number(Shelf.DEV20), "grams", "60");
        assertThat(faults(table.read("mixtures", "", 0, typed))).containsEntry("developer", Fault.TAKES_NO_DEVELOPER);
    }

    /** 1,500 and 1.500 may be meant either way. A program's numbers are JSON and mean one thing. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"1,500", "1.500", "12,000"})
    void thousandsAreNotTakenForOneAndABit(String grams) {
        assertThat(faults(table.read("mixtures", "", 0, bowl(grams)))).containsEntry("grams", Fault.THOUSANDS);
    }

    /** Where grams are typed the zones are judged apart as well: a sore scalp takes nothing. */
    @Test
    void typedGramsAreJudgedOnTheScalpToo() {
        table.story.tells(
                rinsebell.floor.Stream.visit(table.visit),
                new StayEvent.GateAnswered(new Gate(null, Gate.Scalp.SORE, null, null, null)));
        var typed = Fields.of(
                "portions.0.product",
                number(Shelf.MILD_CREAM),
                "portions.0.grams",
                "60",
                "portions.1.product",
                number(Shelf.DEV20),
                "portions.1.grams",
                "60",
                "visit",
                "" + table.visit.value());
        assertThat(pages.html("bowls", "", 0, typed))
                .contains("on scalp: refused")
                .contains("it is sore");
    }

    /** A form that comes back has each weight at its product, whatever was withdrawn meanwhile. */
    @Test
    void gramsStayWithTheirProduct() {
        var typed = Fields.of(
                "press",
                "0123456789abcdef",
                "portions.7.product",
                number(Shelf.POWDER),
                "portions.7.grams",
                "many",
                "portions.2.product",
                number(Shelf.CLEAR),
                "portions.2.grams",
                "5");
        var powder = table.story.product(Shelf.POWDER);
        table.story.tells(new rinsebell.floor.Stream.OfSalon(), new SalonEvent.ProductOffered(powder, false));
        var html = pages.html("bowls", "", 0, typed);
        assertThat(PageTable.boxes(html)).contains("powder, g: many", "clear, g: 5");
    }

    private Fields bowl(String grams) {
        return Fields.of(
                "products.0.product", number(Shelf.MILD_CREAM), "developer", number(Shelf.DEV20), "grams", grams);
    }

    private static Fields with(Fields typed, String shown) {
        return typed.orElse(Fields.of("shown", shown));
    }

    private String number(Directions directions) {
        return String.valueOf(table.story.product(directions).value());
    }
}

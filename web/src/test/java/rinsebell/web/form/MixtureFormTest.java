package rinsebell.web.form;

import static org.assertj.core.api.Assertions.assertThat;
import static rinsebell.web.form.PressTable.command;
import static rinsebell.web.form.PressTable.faults;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rinsebell.floor.command.Mix;
import rinsebell.floor.product.Directions;
import rinsebell.floor.product.ProductId;
import rinsebell.floor.testing.Shelf;

/** What was chosen and one number come to grams. Ratios of directions: common practice, no source. */
class MixtureFormTest {
    private final PressTable table = new PressTable();

    /** Such as "POWDER CLEAR:7" and "DEV20" to "60 7 60". */
    @ParameterizedTest
    @CsvSource({
        "POWDER,          DEV20, '', '',          120, gram, 60 60",
        "POWDER,          DEV20, '', POWDER,      30,  gram, 30 30",
        "POWDER,          DEV20, '', developer,   30,  gram, 30 30",
        "POWDER CLEAR:7,  DEV20, '', POWDER,      60,  gram, 60 7 60",
        "POWDER CLEAR:7,  DEV20, '', CLEAR,       14,  gram, 120 14 120",
        "POWDER,          DEV20, 7, POWDER,     60,  gram, 60 67",
        "POWDER,          DEV20, '', '',          91, gram, 45 45",
        "POWDER,          DEV20, '', '',          91,  half, 45.5 45.5",
        "PERMANENT CLEAR:7, DEV20, '', '',        25,  tenth, 11.9 1.4 11.9"
    })
    void oneNumberGivesTheOthers(
            String products, String developer, String extra, String of, String grams, String step, String weighed) {
        assertThat(weighed(asked(products, developer)
                        .extra(extra)
                        .of(of)
                        .grams(grams)
                        .step(step)
                        .fields()))
                .isEqualTo(weighed);
    }

    /** What is wanted at the limit of the directions is not rounded beyond it: 4 g of 4.67, 44 g of 44.67. */
    @ParameterizedTest
    @CsvSource({
        "POWDER CLEAR:7, '', POWDER, 40, 40 4 40",
        "POWDER CLEAR:7, '', POWDER, 50, 50 5 50",
        "POWDER, 7, POWDER, 40, 40 44",
        "POWDER CLEAR:8, '', POWDER, 40, 40 5 40"
    })
    void theScaleDoesNotLeadOutOfTheDirections(String products, String extra, String of, String grams, String weighed) {
        assertThat(weighed(asked(products, "DEV20")
                        .extra(extra)
                        .of(of)
                        .grams(grams)
                        .fields()))
                .isEqualTo(weighed);
    }

    /** The number of two developers is what they weigh together. */
    @Test
    void twoDevelopersCountTogether() {
        var fields = asked("POWDER", "DEV40")
                .with("otherDeveloper", number("DEV10"))
                .with("strength", "6")
                .of("developer")
                .grams("60");
        assertThat(weighed(fields.fields())).isEqualTo("60 20 40");
    }

    /**
     * Alligation: 12 and 3 come to 6 at 1 : 2, 9 and 3 at 1 : 1, 12 and 6 come to 9 at 1 : 1. A wanted strength that
     * stands on the shelf takes nothing of the other. By hand, from the rule as in bigbuddysociety.net's tutorial.
     */
    @ParameterizedTest
    @CsvSource({
        "DEV40, DEV10, 6, 60 20 40",
        "DEV30, DEV10, 6, 60 30 30",
        "DEV40, DEV20, 9, 60 30 30",
        "DEV10, DEV40, 6, 60 40 20",
        "DEV40, DEV20, 6, 60 60",
        "DEV40, DEV20, 12, 60 60"
    })
    void twoDevelopersGiveTheStrengthBetweenThem(String one, String other, String strength, String weighed) {
        var fields = asked("POWDER", one)
                .with("otherDeveloper", number(other))
                .with("strength", strength)
                .of("POWDER")
                .grams("60");
        assertThat(weighed(fields.fields())).isEqualTo(weighed);
    }

    @ParameterizedTest
    @CsvSource({
        "DEV20, 9, OUT_OF_REACH",
        "DEV20, 2.9, OUT_OF_REACH",
        "DEV20, '', MISSING",
        "DEV20, 12.5, TOO_LARGE",
        "DEV20, six, NOT_A_NUMBER",
        "DEV10, 6, OUT_OF_REACH"
    })
    void whatTwoDevelopersCannotGiveIsRefused(String other, String strength, Fault fault) {
        var fields = asked("POWDER", "DEV10")
                .with("otherDeveloper", number(other))
                .with("strength", strength)
                .grams("60");
        assertThat(faults(read(fields.fields()))).containsEntry("strength", fault);
    }

    /** 43 for 42.5 is as wanted; 9 g for 5 make all of it larger; 3 g too little make the rest smaller. */
    @ParameterizedTest
    @CsvSource({
        "'', '', '', 43 5 43",
        "43, 5, 43, 43 5 43",
        "43, 9, 43, 43 9 43",
        "43, 9, '', 77 9 77",
        "40, '', '', 40 5 40"
    })
    void whatLiesInTheBowlCounts(String first, String second, String third, String weighed) {
        var fields = asked("PERMANENT CLEAR:7", "DEV20")
                .with("weighed.0.grams", first)
                .with("weighed.1.grams", second)
                .with("weighed.2.grams", third)
                .grams("91");
        assertThat(weighed(fields.fields())).isEqualTo(weighed);
    }

    @Test
    void whatIsWrongIsSaidAtItsField() {
        assertThat(faults(read(Fields.NONE)))
                .isEqualTo(Map.of("products.0.product", Fault.MISSING, "grams", Fault.MISSING));
        assertThat(faults(read(asked("POWDER CLEAR", "DEV20").grams("60").fields())))
                .isEqualTo(Map.of("products.1.per60", Fault.MISSING));
        assertThat(faults(read(asked("POWDER", "DEV20").of("CLEAR").grams("60").fields())))
                .isEqualTo(Map.of("of", Fault.NOT_A_CHOICE));
        assertThat(faults(read(asked("POWDER CLEAR:0.1", "DEV20")
                        .of("CLEAR")
                        .grams("100")
                        .fields())))
                .isEqualTo(Map.of("grams", Fault.TOO_LARGE));
        assertThat(faults(read(asked("POWDER", "DEV10")
                        .with("strength", "6")
                        .grams("60")
                        .fields())))
                .isEqualTo(Map.of("otherDeveloper", Fault.MISSING));
        assertThat(faults(read(asked("POWDER", "DEV20").extra("8").grams("60").fields())))
                .isEqualTo(Map.of("extraPer60", Fault.TOO_LARGE));
        for (var grams : List.of("0", "-5", "100000")) {
            var fields = asked("POWDER", "DEV20").with("weighed.0.grams", grams).grams("60");
            assertThat(faults(read(fields.fields()))).as(grams).containsOnlyKeys("weighed.0.grams");
        }
        assertThat(faults(read(asked("POWDER CLEAR:1", "DEV20")
                        .with("weighed.1.grams", "2000")
                        .grams("121")
                        .fields())))
                .isEqualTo(Map.of("weighed.1.grams", Fault.TOO_LARGE));
        assertThat(faults(read(asked("POWDER", "DEV20")
                        .with("weighed.1.grams", "much")
                        .grams("60")
                        .fields())))
                .isEqualTo(Map.of("weighed.1.grams", Fault.NOT_A_NUMBER));
    }

    private String weighed(Fields fields) {
        return ((Mix) command(read(fields)))
                .weighed().stream()
                        .map(one -> one.grams().amount().stripTrailingZeros().toPlainString())
                        .collect(Collectors.joining(" "));
    }

    private Reading read(Fields fields) {
        return table.read("mixtures", "", 0, fields);
    }

    private Asked asked(String products, String developer) {
        var asked = new Asked();
        var row = 0;
        for (var product : products.split(" ")) {
            var of = product.split(":");
            asked.with("products." + row + ".product", number(of[0]));
            if (of.length > 1) {
                asked.with("products." + row + ".per60", of[1]);
            }
            row++;
        }
        return asked.with("developer", number(developer));
    }

    private String number(String name) {
        return String.valueOf(product(name).value());
    }

    private ProductId product(String name) {
        return table.story.product(directions(name));
    }

    /** Of the shelf, by the name of its constant. */
    static Directions directions(String name) {
        try {
            return (Directions) Shelf.class.getField(name).get(null);
        } catch (ReflectiveOperationException e) {
            throw new AssertionError(e);
        }
    }

    /** What somebody typed. */
    private final class Asked {
        private final List<String> typed = new ArrayList<>();

        Asked with(String name, String value) {
            typed.addAll(List.of(name, value));
            return this;
        }

        Asked extra(String grams) {
            return with("extraPer60", grams);
        }

        Asked of(String what) {
            return what.isEmpty() || what.equals("developer") ? with("of", what) : with("of", number(what));
        }

        Asked grams(String grams) {
            return with("grams", grams);
        }

        Asked step(String code) {
            return with("step", code);
        }

        Fields fields() {
            return Fields.of(typed.toArray(String[]::new));
        }
    }
}

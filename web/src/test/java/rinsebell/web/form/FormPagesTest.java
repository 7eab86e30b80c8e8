package rinsebell.web.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rinsebell.floor.Floor;

class FormPagesTest {
    private final PageTable pages = new PageTable();

    static Stream<Presses.Name> names() {
        return FormPages.all().names().stream();
    }

    @ParameterizedTest
    @MethodSource("names")
    void everyPageShowsOnAnyFloor(Presses.Name name) {
        for (var floor : List.of(Floor.EMPTY, pages.table.floor())) {
            for (var id : new long[] {0, 1, 2, 3, pages.table.visit.value(), pages.table.bowl.value(), 999}) {
                var html = pages.html(pages.view(floor, name, id, Fields.NONE, List.of()));
                assertThat(html).doesNotContain("style=").doesNotContain("null");
            }
        }
    }

    @Test
    void everyPressHasAPage() {
        var ofOnePress = List.of("offer", "drop", "acknowledge");
        assertThat(FormPages.all().names())
                .containsAll(Presses.all(List.of()).names().stream()
                        .filter(name -> !ofOnePress.contains(name.press())
                                && !name.resource().equals("shelf"))
                        .toList());
    }

    /** What is filled in beforehand is what the floor has: sent back as it is, it reads. */
    @Test
    void aFormSaysAgainWhatStands() {
        var salon = pages.html("policy", "", 0, Fields.NONE);
        assertThat(salon).contains("name=\"skinTest.beforeHours\"").contains("value=\"48\"");
    }

    @Test
    void aTimeZoneIsNoPartOfAScalp() {
        assertThat(pages.html("salon", "", 0, Fields.NONE))
                .contains("<label for=\"zone\">Time zone</label>")
                .doesNotContain("Does it touch the scalp?");
        assertThat(pages.html("products", "", 0, Fields.NONE)).contains("Does it touch the scalp?");
    }

    @Test
    void whatWasTypedIsKeptAndEveryFaultStandsBesideItsField() {
        var typed = Fields.of(
                "press", "0123456789abcdef",
                "label", "<b>שרה</b> 💇",
                "place", "chair-77",
                "minutesAgo", "many");
        var html = pages.html("visits", "", 0, typed);
        assertThat(html)
                .contains("value=\"&lt;b>שרה&lt;/b> 💇\"")
                .contains("value=\"many\"")
                .contains("id=\"minutesAgo-problem\"")
                .contains("aria-describedby=\"minutesAgo-hint minutesAgo-problem\"")
                .contains("id=\"place-problem\"")
                .contains("2 things need another look");
    }

    @Test
    void aFaultOfSomethingNotAskedIsToldToo() {
        var html = pages.html(
                "visits", "label", pages.table.visit.value(), Fields.of("press", "x", "label", "a", "by", "77"));
        assertThat(html).contains("This is not known here, or not any more.");
    }
}

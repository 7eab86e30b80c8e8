package rinsebell.web.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import rinsebell.floor.Stream;
import rinsebell.floor.product.Directions;
import rinsebell.floor.product.Times;
import rinsebell.floor.salon.SalonEvent;
import rinsebell.floor.testing.Shelf;

/** Directions are revised while a bowl of them is on a head. */
class EditionRowsTest {
    private static final Directions OLD = Shelf.MILD_CREAM;

    private final PageTable pages = new PageTable();

    @BeforeEach
    void revise() {
        var times = new Times(OLD.times().active(), OLD.times().develops(), Duration.ofMinutes(40));
        var revised =
                new Directions(OLD.name(), OLD.kind(), times, OLD.limits(), OLD.mixing(), OLD.checks(), OLD.contents());
        var product = pages.table.story.product(OLD);
        pages.table.story.tells(new Stream.OfSalon(), new SalonEvent.DirectionsRevised(product, revised));
    }

    @Test
    void historyTellsWhatWasChanged() {
        var html =
                pages.html("products", "history", pages.table.story.product(OLD).value(), Fields.NONE);
        assertThat(html).contains("edition 2", "Longest on: not said, now 40", "edition 1", "entered");
        assertThat(html.indexOf("edition 2")).isLessThan(html.indexOf("edition 1"));
    }

    /** The bowl keeps its edition, and its page says that there is a stricter one. */
    @Test
    void aBowlThatRunsSaysSo() {
        var html = pages.html("bowls", "tag", pages.table.bowl.value(), Fields.NONE);
        assertThat(html).contains("mixed by edition 1, and newer directions are stricter: longest on the hair.");
    }
}

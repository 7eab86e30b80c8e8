package rinsebell.web.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import rinsebell.floor.product.Directions;
import rinsebell.floor.testing.Shelf;

/** Some pages of forms, letter by letter; {@code -Dgolden.write=true} writes them anew. */
class FormGoldenTest {
    private static final Path FOLDER = Path.of("src/test/resources/rinsebell/web/golden");
    private static final Pattern HASH = Pattern.compile("assets/[0-9a-f]{16}/");

    private final PageTable pages = new PageTable();

    private Map<String, String> all() {
        var visit = pages.table.visit.value();
        var powder = pages.table.story.product(Shelf.MILD_CREAM).value();
        var wrong = Fields.of("press", "0123456789abcdef", "label", "", "place", "chair-77", "skinTest", "reacted");
        var all = new LinkedHashMap<String, String>();
        all.put("form-welcome-wrong", pages.html("visits", "", 0, wrong));
        all.put("form-strand", pages.html("visits", "strand", visit, Fields.NONE));
        all.put("form-directions", pages.html("products", "directions", powder, Fields.NONE));
        all.put("form-mix", pages.html("bowls", "", 0, Fields.of("visit", "" + visit)));
        all.put("sheet-mixtures", pages.html("mixtures", "", 0, Fields.of("visit", "" + visit)));
        all.put("form-mixture", pages.html("mixtures", "", 0, mixture()));
        all.put(
                "form-weigh",
                pages.html(
                        "mixtures",
                        "weigh",
                        0,
                        Fields.of("weighed.0.grams", "30").orElse(mixture())));
        all.put("bowl", pages.html("bowls", "tag", pages.table.bowl.value(), Fields.NONE));
        all.put("form-left", pages.html("bowls", "throw-away", pages.table.bowl.value(), tooMuch()));
        all.put("form-price", pages.html("products", "price", powder, Fields.NONE));
        all.put("form-preview", pages.html("products", "", 0, preview()));
        all.put("sheet-day", pages.html("day", "", 0, Fields.NONE));
        return all;
    }

    private static Fields tooMuch() {
        return Fields.of("press", "0123456789abcdef", "grams", "500");
    }

    private Fields mixture() {
        return Fields.of(
                "products.0.product", number(Shelf.POWDER),
                "products.1.product", number(Shelf.CLEAR),
                "developer", number(Shelf.DEV20),
                "of", number(Shelf.POWDER),
                "grams", "24",
                "visit", "" + pages.table.visit.value());
    }

    private String number(Directions directions) {
        return "" + pages.table.story.product(directions).value();
    }

    private static Fields preview() {
        return Fields.of(
                "name", "powder",
                "kind", "powder-lightener",
                "zone", "off-scalp",
                "usableFor", "60",
                "atEnd", "rinse",
                "develops.from", "20",
                "develops.to", "55",
                "develops.counted", "from-mixing",
                "longestOn", "50",
                "checks.strandEvery", "10");
    }

    @Test
    void renderAsBefore() throws IOException {
        for (var page : all().entrySet()) {
            var html = HASH.matcher(page.getValue()).replaceAll("assets/HASH/");
            var golden = FOLDER.resolve(page.getKey() + ".html");
            if (Boolean.getBoolean("golden.write")) {
                Files.writeString(golden, html);
            }
            assertThat(html).as(page.getKey()).isEqualTo(Files.readString(golden));
        }
    }
}

package rinsebell.web.board;

import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rinsebell.floor.report.BowlUse;
import rinsebell.floor.report.UseReport;
import rinsebell.web.Csv;

/** What was used on a day, for a spreadsheet: a line for each bowl and product. What is not known is empty. */
public record UseSheet(UseReport report, Moment moment) {
    private static final List<String> HEADS =
            List.of("day", "mixed at", "bowl", "product", "grams", "left share", "cost", "visit");

    private static final DateTimeFormatter MIXED = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm");
    private static final int PLACES_OF_GRAMS = 2;
    private static final int PLACES = 4;

    public String csv() {
        return Stream.concat(Stream.of(HEADS), report.bowls().stream().flatMap(this::lines))
                .map(Csv::line)
                .collect(Collectors.joining());
    }

    private Stream<List<String>> lines(BowlUse use) {
        return use.portions().stream()
                .map(portion -> List.of(
                        report.day().toString(),
                        MIXED.format(use.bowl()
                                .mixedAt()
                                .atZone(moment.floor().salon().zone())),
                        String.valueOf(use.bowl().id().value()),
                        name(portion),
                        portion.grams().plain(PLACES_OF_GRAMS),
                        use.share().map(share -> share.plain(PLACES)).orElse(""),
                        portion.cost().map(cost -> cost.plain(PLACES)).orElse(""),
                        use.whose().map(moment::label).orElse("")));
    }

    private String name(BowlUse.Portion portion) {
        return moment.floor()
                .salon()
                .product(portion.product())
                .map(product -> product.directions(portion.edition()).name())
                .orElse("");
    }
}

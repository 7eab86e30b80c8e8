package rinsebell.web.board;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import rinsebell.web.Csv;
import rinsebell.web.view.LeadPage;
import rinsebell.web.view.Table;
import rinsebell.web.view.Table.Row;

/** The tables of a lead's page for a spreadsheet: a line for each figure, since no two of them have the same columns. */
public record LeadSheet(LeadPage page) {
    private static final List<String> HEADS = List.of("day", "table", "number", "row", "column", "value");

    public static LeadSheet of(LeadPage page) {
        return new LeadSheet(page);
    }

    public String csv() {
        var tables = page.parts().stream().flatMap(part -> part.tables().stream());
        return Stream.concat(Stream.of(HEADS), tables.flatMap(this::lines))
                .map(Csv::line)
                .collect(Collectors.joining());
    }

    private Stream<List<String>> lines(Table table) {
        return IntStream.range(0, table.rows().size())
                .boxed()
                .flatMap(number -> lines(table, number, table.rows().get(number)));
    }

    /** Rows of one table may have the same name, so each has its number. */
    private Stream<List<String>> lines(Table table, int number, Row row) {
        return IntStream.range(1, row.cells().size())
                .mapToObj(column -> List.of(
                        page.days().day(),
                        table.caption(),
                        String.valueOf(number + 1),
                        row.name(),
                        table.heads().get(column),
                        row.cells().get(column)));
    }
}

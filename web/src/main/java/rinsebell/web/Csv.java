package rinsebell.web;

import java.util.List;
import java.util.stream.Collectors;

/**
 * Lines of comma-separated values, as RFC 4180 has them. A spreadsheet takes a cell that begins like a formula for one, and
 * what people typed must never be carried out, so such a cell gets an apostrophe before it (OWASP, "CSV Injection").
 */
public final class Csv {
    private static final String END = "\r\n";

    /** With which characters a formula begins, wide ones too; a tab or the end of a line may stand before one. */
    private static final String BEGINS_A_FORMULA = "=+-@\t\r\n＝＋－＠";

    private Csv() {}

    /** @param cells as many in each line */
    public static String line(List<String> cells) {
        return cells.stream().map(Csv::cell).collect(Collectors.joining(",", "", END));
    }

    private static String cell(String text) {
        var safe = !text.isEmpty() && BEGINS_A_FORMULA.indexOf(text.charAt(0)) >= 0 ? "'" + text : text;
        var plain = safe.chars().noneMatch(sign -> sign == ',' || sign == '"' || sign == '\r' || sign == '\n');
        return plain ? safe : '"' + safe.replace("\"", "\"\"") + '"';
    }
}

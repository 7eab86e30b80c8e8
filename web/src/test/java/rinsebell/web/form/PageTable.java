package rinsebell.web.form;

import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import rinsebell.floor.Floor;
import rinsebell.floor.testing.Saturday;
import rinsebell.web.Assets;
import rinsebell.web.Pages;
import rinsebell.web.Screen;
import rinsebell.web.TimeStyle;
import rinsebell.web.Words;
import rinsebell.web.board.Moment;
import rinsebell.web.view.BellStrip;
import rinsebell.web.view.Look;
import rinsebell.web.view.View;

/** Pages of the salon of {@link PressTable}, at ten o'clock. */
final class PageTable {
    private static final Pages PAGES = new Pages();
    private static final Assets ASSETS = Assets.under("assets");
    private static final FormPages FORMS = FormPages.all();

    final PressTable table;

    PageTable() {
        this(new PressTable());
    }

    PageTable(PressTable table) {
        this.table = table;
    }

    Moment moment() {
        return moment(table.floor());
    }

    Moment moment(Floor floor) {
        return new Moment(floor, id -> "text " + id.seq(), floor.bells(), Saturday.TEN, Words.british());
    }

    View view(Floor floor, Presses.Name name, long id, Fields typed, List<FieldError> errors) {
        var ask = new PageAsk(
                moment(floor),
                id,
                typed,
                errors,
                Look.LIGHT,
                new BellStrip(List.of(), 0, Map.of(), List.of(), null),
                null,
                "http://salon.test",
                table.clients);
        return FORMS.find(name.resource(), name.press()).orElseThrow().page(ask);
    }

    /** Every box in which grams stand, with its label. */
    static List<String> boxes(String html) {
        return Pattern.compile("<label for=\"portions[^>]*>([^<]*)</label>\\s*<input[^>]* value=\"([^\"]+)\"")
                .matcher(html)
                .results()
                .map(found -> found.group(1) + ": " + found.group(2))
                .toList();
    }

    String html(View view) {
        var time = new TimeStyle(Saturday.ZONE, false);
        return PAGES.render(view, new Screen(Words.british(), ASSETS, time, Saturday.TEN, "1", "0123456789abcdef"));
    }

    String html(String resource, String press, long id, Fields typed) {
        return html(
                view(table.floor(), new Presses.Name(resource, press), id, typed, errors(resource, press, id, typed)));
    }

    private List<FieldError> errors(String resource, String press, long id, Fields typed) {
        return typed.first("press").isPresent() && table.read(resource, press, id, typed) instanceof Reading.Wrong wrong
                ? wrong.errors()
                : List.of();
    }
}

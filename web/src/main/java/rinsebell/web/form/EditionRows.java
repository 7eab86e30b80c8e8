package rinsebell.web.form;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.Fact;
import rinsebell.floor.product.Directions;
import rinsebell.floor.product.ProductId;
import rinsebell.floor.salon.SalonEvent;
import rinsebell.web.form.SheetPage.Part;
import rinsebell.web.form.SheetPage.Row;
import rinsebell.web.view.Field;
import rinsebell.web.view.Nav;

/** Every edition of a product's directions, the newest first: when, who, and what was changed. */
final class EditionRows {
    private final PageAsk ask;
    private final ProductId product;

    EditionRows(PageAsk ask) {
        this.ask = ask;
        this.product = new ProductId(ask.id());
    }

    SheetPage page() {
        var name =
                ask.salon().product(product).map(one -> one.directions().name()).orElse("");
        var title = ask.say("sheet.history.of", name);
        var part = new Part("", rows(), List.of());
        return new SheetPage(
                ask.shell(title, Nav.SETUP), title, ask.say("sheet.history.intro"), List.of(part), List.of());
    }

    private List<Row> rows() {
        var rows = new ArrayList<Row>();
        Directions before = null;
        for (var fact : ask.moment().floor().facts(new rinsebell.floor.Stream.OfSalon())) {
            var directions = directions(fact);
            if (directions != null) {
                rows.add(row(fact, rows.size() + 1, before, directions));
                before = directions;
            }
        }
        Collections.reverse(rows);
        return rows;
    }

    private @Nullable Directions directions(Fact fact) {
        if (fact.event() instanceof SalonEvent.ProductEntered entered && fact.seq() == product.value()) {
            return entered.directions();
        }
        return fact.event() instanceof SalonEvent.DirectionsRevised revised
                        && revised.product().equals(product)
                ? revised.directions()
                : null;
    }

    private Row row(Fact fact, int edition, @Nullable Directions before, Directions directions) {
        var by = ask.moment().name(fact.by());
        var what = ask.say("sheet.edition", edition) + (by.isEmpty() ? "" : " · " + by);
        var at = fact.happened().atZone(ask.salon().zone()).toLocalDate() + " "
                + ask.moment().clock(fact.happened());
        return new Row(
                at,
                what,
                before == null ? ask.say("sheet.history.first") : changes(before, directions),
                false,
                List.of());
    }

    /** Field by field as the form of the directions has them, such as "Longest on: 60 to 50". */
    private String changes(Directions before, Directions after) {
        var old = values(before);
        var changed = new LinkedHashMap<String, String>();
        values(after).forEach((label, value) -> {
            var was = old.getOrDefault(label, "");
            if (!was.equals(value)) {
                changed.put(label, ask.say("sheet.history.change", label, shown(was), shown(value)));
            }
        });
        return String.join("; ", changed.values());
    }

    private String shown(String value) {
        return value.isEmpty() ? ask.say("sheet.history.none") : value;
    }

    private Map<String, String> values(Directions directions) {
        var values = new LinkedHashMap<String, String>();
        new DirectionsPage(ask.with(Fields.NONE), directions)
                .form("products.directions", "").groups().stream()
                        .flatMap(group -> group.fields().stream())
                        .filter(field -> field.kind() != Field.Kind.HIDDEN)
                        .forEach(
                                field -> values.merge(field.label(), value(field), (one, other) -> one + ", " + other));
        return values;
    }

    private static String value(Field field) {
        return field.options().isEmpty()
                ? field.value()
                : field.options().stream()
                        .filter(Field.Option::chosen)
                        .map(Field.Option::label)
                        .collect(Collectors.joining(", "));
    }
}

package rinsebell.web.form;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import rinsebell.floor.product.Product;
import rinsebell.floor.product.ProductId;
import rinsebell.floor.product.Tub;
import rinsebell.web.form.SheetPage.Part;
import rinsebell.web.form.SheetPage.Row;
import rinsebell.web.view.Form;
import rinsebell.web.view.Nav;

/** What a tub of a product holds and costs: typed in, and what was typed before, the newest first. */
final class PricePage {
    private PricePage() {}

    static SheetPage of(PageAsk ask) {
        var product = ask.salon().product(new ProductId(ask.id()));
        var name = product.map(one -> one.directions().name()).orElse("");
        var title = ask.say("price.of", name);
        var rows = product.map(one -> rows(ask, one)).orElse(List.of());
        var known = new Part(ask.say(rows.isEmpty() ? "price.none" : "price.known"), rows, List.of());
        return new SheetPage(
                ask.shell(title, Nav.SETUP),
                title,
                ask.say("price.intro"),
                null,
                List.of(),
                List.of(form(ask, product.flatMap(Product::tub))),
                List.of(known));
    }

    private static Form form(PageAsk ask, Optional<Tub> tub) {
        return new FormDraft(ask, "products.price")
                .row()
                .number("tubGrams", tub.map(PricePage::grams).orElse(""))
                .number("price", tub.map(one -> one.price().toPlainString()).orElse(""))
                .form("/products/" + ask.id() + "/price", "/products")
                .untitled();
    }

    private static List<Row> rows(PageAsk ask, Product product) {
        var rows = new ArrayList<Row>();
        for (var price : product.prices()) {
            var since = price.from().atZone(ask.salon().zone()).toLocalDate() + " "
                    + ask.moment().clock(price.from());
            rows.add(new Row(since, say(ask, price.tub()), "", false, List.of()));
        }
        Collections.reverse(rows);
        return rows;
    }

    /** Such as "450 g for 27.50". */
    static String say(PageAsk ask, Tub tub) {
        return ask.say("price.tub", grams(tub), tub.price().toPlainString());
    }

    private static String grams(Tub tub) {
        return tub.grams().amount().toPlainString();
    }
}

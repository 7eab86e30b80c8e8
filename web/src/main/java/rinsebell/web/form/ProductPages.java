package rinsebell.web.form;

import java.util.List;
import rinsebell.floor.product.Product;
import rinsebell.floor.product.ProductId;
import rinsebell.web.form.SheetPage.Part;
import rinsebell.web.form.SheetPage.Row;
import rinsebell.web.view.Nav;
import rinsebell.web.view.Press;
import rinsebell.web.view.View;

/** Pages about the products on the shelf and their directions. */
final class ProductPages {
    private static final String PRODUCTS = "products";
    private static final String SHELF = "/products";

    private ProductPages() {}

    static void enter(FormPages pages) {
        pages.enter(PRODUCTS, Presses.PLAIN, Nav.SETUP, ask -> new DirectionsPage(ask).form("products", SHELF));
        pages.enter(PRODUCTS, "directions", Nav.SETUP, ProductPages::revise);
        pages.enter(PRODUCTS, "list", ProductPages::list);
        pages.enter(PRODUCTS, "price", PricePage::of);
        pages.enter(PRODUCTS, "history", ask -> new EditionRows(ask).page());
    }

    private static rinsebell.web.view.Form revise(PageAsk ask) {
        var known = ask.salon().product(new ProductId(ask.id()));
        return new DirectionsPage(ask, known.map(Product::directions).orElse(null))
                .form("products.directions", SHELF + "/" + ask.id() + "/directions");
    }

    private static View list(PageAsk ask) {
        var title = ask.say("sheet.products");
        var rows = ask.salon().products().stream()
                .map(product -> row(ask, product))
                .toList();
        var add = Press.opens(ask.say("form.products"), "", "/products/new").as(Press.Weight.MAIN);
        return new SheetPage(
                ask.shell(title, Nav.SETUP),
                title,
                ask.say("caution.leaflet"),
                List.of(new Part("", rows, ask.salon().products().isEmpty() ? List.of(add, shelf(ask)) : List.of(add))),
                List.of());
    }

    /** A salon without products may begin with invented ones. */
    private static Press shelf(PageAsk ask) {
        return Press.sends(ask.say("form.products.shelf"), ask.say("form.products.shelf.hint"), "/shelf");
    }

    private static Row row(PageAsk ask, Product product) {
        var base = SHELF + "/" + product.id().value() + "/";
        var offer = Press.sends(
                ask.say(product.withdrawn() ? "form.products.offer" : "form.products.withdraw"),
                "",
                base + "offer",
                new Press.Hidden("offered", product.withdrawn() ? "yes" : "no"));
        var detail = ask.moment().say(product.directions().kind()) + " · " + ask.say("sheet.edition", product.edition())
                + product.tub().map(tub -> " · " + PricePage.say(ask, tub)).orElse("");
        var price = Press.opens(ask.say("form.products.price"), "", base + "price");
        var revise = Press.opens(ask.say("form.products.directions"), "", base + "directions");
        var history = Press.opens(ask.say("sheet.history"), "", base + "history");
        return new Row(
                "", product.directions().name(), detail, product.withdrawn(), List.of(revise, price, history, offer));
    }
}

package rinsebell.web.form;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import rinsebell.web.view.Form;
import rinsebell.web.view.FormPage;
import rinsebell.web.view.Nav;

/**
 * Every page on which something is typed. A press that has a page is found under the name of the press, so that what
 * came back with faults is shown again; pages that only list things have names of their own.
 *
 * <ul>
 *   <li>{@code visits}: plain is the welcome, {@code more} the choice of rarer presses, else as the presses
 *   <li>{@code bowls}: plain is a bowl to mix, {@code list} the bowls of the day, else as the presses
 *   <li>{@code mixtures}: plain is the bench, from products to grams; {@code weigh} beside the scale
 *   <li>{@code recipes}: plain is a recipe to keep, {@code list} the house's, {@code one} any of them
 *   <li>{@code recipe-file}: plain takes recipes in
 *   <li>{@code products}: plain is a new product, {@code list} the shelf
 *   <li>{@code staff}: plain is a new member of staff with the list of all, {@code change} one of them
 *   <li>{@code salon}: plain is the set-up; the first page of an empty salon too
 *   <li>{@code clients}: {@code list} and plain find a record, {@code card} and {@code note} are one of them
 *   <li>{@code day}: plain is the day sheet, {@code caught-up} what may have been missed,
 *   {@code clock} what to do when the computer's clock was set
 * </ul>
 */
public final class FormPages {
    private final Map<Presses.Name, PageForm> pages = new LinkedHashMap<>();

    private FormPages() {}

    public static FormPages all() {
        var pages = new FormPages();
        VisitPages.enter(pages);
        HeadPages.enter(pages);
        BowlPages.enter(pages);
        MixturePages.enter(pages);
        RecipePages.enter(pages);
        FactPages.enter(pages);
        BellPages.enter(pages);
        SalonPages.enter(pages);
        ProductPages.enter(pages);
        DayPages.enter(pages);
        ClientPages.enter(pages);
        return pages;
    }

    void enter(String resource, String press, PageForm page) {
        if (pages.put(new Presses.Name(resource, press), page) != null) {
            throw new IllegalStateException("two pages for " + resource + "/" + press);
        }
    }

    /** A page that is one form. */
    void enter(String resource, String press, Nav here, Function<PageAsk, Form> form) {
        enter(resource, press, ask -> {
            var made = form.apply(ask);
            return new FormPage(ask.shell(made.title(), here), made);
        });
    }

    public Optional<PageForm> find(String resource, String press) {
        return Optional.ofNullable(pages.get(new Presses.Name(resource, press)));
    }

    public Set<Presses.Name> names() {
        return Set.copyOf(pages.keySet());
    }
}

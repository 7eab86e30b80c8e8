package rinsebell.db.codec;

import rinsebell.floor.bowl.Portion;
import rinsebell.floor.product.ProductId;
import rinsebell.floor.unit.Grams;

/** Grams of one product. */
final class PortionJson {

    private PortionJson() {}

    static void write(Portion portion, Writing out) {
        out.number("product", portion.product().value())
                .whole("edition", portion.edition())
                .decimal("grams", portion.grams().amount());
    }

    static Portion read(Reading in) {
        return new Portion(new ProductId(in.number("product")), in.whole("edition"), new Grams(in.decimal("grams")));
    }
}

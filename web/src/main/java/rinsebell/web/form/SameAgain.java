package rinsebell.web.form;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import rinsebell.floor.bowl.Portion;
import rinsebell.floor.mix.Composition;
import rinsebell.floor.product.Directions;
import rinsebell.floor.product.Kind;
import rinsebell.floor.product.Mixture;
import rinsebell.floor.product.MixtureRole;
import rinsebell.floor.product.Product;
import rinsebell.floor.salon.Salon;
import rinsebell.floor.unit.Fraction;

/** The bench, filled in with what a bowl was made of, or a recipe says: as today's directions have it. */
final class SameAgain {
    private static final Fraction SIXTY = Fraction.of(60);

    private final Salon salon;
    private final List<Part> developers = new ArrayList<>();
    private final List<Part> others = new ArrayList<>();

    /** What is in a bowl, with what its product's leaflet says today. */
    private record Part(Portion portion, Directions directions) {
        Fraction grams() {
            return Fraction.of(portion.grams().amount());
        }

        String number() {
            return Choices.number(portion.product().value());
        }
    }

    private SameAgain(Salon salon) {
        this.salon = salon;
    }

    /**
     * What would be typed.
     *
     * @param size of the bowl, of which 1 is as large
     * @return empty where something of it is not offered any more, or the bench cannot say it
     */
    static Optional<Fields> of(MixedBefore was, Salon salon, BigDecimal size) {
        return new SameAgain(salon).typed(was, Fraction.of(size));
    }

    private Optional<Fields> typed(MixedBefore was, Fraction size) {
        for (var portion : was.portions()) {
            var product = salon.product(portion.product()).filter(one -> !one.withdrawn());
            if (product.isEmpty()) {
                return Optional.empty();
            }
            sort(new Part(portion, product.map(Product::directions).orElseThrow()));
        }
        if (others.isEmpty() || developers.size() > 2) {
            return Optional.empty();
        }
        var typed = new LinkedHashMap<String, String>();
        products(typed);
        developed(typed);
        var whole = Fraction.sum(was.portions().stream()
                .map(portion -> Fraction.of(portion.grams().amount())));
        typed.put("grams", whole.times(size).plain(2));
        if (was.whom() != null) {
            typed.put("visit", Choices.number(was.whom().value()));
        }
        var all = new LinkedHashMap<String, List<String>>();
        typed.forEach((name, value) -> all.put(name, List.of(value)));
        return Optional.of(Fields.of(all));
    }

    private void sort(Part part) {
        (part.directions.kind() == Kind.DEVELOPER ? developers : others).add(part);
    }

    private void products(Map<String, String> typed) {
        for (var i = 0; i < others.size(); i++) {
            typed.put("products." + i + ".product", others.get(i).number());
            if (i > 0) {
                var per60 = others.get(i)
                        .grams()
                        .times(SIXTY)
                        .dividedBy(others.get(0).grams());
                typed.put("products." + i + ".per60", per60.plain(2));
            }
        }
    }

    /** In the mixture of the directions that is nearest below, with what is more than that said as more. */
    private void developed(Map<String, String> typed) {
        var roles = MixtureRole.of(others.stream().map(Part::directions).toList());
        var developed = IntStream.range(0, others.size())
                .filter(i -> roles.get(i) == MixtureRole.DEVELOPED)
                .mapToObj(others::get)
                .toList();
        if (developed.isEmpty() || developers.isEmpty()) {
            return;
        }
        var ratio = Fraction.sum(developers.stream().map(Part::grams))
                .times(SIXTY)
                .dividedBy(Fraction.sum(developed.stream().map(Part::grams)));
        nearest(developed.get(0).directions.mixing().mixtures(), ratio).ifPresent(mixture -> {
            typed.put("mixture", mixture.name());
            var more = ratio.minus(per60(mixture));
            if (more.rounded(2).signum() > 0) {
                typed.put("extraPer60", more.plain(2));
            }
        });
        typed.put(MixtureForm.DEVELOPER, developers.get(0).number());
        if (developers.size() == 2) {
            typed.put(DeveloperForm.OTHER_DEVELOPER, developers.get(1).number());
            strength().ifPresent(strength -> typed.put(DeveloperForm.STRENGTH, strength.plain(2)));
        }
    }

    private static Optional<Mixture> nearest(List<Mixture> mixtures, Fraction ratio) {
        return mixtures.stream()
                .filter(mixture -> per60(mixture).compareTo(ratio) <= 0)
                .max(java.util.Comparator.comparing(SameAgain::per60));
    }

    private static Fraction per60(Mixture mixture) {
        return Fraction.of(mixture.developerPer60().amount());
    }

    private Optional<Fraction> strength() {
        return new Composition(developers.stream()
                        .map(part -> new Composition.Part(part.directions.contents(), part.portion.grams()))
                        .toList())
                .peroxide();
    }
}

package rinsebell.db.codec;

import java.math.BigDecimal;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import rinsebell.floor.product.Kind;
import rinsebell.floor.product.Mixing;
import rinsebell.floor.product.Mixture;
import rinsebell.floor.product.Pairing;
import rinsebell.floor.unit.Grams;
import rinsebell.floor.unit.Percent;

/** How a product is mixed, and what it may meet in a bowl. */
final class MixingJson {

    private MixingJson() {}

    static void write(Mixing mixing, Writing out) {
        out.objects("mixtures", mixing.mixtures(), MixingJson::writeMixture)
                .decimals("strengths_percent", values(mixing.strengths()))
                .decimals("strengths_on_scalp_percent", values(mixing.strengthsOnScalp()))
                .objects("pairings", mixing.pairings(), MixingJson::writePairing);
    }

    static Mixing read(Reading in) {
        return new Mixing(
                in.objects("mixtures", MixingJson::readMixture),
                percents(in.decimals("strengths_percent")),
                percents(in.decimals("strengths_on_scalp_percent")),
                in.objects("pairings", MixingJson::readPairing));
    }

    private static void writeMixture(Mixture mixture, Writing out) {
        out.text("name", mixture.name())
                .decimal("developer_per_60", mixture.developerPer60().amount())
                .decimal("extra_per_60", mixture.extraPer60().amount());
    }

    private static Mixture readMixture(Reading in) {
        return new Mixture(
                in.text("name"), new Grams(in.decimal("developer_per_60")), new Grams(in.decimal("extra_per_60")));
    }

    private static void writePairing(Pairing pairing, Writing out) {
        out.constant("with", pairing.with())
                .constant("rule", pairing.rule())
                .decimal("at_most_per_60", pairing.limit().map(Grams::amount).orElse(null));
    }

    private static Pairing readPairing(Reading in) {
        return new Pairing(
                in.constant("with", Kind.class),
                in.constant("rule", Pairing.Rule.class),
                in.maybeDecimal("at_most_per_60").map(Grams::new).orElse(null));
    }

    private static List<BigDecimal> values(Collection<Percent> percents) {
        return percents.stream().map(Percent::value).toList();
    }

    private static Set<Percent> percents(Collection<BigDecimal> values) {
        return values.stream().map(Percent::new).collect(Collectors.toUnmodifiableSet());
    }
}

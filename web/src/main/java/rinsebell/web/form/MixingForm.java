package rinsebell.web.form;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import rinsebell.floor.product.Kind;
import rinsebell.floor.product.Mixing;
import rinsebell.floor.product.Mixture;
import rinsebell.floor.product.Pairing;
import rinsebell.floor.unit.Grams;
import rinsebell.floor.unit.Percent;
import rinsebell.web.Codes;

/** Reads how a product is mixed. */
final class MixingForm {
    static final int MOST_MIXTURES = 4;
    private static final int MOST_STRENGTHS = 12;
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);
    private static final Entries.Bounds PER_60 = new Entries.Bounds(BigDecimal.ZERO, BigDecimal.valueOf(600), 1);

    private MixingForm() {}

    static Mixing mixing(Entries entries) {
        return new Mixing(
                mixtures(entries),
                strengths(entries, "strengths"),
                strengths(entries, "strengthsOnScalp"),
                pairings(entries));
    }

    private static List<Mixture> mixtures(Entries entries) {
        var mixtures = new ArrayList<Mixture>();
        for (var i = 0; i < MOST_MIXTURES; i++) {
            mixture(entries, "mixtures." + i).ifPresent(mixtures::add);
        }
        if (entries.names().stream().anyMatch(name -> name.startsWith("mixtures." + MOST_MIXTURES + "."))) {
            entries.fault("mixtures", Fault.TOO_MANY, MOST_MIXTURES);
        }
        return mixtures;
    }

    private static Optional<Mixture> mixture(Entries entries, String row) {
        var name = entries.text(row + ".name", Entries.LONGEST_LABEL);
        var developer = entries.decimal(row + ".developerPer60", PER_60).map(Grams::new);
        var extra = entries.decimal(row + ".extraPer60", PER_60).map(Grams::new);
        if (name.isEmpty() && developer.isEmpty() && extra.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Mixture(
                entries.needed(row + ".name", name, ""),
                entries.needed(row + ".developerPer60", developer, Grams.NONE),
                extra.orElse(Grams.NONE)));
    }

    private static Set<Percent> strengths(Entries entries, String field) {
        var typed = entries.all(field);
        if (typed.size() > MOST_STRENGTHS) {
            entries.fault(field, Fault.TOO_MANY, MOST_STRENGTHS);
            return Set.of();
        }
        return typed.stream()
                .map(Typed::tidy)
                .filter(text -> !text.isEmpty())
                .flatMap(text -> strength(entries, field, text).stream())
                .collect(Collectors.toUnmodifiableSet());
    }

    private static Optional<Percent> strength(Entries entries, String field, String text) {
        var number = Typed.number(text)
                .filter(one -> one.signum() >= 0 && one.compareTo(HUNDRED) <= 0)
                .map(Percent::new);
        return entries.known(field, number, Fault.NOT_A_CHOICE);
    }

    private static List<Pairing> pairings(Entries entries) {
        var pairings = new ArrayList<Pairing>();
        for (var kind : Kind.values()) {
            pairing(entries, kind).ifPresent(pairings::add);
        }
        return pairings;
    }

    private static Optional<Pairing> pairing(Entries entries, Kind with) {
        var field = "pairings." + Codes.of(with);
        var rule = entries.choice(field + ".rule", Pairing.Rule.class);
        var atMost = entries.decimal(field + ".atMostPer60", PER_60).map(Grams::new);
        return rule.isEmpty() && atMost.isEmpty()
                ? Optional.empty()
                : Optional.of(new Pairing(with, rule.orElse(Pairing.Rule.ALLOWED), atMost.orElse(null)));
    }
}

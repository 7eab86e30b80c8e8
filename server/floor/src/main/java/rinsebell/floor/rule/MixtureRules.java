package rinsebell.floor.rule;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import rinsebell.floor.Reason;
import rinsebell.floor.ReasonCode;
import rinsebell.floor.bowl.Portion;
import rinsebell.floor.mix.Composition;
import rinsebell.floor.product.Directions;
import rinsebell.floor.product.Kind;
import rinsebell.floor.product.Mixture;
import rinsebell.floor.product.MixtureRole;
import rinsebell.floor.product.Pairing;
import rinsebell.floor.product.Zone;
import rinsebell.floor.salon.Salon;
import rinsebell.floor.unit.Fraction;
import rinsebell.floor.unit.Grams;
import rinsebell.floor.unit.Percent;

/**
 * Judges portions as one mixture: ratio to developer, developer strength, what may meet what, and the law. Exact: no
 * sum is rounded before it is compared.
 */
public final class MixtureRules {
    private static final BigDecimal SIXTY = BigDecimal.valueOf(60);

    /** 20 volumes. Common practice, no source. */
    private static final Percent USUAL_ON_SCALP = Percent.ofVolumes(20);

    private final List<Part> parts;
    private final Grams slack;

    private MixtureRules(List<Part> parts, Grams slack) {
        this.parts = parts;
        this.slack = slack;
    }

    /** A portion with its directions, and what it does. */
    private record Part(Directions directions, MixtureRole role, Grams grams) {
        static Part of(Portion portion, Directions directions) {
            return new Part(directions, MixtureRole.PLAIN, portion.grams());
        }

        Part as(MixtureRole other) {
            return new Part(directions, other, grams);
        }

        boolean isDeveloped() {
            return role == MixtureRole.DEVELOPED;
        }

        boolean is(Kind kind) {
            return directions.kind() == kind;
        }

        BigDecimal amount() {
            return grams.amount();
        }
    }

    /**
     * Everything that speaks against this mixture wherever it goes.
     *
     * @return in the order of harm; cautions among them
     */
    public static List<Reason> judge(List<Portion> portions, Salon salon) {
        var rules = of(portions, salon);
        var found = new ArrayList<>(MixtureLaw.judge(composition(rules.parts)));
        rules.parts.forEach(part -> rules.judge(part, found));
        return found.stream().sorted().toList();
    }

    /** What speaks against it on a scalp, besides. */
    public static List<Reason> judgeOnScalp(List<Portion> portions, Salon salon) {
        var rules = of(portions, salon);
        var found = new ArrayList<Reason>();
        rules.offScalpOnly().or(rules::strongOnScalp).ifPresent(found::add);
        for (var part : rules.parts) {
            rules.pairings(part, Pairing.Rule.NEVER_ON_SCALP, ReasonCode.NEVER_ON_SCALP_TOGETHER, found);
            rules.strengthOnScalp(part).ifPresent(found::add);
        }
        return found.stream().sorted().toList();
    }

    private static MixtureRules of(List<Portion> portions, Salon salon) {
        var known = portions.stream()
                .map(portion -> salon.product(portion.product())
                        .map(product -> Part.of(portion, product.directions(portion.edition()))))
                .flatMap(Optional::stream)
                .toList();
        var roles = MixtureRole.of(known.stream().map(Part::directions).toList());
        var parts = IntStream.range(0, known.size())
                .mapToObj(i -> known.get(i).as(roles.get(i)))
                .toList();
        return new MixtureRules(parts, Grams.of(salon.policy().weighingSlackGrams()));
    }

    private static Composition composition(List<Part> parts) {
        return new Composition(parts.stream()
                .map(part -> new Composition.Part(part.directions.contents(), part.grams))
                .toList());
    }

    private void judge(Part part, List<Reason> found) {
        pairings(part, Pairing.Rule.NEVER, ReasonCode.NEVER_MIXED, found);
        additions(part, found);
        if (part.isDeveloped()) {
            ratio(part).ifPresent(found::add);
            strength(part).ifPresent(found::add);
        }
    }

    private void pairings(Part part, Pairing.Rule rule, ReasonCode code, List<Reason> found) {
        for (var pairing : part.directions.mixing().pairings()) {
            if (pairing.rule() == rule) {
                others(part, pairing.with())
                        .forEach(other -> found.add(Reason.of(code, part.directions.name(), other.directions.name())));
            }
        }
    }

    private void additions(Part part, List<Reason> found) {
        for (var pairing : part.directions.mixing().pairings()) {
            pairing.limit()
                    .filter(limit -> times60(sum(others(part, pairing.with())))
                                    .compareTo(limit.amount().multiply(sum(of(part.directions.kind()))))
                            > 0)
                    .ifPresent(limit -> found.add(
                            Reason.of(ReasonCode.TOO_MUCH_ADDED, part.directions.name(), pairing.with(), limit)));
        }
    }

    @SuppressWarnings("ReferenceEquality") // Two equal portions are still two.
    private List<Part> others(Part part, Kind kind) {
        return of(kind).stream().filter(other -> other != part).toList();
    }

    private List<Part> of(Kind kind) {
        return parts.stream().filter(part -> part.is(kind)).toList();
    }

    /** Developer is measured against all that it activates; a bowl keeps its ratio when one named mixture fits. */
    private Optional<Reason> ratio(Part part) {
        var developer = sum(developers());
        if (developer.signum() == 0) {
            return Optional.of(Reason.of(ReasonCode.NO_DEVELOPER, part.directions.name()));
        }
        var activated = parts.stream().filter(Part::isDeveloped).toList();
        var share = times60(developer).multiply(part.amount());
        var whole = sum(activated);
        var mixtures = part.directions.mixing().mixtures();
        if (mixtures.stream().anyMatch(mixture -> fits(mixture, part, share, whole))) {
            return Optional.empty();
        }
        var tooMuch = mixtures.stream().allMatch(mixture -> share.compareTo(most(mixture, part, whole)) > 0);
        var code = tooMuch ? ReasonCode.TOO_MUCH_DEVELOPER : ReasonCode.TOO_LITTLE_DEVELOPER;
        var first = mixtures.get(0);
        return Optional.of(Reason.of(code, part.directions.name(), first.developerPer60(), first.extraPer60()));
    }

    private boolean fits(Mixture mixture, Part part, BigDecimal share, BigDecimal whole) {
        return share.compareTo(most(mixture, part, whole)) <= 0 && share.compareTo(least(mixture, part, whole)) >= 0;
    }

    private BigDecimal most(Mixture mixture, Part part, BigDecimal whole) {
        var extra = mixture.extraPer60().amount().multiply(part.amount());
        var room = extra.max(times60(slack.amount()));
        return mixture.developerPer60()
                .amount()
                .multiply(part.amount())
                .add(room)
                .multiply(whole);
    }

    private BigDecimal least(Mixture mixture, Part part, BigDecimal whole) {
        return mixture.developerPer60()
                .amount()
                .multiply(part.amount())
                .subtract(times60(slack.amount()))
                .multiply(whole);
    }

    private Optional<Reason> strength(Part part) {
        return wrongStrength(part, List.copyOf(part.directions.mixing().strengths()))
                .map(wrong -> Reason.of(ReasonCode.STRENGTH_NOT_ALLOWED, part.directions.name(), wrong));
    }

    private Optional<Reason> strengthOnScalp(Part part) {
        return wrongStrength(part, List.copyOf(part.directions.mixing().strengthsOnScalp()))
                .map(wrong -> Reason.of(ReasonCode.STRENGTH_NOT_ON_SCALP, part.directions.name(), wrong));
    }

    /** One developer must have an allowed strength; a blend of several must lie between the allowed ones. */
    private Optional<Percent> wrongStrength(Part part, List<Percent> allowed) {
        if (allowed.isEmpty() || !part.directions.mixing().takesDeveloper()) {
            return Optional.empty();
        }
        var strengths = developers().stream()
                .map(developer -> developer.directions.contents().peroxide())
                .flatMap(java.util.stream.Stream::ofNullable)
                .distinct()
                .toList();
        if (strengths.size() > 1) {
            return composition(developers())
                    .peroxide()
                    .filter(blend ->
                            blend.compareTo(Fraction.of(Collections.min(allowed).value())) < 0
                                    || blend.compareTo(Fraction.of(
                                                    Collections.max(allowed).value()))
                                            > 0)
                    .map(blend -> new Percent(blend.rounded(2)));
        }
        return strengths.stream()
                .filter(strength -> !allowed.contains(strength))
                .findFirst();
    }

    private Optional<Reason> offScalpOnly() {
        var names = parts.stream()
                .map(Part::directions)
                .filter(one -> one.limits().zone() == Zone.OFF_SCALP)
                .map(Directions::name)
                .toList();
        return names.isEmpty()
                ? Optional.empty()
                : Optional.of(Reason.of(ReasonCode.OFF_SCALP_PRODUCT, String.join(", ", names)));
    }

    /** What a leaflet lists for the scalp it allows there, or it refuses; to be careful is for where it says nothing. */
    private Optional<Reason> strongOnScalp() {
        var isUnsaid = parts.stream()
                .filter(Part::isDeveloped)
                .anyMatch(part -> part.directions.mixing().strengthsOnScalp().isEmpty());
        return composition(developers())
                .peroxide()
                .filter(blend -> isUnsaid && blend.compareTo(Fraction.of(USUAL_ON_SCALP.value())) > 0)
                .map(blend -> Reason.of(ReasonCode.STRONG_ON_SCALP, new Percent(blend.rounded(2))));
    }

    private List<Part> developers() {
        return of(Kind.DEVELOPER);
    }

    private static BigDecimal sum(List<Part> parts) {
        return parts.stream().map(Part::amount).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private static BigDecimal times60(BigDecimal amount) {
        return amount.multiply(SIXTY);
    }
}

package rinsebell.db.codec;

import static java.time.Duration.ofMinutes;

import java.util.List;
import java.util.Map;
import java.util.Set;
import rinsebell.floor.product.Active;
import rinsebell.floor.product.Allowance;
import rinsebell.floor.product.Checks;
import rinsebell.floor.product.Contents;
import rinsebell.floor.product.Cover;
import rinsebell.floor.product.Develops;
import rinsebell.floor.product.Directions;
import rinsebell.floor.product.Heat;
import rinsebell.floor.product.Kind;
import rinsebell.floor.product.Limits;
import rinsebell.floor.product.Mixing;
import rinsebell.floor.product.Mixture;
import rinsebell.floor.product.Pairing;
import rinsebell.floor.product.Span;
import rinsebell.floor.product.Times;
import rinsebell.floor.product.Zone;
import rinsebell.floor.unit.Grams;
import rinsebell.floor.unit.Percent;

/** Directions that say everything, and directions that say nothing. No two figures are alike. */
final class DirectionsSamples {

    static final Directions FULL = new Directions(
            "Cream \"one\", grün ☂",
            Kind.MILD_CREAM_LIGHTENER,
            new Times(
                    new Active(ofMinutes(61), Active.AtEnd.RINSE),
                    new Develops(
                            Develops.Counted.FROM_LAST_ON,
                            new Span(ofMinutes(31), ofMinutes(46)),
                            Map.of(Heat.GENTLE_STEAM, new Span(ofMinutes(16), ofMinutes(26)))),
                    ofMinutes(51)),
            new Limits(
                    Zone.ON_SCALP,
                    Map.of(Cover.FOIL, Allowance.upTo(ofMinutes(41)), Cover.CAP, Allowance.NO),
                    Map.of(Heat.WARM_AIR, Allowance.upTo(ofMinutes(11)), Heat.DRYER, Allowance.YES)),
            new Mixing(
                    List.of(new Mixture("equal parts", Grams.of(60), Grams.of("7.5"))),
                    Set.of(Percent.of("3"), Percent.of("6"), Percent.of("12")),
                    Set.of(Percent.of("6")),
                    List.of(
                            new Pairing(Kind.POWDER_LIGHTENER, Pairing.Rule.NEVER_ON_SCALP, null),
                            new Pairing(Kind.CLEAR_ADDITIVE, Pairing.Rule.ALLOWED, Grams.of("0.1")))),
            new Checks(ofMinutes(10), ofMinutes(5), ofMinutes(15), ofMinutes(4)),
            new Contents(true, Percent.of("1.5"), Percent.of("0.75")));

    static final Directions BARE = new Directions(
            "",
            Kind.DEVELOPER,
            Times.NONE,
            new Limits(Zone.OFF_SCALP, Map.of(), Map.of()),
            Mixing.PLAIN,
            Checks.NONE,
            new Contents(false, null, null));

    private DirectionsSamples() {}
}

package rinsebell.app.shelf;

import static rinsebell.app.shelf.Lines.EQUAL_PARTS;
import static rinsebell.app.shelf.Lines.NONE;
import static rinsebell.app.shelf.Lines.atMost;
import static rinsebell.app.shelf.Lines.minutes;
import static rinsebell.app.shelf.Lines.never;
import static rinsebell.app.shelf.Lines.neverOnScalp;
import static rinsebell.app.shelf.Lines.oneHourThenRinse;
import static rinsebell.app.shelf.Lines.pairings;
import static rinsebell.app.shelf.Lines.span;
import static rinsebell.app.shelf.Lines.volumes;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import rinsebell.floor.product.Allowance;
import rinsebell.floor.product.Checks;
import rinsebell.floor.product.Contents;
import rinsebell.floor.product.Cover;
import rinsebell.floor.product.Develops;
import rinsebell.floor.product.Develops.Counted;
import rinsebell.floor.product.Directions;
import rinsebell.floor.product.Heat;
import rinsebell.floor.product.Kind;
import rinsebell.floor.product.Limits;
import rinsebell.floor.product.Mixing;
import rinsebell.floor.product.Mixture;
import rinsebell.floor.product.Pairing;
import rinsebell.floor.product.Times;
import rinsebell.floor.product.Zone;
import rinsebell.floor.unit.Grams;
import rinsebell.floor.unit.Percent;

/** What takes the hair's own colour out. */
final class Lighteners {
    /** Powder is thinned by at most 7 g above equal parts: more swells and lightens less. Common practice, no source. */
    private static final Mixture POWDER_EQUAL_PARTS = new Mixture("equal parts", Grams.of(60), Grams.of(7));

    /** 60 g powder, 45 g developer, with 7 g clear additive. Common practice, no source. */
    private static final Mixture FREE_HAND = new Mixture("free hand", Grams.of(45), Grams.NONE);

    private Lighteners() {}

    static Directions mildCream() {
        return new Directions(
                "Brimmow mild cream",
                Kind.MILD_CREAM_LIGHTENER,
                new Times(
                        oneHourThenRinse(),
                        new Develops(Counted.FROM_LAST_ON, span(30, 50), Map.of(Heat.GENTLE_STEAM, span(20, 30))),
                        minutes(60)),
                new Limits(Zone.ON_SCALP, openOrFoil(), steamUpTo(20)),
                new Mixing(List.of(EQUAL_PARTS), volumes(10, 20, 30), twentyVolumesAtMost(), pairings(Stream.empty())),
                new Checks(minutes(10), minutes(5), minutes(10), minutes(5)),
                new Contents(false, NONE, Percent.of("3.2")));
    }

    static Directions strongCream() {
        return new Directions(
                "Brimmow strong cream",
                Kind.STRONG_CREAM_LIGHTENER,
                new Times(
                        oneHourThenRinse(),
                        new Develops(Counted.FROM_FIRST_ON, span(25, 50), Map.of(Heat.GENTLE_STEAM, span(15, 30))),
                        minutes(50)),
                new Limits(Zone.ON_SCALP, Map.of(Cover.OPEN, Allowance.YES), steamUpTo(15)),
                new Mixing(
                        List.of(EQUAL_PARTS),
                        volumes(10, 20, 30),
                        twentyVolumesAtMost(),
                        // Common practice, no source: the powder says the same of the cream.
                        pairings(Stream.empty(), neverOnScalp(Kind.POWDER_LIGHTENER))),
                new Checks(minutes(10), minutes(5), minutes(8), minutes(4)),
                new Contents(false, NONE, Percent.of("6")));
    }

    static Directions powder() {
        return new Directions(
                "Brimmow powder",
                Kind.POWDER_LIGHTENER,
                new Times(oneHourThenRinse(), new Develops(Counted.FROM_FIRST_ON, span(20, 50), Map.of()), minutes(50)),
                // Common practice, no source: never on a scalp, and no heat over it, in foil neither.
                new Limits(Zone.OFF_SCALP, openOrFoil(), Map.of()),
                new Mixing(
                        List.of(POWDER_EQUAL_PARTS, FREE_HAND),
                        volumes(20, 30, 40),
                        twentyVolumesAtMost(),
                        powderMeets()),
                new Checks(minutes(10), null, null, null),
                new Contents(false, NONE, NONE));
    }

    /** Powder destroys dye; a little of the mild cream makes it creamier. Common practice, no source. */
    private static List<Pairing> powderMeets() {
        return pairings(
                never(Kind.HIGH_LIFT_COLOUR, Kind.PERMANENT_COLOUR, Kind.DEPOSIT_COLOUR),
                neverOnScalp(Kind.STRONG_CREAM_LIGHTENER),
                atMost(15, Kind.MILD_CREAM_LIGHTENER),
                atMost(7, Kind.CLEAR_ADDITIVE));
    }

    /** No film and no cap over lightener. Common practice, no source. */
    private static Map<Cover, Allowance> openOrFoil() {
        return Map.of(Cover.OPEN, Allowance.YES, Cover.FOIL, Allowance.YES);
    }

    /** Gentle steam may be used, a dryer may not. Common practice, no source; the time is made up. */
    private static Map<Heat, Allowance> steamUpTo(long minutes) {
        return Map.of(Heat.GENTLE_STEAM, Allowance.upTo(minutes(minutes)));
    }

    /** Lightener on a scalp is mixed with 20 volumes at most. Common practice, no source. */
    private static Set<Percent> twentyVolumesAtMost() {
        return volumes(10, 20);
    }
}

package rinsebell.app.shelf;

import static rinsebell.app.shelf.Lines.EQUAL_PARTS;
import static rinsebell.app.shelf.Lines.NONE;
import static rinsebell.app.shelf.Lines.atMost;
import static rinsebell.app.shelf.Lines.minutes;
import static rinsebell.app.shelf.Lines.never;
import static rinsebell.app.shelf.Lines.pairings;
import static rinsebell.app.shelf.Lines.span;
import static rinsebell.app.shelf.Lines.thenPutNoMoreOn;
import static rinsebell.app.shelf.Lines.volumes;

import java.util.List;
import java.util.Map;
import java.util.Set;
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
import rinsebell.floor.product.Times;
import rinsebell.floor.product.Zone;
import rinsebell.floor.unit.Percent;

/** What puts colour in. All of it holds dye, so that a skin test is needed. */
final class Colours {
    private Colours() {}

    /** With 30 or 40 volumes and 7 g of colour to hold the tone. Common practice, no source. */
    static Directions highLift() {
        return new Directions(
                "Brimmow high lift 12",
                Kind.HIGH_LIFT_COLOUR,
                new Times(thenPutNoMoreOn(45), new Develops(Counted.FROM_LAST_ON, span(45, 55), Map.of()), minutes(75)),
                new Limits(Zone.ON_SCALP, Map.of(Cover.OPEN, Allowance.YES), Map.of()),
                new Mixing(
                        List.of(EQUAL_PARTS),
                        volumes(30, 40),
                        Set.of(),
                        pairings(never(Kind.POWDER_LIGHTENER), atMost(7, Kind.PERMANENT_COLOUR))),
                new Checks(minutes(15), null, minutes(15), null),
                new Contents(true, NONE, Percent.of("5.4")));
    }

    static Directions permanent(String name) {
        return new Directions(
                name,
                Kind.PERMANENT_COLOUR,
                new Times(
                        thenPutNoMoreOn(40),
                        new Develops(Counted.FROM_LAST_ON, span(30, 40), Map.of(Heat.WARM_AIR, span(15, 20))),
                        minutes(65)),
                new Limits(
                        Zone.ON_SCALP,
                        Map.of(Cover.OPEN, Allowance.YES, Cover.FOIL, Allowance.YES, Cover.CAP, Allowance.YES),
                        Map.of(Heat.WARM_AIR, Allowance.upTo(minutes(20)))),
                new Mixing(List.of(EQUAL_PARTS), volumes(10, 20, 30), Set.of(), pairings(never(Kind.POWDER_LIGHTENER))),
                new Checks(minutes(20), minutes(10), null, null),
                new Contents(true, NONE, Percent.of("2.4")));
    }

    /** As much 10-volume developer as colour. Common practice, no source. */
    static Directions toner() {
        return new Directions(
                "Brimmow toner pearl",
                Kind.DEPOSIT_COLOUR,
                new Times(thenPutNoMoreOn(30), new Develops(Counted.FROM_FIRST_ON, span(5, 20), Map.of()), minutes(25)),
                new Limits(Zone.ON_SCALP, Map.of(Cover.OPEN, Allowance.YES), Map.of()),
                new Mixing(List.of(EQUAL_PARTS), volumes(10), Set.of(), pairings(never(Kind.POWDER_LIGHTENER))),
                new Checks(minutes(5), null, null, null),
                new Contents(true, NONE, NONE));
    }
}

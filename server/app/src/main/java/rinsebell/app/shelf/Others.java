package rinsebell.app.shelf;

import static rinsebell.app.shelf.Lines.NONE;
import static rinsebell.app.shelf.Lines.minutes;
import static rinsebell.app.shelf.Lines.never;
import static rinsebell.app.shelf.Lines.pairings;
import static rinsebell.app.shelf.Lines.span;
import static rinsebell.app.shelf.Lines.thenPutNoMoreOn;

import java.util.Arrays;
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

/** What takes old colour out, and what goes into a bowl with something else. */
final class Others {
    private Others() {}

    /** Takes old dye out without lightening; it is used by itself. Its figures are made up. */
    static Directions remover() {
        return new Directions(
                "Brimmow colour remover",
                Kind.COLOUR_REMOVER,
                new Times(
                        thenPutNoMoreOn(30), new Develops(Counted.FROM_FIRST_ON, span(10, 20), Map.of()), minutes(20)),
                new Limits(
                        Zone.ON_SCALP,
                        Map.of(Cover.OPEN, Allowance.YES, Cover.CAP, Allowance.upTo(minutes(20))),
                        Map.of(Heat.WARM_AIR, Allowance.upTo(minutes(10)))),
                new Mixing(List.of(), Set.of(), Set.of(), pairings(never(allButRemover()))),
                new Checks(minutes(5), minutes(5), minutes(10), minutes(5)),
                new Contents(false, NONE, NONE));
    }

    private static Kind[] allButRemover() {
        return Arrays.stream(Kind.values())
                .filter(kind -> kind != Kind.COLOUR_REMOVER)
                .toArray(Kind[]::new);
    }

    static Directions clear() {
        return withItsPartner("Brimmow clear", Kind.CLEAR_ADDITIVE, NONE);
    }

    static Directions developer(int volumes) {
        return withItsPartner("Brimmow developer " + volumes + " vol", Kind.DEVELOPER, Percent.ofVolumes(volumes));
    }

    /** Developer without its peroxide, to weaken one with; by itself it activates nothing. */
    static Directions developerBase() {
        return withItsPartner("Brimmow developer base", Kind.DEVELOPER, NONE);
    }

    /** Times, covers and heats are those of what it is mixed with. */
    private static Directions withItsPartner(String name, Kind kind, Percent peroxide) {
        return new Directions(
                name, kind, Times.NONE, Limits.FREE, Mixing.PLAIN, Checks.NONE, new Contents(false, peroxide, NONE));
    }
}

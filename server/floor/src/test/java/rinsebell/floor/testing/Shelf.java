package rinsebell.floor.testing;

import static rinsebell.floor.product.Cover.CAP;
import static rinsebell.floor.product.Cover.FILM;
import static rinsebell.floor.product.Cover.FOIL;
import static rinsebell.floor.product.Develops.Counted.FROM_FIRST_ON;
import static rinsebell.floor.product.Develops.Counted.FROM_LAST_ON;
import static rinsebell.floor.product.Develops.Counted.FROM_MIXING;
import static rinsebell.floor.product.Heat.GENTLE_STEAM;
import static rinsebell.floor.product.Heat.WARM_AIR;
import static rinsebell.floor.product.Kind.CLEAR_ADDITIVE;
import static rinsebell.floor.product.Kind.COLOUR_REMOVER;
import static rinsebell.floor.product.Kind.DEPOSIT_COLOUR;
import static rinsebell.floor.product.Kind.DEVELOPER;
import static rinsebell.floor.product.Kind.HIGH_LIFT_COLOUR;
import static rinsebell.floor.product.Kind.MILD_CREAM_LIGHTENER;
import static rinsebell.floor.product.Kind.PERMANENT_COLOUR;
import static rinsebell.floor.product.Kind.POWDER_LIGHTENER;
import static rinsebell.floor.product.Kind.STRONG_CREAM_LIGHTENER;
import static rinsebell.floor.testing.Leaflet.leaflet;
import static rinsebell.floor.testing.Saturday.minutes;

import java.util.List;
import rinsebell.floor.product.Directions;

/**
 * The products of the invented house, one of every kind. Ratios, the hour of active life and what never meets are common
 * practice, no source; the other figures are made up.
 */
public final class Shelf {
    public static final Directions MILD_CREAM = leaflet("mild cream", MILD_CREAM_LIGHTENER)
            .usableThenRinse(minutes(60))
            .develops(FROM_LAST_ON, minutes(30), minutes(50))
            .developsUnder(GENTLE_STEAM, minutes(15), minutes(25))
            .allows(FOIL)
            .mixture("equal parts", 60, 0)
            .developerOfVolumes(10, 20, 30)
            .onScalpOfVolumes(10, 20)
            .strandEvery(minutes(10), minutes(5))
            .scalpEvery(minutes(10), minutes(5))
            .typedIn();

    public static final Directions STRONG_CREAM = leaflet("strong cream", STRONG_CREAM_LIGHTENER)
            .usableThenRinse(minutes(60))
            .develops(FROM_FIRST_ON, minutes(25), minutes(50))
            .longestOn(minutes(55))
            .allows(GENTLE_STEAM, minutes(15))
            .mixture("equal parts", 60, 0)
            .developerOfVolumes(10, 20, 30)
            .onScalpOfVolumes(10, 20)
            .neverOnScalpWith(POWDER_LIGHTENER)
            .strandEvery(minutes(10), minutes(5))
            .scalpEvery(minutes(8), minutes(4))
            .typedIn();

    public static final Directions POWDER = leaflet("powder", POWDER_LIGHTENER)
            .offScalpOnly()
            .usableThenRinse(minutes(60))
            .develops(FROM_MIXING, minutes(20), minutes(55))
            .longestOn(minutes(50))
            .allows(FOIL)
            .mixture("equal parts", 60, 7)
            .mixture("free hand", 45, 0)
            .developerOfVolumes(20, 30, 40)
            .never(HIGH_LIFT_COLOUR, PERMANENT_COLOUR, DEPOSIT_COLOUR)
            .takesAtMost(15, MILD_CREAM_LIGHTENER)
            .takesAtMost(7, CLEAR_ADDITIVE)
            .neverOnScalpWith(STRONG_CREAM_LIGHTENER)
            .strandEvery(minutes(10), null)
            .typedIn();

    public static final Directions HIGH_LIFT = leaflet("high lift", HIGH_LIFT_COLOUR)
            .usableThenPutNoMoreOn(minutes(45))
            .develops(FROM_LAST_ON, minutes(45), minutes(60))
            .allows(CAP)
            .mixture("equal parts", 60, 0)
            .developerOfVolumes(30, 40)
            .takesAtMost(7, PERMANENT_COLOUR)
            .strandEvery(minutes(15), null)
            .dye()
            .ammonia("6")
            .typedIn();

    public static final Directions PERMANENT = leaflet("permanent", PERMANENT_COLOUR)
            .usableThenPutNoMoreOn(minutes(30))
            .develops(FROM_LAST_ON, minutes(30), minutes(40))
            .developsUnder(WARM_AIR, minutes(15), minutes(20))
            .allows(CAP, FILM)
            .mixture("equal parts", 60, 0)
            .developerOfVolumes(10, 20, 30)
            .dye()
            .ammonia("3.2")
            .typedIn();

    public static final Directions TONER = leaflet("toner", DEPOSIT_COLOUR)
            .usableThenPutNoMoreOn(minutes(30))
            .develops(FROM_FIRST_ON, minutes(5), minutes(20))
            .mixture("equal parts", 60, 0)
            .developerOfVolumes(10)
            .strandEvery(minutes(5), null)
            .dye()
            .typedIn();

    public static final Directions REMOVER = leaflet("remover", COLOUR_REMOVER)
            .develops(FROM_FIRST_ON, minutes(10), minutes(20))
            .allows(FILM, minutes(15))
            .typedIn();

    public static final Directions CLEAR =
            leaflet("clear", CLEAR_ADDITIVE).followsItsPartner().typedIn();

    public static final Directions DEV10 = developer(10);
    public static final Directions DEV20 = developer(20);
    public static final Directions DEV30 = developer(30);
    public static final Directions DEV40 = developer(40);

    /** Everything, in the order in which a house enters it. */
    public static final List<Directions> EVERYTHING = List.of(
            MILD_CREAM, STRONG_CREAM, POWDER, HIGH_LIFT, PERMANENT, TONER, REMOVER, CLEAR, DEV10, DEV20, DEV30, DEV40);

    private Shelf() {}

    private static Directions developer(int volumes) {
        return leaflet("developer " + volumes, DEVELOPER)
                .followsItsPartner()
                .peroxideOfVolumes(volumes)
                .typedIn();
    }
}

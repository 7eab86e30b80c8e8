package rinsebell.web.form;

import java.time.Instant;
import java.util.List;
import rinsebell.floor.Event;
import rinsebell.floor.Fact;
import rinsebell.floor.Floor;
import rinsebell.floor.Stream;
import rinsebell.floor.bowl.BowlId;
import rinsebell.floor.bowl.BowlReason;
import rinsebell.floor.bowl.DayEvent;
import rinsebell.floor.bowl.Portion;
import rinsebell.floor.clock.Timing;
import rinsebell.floor.product.Cover;
import rinsebell.floor.product.Directions;
import rinsebell.floor.product.ProductId;
import rinsebell.floor.salon.Place;
import rinsebell.floor.salon.Salon;
import rinsebell.floor.salon.SalonEvent;
import rinsebell.floor.unit.Grams;
import rinsebell.floor.visit.ApplicationId;
import rinsebell.floor.visit.Area;
import rinsebell.floor.visit.StayEvent;
import rinsebell.floor.visit.Visit;
import rinsebell.floor.visit.VisitId;
import rinsebell.floor.visit.WorkEvent;

/** A head on a floor of its own that gets one bowl by these directions: mixed, put on after ten minutes, all on in time. */
final class ExampleHead {
    private static final ProductId PRODUCT = new ProductId(3);
    private static final BowlId BOWL = new BowlId(4);
    private static final VisitId VISIT = new VisitId(5);
    private static final ApplicationId APPLICATION = new ApplicationId(6);

    private final Floor floor;

    ExampleHead(Salon salon, Directions directions, Instant mixed) {
        var on = mixed.plus(Timing.MIXING_ASSUMED);
        var portion = new Portion(PRODUCT, 1, Grams.of(60));
        var day = Stream.day(salon.dayOf(mixed));
        floor = Floor.of(List.of(
                fact(1, Stream.SALON, mixed, new SalonEvent.HouseSet(salon.rooms())),
                fact(2, Stream.SALON, mixed, new SalonEvent.PolicySet(salon.policy())),
                fact(3, Stream.SALON, mixed, new SalonEvent.ProductEntered(directions)),
                fact(4, day, mixed, new DayEvent.Mixed(List.of(portion), BowlReason.FIRST, null)),
                head(5, mixed, new StayEvent.Arrived(Place.chair(1), null, null, null)),
                head(
                        6,
                        on,
                        new WorkEvent.PutOn(
                                BOWL, Area.WHOLE_HEAD, directions.limits().zone(), Cover.OPEN, null)),
                head(7, on.plus(salon.policy().applying().dividedBy(2)), new WorkEvent.LastOn(APPLICATION))));
    }

    private static Fact head(long seq, Instant at, Event event) {
        return fact(seq, Stream.visit(VISIT), at, event);
    }

    private static Fact fact(long seq, Stream stream, Instant at, Event event) {
        return new Fact(seq, stream, at, at, null, event);
    }

    Visit visit() {
        return floor.visit(VISIT).orElseThrow();
    }

    Timing timing() {
        return Timing.of(floor, visit(), visit().application(APPLICATION).orElseThrow());
    }
}

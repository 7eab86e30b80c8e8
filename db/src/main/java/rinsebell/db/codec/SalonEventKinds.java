package rinsebell.db.codec;

import java.time.DayOfWeek;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import rinsebell.floor.product.ProductId;
import rinsebell.floor.product.Tub;
import rinsebell.floor.salon.RecipeId;
import rinsebell.floor.salon.Role;
import rinsebell.floor.salon.SalonEvent.DirectionsRevised;
import rinsebell.floor.salon.SalonEvent.HouseSet;
import rinsebell.floor.salon.SalonEvent.PolicySet;
import rinsebell.floor.salon.SalonEvent.ProductEntered;
import rinsebell.floor.salon.SalonEvent.ProductOffered;
import rinsebell.floor.salon.SalonEvent.RecipeDropped;
import rinsebell.floor.salon.SalonEvent.RecipeKept;
import rinsebell.floor.salon.SalonEvent.RecipeRevised;
import rinsebell.floor.salon.SalonEvent.ServiceTimesSet;
import rinsebell.floor.salon.SalonEvent.ShiftsSet;
import rinsebell.floor.salon.SalonEvent.StaffChanged;
import rinsebell.floor.salon.SalonEvent.StaffEntered;
import rinsebell.floor.salon.SalonEvent.TimesLearned;
import rinsebell.floor.salon.SalonEvent.TubPriced;
import rinsebell.floor.salon.Service;
import rinsebell.floor.salon.Shift;
import rinsebell.floor.salon.StaffId;
import rinsebell.floor.salon.Stretch;
import rinsebell.floor.unit.Grams;

/** The set-up. */
final class SalonEventKinds {

    static final List<EventKind<?>> ALL = List.of(
            EventKind.first(
                    "house-set",
                    HouseSet.class,
                    (event, out) -> out.object("house", event.house(), HouseJson::write),
                    in -> new HouseSet(in.object("house", HouseJson::read))),
            EventKind.first(
                    "staff-entered",
                    StaffEntered.class,
                    (event, out) -> out.constant("role", event.role()),
                    in -> new StaffEntered(in.constant("role", Role.class))),
            EventKind.first(
                    "staff-changed",
                    StaffChanged.class,
                    (event, out) -> out.number("staff", event.staff().value())
                            .constant("role", event.role())
                            .flag("working", event.working()),
                    in -> new StaffChanged(
                            new StaffId(in.number("staff")), in.constant("role", Role.class), in.flag("working"))),
            EventKind.first(
                    "product-entered",
                    ProductEntered.class,
                    (event, out) -> out.object("directions", event.directions(), DirectionsJson::write),
                    in -> new ProductEntered(in.object("directions", DirectionsJson::read))),
            EventKind.first(
                    "directions-revised",
                    DirectionsRevised.class,
                    (event, out) -> out.number("product", event.product().value())
                            .object("directions", event.directions(), DirectionsJson::write),
                    in -> new DirectionsRevised(
                            new ProductId(in.number("product")), in.object("directions", DirectionsJson::read))),
            EventKind.first(
                    "product-offered",
                    ProductOffered.class,
                    (event, out) ->
                            out.number("product", event.product().value()).flag("offered", event.offered()),
                    in -> new ProductOffered(new ProductId(in.number("product")), in.flag("offered"))),
            EventKind.first(
                    "tub-priced",
                    TubPriced.class,
                    (event, out) -> out.number("product", event.product().value())
                            .decimal("grams", event.tub().grams().amount())
                            .decimal("price", event.tub().price()),
                    in -> new TubPriced(
                            new ProductId(in.number("product")),
                            new Tub(new Grams(in.decimal("grams")), in.decimal("price")))),
            EventKind.first(
                    "shifts-set",
                    ShiftsSet.class,
                    (event, out) -> out.number("staff", event.staff().value())
                            .objects("shifts", event.shifts(), SalonEventKinds::writeShift),
                    in -> new ShiftsSet(
                            new StaffId(in.number("staff")), in.objects("shifts", SalonEventKinds::readShift))),
            EventKind.first(
                    "service-times-set",
                    ServiceTimesSet.class,
                    (event, out) -> out.objects(
                            "times",
                            new TreeMap<>(event.times()).entrySet(),
                            (time, into) ->
                                    into.constant("service", time.getKey()).duration("takes", time.getValue())),
                    in -> new ServiceTimesSet(in.objects("times", SalonEventKinds::readTime).stream()
                            .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue)))),
            EventKind.first(
                    "times-learned",
                    TimesLearned.class,
                    (event, out) -> out.objects(
                            "times",
                            new TreeMap<>(event.times()).entrySet(),
                            (time, into) -> into.constant("of", time.getKey()).wholes("measured", time.getValue())),
                    in -> new TimesLearned(in.objects("times", SalonEventKinds::readLearned).stream()
                            .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue)))),
            EventKind.first(
                    "policy-set",
                    PolicySet.class,
                    (event, out) -> out.object("policy", event.policy(), PolicyJson::write),
                    in -> new PolicySet(in.object("policy", PolicyJson::read))),
            EventKind.first(
                    "recipe-kept",
                    RecipeKept.class,
                    (event, out) -> out.number("client", Ids.of(event.client()))
                            .objects("portions", event.portions(), PortionJson::write),
                    in -> new RecipeKept(Ids.client(in, "client"), in.objects("portions", PortionJson::read))),
            EventKind.first(
                    "recipe-revised",
                    RecipeRevised.class,
                    (event, out) -> out.number("recipe", event.recipe().value())
                            .objects("portions", event.portions(), PortionJson::write),
                    in -> new RecipeRevised(
                            new RecipeId(in.number("recipe")), in.objects("portions", PortionJson::read))),
            EventKind.first(
                    "recipe-dropped",
                    RecipeDropped.class,
                    (event, out) -> out.number("recipe", event.recipe().value()).flag("dropped", event.dropped()),
                    in -> new RecipeDropped(new RecipeId(in.number("recipe")), in.flag("dropped"))));

    private SalonEventKinds() {}

    private static void writeShift(Shift shift, Writing out) {
        out.constant("day", shift.day())
                .text("from", shift.from().toString())
                .text("until", shift.until().toString());
    }

    private static Shift readShift(Reading in) {
        return new Shift(in.constant("day", DayOfWeek.class), in.localTime("from"), in.localTime("until"));
    }

    private static Map.Entry<Service, Duration> readTime(Reading in) {
        return Map.entry(in.constant("service", Service.class), in.duration("takes"));
    }

    private static Map.Entry<Stretch, List<Integer>> readLearned(Reading in) {
        return Map.entry(in.constant("of", Stretch.class), in.wholes("measured"));
    }
}

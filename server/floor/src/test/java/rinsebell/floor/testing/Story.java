package rinsebell.floor.testing;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.BellAcknowledged;
import rinsebell.floor.BellShelved;
import rinsebell.floor.Correction;
import rinsebell.floor.Event;
import rinsebell.floor.Fact;
import rinsebell.floor.Floor;
import rinsebell.floor.Reason;
import rinsebell.floor.ReasonCode;
import rinsebell.floor.Stream;
import rinsebell.floor.bell.Bell;
import rinsebell.floor.bowl.BowlId;
import rinsebell.floor.bowl.BowlReason;
import rinsebell.floor.bowl.DayEvent;
import rinsebell.floor.bowl.Portion;
import rinsebell.floor.command.Weighed;
import rinsebell.floor.product.Directions;
import rinsebell.floor.product.ProductId;
import rinsebell.floor.salon.House;
import rinsebell.floor.salon.Place;
import rinsebell.floor.salon.Policy;
import rinsebell.floor.salon.Role;
import rinsebell.floor.salon.SalonEvent;
import rinsebell.floor.salon.StaffId;
import rinsebell.floor.visit.ApplicationId;
import rinsebell.floor.visit.ClientId;
import rinsebell.floor.visit.StayEvent;
import rinsebell.floor.visit.VisitId;

/**
 * A salon day told fact by fact. Facts get rising numbers and happen at the time the story has come to; time goes where
 * the teller says, backwards too.
 */
public final class Story {
    private static final House HOUSE = new House(8, 2, 4, Saturday.ZONE, true);

    private final List<Fact> facts = new ArrayList<>();
    private final Map<Directions, ProductId> products = new HashMap<>();
    private final StaffId stylist;
    private @Nullable StaffId assistant;
    private Instant now = Saturday.at("08:00");
    private int arrivals;

    private Story() {
        tells(Stream.SALON, new SalonEvent.HouseSet(HOUSE));
        stylist = new StaffId(tells(Stream.SALON, new SalonEvent.StaffEntered(Role.STYLIST)));
    }

    /** A house of eight chairs, two basins and a stylist; the shelf fills as products are used. */
    public static Story begins() {
        return new Story();
    }

    /** The same with every product of {@link Shelf} entered. */
    public static Story stocked() {
        var story = new Story();
        Shelf.EVERYTHING.forEach(story::product);
        return story;
    }

    /** @param clock a local time of that Saturday, such as "10:00" */
    public Story at(String clock) {
        return at(Saturday.at(clock));
    }

    public Story at(Instant when) {
        now = when;
        return this;
    }

    /** Somebody else who works here, entered when first asked for. */
    public StaffId assistant() {
        if (assistant == null) {
            assistant = new StaffId(tells(Stream.SALON, new SalonEvent.StaffEntered(Role.ASSISTANT)));
        }
        return assistant;
    }

    /** Somebody sees a bell, in the stage that it has come to. */
    public long acknowledges(Bell bell) {
        var stage = bell.at(now).orElseThrow();
        var visit = bell.visit();
        var event = new BellAcknowledged(bell.key(), stage.step(), stage.priority(), codes(bell), false);
        return visit == null ? tells(Stream.day(Saturday.DATE), event) : tells(Stream.visit(visit), event);
    }

    /** The same, and says why. */
    public long explains(Bell bell) {
        var stage = bell.at(now).orElseThrow();
        var event = new BellAcknowledged(bell.key(), stage.step(), stage.priority(), codes(bell), true);
        return tells(Stream.visit(Objects.requireNonNull(bell.visit())), event);
    }

    /** Somebody has no hand free for a bell. */
    public long shelves(Bell bell, Duration span) {
        var event = new BellShelved(bell.key(), span, BellShelved.Why.HANDS_FULL);
        return tells(Stream.visit(Objects.requireNonNull(bell.visit())), event);
    }

    private static Set<ReasonCode> codes(Bell bell) {
        return bell.reasons().stream().map(Reason::code).collect(Collectors.toSet());
    }

    public Instant now() {
        return now;
    }

    public StaffId stylist() {
        return stylist;
    }

    /** @return the number of the fact */
    public long tells(Stream stream, Event event) {
        var seq = facts.size() + 1L;
        facts.add(new Fact(seq, stream, now, now, null, event));
        return seq;
    }

    public long tells(DayEvent event) {
        var date = facts.isEmpty() ? Saturday.DATE : floor().salon().dayOf(now);
        return tells(Stream.day(date), event);
    }

    /** @return the number of the fact */
    public long tells(Head head, Event event) {
        return tells(Stream.visit(head.id()), event);
    }

    public ApplicationId puts(Head head, BowlId bowl, Where where) {
        return head.puts(bowl, where);
    }

    public Story policy(Policy policy) {
        tells(Stream.SALON, new SalonEvent.PolicySet(policy));
        return this;
    }

    /** The product with these directions, entered when it is new. */
    public ProductId product(Directions directions) {
        return products.computeIfAbsent(
                directions, entered -> new ProductId(tells(Stream.SALON, new SalonEvent.ProductEntered(entered))));
    }

    /** A new edition of a product's directions; bowls mixed before keep the old one. */
    public Story revises(Directions known, Directions next) {
        tells(Stream.SALON, new SalonEvent.DirectionsRevised(product(known), next));
        return this;
    }

    /** Somebody sits down in the next free chair. */
    public Head arrives() {
        return arrives(null);
    }

    public Head arrives(@Nullable ClientId client) {
        var chair = Place.chair(++arrivals);
        var seq = facts.size() + 1L;
        tells(Stream.visit(new VisitId(seq)), new StayEvent.Arrived(chair, stylist, null, client));
        return new Head(this, new VisitId(seq));
    }

    /** The same with every question of the gate answered so that nothing stands in the way. */
    public Head arrivesFine() {
        var head = arrives();
        head.answers(Gates.FINE);
        return head;
    }

    public BowlId mixes(Scoop... scoops) {
        return mixes(BowlReason.FIRST, scoops);
    }

    /** A bowl for nobody yet; no scoops when nobody knows what is in it. */
    public BowlId mixes(BowlReason reason, Scoop... scoops) {
        return new BowlId(tells(new DayEvent.Mixed(portions(scoops), reason, null)));
    }

    public long fills(BowlId bowl, Scoop... scoops) {
        return tells(new DayEvent.RecipeFilled(bowl, portions(scoops)));
    }

    public BowlId divides(BowlId bowl) {
        return new BowlId(tells(new DayEvent.Divided(bowl, BowlReason.FIRST, null)));
    }

    /** Portions in the newest edition of each product's directions. */
    public List<Portion> portions(Scoop... scoops) {
        var found = new ArrayList<Portion>();
        for (var scoop : scoops) {
            var product = product(scoop.of());
            var edition = floor().salon().product(product).orElseThrow().edition();
            found.add(new Portion(product, edition, scoop.grams()));
        }
        return found;
    }

    /** The same as somebody weighs it on the bench. */
    public List<Weighed> weighed(Scoop... scoops) {
        return Arrays.stream(scoops)
                .map(scoop -> new Weighed(product(scoop.of()), scoop.grams()))
                .toList();
    }

    public long withdraws(long seq) {
        return tells(fact(seq).stream(), new Correction.Withdrawn(seq));
    }

    public long setsBack(long seq, String to) {
        return tells(fact(seq).stream(), new Correction.SetBack(seq, Saturday.at(to)));
    }

    /** The wall clock was wrong by this much until now. */
    public long shiftsClock(Duration by) {
        return tells(new DayEvent.ClockShifted(by));
    }

    private Fact fact(long seq) {
        return facts.get(Math.toIntExact(seq - 1));
    }

    public List<Fact> facts() {
        return List.copyOf(facts);
    }

    public Floor floor() {
        return Floor.of(facts);
    }
}

package rinsebell.demo.turnaround;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import rinsebell.floor.bowl.BowlId;
import rinsebell.floor.bowl.BowlReason;
import rinsebell.floor.clock.HeadTiming;
import rinsebell.floor.command.Mix;
import rinsebell.floor.command.Report;
import rinsebell.floor.command.Rinse;
import rinsebell.floor.command.Weighed;
import rinsebell.floor.command.Welcome;
import rinsebell.floor.product.Cover;
import rinsebell.floor.product.Zone;
import rinsebell.floor.salon.Place;
import rinsebell.floor.salon.Service;
import rinsebell.floor.visit.Application;
import rinsebell.floor.visit.ApplicationId;
import rinsebell.floor.visit.Area;
import rinsebell.floor.visit.CheckDecision;
import rinsebell.floor.visit.Gate;
import rinsebell.floor.visit.LookEvent;
import rinsebell.floor.visit.StayEvent;
import rinsebell.floor.visit.StrandFinding;
import rinsebell.floor.visit.Visit;
import rinsebell.floor.visit.VisitEvent;
import rinsebell.floor.visit.VisitId;
import rinsebell.floor.visit.WorkEvent;

/** One client from the welcome to leaving: each thing that ends brings on the next. */
final class Client {
    private static final Duration LOOK_AGAIN = Duration.ofMinutes(10);

    private final SalonDay day;
    private final Place chair;
    private final Wish wish;
    private final Deque<Service> toCome;
    private final VisitId visit;
    private Instant waitsSince = Instant.MAX;
    private Duration waited = Duration.ZERO;

    Client(SalonDay day, int chair, Wish wish) {
        this.day = day;
        this.chair = Place.chair(chair);
        this.wish = wish;
        this.toCome = new ArrayDeque<>(wish.services());
        var arrival = new StayEvent.Arrived(this.chair, null, null, null);
        this.visit = new VisitId(day.press(new Welcome(arrival, "", answers())));
        tells(new StayEvent.ServicesListed(wish.services()));
        next();
    }

    /** A skin test two days before. */
    private Gate answers() {
        var today = day.book().floor().salon().dayOf(day.now());
        var test = new Gate.SkinTest(Gate.SkinTest.Result.NO_REACTION, today.minusDays(2));
        return new Gate(test, Gate.Scalp.FINE, Gate.YesNo.NO, Gate.Metal.NONE, Gate.YesNo.NO);
    }

    private long tells(VisitEvent event) {
        return day.press(Report.of(visit, event));
    }

    private Visit seen() {
        return day.book().floor().visit(visit).orElseThrow();
    }

    private void next() {
        var service = toCome.poll();
        if (service == null) {
            day.after(Doing.SETTLING, this::leaves);
        } else {
            day.after(Doing.WAITING, () -> begins(service));
        }
    }

    private void leaves() {
        tells(new StayEvent.Left());
        day.left(visit, chair, waited);
    }

    private void begins(Service service) {
        switch (service) {
            case BOWL -> day.after(Doing.MIXING, this::putsOn);
            case CUT -> serves(service, Doing.CUTTING);
            case BLOW_DRY -> serves(service, Doing.DRYING);
            case TONER -> throw new IllegalStateException("a toner follows the rinse at the basin");
        }
    }

    private void serves(Service service, Doing doing) {
        tells(new StayEvent.ServiceBegan(service));
        day.after(doing, () -> {
            tells(new StayEvent.ServiceEnded(service));
            next();
        });
    }

    private ApplicationId puts(List<Weighed> weighed, BowlReason reason, Area area, Zone zone, Cover cover) {
        var bowl = new BowlId(day.press(new Mix(weighed, reason, visit)));
        return new ApplicationId(tells(new WorkEvent.PutOn(bowl, area, zone, cover, null)));
    }

    private void putsOn() {
        var bowl = new Shelf(day.book().floor()).bowl(wish.what());
        var on = hasFoils()
                ? puts(bowl, BowlReason.FIRST, Area.FOILS_ALL, Zone.OFF_SCALP, Cover.FOIL)
                : puts(bowl, BowlReason.FIRST, Area.WHOLE_HEAD, Zone.ON_SCALP, Cover.OPEN);
        day.firstOn(visit);
        day.after(Doing.APPLYING, () -> lastOn(on));
    }

    private boolean hasFoils() {
        return wish.what() == Wish.What.POWDER;
    }

    private void lastOn(ApplicationId on) {
        tells(new WorkEvent.LastOn(on));
        var timing = HeadTiming.of(day.book().floor(), seen());
        var from = timing.readyFrom().orElseThrow();
        var until = timing.startBy(day.book().floor()).orElseThrow();
        var window = Duration.between(from, until).toSeconds();
        var light = from.plusSeconds(Math.round(day.pace().lightens() * Math.max(0, window)));
        looks(on, light, until);
    }

    /** Every so often, until it is light enough or would be too late. */
    private void looks(ApplicationId on, Instant light, Instant until) {
        var isDone = !day.now().isBefore(light) || !day.now().isBefore(until);
        var decision = isDone ? CheckDecision.RINSE : CheckDecision.lookAgain(LOOK_AGAIN);
        tells(new LookEvent.StrandChecked(on, StrandFinding.NOTHING_SAID, decision));
        if (isDone) {
            waitsSince = day.now();
            day.basins().wants(visit, this::goes);
        } else {
            var again = day.now().plus(LOOK_AGAIN);
            day.at(again.isBefore(until) ? again : until, () -> looks(on, light, until));
        }
    }

    private void goes() {
        hasWaited();
        if (hasFoils()) {
            day.after(Doing.FOILS_OUT, this::walks);
        } else {
            walks();
        }
    }

    private void walks() {
        day.after(Doing.WALKING, () -> {
            waitsSince = day.now();
            day.basins().isPrepared(this::rinses);
        });
    }

    private void hasWaited() {
        waited = waited.plus(Duration.between(waitsSince, day.now()));
    }

    private void water(int basin) {
        var on = seen().onHair().stream().map(Application::id).collect(Collectors.toUnmodifiableSet());
        day.press(new Rinse(visit, Set.copyOf(on), new Place.Basin(basin), null));
    }

    private void rinses(int basin) {
        hasWaited();
        water(basin);
        var tones = toCome.peek() == Service.TONER;
        day.after(hasFoils() ? Doing.RINSING_FOILS : Doing.RINSING, tones ? () -> tones(basin) : () -> isBack(basin));
    }

    private void tones(int basin) {
        toCome.remove();
        puts(new Shelf(day.book().floor()).toner(), BowlReason.TONE, Area.WHOLE_HEAD, Zone.ON_SCALP, Cover.OPEN);
        day.after(Doing.TONING, () -> {
            water(basin);
            day.after(Doing.RINSING, () -> isBack(basin));
        });
    }

    private void isBack(int basin) {
        tells(new StayEvent.Moved(chair));
        day.basins().leaves(basin);
        next();
    }
}

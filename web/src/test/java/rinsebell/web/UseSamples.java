package rinsebell.web;

import static rinsebell.floor.testing.Scoop.g;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.Stream;
import rinsebell.floor.bowl.DayEvent;
import rinsebell.floor.bowl.Left;
import rinsebell.floor.product.Directions;
import rinsebell.floor.product.Tub;
import rinsebell.floor.report.UseReport;
import rinsebell.floor.salon.SalonEvent;
import rinsebell.floor.testing.Saturday;
import rinsebell.floor.testing.Scoop;
import rinsebell.floor.testing.Shelf;
import rinsebell.floor.testing.Story;
import rinsebell.floor.testing.Where;
import rinsebell.floor.unit.Grams;
import rinsebell.floor.visit.Area;
import rinsebell.web.board.LivePages;
import rinsebell.web.board.Moment;
import rinsebell.web.board.UseTelling;
import rinsebell.web.view.LeadPage;
import rinsebell.web.view.Nav;

/** A day's use: one bowl half left, one weighed, one of which nobody said; and some days before. */
final class UseSamples {
    private static final int DAYS = 28;

    private UseSamples() {}

    static LeadPage page() {
        return page(story());
    }

    static LeadPage nothing() {
        return page(Story.begins());
    }

    private static LeadPage page(Story story) {
        var floor = story.floor();
        var moment = new Moment(floor, id -> "text " + id.seq(), floor.bells(), Saturday.at("18:00"), Words.british());
        var shell = new LivePages(moment, null, null).still(moment.say("use.title"), Nav.DAY);
        var first = Saturday.DATE.minusDays(DAYS - 1);
        var days = IntStream.range(0, DAYS)
                .mapToObj(first::plusDays)
                .map(day -> UseReport.of(day, floor, floor.salon()))
                .toList();
        return new UseTelling(moment, days.get(DAYS - 1), days).page(shell);
    }

    private static Story story() {
        var story = Story.stocked();
        priced(story, Shelf.POWDER, "450", "27.00");
        priced(story, Shelf.DEV20, "1000", "9.00");
        IntStream.of(19, 18, 12, 5, 4)
                .forEach(ago -> earlier(story, Saturday.DATE.minusDays(ago), new Left.Weighed(Grams.of(ago))));
        earlier(story, Saturday.DATE.minusDays(3), new Left.Estimated(Left.Quarters.NOTHING));
        earlier(story, Saturday.DATE.minusDays(2), null);
        var head = story.at("09:40").arrivesFine();
        var first = story.at("10:00").mixes(g(60, Shelf.POWDER), g(65, Shelf.DEV20));
        head.puts(first, Where.offScalp(Area.FOILS_ALL));
        story.tells(new DayEvent.ThrownAway(first, new Left.Estimated(Left.Quarters.HALF)));
        var other = story.at("11:00").arrivesFine();
        other.puts(story.mixes(g(40, Shelf.PERMANENT), g(40, Shelf.DEV20)), Where.onScalp(Area.REGROWTH));
        story.at("11:30").mixes(g(30, Shelf.TONER), g(30, Shelf.DEV10));
        story.mixes();
        return story;
    }

    private static void earlier(Story story, LocalDate day, @Nullable Left left) {
        story.at(Saturday.on(day, "10:00"));
        var bowl = story.mixes(new Scoop[] {g(60, Shelf.REMOVER)});
        story.tells(new DayEvent.ThrownAway(bowl, left));
    }

    private static void priced(Story story, Directions product, String grams, String price) {
        var tub = new Tub(Grams.of(grams), new BigDecimal(price));
        story.tells(Stream.SALON, new SalonEvent.TubPriced(story.product(product), tub));
    }
}

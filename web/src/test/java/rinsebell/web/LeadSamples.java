package rinsebell.web;

import static rinsebell.floor.testing.Scoop.g;

import java.util.ArrayList;
import java.util.List;
import rinsebell.floor.Stream;
import rinsebell.floor.bell.Bell;
import rinsebell.floor.bell.BellKind;
import rinsebell.floor.report.DayReport;
import rinsebell.floor.report.RingLog;
import rinsebell.floor.report.Sounded;
import rinsebell.floor.testing.Saturday;
import rinsebell.floor.testing.Shelf;
import rinsebell.floor.testing.Story;
import rinsebell.floor.testing.Where;
import rinsebell.floor.visit.Area;
import rinsebell.floor.visit.ScalpCheck;
import rinsebell.web.board.LeadTelling;
import rinsebell.web.board.LivePages;
import rinsebell.web.board.Moment;
import rinsebell.web.view.LeadPage;
import rinsebell.web.view.Nav;

/** A short day: one rinse in time, one late, and a look that nobody took for a while. */
final class LeadSamples {
    private LeadSamples() {}

    static LeadPage page() {
        return page(story());
    }

    static LeadPage nothing() {
        return page(Story.begins());
    }

    private static LeadPage page(Story story) {
        var floor = story.floor();
        var now = Saturday.at("18:00");
        var moment = new Moment(floor, id -> "text " + id.seq(), floor.bells(), now, Words.british());
        var log = RingLog.of(story.facts(), floor.salon().beginOf(Saturday.DATE), now);
        var shell = new LivePages(moment, null, null).still(moment.say("lead.title"), Nav.DAY);
        return new LeadTelling(moment, DayReport.of(Saturday.DATE, log, floor, sounded(log))).page(shell);
    }

    /** Two devices sound every turn, the second of them a little late. */
    private static List<Sounded> sounded(RingLog log) {
        var all = new ArrayList<Sounded>();
        log.turns().forEach((turn, at) -> {
            all.add(new Sounded(turn, "tablet", "chair-1", at.plusMillis(250), Saturday.at("08:00")));
            all.add(new Sounded(turn, "screen", "wall", at.plusMillis(1_750), Saturday.at("08:00")));
        });
        return all;
    }

    private static Story story() {
        var story = Story.begins();
        story.assistant();
        var late = story.at("09:40").arrivesFine();
        var inTime = story.arrivesFine();
        story.at("09:55");
        var lengths = late.puts(story.mixes(g(60, Shelf.POWDER), g(60, Shelf.DEV20)), Where.offScalp(Area.LENGTHS));
        late.lastOn(lengths);
        story.at("10:10");
        var regrowth =
                inTime.puts(story.mixes(g(60, Shelf.MILD_CREAM), g(60, Shelf.DEV20)), Where.onScalp(Area.REGROWTH));
        inTime.lastOn(regrowth);
        story.at("10:14");
        story.acknowledges(strandCheck(story));
        story.at("10:16");
        late.checks(lengths);
        story.at("10:23");
        inTime.scalpIs(ScalpCheck.Finding.FINE);
        inTime.saysRinse(regrowth);
        story.at("10:23:30");
        inTime.rinses(regrowth);
        story.at("10:51");
        late.rinses(lengths);
        story.at("11:30");
        late.tells(new rinsebell.floor.visit.StayEvent.Left());
        story.tells(Stream.visit(inTime.id()), new rinsebell.floor.visit.StayEvent.Left());
        return story;
    }

    private static Bell strandCheck(Story story) {
        return story.floor().bells().stream()
                .filter(bell -> bell.kind() == BellKind.STRAND_CHECK && bell.isRinging(story.now()))
                .findFirst()
                .orElseThrow();
    }
}

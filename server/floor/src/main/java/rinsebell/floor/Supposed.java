package rinsebell.floor;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.bowl.BowlId;
import rinsebell.floor.bowl.BowlReason;
import rinsebell.floor.bowl.DayEvent;
import rinsebell.floor.bowl.Portion;
import rinsebell.floor.product.Cover;
import rinsebell.floor.product.Zone;
import rinsebell.floor.salon.Place;
import rinsebell.floor.visit.Application;
import rinsebell.floor.visit.ApplicationId;
import rinsebell.floor.visit.Area;
import rinsebell.floor.visit.StayEvent;
import rinsebell.floor.visit.Visit;
import rinsebell.floor.visit.VisitId;
import rinsebell.floor.visit.WorkEvent;

/** What a floor would be if a bowl were mixed and all of it put on at an instant. Nothing of it is recorded. */
public final class Supposed {
    private final Floor floor;
    private final Instant at;
    private final List<Fact> facts = new ArrayList<>();

    public Supposed(Floor floor, Instant at) {
        this.floor = floor;
        this.at = at;
    }

    /** Somebody comes of whom nothing is known. */
    public VisitId arrives() {
        var whom = new VisitId(next());
        happens(Stream.visit(whom), new StayEvent.Arrived(Place.BENCH, null, null, null));
        return whom;
    }

    /** @param whom null for nobody yet */
    public BowlId mixes(List<Portion> portions, BowlReason reason, @Nullable VisitId whom) {
        var bowl = new BowlId(next());
        happens(Stream.day(floor.salon().dayOf(at)), new DayEvent.Mixed(portions, reason, whom));
        return bowl;
    }

    /** All of it at once, off the scalp, where nothing is, so that what is on stays uncovered. */
    public ApplicationId puts(BowlId bowl, VisitId whom) {
        var on = new ApplicationId(next());
        var area = floor.visit(whom).map(Supposed::freeArea).orElse(Area.LENGTHS);
        happens(Stream.visit(whom), new WorkEvent.PutOn(bowl, area, Zone.OFF_SCALP, Cover.OPEN, null));
        happens(Stream.visit(whom), new WorkEvent.LastOn(on));
        return on;
    }

    private static Area freeArea(Visit visit) {
        var taken = visit.onHair().stream().map(Application::area).toList();
        return Arrays.stream(Area.values())
                .filter(area -> area != Area.WHOLE_HEAD && !taken.contains(area))
                .findFirst()
                .orElse(Area.WHOLE_HEAD);
    }

    private long next() {
        return floor.lastSeq() + facts.size() + 1;
    }

    private void happens(Stream stream, Event event) {
        facts.add(new Fact(next(), stream, at, at, null, event));
    }

    /** With all of that. */
    public Floor floor() {
        return floor.with(facts);
    }
}

package rinsebell.floor.clock;

import static rinsebell.floor.product.Kind.POWDER_LIGHTENER;
import static rinsebell.floor.testing.Leaflet.leaflet;
import static rinsebell.floor.testing.Scoop.g;
import static rinsebell.floor.testing.Where.offScalp;

import java.time.Duration;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.testing.Head;
import rinsebell.floor.testing.Leaflet;
import rinsebell.floor.testing.Story;
import rinsebell.floor.visit.ApplicationId;
import rinsebell.floor.visit.Area;

/** A head with one bowl on it: mixed at 10:00, first on 10:05, last on 10:15. */
abstract class OneBowlOn {
    final Story story = Story.begins();

    /** Mixed at 10:00, first on 10:05, last on 10:15; the story stands at 10:15. */
    On on(Leaflet leaflet) {
        return on(leaflet, null);
    }

    On on(Leaflet leaflet, @Nullable Duration planned) {
        story.at("09:50");
        var head = story.arrivesFine();
        var bowl = story.at("10:00").mixes(g(60, leaflet.typedIn()));
        story.at("10:05");
        var where = offScalp(Area.LENGTHS);
        var application = head.puts(bowl, planned == null ? where : where.planned(planned));
        story.at("10:15");
        head.lastOn(application);
        return new On(head, application);
    }

    record On(Head head, ApplicationId application) {
        Timing timing() {
            return head.timing(application);
        }

        @Nullable
        Limit limit(Limit.Why why) {
            return timing().limits().stream()
                    .filter(limit -> limit.why() == why)
                    .findFirst()
                    .orElse(null);
        }
    }

    static Leaflet powder() {
        return leaflet("powder", POWDER_LIGHTENER);
    }
}

package rinsebell.floor.report;

import java.time.Duration;
import java.util.List;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.bowl.BowlId;
import rinsebell.floor.product.Cover;
import rinsebell.floor.product.Zone;
import rinsebell.floor.testing.Saturday;
import rinsebell.floor.testing.Scoop;
import rinsebell.floor.testing.Shelf;
import rinsebell.floor.visit.ApplicationId;
import rinsebell.floor.visit.Area;
import rinsebell.floor.visit.VisitId;

/** One client of the {@link OrdinarySaturday}, and how far their stylist has come with them. */
final class SaturdayClient {

    /** What is put on, how long that takes and how long it stays: times are common practice, no source. */
    enum Job {
        ROOTS(
                List.of(Scoop.g(60, Shelf.PERMANENT), Scoop.g(60, Shelf.DEV20)),
                Area.REGROWTH,
                Zone.ON_SCALP,
                Cover.OPEN,
                18,
                50),
        FOILS(
                List.of(Scoop.g(60, Shelf.POWDER), Scoop.g(60, Shelf.DEV20)),
                Area.FOILS_ALL,
                Zone.OFF_SCALP,
                Cover.FOIL,
                19,
                38),
        LIGHTER_ROOTS(
                List.of(Scoop.g(60, Shelf.MILD_CREAM), Scoop.g(60, Shelf.DEV20)),
                Area.REGROWTH,
                Zone.ON_SCALP,
                Cover.OPEN,
                15,
                42),
        TONER(
                List.of(Scoop.g(60, Shelf.TONER), Scoop.g(60, Shelf.DEV10)),
                Area.ENDS,
                Zone.OFF_SCALP,
                Cover.OPEN,
                5,
                13);

        final List<Scoop> recipe;
        final Area area;
        final Zone zone;
        final Cover cover;
        final Duration applying;
        /** From first on a look finds it done after so long. */
        final Duration done;

        Job(List<Scoop> recipe, Area area, Zone zone, Cover cover, long applyingMinutes, long doneMinutes) {
            this.recipe = recipe;
            this.area = area;
            this.zone = zone;
            this.cover = cover;
            this.applying = Saturday.minutes(applyingMinutes);
            this.done = Saturday.minutes(doneMinutes);
        }

        boolean isToned() {
            return this == FOILS || this == LIGHTER_ROOTS;
        }
    }

    enum Stage {
        SEATED,
        MIXED,
        APPLYING,
        DEVELOPING,
        RINSED,
        STYLING,
        GONE
    }

    final VisitId visit;
    Job job;
    Stage stage = Stage.SEATED;

    @Nullable
    BowlId bowl;

    @Nullable
    ApplicationId on;
    /** Still to be put on, or still to be cut and dried. */
    Duration left = Duration.ZERO;

    SaturdayClient(VisitId visit, Job job) {
        this.visit = visit;
        this.job = job;
    }
}

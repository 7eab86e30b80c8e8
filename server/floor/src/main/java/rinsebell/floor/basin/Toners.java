package rinsebell.floor.basin;

import rinsebell.floor.Floor;
import rinsebell.floor.bowl.Bowl;
import rinsebell.floor.bowl.BowlReason;
import rinsebell.floor.salon.Service;
import rinsebell.floor.visit.Application;
import rinsebell.floor.visit.Visit;

/** Toners that are still to come. */
public final class Toners {
    private Toners() {}

    /** Whether a toner was listed and none is or was on. */
    public static boolean isToCome(Floor floor, Visit visit) {
        return visit.services().toCome().contains(Service.TONER)
                && visit.applications().stream()
                        .map(Application::bowl)
                        .flatMap(id -> floor.bowl(id).stream())
                        .map(Bowl::reason)
                        .noneMatch(BowlReason.TONE::equals);
    }
}

package rinsebell.db.codec;

import org.jspecify.annotations.Nullable;
import rinsebell.floor.salon.StaffId;
import rinsebell.floor.visit.ClientId;
import rinsebell.floor.visit.VisitId;

/** Names of things that may be nobody. */
final class Ids {

    private Ids() {}

    static @Nullable Long of(@Nullable VisitId visit) {
        return visit == null ? null : visit.value();
    }

    static @Nullable Long of(@Nullable StaffId staff) {
        return staff == null ? null : staff.value();
    }

    static @Nullable Long of(@Nullable ClientId client) {
        return client == null ? null : client.value();
    }

    static @Nullable VisitId visit(Reading in, String name) {
        return in.maybeNumber(name).map(VisitId::new).orElse(null);
    }

    static @Nullable StaffId staff(Reading in, String name) {
        return in.maybeNumber(name).map(StaffId::new).orElse(null);
    }

    static @Nullable ClientId client(Reading in, String name) {
        return in.maybeNumber(name).map(ClientId::new).orElse(null);
    }
}

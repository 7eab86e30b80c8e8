package rinsebell.app.page;

import io.javalin.http.Context;
import java.time.Duration;
import java.util.Optional;
import rinsebell.app.door.Caller;
import rinsebell.app.door.Cookies;
import rinsebell.app.door.Numbered;
import rinsebell.floor.salon.Policy;
import rinsebell.floor.salon.Salon;
import rinsebell.floor.salon.StaffId;
import rinsebell.web.form.Fields;

/**
 * Who works at a device, as somebody there has said by a touch. It is a name, and opens nothing. The browser keeps it, for as
 * long as its device is meant to: scripts read it, so that a press that waits for the server keeps the name of then.
 */
public final class Who {
    /** The cookie, and the field that tells who pressed. */
    public static final String NAME = "who";

    private Who() {}

    /** Whoever a press tells of, or else whoever is named at the device now. */
    public static Optional<StaffId> of(Context ctx, Fields typed, Salon salon) {
        return working(typed.first(NAME).orElse(""), salon).or(() -> of(ctx, salon));
    }

    /** Whoever is named at the device now. */
    public static Optional<StaffId> of(Context ctx, Salon salon) {
        return working(Cookies.of(ctx, NAME).orElse(""), salon);
    }

    private static Optional<StaffId> working(String number, Salon salon) {
        return Numbered.number(number)
                .map(StaffId::new)
                .filter(id -> salon.workingMember(id).isPresent());
    }

    /** They go on working there, for as long as a name lasts at that device without a press. */
    public static void keep(Context ctx, StaffId who, Caller caller, Policy house) {
        var lasts = Duration.ofMinutes(house.keeping().nameMinutes());
        Cookies.keepOpenly(ctx, NAME, String.valueOf(who.value()), caller.nameLasts(lasts));
    }

    /** Nobody is named there any more. */
    public static void forget(Context ctx) {
        Cookies.drop(ctx, NAME);
    }
}

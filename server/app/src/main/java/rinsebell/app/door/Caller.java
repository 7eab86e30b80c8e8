package rinsebell.app.door;

import io.javalin.http.Context;
import java.time.Duration;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rinsebell.db.Keyring;
import rinsebell.floor.salon.StaffId;

/**
 * Who asks.
 *
 * @param device the number of the device that is in; {@link #OWN} for the server's own screen
 * @param name what the device is called; empty for the server's own screen
 * @param purpose what it is for; empty for the server's own screen
 * @param person whose PIN was given there, and not long ago; null for nobody
 */
public record Caller(
        long device, String name, String purpose, @Nullable StaffId person) {
    /** A browser on the machine itself: whoever stands there could as well read the disk. */
    public static final long OWN = 0;

    /** What a device is for that came in by the code of the console. */
    public static final String FIRST = "console";

    /** What a program's key is for that may see the floor. */
    public static final String READS = "program-reads";

    /** What a program's key is for that may see the floor and press. */
    public static final String ACTS = "program-acts";

    private static final Caller UNKNOWN = new Caller(-1, "", "", null);

    private static final String OWN_CODE = "own";
    private static final String DEVICE_CODE = "device-";
    private static final String OPENED = "opened by a PIN";
    private static final String ATTRIBUTE = "caller";

    public static Caller own() {
        return new Caller(OWN, "", "", null);
    }

    public static Caller of(Keyring.Device device) {
        return new Caller(device.id(), device.name(), device.purpose(), null);
    }

    public Caller with(@Nullable StaffId unlocked) {
        return new Caller(device, name, purpose, unlocked);
    }

    /** Whether it came in by the code of the console: whoever read that could as well sit at the server. */
    public boolean isFirst() {
        return purpose.equals(FIRST);
    }

    public boolean isOwn() {
        return device == OWN;
    }

    /** Whether it is a device that was let in. */
    public boolean isDevice() {
        return device > OWN;
    }

    /** Whether one person carries it. */
    public boolean isPocket() {
        return purpose.equals("pocket");
    }

    /** Whether it is a program that shows a key; nobody stands at it. */
    public boolean isProgram() {
        return isProgram(purpose);
    }

    public static boolean isProgram(String purpose) {
        return purpose.equals(READS) || purpose.equals(ACTS);
    }

    /** Whether it may press; a program may only if its key is for that. */
    public boolean mayPress() {
        return !purpose.equals(READS);
    }

    /**
     * How long somebody is named there without a press: in a pocket a phone goes on being theirs.
     *
     * @param house for how long the house lets a shared device go on
     */
    public Duration nameLasts(Duration house) {
        return isPocket() ? Duration.ofDays(365) : house;
    }

    /** As it is noted beside a press: {@code own}, or {@code device-4}; empty for nobody. */
    public String code() {
        return isOwn() ? OWN_CODE : isDevice() ? DEVICE_CODE + device : "";
    }

    /** The number of what is noted so; empty for nobody. */
    public static Optional<Long> noted(String code) {
        return code.equals(OWN_CODE)
                ? Optional.of(OWN)
                : Optional.of(code)
                        .filter(text -> text.startsWith(DEVICE_CODE))
                        .flatMap(text -> Numbered.number(text.substring(DEVICE_CODE.length())));
    }

    public Optional<StaffId> unlocked() {
        return Optional.ofNullable(person);
    }

    public void remember(Context ctx) {
        ctx.attribute(ATTRIBUTE, this);
    }

    /** Notes that a PIN has opened this, and what it is about. */
    public static void open(Context ctx, Matter matter) {
        ctx.attribute(OPENED, matter.name());
    }

    /** What a PIN has opened here; empty where none was needed. */
    public static Optional<String> openedFor(Context ctx) {
        return Optional.ofNullable(ctx.attribute(OPENED));
    }

    /** Whose PIN has opened this: they stand behind it, whatever name was touched; empty where none was needed. */
    public static Optional<StaffId> openedBy(Context ctx) {
        return openedFor(ctx).flatMap(matter -> of(ctx).unlocked());
    }

    /** Who asks here; nobody where nobody looked, as on routes for everyone. */
    public static Caller of(Context ctx) {
        Caller known = ctx.attribute(ATTRIBUTE);
        return known == null ? UNKNOWN : known;
    }
}

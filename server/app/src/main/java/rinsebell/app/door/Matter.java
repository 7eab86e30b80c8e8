package rinsebell.app.door;

import static rinsebell.floor.salon.Role.DESK;
import static rinsebell.floor.salon.Role.MANAGER;
import static rinsebell.floor.salon.Role.STYLIST;

import io.javalin.http.Context;
import io.javalin.security.RouteRole;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Set;
import rinsebell.floor.salon.Role;

/**
 * What a route is about, and so who may use it: the one table of rights. Each route has exactly one.
 *
 * <p>What keeps somebody's hair and skin safe never asks for anything; what is private asks for the PIN of somebody whose
 * role may.
 */
public enum Matter implements RouteRole {
    /** For everyone who can reach the server: nothing of the salon is in it. */
    OPEN(Kind.OPEN),
    /** Coming in by an invitation. */
    COMING_IN(Kind.OPEN),
    /** Discomfort, answering a bell, beginning a rinse, and what devices tell by themselves. */
    SIGNAL(Kind.DEVICE),
    /** Seeing the floor and recording what is done at a head. */
    FLOOR(Kind.DEVICE),
    /** Giving a PIN, and locking what it opened. */
    UNLOCKING(Kind.DEVICE),
    /** Finding the record of whoever sits there, by names. */
    FINDING(Kind.DEVICE),
    /** Records of people who come again. */
    HISTORY(Kind.PIN, STYLIST, DESK, MANAGER),
    /** Products, what their leaflets allow, and what they cost. */
    DIRECTIONS(Kind.PIN, STYLIST, MANAGER),
    /** Correcting a visit that is over. */
    CORRECTIONS(Kind.PIN, STYLIST, MANAGER),
    /** The rooms, the house's own numbers, its times. */
    HOUSE(Kind.PIN, MANAGER),
    STAFF(Kind.PIN, MANAGER),
    /** Devices, and links that look in. */
    DEVICES(Kind.PIN, MANAGER),
    /** What days came to, and files of it. */
    REPORTS(Kind.PIN, MANAGER),
    /** Erasing a record. */
    ERASING(Kind.PIN, MANAGER),
    /** Who did what, and who looked at whom. */
    TRAIL(Kind.PIN, MANAGER),
    /** What each may do about their own PIN. */
    OWN_PIN(Kind.PIN, Role.values());

    private enum Kind {
        OPEN,
        DEVICE,
        PIN
    }

    private static final Set<Matter> ABOUT_PEOPLE = EnumSet.of(FINDING, HISTORY, CORRECTIONS, REPORTS, ERASING, TRAIL);

    private static final Set<String> SIGNALS =
            Set.of("visits/discomfort", "visits/rinse", "bells/acknowledge", "bells/shelve");

    private static final String ATTRIBUTE = "matter";

    private final Kind kind;
    private final Set<Role> roles;

    Matter(Kind kind, Role... roles) {
        this.kind = kind;
        this.roles = roles.length == 0 ? EnumSet.allOf(Role.class) : EnumSet.copyOf(Set.of(roles));
    }

    /** Whether it needs no device that is in. */
    public boolean isOpen() {
        return kind == Kind.OPEN;
    }

    /** Whether it asks for a PIN. */
    public boolean isPrivate() {
        return kind == Kind.PIN;
    }

    /** Whether it is kept who looked. */
    public boolean isLookingNoted() {
        return ABOUT_PEOPLE.contains(this);
    }

    /** Whether it is kept, beside the facts of the floor, who did that. */
    public boolean isDoingNoted() {
        return isPrivate() || this == COMING_IN || this == UNLOCKING;
    }

    /** Whether somebody with that role may do it. */
    public boolean allows(Role role) {
        return roles.contains(role);
    }

    /** Notes what a request was found to be about. */
    public void remember(Context ctx) {
        ctx.attribute(ATTRIBUTE, this);
    }

    /** What a request was found to be about; the floor where nobody looked. */
    public static Matter of(Context ctx) {
        Matter known = ctx.attribute(ATTRIBUTE);
        return known == null ? FLOOR : known;
    }

    /** Its bundle key. */
    public String key() {
        return "matter." + name().toLowerCase(Locale.ROOT);
    }

    /**
     * What a press, or its page, is about.
     *
     * @param resource the first part of the address
     * @param press the last part of the address; empty for none
     */
    public static Matter of(String resource, String press) {
        return switch (resource) {
            case "products", "shelf", "recipe-file" -> DIRECTIONS;
            case "salon", "policy", "times" -> HOUSE;
            case "staff" -> STAFF;
            case "clients" -> press.equals("erase") ? ERASING : HISTORY;
            case "visits", "bowls", "mixtures", "recipes", "facts", "day", "bells" ->
                SIGNALS.contains(resource + "/" + press) ? SIGNAL : FLOOR;
            default -> throw new IllegalArgumentException("nobody said who may press " + resource + "/" + press);
        };
    }
}

package rinsebell.app.access;

import java.security.SecureRandom;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.LongSupplier;

/**
 * Codes by which a device may come in: each once, for ten minutes, and gone with a restart. 60 random bits in twelve letters
 * and figures that are not taken for one another (Crockford's base 32): a million tries a second would find one in ten
 * minutes once in a billion.
 */
final class Invitations {
    static final Duration GOOD_FOR = Duration.ofMinutes(10);

    /** Whoever sets up a computer without a screen may be a while. */
    static final Duration FIRST_GOOD_FOR = Duration.ofHours(1);

    /** As many at once; the oldest gives way. */
    static final int MOST = 10;

    private static final String LETTERS = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";
    private static final int LENGTH = 12;
    private static final int GROUP = 4;
    private static final SecureRandom RANDOM = new SecureRandom();

    private final LongSupplier nanos;
    private final List<Open> open = new ArrayList<>();

    /**
     * What a device will be when it comes in.
     *
     * @param name what it will be called
     * @param purpose what it is for, as a code such as {@code chair-3}
     */
    record Invitation(String name, String purpose) {}

    private record Open(String code, Invitation invitation, long sinceNanos, Duration goodFor) {
        boolean isOver(long now) {
            return now - sinceNanos >= goodFor.toNanos();
        }
    }

    /** @param nanos a clock that nobody can set */
    Invitations(LongSupplier nanos) {
        this.nanos = nanos;
    }

    /** A fresh code for it, such as {@code K3M9-04TZ-QW7A}. */
    String invite(Invitation invitation) {
        return invite(invitation, GOOD_FOR);
    }

    synchronized String invite(Invitation invitation, Duration goodFor) {
        forgetOld();
        if (open.size() >= MOST) {
            open.remove(0);
        }
        String code = fresh();
        open.add(new Open(code, invitation, nanos.getAsLong(), goodFor));
        return grouped(code);
    }

    /** What a code invites to, without using it up. */
    synchronized Optional<Invitation> look(String typed) {
        return find(typed).map(Open::invitation);
    }

    /** Uses a code up. */
    synchronized Optional<Invitation> take(String typed) {
        Optional<Open> found = find(typed);
        found.ifPresent(open::remove);
        return found.map(Open::invitation);
    }

    private Optional<Open> find(String typed) {
        forgetOld();
        String code = read(typed);
        return open.stream().filter(one -> one.code.equals(code)).findFirst();
    }

    private void forgetOld() {
        long now = nanos.getAsLong();
        open.removeIf(one -> one.isOver(now));
    }

    /** As people type it: in small letters, with spaces, an O for a nought and an I or L for a one. */
    static String read(String typed) {
        return typed.toUpperCase(Locale.ROOT)
                .replaceAll("[\\s-]", "")
                .replace('O', '0')
                .replace('I', '1')
                .replace('L', '1');
    }

    private static String fresh() {
        StringBuilder code = new StringBuilder();
        for (int i = 0; i < LENGTH; i++) {
            code.append(LETTERS.charAt(RANDOM.nextInt(LETTERS.length())));
        }
        return code.toString();
    }

    private static String grouped(String code) {
        return code.replaceAll("(.{" + GROUP + "})(?!$)", "$1-");
    }
}

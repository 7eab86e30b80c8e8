package rinsebell.app.access;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** Codes that let one device in. */
class InvitationsTest {
    private static final Invitations.Invitation TABLET = new Invitations.Invitation("tablet", "chair-3");

    private long nanos;
    private final Invitations invitations = new Invitations(() -> nanos);

    @Test
    void onceAndNotAgain() {
        var code = invitations.invite(TABLET);
        assertThat(invitations.look(code)).contains(TABLET);
        assertThat(invitations.look(code)).as("looking uses nothing up").contains(TABLET);
        assertThat(invitations.take(code)).contains(TABLET);
        assertThat(invitations.take(code)).isEmpty();
        assertThat(invitations.look(code)).isEmpty();
    }

    @Test
    void forTenMinutes() {
        var code = invitations.invite(TABLET);
        nanos += Invitations.GOOD_FOR.toNanos() - 1;
        assertThat(invitations.look(code)).contains(TABLET);
        nanos++;
        assertThat(invitations.take(code)).isEmpty();
    }

    /** Crockford's base 32 reads letters that look like figures as these. */
    @Test
    void asPeopleTypeIt() {
        assertThat(Invitations.read(" k3m9 o4tz-iLw7 ")).isEqualTo("K3M904TZ11W7");
        var code = invitations.invite(TABLET);
        assertThat(code).matches("[0-9A-HJKMNP-TV-Z]{4}(-[0-9A-HJKMNP-TV-Z]{4}){2}");
        assertThat(invitations.take(code.toLowerCase(Locale.ROOT).replace('-', ' ')))
                .contains(TABLET);
    }

    @Test
    void theOldestGivesWay() {
        var first = invitations.invite(TABLET);
        var codes = new HashSet<String>();
        for (int i = 0; i < Invitations.MOST; i++) {
            codes.add(invitations.invite(TABLET));
        }
        assertThat(codes)
                .hasSize(Invitations.MOST)
                .allMatch(code -> invitations.look(code).isPresent());
        assertThat(invitations.look(first)).isEmpty();
    }
}

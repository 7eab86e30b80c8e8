package rinsebell.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a device has answered itself, in a real browser: it is quiet about it at once, and for no longer than the house says. */
class AnsweredIT extends SamplePages {
    private Page page;

    @BeforeEach
    void open() {
        page = chromium.page();
        page.setDefaultTimeout(10_000);
    }

    @AfterEach
    void close() {
        Chromium.close(page);
    }

    /** Rings high for everyone since 14:23: what is heard here is quiet here for the two minutes of a high bell. */
    @Test
    void whatThisDeviceHasAnsweredIsQuietOnItWithoutTheServer() {
        isHeardHereAlone();
        page.clock().runFor(1_000);
        assertThat(ring()).isEqualTo("calm");
        assertThat(page.locator("#bells > ol:not(.rung) .bell.high").count()).isEqualTo(1);
        page.clock().runFor(117_000);
        assertThat(ring()).isEqualTo("calm");
        page.clock().runFor(15_000);
        assertThat(ring()).isEqualTo("high");
    }

    /** The salon's clock is put back by a minute while it waits: the house's two minutes are over all the same. */
    @Test
    void whatThisDeviceHasAnsweredIsQuietNoLongerWhenTheSalonsClockGoesBack() {
        isHeardHereAlone();
        page.clock().runFor(61_000);
        assertThat(isCalm()).isTrue();
        page.evaluate("async () => { const { now, set } = await import('" + server.asset("clock.js") + "');"
                + " set(now() - 60000, 1); }");
        page.clock().runFor(50_000);
        assertThat(isCalm()).isTrue();
        page.clock().runFor(20_000);
        assertThat(isCalm()).isFalse();
    }

    /** While it waited the device took it for heard; when it is refused it rings on, long before the house's interval. */
    @Test
    void whatWasRefusedHasQuietedNothing() {
        isHeardHereAlone();
        page.clock().runFor(1_000);
        assertThat(ring()).isEqualTo("calm");
        page.route(
                "**/bells/**",
                route -> route.fulfill(new Route.FulfillOptions()
                        .setStatus(409)
                        .setHeaders(SampleServer.OURS)
                        .setContentType("text/html")
                        .setBody("<main>It does not ring any more.</main>")));
        for (var seconds = 0; seconds < 60 && isCalm(); seconds += 2) {
            page.clock().runFor(2_000);
        }
        assertThat(isCalm()).isFalse();
    }

    /** The server can't be reached; the desk's device rings loudly, and somebody says "Heard" on it. */
    private void isHeardHereAlone() {
        page.clock().install();
        page.navigate(server.url("floor"));
        page.route("**/{bells,clock}**", route -> route.abort("connectionrefused"));
        page.evaluate("() => document.documentElement.dataset.ear = 'desk'");
        page.clock().runFor(20_000);
        assertThat(ring()).isEqualTo("high");
        page.locator("#bells > ol:not(.rung) form button").first().click();
    }

    /** The next look is due after the interval that was said, or the shortest; a rinse keeps its instants. */
    @ParameterizedTest
    @CsvSource({"5, 300", "rinse, 180"})
    void aLookThatIsTakenHereMovesTheNextOneAndNoRinse(String decision, int seconds) {
        page.navigate(server.url("floor"));
        var moved = in(
                page,
                "answered.js",
                "const { bells, ringing } = await import('" + server.asset("ring.js") + "');"
                        + " const { now } = await import('" + server.asset("clock.js") + "');"
                        + " const look = (visit) => { const form = document.createElement('form');"
                        + " form.action = `/visits/${visit}/strand`;"
                        + " form.innerHTML = '<input name=\"decision\" value=\"" + decision + "\">';"
                        + " module.note(form); };"
                        + " for (const li of document.querySelectorAll('#bells .rung li'))"
                        + " li.dataset.href = `/visits/${li.dataset.bell.split('-')[2]}`;"
                        + " const turns = (one) => JSON.stringify(one.turns); const before = bells(); look(76); look(73);"
                        + " const after = before.map(module.moved);"
                        + " const changed = after.filter((one, i) => turns(one) !== turns(before[i]));"
                        + " const rinse = ringing(before, 'assistants', now()).map((one) => one.id);"
                        + " const due = changed.map((one) => `${one.id} ${Math.round((one.counts - now()) / 1000)}`);"
                        + " return [...due, ...rinse].join(', ');");
        assertThat(moved).isEqualTo("bell-strand_check-76-61 " + seconds + ", bell-rinse-73-88");
    }

    private Object ring() {
        return page.evaluate("() => document.documentElement.dataset.ring");
    }

    private boolean isCalm() {
        return "calm".equals(ring());
    }
}
